"""Returns: the short pieces that carry a molded edge back to the wall."""

from __future__ import annotations

from functools import cache, lru_cache

from longpoint.geometry.frame.kernel import HALF_RIGHT_ANGLE
from longpoint.geometry.piece import CutKind, End, Hand, Piece, Step
from longpoint.geometry.piece_names import PieceKind
from longpoint.geometry.value import KEPT
from longpoint.lengths import Fraction, Real
from longpoint.texts import say

CAUTION = say("note", "returns.too-short-to-hold")


@cache
def face_miter(at: str, hand: Hand) -> End:
    """A miter through the thickness, long point on the face; the blade's top leans out over the offcut."""
    return End(at, hand, CutKind.BEVEL, bevel=HALF_RIGHT_ANGLE, bevel_direction=hand, long_edge="face")


@cache
def front_miter(at: str, hand: Hand) -> End:
    """A miter across a board lying flat with its front edge away from the fence, long point on that edge."""
    return End(at, hand, CutKind.MITER, miter=HALF_RIGHT_ANGLE, miter_direction=hand, long_edge="front")


@lru_cache(KEPT)
def face_return(kind: PieceKind, hand: Hand, profile: str, width: Fraction, depth: Fraction) -> Piece:
    """A return of upright stock, `depth` off the wall, mitered through its thickness."""
    mitered = face_miter("front", _other(hand))
    return _return(kind, hand, profile, width, depth, depth, mitered, "through the thickness")


@lru_cache(KEPT, typed=True)
def flat_return(kind: PieceKind, hand: Hand, profile: str, depth: Real, thickness: Fraction) -> Piece:
    """A return of stock that lies flat, `depth` off the wall, mitered across its face."""
    mitered = front_miter("front", _other(hand))
    return _return(kind, hand, profile, depth, thickness, depth, mitered, "across the face")


def _return(
    kind: PieceKind,
    hand: Hand,
    profile: str,
    width: Real,
    thickness: Fraction,
    depth: Real,
    mitered: End,
    how: str,
) -> Piece:
    wall = End("wall", hand)
    return Piece(
        kind=kind,
        side=hand.value,
        profile=profile,
        short_point=Fraction(0),
        long_point=depth,
        overall=depth,
        width=width,
        thickness=thickness,
        ends=(wall, mitered) if hand is Hand.LEFT else (mitered, wall),
        how=(
            Step(
                "length",
                f"what stands off the wall: mitered 45° {how}, square at the wall",
                (("stands off the wall", depth),),
            ),
        ),
        notes=(CAUTION,),
    )


def _other(hand: Hand) -> Hand:
    return Hand.RIGHT if hand is Hand.LEFT else Hand.LEFT
