"""The cutting and its plan: plain values, lengths as exact fractions of an inch.

One cutting is one profile; different profiles never share a stick, so plan each on its own.

A stick is laid out from its left end: ``end_trim`` is squared off each end, then pieces follow one another
with one cut between. So n pieces fit when their lengths and n - 1 cuts come to no more than
``length - 2 * end_trim``; a piece that ends exactly there needs no last cut.

Mitered pieces take their long-point length, and an angled cut eats more along the stick than the ``kerf``: see
``eaten``. Three rules say what lies between two pieces:

* On turnable stock two mitered ends that are alike may share one cut: the next piece is turned over and moves back
  by the run, so the joint takes what the cut eats, less the run. Any other piece is cut off by the cut at its
  right end as it lies: it may be laid end for end, so that this end is the square one.
* On other stock every piece lies one way. It takes what the dearer of its two cuts eats, so that either may be
  the one that cuts it off, and a left and a right piece of one length are alike.
* With ``square_first`` a piece is cut off square and mitered afterwards: it takes the kerf. A shared cut stays what
  it is.
"""

from dataclasses import dataclass, field
from typing import Any

from longpoint.lengths import Fraction

__all__ = [
    "VERSION",
    "Budget",
    "Cutting",
    "Layout",
    "Placed",
    "Plan",
    "Progress",
    "StickKind",
    "StickOnHand",
    "Stretch",
    "Wanted",
]

VERSION = 1
"""Of the planner: counts up with each change by which the same cutting may get another plan."""

ZERO = Fraction(0)
KERF = Fraction(1, 8)
END_TRIM = Fraction(1, 2)


@dataclass(frozen=True, slots=True)
class Wanted:
    """Pieces to cut, all alike.

    Attributes:
        key: what the caller knows the line by: any value that can be compared, unique in the cutting.
        length: inches along the stick, long point to long point.
        quantity: how many.
        opening: the opening they belong to; used when one opening is to come from one stick.
        left: inches the left miter runs along the stick, width times tan(miter); zero for a square end or
            one that cannot share a cut. Only equal runs share, so give equal miters the equal value.
        right: the same for the right end.
        left_eats: inches along the stick that the cut at the left end eats, as ``eaten`` gives it; None for the
            cutting's kerf. Only ends that are alike in this, too, share a cut.
        right_eats: the same for the right end.
    """

    key: Any
    length: Fraction
    quantity: int = 1
    opening: str | None = None
    left: Fraction = ZERO
    right: Fraction = ZERO
    left_eats: Fraction | None = None
    right_eats: Fraction | None = None


@dataclass(frozen=True, slots=True)
class Stretch:
    """A stretch of a stick no piece may touch, inches from its left end."""

    start: Fraction
    end: Fraction


@dataclass(frozen=True, slots=True)
class StickKind:
    """A stick the yard sells.

    Attributes:
        key: the caller's name, unique among sticks and lengths on hand.
        length: inches, factory end to factory end.
        price_cents: of one stick.
        available: the most there are, or None for no limit.
        defects: stretches that every stick of this kind has.
    """

    key: str
    length: Fraction
    price_cents: int
    available: int | None = None
    defects: tuple[Stretch, ...] = ()


@dataclass(frozen=True, slots=True)
class StickOnHand:
    """One piece of stock on hand.

    Attributes:
        key: the caller's name, unique among sticks and lengths on hand.
        length: inches.
        price_cents: what using it is taken to cost, often zero.
        defects: stretches no piece may touch.
        end_trim: inches to square off each end; None for the cutting's.
    """

    key: str
    length: Fraction
    price_cents: int = 0
    defects: tuple[Stretch, ...] = ()
    end_trim: Fraction | None = None


@dataclass(frozen=True, slots=True)
class Cutting:
    """Everything to be cut from one profile.

    Attributes:
        profile: the caller's name for the profile.
        pieces: what to cut.
        sticks: what can be bought.
        lengths on hand: what is on hand.
        kerf: inches one cut eats.
        end_trim: inches squared off each factory end.
        keep_length: an offcut this long or longer goes back on the rack; None keeps none.
        turnable: flat, square-edged stock whose mitered ends may share a cut.
        together: lay each opening's pieces side by side on one stick, where one stick can hold them.
        square_first: pieces are cut off square and mitered afterwards, so that only shared cuts eat more than the
            kerf.
    """

    profile: str
    pieces: tuple[Wanted, ...]
    sticks: tuple[StickKind, ...]
    lengths_on_hand: tuple[StickOnHand, ...] = ()
    kerf: Fraction = KERF
    end_trim: Fraction = END_TRIM
    keep_length: Fraction | None = None
    turnable: bool = False
    together: bool = False
    square_first: bool = False

    @property
    def stock(self) -> tuple[StickKind | StickOnHand, ...]:
        """All there is to cut from, sticks first."""
        return (*self.sticks, *self.lengths_on_hand)


@dataclass(frozen=True, slots=True)
class Budget:
    """How hard to work.

    Attributes:
        seconds: of the processor, at most; 0 asks for first-fit alone. Work is counted and not timed, a little less
            than the seconds would allow, so that the same cutting gives the same plan; the clock, which is the
            process's own time on the processor, only ends what takes much longer than it was counted for.
    """

    seconds: float = 2.0


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

    def at(self, start: Fraction) -> "Placed":
        """The piece with its left-most point there."""
        return Placed(
            start, self.length, self.left, self.right, self.reversed, self.turned, self.shares_cut, self.eats
        )


@dataclass(frozen=True, slots=True)
class Layout:
    """One way a stick is cut, and how many sticks are cut so.

    Attributes:
        stick: key of the ``StickKind`` or ``Length on hand``.
        length on hand: whether it is a length on hand.
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
