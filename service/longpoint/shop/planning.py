"""A house's sticks: which jobs there are, a first plan of each at once, and what is wrong with those that have none."""

from __future__ import annotations

from collections.abc import Mapping

from longpoint.shop.build import BuiltOpening, CutList, HouseKey, build_openings, cutting_jobs
from longpoint.shop.house import House
from longpoint.shop.lay import Layer
from longpoint.stock import Budget, Job, Plan, StockError, StockFault, plan
from longpoint.values import Faults

NO_PLAN = "no_plan_found"  # what a search may yet find where first-fit did not

Outcome = Plan | StockError | None
"""What a search gives: a plan, why there is none, or nothing in its time."""


class Planning:
    """A house being planned.

    Attributes:
        house: as it is described.
        openings: its openings, worked out.
        jobs: a cutting job for each profile that has stock.

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
    ) -> None:
        """Plan each job first-fit.

        Args:
            house: what to plan.
            searched: whether a search follows: it may find a plan where first-fit does not.
            openings: its openings, where they were worked out before.
            left: which of the pieces alike are still to be cut; None for all.
        """
        self.house = house
        self.openings = build_openings(house) if openings is None else openings
        self.left = left
        self.jobs = cutting_jobs(house, self.openings, left)
        self._searched = searched
        self._plans: dict[int, Plan] = {}
        self._missing: dict[int, StockError] = {}
        refused = Faults()
        for index, job in enumerate(self.jobs):
            try:
                self._plans[index] = plan(job, Budget(seconds=0))
            except StockError as error:
                if searched and all(fault.code == NO_PLAN for fault in error.faults):
                    self._missing[index] = error
                else:
                    self._tell(refused, job, error)
        refused.raise_any()

    @property
    def open(self) -> tuple[int, ...]:
        """Which jobs a search may better; none where none follows."""
        if not self._searched:
            return ()
        unproven = (index for index, found in self._plans.items() if not found.proven)
        return tuple(sorted((*unproven, *self._missing)))

    def take(self, outcomes: Mapping[int, Outcome]) -> None:
        """Take what a search found, by job.

        Raises:
            Refusal: when no plan gives every piece.
        """
        refused = Faults()
        for index, outcome in outcomes.items():
            if isinstance(outcome, Plan):
                self._plans[index] = outcome
            elif index in self._missing:
                self._tell(refused, self.jobs[index], outcome or self._missing[index])
        refused.raise_any()

    @property
    def cut_list(self) -> CutList:
        """The openings with the best plans there are so far, each stick's pieces in the order to saw them."""
        layer = Layer(self.house, self.openings)
        plans = tuple(layer.laid(self._plans[index]) for index in range(len(self.jobs)))
        return CutList(self.house, self.openings, plans, self.left)

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
