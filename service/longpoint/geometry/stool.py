"""The stool: its length with horns, its ripped width, its notches and its ends."""

from __future__ import annotations

from longpoint.geometry.inputs import Opening
from longpoint.geometry.kernel import Frame
from longpoint.geometry.parts import End, Hand, Mark, Notch, Part, PartKind, Step
from longpoint.geometry.returns import flat_return, front_mitre
from longpoint.geometry.sides import CasedSide, spread
from longpoint.geometry.trim import Stool, StoolEnds
from longpoint.lengths import Fraction, Real, spoken

TWO_DEPTHS = "The two depths differ: ripped to the deeper one; each horn's notch keeps its own depth."
SCRIBED = "Each notch leaves its scribe allowance: hold the stool to the wall, scribe, and cut to the line."
RETURNED = "Saw the notches first; mitre each horn from its front corner and stop at the notch."
OUT_OF_PLANE = (
    "The wall is out of plane: each notch runs from its depth at the jamb to its depth at the horn's end."
)


def nosing_to_wall(opening: Opening) -> Fraction:
    """How far the stool stands off the wall: over the apron (or what would be one) and past it by the nosing."""
    trim = opening.trim
    assert trim.stool is not None
    under = trim.apron or trim.casing
    return (under.thickness if under else Fraction(0)) + trim.stool.nosing


def stool_width(opening: Opening) -> Fraction:
    """The width that a stool is ripped to, for depths that were read."""
    stool, readings = opening.trim.stool, opening.readings
    assert stool is not None
    depths = (readings.left_depth, readings.right_depth, readings.left_horn_depth, readings.right_horn_depth)
    return (
        max(depth for depth in depths if depth is not None) + nosing_to_wall(opening) - stool.sash_clearance
    )


def stool_parts(opening: Opening, frame: Frame, sides: tuple[CasedSide, ...]) -> tuple[Part, ...]:
    """The stool of an opening whose trim has one and whose jamb depths were read, then its returns."""
    stool, readings = opening.trim.stool, opening.readings
    assert stool is not None
    assert readings.left_depth is not None
    assert readings.right_depth is not None
    left_spread, right_spread = spread(frame, sides)
    left_past, right_past = _horn(opening.horns.left, stool), _horn(opening.horns.right, stool)
    jamb = frame.sides[0]
    left_horn, right_horn = left_spread + left_past, right_spread + right_past
    length = jamb + left_horn + right_horn
    width = stool_width(opening)
    notches = (
        _notch(opening, readings.left_depth, readings.left_horn_depth, left_horn),
        _notch(opening, readings.right_depth, readings.right_horn_depth, right_horn),
    )
    off_wall = tuple(
        width - (notch.depth if notch.end_depth is None else notch.end_depth) for notch in notches
    )
    returned = stool.ends is StoolEnds.MITRED_RETURN
    # The nosing lies away from the fence, so that the notches in the back edge are sawn against it.
    ends = (_end("left", Hand.LEFT, notches[0], returned), _end("right", Hand.RIGHT, notches[1], returned))
    body = Part(
        kind=PartKind.STOOL,
        opening=opening.mark,
        side="",
        profile=stool.profile,
        short_point=length - off_wall[0] - off_wall[1] if returned else length,
        long_point=length,
        overall=length,
        width=width,
        thickness=stool.thickness,
        rip_width=width,
        ends=ends,
        marks=(
            Mark("left casing outside edge", left_past),
            Mark("left jamb face", left_horn),
            Mark("centre line of opening", left_horn + jamb / 2),
            Mark("right jamb face", left_horn + jamb),
            Mark("right casing outside edge", length - right_past),
        ),
        how=_how(opening, jamb, (left_spread, right_spread), (left_past, right_past)),
        notes=_notes(opening),
    )
    if not returned:
        return (body,)
    mark, kind, thickness = opening.mark, PartKind.STOOL_RETURN, stool.thickness
    return (
        body,
        flat_return(mark, kind, Hand.LEFT, stool.profile, off_wall[0], thickness),
        flat_return(mark, kind, Hand.RIGHT, stool.profile, off_wall[1], thickness),
    )


def _horn(own: Fraction | None, stool: Stool) -> Fraction:
    return stool.horn if own is None else own


def _notch(opening: Opening, depth: Fraction, at_end: Fraction | None, length: Real) -> Notch:
    stool = opening.trim.stool
    assert stool is not None
    less = stool.sash_clearance + stool.scribe
    return Notch(depth - less, length, None if at_end is None else at_end - less)


def _end(at: str, hand: Hand, notch: Notch, returned: bool) -> End:
    if not returned:
        return End(at, hand, notch=notch)
    mitred = front_mitre(at, hand)
    return End(at, hand, mitred.cut, mitred.mitre, mitred.swing, long_edge=mitred.long_edge, notch=notch)


def _how(
    opening: Opening, jamb: Real, spreads: tuple[Real, Real], horns: tuple[Fraction, Fraction]
) -> tuple[Step, ...]:
    stool, readings = opening.trim.stool, opening.readings
    assert stool is not None
    depths = (("left depth", readings.left_depth), ("right depth", readings.right_depth))
    at_ends = (
        ("left depth at horn", readings.left_horn_depth),
        ("right depth at horn", readings.right_horn_depth),
    )
    taken = tuple((name, depth) for name, depth in (*depths, *at_ends) if depth is not None)
    past = (
        (("horn", horns[0]),) if horns[0] == horns[1] else (("left horn", horns[0]), ("right horn", horns[1]))
    )
    off_wall = nosing_to_wall(opening)
    return (
        Step(
            "length",
            "jamb width + at each end (reveal + casing width + horn)",
            (
                ("jamb width", jamb),
                ("left reveal + casing width", spreads[0]),
                ("right reveal + casing width", spreads[1]),
                *past,
            ),
        ),
        Step(
            "rip_width",
            "jamb depth + apron thickness + nosing - sash clearance",
            (
                ("jamb depth", max(depth for _, depth in taken)),
                ("apron thickness", off_wall - stool.nosing),
                ("nosing", stool.nosing),
                ("sash clearance", stool.sash_clearance),
            ),
        ),
        Step(
            "notches",
            "depth: jamb depth at that end - sash clearance - scribe; length: reveal + casing width + horn",
            (*taken, ("scribe", stool.scribe)) if stool.scribe else taken,
        ),
    )


def _notes(opening: Opening) -> tuple[str, ...]:
    stool, readings = opening.trim.stool, opening.readings
    assert stool is not None
    told = (
        (readings.left_depth != readings.right_depth, TWO_DEPTHS),
        (readings.left_horn_depth is not None or readings.right_horn_depth is not None, OUT_OF_PLANE),
        (bool(stool.scribe), SCRIBED),
        (stool.ends is StoolEnds.EASED, f"Ease the edges of both ends to a radius of {spoken(stool.ease)}."),
        (stool.ends is StoolEnds.MITRED_RETURN, RETURNED),
    )
    return tuple(note for holds, note in told if holds)
