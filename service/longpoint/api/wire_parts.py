"""Parts on their way out: rounded once, here, each with its residual."""

from __future__ import annotations

import math
from functools import lru_cache

import msgspec

from longpoint.api.wire_lengths import LengthOut, length_out
from longpoint.geometry import CutKind, End, Hand, Mark, Part, PartKind, Step
from longpoint.lengths import Real, Rounding, Unit, rounded, tape


class NotchOut(msgspec.Struct, frozen=True):
    """What is sawn out of a stool's back corner: `depth` from the back edge, `length` from the end."""

    depth: LengthOut
    length: LengthOut


class EndOut(msgspec.Struct, frozen=True):
    """One end of a part as it lies on the saw: face up, outer edge against the fence.

    `at` is the end as installed, `on_saw` the end as it lies. `mitre_degrees` is the table's turn off a square
    cut towards `swing`; `bevel_degrees` the blade's tilt from upright towards `tilt`. `long_edge` is the edge or
    face that keeps the long point.
    """

    at: str
    on_saw: Hand
    cut: CutKind
    mitre_degrees: float
    swing: Hand | None
    bevel_degrees: float
    tilt: Hand | None
    long_edge: str | None
    notch: NotchOut | None


class MarkOut(msgspec.Struct, frozen=True):
    """A layout mark: `at` from the part's left end as it lies on the saw."""

    name: str
    at: LengthOut


class StepOut(msgspec.Struct, frozen=True):
    """How a figure was computed: the rule in words and the readings it used, exact."""

    figure: str
    rule: str
    inputs: dict[str, str]


class PartOut(msgspec.Struct, frozen=True):
    """One piece of trim.

    `short_point` runs along the inner edge, `long_point` along the outer edge; `overall` is what it takes of a
    stick. `rip_width` is null where the stock keeps its own width. `joint_error` is the widest a mitre of this
    part can open or bind because `overall` was rounded, were all of the residual to fall on one joint.
    """

    key: str
    kind: PartKind
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
    ends: tuple[EndOut, EndOut]
    marks: list[MarkOut]
    joint_error: str
    how: list[StepOut]
    notes: list[str]


def part_out(part: Part, rounding: Rounding, quantity: int = 1) -> PartOut:
    """The part as the wire carries it."""
    overall = length_out(part.overall, rounding)
    return PartOut(
        part.key,
        part.kind,
        part.opening,
        part.side,
        part.profile,
        quantity,
        length_out(part.short_point, rounding),
        length_out(part.long_point, rounding),
        overall,
        length_out(part.width, rounding),
        length_out(part.thickness, rounding),
        None if part.rip_width is None else length_out(part.rip_width, rounding),
        (_end_out(part.ends[0], rounding), _end_out(part.ends[1], rounding)),
        [_mark_out(mark, rounding) for mark in part.marks],
        joint_error(part, rounding),
        [_step_out(step) for step in part.how],
        list(part.notes),
    )


def joint_error(part: Part, rounding: Rounding) -> str:
    """The gap across a joint, were all that rounding added or took to fall there; as decimal text."""
    residual = rounded(part.overall, rounding).residual
    if residual == 0:
        return f"0 {rounding.to.unit}"
    return _joint_error(
        float(residual), float(min(end.mitre + end.bevel for end in part.ends)), rounding.to.unit
    )


@lru_cache(maxsize=4096)
def _joint_error(residual: float, off_square: float, unit: Unit) -> str:
    return gap_out(abs(residual) * math.cos(math.radians(off_square)), unit)


def gap_out(gap: float, unit: Unit) -> str:
    """A gap in inches as decimal text, fine enough to compare with a sheet of paper."""
    return f"{gap * 25.4:.3f} mm" if unit is Unit.MM else f"{gap:.4f} in"


@lru_cache(maxsize=4096)
def _end_out(end: End, rounding: Rounding) -> EndOut:
    notch = end.notch
    return EndOut(
        end.at,
        end.on_saw,
        end.cut,
        round(float(end.mitre), 6),
        end.swing,
        round(float(end.bevel), 6),
        end.tilt,
        end.long_edge,
        None
        if notch is None
        else NotchOut(length_out(notch.depth, rounding), length_out(notch.length, rounding)),
    )


def _mark_out(mark: Mark, rounding: Rounding) -> MarkOut:
    return MarkOut(mark.name, length_out(mark.at, rounding))


def _step_out(step: Step) -> StepOut:
    return StepOut(step.figure, step.rule, {name: _input_text(value) for name, value in step.inputs})


def _input_text(value: Real) -> str:
    return f"{value:.4f} in" if isinstance(value, float) else tape(value)
