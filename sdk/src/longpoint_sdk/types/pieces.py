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
    """What a piece is. Legs stand at the sides; a return takes an end back to the wall."""
else:
    CutKind = str
    PieceKind = str


class Cutout(Result, frozen=True, kw_only=True):
    """What is sawn out of a stool's back edge between its ends, where it passes a mull or a stretch of wall.

    Attributes:
        at: From the piece's left end as it lies on the saw.
        length: Along the piece.
        depth: From the back edge at its left.
        end_depth: From the back edge at its right; None where it is the same.
    """

    at: MarkedLength
    length: MarkedLength
    depth: MarkedLength
    end_depth: MarkedLength | None


class Notch(Result, frozen=True, kw_only=True):
    """A horn's notch: what is sawn out of a stool's back corner so that the horn lies on the wall.

    Attributes:
        depth: From the stool's back edge towards its nosing, at the jamb.
        length: From the stool's end towards its middle; the horn's own length.
        end_depth: The depth at the horn's end where the wall is out of plane; None where it is the same.
    """

    depth: MarkedLength
    length: MarkedLength
    end_depth: MarkedLength | None


class End(Result, frozen=True, kw_only=True):
    """One end of a piece as the saw makes it.

    The piece lies face up with its outer edge (the long-point edge of a mitered piece) against the fence.

    Attributes:
        at: The end as installed: a leg's foot or head, else the side it meets (left, right, head 2).
        on_saw: Which end of the piece that is as it lies on the saw.
        cut: Square, miter, bevel or compound.
        miter_degrees: The saw's table off a square cut, never negative.
        bevel_degrees: The blade's tilt from upright, never negative.
        long_edge: "outer" where the long point is on the outer edge, "inner" where it is on the inner edge,
            "back" or "face" for a bevel, None for a square cut.
        notch: The notch at this end, None without one.
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


class Mark(Result, frozen=True, kw_only=True):
    """A layout mark on a piece.

    Attributes:
        name: What to mark, in the trade's words.
        at: Distance along the piece from its left end as it lies on the saw (from that end's farthest point).
        across: Distance from the outer edge, None for a mark right across.
    """

    name: str
    at: MarkedLength
    across: MarkedLength | None


class Step(Result, frozen=True, kw_only=True):
    """How one figure was computed.

    Attributes:
        figure: The piece's field it gives.
        rule: The rule in words, naming its inputs.
        inputs: Each input's name and value.
    """

    figure: str
    rule: str
    inputs: dict[str, str]


class Taper(Result, frozen=True, kw_only=True):
    """Rip widths at a piece's two ends as it lies on the saw.

    Attributes:
        left: At its left end.
        right: At its right end.
    """

    left: MarkedLength
    right: MarkedLength


class Piece(Result, frozen=True, kw_only=True):
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
        rip_width: Width to rip it to, the wider end's where it tapers; null where the stock's own width is
            kept.
        marks: What to mark along it before it is cut or installed.
        how: How each of its figures was computed.
        notes: What the person should know of this piece.
        taper: Its rip widths where they differ at its two ends; null where it is parallel.
        cutouts: What is sawn out of its back edge between its ends.
        quantity: How many there are, those of openings alike taken together.
        title: Its name in words.
        key: Its name in its opening, by which it is named elsewhere.
        joint_error: The widest a miter of it can open or bind because `overall` was rounded, were all of the
            residual to fall on one joint.
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
