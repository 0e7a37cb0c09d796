"""Each side of an opening as it is trimmed: its reveal, its casing, and where that casing's edges lie."""

from __future__ import annotations

import math
from functools import lru_cache

from msgspec.structs import replace

from longpoint.geometry.frame.kernel import ZERO, Frame, meet
from longpoint.geometry.readings.inputs import Bottom, Opening, Reveals, WallAnswer, Widths
from longpoint.geometry.readings.outline import Arch, Polygon
from longpoint.geometry.readings.trim import Casing, Face, HeadStyle, Trim
from longpoint.geometry.value import KEPT
from longpoint.lengths import Fraction, PositiveLength, Real
from longpoint.values import Value


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
        set_back: of the jamb extension on this side, counted in the reveal; zero without one.
        sold: the stock's width before any rip; None on the base and where the opening is not cased.
        ripped_last: whether it is ripped after its ends are mitered: it is molded, and a neighbor is of its stock.
    """

    name: str
    reveal: Fraction
    casing: Casing | None
    outer: Fraction
    edge: Fraction
    ripped: bool = False
    set_back: Fraction = ZERO
    sold: Fraction | None = None
    ripped_last: bool = False

    @property
    def width(self) -> Fraction:
        """Across the face, from edge to edge, as it is put up."""
        return self.outer - self.reveal


def one_molding(one: CasedSide, other: CasedSide) -> bool:
    """Whether two sides are cased with the same molded stock, whatever each is ripped to."""
    mine, theirs = one.casing, other.casing
    return (
        mine is not None
        and theirs is not None
        and mine.face is theirs.face is Face.MOLDED
        and (one.sold, mine.thickness, mine.profile) == (other.sold, theirs.thickness, theirs.profile)
    )


def base_line(choices: _Choices) -> Fraction:
    """How far below the base reading the legs end (negative: above it)."""
    if choices.foot is Bottom.FLOOR:
        return -choices.trim.floor_clearance
    if choices.foot is Bottom.PLINTH and choices.trim.plinth is not None:
        return -choices.trim.plinth.height
    return ZERO


def cased_sides(opening: Opening, frame: Frame) -> tuple[CasedSide, ...]:
    """Each side of the frame with its own reveal and casing, the base or sill first, counterclockwise."""
    wall = opening.outline.wall
    proud: tuple[Fraction, ...] = ()
    # One of another number of corners is refused by the check of the wall, which may come after.
    if (
        wall is not None
        and opening.wall_answer is WallAnswer.EXTEND
        and len(wall.proud) == len(frame.corners)
    ):
        proud = wall.proud
    leaning = wall is not None and opening.wall_answer is WallAnswer.LEAN
    choices = _Choices(opening.trim, opening.bottom, opening.reveals, opening.widths, proud, leaning)
    return _sides(choices, len(frame.sides))


class _Choices(Value, frozen=True):
    """What an opening's casing follows from. Attributes: proud, the wall at each corner where the jamb is extended;
    leaning, whether the casing leans on the wall."""

    trim: Trim
    foot: Bottom
    reveals: Reveals
    widths: Widths
    proud: tuple[Fraction, ...]
    leaning: bool


@lru_cache(KEPT)
def _sides(choices: _Choices, count: int) -> tuple[CasedSide, ...]:
    trim, own = choices.trim, choices.reveals
    head = trim.head_casing or trim.casing
    if choices.foot is Bottom.CASING:
        first = _cased(choices, "sill", own.sill, trim.bottom_casing or trim.casing, "sill", 0)
    else:
        base = base_line(choices)
        first = CasedSide("base", base, None, base, base)
    # Sides go counterclockwise, pieces of a head are counted from the left.
    names = ["head"] if count == 4 else [f"head {number}" for number in range(count - 3, 0, -1)]
    sides = (
        first,
        _cased(choices, "right", own.right, trim.casing, "right", 1),
        *(_cased(choices, name, own.head, head, "head", index) for index, name in enumerate(names, 2)),
        _cased(choices, "left", own.left, trim.casing, "left", count - 1),
    )
    if trim.head_style is not HeadStyle.MITERED or choices.leaning or not any(side.ripped for side in sides):
        return sides
    return tuple(
        replace(side, ripped_last=side.ripped and (one_molding(side, before) or one_molding(side, after)))
        for before, side, after in zip((sides[-1], *sides[:-1]), sides, (*sides[1:], sides[0]), strict=True)
    )


def _cased(
    choices: _Choices, name: str, own: Fraction | None, casing: Casing | None, side: str, index: int
) -> CasedSide:
    trim, proud = choices.trim, choices.proud
    if casing is None:
        return CasedSide(name, ZERO, None, ZERO, ZERO)
    reveal = +(
        trim.reveal if own is None else own
    )  # plain: quicker to reckon with than a length as it was sent
    width: Fraction | None = getattr(choices.widths, side)
    sold = +casing.width
    ripped = width is not None and width < sold
    if width is not None:
        casing = replace(casing, width=PositiveLength(width))
    set_back = ZERO
    # A board of the extension lies where the wall stands proud at either end of the side.
    if trim.extension is not None and proud and (proud[index - 1] > 0 or proud[index] > 0):
        set_back = trim.extension.reveal
        reveal += set_back
    outer = edge = reveal + casing.width
    if trim.back_band is not None:
        edge = outer - trim.back_band.lap + trim.back_band.width
    return CasedSide(name, reveal, casing, outer, edge, ripped, set_back, sold)


def called_by_number(opening: Opening, sides: int, what: str, index: int) -> str:
    """A side's piece by its number from the left, over the top, the bottom last; "" where legs and heads are named.

    Round a picture frame of any other shape than four sides there are neither.
    """
    shape = opening.outline.shape
    curve_on_base = isinstance(shape, Arch) and shape.spring_height == 0
    if opening.bottom is not Bottom.CASING or sides == 4 or not (isinstance(shape, Polygon) or curve_on_base):
        return ""
    # Sides go counterclockwise from the bottom, pieces from the left.
    return f"{what} side {sides - index}"


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
    """How far leaning casing's outside edge stands off the jamb's plane at each corner; zero where it lies flat."""
    wall = opening.outline.wall
    if wall is None or opening.wall_answer is not WallAnswer.LEAN:
        return (ZERO,) * corners
    return tuple(max(ZERO, proud) for proud in wall.proud)


def flat_width(width: Fraction, rise: Fraction) -> float:
    """How far a leaning piece reaches across the wall."""
    return math.sqrt(width * width - rise * rise)
