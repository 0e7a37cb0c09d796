"""What the geometry room hands on: parts, their ends, their marks, and how each was computed.

Every length is in inches and exact (`Fraction`) unless the shape makes it irrational, when it is a `float`.
Angles are degrees, `Fraction` when exact. Nothing here is rounded.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from enum import StrEnum
from typing import TYPE_CHECKING, Any, Self

import msgspec
from msgspec.structs import force_setattr

from longpoint.geometry.spelled import Figures, Pairs
from longpoint.lengths import Fraction, Gap, Length, PositiveLength, Real, real, rounded
from longpoint.values import Angle, Unreadable, Value, Wired

if TYPE_CHECKING:
    Degrees = Real
    Inputs = Figures | Pairs
else:
    Degrees = Angle
    Inputs = Figures
SQUARE = Angle(0)
UNFIT = (float, Length, PositiveLength)


def _fit(record: msgspec.Struct, *names: str) -> None:
    """Make the lengths of a record that goes out fit to go."""
    for name in names:
        value = getattr(record, name)
        if value is not None and type(value) in UNFIT:
            force_setattr(record, name, real(value))


class PartKind(StrEnum):
    """What a part is. Legs stand at the sides; a return takes an end back to the wall."""

    STOOL = "stool"
    APRON = "apron"
    APRON_RETURN = "apron_return"
    CASING_LEG = "casing_leg"
    CASING_HEAD = "casing_head"
    CASING_SILL = "casing_sill"
    PLINTH_BLOCK = "plinth_block"
    STOOL_RETURN = "stool_return"
    BACK_BAND = "back_band"
    CORNER_BLOCK = "corner_block"
    FILLET = "fillet"
    FILLET_RETURN = "fillet_return"
    CAP = "cap"
    CAP_RETURN = "cap_return"
    MULL_CASING = "mull_casing"
    JAMB_EXTENSION = "jamb_extension"
    LEVELLING_STRIP = "levelling_strip"
    JAMB_LEG = "jamb_leg"
    HEAD_JAMB = "head_jamb"
    DOOR_STOP = "door_stop"


class Hand(StrEnum):
    """A side, as seen from the room or, at the saw, by whoever stands at it."""

    LEFT = "left"
    RIGHT = "right"


class CutKind(StrEnum):
    """An end's cut: square; a mitre, the table turned; a bevel, the blade tilted; compound, both."""

    SQUARE = "square"
    MITRE = "mitre"
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
        _fit(self, "depth", "length", "end_depth")


class Cutout(Value, frozen=True):
    """What is sawn out of a stool's back edge between its ends, where it passes a mull or a stretch of wall.

    Attributes:
        at: from the part's left end as it lies on the saw.
        length: along the part.
        depth: from the back edge at its left.
        end_depth: from the back edge at its right; None where it is the same.
    """

    at: Real
    length: Real
    depth: Real
    end_depth: Real | None = None

    def __post_init__(self) -> None:
        _fit(self, "at", "length", "depth", "end_depth")


