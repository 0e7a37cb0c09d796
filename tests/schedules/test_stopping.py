"""What a stopped request or search leaves of its connection: nothing that waits, so that the service can end."""

import asyncio

import pytest
from sqlalchemy import text

from accounts import storing

LONG = (
    "WITH RECURSIVE counted(n) AS (SELECT 1 UNION ALL SELECT n + 1 FROM counted WHERE n < 1000000) "
    "SELECT count(*) FROM counted"
)


@pytest.mark.parametrize("writes", [False, True])
@pytest.mark.parametrize("times", [1, 3])
async def test_one_stopped_amid_a_statement_leaves_nothing_waiting(
    database: str, times: int, writes: bool
) -> None:
    async with storing(database) as store:

        async def at_it() -> None:
            async with store.writing() if writes else store.reading() as connection:
                begun.set()
                await connection.execute(text(LONG))

        begun = asyncio.Event()
        task = asyncio.create_task(at_it())
        await begun.wait()
        for _ in range(times):
            await asyncio.sleep(0.01)
            task.cancel()
        assert isinstance((await asyncio.gather(task, return_exceptions=True))[0], asyncio.CancelledError)
        async with store.writing() as connection:
            assert (await connection.execute(text("SELECT 1"))).scalar_one() == 1
    await asyncio.sleep(0)
    assert asyncio.all_tasks() == {asyncio.current_task()}
