"""A plan: each stick with its pieces laid out from its left end, as `model` says what lies between two of them."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Any

from longpoint.lengths import Fraction

from .model import ZERO

__all__ = ["Layout", "Placed", "Plan", "Progress"]


@dataclass(frozen=True, slots=True)
class Progress:
    """How far the search has come: the best plan's cost, the bound below which none can be, seconds gone."""

    cost_cents: int
    bound_cents: int
    seconds: float

    @property
    def gap(self) -> float:
        """How far the best plan may be above the cheapest, as a share of its cost."""
        return gap(self.cost_cents, self.bound_cents)


@dataclass(frozen=True, slots=True)
class Placed:
    """One piece's place on a stick.

    Attributes:
        start: inches from the stick's left end to the piece's left-most point.
        length: inches, long point to long point.
        left: run of the miter at the end that lies left, as placed.
        right: run of the miter at the end that lies right, as placed.
        reversed: the piece lies end for end: the left end of the ``Wanted`` is at the right.
        turned: the piece lies turned over, its long edge on the other side.
        shares_cut: its left end and the right end of the piece before are one cut.
        eats: inches along the stick that the cut takes which cuts it off what lies right of it; shared with the next
            piece, it is still the whole of what that cut eats.
    """

    start: Fraction
    length: Fraction
    left: Fraction = ZERO
    right: Fraction = ZERO
    reversed: bool = False
    turned: bool = False
    shares_cut: bool = False
    eats: Fraction = ZERO

    @property
    def end(self) -> Fraction:
        """Inches from the stick's left end to the piece's right-most point."""
        return self.start + self.length

    def at(self, start: Fraction) -> Placed:
        """The piece with its left-most point there."""
        return Placed(
            start, self.length, self.left, self.right, self.reversed, self.turned, self.shares_cut, self.eats
        )


@dataclass(frozen=True, slots=True)
class Layout:
    """One way a stick is cut, and how many sticks are cut so.

    Attributes:
        stick: key of the ``StickKind`` or ``StickOnHand``.
        on_hand: whether it is a length on hand.
        length: inches of the uncut stick.
        price_cents: of one stick.
        placed: the pieces from left to right.
        keys: for each stick cut so, the ``Piece.key`` at each place; its size is how many are cut.
        offcut: inches left to the right of the last cut, factory end and all.
        kept: whether the offcut goes back on the rack.
    """

    stick: str
    on_hand: bool
    length: Fraction
    price_cents: int
    placed: tuple[Placed, ...]
    keys: tuple[tuple[Any, ...], ...]
    offcut: Fraction
    kept: bool

    @property
    def times(self) -> int:
        """How many sticks are cut so."""
        return len(self.keys)


@dataclass(frozen=True, slots=True)
class Plan:
    """The sticks to take and how to cut them.

    Attributes:
        profile: the cutting's.
        layouts: every stick used, longest pieces first; sticks cut alike are one layout.
        cost_cents: of all sticks taken.
        bound_cents: no plan costs less; exact arithmetic, never a rounded float.
        seconds: how long the work took.
        method: what found the plan: ``"first_fit"``, ``"columns"`` or ``"branching"``.
        stopped: why the work ended: the plan is ``"proven"``; the ``"effort"`` that the budget allows was spent, or
            what is left is too hard for it; the ``"clock"`` ran out first; the cutting itself needs more ``"memory"``
            than there may be, so that a simpler one was planned in its place. Only where it is the clock may the
            same cutting with the same budget get another plan.
        split_openings: openings asked to come from one stick that no stick can hold.
        work: seconds of the budget that were used, counted and not timed.
    """

    profile: str
    layouts: tuple[Layout, ...]
    cost_cents: int
    bound_cents: int
    seconds: float
    method: str
    stopped: str = "proven"
    split_openings: tuple[str, ...] = field(default=())
    work: float = 0.0

    @property
    def proven(self) -> bool:
        """Whether no plan can cost less."""
        return self.cost_cents == self.bound_cents

    @property
    def gap(self) -> float:
        """How far this may be above the cheapest plan, as a share of its cost."""
        return gap(self.cost_cents, self.bound_cents)

    @property
    def sticks(self) -> dict[str, int]:
        """How many of each stick, lengths on hand included, by key."""
        counts: dict[str, int] = {}
        for layout in self.layouts:
            counts[layout.stick] = counts.get(layout.stick, 0) + layout.times
        return counts

    @property
    def offcuts(self) -> tuple[tuple[Fraction, int], ...]:
        """Lengths that go back on the rack, longest first, with how many of each."""
        counts: dict[Fraction, int] = {}
        for layout in self.layouts:
            if layout.kept:
                counts[layout.offcut] = counts.get(layout.offcut, 0) + layout.times
        return tuple(sorted(counts.items(), reverse=True))


def gap(cost_cents: int, bound_cents: int) -> float:
    """The share of the cost that is not yet proven needful."""
    return 0.0 if cost_cents == bound_cents else (cost_cents - bound_cents) / cost_cents
