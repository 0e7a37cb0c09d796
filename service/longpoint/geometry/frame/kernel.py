"""The frame kernel: a convex, straight-sided opening and the joints that casing makes around it.

The jamb's inside faces are a polygon taken counterclockwise, side 0 at the bottom. Casing on a side lies
between two lines parallel to it: its inner line, moved out by the reveal, and its outer line, moved out
by reveal plus casing width. Whatever a piece runs to at a corner (a miter, the line it stands on, the
head it butts) is where those two lines cross another line, so one function, `meet`, gives every length.

On exact right angles all of it stays rational.
"""

from __future__ import annotations

import math

from longpoint.lengths import Fraction, Real
from longpoint.values import Value

ZERO = Fraction(0)
RIGHT_ANGLE = Fraction(90)
HALF_RIGHT_ANGLE = Fraction(45)
# Inches: what sines and roots leave of a square cut.
NOISE = 1e-9


class Corner(Value, frozen=True):
    """An interior angle of the jamb. Attributes: degrees, with its sine and cosine."""

    degrees: Real
    sin: Real
    cos: Real


SQUARE = Corner(RIGHT_ANGLE, Fraction(1), ZERO)
ALL_SQUARE = (SQUARE, SQUARE, SQUARE, SQUARE)


def corner(degrees: Real) -> Corner:
    """The corner of an angle; an exact right angle stays exact."""
    if not isinstance(degrees, float) and degrees == RIGHT_ANGLE:
        return SQUARE
    radians = math.radians(degrees)
    return Corner(degrees, math.sin(radians), math.cos(radians))


class Frame(Value, frozen=True):
    """The jamb's inside faces.

    Attributes:
        sides: lengths, counterclockwise from the bottom.
        corners: corner i lies between side i and the next one.
    """

    sides: tuple[Real, ...]
    corners: tuple[Corner, ...]

    @property
    def square(self) -> bool:
        """Whether every corner is exactly square."""
        corners = self.corners
        return len(corners) == 4 and corners[0] is SQUARE and all(each is SQUARE for each in corners)

    @property
    def vertices(self) -> tuple[tuple[Real, Real], ...]:
        """Where the sides start, side 0 running along x from the origin."""
        x: Real = ZERO
        y: Real = ZERO
        direction = 0.0
        quarter = 0
        exact = self.square
        points: list[tuple[Real, Real]] = []
        for side, angle in zip(self.sides, self.corners, strict=True):
            points.append((x, y))
            if exact:
                dx, dy = ((1, 0), (0, 1), (-1, 0), (0, -1))[quarter % 4]
                x, y = x + side * dx, y + side * dy
                quarter += 1
            else:
                x, y = x + side * math.cos(direction), y + side * math.sin(direction)
                direction += math.pi - math.radians(angle.degrees)
        return tuple(points)


def rectangle(width: Fraction, height: Fraction) -> Frame:
    return Frame((width, height, width, height), ALL_SQUARE)


def plumb_sided(width: Fraction, left: Fraction, right: Fraction, rise: Fraction = ZERO) -> Frame:
    """Plumb sides on a base whose right end lies `rise` above its left one: the head leans by what is left of the
    difference of the two."""
    over = rise + right - left
    if not rise and not over:
        return rectangle(width, left)
    (base, below), (head, above) = _leaning(width, rise), _leaning(width, over)
    return Frame(
        (base, right, head, left),
        (corner(90 + below), corner(90 - above), corner(90 + above), corner(90 - below)),
    )


def _leaning(width: Fraction, rise: Fraction) -> tuple[Real, Real]:
    """The length of what rises so much over a width, and by how many degrees; both exact where it is level."""
    if not rise:
        return width, ZERO
    return math.hypot(width, rise), math.degrees(math.atan2(rise, width))


def meet(at: Corner, own: Real, other: Real) -> Real:
    """How far past the jamb's corner a line runs.

    Args:
        at: the corner between this side and the other.
        own: how far this line lies outside its own side.
        other: how far the line it runs to lies outside the other side.

    Returns:
        The distance along this side from the corner to the crossing, positive outwards.
    """
    if at is SQUARE:
        return other
    return (other + own * at.cos) / at.sin


def saw_angle(run: Real, width: Real) -> Real:
    """Degrees off a square cut, signed as `run`: how far the joint runs along a piece over its `width`."""
    if isinstance(run, float):
        if abs(run) < NOISE:
            return ZERO
    elif run == 0:
        return ZERO
    elif run == width:
        return HALF_RIGHT_ANGLE
    return math.degrees(math.atan2(run, width))
