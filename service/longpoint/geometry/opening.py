"""All the pieces of one opening."""

from __future__ import annotations

import math
from collections.abc import Iterable
from enum import Flag, auto

from msgspec.structs import replace

from longpoint.geometry.checks.arch import arch_findings
from longpoint.geometry.checks.door import door_findings
from longpoint.geometry.checks.findings import Finding
from longpoint.geometry.checks.floor import floor_findings, level_notes
from longpoint.geometry.checks.obstructions import obstruction_findings
from longpoint.geometry.checks.offers import tried
from longpoint.geometry.checks.physics import physics_findings
from longpoint.geometry.checks.readings import weighed
from longpoint.geometry.checks.returned_stool import returned_stool_findings
from longpoint.geometry.checks.trim import check_lengths, check_trim
from longpoint.geometry.checks.unusual import unusual_findings
from longpoint.geometry.checks.wall import sill_findings, tapered_shim, wall_findings
from longpoint.geometry.faults import GeometryError
from longpoint.geometry.frame.arch import curve
from longpoint.geometry.frame.kernel import ALL_SQUARE, Frame
from longpoint.geometry.frame.shapes import base_rise, frame_of
from longpoint.geometry.frame.sides import CasedSide, cased_sides
from longpoint.geometry.piece import Piece
from longpoint.geometry.piece_order import in_order
from longpoint.geometry.pieces.apron import apron_pieces
from longpoint.geometry.pieces.band import back_band_pieces
from longpoint.geometry.pieces.blocks import corner_blocks, plinth_pieces
from longpoint.geometry.pieces.casing import casing_pieces
from longpoint.geometry.pieces.door import jamb_pieces
from longpoint.geometry.pieces.extension import extension_pieces
from longpoint.geometry.pieces.headdress import headdress_pieces
from longpoint.geometry.pieces.mull import mull_pieces
from longpoint.geometry.pieces.stool import stool_pieces
from longpoint.geometry.readings.inputs import Bottom, Opening, SillAnswer, WallAnswer
from longpoint.geometry.readings.outline import Arch, PlumbSides, Polygon, Quadrilateral
from longpoint.geometry.readings.readings import NOTHING_IN_THE_WAY, Door
from longpoint.geometry.readings.taken import at_the_reading
from longpoint.geometry.readings.trim import HeadStyle, StoolEnds
from longpoint.geometry.together import Closing, rounded_together
from longpoint.lengths import Rounding
from longpoint.texts import Sentence, say
from longpoint.values import Faults, Value

TAKEN_SQUARE = say("note", "frame.taken-square")
# Inches: a joint taken across a jamb's edge, where nothing is cased.
UNCASED = 0.75


class Built(Value, frozen=True):
    """An opening worked out.

    Attributes:
        opening: as it was given.
        frame: the jamb's inside faces.
        pieces: every piece, in the order of `piece_order`; left and right are a mirrored pair.
        square_gap: the widest joint gap left by taking the corners as square, inches; zero where they were not.
        notes: what was assumed.
        findings: what is in the way, out of plane or out of level, each with what can be done; none has
            changed a size.
        closings: how pieces that are rounded together close; none where each is rounded by itself.
        numbers: the number of each piece, by which sheets name it; None for 1, 2, 3 in their order.
    """

    opening: Opening
    frame: Frame
    pieces: tuple[Piece, ...]
    square_gap: float
    notes: tuple[Sentence, ...]
    findings: tuple[Finding, ...] = ()
    numbers: tuple[int, ...] | None = None
    closings: tuple[Closing, ...] = ()

    @property
    def numbered(self) -> tuple[tuple[int, Piece], ...]:
        """Each piece with its number."""
        return tuple(zip(self.numbers or range(1, len(self.pieces) + 1), self.pieces, strict=True))


class Pieces(Flag):
    """Which pieces of an opening are asked for."""

    STOOL = auto()
    APRON = auto()
    CASING = auto()
    ALL = STOOL | APRON | CASING


