"""Both engines of jobs keep to one interface: what is asked once is done once, in turn, and kept for a while."""

import asyncio
from collections.abc import Callable
from typing import Any

import pytest

from jobs.conftest import Bench, asked, until
from longpoint.jobs.engine import TooMany
from longpoint.jobs.job import PlanProgress, Progressed, State
from longpoint.stock import Progress
from longpoint.values import Cents

Engine = Callable[..., Any]


async def test_a_job_is_done_and_its_outcome_kept(engine: Engine) -> None:
    jobs = await engine()
    job = await jobs.ask(asked("one"))
    assert job.state in (State.WAITING, State.WORKING)
    done = await jobs.ended(job, 20)
    assert (done.state, done.status, done.tries, done.gone) == (State.DONE, 200, 1, False)
    assert done.created_at <= done.started_at <= done.ended_at < done.expires_at
    outcome = await jobs.outcome("ann", job.id)
    assert (outcome.status, outcome.media_type, outcome.headers, outcome.body) == (
        200,
        "text/plain",
        {"etag": '"one"'},
        b"one",
    )


async def test_the_same_work_is_one_job_while_it_is_under_way_and_kept(engine: Engine, bench: Bench) -> None:
    jobs = await engine()
    first = await jobs.ask(asked("slow"))
    again = await asyncio.gather(*(jobs.ask(asked("slow")) for _ in range(5)))
    assert {one.id for one in again} == {first.id}
    other = await jobs.ask(asked("slow", "bob"))
    assert other.id != first.id
    await until(lambda: "slow" in bench.gates)
    bench.gates["slow"].set()
    await jobs.ended(first, 20)
    assert (await jobs.ask(asked("slow"))).id == first.id


@pytest.mark.parametrize("name", ["refused", "broken"])
async def test_what_failed_stays_failed_and_asked_again_is_tried_again(
    engine: Engine, bench: Bench, name: str
) -> None:
    jobs = await engine()
    job = await jobs.ended(await jobs.ask(asked(name)), 20)
    assert job.state is State.FAILED
    assert (await jobs.outcome("ann", job.id)).status == (422 if name == "refused" else 500)
    again = await jobs.ended(await jobs.ask(asked(name)), 20)
    assert again.id != job.id
    assert bench.begun == [name, name]
    assert (await jobs.find("ann", job.id)).state is State.FAILED


async def test_another_accounts_job_is_none(engine: Engine) -> None:
    jobs = await engine()
    job = await jobs.ask(asked("slow"))
    assert await jobs.find("bob", job.id) is None
    assert await jobs.outcome("bob", job.id) is None
    assert await jobs.cancel("bob", job.id) is None
    assert (await jobs.find("ann", job.id)).state is not State.CANCELLED


async def test_cancelled_work_ends_and_cancelling_twice_is_no_more(engine: Engine, bench: Bench) -> None:
    jobs = await engine()
    job = await jobs.ask(asked("slow"))
    await until(lambda: bench.begun)
    first = await jobs.cancel("ann", job.id)
    assert first.state is State.CANCELLED
    await until(lambda: bench.cancelled == ["slow"])
    assert await jobs.cancel("ann", job.id) == first
    assert await jobs.outcome("ann", job.id) is None
    assert (await jobs.ask(asked("slow"))).id != job.id


async def test_cancelled_while_it_waits_it_is_never_begun(engine: Engine, bench: Bench) -> None:
    jobs = await engine()
    for at in range(2):
        await jobs.ask(asked(f"slow {at}"))
    await until(lambda: len(bench.begun) == 2)
    waiting = await jobs.ask(asked("waits"))
    assert (await jobs.cancel("ann", waiting.id)).state is State.CANCELLED
    for gate in bench.gates.values():
        gate.set()
    last = await jobs.ended(await jobs.ask(asked("last")), 20)
    assert last.state is State.DONE
    assert "waits" not in bench.begun


async def test_a_callers_queue_does_not_delay_anothers_first_job(engine: Engine, bench: Bench) -> None:
    jobs = await engine()
    for at in range(12):
        await jobs.ask(asked(f"slow {at}"))
    await until(lambda: len(bench.begun) == 2)
    first = await jobs.ask(asked("first", "bob"))
    assert (await jobs.line(first)).ahead <= 12
    bench.gates["slow 0"].set()
    done = await jobs.ended(first, 20)
    assert done.state is State.DONE
    assert len(bench.begun) <= 5


async def test_there_is_an_end_to_what_is_taken(engine: Engine, bench: Bench) -> None:
    jobs = await engine(per_account=5, in_all=8)
    for at in range(5):
        await jobs.ask(asked(f"slow {at}"))
    with pytest.raises(TooMany) as own:
        await jobs.ask(asked("slow more"))
    assert own.value.own
    assert own.value.seconds > 0
    assert (await jobs.ask(asked("slow 3"))).operation == "test"  # what is there already takes no place
    for at in range(3):
        await jobs.ask(asked(f"slow b{at}", "bob"))
    with pytest.raises(TooMany) as all:
        await jobs.ask(asked("slow more", "cid"))
    assert not all.value.own
    await until(lambda: len(bench.gates) == 2)


async def test_who_waits_hears_of_each_change(engine: Engine, bench: Bench) -> None:
    jobs = await engine()
    job = await jobs.ask(asked("slow"))
    await until(lambda: bench.begun)
    working = await jobs.changed(job, 20)
    assert working.state is State.WORKING
    bench.reports["slow"]("casing", Progress(900, 700, 0.5))
    told = await jobs.changed(working, 20)
    assert [(one.profile, str(one.cost)) for one in told.progress] == [("casing", "9.00")]
    assert told.step > working.step
    bench.gates["slow"].set()
    assert (await jobs.changed(told, 20)).state is State.DONE


async def test_nobody_waits_longer_than_they_said(engine: Engine) -> None:
    jobs = await engine()
    job = await jobs.ask(asked("slow"))
    async with asyncio.timeout(3):
        assert not (await jobs.ended(job, 0.3)).ended


async def test_results_go_by_size_and_the_newest_stays(
    engine: Engine, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("longpoint.jobs.worker._LOOKED_AFTER", 0.1)
    jobs = await engine(kept_bytes=10)
    old = await jobs.ended(await jobs.ask(asked("eight by")), 20)
    new = await jobs.ended(await jobs.ask(asked("and more")), 20)
    await _gone(jobs, old.id)
    assert await jobs.outcome("ann", old.id) is None
    assert (await jobs.outcome("ann", new.id)).body == b"and more"
    assert (await jobs.ask(asked("eight by"))).id != old.id


async def test_results_go_by_time(engine: Engine, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("longpoint.jobs.worker._LOOKED_AFTER", 0.1)
    jobs = await engine(kept_seconds=0.3)
    job = await jobs.ended(await jobs.ask(asked("short")), 20)
    await _gone(jobs, job.id)
    assert (await jobs.find("ann", job.id)).state is State.DONE


async def _gone(jobs: Any, id: str) -> None:
    async with asyncio.timeout(10):
        while not (await jobs.find("ann", id)).gone:
            await asyncio.sleep(0.02)


def test_progress_does_not_go_back() -> None:
    known = Progressed()
    assert known.take(PlanProgress("casing", Cents(900), Cents(700), 0.22, 2.0))
    assert not known.take(PlanProgress("casing", Cents(1000), Cents(600), 0.4, 0.1))
    assert known.take(PlanProgress("casing", Cents(1000), Cents(800), 0.2, 0.1))
    assert known.profiles["casing"] == PlanProgress("casing", Cents(900), Cents(800), 0.2, 2.0)