class End(Value, frozen=True):
    """One end of a part as the saw makes it.

    The part lies face up with its outer edge (the long-point edge of a mitred piece) against the fence.

    Attributes:
        at: the end as installed: a leg's foot or head, else the side it meets (left, right, head 2).
        on_saw: which end of the part that is as it lies on the saw.
        cut: square, mitre, bevel or compound.
        mitre: the saw's table off a square cut, never negative.
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
    mitre: Degrees = msgspec.field(default=SQUARE, name="mitre_degrees")
    swing: Hand | None = None
    bevel: Degrees = msgspec.field(default=SQUARE, name="bevel_degrees")
    tilt: Hand | None = None
    long_edge: str | None = None
    notch: Notch | None = None

    def __post_init__(self) -> None:
        if self.mitre is not SQUARE:
            force_setattr(self, "mitre", Angle(self.mitre))
        if self.bevel is not SQUARE:
            force_setattr(self, "bevel", Angle(self.bevel))


class Mark(Value, frozen=True):
    """A layout mark on a part.

    Attributes:
        name: what to mark, in the trade's words.
        at: distance along the part from its left end as it lies on the saw (from that end's farthest point).
        across: distance from the outer edge, None for a mark right across.
    """

    name: str
    at: Real
    across: Real | None = None

    def __post_init__(self) -> None:
        _fit(self, "at", "across")


class Step(Value, frozen=True):
    """How one figure was computed.

    Attributes:
        figure: the part's field it gives.
        rule: the rule in words, naming its inputs.
        inputs: each input's name and value.
    """

    figure: str
    rule: str
    inputs: Inputs

    def __post_init__(self) -> None:
        if isinstance(self.inputs, tuple):
            force_setattr(self, "inputs", Figures(self.inputs))


class PieceKey(Wired):
    """Names a piece within its opening: `casing_leg/left`, `stool`.

    Attributes:
        kind: what it is.
        side: where it goes; "" for a piece that has none.
    """

    __slots__ = ("kind", "side")

    def __init__(self, kind: PartKind | str, side: str = "") -> None:
        self.kind = kind
        self.side = side

    def __eq__(self, other: object) -> bool:
        return isinstance(other, PieceKey) and (self.kind, self.side) == (other.kind, other.side)

    def __hash__(self) -> int:
        return hash((self.kind, self.side))

    def __lt__(self, other: PieceKey) -> bool:
        return str(self) < str(other)

    def __str__(self) -> str:
        return f"{self.kind}/{self.side}" if self.side else str(self.kind)

    __repr__ = __str__

    @classmethod
    def read(cls, given: Any, unit: Any) -> Self:  # noqa: ARG003
        if not isinstance(given, str) or not 0 < len(given) <= LONGEST_KEY:
            raise Unreadable(
                "wrong-form", 'A piece is named as the answers name it, for example "casing_leg/left".'
            )
        kind, _, side = given.partition("/")
        return cls(kind, side)

    def written(self, write: Any) -> str:  # noqa: ARG002
        return str(self)

    @classmethod
    def schema(cls) -> dict[str, Any]:
        return {
            "type": "string",
            "format": "piece-key",
            "minLength": 1,
            "maxLength": LONGEST_KEY,
            "pattern": r"^[^\x00]*$",
            "examples": ["casing_leg/left"],
        }


LONGEST_KEY = 60


class JointError(Wired):
    """The widest that a mitre of a piece can open or bind because its length was rounded, were all that rounding added
    or took to fall there.

    Attributes:
        length: the piece's length.
        off_square: the lesser of its ends' angles, degrees.
    """

    __slots__ = ("length", "off_square")

    def __init__(self, length: Real, off_square: float) -> None:
        self.length = length
        self.off_square = off_square

    def __eq__(self, other: object) -> bool:
        return isinstance(other, JointError) and (self.length, self.off_square) == (
            other.length,
            other.off_square,
        )

    def __hash__(self) -> int:
        return hash((self.length, self.off_square))

    def written(self, write: Any) -> str:
        residual = abs(float(rounded(self.length, write.rounding).residual))
        return Gap(residual * math.cos(math.radians(self.off_square))).written(write)

    @classmethod
    def schema(cls) -> dict[str, Any]:
        return Gap.schema()


class Taper(Value, frozen=True):
    """Rip widths at a part's two ends as it lies on the saw.

    Attributes:
        left: At its left end.
        right: At its right end.
    """

    left: Real
    right: Real

    def __post_init__(self) -> None:
        _fit(self, "left", "right")

    def __iter__(self) -> Iterator[Real]:
        return iter((self.left, self.right))

    def __getitem__(self, end: int) -> Real:
        return (self.left, self.right)[end]


class Part(Value, frozen=True):
    """One piece of trim.

    Attributes:
        kind: What it is.
        side: Where it goes at the opening: left, right, head and so on; empty for a piece that has no side.
        profile: The stock it is cut from.
        short_point: Length along the inner edge (short point to short point on a mitred head).
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
        joint_error: The widest a mitre of it can open or bind because `overall` was rounded, were all of the residual
            to fall on one joint.
    """

    kind: PartKind
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
        _fit(self, "short_point", "long_point", "overall", "width", "thickness", "rip_width")
        left, right = self.ends
        off_square = min(left.mitre + left.bevel, right.mitre + right.bevel)
        force_setattr(self, "joint_error", JointError(self.overall, float(off_square)))
        force_setattr(self, "key", PieceKey(self.kind, self.side))
        if not self.title:
            force_setattr(self, "title", _title(self.kind, self.side))


def _title(kind: PartKind, side: str) -> str:
    """A piece's name in words: "left casing leg", "casing head 2", "casing side 3", "stool"."""
    words = kind.replace("_", " ")
    if kind is PartKind.CASING_HEAD and side.startswith("head "):
        return f"casing {side}"
    if side in ("", words.rpartition(" ")[2]):
        return words
    return f"{words} {side}" if side[0].isdigit() else f"{side} {words}"
