"""A curved head in straight segments: equal chords of a circle, their ends on the true curve."""

from __future__ import annotations

import math

from longpoint.geometry.frame.kernel import SQUARE, Corner, Frame, corner
from longpoint.geometry.readings.outline import Arch
from longpoint.lengths import Fraction, Real
from longpoint.texts import say
from longpoint.values import Faults, Value

MOST_PIECES = 60


class Curve(Value, frozen=True):
    """The circle through a chord and its rise.

    Attributes:
        radius: exact.
        half_angle: degrees between the curve's middle and its springing, seen from the center.
        pieces: how many equal segments.
        departure: how far a segment's middle lies inside the true curve.
    """

    radius: Fraction
    half_angle: float
    pieces: int
    departure: float

    @property
    def turn(self) -> float:
        """Degrees from one segment to the next."""
        return 2 * self.half_angle / self.pieces

    @property
    def segment(self) -> float:
        return 2 * float(self.radius) * math.sin(math.radians(self.turn / 2))

    def blank_width(self, inner: Real, outer: Real) -> float:
        """The width of stock that one curved segment is sawn from, its edges so far outside the jamb's curve."""
        half = math.cos(math.radians(self.turn / 2))
        return float(self.radius + outer) - float(self.radius + inner) * half

    @property
    def length(self) -> float:
        """Along the true curve."""
        return float(self.radius) * math.radians(2 * self.half_angle)


def radius_of(chord: Fraction, rise: Fraction) -> Fraction:
    """The radius of the circle through a chord's ends and the top of its rise."""
    return (chord * chord / 4 + rise * rise) / (2 * rise)


def curve(shape: Arch, faults: Faults) -> Curve | None:
    """The curve of an arched head; None, with the faults reported, where there is none."""
    before = len(faults.found)
    for name in ("jamb_width", "rise"):
        if getattr(shape, name) <= 0:
            words = name.replace("_", " ")
            faults.add(
                ("readings", name), "not-positive", say("problem", "readings.not-positive", reading=words)
            )
    if shape.spring_height < 0:
        faults.add(
            ("readings", "spring_height"), "not-positive", say("problem", "arch.spring-height-negative")
        )
    if len(faults.found) > before:
        return None
    if 2 * shape.rise > shape.jamb_width:
        faults.add(
            ("readings", "rise"),
            "not-convex",
            say("problem", "arch.not-convex"),
        )
        return None
    radius = radius_of(shape.jamb_width, shape.rise)
    half = math.degrees(2 * math.atan2(2 * shape.rise, shape.jamb_width))
    pieces = _pieces(shape, radius, half, faults)
    if pieces is None:
        return None
    return Curve(radius, half, pieces, float(radius) * (1 - math.cos(math.radians(half / pieces))))


def _pieces(shape: Arch, radius: Fraction, half: float, faults: Faults) -> int | None:
    if (shape.head_pieces is None) == (shape.departure is None):
        faults.add(
            ("readings", "head_pieces"),
            "pieces-or-departure",
            say("problem", "arch.pieces-or-departure"),
        )
        return None
    least = 2 if shape.spring_height else 3
    if shape.head_pieces is not None:
        if not least <= shape.head_pieces <= MOST_PIECES:
            faults.add(
                ("readings", "head_pieces"),
                "pieces-out-of-range",
                say("problem", "arch.pieces-out-of-range", least=least, most=MOST_PIECES),
            )
            return None
        return shape.head_pieces
    assert shape.departure is not None
    if shape.departure <= 0:
        faults.add(
            ("readings", "departure"),
            "departure-too-small",
            say("problem", "arch.departure-too-small"),
        )
        return None
    half_turn = math.degrees(math.acos(max(-1.0, 1 - float(shape.departure) / float(radius))))
    pieces = max(least, math.ceil(half / half_turn - 1e-9))
    if pieces > MOST_PIECES:
        faults.add(
            ("readings", "departure"),
            "departure-too-small",
            say("problem", "arch.too-many-pieces", pieces=pieces, most=MOST_PIECES),
        )
        return None
    return pieces


def arched(shape: Arch, faults: Faults) -> Frame | None:
    """The frame of an arched opening: base, right leg, segments, left leg."""
    found = curve(shape, faults)
    if found is None:
        return None
    segments: tuple[Real, ...] = (found.segment,) * found.pieces
    between: tuple[Corner, ...] = (corner(180 - found.turn),) * (found.pieces - 1)
    at_spring = found.half_angle - found.turn / 2
    width, height = shape.jamb_width, shape.spring_height
    if height == 0:
        return Frame((width, *segments), (corner(at_spring), *between, corner(at_spring)))
    spring = corner(90 + at_spring)
    return Frame((width, height, *segments, height), (SQUARE, spring, *between, spring, SQUARE))
