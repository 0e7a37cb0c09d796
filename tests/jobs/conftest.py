"""Engines of jobs over each kind of database, with work that the tests say."""

import asyncio
from collections.abc import AsyncIterator, Callable
from typing import Any

import pytest

from longpoint.jobs.engine import Jobs
from longpoint.jobs.here import JobsHere
from longpoint.jobs.job import Bounds, Doer, NewJob, Outcome, Report
from longpoint.jobs.queued import JobsQueued
from longpoint.schedules.store import Store


class Bench:
    """Doer that ends when the test says so; what a job says is what comes of it."""

    def __init__(self) -> None:
        self.begun: list[str] = []
        self.gates: dict[str, asyncio.Event] = {}
        self.cancelled: list[str] = []
        self.reports: dict[str, Report] = {}

    async def do(self, new: NewJob, report: Report) -> Outcome:
        name = new.work.decode()
        self.begun.append(name)
        self.reports[name] = report
        try:
            if name.startswith("slow"):
                await self.gates.setdefault(name, asyncio.Event()).wait()
        except asyncio.CancelledError:
            self.cancelled.append(name)
            raise
        if name.startswith("broken"):
            raise RuntimeError("a fault of the service")
        status = 422 if name.startswith("refused") else 200
        return Outcome(status, "text/plain", {"etag": f'"{name}"'}, new.work)

    def lost(self, new: NewJob) -> Outcome:
        return Outcome(500, "text/plain", {}, b"lost " + new.work)

    @property
    def work(self) -> Doer:
        return Doer(self.do, self.lost)


def asked(name: str, account: str = "ann") -> NewJob:
    return NewJob(account, "test", f"digest of {name}", name.encode())


async def until(holds: Callable[[], Any], seconds: float = 20) -> None:
    async with asyncio.timeout(seconds):
        while not holds():
            await asyncio.sleep(0.01)


@pytest.fixture
def bench() -> Bench:
    return Bench()


@pytest.fixture(params=["here", "queued"])
async def engine(request: pytest.FixtureRequest, bench: Bench) -> AsyncIterator[Callable[..., Any]]:
    """Makes an engine, with the bounds that are given."""
    made: list[Jobs] = []
    stores: list[Store] = []
    address = postgres_of(request) if request.param == "queued" else ""

    async def make(work: Doer | None = bench.work, **bounds: Any) -> Jobs:
        jobs: Jobs
        if request.param == "here":
            assert work is not None
            jobs = JobsHere(work, Bounds(**bounds))
        else:
            stores.append(Store(address))
            jobs = JobsQueued(stores[-1], Bounds(**bounds), work)
        made.append(jobs)
        await jobs.start()
        return jobs

    yield make
    for jobs in made:
        await jobs.close()
    for store in stores:
        await store.close()


def postgres_of(request: pytest.FixtureRequest) -> str:
    """The address of a migrated PostgreSQL database."""
    import databases
    from longpoint.schedules.migrate import migrate

    address = databases.fresh_postgres(request.getfixturevalue("postgres"))

    async def migrated() -> None:
        store = Store(address)
        await migrate(store)
        await store.close()

    import threading

    thread = threading.Thread(target=lambda: asyncio.run(migrated()))
    thread.start()
    thread.join()
    return address
