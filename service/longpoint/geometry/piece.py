"""What the geometry room hands on: pieces, their ends, their marks, and how each was computed.

Every length is in inches and exact (`Fraction`) unless the shape makes it irrational, when it is a `float`.
Angles are degrees, `Fraction` when exact. Nothing here is rounded.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from enum import StrEnum
from typing import TYPE_CHECKING, Any, get_args, get_type_hints

import msgspec
from msgspec.structs import force_setattr

from longpoint.geometry.piece_names import PieceKey, PieceKind, named
from longpoint.geometry.spelled import Figures, Pairs
from longpoint.lengths import MADE_REAL, Fraction, Gap, Real, gap
from longpoint.values import Angle, Value, Wired

if TYPE_CHECKING:
    Degrees = Real
    Inputs = Figures | Pairs
else:
    Degrees = Angle
    Inputs = Figures
SQUARE: Degrees = 0.0


class _Lengths(dict[type, tuple[str, ...]]):
    """The fields of each kind of record that are lengths, by their types, worked out once."""

    def __missing__(self, kind: type) -> tuple[str, ...]:
        found = get_type_hints(kind).items()
        names = self[kind] = tuple(
            name for name, hint in found if any(one in (Real, Fraction) for one in (hint, *get_args(hint)))
        )
        return names


_LENGTHS = _Lengths()


def fit(record: msgspec.Struct) -> None:
    """Make the lengths of a record that goes out fit to go."""
    for name in _LENGTHS[type(record)]:
        value = getattr(record, name)
        made = MADE_REAL.get(type(value))
        if made is not None:  # as `real` does, without a call for each length
            force_setattr(record, name, made(value))


class Hand(StrEnum):
    """A side, as seen from the room or, at the saw, by whoever stands at it."""

    LEFT = "left"
    RIGHT = "right"


class CutKind(StrEnum):
    """An end's cut: square; a miter, the table turned; a bevel, the blade tilted; compound, both."""

    SQUARE = "square"
    MITER = "miter"
    BEVEL = "bevel"
    COMPOUND = "compound"


class Notch(Value, frozen=True):
    """A horn's notch: what is sawn out of a stool's back corner so that the horn lies on the wall.

    Attributes:
        depth: from the stool's back edge towards its nosing, at the jamb.
        length: from the stool's end towards its middle; the horn's own length.
        end_depth: the depth at the horn's end where the wall is out of plane; None where it is the same.
    """

    depth: Real
    length: Real
    end_depth: Real | None = None

    def __post_init__(self) -> None:
        fit(self)


class Cutout(Value, frozen=True):
    """What is sawn out of a stool's back edge between its ends, where it passes a mull or a stretch of wall.

    Attributes:
        at: from the piece's left end as it lies on the saw.
        length: along the piece.
        depth: from the back edge at its left.
        end_depth: from the back edge at its right; None where it is the same.
    """

    at: Real
    length: Real
    depth: Real
    end_depth: Real | None = None

    def __post_init__(self) -> None:
        fit(self)


class End(Value, frozen=True):
    """One end of a piece as the saw makes it.

    The piece lies face up with its outer edge (the long-point edge of a mitered piece) against the fence.

    Attributes:
        at: the end as installed: a leg's foot or head, else the side it meets (left, right, head 2).
        on_saw: which end of the piece that is as it lies on the saw.
        cut: square, miter, bevel or compound.
        miter: the saw's table off a square cut, never negative.
        swing: the side to which the front of the saw's table turns; None for a square table.
        bevel: the blade's tilt from upright, never negative.
        tilt: the side to which the top of the blade leans; None for an upright blade.
        long_edge: "outer" where the long point is on the outer edge, "inner" where it is on the inner edge,
            "back" or "face" for a bevel, None for a square cut.
        notch: the notch at this end, None without one.
    """

    at: str
    on_saw: Hand
    cut: CutKind = CutKind.SQUARE
    miter: Degrees = msgspec.field(default=SQUARE, name="miter_degrees")
    miter_direction: Hand | None = None
    bevel: Degrees = msgspec.field(default=SQUARE, name="bevel_degrees")
    bevel_direction: Hand | None = None
    long_edge: str | None = None
    notch: Notch | None = None

    def __post_init__(self) -> None:
        # A whole number of degrees is written as the plain number it is.
        if self.miter is not SQUARE:
            miter = float(self.miter)
            force_setattr(self, "miter", miter if miter.is_integer() else Angle(miter))
        if self.bevel is not SQUARE:
            bevel = float(self.bevel)
            force_setattr(self, "bevel", bevel if bevel.is_integer() else Angle(bevel))


