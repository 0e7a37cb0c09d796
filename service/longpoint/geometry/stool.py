"""The stool: its length with horns, its ripped width, its notches and its ends."""

from __future__ import annotations

from longpoint.geometry.inputs import Opening, Readings
from longpoint.geometry.kernel import ZERO, Frame
from longpoint.geometry.parts import Cutout, End, Hand, Mark, Notch, Part, PartKind, Step
from longpoint.geometry.returns import flat_return, front_mitre
from longpoint.geometry.sides import CasedSide, spread
from longpoint.geometry.trim import Stool, StoolEnds
from longpoint.lengths import Fraction, Real, spoken

TWO_DEPTHS = (
    "The two depths differ: ripped to the deeper one; each horn's notch keeps its own depth, so at the {shallow} end "
    "the nosing stands {by} further off the wall."
)
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


def deepest(readings: Readings) -> Fraction:
    """The deepest of the depths that were read."""
    left, right = readings.left_depth, readings.right_depth
    assert left is not None
    assert right is not None
    depth = left if left >= right else right
    for at_horn in (readings.left_horn_depth, readings.right_horn_depth):
        if at_horn is not None and at_horn > depth:
            depth = at_horn
    return depth


def stool_width(opening: Opening, least_depth: Fraction = ZERO) -> Fraction:
    """The width that a stool is ripped to, for depths that were read.

    Args:
        opening: whose stool it is.
        least_depth: what it has to reach at least, where it goes on under deeper openings.
    """
    stool = opening.trim.stool
    assert stool is not None
    return max(deepest(opening.readings), least_depth) + nosing_to_wall(opening) - stool.sash_clearance


def stool_parts(
    opening: Opening, frame: Frame, sides: tuple[CasedSide, ...], least_depth: Fraction = ZERO
) -> tuple[Part, ...]:
    """The stool of an opening whose trim has one and whose jamb depths were read, then its returns.

    `least_depth` is as in `stool_width`.
    """
    stool, readings = opening.trim.stool, opening.readings
    assert stool is not None
    assert readings.left_depth is not None
    assert readings.right_depth is not None
    left_spread, right_spread = spread(opening, frame, sides)
    left_past, right_past = _horn(opening.horns.left, stool), _horn(opening.horns.right, stool)
    jamb = frame.sides[0]
    # Exact lengths stand to the left of what may be real: that sum is ten times as quick as the other.
    left_horn, right_horn = left_past + left_spread, right_past + right_spread
    length = jamb + left_horn + right_horn
    width = stool_width(opening, least_depth)
    notches = (
        _notch(opening, readings.left_depth, readings.left_horn_depth, left_horn),
        _notch(opening, readings.right_depth, readings.right_horn_depth, right_horn),
    )
    returned = stool.ends is StoolEnds.MITRED_RETURN
    # The nosing lies away from the fence, so that the notches in the back edge are sawn against it.
    ends = (_end("left", Hand.LEFT, notches[0], returned), _end("right", Hand.RIGHT, notches[1], returned))
    body = Part(
        kind=PartKind.STOOL,
        opening=opening.mark,
        side="",
        profile=stool.profile,
        short_point=length - sum(_off_wall(width, notch) for notch in notches) if returned else length,
        long_point=length,
        overall=length,
        width=width,
        thickness=stool.thickness,
        rip_width=width,
        ends=ends,
        marks=(
            Mark("left casing outside edge", left_past),
            Mark("left jamb face", left_horn),
            Mark("centre line of opening", jamb / 2 + left_horn),
            Mark("right jamb face", jamb + left_horn),
            Mark("right casing outside edge", -right_past + length),
        ),
        how=_how(opening, jamb, (left_spread, right_spread), (left_past, right_past), least_depth),
        notes=_notes(opening),
        cutouts=_cutouts(readings, left_horn, notches) if readings.mulls else (),
    )
    if not returned:
        return (body,)
    mark, kind, thickness = opening.mark, PartKind.STOOL_RETURN, stool.thickness
    return (
        body,
        flat_return(mark, kind, Hand.LEFT, stool.profile, _off_wall(width, notches[0]), thickness),
        flat_return(mark, kind, Hand.RIGHT, stool.profile, _off_wall(width, notches[1]), thickness),
    )


def _cutouts(readings: Readings, left_horn: Real, notches: tuple[Notch, Notch]) -> tuple[Cutout, ...]:
    """Where the stool passes a mull, as deep as the notches at its ends."""
    left, right = notches[0].depth, notches[1].depth
    return tuple(
        Cutout(left_horn + mull.at, mull.width, left, None if left == right else right)
        for mull in readings.mulls
    )


def _off_wall(width: Real, notch: Notch) -> Real:
    """How far a horn stands off the wall at its end."""
    return width - (notch.depth if notch.end_depth is None else notch.end_depth)


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
    opening: Opening,
    jamb: Real,
    spreads: tuple[Real, Real],
    horns: tuple[Fraction, Fraction],
    least_depth: Fraction,
) -> tuple[Step, ...]:
    stool, readings = opening.trim.stool, opening.readings
    assert stool is not None
    under = opening.trim.apron or opening.trim.casing
    past: tuple[tuple[str, Real], ...] = (("horn", horns[0]),)
    if horns[0] != horns[1]:
        past = (("left horn", horns[0]), ("right horn", horns[1]))
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
                ("jamb depth", max(deepest(readings), least_depth)),
                ("apron thickness", under.thickness if under else Fraction(0)),
                ("nosing", stool.nosing),
                ("sash clearance", stool.sash_clearance),
            ),
        ),
        Step(
            "notches",
            "depth: jamb depth at that end - sash clearance - scribe; length: reveal + casing width + horn",
            _notch_inputs(readings, stool),
        ),
    )


def _notch_inputs(readings: Readings, stool: Stool) -> tuple[tuple[str, Real], ...]:
    assert readings.left_depth is not None
    assert readings.right_depth is not None
    inputs: tuple[tuple[str, Real], ...] = (
        ("left depth", readings.left_depth),
        ("right depth", readings.right_depth),
    )
    if readings.left_horn_depth is not None:
        inputs += (("left depth at horn", readings.left_horn_depth),)
    if readings.right_horn_depth is not None:
        inputs += (("right depth at horn", readings.right_horn_depth),)
    return (*inputs, ("scribe", stool.scribe)) if stool.scribe else inputs


def _notes(opening: Opening) -> tuple[str, ...]:
    stool, readings = opening.trim.stool, opening.readings
    assert stool is not None
    notes: list[str] = []
    left, right = readings.left_depth, readings.right_depth
    if left is not None and right is not None and left != right:
        shallow = "left" if left < right else "right"
        notes.append(TWO_DEPTHS.format(shallow=shallow, by=spoken(abs(left - right))))
    if readings.left_horn_depth is not None or readings.right_horn_depth is not None:
        notes.append(OUT_OF_PLANE)
    if stool.scribe:
        notes.append(SCRIBED)
    if stool.ends is StoolEnds.EASED:
        notes.append(f"Ease the edges of both ends to a radius of {spoken(stool.ease)}.")
    if stool.ends is StoolEnds.MITRED_RETURN:
        notes.append(RETURNED)
    return tuple(notes)
