"""A door's jamb for a rough opening: legs with a hinge and a strike side, the head jamb, and the stops."""

from __future__ import annotations

from longpoint.geometry.frame.kernel import HALF_RIGHT_ANGLE
from longpoint.geometry.piece import CutKind, End, Hand, Mark, Piece, Step
from longpoint.geometry.piece_names import PieceKind
from longpoint.geometry.readings.inputs import Opening
from longpoint.geometry.readings.readings import Door
from longpoint.geometry.readings.trim import BoxCorners, DoorStop
from longpoint.lengths import Fraction
from longpoint.texts import say

STOP_PLACE = say("note", "door.stop-place")


def jamb_pieces(opening: Opening, door: Door) -> tuple[Piece, ...]:
    """The hinge leg, the strike leg, the head jamb, then the stops where the trim has them."""
    legs = (_leg(door, hinged=True), _leg(door, hinged=False))
    pieces = (*legs, _head(door))
    stop = opening.trim.stop
    return pieces if stop is None else (*pieces, *_stops(door, stop))


def _leg(door: Door, *, hinged: bool) -> Piece:
    length = door.clear_height + door.jamb_thickness
    # Foot on the saw's left, the jamb's face up.
    marks = [Mark("underside of head jamb", door.clear_height)]
    marks += _hinge_marks(door) if hinged else [Mark("middle of strike", door.strike_height)]
    return Piece(
        kind=PieceKind.JAMB_LEG,
        side="hinge" if hinged else "strike",
        profile=door.profile,
        short_point=length,
        long_point=length,
        overall=length,
        width=door.jamb_depth,
        thickness=door.jamb_thickness,
        ends=(End("foot", Hand.LEFT), End("head", Hand.RIGHT)),
        marks=tuple(marks),
        how=(
            Step(
                "length",
                "door height + head gap + floor gap + jamb thickness: past the head jamb to its upper side",
                (
                    ("door height", door.height),
                    ("head gap", door.head_gap),
                    ("floor gap", door.floor_gap),
                    ("jamb thickness", door.jamb_thickness),
                ),
            ),
        ),
        notes=(say("note", "door.leg-side", side=_side(door, hinged).value),),
    )


def _side(door: Door, hinged: bool) -> Hand:
    other = Hand.LEFT if door.hinge_side is Hand.RIGHT else Hand.RIGHT
    return door.hinge_side if hinged else other


def _hinge_marks(door: Door) -> list[Mark]:
    """The top of each hinge from the leg's foot, the top hinge first, those between evenly spaced."""
    top = door.floor_gap + door.height - door.top_hinge
    lowest = door.floor_gap + door.bottom_hinge + door.hinge_length
    apart = (top - lowest) / (door.hinges - 1)
    return [Mark(f"top of hinge {number + 1}", top - number * apart) for number in range(door.hinges)]


def _head(door: Door) -> Piece:
    length = door.jamb_width + 2 * door.housing
    return Piece(
        kind=PieceKind.HEAD_JAMB,
        side="",
        profile=door.profile,
        short_point=length,
        long_point=length,
        overall=length,
        width=door.jamb_depth,
        thickness=door.jamb_thickness,
        ends=(End("left", Hand.LEFT), End("right", Hand.RIGHT)),
        how=(
            Step(
                "length",
                "door width + hinge gap + strike gap + a housing at each end",
                (
                    ("door width", door.width),
                    ("hinge gap", door.hinge_gap),
                    ("strike gap", door.strike_gap),
                    ("housing", door.housing),
                ),
            ),
        ),
    )


def _stops(door: Door, stop: DoorStop) -> tuple[Piece, ...]:
    mitered = stop.corners is BoxCorners.MITERED
    height, width, thick = door.clear_height, door.jamb_width, stop.thickness
    short = height - thick
    legs = tuple(
        _stop(stop, side, (short, height if mitered else short), (False, mitered))
        for side in (Hand.LEFT.value, Hand.RIGHT.value)
    )
    return (
        *legs,
        _stop(stop, "head", (width - 2 * thick if mitered else width, width), (mitered, mitered)),
    )


def _stop(stop: DoorStop, side: str, lengths: tuple[Fraction, Fraction], mitered: tuple[bool, bool]) -> Piece:
    """A stop, its face up: mitered through its thickness, the long point on the back that lies on the jamb."""
    names = ("left", "right") if side == "head" else ("foot", "head")
    ends = tuple(_stop_end(name, hand, cut) for name, hand, cut in zip(names, Hand, mitered, strict=True))
    return Piece(
        kind=PieceKind.DOOR_STOP,
        side=side,
        profile=stop.profile,
        short_point=lengths[0],
        long_point=lengths[1],
        overall=lengths[1],
        width=stop.width,
        thickness=stop.thickness,
        ends=(ends[0], ends[1]),
        how=(
            Step(
                "length",
                "jamb to jamb"
                if side == "head"
                else "floor to the head jamb, less the head stop's thickness if butted",
                (("long point", lengths[1]), ("stop thickness", stop.thickness)),
            ),
        ),
        notes=(STOP_PLACE,),
    )


def _stop_end(at: str, hand: Hand, mitered: bool) -> End:
    if not mitered:
        return End(at, hand)
    inward = Hand.RIGHT if hand is Hand.LEFT else Hand.LEFT
    return End(at, hand, CutKind.BEVEL, bevel=HALF_RIGHT_ANGLE, bevel_direction=inward, long_edge="back")
