"""Workers as processes of their own: killed, stopped, and cut off from the database."""

import asyncio
import signal
import subprocess
from collections.abc import AsyncIterator, Iterator
from contextlib import contextmanager
from typing import Any

import httpx
import pytest

from jobs.conftest import Bench, asked, postgres_of, until
from longpoint.jobs import rows, worker
from longpoint.jobs.job import Bounds, Outcome, State
from longpoint.jobs.queued import JobsQueued
from longpoint.schedules.store import Store
from serving import work
from stored import house, opening, serving

LATER = {"prefer": "respond-async"}


@contextmanager
def working(address: str, **variables: str) -> Iterator[subprocess.Popen[bytes]]:
    """A worker process."""
    process = work(address, **variables)
    try:
        yield process
    finally:
        process.kill()
        process.wait()


@pytest.fixture
def address(request: pytest.FixtureRequest) -> str:
    return postgres_of(request)


@pytest.fixture
async def service(address: str) -> AsyncIterator[httpx.AsyncClient]:
    """A replica that serves and does not work."""
    async with serving(address, {"jobs": "workers"}) as client:
        yield client


async def state_of(client: httpx.AsyncClient, job: str, *states: str, seconds: float = 40) -> dict[str, Any]:
    async with asyncio.timeout(seconds):
        while (found := (await client.get(job)).json())["state"] not in states:
            await asyncio.sleep(0.05)
    return dict(found)


async def plan_asked(service: httpx.AsyncClient, seconds: float, windows: int = 40) -> tuple[str, str]:
    openings = [
        opening(f"W{at}", f"{20 + at % 41} {at % 15 + 1}/16", f"{30 + at % 37} {at % 13 + 1}/16")
        for at in range(windows)
    ]
    where = (await service.post("/v1/schedules", json=house(openings=openings))).headers["location"]
    answer = await service.post(f"{where}/plans", json={"planning_seconds": seconds}, headers=LATER)
    assert answer.status_code == 202
    return where, answer.headers["location"]


async def test_a_worker_does_what_a_replica_was_asked_for(address: str, service: httpx.AsyncClient) -> None:
    where, job = await plan_asked(service, 0.3)
    assert (await service.get(job)).json()["state"] == "waiting"
    with working(address):
        # Nobody said that they would have it later: they wait, and a worker does it.
        sheet = await service.get(f"{where}/sheets/material-list", headers={"accept": "application/pdf"})
        assert (await state_of(service, job, "done"))["progress"]
    assert sheet.content.startswith(b"%PDF")
    assert [one["number"] for one in (await service.get(f"{where}/plans")).json()["items"]]


async def test_what_a_killed_worker_had_is_done_by_another(address: str, service: httpx.AsyncClient) -> None:
    where, job = await plan_asked(service, 3)
    with working(address) as first:
        await state_of(service, job, "working")
        first.kill()
        first.wait()
    with working(address):
        done = await state_of(service, job, "done", seconds=90)  # it is missed first
    assert done["tries"] == 2
    assert len((await service.get(f"{where}/plans")).json()["items"]) == 1


async def test_a_stopped_worker_gives_back_what_it_cannot_finish(
    address: str, service: httpx.AsyncClient
) -> None:
    _, job = await plan_asked(service, 20, 300)  # never proven so soon
    with working(address, LONGPOINT_DRAIN_SECONDS="1") as first:
        await state_of(service, job, "working")
        first.send_signal(signal.SIGTERM)
        assert first.wait(15) == 0
        back = (await service.get(job)).json()
        assert (back["state"], back["tries"]) == ("waiting", 0), "it was no try"
    assert (await service.delete(job)).json()["state"] == "cancelled"


async def test_a_stopped_worker_finishes_what_is_nearly_done(
    address: str, service: httpx.AsyncClient
) -> None:
    _, job = await plan_asked(service, 2)
    with working(address) as first:
        await state_of(service, job, "working")
        first.send_signal(signal.SIGTERM)
        assert first.wait(20) == 0
    done = (await service.get(job)).json()
    assert (done["state"], done["tries"]) == ("done", 1)


async def test_a_try_that_was_given_up_writes_nothing_more(address: str) -> None:
    store, bounds = Store(address), Bounds()
    try:
        jobs = JobsQueued(store, bounds, None)
        job = await jobs.ask(asked("one"))
        async with store.writing() as connection:
            first = await rows.begin(connection, job.id)
            second = await rows.begin(connection, job.id)  # its lease was over
        assert first is not None
        assert second is not None
        async with store.writing() as connection:
            await rows.end(connection, first, Outcome(200, "text/plain", {}, b"late"), 1.0, bounds)
        found = await jobs.find("ann", job.id)
        assert found is not None
        assert found.state is State.WORKING
        for body in (b"first", b"again"):
            async with store.writing() as connection:
                await rows.end(connection, second, Outcome(200, "text/plain", {}, body), 1.0, bounds)
        outcome = await jobs.outcome("ann", job.id)
        assert outcome is not None
        assert outcome.body == b"first", "written twice"
    finally:
        await store.close()


async def test_what_loses_its_worker_three_times_fails_with_its_problem(
    address: str, bench: Bench, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(worker, "_LOOKED_AFTER", 0.2)
    store = Store(address)
    asking = JobsQueued(store, Bounds(), None)
    job = await asking.ask(asked("one"))
    async with store.writing() as connection:
        for _ in range(3):
            await rows.begin(connection, job.id)
    jobs = JobsQueued(store, Bounds(), bench.work)
    await jobs.start()
    try:
        ended = await jobs.ended(job, 20)
        assert ended is not None
        assert (ended.state, ended.status) == (State.FAILED, 500)
        assert bench.begun == []
        outcome = await jobs.outcome("ann", job.id)
        assert outcome is not None
        assert outcome.body == b"lost one"
    finally:
        await jobs.close()
        await store.close()


async def test_what_the_queue_has_lost_is_found(
    address: str, bench: Bench, monkeypatch: pytest.MonkeyPatch
) -> None:
    from sqlalchemy import text

    monkeypatch.setattr(worker, "_LOOKED_AFTER", 0.2)
    store = Store(address)
    jobs = JobsQueued(store, Bounds(), bench.work)
    job = await jobs.ask(asked("one"))
    async with store.writing() as connection:
        await connection.execute(text("DELETE FROM pgqueuer"))
    await jobs.start()
    try:
        ended = await jobs.ended(job, 20)
        assert ended is not None
        assert ended.state is State.DONE
    finally:
        await jobs.close()
        await store.close()


async def test_work_goes_on_after_the_database_was_away(address: str, bench: Bench) -> None:
    from sqlalchemy import text

    store = Store(address)
    jobs = JobsQueued(store, Bounds(), bench.work)
    await jobs.start()
    try:
        first = await jobs.ask(asked("slow"))
        await until(lambda: bench.begun)
        async with store.writing() as connection:
            await connection.execute(
                text(
                    "SELECT pg_terminate_backend(pid) FROM pg_stat_activity"
                    " WHERE datname = current_database() AND pid <> pg_backend_pid()"
                )
            )
        bench.gates["slow"].set()
        ended = await jobs.ended(first, 30)
        assert ended is not None
        assert ended.state is State.DONE
        second = await jobs.ended(await jobs.ask(asked("after")), 30)
        assert second is not None
        assert second.state is State.DONE
    finally:
        await jobs.close()
        await store.close()
