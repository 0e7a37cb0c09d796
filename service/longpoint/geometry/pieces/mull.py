"""Mull casing: what covers the joint between units that stand side by side as one opening."""

from __future__ import annotations

import math

from longpoint.geometry.frame.kernel import Frame, saw_angle
from longpoint.geometry.frame.sides import CasedSide
from longpoint.geometry.piece import CutKind, End, Hand, Mark, Piece, Step
from longpoint.geometry.piece_names import PieceKind
from longpoint.geometry.readings.inputs import Opening
from longpoint.geometry.readings.outline import Mull
from longpoint.lengths import Fraction, Real


def mull_pieces(opening: Opening, frame: Frame, sides: tuple[CasedSide, ...]) -> tuple[Piece, ...]:
    """One piece for each mull, left to right, from the stool or the bottom casing up to the head's underside."""
    return tuple(
        _piece(opening, frame, sides, mull, number) for number, mull in enumerate(opening.outline.mulls, 1)
    )


def _piece(opening: Opening, frame: Frame, sides: tuple[CasedSide, ...], mull: Mull, number: int) -> Piece:
    casing = opening.trim.mull_casing
    assert casing is not None
    showing = (mull.width - casing.width) / 2
    left, right = mull.at + showing, mull.at + mull.width - showing
    foot = sides[0].reveal
    length_left = head_line(frame, sides[2].reveal, left) + foot
    length_right = head_line(frame, sides[2].reveal, right) + foot
    # Its right edge lies against the fence, so its head is on the saw's left.
    rise = length_right - length_left
    degrees = saw_angle(rise, casing.width)
    return Piece(
        kind=PieceKind.MULL_CASING,
        side=str(number),
        profile=casing.profile,
        short_point=length_left,
        long_point=length_right,
        overall=max(length_left, length_right),
        width=casing.width,
        thickness=casing.thickness,
        ends=(_head(degrees), End("foot", Hand.RIGHT)),
        marks=(
            Mark("underside of head jamb", max(length_left, length_right) - length_right + sides[2].reveal),
        ),
        how=(
            Step(
                "length",
                "head's height over the mull + head reveal + what the bottom casing or base leaves",
                (("mull's left face", mull.at), ("mull width", mull.width), ("head reveal", sides[2].reveal)),
            ),
            Step(
                "reveal",
                "half of what the mull is wider than its casing",
                (("reveal at each side", showing),),
            ),
        ),
    )


def head_line(frame: Frame, offset: Fraction, x: Real) -> Real:
    """How high a line `offset` outside the head lies over a place on the base."""
    _, right, _, left = frame.sides
    width = frame.sides[0]
    if frame.square:
        return left + (right - left) * x / width + offset
    (right_x, right_y), (left_x, left_y) = frame.vertices[2], frame.vertices[3]
    slope = (float(right_y) - float(left_y)) / (float(right_x) - float(left_x))
    return float(left_y) + slope * (float(x) - float(left_x)) + float(offset) * math.hypot(1, slope)


def _head(degrees: Real) -> End:
    if degrees == 0:
        return End("head", Hand.LEFT)
    outer_long = degrees > 0
    return End(
        "head",
        Hand.LEFT,
        CutKind.MITER,
        miter=degrees if outer_long else -degrees,
        miter_direction=Hand.RIGHT if outer_long else Hand.LEFT,
        long_edge="outer" if outer_long else "inner",
    )
