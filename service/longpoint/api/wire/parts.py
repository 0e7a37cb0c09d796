"""Parts on their way out: rounded once, here, each with its residual."""

from __future__ import annotations

import math
from functools import lru_cache
from typing import NamedTuple

import msgspec

from longpoint.api.wire.lengths import LengthOut, LengthWriter, decimal
from longpoint.geometry import CutKind, Cutout, End, Hand, Notch, Part, PartKind, Step
from longpoint.geometry.value import KEPT
from longpoint.lengths import Real, Unit, rounded, tape


class NotchOut(msgspec.Struct, frozen=True, gc=False):
    """What is sawn out of a stool's back corner: `depth` from the back edge, `length` from the end. `end_depth` is the
    depth at the horn's end where the wall is out of plane."""

    depth: LengthOut
    length: LengthOut
    end_depth: LengthOut | None


class EndOut(msgspec.Struct, frozen=True, gc=False):
    """One end of a part as it lies on the saw: face up, outer edge against the fence.

    `at` is the end as installed (a leg's foot or head, else the side it meets), `on_saw` the end as it lies.
    `mitre_degrees` is the table's turn off a square cut towards `swing`; `bevel_degrees` the blade's tilt from
    upright towards `tilt`. `long_edge` is the edge or face that keeps the long point.

    Attributes:
        notch: What is sawn out of a stool's back corner at this end; null for none.
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


class MarkOut(msgspec.Struct, frozen=True, gc=False):
    """A layout mark: `at` from the part's left end as it lies on the saw.

    Attributes:
        name: What it marks.
    """

    name: str
    at: LengthOut


class StepOut(msgspec.Struct, frozen=True, gc=False):
    """How a figure was computed: the rule in words and the readings it used, exact.

    Attributes:
        figure: What it is of, as `length`.
        rule: The rule in words.
        inputs: Each reading or choice by its name, exact.
    """

    figure: str
    rule: str
    inputs: dict[str, str]


class CutoutOut(msgspec.Struct, frozen=True):
    """What is sawn out of a stool's back edge where it passes a mull or a stretch of wall: `at` from its left end,
    `depth` at its left, `end_depth` at its right where that is another."""

    at: LengthOut
    length: LengthOut
    depth: LengthOut
    end_depth: LengthOut | None


class TaperOut(msgspec.Struct, frozen=True):
    """Rip widths at a part's two ends as it lies on the saw."""

    left: LengthOut
    right: LengthOut