# An enumeration's member costs more to fetch than to compare, and far more to look for in a flag.
_ALL, _STOOL, _APRON, _CASING = Pieces.ALL, Pieces.STOOL, Pieces.APRON, Pieces.CASING


def _asked(piece: Pieces, wanted: Pieces) -> bool:
    return wanted is _ALL or piece in wanted


def build_opening(opening: Opening, wanted: Pieces = Pieces.ALL, rounding: Rounding | None = None) -> Built:
    """Every piece of an opening, or only those asked for.

    Args:
        opening: as it was read and decided.
        wanted: which pieces.
        rounding: by which lengths of the answer are rounded; without it none are rounded together.

    Raises:
        GeometryError: with every fault found.
    """
    try:
        built = _built(opening, wanted)
    except GeometryError as error:
        found = dict.fromkeys(at_the_reading(opening.readings, fault) for fault in error.faults)
        raise GeometryError(found) from None
    if built.findings:
        findings = tried(opening, built.findings, lambda changed: _built(changed, wanted).findings)
        built = replace(built, findings=findings)
    if rounding is not None and isinstance(opening.outline.shape, Arch | Polygon):
        return _rounded_together(built, rounding)
    return built


def _rounded_together(built: Built, rounding: Rounding) -> Built:
    sides = cased_sides(built.opening, built.frame)
    found = rounded_together(built.opening, built.frame, sides, built.pieces, rounding)
    if found is None:
        return built
    return replace(
        built,
        pieces=found.pieces,
        closings=found.closings,
        notes=(*built.notes, *found.notes),
        findings=(*built.findings, *found.findings),
    )


def _built(opening: Opening, wanted: Pieces) -> Built:
    """The opening worked out, none of its offers tried yet."""
    faults = Faults()
    frame, gap, notes = _settled_frame(opening, faults)
    check_trim(opening, frame, faults, stands_on_stool=_asked(_STOOL, wanted))
    faults.raise_any(GeometryError)
    assert frame is not None
    sides = cased_sides(opening, frame)
    pieces: list[Piece] = []
    if opening.bottom is Bottom.STOOL:
        _add_stool_and_apron(opening, frame, sides, wanted, pieces)
    if _asked(_CASING, wanted):
        if isinstance(opening.outline.shape, Door):
            pieces.extend(jamb_pieces(opening, opening.outline.shape))
        _add_casing(opening, frame, sides, pieces)
    check_lengths(opening, pieces, faults)
    faults.raise_any(GeometryError)
    findings = (*unusual_findings(opening), *_findings(opening, frame, sides, pieces))
    if isinstance(opening.outline.shape, Quadrilateral):
        said, doubts = weighed(opening.outline.shape, opening.readings, opening.tape_spread)
        notes, findings = (*notes, *said), (*doubts, *findings)
    return Built(opening, frame, in_order(pieces), gap, notes, findings)


def _add_stool_and_apron(
    opening: Opening, frame: Frame, sides: tuple[CasedSide, ...], wanted: Pieces, pieces: list[Piece]
) -> None:
    trim, readings = opening.trim, opening.readings
    if trim.stool is not None and _asked(_STOOL, wanted):
        pieces.extend(stool_pieces(opening, frame, sides))
        if readings.sill is not None and opening.sill_answer is SillAnswer.TAPERED_SHIM:
            pieces.append(tapered_shim(opening, frame))
    if trim.apron is not None and _asked(_APRON, wanted) and not opening.without_apron:
        pieces.extend(apron_pieces(opening, frame, sides))


