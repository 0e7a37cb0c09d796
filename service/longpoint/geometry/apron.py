"""The apron under a stool, flush with the casing's outside edges, and its mitred returns."""

from __future__ import annotations

from longpoint.geometry.casing import CasedSide
from longpoint.geometry.inputs import Apron, ApronEnds, Opening
from longpoint.geometry.kernel import HALF_RIGHT_ANGLE, Frame
from longpoint.geometry.parts import CutKind, End, Hand, Mark, Part, PartKind, Step
from longpoint.geometry.stool import casing_spread
from longpoint.lengths import Fraction

RETURN_CAUTION = "Too short to hold: cut it from a longer piece and let the blade stop before lifting it."


def apron_parts(opening: Opening, frame: Frame, sides: tuple[CasedSide, ...]) -> tuple[Part, ...]:
    """The apron, then its left and right returns where its ends are returned."""
    apron = opening.trim.apron
    assert apron is not None
    returned = apron.ends is ApronEnds.MITRED_RETURN
    left_spread, right_spread = casing_spread(frame, sides)
    jamb = frame.sides[0]
    length = jamb + left_spread + right_spread
    body = Part(
        kind=PartKind.APRON,
        opening=opening.mark,
        side="",
        profile=apron.profile,
        short_point=length - 2 * apron.thickness if returned else length,
        long_point=length,
        overall=length,
        width=apron.width,
        thickness=apron.thickness,
        ends=(
            _face_mitre("left", Hand.LEFT) if returned else End("left", Hand.LEFT),
            _face_mitre("right", Hand.RIGHT) if returned else End("right", Hand.RIGHT),
        ),
        marks=(Mark("centre line of opening", left_spread + jamb / 2),),
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
    if not returned:
        return (body,)
    return (body, _return(opening, apron, Hand.LEFT), _return(opening, apron, Hand.RIGHT))


def _face_mitre(at: str, hand: Hand) -> End:
    """A mitre through the thickness, long point on the face; the blade's top leans out over the offcut."""
    return End(at, hand, CutKind.BEVEL, bevel=HALF_RIGHT_ANGLE, tilt=hand, long_edge="face")


def _return(opening: Opening, apron: Apron, hand: Hand) -> Part:
    wall = End("wall", hand)
    other = Hand.RIGHT if hand is Hand.LEFT else Hand.LEFT
    mitred = _face_mitre("front", other)
    return Part(
        kind=PartKind.APRON_RETURN,
        opening=opening.mark,
        side=hand.value,
        profile=apron.profile,
        short_point=Fraction(0),
        long_point=apron.thickness,
        overall=apron.thickness,
        width=apron.width,
        thickness=apron.thickness,
        ends=(wall, mitred) if hand is Hand.LEFT else (mitred, wall),
        how=(
            Step(
                "length",
                "apron thickness: mitred 45° through the thickness, square at the wall",
                (("apron thickness", apron.thickness),),
            ),
        ),
        notes=(RETURN_CAUTION,),
    )
