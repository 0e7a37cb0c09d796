"""Casing that leans: its inner edge on the jamb, its outside edge on a wall that stands proud."""

from __future__ import annotations

import math

from longpoint.geometry.frame.kernel import Corner, meet
from longpoint.geometry.frame.sides import CasedSide, flat_width
from longpoint.lengths import Fraction, Real

Vector = tuple[float, float, float]


def lean_degrees(width: Fraction, rise: Fraction) -> float:
    """By how much the piece's back leans out of the wall's plane."""
    return math.degrees(math.asin(rise / width))


def leaning_reach(at: Corner, mine: CasedSide, theirs: CasedSide, rise: Fraction) -> tuple[Real, Real, float]:
    """Where two leaning pieces meet: how far this one's inner and outer back edges run past the corner, and the
    bevel of its cut, degrees, positive where its face is the longer.

    Both backs hold the line from the short point, on the jamb, to the long point, on the wall. The cut holds that
    line and halves the angle between the two backs, so equal thicknesses meet edge to edge on the face too. Equal
    widths give the crown tables' settings, at a spring of 90 degrees less the lean.
    """
    own, other = _across(mine, rise), _across(theirs, rise)
    inner = meet(at, mine.reveal, theirs.reveal)
    outer = meet(at, mine.reveal + own, theirs.reveal + other)
    height, sin, cos = float(rise), float(at.sin), float(at.cos)
    # x along this piece past the corner, y outwards, z off the wall.
    joint = (float(outer) - float(inner), own, height)
    normal = _unit((0.0, -height, own))
    theirs_normal = _unit((-height * sin, height * cos, other))
    cut = _unit(_cross(joint, _sum(normal, theirs_normal)))
    if cut[0] < 0:
        cut = (-cut[0], -cut[1], -cut[2])
    return inner, outer, -math.degrees(math.asin(_dot(cut, normal)))


def leaning_stand(at: Corner, mine: CasedSide, base: Real, rise: Fraction) -> tuple[Real, Real, float]:
    """Where a leaning leg stands on a line so far below the base: as `leaning_reach`, its cut lying on the floor."""
    own = _across(mine, rise)
    inner, outer = meet(at, mine.reveal, base), meet(at, mine.reveal + own, base)
    # The floor's normal is upright in the wall's plane, so it tips out of the leg's back as the leg leans and rakes.
    return inner, outer, -math.degrees(math.asin(float(at.cos) * float(rise) / math.hypot(own, float(rise))))


def face_run(bevel: float, thickness: Fraction, miter: Real) -> float:
    """How far a beveled cut runs along the piece from back to face, positive where the face is the longer."""
    return float(thickness) * math.tan(math.radians(bevel)) / math.cos(math.radians(miter))


def _across(side: CasedSide, rise: Fraction) -> float:
    return flat_width(side.outer - side.reveal, rise)


def _cross(a: Vector, b: Vector) -> Vector:
    return a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]


def _dot(a: Vector, b: Vector) -> float:
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2]


def _sum(a: Vector, b: Vector) -> Vector:
    return a[0] + b[0], a[1] + b[1], a[2] + b[2]


def _unit(a: Vector) -> Vector:
    size = math.sqrt(_dot(a, a))
    return a[0] / size, a[1] / size, a[2] / size
