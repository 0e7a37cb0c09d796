"""The apron under a stool, flush with the trim's outside edges, and its mitered returns."""

from __future__ import annotations

import math
from functools import lru_cache

from longpoint.geometry.frame.kernel import HALF_RIGHT_ANGLE, Frame
from longpoint.geometry.frame.sides import CasedSide, spread
from longpoint.geometry.piece import CutKind, End, Hand, Mark, Piece, Step
from longpoint.geometry.piece_names import PieceKind
from longpoint.geometry.pieces.returns import face_miter, face_return
from longpoint.geometry.readings.inputs import Opening
from longpoint.geometry.readings.trim import Apron, ApronEnds
from longpoint.geometry.value import KEPT
from longpoint.lengths import Fraction, Real


def apron_pieces(opening: Opening, frame: Frame, sides: tuple[CasedSide, ...]) -> tuple[Piece, ...]:
    """The apron, then its left and right returns where its ends are returned."""
    apron = opening.trim.apron
    assert apron is not None
    left_spread, right_spread = spread(opening, frame, sides)
    make = _pieces if isinstance(left_spread, float) or isinstance(right_spread, float) else _kept
    return make(apron, opening.widths.apron, frame.sides[0], left_spread, right_spread)


def _pieces(
    apron: Apron, ripped: Fraction | None, jamb: Real, left_spread: Real, right_spread: Real
) -> tuple[Piece, ...]:
    width = ripped or apron.width
    length = jamb + left_spread + right_spread
    body = Piece(
        kind=PieceKind.APRON,
        side="",
        profile=apron.profile,
        short_point=-2 * _drawn_back(apron, width) + length,
        long_point=length,
        overall=length,
        width=width,
        thickness=apron.thickness,
        rip_width=ripped,
        ends=(_end(apron, "left", Hand.LEFT), _end(apron, "right", Hand.RIGHT)),
        marks=(Mark("center line of opening", jamb / 2 + left_spread),),
        how=(
            Step(
                "length",
                "jamb width + at each end (reveal + casing width): flush with the casing's outside edges",
                (
                    ("jamb width", jamb),
                    ("left reveal + casing width", left_spread),
                    ("right reveal + casing width", right_spread),
                ),
            ),
        ),
    )
    if apron.ends is not ApronEnds.MITERED_RETURN:
        return (body,)
    kind = PieceKind.APRON_RETURN
    return (
        body,
        face_return(kind, Hand.LEFT, apron.profile, width, apron.thickness),
        face_return(kind, Hand.RIGHT, apron.profile, width, apron.thickness),
    )


_kept = lru_cache(KEPT, typed=True)(_pieces)


def _drawn_back(apron: Apron, width: Fraction) -> Real:
    """How far each end's short point lies inside its long point."""
    if apron.ends is ApronEnds.MITERED_RETURN:
        return apron.thickness
    if apron.ends is ApronEnds.ANGLED:
        return width if apron.end_angle == HALF_RIGHT_ANGLE else float(width) * _tangent(apron.end_angle)
    return Fraction(0)


def _tangent(degrees: Real) -> float:
    return math.tan(math.radians(degrees))


def _end(apron: Apron, at: str, hand: Hand) -> End:
    """The apron lies face up with its top edge, under the stool, against the fence."""
    if apron.ends is ApronEnds.MITERED_RETURN:
        return face_miter(at, hand)
    if apron.ends is ApronEnds.ANGLED:
        inward = Hand.RIGHT if hand is Hand.LEFT else Hand.LEFT
        return End(at, hand, CutKind.MITER, miter=apron.end_angle, miter_direction=inward, long_edge="top")
    return End(at, hand)
