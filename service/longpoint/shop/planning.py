"""A house's sticks: which jobs there are, a first plan of each at once, and what is wrong with those that have none."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from dataclasses import replace
from typing import Annotated

from msgspec import Meta

from longpoint.shop.build import BuiltOpening, CutList, HouseKey, build_openings, cutting_jobs
from longpoint.shop.house import House
from longpoint.shop.lay import Layer
from longpoint.shop.stages import AHEAD, Instances, looking_ahead, split, with_later
from longpoint.stock import Budget, Job, Replanned, Standing, StockError, StockFault, replan
from longpoint.values import Faults

PlanningSeconds = Annotated[
    float,
    Meta(
        ge=0,
        le=30,
        description="How long to search for cheaper sticks, all profiles together, where first-fit is not proven "
        "cheapest; 0 takes first-fit.",
    ),
]
NO_PLAN = "no_plan_found"  # what a search may yet find where first-fit did not

Outcome = Replanned | StockError | None
"""What a search gives: a plan, why there is none, or nothing in its time."""


class Planning:
    """A house being planned.

    Attributes:
        house: as it is described.
        openings: its openings, worked out.
        jobs: a cutting job for each profile that has stock.
        standing: for each job, the sticks of an earlier plan that may be kept.
        left: which of the pieces alike are cut now; None for all.
        later: which only count in the cost.

    Raises:
        GeometryError: with every fault of the openings, at the fields of the house.
        Refusal: with every fault of the stock, at the fields of the house.
    """

    def __init__(
        self,
        house: House,
        *,
        searched: bool,
        openings: tuple[BuiltOpening, ...] | None = None,
        left: Mapping[HouseKey, tuple[int, ...]] | None = None,
        standing: Callable[[Job], Iterable[Standing]] = lambda _: (),
    ) -> None:
        """Plan each job first-fit.

        Args:
            house: what to plan.
            searched: whether a search follows: it may find a plan where first-fit does not.
            openings: its openings, where they were worked out before.
            left: which of the pieces alike are still to be cut; None for all.
            standing: for a job, the sticks of an earlier plan that are to be kept where that costs nothing.
        """
        self.house = house
        self.openings = build_openings(house) if openings is None else openings
        self.left, self.later = split(self.openings, left)
        self.jobs = cutting_jobs(house, self.openings, self.left)
        stands = [tuple(standing(job)) for job in self.jobs]
        ahead = [tuple(self._ahead(job, left)) if searched else () for job in self.jobs]
        self.standing = tuple((*one, *more) for one, more in zip(stands, ahead, strict=True))
        self._ahead_of = frozenset(index for index, more in enumerate(ahead) if more)
        self._searched = searched
        self._layer = Layer(house, self.openings)
        self._plans: dict[int, Replanned] = {}
        # By identity, the plan beside what came of it, so that its identity is not another's.
        self._laid: dict[int, tuple[Replanned, Replanned]] = {}
        self._missing: dict[int, StockError] = {}
        refused = Faults()
        for index, job in enumerate(self.jobs):
            try:
                self._plans[index] = replan(job, stands[index], Budget(seconds=0))
            except StockError as error:
                if searched and all(fault.code == NO_PLAN for fault in error.faults):
                    self._missing[index] = error
                else:
                    self._tell(refused, job, error)
        refused.raise_any()

    def _ahead(self, job: Job, left: Instances | None) -> Iterable[Standing]:
        """Of plans that cost the same, those that leave room for what is cut later."""
        if not self.later:
            return ()
        whole = cutting_jobs(self.house, self.openings, left)
        return looking_ahead(job, next(one for one in whole if one.profile == job.profile))

    @property
    def open(self) -> tuple[int, ...]:
        """Which jobs a search may better; none where none follows."""
        if not self._searched:
            return ()
        unproven = (index for index, found in self._plans.items() if not found.plan.proven)
        return tuple(sorted({*unproven, *self._missing, *self._ahead_of}))

    def take(self, outcomes: Mapping[int, Outcome]) -> None:
        """Take what a search found, by job.

        Raises:
            Refusal: when no plan gives every piece.
        """
        refused = Faults()
        for index, outcome in outcomes.items():
            if isinstance(outcome, Replanned):
                self._plans[index] = outcome
            elif index in self._missing:
                self._tell(refused, self.jobs[index], outcome or self._missing[index])
        refused.raise_any()

    @property
    def cut_list(self) -> CutList:
        """The openings with the best plans there are so far, each stick's pieces in the order to saw them."""
        plans = tuple(one.plan for one in self.plans)
        return with_later(CutList(self.house, self.openings, plans, self.left), self.later)

    @property
    def plans(self) -> tuple[Replanned, ...]:
        """The best plan of each job there is so far, and which sticks of an earlier one it keeps."""
        return tuple(self._laid_out(self._plans[index]) for index in range(len(self.jobs)))

    def _laid_out(self, found: Replanned) -> Replanned:
        """A plan with the pieces on its new sticks in the order to saw them; those kept stay as they were."""
        laid = self._laid.get(id(found))
        if laid is None:
            kept = tuple(name for name in found.kept if not name.startswith(AHEAD))
            stay, new = found.plan.layouts[: len(kept)], found.plan.layouts[len(kept) :]
            ordered = self._layer.laid(replace(found.plan, layouts=new))
            plan = replace(found.plan, layouts=(*stay, *ordered.layouts))
            laid = self._laid[id(found)] = found, Replanned(plan, kept, found.most)
        return laid[1]

    def _tell(self, faults: Faults, job: Job, error: StockError) -> None:
        for fault in error.faults:
            faults.add(
                self._field(job, fault),
                fault.code.replace("_", "-"),
                self._piece_named(job, fault) + fault.detail,
            )

    def _field(self, job: Job, fault: StockFault) -> tuple[str | int, ...]:
        """The field of the house behind a field of a cutting job."""
        number = next(index for index, stock in enumerate(self.house.stock) if stock.profile == job.profile)
        at = ("stock", number)
        match fault.field:
            case ("pieces", int(index), *_):
                return self._opening_or_group(job.pieces[index].key)
            case ("sticks", int(index), *rest):
                return (*at, "sticks", index, *map(_as_given, rest))
            case ("remnants", int(index), *rest):
                return (*at, "remnants", self.house.stock[number].remnant_of(index), *map(_as_given, rest))
            case ("kerf" | "end_trim" | "keep_length" as name, *_):
                return (name,)
        return at

    def _opening_or_group(self, key: HouseKey) -> tuple[str | int, ...]:
        """What groups share follows the openings, in the order of the groups that share anything."""
        index = key.opening
        if index < len(self.house.openings):
            return ("openings", index)
        sharing = [number for number, one in enumerate(self.house.groups) if one.shares]
        return ("groups", sharing[index - len(self.house.openings)])

    def _piece_named(self, job: Job, fault: StockFault) -> str:
        """Which piece of which opening a fault speaks of; nothing where it speaks of the stock."""
        match fault.field:
            case ("pieces", int(index), *_):
                key: HouseKey = job.pieces[index].key
                built = self.openings[key.opening].built
                title = next(part.title for part in built.parts if part.key == key.piece)
                return f"Opening {built.opening.mark!r}, {title}: "
        return ""


def _as_given(step: str | int) -> str | int:
    return "price" if step == "price_cents" else step
