"""A house's sticks: which cuttings there are, a first plan of each at once, and what is wrong with those that have
none."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from dataclasses import replace
from typing import Annotated

from msgspec import Meta

from longpoint.shop.build import BuiltOpening, CutList, HouseKey, build_openings, cuttings
from longpoint.shop.house import House
from longpoint.shop.lay import Layer
from longpoint.shop.stages import AHEAD, Instances, looking_ahead, split, with_later
from longpoint.stock import Budget, Cutting, Replanned, Standing, StockError, StockFault, replan
from longpoint.texts import Sentence, say
from longpoint.values import Faults

PlanningSeconds = Annotated[
    float,
    Meta(ge=0, le=30),
]
NO_PLAN = "no_plan_found"  # what a search may yet find where first-fit did not

Outcome = Replanned | StockError | None
"""What a search gives: a plan, why there is none, or nothing in its time."""


class Planning:
    """A house being planned.

    Attributes:
        house: as it is described.
        openings: its openings, worked out.
        cuttings: one for each profile that has stock.
        standing: for each cutting, the sticks of an earlier plan that may be kept.
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
        standing: Callable[[Cutting], Iterable[Standing]] = lambda _: (),
    ) -> None:
        """Plan each cutting first-fit.

        Args:
            house: what to plan.
            searched: whether a search follows: it may find a plan where first-fit does not.
            openings: its openings, where they were worked out before.
            left: which of the pieces alike are still to be cut; None for all.
            standing: for a cutting, the sticks of an earlier plan that are to be kept where that costs nothing.
        """
        self.house = house
        self.openings = build_openings(house) if openings is None else openings
        self.left, self.later = split(self.openings, left)
        self.cuttings = cuttings(house, self.openings, self.left)
        stands = [tuple(standing(cutting)) for cutting in self.cuttings]
        ahead = [tuple(self._ahead(cutting, left)) if searched else () for cutting in self.cuttings]
        self.standing = tuple((*one, *more) for one, more in zip(stands, ahead, strict=True))
        self._ahead_of = frozenset(index for index, more in enumerate(ahead) if more)
        self._searched = searched
        self._layer = Layer(house, self.openings)
        self._plans: dict[int, Replanned] = {}
        # By identity, the plan beside what came of it, so that its identity is not another's.
        self._laid: dict[int, tuple[Replanned, Replanned]] = {}
        self._missing: dict[int, StockError] = {}
        refused = Faults()
        for index, cutting in enumerate(self.cuttings):
            try:
                self._plans[index] = replan(cutting, stands[index], Budget(seconds=0))
            except StockError as error:
                if searched and all(fault.code == NO_PLAN for fault in error.faults):
                    self._missing[index] = error
                else:
                    self._report(refused, cutting, error)
        refused.raise_any()

    def _ahead(self, cutting: Cutting, left: Instances | None) -> Iterable[Standing]:
        """Of plans that cost the same, those that leave room for what is cut later."""
        if not self.later:
            return ()
        whole = cuttings(self.house, self.openings, left)
        return looking_ahead(cutting, next(one for one in whole if one.profile == cutting.profile))

    @property
    def open(self) -> tuple[int, ...]:
        """Which cuttings a search may better; none where none follows."""
        if not self._searched:
            return ()
        unproven = (index for index, found in self._plans.items() if not found.plan.proven)
        return tuple(sorted({*unproven, *self._missing, *self._ahead_of}))

    @property
    def tasks(self) -> tuple[tuple[Cutting, tuple[Standing, ...]], ...]:
        """What is open, each cutting with what may be kept of an earlier plan."""
        return tuple((self.cuttings[index], self.standing[index]) for index in self.open)

    def take(self, outcomes: Mapping[int, Outcome]) -> None:
        """Take what a search found, by cutting.

        Raises:
            Refusal: when no plan gives every piece.
        """
        refused = Faults()
        for index, outcome in outcomes.items():
            if isinstance(outcome, Replanned):
                self._plans[index] = outcome
            elif index in self._missing:
                self._report(refused, self.cuttings[index], outcome or self._missing[index])
        refused.raise_any()

    @property
    def cut_list(self) -> CutList:
        """The openings with the best plans there are so far, each stick's pieces in the order to saw them."""
        plans = tuple(one.plan for one in self.plans)
        return with_later(CutList(self.house, self.openings, plans, self.left), self.later)

    @property
    def plans(self) -> tuple[Replanned, ...]:
        """The best plan of each cutting there is so far, and which sticks of an earlier one it keeps."""
        return tuple(self._laid_out(self._plans[index]) for index in range(len(self.cuttings)))

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

    def _report(self, faults: Faults, cutting: Cutting, error: StockError) -> None:
        for fault in error.faults:
            faults.add(
                self._field(cutting, fault),
                fault.code.replace("_", "-"),
                self._detail(cutting, fault),
            )

    def _field(self, cutting: Cutting, fault: StockFault) -> tuple[str | int, ...]:
        """The field of the house behind a field of a cutting."""
        number = next(
            index for index, stock in enumerate(self.house.stock) if stock.profile == cutting.profile
        )
        at = ("stock", number)
        match fault.field:
            case ("pieces", int(index), *_):
                return self._opening_or_group(cutting.pieces[index].key)
            case ("sticks", int(index), *rest):
                return (*at, "sticks", index, *map(_as_given, rest))
            case ("lengths_on_hand", int(index), *rest):
                return (
                    *at,
                    "lengths_on_hand",
                    self.house.stock[number].on_hand_of(index),
                    *map(_as_given, rest),
                )
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

    def _detail(self, cutting: Cutting, fault: StockFault) -> Sentence:
        """What is wrong, with the piece of the opening that it is wrong with, where it is one."""
        match fault.field:
            case ("pieces", int(index), *_):
                key: HouseKey = cutting.pieces[index].key
                built = self.openings[key.opening].built
                title = next(piece.title for piece in built.pieces if piece.key == key.piece)
                mark = built.opening.mark
                return say("problem", "house.piece-of-opening", mark=mark, piece=title, why=fault.detail)
        return fault.detail


def _as_given(step: str | int) -> str | int:
    return "price" if step == "price_cents" else step
