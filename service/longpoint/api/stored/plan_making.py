"""A schedule's plan: made once for what the schedule is, searched further in the time that is given, and kept."""

from __future__ import annotations

from collections.abc import Mapping
from typing import NamedTuple

import msgspec
from sqlalchemy.ext.asyncio import AsyncConnection

from longpoint.api.http.problems import NotFound, Overloaded
from longpoint.api.running.planning_pool import PlanningPool
from longpoint.api.running.searches import TellStep, search
from longpoint.api.running.threads import apart, apart_if_long
from longpoint.api.stored.stored_house import Left, StoredHouse, left_of, load_house
from longpoint.schedules import houses, plans
from longpoint.schedules.kept import read_plan, read_stick, written
from longpoint.schedules.rows import PlanRow, ScheduleRow
from longpoint.schedules.store import Store
from longpoint.shop.build import CutList, HouseKey
from longpoint.shop.left_to_cut import cut_list_of
from longpoint.shop.named_sticks import NamedStick, PlannedProfile, name_sticks
from longpoint.shop.piece_numbers import not_given_yet
from longpoint.shop.planning import Planning
from longpoint.shop.stages import split, with_later
from longpoint.shop.standing_sticks import standing_in
from longpoint.shop.stick_names import StickNames
from longpoint.stock import VERSION

SECONDS = 2.0
"""How long a plan is searched for when nobody says: as long as for a house that is sent."""
_TRIES = 5


class KeptPlan(msgspec.Struct, frozen=True):
    """A plan with its sticks.

    Attributes:
        row: As it is kept.
        profiles: What it says of each profile.
        sticks: Every stick of it, by name.
    """

    row: PlanRow
    profiles: tuple[PlannedProfile, ...]
    sticks: dict[str, NamedStick]


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

    async def make(self, seconds: float, tell: TellStep = lambda _: None) -> PlanRow:
        """The plan that stands once it has been searched for so long; 0 takes the first that is found.

        Raises:
            NotFound: when there is no such schedule any more.
            Refusal: when the house cannot be built, or no plan gives every piece.
            PlanningBusy: when too many searches wait already.
            Overloaded: when the schedule was changed again and again meanwhile.
        """
        made = await self._make(seconds, tell)
        return made if isinstance(made, PlanRow) else made[1].row

    async def first(self) -> tuple[StoredHouse, KeptPlan] | None:
        """The first plan that is found, and the house it is of; None where another caller has made one meanwhile.

        Raises:
            NotFound, Refusal, Overloaded: as `make` does.
        """
        made = await self._make(0, lambda _: None)
        return None if isinstance(made, PlanRow) else made

    async def _make(self, seconds: float, tell: TellStep) -> PlanRow | tuple[StoredHouse, KeptPlan]:
        """The plan that stands already, or a new one and its house."""
        for _ in range(_TRIES):
            async with self._store.reading() as connection:
                schedule = await self._find(connection, hold=False)
                stands = await standing_plan(connection, schedule)
                if stands is not None and is_searched(stands.row, seconds):
                    return stands.row
                before = stands or await latest_plan(connection, schedule)
                house = await load_house(connection, schedule)
            left = await left_of(house)
            planning = await apart(lambda: plan_again(house, left, before, seconds > 0))  # noqa: B023
            if seconds:
                await search(planning, self._pool, seconds, tell)
            making = Making(house, left, planning, thousandths(seconds))
            ready = await apart(lambda: making.ready(schedule, stands, before))  # noqa: B023
            async with self._store.writing() as connection:
                now = await self._find(connection, hold=True)
                if (now.digest, now.last_plan) == (schedule.digest, schedule.last_plan):
                    return house, await ready.keep(connection, now, making.budget)
        raise Overloaded(
            "The schedule was changed again and again while it was planned.", headers={"retry-after": "1"}
        )

    async def _find(self, connection: AsyncConnection, *, hold: bool) -> ScheduleRow:
        row = await houses.find(connection, self._account, self._id, hold=hold)
        if row is None:
            raise NotFound(f"There is no schedule {self._id}.")
        return row


class Further(NamedTuple):
    """What is known now of a plan that stands: that plan, and what it comes to."""

    plan: KeptPlan
    document: str

    async def keep(self, connection: AsyncConnection, schedule: ScheduleRow, budget: int) -> KeptPlan:  # noqa: ARG002
        """Keep it."""
        row = await plans.search_further(connection, self.plan.row, budget, self.document)
        return KeptPlan(row, read_plan(self.document), self.plan.sticks)


class New(NamedTuple):
    """A plan that is to be kept: what it comes to, all its sticks, those that are new in writing, the last of their
    names, and the numbers of pieces that had none."""

    profiles: tuple[PlannedProfile, ...]
    sticks: dict[str, NamedStick]
    written: dict[str, str]
    names: Mapping[str, int]
    numbers: dict[str, dict[str, int]]

    async def keep(self, connection: AsyncConnection, schedule: ScheduleRow, budget: int) -> KeptPlan:
        """Keep it under the next number."""
        document = written(self.profiles)
        row = await plans.keep(connection, schedule, VERSION, budget, document, self.written, self.names)
        await plans.add_piece_numbers(connection, schedule.id, self.numbers)
        await plans.let_go(connection, schedule.id)
        return KeptPlan(row, self.profiles, self.sticks)


