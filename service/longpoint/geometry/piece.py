"""What the geometry room hands on: pieces, their ends, their marks, and how each was computed.

Every length is in inches and exact (`Fraction`) unless the shape makes it irrational, when it is a `float`.
Angles are degrees, `Fraction` when exact. Nothing here is rounded.
"""

from __future__ import annotations

from collections.abc import Iterator
from enum import StrEnum
from typing import TYPE_CHECKING

import msgspec
from msgspec.structs import force_setattr

from longpoint.geometry.fitted import fit
from longpoint.geometry.joint_error import JointError
from longpoint.geometry.piece_names import PieceKey, PieceKind, named
from longpoint.geometry.spelled import Figures, Pairs
from longpoint.lengths import MADE_REAL, Fraction, Real
from longpoint.texts import Sentence
from longpoint.values import Angle, Value

if TYPE_CHECKING:
    Degrees = Real
    Inputs = Figures | Pairs
else:
    Degrees = Angle
    Inputs = Figures
SQUARE: Degrees = 0.0


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
        depth: The depth at the jamb, measured from the stool's back edge toward its nosing.
        length: The length of the notch, measured from the stool's end to the jamb's inside face.
        end_depth: The depth at the horn's end where the wall is out of plane, measured as `depth` is; null
            where it is the same.
    """

    depth: Real
    length: Real
    end_depth: Real | None = None

    def __post_init__(self) -> None:
        fit(self)


class Cutout(Value, frozen=True):
    """A cutout: it is sawn out of a stool's back edge between its ends, where it passes a mull or a stretch of wall.

    Attributes:
        at: The place of the cutout, measured from the piece's left end as it lies on the saw.
        length: The length of the cutout, measured along the piece.
        depth: The depth at the cutout's left end, measured from the back edge in.
        end_depth: The depth at the cutout's right end, measured from the back edge in; null where it is the
            same.
    """

    at: Real
    length: Real
    depth: Real
    end_depth: Real | None = None

    def __post_init__(self) -> None:
        fit(self)


class Tip(Value, frozen=True):
    """The tip of a mitered end that is trimmed off once both pieces are cut: it runs past the outer edge of a narrower
    neighbor.

    Attributes:
        along: What is trimmed off the outer edge, measured along it from the miter's long point.
        across: How far the cut runs into the piece, measured across the face from the outer edge to the miter.
    """

    along: Real
    across: Real

    def __post_init__(self) -> None:
        fit(self)


class End(Value, frozen=True):
    """One end of a piece as the saw makes it.

    The piece lies face up with its outer edge (the long-point edge of a mitered piece) against the fence.

    Attributes:
        at: The end as installed: the foot or head of a side casing, else the side of the opening that it meets: left,
            right, or of a head in several pieces the neighbor, as head 2.
        on_saw: It says which end of the piece that is as it lies on the saw.
        cut: The kind of cut: square, miter, bevel or compound.
        miter: The saw's table is turned this far off a square cut, never negative.
        miter_direction: The side to which the front of the saw's table turns; null for a square table.
        bevel: The blade is tilted this far from upright, never negative.
        bevel_direction: The side to which the top of the blade leans; null for an upright blade.
        long_edge: "outer" where the long point is on the outer edge, "inner" where it is on the inner edge,
            "back" or "face" for a bevel, null for a square cut.
        notch: The notch at this end; null without one.
        tip: The tip that is trimmed off after the miter; null where the miter stays whole.
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
    tip: Tip | None = None

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
        name: It says what to mark, in the trade's words.
        at: The distance along the piece, measured from the farthest point of its left end as it lies on the
            saw.
        across: The distance across the piece, measured from its outer edge; null for a mark right across.
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
    """It says how one figure was computed.

    Attributes:
        figure: The field of the piece that this step gives.
        rule: The rule in words, with the names of its inputs.
        inputs: The inputs of the step, each by its name with its value.
    """

    figure: str
    rule: str
    inputs: Inputs

    def __post_init__(self) -> None:
        if isinstance(self.inputs, tuple):
            force_setattr(self, "inputs", Figures(self.inputs))


class Taper(Value, frozen=True):
    """Rip widths at a piece's two ends as it lies on the saw.

    Attributes:
        left: The width that the piece is ripped to at its left end, measured across its face.
        right: The width that the piece is ripped to at its right end, measured across its face.
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
        kind: It says which piece of the trim this is.
        side: The side of the opening that it goes to: left, right, head and so on; empty for a piece that has
            no side.
        profile: The name of the stock that it is cut from.
        short_point: The length along the inner edge, measured between its two ends there: from short point to short
            point, or from a square end to the short point.
        long_point: The length of the piece along its outer edge, measured from tip to tip, as it is put up.
        overall: The length that it takes from a stick, measured from its one farthest point to the other.
        width: The finished width, measured across the face from edge to edge.
        thickness: The finished thickness, measured from back to face.
        ends: The left and the right end as the piece lies on the saw.
        rip_width: The width to rip it to, measured from edge to edge at the wider end; null where the stock's
            own width is kept.
        mitered_width: The width that it has while its ends are cut, measured across the face, where it is ripped
            afterwards; `overall` is its length then. Null where it is as wide as it stays.
        marks: They say what to mark along it before it is cut or installed.
        how: They say how each of its figures was computed.
        notes: The person who cuts and installs this piece should know these things.
        taper: The rip widths where they differ at its two ends; null where it is parallel.
        cutouts: The cutouts that are sawn out of its back edge between its ends.
        quantity: The number of such pieces, those of openings alike taken together.
        title: The name of the piece in words.
        key: The name of the piece within its opening, by which it is named elsewhere.
        joint_error: The widest that a miter of it can stand open, measured across the joint, or be too tight to close,
            because `overall` was rounded, were all of its residual, rounded less exact, to fall on one joint.
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
    notes: tuple[Sentence, ...] = ()
    taper: Taper | None = None
    cutouts: tuple[Cutout, ...] = ()
    quantity: int = 1
    title: str = ""
    key: PieceKey = None  # type: ignore[assignment] # set as it is made, as joint_error is
    joint_error: JointError = None  # type: ignore[assignment]
    mitered_width: Real | None = None

    @property
    def sawn_width(self) -> Real:
        """Its width while its ends are cut."""
        return self.width if self.mitered_width is None else self.mitered_width

    @property
    def mitered_long_point(self) -> Real:
        """Its outer edge from tip to tip while its ends are cut."""
        return self.overall if self.shaped_later else self.long_point

    @property
    def shaped_later(self) -> bool:
        """Whether it is ripped, or a tip of it trimmed, once its ends are mitered."""
        return self.mitered_width is not None or any(end.tip is not None for end in self.ends)

    def __post_init__(self) -> None:
        fit(self)
        key, title = named(self.kind, self.side)
        force_setattr(self, "joint_error", JointError(self.overall, self.ends))
        force_setattr(self, "key", key)
        if not self.title:
            force_setattr(self, "title", title)
