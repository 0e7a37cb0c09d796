"""The jamb's inside faces, from the readings as they were sent."""

import cmath
import math
from dataclasses import dataclass
from typing import Any

from dryfit.door import clear_size
from dryfit.tape import inches


@dataclass(frozen=True)
class Line:
    """A line through a point along a direction (a unit complex number)."""

    at: complex
    along: complex

    def outside(self, distance: float) -> "Line":
        """The parallel line that far to the right of its direction: outwards, going counterclockwise."""
        return Line(self.at - 1j * self.along * distance, self.along)

    def off(self, point: complex) -> float:
        """How far a point lies outside this line."""
        return ((point - self.at) / self.along).imag * -1

    def ahead(self, point: complex) -> float:
        """How far along the line a point is from where the line starts."""
        return ((point - self.at) / self.along).real

    def crosses(self, other: "Line") -> complex:
        """Where two lines cross."""
        turn = (other.along / self.along).imag
        distance = ((other.at - self.at) * other.along.conjugate()).imag / (
            self.along * other.along.conjugate()
        ).imag
        assert turn != 0
        return self.at + self.along * distance


@dataclass(frozen=True)
class Outline:
    """The opening's corners, counterclockwise from the bottom left; side i starts at corner i."""

    corners: tuple[complex, ...]

    def side(self, index: int) -> Line:
        start, end = self.corners[index], self.corners[(index + 1) % len(self.corners)]
        return Line(start, (end - start) / abs(end - start))

    def length(self, index: int) -> float:
        return abs(self.corners[(index + 1) % len(self.corners)] - self.corners[index])

    @property
    def longest(self) -> float:
        return max(self.length(index) for index in range(len(self.corners)))

    @property
    def names(self) -> tuple[str, ...]:
        """Each side as the trade calls it."""
        heads = len(self.corners) - 3
        between = ("head",) if heads == 1 else tuple(f"head {number}" for number in range(heads, 0, -1))
        return ("sill", "right", *between, "left")


def outline(readings: dict[str, Any], unit: str | None, on_stool: bool = True) -> Outline:
    """The outline a tape's readings describe, turned so that its base lies along the real axis. A stool is level; below
    it, what a level shows of the floor or the sill jamb counts."""
    if readings.get("sides"):
        return _polygon([float(inches(side, unit)) for side in readings["sides"]], readings.get("angles"))
    if "door" in readings:
        wide, high = clear_size(readings["door"], unit)
        return Outline((0j, complex(wide), complex(wide, high), complex(0, high)))
    across = [*readings.get("joined_widths", ()), *readings.get("mull_widths", ())] or [
        readings["jamb_width"]
    ]
    width = sum(float(inches(each, unit)) for each in across)
    both = readings.get("jamb_height")
    if "rise" in readings:
        return _arch(readings, width, float(inches(both, unit)) if both else 0.0, unit)
    left = float(inches(both or readings["left_jamb_height"], unit))
    right = float(inches(both or readings["right_jamb_height"], unit))
    if "head_width" in readings:
        return _quadrilateral(readings, width, left, right, unit)
    sill = None if on_stool else readings.get("sill")
    rise = float(inches(sill["by"], unit)) * (1 if sill["low"] == "left" else -1) if sill else 0.0
    end = complex(width, rise)
    level = abs(end) / end
    return Outline((0j, end * level, (end + 1j * right) * level, 1j * left * level))


def _arch(readings: dict[str, Any], width: float, spring: float, unit: str | None) -> Outline:
    """Equal chords of the circle through both springing points and the top of the rise."""
    rise = float(inches(readings["rise"], unit))
    radius = (width**2 / 4 + rise**2) / (2 * rise)
    half = math.asin(width / 2 / radius)
    # Standing on the base, two chords would leave no head between the legs.
    least = 2 if spring else 3
    pieces = readings.get("head_pieces")
    if pieces is None:
        departure = float(inches(readings["departure"], unit)) + 1e-9
        pieces = next(n for n in range(least, 1000) if radius * (1 - math.cos(half / n)) <= departure)
    center = complex(width / 2, spring + rise - radius)
    curve = [center + 1j * cmath.rect(radius, half * (2 * n / pieces - 1)) for n in range(pieces + 1)]
    return Outline((0j, *([complex(width)] if spring else []), *curve[: None if spring else -1]))


def _quadrilateral(
    readings: dict[str, Any], bottom: float, left: float, right: float, unit: str | None
) -> Outline:
    """Two widths, two heights and the one reading that holds the shape."""
    top, base_right = float(inches(readings["head_width"], unit)), complex(bottom)

    def held(diagonal: str, upper: str, side: float, lower: str, other: float) -> float | None:
        """A diagonal as it was read, or from the angle at a corner that it lies across."""
        if diagonal in readings:
            return float(inches(readings[diagonal], unit))
        for angle, one, two in ((upper, side, top), (lower, other, bottom)):
            if angle in readings:
                return math.sqrt(one**2 + two**2 - 2 * one * two * math.cos(math.radians(readings[angle])))
        return None

    rising = held("diagonal_from_bottom_left", "top_left_angle", left, "bottom_right_angle", right)
    if rising is not None:
        top_right = _apex(0j, rising, base_right, right)
        return Outline((0j, base_right, top_right, _apex(0j, left, top_right, top)))
    falling = held("diagonal_from_bottom_right", "top_right_angle", right, "bottom_left_angle", left)
    assert falling is not None, "nothing holds this shape"
    top_left = _apex(0j, left, base_right, falling)
    return Outline((0j, base_right, _apex(top_left, top, base_right, right), top_left))


def _apex(one: complex, to_one: float, other: complex, to_other: float) -> complex:
    """The point so far from two others, to the left of the way from the first to the second."""
    apart = abs(other - one)
    along = (apart**2 + to_one**2 - to_other**2) / (2 * apart)
    return one + (other - one) / apart * complex(along, math.sqrt(to_one**2 - along**2))


def _polygon(sides: list[float], angles: list[float] | None) -> Outline:
    if not angles:
        base, right, left = sides
        x = (base**2 + left**2 - right**2) / (2 * base)
        return Outline((0j, complex(base), complex(x, math.sqrt(left**2 - x**2))))
    corners, heading = [0j], 0.0
    for side, angle in zip(sides[:-1], angles[:-1], strict=True):
        corners.append(corners[-1] + cmath.rect(side, heading))
        heading += math.pi - math.radians(angle)
    return Outline(tuple(corners))
