"""A schedule's plan, worked out from rows and put in writing: in this process, or in one that only computes."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import NamedTuple

import msgspec

from longpoint.schedules.house_rows import HouseRows, Left, StoredHouse, find_left
from longpoint.schedules.kept import read_names, read_plan, read_stick, written
from longpoint.schedules.rows import PlanRow, StickRow
from longpoint.shop.build import CutList, HouseKey
from longpoint.shop.left_to_cut import cut_list_of
from longpoint.shop.named_sticks import NamedStick, PlannedProfile, name_sticks
from longpoint.shop.piece_numbers import Numbers, not_given_yet
from longpoint.shop.planning import Outcome, Planning
from longpoint.shop.stages import split, with_later
from longpoint.shop.standing_sticks import standing_in
from longpoint.shop.stick_names import StickNames
from longpoint.stock import Cutting, Standing


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


class PlanRows(NamedTuple):
    """The rows of a plan."""

    row: PlanRow
    sticks: dict[str, StickRow]

    def plan(self) -> KeptPlan:
        """What they say."""
        profiles = read_plan(self.row.document)
        names = [name for one in profiles for name in one.sticks]
        return KeptPlan(self.row, profiles, {name: read_stick(self.sticks[name].document) for name in names})


class FurtherPlan(NamedTuple):
    """What is known now of a plan that stands: its number, and what it comes to, in writing."""

    number: int
    document: str


class NewPlan(NamedTuple):
    """A plan to be kept, in writing.

    Attributes:
        document: What it comes to.
        sticks: Those that no plan had before, by name.
        moved: Those that come from elsewhere than before, by name.
        names: By letter, the highest number given to a stick.
        numbers: Those of all pieces of openings where some had none.
        numbered_before: Which of these openings had some.
    """

    document: str
    sticks: dict[str, str]
    moved: dict[str, str]
    names: Mapping[str, int]
    numbers: Numbers
    numbered_before: tuple[str, ...]


class MadePlan(NamedTuple):
    """A plan that was worked out: what it says of each profile, all its sticks, and how it is to be kept."""

    profiles: tuple[PlannedProfile, ...]
    sticks: dict[str, NamedStick]
    change: NewPlan | FurtherPlan


class PlanJob(NamedTuple):
    """The making of a plan, as it goes to where it is worked out.

    Attributes:
        rows: Of the schedule.
        stands: The plan that stands, which a search may better.
        before: The plan before, whose sticks stay where that costs nothing.
        searched: Whether a search follows.
    """

    rows: HouseRows
    stands: PlanRows | None
    before: PlanRows | None
    searched: bool

    def prepare(self) -> Making:
        """What is to be searched.

        Raises:
            Refusal: when the house cannot be built, or no plan gives every piece.
        """
        house = self.rows.house()
        return self.of(house, find_left(house))

    def of(self, house: StoredHouse, left: Left) -> Making:
        """The same of a house that was worked out already."""
        stands = self.stands and self.stands.plan()
        before = self.before.plan() if stands is None and self.before else None
        planning = plan_again(house, left, stands or before, self.searched)
        return Making(house, left, planning, stands, before)


class Making(NamedTuple):
    """A plan being made: the house, what is left of it, its sticks as far as they are planned, and earlier ones."""

    house: StoredHouse
    left: Left
    planning: Planning
    stands: KeptPlan | None
    before: KeptPlan | None

    @property
    def tasks(self) -> tuple[tuple[Cutting, tuple[Standing, ...]], ...]:
        """What a search may better."""
        return self.planning.tasks

    def finish(self, outcomes: Sequence[Outcome]) -> NewPlan | FurtherPlan:
        """With what a search found for each task, how the plan is to be kept.

        Raises:
            Refusal: when no plan gives every piece.
        """
        self.planning.take(dict(zip(self.planning.open, outcomes, strict=True)))
        return self.made().change

    def made(self) -> MadePlan:
        """What is better than what stands; where nothing is, what is known of that."""
        if self.stands is not None:
            further = self._searched_further(self.stands)
            if further is not None:
                change = FurtherPlan(self.stands.row.number, written(further))
                return MadePlan(further, self.stands.sticks, change)
        names = StickNames(read_names(self.house.schedule.last_names))
        before = self.stands or self.before
        had = before.sticks if before else {}
        profiles, new = self._named(names, had)
        numbers = not_given_yet(self.left.openings, self.house.sited.ids, self.house.numbers)
        return MadePlan(
            profiles,
            {name: new.get(name) or had[name] for one in profiles for name in one.sticks},
            NewPlan(
                document=written(profiles),
                sticks={name: written(stick) for name, stick in new.items() if name not in had},
                moved={name: written(stick) for name, stick in new.items() if name in had},
                names=names.last,
                numbers=numbers,
                numbered_before=tuple(id for id in numbers if id in self.house.numbers),
            ),
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
        missing = CutList(self.house.sited.house, self.left.openings, ()).unstocked
        return (*profiles, *map(PlannedProfile.missing, missing)), new


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
