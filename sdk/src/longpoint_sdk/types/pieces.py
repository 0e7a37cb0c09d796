"""Types of the document's part "pieces". Generated; do not edit."""

from __future__ import annotations

from typing import TYPE_CHECKING, Literal

from longpoint_sdk.types._base import Result
from longpoint_sdk.types.basics import Hand, MarkedLength

if TYPE_CHECKING:
    CutKind = Literal["bevel", "compound", "miter", "square"]
    """An end's cut: square; a miter, the table turned; a bevel, the blade tilted; compound, both."""
    PieceKind = Literal[
        "apron",
        "apron_return",
        "back_band",
        "bottom_casing",
        "cap",
        "cap_return",
        "corner_block",
        "door_stop",
        "fillet",
        "fillet_return",
        "head_casing",
        "head_jamb",
        "jamb_extension",
        "jamb_leg",
        "mull_casing",
        "plinth_block",
        "side_casing",
        "stool",
        "stool_return",
        "tapered_shim",
    ]
    """The kind that a piece is of. Legs stand at the sides; a return takes an end back to the wall; a door stop
    is the strip that the closed door rests against.
    """
else:
    CutKind = str
    PieceKind = str


class Cutout(Result, frozen=True, kw_only=True):
    """A cutout: it is sawn out of a stool's back edge between its ends, where it passes a mull or a stretch of
    wall.

    Attributes:
        at: The place of the cutout, measured from the piece's left end as it lies on the saw.
        length: The length of the cutout, measured along the piece.
        depth: The depth at the cutout's left end, measured from the back edge in.
        end_depth: The depth at the cutout's right end, measured from the back edge in; null where it is the
            same.
    """

    at: MarkedLength
    length: MarkedLength
    depth: MarkedLength
    end_depth: MarkedLength | None


class Notch(Result, frozen=True, kw_only=True):
    """A horn's notch: what is sawn out of a stool's back corner so that the horn lies on the wall.

    Attributes:
        depth: The depth at the jamb, measured from the stool's back edge toward its nosing.
        length: The length of the notch, measured from the stool's end to the jamb's inside face.
        end_depth: The depth at the horn's end where the wall is out of plane, measured as `depth` is; null
            where it is the same.
    """

    depth: MarkedLength
    length: MarkedLength
    end_depth: MarkedLength | None


class Tip(Result, frozen=True, kw_only=True):
    """The tip of a mitered end that is trimmed off once both pieces are cut: it runs past the outer edge of a
    narrower neighbor.

    Attributes:
        along: What is trimmed off the outer edge, measured along it from the miter's long point.
        across: How far the cut runs into the piece, measured across the face from the outer edge to the
            miter.
    """

    along: MarkedLength
    across: MarkedLength


class End(Result, frozen=True, kw_only=True):
    """One end of a piece as the saw makes it.

    The piece lies face up with its outer edge (the long-point edge of a mitered piece) against the fence.

    Attributes:
        at: The end as installed: the foot or head of a side casing, else the side of the opening that it
            meets: left, right, or of a head in several pieces the neighbor, as head 2.
        on_saw: It says which end of the piece that is as it lies on the saw.
        cut: The kind of cut: square, miter, bevel or compound.
        miter_degrees: The saw's table is turned this far off a square cut, never negative.
        miter_direction: The side to which the front of the saw's table turns; null for a square table.
        bevel_degrees: The blade is tilted this far from upright, never negative.
        bevel_direction: The side to which the top of the blade leans; null for an upright blade.
        long_edge: "outer" where the long point is on the outer edge, "inner" where it is on the inner edge,
            "back" or "face" for a bevel, null for a square cut.
        notch: The notch at this end; null without one.
        tip: The tip that is trimmed off after the miter; null where the miter stays whole.
    """

    at: str
    on_saw: Hand | str
    cut: CutKind | str
    miter_degrees: float
    miter_direction: Hand | str | None
    bevel_degrees: float
    bevel_direction: Hand | str | None
    long_edge: str | None
    notch: Notch | None
    tip: Tip | None


class Mark(Result, frozen=True, kw_only=True):
    """A layout mark on a piece.

    Attributes:
        name: It says what to mark, in the trade's words.
        at: The distance along the piece, measured from the farthest point of its left end as it lies on the
            saw.
        across: The distance across the piece, measured from its outer edge; null for a mark right across.
    """

    name: str
    at: MarkedLength
    across: MarkedLength | None


class Step(Result, frozen=True, kw_only=True):
    """It says how one figure was computed.

    Attributes:
        figure: The field of the piece that this step gives.
        rule: The rule in words, with the names of its inputs.
        inputs: The inputs of the step, each by its name with its value.
    """

    figure: str
    rule: str
    inputs: dict[str, str]


class Taper(Result, frozen=True, kw_only=True):
    """Rip widths at a piece's two ends as it lies on the saw.

    Attributes:
        left: The width that the piece is ripped to at its left end, measured across its face.
        right: The width that the piece is ripped to at its right end, measured across its face.
    """

    left: MarkedLength
    right: MarkedLength


class Piece(Result, frozen=True, kw_only=True):
    """One piece of trim.

    Attributes:
        kind: It says which piece of the trim this is.
        side: The side of the opening that it goes to: left, right, head and so on; empty for a piece that has
            no side.
        profile: The name of the stock that it is cut from.
        short_point: The length along the inner edge, measured between its two ends there: from short point to
            short point, or from a square end to the short point.
        long_point: The length of the piece along its outer edge, measured from tip to tip, as it is put up.
        overall: The length that it takes from a stick, measured from its one farthest point to the other.
        width: The finished width, measured across the face from edge to edge.
        thickness: The finished thickness, measured from back to face.
        ends: The left and the right end as the piece lies on the saw.
        rip_width: The width to rip it to, measured from edge to edge at the wider end; null where the stock's
            own width is kept.
        marks: They say what to mark along it before it is cut or installed.
        how: They say how each of its figures was computed.
        notes: The person who cuts and installs this piece should know these things.
        taper: The rip widths where they differ at its two ends; null where it is parallel.
        cutouts: The cutouts that are sawn out of its back edge between its ends.
        quantity: The number of such pieces, those of openings alike taken together.
        title: The name of the piece in words.
        key: The name of the piece within its opening, by which it is named elsewhere.
        joint_error: The widest that a miter of it can stand open, measured across the joint, or be too tight
            to close, because `overall` was rounded, were all of its residual, rounded less exact, to fall on
            one joint.
        mitered_width: The width that it has while its ends are cut, measured across the face, where it is
            ripped afterwards; `overall` is its length then. Null where it is as wide as it stays.
    """

    kind: PieceKind | str
    side: str
    profile: str
    short_point: MarkedLength
    long_point: MarkedLength
    overall: MarkedLength
    width: MarkedLength
    thickness: MarkedLength
    ends: tuple[End, End]
    rip_width: MarkedLength | None
    marks: list[Mark]
    how: list[Step]
    notes: list[str]
    taper: Taper | None
    cutouts: list[Cutout]
    quantity: int
    title: str
    key: str
    joint_error: str
    mitered_width: MarkedLength | None