class Making(msgspec.Struct, frozen=True):
    """A plan that was worked out, about to be kept."""

    house: StoredHouse
    left: Left
    planning: Planning
    budget: int

    def ready(self, schedule: ScheduleRow, stands: KeptPlan | None, before: KeptPlan | None) -> Further | New:
        """What is better than what stands, in writing; where nothing is, what is known of that."""
        if stands is not None:
            further = self._searched_further(stands)
            if further is not None:
                return Further(stands, written(further))
        names = StickNames(plans.read_names(schedule.last_names))
        had = before.sticks if before else {}
        profiles, new = self._named(names, had)
        return New(
            profiles,
            {name: new.get(name) or had[name] for one in profiles for name in one.sticks},
            {name: written(stick) for name, stick in new.items()},
            names.last,
            not_given_yet(self.left.openings, self.house.sited.ids, self.house.numbers),
        )

    def _searched_further(self, stands: KeptPlan) -> tuple[PlannedProfile, ...] | None:
        """What stands, with the bounds that are known now; None when some sticks of it can be had cheaper."""
        found = {one.plan.profile: one.plan for one in self.planning.plans}
        further = []
        for one in stands.profiles:
            plan = found.get(one.profile)
            if plan is None:
                further.append(one)
                continue
            spent = sum(stands.sticks[name].price for name in one.sticks if name in self.left.cut)
            if plan.cost_cents < one.cost - spent:
                return None
            bound = max(one.bound, plan.bound_cents + spent)
            stopped = "proven" if bound == one.cost else plan.stopped
            further.append(
                msgspec.structs.replace(one, bound=bound, stopped=stopped, seconds=round(plan.seconds, 3))
            )
        return tuple(further)

    def _named(
        self, names: StickNames, before: Mapping[str, NamedStick]
    ) -> tuple[tuple[PlannedProfile, ...], dict[str, NamedStick]]:
        waiting = {key: list(instances) for key, instances in self.left.remaining.left.items()}
        places = self.house.sited.places
        for one in self.planning.plans:
            for name in one.kept:
                for piece in before[name].pieces:
                    waiting[HouseKey(places[piece.opening_id], piece.piece)].remove(piece.instance)
        profiles: list[PlannedProfile] = []
        new: dict[str, NamedStick] = {}
        for one in self.planning.plans:
            kept = {name: before[name] for name in one.kept}
            profile, more = name_sticks(self.house.sited, one.plan, kept, waiting, names)
            profiles.append(profile)
            new |= more
        return tuple(profiles), new


def plan_again(house: StoredHouse, left: Left, before: KeptPlan | None, searched: bool) -> Planning:
    """What is left of a house, planned at once; the sticks of an earlier plan stay where that costs nothing.

    Raises:
        Refusal: when the stock cannot give what is needed; paths are into the house.
    """
    sticks = {} if before is None else uncut(before, left)
    slots = left.slots
    could = {
        name: stick for name, stick in sticks.items() if all(piece.slot in slots for piece in stick.pieces)
    }
    sited = house.sited
    return Planning(
        sited.house,
        searched=searched,
        openings=left.openings,
        left=left.remaining.left,
        standing=lambda cutting: standing_in(sited, cutting, could),
    )


def uncut(plan: KeptPlan, left: Left) -> dict[str, NamedStick]:
    """The sticks of a plan that were not cut yet."""
    return {name: stick for name, stick in plan.sticks.items() if name not in left.cut}


def planned(house: StoredHouse, left: Left, plan: KeptPlan) -> CutList:
    """The cut list of what is left, from the plan that stands."""
    now, later = split(left.openings, left.remaining.left)
    found = cut_list_of(
        house.sited, left.openings, plan.profiles, uncut(plan, left), now or {}, plan.row.number
    )
    return with_later(found, later)


async def standing_plan(connection: AsyncConnection, schedule: ScheduleRow) -> KeptPlan | None:
    """The plan that stands for what the schedule is now, with its sticks; None when there is none yet."""
    row = await plans.newest(connection, schedule, VERSION)
    return None if row is None else await load_plan(connection, row)


async def latest_plan(connection: AsyncConnection, schedule: ScheduleRow) -> KeptPlan | None:
    """The plan that was made last, with its sticks."""
    row = await plans.latest(connection, schedule.id)
    return None if row is None else await load_plan(connection, row)


async def load_plan(connection: AsyncConnection, row: PlanRow) -> KeptPlan:
    """A plan with its sticks."""
    profiles = read_plan(row.document)
    names = [name for one in profiles for name in one.sticks]
    found = await plans.sticks(connection, row.schedule_id, names)

    def read() -> dict[str, NamedStick]:
        return {name: read_stick(found[name].document) for name in names}

    return KeptPlan(row, profiles, await apart_if_long(len(names), read))


def is_searched(plan: PlanRow, seconds: float) -> bool:
    """Whether a search of so many seconds would find nothing that is not known: the plan is proven, or was searched for
    as long."""
    return plan.budget >= thousandths(seconds) or all(
        one.cost == one.bound for one in read_plan(plan.document)
    )


def thousandths(seconds: float) -> int:
    """Seconds of a search as they are kept."""
    return round(seconds * 1000)