def _add_casing(opening: Opening, frame: Frame, sides: tuple[CasedSide, ...], pieces: list[Piece]) -> None:
    trim = opening.trim
    if opening.wall_answer is WallAnswer.EXTEND:
        pieces.extend(extension_pieces(opening, frame, sides))
    pieces.extend(casing_pieces(opening, frame, sides))
    if trim.head_style is HeadStyle.CORNER_BLOCKS:
        pieces.extend(corner_blocks(opening))
    if trim.head_style is HeadStyle.BUTTED and (trim.fillet or trim.cap):
        pieces.extend(headdress_pieces(opening, frame, sides))
    if trim.back_band is not None:
        pieces.extend(back_band_pieces(opening, frame, sides))
    if opening.outline.mulls:
        pieces.extend(mull_pieces(opening, frame, sides))
    if opening.bottom is Bottom.PLINTH:
        pieces.extend(plinth_pieces(opening))


def _findings(
    opening: Opening, frame: Frame, sides: tuple[CasedSide, ...], pieces: Iterable[Piece]
) -> tuple[Finding, ...]:
    readings, outline = opening.readings, opening.outline
    physics = (*floor_findings(opening, frame), *physics_findings(opening, frame, sides))
    if isinstance(outline.shape, Arch):
        physics = (*physics, *arch_findings(outline.shape, sides))
    stool = opening.trim.stool
    returned = stool is not None and stool.ends is StoolEnds.MITERED_RETURN
    door = isinstance(outline.shape, Door)
    if (
        outline.wall is None
        and readings.sill is None
        and readings.clearances is NOTHING_IN_THE_WAY
        and not door
        and not returned
    ):
        return physics
    return (
        *physics,
        *(returned_stool_findings(opening, pieces) if returned else ()),
        *(door_findings(outline.shape) if isinstance(outline.shape, Door) else ()),
        *wall_findings(opening, frame, sides),
        *sill_findings(opening),
        *obstruction_findings(opening, frame, sides),
    )


def _settled_frame(opening: Opening, faults: Faults) -> tuple[Frame | None, float, tuple[Sentence, ...]]:
    shape = opening.outline.shape
    frame = frame_of(shape, faults, base_rise(opening))
    if frame is not None and isinstance(shape, Arch):
        return frame, 0.0, (curve_note(opening, shape, frame),)
    if frame is None or frame.square or not isinstance(shape, PlumbSides | Quadrilateral):
        return frame, 0.0, ()
    if opening.square_gap:
        gap = square_gap(opening, frame)
        if opening.square_gap >= gap:
            return squared(shape), gap, (TAKEN_SQUARE,)
    return frame, 0.0, level_notes(opening, shape, frame) if isinstance(shape, PlumbSides) else ()


def curve_note(opening: Opening, shape: Arch, frame: Frame) -> Sentence:
    """How far straight pieces leave the curve, and what stock the curve could be sawn from."""
    head = next(side for side in reversed(cased_sides(opening, frame)[:-1]) if side.name != "base")
    found = curve(shape, Faults())
    assert found is not None
    blank = found.blank_width(head.reveal, head.outer)
    return say("note", "arch.departure", pieces=found.pieces, departure=found.departure, blank=blank)


def squared(shape: PlumbSides | Quadrilateral) -> Frame:
    """An opening near enough to square, each side at its own reading."""
    width = shape.jamb_width
    head = shape.head_width if isinstance(shape, Quadrilateral) else width
    return Frame((width, shape.right_jamb_height, head, shape.left_jamb_height), ALL_SQUARE)


def square_gap(opening: Opening, frame: Frame) -> float:
    """The widest gap that cuts for square corners would leave: each corner's, along the joint that lies there."""
    # On the base there is no second piece: a leg's foot opens by its own width. A bare wall has its jamb's edge.
    widths = [float(side.edge - side.reveal) if side.casing else 0.0 for side in cased_sides(opening, frame)]
    if not any(widths):
        widths = [UNCASED] * len(widths)
    return max(
        math.hypot(width, following) * abs(math.tan(math.radians(float(corner.degrees) - 90)))
        for width, following, corner in zip(widths, [*widths[1:], widths[0]], frame.corners, strict=True)
    )
