"""From readings to the frame: what closes, what is square, and what is refused."""

from __future__ import annotations

import math

from longpoint.geometry.faults import Faults
from longpoint.geometry.inputs import PlumbSides, Polygon
from longpoint.geometry.kernel import RIGHT_ANGLE, SQUARE, Corner, Frame, corner, plumb_sided, rectangle
from longpoint.lengths import Fraction, Real

LEAST_ANGLE, GREATEST_ANGLE = 15, 165
# A tape reads to 1/16 in and an angle finder to half a degree: what a closed polygon may miss by.
CLOSING_LENGTH = Fraction(1, 8)
CLOSING_ANGLE = 0.6


def frame_of(shape: PlumbSides | Polygon, faults: Faults) -> Frame | None:
    """The frame of an opening's outline; None, with the faults told, when there is none."""
    if isinstance(shape, Polygon):
        return _polygon(shape, faults)
    if shape.left_height == shape.right_height:
        return rectangle(shape.jamb_width, shape.left_height)
    frame = plumb_sided(shape.jamb_width, shape.left_height, shape.right_height)
    _check_angles(frame.corners, ("readings", "left_height"), faults)
    return frame


def _check_angles(corners: tuple[Corner, ...], path: tuple[str | int, ...], faults: Faults) -> None:
    for number, each in enumerate(corners, 1):
        if not LEAST_ANGLE <= each.degrees <= GREATEST_ANGLE:
            faults.add(
                path,
                "angle-out-of-range",
                f"Corner {number} comes to {float(each.degrees):.2f} degrees; casing is computed for "
                f"interior angles of {LEAST_ANGLE} to {GREATEST_ANGLE}. Measure again.",
            )


def _polygon(shape: Polygon, faults: Faults) -> Frame | None:
    sides, angles = shape.sides, shape.angles
    if len(sides) == 3 and not angles:
        return _triangle(sides, faults)
    if len(angles) != len(sides):
        faults.add(
            ("readings", "angles"),
            "angle-count",
            f"{len(sides)} sides need {len(sides)} interior angles, and {len(angles)} came. "
            "Give one for each corner, the base's right-hand corner first.",
        )
        return None
    before = len(faults.found)
    for number, angle in enumerate(angles):
        if not LEAST_ANGLE <= angle <= GREATEST_ANGLE:
            faults.add(
                ("readings", "angles", number),
                "not-convex" if angle >= 180 else "angle-out-of-range",
                f"An interior angle of {float(angle):g} degrees cannot be cased here: every corner must be "
                f"between {LEAST_ANGLE} and {GREATEST_ANGLE} degrees, the opening convex.",
            )
    if len(faults.found) > before:
        return None
    return _closed(sides, angles, faults)


def _closed(sides: tuple[Fraction, ...], angles: tuple[Real, ...], faults: Faults) -> Frame | None:
    """The polygon from all sides but the last and the corners between them; what is left must agree."""
    total = 180 * (len(sides) - 2)
    if abs(float(sum(angles)) - total) > CLOSING_ANGLE:
        faults.add(
            ("readings", "angles"),
            "does-not-close",
            f"The interior angles of {len(sides)} sides add up to {total} degrees; these add up to "
            f"{float(sum(angles)):g}. Measure the angles again.",
        )
        return None
    if (
        len(sides) == 4
        and sides[0] == sides[2]
        and sides[1] == sides[3]
        and all(a == RIGHT_ANGLE for a in angles)
    ):
        return Frame(sides, (SQUARE,) * 4)
    direction = x = y = 0.0
    for side, angle in zip(sides[:-1], angles[:-1], strict=True):
        x += float(side) * math.cos(direction)
        y += float(side) * math.sin(direction)
        direction += math.pi - math.radians(angle)
    closing = math.hypot(x, y)
    gap = abs(closing - float(sides[-1]))
    # The side that closes the figure is the one the others leave, so its two corners follow from it.
    back = math.atan2(-y, -x) % math.tau
    last_direction = direction - (math.pi - math.radians(angles[-2]))
    before_last = math.degrees(math.pi - (back - last_direction)) % 360
    last = total - float(sum(angles[:-2])) - before_last
    turn = max(abs(before_last - float(angles[-2])), abs(last - float(angles[-1])))
    if gap > CLOSING_LENGTH or turn > CLOSING_ANGLE:
        faults.add(
            ("readings", "sides"),
            "does-not-close",
            f"These sides and angles do not close: the last side should be {closing:.4f} in and its corners "
            f"{before_last:.2f} and {last:.2f} degrees. Measure again.",
        )
        return None
    corners = tuple(corner(a) for a in (*angles[:-2], before_last, last))
    _check_angles(corners, ("readings", "angles"), faults)
    return Frame((*sides[:-1], closing), corners)


def _triangle(sides: tuple[Fraction, ...], faults: Faults) -> Frame | None:
    base, right, left = sides
    if max(sides) * 2 >= sum(sides):
        faults.add(
            ("readings", "sides"),
            "impossible-triangle",
            "The longest side is as long as the other two together, so they make no triangle. Measure again.",
        )
        return None
    corners = (
        _opposite(left, base, right),
        _opposite(base, right, left),
        _opposite(right, left, base),
    )
    _check_angles(corners, ("readings", "sides"), faults)
    return Frame(sides, corners)


def _opposite(far: Fraction, one: Fraction, other: Fraction) -> Corner:
    """The corner between two sides, from the law of cosines; its cosine, and a right angle, stay exact."""
    cosine = (one * one + other * other - far * far) / (2 * one * other)
    if cosine == 0:
        return SQUARE
    return corner(math.degrees(math.acos(cosine)))
