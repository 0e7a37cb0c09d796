"""Types of the document's part "parts". Generated; do not edit."""

from __future__ import annotations

from typing import TYPE_CHECKING, Literal

from longpoint_sdk.types._base import Result
from longpoint_sdk.types.basics import Hand, LengthOut

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


class CutoutOut(Result, frozen=True, kw_only=True):
    """What is sawn out of a stool's back edge where it passes a mull or a stretch of wall: `at` from its left
    end, `depth` at its left, `end_depth` at its right where that is another.
    """

    at: LengthOut
    length: LengthOut
    depth: LengthOut
    end_depth: LengthOut | None


class NotchOut(Result, frozen=True, kw_only=True):
    """What is sawn out of a stool's back corner: `depth` from the back edge, `length` from the end. `end_depth`
    is the depth at the horn's end where the wall is out of plane.
    """

    depth: LengthOut
    length: LengthOut
    end_depth: LengthOut | None


class EndOut(Result, frozen=True, kw_only=True):
    """One end of a part as it lies on the saw: face up, outer edge against the fence.

    `at` is the end as installed (a leg's foot or head, else the side it meets), `on_saw` the end as it lies.
    `mitre_degrees` is the table's turn off a square cut towards `swing`; `bevel_degrees` the blade's tilt
    from upright towards `tilt`. `long_edge` is the edge or face that keeps the long point.

    Attributes:
        notch: What is sawn out of a stool's back corner at this end; null for none.
    """

    at: str
    on_saw: Hand | str
    cut: CutKind | str
    mitre_degrees: float
    swing: Hand | str | None
    bevel_degrees: float
    tilt: Hand | str | None
    long_edge: str | None
    notch: NotchOut | None


class MarkOut(Result, frozen=True, kw_only=True):
    """A layout mark: `at` from the part's left end as it lies on the saw.

    Attributes:
        name: What it marks.
    """

    name: str
    at: LengthOut


class StepOut(Result, frozen=True, kw_only=True):
    """How a figure was computed: the rule in words and the readings it used, exact.

    Attributes:
        figure: What it is of, as `length`.
        rule: The rule in words.
        inputs: Each reading or choice by its name, exact.
    """

    figure: str
    rule: str
    inputs: dict[str, str]


class TaperOut(Result, frozen=True, kw_only=True):
    """Rip widths at a part's two ends as it lies on the saw."""

    left: LengthOut
    right: LengthOut


class PartOut(Result, frozen=True, kw_only=True):
    """One piece of trim.

    `short_point` runs along the inner edge, `long_point` along the outer edge; `overall` is what it takes of
    a stick. `rip_width` is null where the stock keeps its own width. `joint_error` is the widest a mitre of
    this part can open or bind because `overall` was rounded, were all of the residual to fall on one joint.

    Attributes:
        key: Its name in its opening, as `casing_leg/left`: what `part` and `piece` are elsewhere.
        opening: Its opening's mark.
        side: Where it goes at the opening: left, right, head and so on.
        profile: The stock it is cut from.
        quantity: How many there are, alike openings' taken together.
        taper: Rip widths at its two ends, where they differ; else null.
        ends: Its left and its right end as it lies on the saw.
        marks: What to mark along it before it is cut or fitted.
        how: How each of its figures was computed.
        notes: What was assumed of it.
    """

    key: str
    kind: PartKind | str
    opening: str
    side: str
    profile: str
    quantity: int
    short_point: LengthOut
    long_point: LengthOut
    overall: LengthOut
    width: LengthOut
    thickness: LengthOut
    rip_width: LengthOut | None
    taper: TaperOut | None
    cutouts: list[CutoutOut]
    ends: tuple[EndOut, EndOut]
    marks: list[MarkOut]
    joint_error: str
    how: list[StepOut]
    notes: list[str]
