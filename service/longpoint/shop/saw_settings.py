"""How the saw is set for the end of a piece, by itself or as it lies on its stick."""

from __future__ import annotations

from functools import lru_cache

from msgspec.structs import replace

from longpoint.geometry import CutKind, End, Hand
from longpoint.lengths import Fraction, Real
from longpoint.shop.operations import Setting, Tool
from longpoint.shop.rates import as_written
from longpoint.shop.saw import Saw
from longpoint.shop.sticks import PieceToMake
from longpoint.stock import Placed
from longpoint.values import Angle

SQUARE = Setting(Tool.MITER_SAW)


def left_end(piece: PieceToMake, placed: Placed) -> End:
    """The end that lies left on the stick."""
    return piece.piece.ends[1 if placed.reversed else 0]


def right_end(piece: PieceToMake, placed: Placed) -> End:
    return piece.piece.ends[0 if placed.reversed else 1]


def angle(degrees: Real, step: Fraction) -> Angle:
    """Degrees as the saw's scale can be set."""
    return Angle(round(Fraction(degrees) / step) * step)


def end_setting(end: End, saw: Saw) -> Setting:
    """How the saw is set for the end of a piece, face up, its outer edge against the fence."""
    return _end_setting(
        end.miter, end.miter_direction, end.bevel, end.bevel_direction, as_written(saw.angle_step)
    )


@lru_cache(maxsize=1024)
def _end_setting(
    miter: Real, miter_direction: Hand | None, bevel: Real, bevel_direction: Hand | None, step: Fraction
) -> Setting:
    """A house has few settings and many ends."""
    turned, tilted = angle(miter, step), angle(bevel, step)
    return Setting(
        Tool.MITER_SAW,
        miter_direction=miter_direction if turned else None,
        miter=turned,
        bevel_direction=bevel_direction if tilted else None,
        bevel=tilted,
    )


def lying_setting(end: End, placed: Placed, saw: Saw) -> Setting:
    """How the saw is set for an end while the piece lies on its stick, turned over or end for end."""
    found = end_setting(end, saw)
    if found.miter_direction and placed.turned != placed.reversed:
        found = replace(found, miter_direction=_other(found.miter_direction))
    if found.bevel_direction and placed.turned:
        found = replace(found, bevel_direction=_other(found.bevel_direction))
    return found


def _other(hand: Hand) -> Hand:
    return Hand.RIGHT if hand is Hand.LEFT else Hand.LEFT


def angled(end: End, saw: Saw) -> bool:
    """Whether the end is not square, as finely as the saw can be set."""
    return end.cut is not CutKind.SQUARE and end_setting(end, saw) != SQUARE


def long_edge(end: End) -> str:
    """The edge an end's long point is on; `outer_back` and the like where a tilted blade leaves the back longer."""
    edge = end.long_edge or ""
    back_longer = end.cut is CutKind.COMPOUND and end.bevel_direction not in (None, end.on_saw)
    return f"{edge}_back" if back_longer else edge
