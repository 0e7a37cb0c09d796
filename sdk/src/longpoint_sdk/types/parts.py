"""Types of the document's part "parts". Generated; do not edit."""

from __future__ import annotations

from typing import TYPE_CHECKING, Literal

from longpoint_sdk.types._base import Result
from longpoint_sdk.types.basics import Hand, MarkedLength

if TYPE_CHECKING:
    CutKind = Literal["bevel", "compound", "mitre", "square"]
    """An end's cut: square; a mitre, the table turned; a bevel, the blade tilted; compound, both."""
    PartKind = Literal[
        "apron",
        "apron_return",
        "back_band",
        "cap",
        "cap_return",
        "casing_head",
        "casing_leg",
        "casing_sill",
        "corner_block",
        "door_stop",
        "fillet",
        "fillet_return",
        "head_jamb",
        "jamb_extension",
        "jamb_leg",
        "levelling_strip",
        "mull_casing",
        "plinth_block",
        "stool",
        "stool_return",
    ]
    """What a part is. Legs stand at the sides; a return takes an end back to the wall."""
else:
    CutKind = str
    PartKind = str


class Cutout(Result, frozen=True, kw_only=True):
    """What is sawn out of a stool's back edge between its ends, where it passes a mull or a stretch of wall.

    Attributes:
        at: From the part's left end as it lies on the saw.
        length: Along the part.
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
    """One end of a part as the saw makes it.

    The part lies face up with its outer edge (the long-point edge of a mitred piece) against the fence.

    Attributes:
        at: The end as installed: a leg's foot or head, else the side it meets (left, right, head 2).
        on_saw: Which end of the part that is as it lies on the saw.
        cut: Square, mitre, bevel or compound.
        mitre_degrees: The saw's table off a square cut, never negative.
        swing: The side to which the front of the saw's table turns; None for a square table.
        bevel_degrees: The blade's tilt from upright, never negative.
        tilt: The side to which the top of the blade leans; None for an upright blade.
        long_edge: "outer" where the long point is on the outer edge, "inner" where it is on the inner edge,
            "back" or "face" for a bevel, None for a square cut.
        notch: The notch at this end, None without one.
    """

    at: str
    on_saw: Hand | str
    cut: CutKind | str
    mitre_degrees: float
    swing: Hand | str | None
    bevel_degrees: float
    tilt: Hand | str | None
    long_edge: str | None
    notch: Notch | None


class Mark(Result, frozen=True, kw_only=True):
    """A layout mark on a part.

    Attributes:
        name: What to mark, in the trade's words.
        at: Distance along the part from its left end as it lies on the saw (from that end's farthest point).
        across: Distance from the outer edge, None for a mark right across.
    """

    name: str
    at: MarkedLength
    across: MarkedLength | None


class Step(Result, frozen=True, kw_only=True):
    """How one figure was computed.

    Attributes:
        figure: The part's field it gives.
        rule: The rule in words, naming its inputs.
        inputs: Each input's name and value.
    """

    figure: str
    rule: str
    inputs: dict[str, str]


class Taper(Result, frozen=True, kw_only=True):
    """Rip widths at a part's two ends as it lies on the saw.

    Attributes:
        left: At its left end.
        right: At its right end.
    """

    left: MarkedLength
    right: MarkedLength


class Part(Result, frozen=True, kw_only=True):
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
        joint_error: The widest a mitre of it can open or bind because `overall` was rounded, were all of the
            residual to fall on one joint.
    """

    kind: PartKind | str
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