class PartOut(msgspec.Struct, frozen=True, gc=False):
    """One piece of trim.

    `short_point` runs along the inner edge, `long_point` along the outer edge; `overall` is what it takes of a
    stick. `rip_width` is null where the stock keeps its own width. `joint_error` is the widest a mitre of this
    part can open or bind because `overall` was rounded, were all of the residual to fall on one joint.

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
    taper: TaperOut | None
    cutouts: list[CutoutOut]
    ends: tuple[EndOut, EndOut]
    marks: list[MarkOut]
    joint_error: str
    how: list[StepOut]
    notes: list[str]


def part_out(part: Part, opening: str, write: LengthWriter, quantity: int = 1) -> PartOut:
    """A part of the opening of that mark, as the wire carries it."""
    if isinstance(part.overall, float):
        return _part_out(part, opening, write, quantity)
    return msgspec.structs.replace(_kept(part, write).out, opening=opening, quantity=quantity)


def part_json(part: Part, opening: str, write: LengthWriter, quantity: int = 1) -> PartOut | msgspec.Raw:
    """A part as `part_out` gives it, in JSON already where it is kept: a text is sent sooner than a hundred values."""
    if isinstance(part.overall, float):
        return _part_out(part, opening, write, quantity)
    to_opening, to_quantity, rest = _kept(part, write).json
    return msgspec.Raw(b"%s%s%s%d%s" % (to_opening, _encode(opening), to_quantity, quantity, rest))


class _Written(NamedTuple):
    """What was written of a part that is kept. Attributes: json, up to its opening, to its quantity and to its end."""

    part: Part
    out: PartOut
    json: tuple[bytes, bytes, bytes]


_MOST_WRITTEN = KEPT
_encode = msgspec.json.Encoder().encode


def _kept(part: Part, write: LengthWriter) -> _Written:
    known: _Written | None = write.written.get(id(part))
    if known is None:
        if len(write.written) >= _MOST_WRITTEN:
            write.written.clear()
        out = _part_out(part, "", write, 1)
        head, _, rest = _encode(out).partition(b'"opening":""')
        middle, _, rest = rest.partition(b'"quantity":1')
        known = _Written(part, out, (head + b'"opening":', middle + b'"quantity":', rest))
        write.written[id(part)] = known
    return known


def _part_out(part: Part, opening: str, write: LengthWriter, quantity: int) -> PartOut:
    rip_width, taper = part.rip_width, part.taper
    left, right = _end_out(part.ends[0], write), _end_out(part.ends[1], write)
    long_point = write(part.long_point)
    overall = long_point if part.overall is part.long_point else write(part.overall)
    return PartOut(
        part.key,
        part.kind,
        opening,
        part.side,
        part.profile,
        quantity,
        write(part.short_point),
        long_point,
        overall,
        write(part.width),
        write(part.thickness),
        None if rip_width is None else write(rip_width),
        None if taper is None else TaperOut(write(taper[0]), write(taper[1])),
        [_cutout_out(cutout, write) for cutout in part.cutouts] if part.cutouts else [],
        (left, right),
        [MarkOut(mark.name, write(mark.at)) for mark in part.marks] if part.marks else [],
        overall.residual
        if overall.residual == write.nothing
        else _joint_error(part.overall, overall, left, right, write),
        [_step_out(step) for step in part.how],
        list(part.notes),
    )


def _joint_error(length: Real, written: LengthOut, left: EndOut, right: EndOut, write: LengthWriter) -> str:
    """The gap across a joint, were all that rounding added or took to fall there; as decimal text."""
    if isinstance(length, float):
        # A real length's residual was just written, to a millionth.
        residual = float(written.residual.partition(" ")[0]) * write.size
    else:
        residual = float(rounded(length, write.rounding).residual)
    off_square = min(left.mitre_degrees + left.bevel_degrees, right.mitre_degrees + right.bevel_degrees)
    return gap_out(abs(residual) * math.cos(math.radians(off_square)), write.unit)


def gap_out(gap: float, unit: Unit) -> str:
    """A gap in inches as decimal text, fine enough to compare with a sheet of paper."""
    return f"{gap * 25.4:.3f} mm" if unit is Unit.MM else f"{gap:.4f} in"


def _end_out(end: End, write: LengthWriter) -> EndOut:
    if end.notch is not None:
        return _new_end(end, _notch_out(end.notch, write))
    if isinstance(end.mitre, float) or isinstance(end.bevel, float):
        return _new_end(end, None)
    return _plain_end(end)


@lru_cache(KEPT)
def _plain_end(end: End) -> EndOut:
    """An end of exact angles, nearly always square or halved: it says the same on part after part."""
    return _new_end(end, None)


def _new_end(end: End, notch: NotchOut | None) -> EndOut:
    return EndOut(
        end.at,
        end.on_saw,
        end.cut,
        _degrees(end.mitre),
        end.swing,
        _degrees(end.bevel),
        end.tilt,
        end.long_edge,
        notch,
    )


def _degrees(angle: Real) -> float:
    return decimal(angle, 10**6) if isinstance(angle, float) else float(angle)


def _cutout_out(cutout: Cutout, write: LengthWriter) -> CutoutOut:
    end_depth = None if cutout.end_depth is None else write(cutout.end_depth)
    return CutoutOut(write(cutout.at), write(cutout.length), write(cutout.depth), end_depth)


def _notch_out(notch: Notch, write: LengthWriter) -> NotchOut:
    end_depth = None if notch.end_depth is None else write(notch.end_depth)
    return NotchOut(write(notch.depth), write(notch.length), end_depth)


def _step_out(step: Step) -> StepOut:
    inputs = {}
    for name, value in step.inputs:
        inputs[name] = f"{value:.4f} in" if isinstance(value, float) else tape(value)
    return StepOut(step.figure, step.rule, inputs)
