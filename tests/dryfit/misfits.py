"""What a dry fit finds wrong, in words."""

from dataclasses import dataclass, field

from shapely import Polygon, intersection

GRID = 1e-9
"""Inches that corners are snapped to, so that edges which all but coincide cannot confuse an overlay."""


@dataclass
class Misfits:
    """Collects what does not fit.

    Attributes:
        found: a sentence for each.
        slack: inches that the rounding of the pieces accounts for, all together.
    """

    slack: float
    found: list[str] = field(default_factory=list)

    def near(self, what: str, got: complex | float, wanted: complex | float, more: float = 0.0) -> None:
        """Two figures or places must agree within the slack."""
        miss = abs(got - wanted)
        if not miss <= self.slack + more:
            self.found.append(f"{what}: {got:.5f}, should be {wanted:.5f} (off by {miss:.5f} in)")

    def says(self, what: str, got: object, wanted: object) -> None:
        """Two words must be the same."""
        if got != wanted:
            self.found.append(f"{what}: {got!r}, should be {wanted!r}")

    def apart(self, what: str, one: Polygon, other: Polygon) -> None:
        """Two pieces must not lie over each other: an overlap has an area of its length times the slack at most."""
        overlap = intersection(one, other, grid_size=GRID)
        if overlap.area > self.slack * (overlap.length + self.slack):
            self.found.append(f"{what} overlap by {overlap.area:.6f} sq in")
