"""A schedule's plan: made once for what the schedule is, searched further in the time that is given, and kept."""

from __future__ import annotations

from functools import lru_cache

from sqlalchemy.ext.asyncio import AsyncConnection

from longpoint.api.http.problems import NotFound, Overloaded
from longpoint.api.running.threads import apart, apart_if_long
from longpoint.api.stored.stored_house import house_rows, left_here
from longpoint.jobs.planning_pool import PlanningPool
from longpoint.jobs.searches import ReportStep
from longpoint.schedules import houses, plans
from longpoint.schedules.house_rows import StoredHouse
from longpoint.schedules.kept import read_plan
from longpoint.schedules.making import KeptPlan, MadePlan, PlanJob, PlanRows
from longpoint.schedules.rows import PlanRow, ScheduleRow
from longpoint.schedules.store import Store
from longpoint.stock import VERSION
from longpoint.texts import say

SECONDS = 2.0
"""How long a plan is searched for when nobody says: as long as for a house that is sent."""
_TRIES = 5


class Maker:
    """Makes the plans of one schedule.

    Args:
        store: Where it is kept.
        pool: What searches.
        account_id: Whose schedule it must be.
        id: The schedule's.
    """

    def __init__(self, store: Store, pool: PlanningPool, account_id: str, id: str) -> None:
        self._store = store
        self._pool = pool
        self._account = account_id
        self._id = id

    async def make(self, seconds: float, report: ReportStep = lambda _: None) -> PlanRow:
        """The plan that stands once it has been searched for so long; 0 takes the first that is found.

        Raises:
            NotFound: when there is no such schedule any more.
            Refusal: when the house cannot be built, or no plan gives every piece.
            PlanningBusy: when too many searches wait already.
            Overloaded: when the schedule was changed again and again meanwhile.
        """
        for _ in range(_TRIES):
            found = await self._find(seconds)
            if isinstance(found, PlanRow):
                return found
            schedule, job = found
            change = await self._pool.make(job, seconds, report) if seconds else None
            if change is None:
                _, made = await make_at_once(job)
                change = made.change
            async with self._store.writing() as connection:
                if await self._is_as_it_was(connection, schedule):
                    return await plans.keep_made(connection, schedule, VERSION, thousandths(seconds), change)
        raise _changed()

    async def first(self) -> tuple[StoredHouse, KeptPlan] | None:
        """The first plan that is found, and the house it is of; None where another caller has made one meanwhile.

        Raises:
            NotFound, Refusal, Overloaded: as `make` does.
        """
        for _ in range(_TRIES):
            found = await self._find(0)
            if isinstance(found, PlanRow):
                return None
            schedule, job = found
            house, made = await make_at_once(job)
            async with self._store.writing() as connection:
                if await self._is_as_it_was(connection, schedule):
                    row = await plans.keep_made(connection, schedule, VERSION, 0, made.change)
                    return house, KeptPlan(row, made.profiles, made.sticks)
        raise _changed()

    async def _find(self, seconds: float) -> PlanRow | tuple[ScheduleRow, PlanJob]:
        """The plan that stands, where it was searched for so long, else what makes a better one."""
        async with self._store.reading() as connection:
            schedule = await self._schedule(connection, hold=False)
            stands = await plans.newest(connection, schedule, VERSION)
            if stands is not None and is_searched(stands, seconds):
                return stands
            return schedule, await plan_job(connection, schedule, stands, searched=seconds > 0)

    async def _schedule(self, connection: AsyncConnection, *, hold: bool) -> ScheduleRow:
        row = await houses.find(connection, self._account, self._id, hold=hold)
        if row is None:
            raise NotFound(say("problem", "schedule.unknown", id=self._id))
        return row

    async def _is_as_it_was(self, connection: AsyncConnection, schedule: ScheduleRow) -> bool:
        """Whether a schedule, held from now on, is what its plan was worked out from."""
        now = await self._schedule(connection, hold=True)
        return (now.digest, now.last_plan) == (schedule.digest, schedule.last_plan)


def _changed() -> Overloaded:
    return Overloaded(say("problem", "schedule.changed-while-planned"), headers={"retry-after": "1"})


async def make_at_once(job: PlanJob) -> tuple[StoredHouse, MadePlan]:
    """The first plan that is found, made in a thread, and the house it is of.

    Raises:
        Refusal: when the house cannot be built, or no plan gives every piece.
    """

    def work() -> tuple[StoredHouse, MadePlan]:
        house = job.rows.house()
        return house, job._replace(searched=False).of(house, left_here(house)).made()

    return await apart(work)


async def plan_job(
    connection: AsyncConnection, schedule: ScheduleRow, stands: PlanRow | None, *, searched: bool
) -> PlanJob:
    """What makes a plan of what a schedule is now; `stands` is the plan that a search may better."""
    before = None if stands else await plans.latest(connection, schedule.id)
    return PlanJob(
        await house_rows(connection, schedule),
        None if stands is None else await plan_rows(connection, stands),
        None if before is None else await plan_rows(connection, before),
        searched,
    )


async def plan_rows(connection: AsyncConnection, row: PlanRow) -> PlanRows:
    """A plan with its sticks, as rows."""
    names = [name for one in read_plan(row.document) for name in one.sticks]
    return PlanRows(row, await plans.sticks(connection, row.schedule_id, names))


async def load_plan(connection: AsyncConnection, row: PlanRow) -> KeptPlan:
    """A plan with its sticks."""
    rows = await plan_rows(connection, row)
    return await apart_if_long(len(rows.sticks), rows.plan)


def is_searched(plan: PlanRow, seconds: float) -> bool:
    """Whether a search of so many seconds would find nothing that is not known: the plan is proven, or was searched for
    as long."""
    return plan.budget >= thousandths(seconds) or _is_proven(plan.document)


@lru_cache(maxsize=256)
def _is_proven(document: str) -> bool:
    return all(one.cost == one.bound for one in read_plan(document))


def thousandths(seconds: float) -> int:
    """Seconds of a search as they are kept."""
    return round(seconds * 1000)
