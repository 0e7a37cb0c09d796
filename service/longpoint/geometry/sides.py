"""Each side of an opening as it is trimmed: its reveal, its casing, and where that casing's edges lie."""

from __future__ import annotations

import math

from longpoint.geometry.inputs import NO_WIDTHS, Arch, Foot, Opening, Polygon, WallAnswer
from longpoint.geometry.kernel import ZERO, Frame, meet
from longpoint.geometry.trim import Casing
from longpoint.geometry.value import Value
from longpoint.lengths import Fraction, Real


class CasedSide(Value, frozen=True):
    """One side of the frame as it is trimmed. Offsets are outwards from the jamb's inside face.

    Attributes:
        name: left, right, head, sill, or "head 1", "head 2" ... along a head of several pieces; "base" for the
            line the trim stands on.
        reveal: jamb left showing: where the casing's inner edge lies.
        casing: the stock; None on the base and where the opening is not cased.
        outer: where the casing's outside edge lies: reveal + width.
        edge: where all trim on this side ends: the casing's outside edge, or the back band's.
        ripped: whether the casing is ripped narrower than its stock.
        set_back: of the jamb extension on this side, counted in the reveal; nought without one.
    """

    name: str
    reveal: Fraction
    casing: Casing | None
    outer: Fraction
    edge: Fraction
    ripped: bool = False
    set_back: Fraction = ZERO


def base_line(opening: Opening) -> Fraction:
    """How far below the base reading the legs end (negative: above it)."""
    if opening.foot is Foot.FLOOR:
        return -opening.trim.floor_clearance
    if opening.foot is Foot.PLINTH and opening.trim.plinth is not None:
        return -opening.trim.plinth.height
    return ZERO


def cased_sides(opening: Opening, frame: Frame) -> tuple[CasedSide, ...]:
    """Each side of the frame with its own reveal and casing, the base or sill first, anticlockwise."""
    trim, own = opening.trim, opening.reveals
    if opening.foot is Foot.PICTURE_FRAME:
        sides = [_cased(opening, "sill", own.sill, trim.sill_casing or trim.casing, "sill", 0)]
    else:
        base = base_line(opening)
        sides = [CasedSide("base", base, None, base, base)]
    count = len(frame.sides)
    if count == 4:
        head = _cased(opening, "head", own.head, trim.head_casing or trim.casing, "head", 2)
        right = _cased(opening, "right", own.right, trim.casing, "right", 1)
        left = _cased(opening, "left", own.left, trim.casing, "left", 3)
        return sides[0], right, head, left
    sides.append(_cased(opening, "right", own.right, trim.casing, "right", 1))
    for number in range(1, count - 2):
        sides.append(
            _cased(opening, f"head {number}", own.head, trim.head_casing or trim.casing, "head", number + 1)
        )
    sides.append(_cased(opening, "left", own.left, trim.casing, "left", count - 1))
    return tuple(sides)


def called_by_number(opening: Opening, sides: int, what: str, index: int) -> str:
    """A side's piece by its number from the base, anticlockwise as sides are read; "" where legs and heads are named.

    Round a picture frame of any other shape than four sides there are neither.
    """
    shape = opening.readings.shape
    curve_on_base = isinstance(shape, Arch) and shape.spring_height == 0
    if (
        opening.foot is not Foot.PICTURE_FRAME
        or sides == 4
        or not (isinstance(shape, Polygon) or curve_on_base)
    ):
        return ""
    return f"{what} side {index + 1}"


def _extended(opening: Opening, index: int) -> bool:
    """Whether the wall stands proud at either end of a side, so that a board of the extension lies on it."""
    wall = opening.readings.wall
    return wall is not None and (wall.proud[index - 1] > 0 or wall.proud[index] > 0)


def _cased(
    opening: Opening, name: str, own: Fraction | None, casing: Casing | None, side: str, index: int
) -> CasedSide:
    trim = opening.trim
    if casing is None:
        return CasedSide(name, ZERO, None, ZERO, ZERO)
    reveal = trim.reveal if own is None else own
    if opening.widths is not NO_WIDTHS and (width := getattr(opening.widths, side)) is not None:
        casing = Casing(casing.profile, width, casing.thickness)
        ripped = True
    else:
        ripped = False
    set_back = ZERO
    if opening.wall_answer is WallAnswer.EXTEND and trim.extension is not None and _extended(opening, index):
        set_back = trim.extension.reveal
        reveal += set_back
    outer = edge = reveal + casing.width
    if trim.back_band is not None:
        edge = outer - trim.back_band.lap + trim.back_band.width
    return CasedSide(name, reveal, casing, outer, edge, ripped, set_back)


def spread(opening: Opening, frame: Frame, sides: tuple[CasedSide, ...]) -> tuple[Real, Real]:
    """How far the trim's outside edges stand beyond the jamb at the base line, left and right."""
    rises = wall_rises(opening, len(sides))
    return (
        meet(frame.corners[-1], sides[0].reveal, _edge(sides[-1], rises[-1])),
        meet(frame.corners[0], sides[0].reveal, _edge(sides[1], rises[0])),
    )


def _edge(side: CasedSide, rise: Fraction) -> Real:
    """Where the trim ends, seen square on the wall: leaning casing does not reach its own width."""
    return side.reveal + flat_width(side.outer - side.reveal, rise) if rise else side.edge


def wall_rises(opening: Opening, corners: int) -> tuple[Fraction, ...]:
    """How far leaning casing's outside edge stands off the jamb's plane at each corner; nought where it lies flat."""
    wall = opening.readings.wall
    if opening.wall_answer is not WallAnswer.LEAN or wall is None:
        return (ZERO,) * corners
    return tuple(max(ZERO, proud) for proud in wall.proud)


def flat_width(width: Fraction, rise: Fraction) -> float:
    """How far a leaning piece reaches across the wall."""
    return math.sqrt(width * width - rise * rise)
