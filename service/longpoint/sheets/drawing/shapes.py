"""Points, convex outlines and whether they touch."""

from __future__ import annotations

import math
from collections.abc import Iterable

from longpoint.values import Value

Point = tuple[float, float]


class Convex(Value, frozen=True):
    """A convex outline: a text's box, a line, a piece.

    Attributes: points, the bounds around them, and whether those bounds are the outline itself.
    """

    points: tuple[Point, ...]
    left: float
    top: float
    right: float
    bottom: float
    upright: bool = False


def convex(*points: Point) -> Convex:
    xs = [p[0] for p in points]
    ys = [p[1] for p in points]
    return Convex(points, min(xs), min(ys), max(xs), max(ys))


def segment(start: Point, end: Point) -> Convex:
    """A line as an outline of two points."""
    (x1, y1), (x2, y2) = start, end
    left, right = (x1, x2) if x1 < x2 else (x2, x1)
    top, bottom = (y1, y2) if y1 < y2 else (y2, y1)
    return Convex((start, end), left, top, right, bottom)


def box(left: float, top: float, right: float, bottom: float) -> Convex:
    return Convex(
        ((left, top), (right, top), (right, bottom), (left, bottom)), left, top, right, bottom, True
    )


def turned_box(center: Point, width: float, height: float, degrees: float) -> Convex:
    """A box around `center`, turned clockwise as the page is seen."""
    x, y = center
    if degrees == 0:
        return box(x - width / 2, y - height / 2, x + width / 2, y + height / 2)
    angle = math.radians(degrees)
    ux, uy = math.cos(angle) * width / 2, math.sin(angle) * width / 2
    vx, vy = -math.sin(angle) * height / 2, math.cos(angle) * height / 2
    return convex(
        (x - ux - vx, y - uy - vy),
        (x + ux - vx, y + uy - vy),
        (x + ux + vx, y + uy + vy),
        (x - ux + vx, y - uy + vy),
    )


def touches_any(one: Convex, others: Iterable[Convex]) -> bool:
    """Whether an outline shares any area with one of the others (merely meeting edges do not count)."""
    left, top, right, bottom = one.left, one.top, one.right, one.bottom
    for other in others:
        if right <= other.left or other.right <= left or bottom <= other.top or other.bottom <= top:
            continue
        # Of an upright one, the edges were compared with the bounds.
        if not (
            (not other.upright and _apart(other.points, one.points))
            or (not one.upright and _apart(one.points, other.points))
        ):
            return True
    return False


def _apart(one: tuple[Point, ...], other: tuple[Point, ...]) -> bool:
    """Whether an edge of `one` has all of `other` on its far side."""
    before = one[-1]
    for point in one if len(one) > 2 else one[:1]:
        nx, ny = point[1] - before[1], before[0] - point[0]
        mine = [nx * x + ny * y for x, y in one]
        theirs = [nx * x + ny * y for x, y in other]
        if max(mine) <= min(theirs) or max(theirs) <= min(mine):
            return True
        before = point
    return False


def along(start: Point, end: Point, share: float) -> Point:
    """The point a share of the way from start to end."""
    return start[0] + (end[0] - start[0]) * share, start[1] + (end[1] - start[1]) * share


def shifted(point: Point, direction: Point, distance: float) -> Point:
    return point[0] + direction[0] * distance, point[1] + direction[1] * distance


def unit(start: Point, end: Point) -> Point:
    """The direction from start to end, of length one."""
    dx, dy = end[0] - start[0], end[1] - start[1]
    size = math.hypot(dx, dy)
    return (dx / size, dy / size) if size else (1.0, 0.0)


def reading_angle(direction: Point) -> float:
    """Degrees to turn a text so that it follows a direction and still reads from below or from the right."""
    degrees = math.degrees(math.atan2(direction[1], direction[0]))
    if degrees >= 90 - 1e-6:
        degrees -= 180
    elif degrees < -90 - 1e-6:
        degrees += 180
    return 0.0 if abs(degrees) < 1e-6 else degrees
