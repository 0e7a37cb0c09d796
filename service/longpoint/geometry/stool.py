"""The stool: its length with horns, its ripped width and its notches."""

from __future__ import annotations

from longpoint.geometry.casing import CasedSide
from longpoint.geometry.inputs import Opening
from longpoint.geometry.kernel import Frame, meet
from longpoint.geometry.parts import End, Hand, Mark, Notch, Part, PartKind, Step
from longpoint.lengths import Real


def casing_spread(frame: Frame, sides: tuple[CasedSide, ...]) -> tuple[Real, Real]:
    """How far the left and right legs' outside edges stand beyond the jamb at the stool line."""
    return (
        meet(frame.corners[-1], sides[0].reveal, sides[-1].outer),
        meet(frame.corners[0], sides[0].reveal, sides[1].outer),
    )


def stool_part(opening: Opening, frame: Frame, sides: tuple[CasedSide, ...]) -> Part:
    """The stool of an opening whose trim has one and whose jamb depths were read."""
    stool, readings = opening.trim.stool, opening.readings
    assert stool is not None
    assert readings.left_depth is not None
    assert readings.right_depth is not None
    left_spread, right_spread = casing_spread(frame, sides)
    jamb = frame.sides[0]
    left_horn, right_horn = left_spread + stool.horn, right_spread + stool.horn
    length = jamb + left_horn + right_horn
    apron_thickness = opening.trim.apron.thickness if opening.trim.apron else opening.trim.casing.thickness
    depth = max(readings.left_depth, readings.right_depth)
    width = depth + apron_thickness + stool.nosing - stool.sash_clearance
    # The nosing lies away from the fence, so that the notches in the back edge are sawn against it.
    ends = (
        End("left", Hand.LEFT, notch=Notch(readings.left_depth - stool.sash_clearance, left_horn)),
        End("right", Hand.RIGHT, notch=Notch(readings.right_depth - stool.sash_clearance, right_horn)),
    )
    notes: tuple[str, ...] = ()
    if readings.left_depth != readings.right_depth:
        notes = ("The two depths differ: ripped to the deeper one; each horn's notch keeps its own depth.",)
    return Part(
        kind=PartKind.STOOL,
        opening=opening.mark,
        side="",
        profile=stool.profile,
        short_point=length,
        long_point=length,
        overall=length,
        width=width,
        thickness=stool.thickness,
        rip_width=width,
        ends=ends,
        marks=(
            Mark("left casing outside edge", stool.horn),
            Mark("left jamb face", left_horn),
            Mark("centre line of opening", left_horn + jamb / 2),
            Mark("right jamb face", left_horn + jamb),
            Mark("right casing outside edge", length - stool.horn),
        ),
        how=(
            Step(
                "length",
                "jamb width + at each end (reveal + casing width + horn)",
                (
                    ("jamb width", jamb),
                    ("left reveal + casing width", left_spread),
                    ("right reveal + casing width", right_spread),
                    ("horn", stool.horn),
                ),
            ),
            Step(
                "rip_width",
                "jamb depth + apron thickness + nosing - sash clearance",
                (
                    ("jamb depth", depth),
                    ("apron thickness", apron_thickness),
                    ("nosing", stool.nosing),
                    ("sash clearance", stool.sash_clearance),
                ),
            ),
            Step(
                "notches",
                "depth: jamb depth at that end - sash clearance; length: reveal + casing width + horn",
                (("left depth", readings.left_depth), ("right depth", readings.right_depth)),
            ),
        ),
        notes=notes,
    )
