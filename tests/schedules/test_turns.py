"""Turns at the database: never more than there are, those under way first, and none lost with whoever went away."""

import asyncio

import pytest
from hypothesis import given
from hypothesis import strategies as st

from longpoint.schedules.errors import DatabaseBusy
from longpoint.schedules.turns import Turns

KINDS = st.lists(st.tuples(st.booleans(), st.integers(0, 3), st.booleans()), max_size=20)


@given(KINDS, st.integers(1, 3))
def test_never_more_at_once_than_there_are_and_none_is_lost(
    kinds: list[tuple[bool, int, bool]], most: int
) -> None:
    """Some hold their turn for a while, some go away while they wait or while they hold it."""

    async def run() -> None:
        turns, at_once = Turns(most, wait=60), 0

        async def hold(under_way: bool, ticks: int) -> None:
            nonlocal at_once
            async with turns.take(under_way=under_way):
                at_once += 1
                assert at_once <= most
                try:
                    for _ in range(ticks):
                        await asyncio.sleep(0)
                finally:
                    at_once -= 1

        tasks = []
        for under_way, ticks, leaves in kinds:
            task = asyncio.create_task(hold(under_way, ticks))
            tasks.append(task)
            if leaves:
                await asyncio.sleep(0)
                task.cancel()
        for done in await asyncio.gather(*tasks, return_exceptions=True):
            assert done is None or isinstance(done, asyncio.CancelledError)
        async with asyncio.timeout(5), asyncio.TaskGroup() as all_of_them:
            for _ in range(most):
                all_of_them.create_task(hold(True, 1))

    asyncio.run(run())


async def test_those_under_way_go_before_those_that_come() -> None:
    turns, order = Turns(1, wait=5), []

    async def take(name: str, *, under_way: bool) -> None:
        async with turns.take(under_way=under_way):
            order.append(name)

    async with turns.take(under_way=True):
        tasks = []
        for name, under_way in (("a", False), ("b", False), ("c", True), ("d", True)):
            tasks.append(asyncio.create_task(take(name, under_way=under_way)))
            await asyncio.sleep(0)
    await asyncio.gather(*tasks)
    assert order == ["c", "d", "a", "b"]


async def test_whoever_waits_too_long_is_told_and_keeps_nobody_else_waiting() -> None:
    turns = Turns(1, wait=0.02)
    async with turns.take(under_way=True):
        with pytest.raises(DatabaseBusy):
            async with turns.take(under_way=False):
                pass
    async with turns.take(under_way=False):
        pass
