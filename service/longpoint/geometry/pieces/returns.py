"""Returns: the short pieces that carry a moulded edge back to the wall."""

from __future__ import annotations

from functools import cache, lru_cache

from longpoint.geometry.frame.kernel import HALF_RIGHT_ANGLE
from longpoint.geometry.parts import CutKind, End, Hand, Part, Step
from longpoint.geometry.piece_names import PartKind
from longpoint.geometry.value import KEPT
from longpoint.lengths import Fraction, Real

CAUTION = "Too short to hold: cut it from a longer piece and let the blade stop before lifting it."


@cache
def face_mitre(at: str, hand: Hand) -> End:
    """A mitre through the thickness, long point on the face; the blade's top leans out over the offcut."""
    return End(at, hand, CutKind.BEVEL, bevel=HALF_RIGHT_ANGLE, tilt=hand, long_edge="face")


@cache
def front_mitre(at: str, hand: Hand) -> End:
    """A mitre across a board lying flat with its front edge away from the fence, long point on that edge."""
    return End(at, hand, CutKind.MITRE, mitre=HALF_RIGHT_ANGLE, swing=hand, long_edge="front")


@lru_cache(KEPT)
def face_return(kind: PartKind, hand: Hand, profile: str, width: Fraction, depth: Fraction) -> Part:
    """A return of upright stock, `depth` off the wall, mitred through its thickness."""
    mitred = face_mitre("front", _other(hand))
    return _return(kind, hand, profile, width, depth, depth, mitred, "through the thickness")


@lru_cache(KEPT, typed=True)
def flat_return(kind: PartKind, hand: Hand, profile: str, depth: Real, thickness: Fraction) -> Part:
    """A return of stock that lies flat, `depth` off the wall, mitred across its face."""
    mitred = front_mitre("front", _other(hand))
    return _return(kind, hand, profile, depth, thickness, depth, mitred, "across the face")


def _return(
    kind: PartKind,
    hand: Hand,
    profile: str,
    width: Real,
    thickness: Fraction,
    depth: Real,
    mitred: End,
    how: str,
) -> Part:
    wall = End("wall", hand)
    return Part(
        kind=kind,
        side=hand.value,
        profile=profile,
        short_point=Fraction(0),
        long_point=depth,
        overall=depth,
        width=width,
        thickness=thickness,
        ends=(wall, mitred) if hand is Hand.LEFT else (mitred, wall),
        how=(
            Step(
                "length",
                f"what stands off the wall: mitred 45° {how}, square at the wall",
                (("stands off the wall", depth),),
            ),
        ),
        notes=(CAUTION,),
    )


def _other(hand: Hand) -> Hand:
    return Hand.RIGHT if hand is Hand.LEFT else Hand.LEFT