class Mark(Value, frozen=True):
    """A layout mark on a piece.

    Attributes:
        name: what to mark, in the trade's words.
        at: distance along the piece from its left end as it lies on the saw (from that end's farthest point).
        across: distance from the outer edge, None for a mark right across.
    """

    name: str
    at: Real
    across: Real | None = None

    def __post_init__(self) -> None:
        if self.across is not None:
            fit(self)
        elif (
            made := MADE_REAL.get(type(self.at))
        ) is not None:  # as `fit` does: nothing is made as often as marks
            force_setattr(self, "at", made(self.at))


class Step(Value, frozen=True):
    """How one figure was computed.

    Attributes:
        figure: the piece's field it gives.
        rule: the rule in words, naming its inputs.
        inputs: each input's name and value.
    """

    figure: str
    rule: str
    inputs: Inputs

    def __post_init__(self) -> None:
        if isinstance(self.inputs, tuple):
            force_setattr(self, "inputs", Figures(self.inputs))


class JointError(Wired):
    """The widest that a miter of a piece can open or bind because its length was rounded, were all that rounding added
    or took to fall there.

    Attributes:
        length: the piece's length.
        ends: its ends; the one nearer to square opens wider.
    """

    __slots__ = ("ends", "length")

    def __init__(self, length: Real, ends: tuple[End, End]) -> None:
        self.length = length
        self.ends = ends

    def __eq__(self, other: object) -> bool:
        return isinstance(other, JointError) and (self.length, self.ends) == (other.length, other.ends)

    def __hash__(self) -> int:
        return hash((self.length, self.ends))

    def written(self, write: Any) -> str:
        left, right = self.ends
        added = abs(write.added(self.length))
        if off_square := min(left.miter + left.bevel, right.miter + right.bevel):
            added *= math.cos(math.radians(off_square))
        return gap(added, write.unit)

    @classmethod
    def schema(cls) -> dict[str, Any]:
        return Gap.schema()


class Taper(Value, frozen=True):
    """Rip widths at a piece's two ends as it lies on the saw.

    Attributes:
        left: At its left end.
        right: At its right end.
    """

    left: Real
    right: Real

    def __post_init__(self) -> None:
        fit(self)

    def __iter__(self) -> Iterator[Real]:
        return iter((self.left, self.right))

    def __getitem__(self, end: int) -> Real:
        return (self.left, self.right)[end]


class Piece(Value, frozen=True):
    """One piece of trim.

    Attributes:
        kind: What it is.
        side: Where it goes at the opening: left, right, head and so on; empty for a piece that has no side.
        profile: The stock it is cut from.
        short_point: Length along the inner edge (short point to short point on a mitered head).
        long_point: Length along the outer edge.
        overall: The length it takes from a stick: its farthest extent.
        width: Finished width across the face.
        thickness: Finished thickness.
        ends: Left and right end as it lies on the saw.
        rip_width: Width to rip it to, the wider end's where it tapers; null where the stock's own width is kept.
        marks: What to mark along it before it is cut or installed.
        how: How each of its figures was computed.
        notes: What the person should know of this piece.
        taper: Its rip widths where they differ at its two ends; null where it is parallel.
        cutouts: What is sawn out of its back edge between its ends.
        quantity: How many there are, those of openings alike taken together.
        title: Its name in words.
        key: Its name in its opening, by which it is named elsewhere.
        joint_error: The widest a miter of it can open or bind because `overall` was rounded, were all of the residual
            to fall on one joint.
    """

    kind: PieceKind
    side: str
    profile: str
    short_point: Real
    long_point: Real
    overall: Real
    width: Real
    thickness: Fraction
    ends: tuple[End, End]
    rip_width: Real | None = None
    marks: tuple[Mark, ...] = ()
    how: tuple[Step, ...] = ()
    notes: tuple[str, ...] = ()
    taper: Taper | None = None
    cutouts: tuple[Cutout, ...] = ()
    quantity: int = 1
    title: str = ""
    key: PieceKey = None  # type: ignore[assignment] # set as it is made, as joint_error is
    joint_error: JointError = None  # type: ignore[assignment]

    def __post_init__(self) -> None:
        fit(self)
        key, title = named(self.kind, self.side)
        force_setattr(self, "joint_error", JointError(self.overall, self.ends))
        force_setattr(self, "key", key)
        if not self.title:
            force_setattr(self, "title", title)
