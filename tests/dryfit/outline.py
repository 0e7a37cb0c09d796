"""The jamb's inside faces, from the readings as they were sent."""

import cmath
import math
from dataclasses import dataclass
from typing import Any

from dryfit.tape import inches


@dataclass(frozen=True)
class Line:
    """A line through a point along a direction (a unit complex number)."""

    at: complex
    along: complex

    def outside(self, distance: float) -> "Line":
        """The parallel line that far to the right of its direction: outwards, going anticlockwise."""
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
    """The opening's corners, anticlockwise from the bottom left; side i starts at corner i."""

    corners: tuple[complex, ...]

    def side(self, index: int) -> Line:
        start, end = self.corners[index], self.corners[(index + 1) % len(self.corners)]
        return Line(start, (end - start) / abs(end - start))

    def length(self, index: int) -> float:
        return abs(self.corners[(index + 1) % len(self.corners)] - self.corners[index])

    @property
    def names(self) -> tuple[str, ...]:
        """Each side as the trade calls it."""
        heads = len(self.corners) - 3
        between = ("head",) if heads == 1 else tuple(f"head {number}" for number in range(1, heads + 1))
        return ("sill", "right", *between, "left")


def outline(readings: dict[str, Any], unit: str | None) -> Outline:
    """The outline a tape's readings describe."""
    if readings.get("sides"):
        return _polygon([float(inches(side, unit)) for side in readings["sides"]], readings.get("angles"))
    width = float(inches(readings["jamb_width"], unit))
    both = readings.get("leg_height")
    left = float(inches(both or readings["left_height"], unit))
    right = float(inches(both or readings["right_height"], unit))
    return Outline((0j, complex(width), complex(width, right), complex(0, left)))


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
