"""A cutting: plain values, lengths as exact fractions of an inch.

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

from dataclasses import dataclass
from typing import Any

from longpoint.lengths import Fraction

__all__ = [
    "END_TRIM",
    "KERF",
    "VERSION",
    "Budget",
    "Cutting",
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
        lengths_on_hand: what is on hand.
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
