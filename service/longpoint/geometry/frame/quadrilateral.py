"""A four-sided opening out of square: its corners from two widths, two heights and a diagonal or an angle.

Four sides leave a frame that still racks; one diagonal, or one corner's angle, holds it. The law of cosines
gives the corners of the two triangles that a diagonal makes, and their cosines stay exact until then.
"""

from __future__ import annotations

import math

from longpoint.geometry.frame.kernel import SQUARE, Corner, Frame, corner
from longpoint.geometry.readings.outline import Quadrilateral
from longpoint.lengths import Fraction, Real
from longpoint.texts import say
from longpoint.values import Faults

# A tape read to 1/16 in is up to 1/32 in off; past this many degrees per 1/32 in the readings say too little.
TAPE_ERROR = Fraction(1, 32)
GREATEST_DOUBT = 2.0
CORNER_NAMES = ("bottom_right", "top_right", "top_left", "bottom_left")
CORNER_ANGLES = tuple(f"{name}_angle" for name in CORNER_NAMES)


def cosine_between(one: Real, other: Real, far_squared: Real) -> Real:
    """The cosine of the corner between two sides of a triangle, from the square of the third."""
    if isinstance(one, float) or isinstance(other, float) or isinstance(far_squared, float):
        return (one * one + other * other - far_squared) / (2 * one * other)
    # In whole numbers: fractions would look for a common denominator at each step.
    a, below = one.as_integer_ratio()
    b, under = other.as_integer_ratio()
    c, beneath = far_squared.as_integer_ratio()
    squares = (a * under) ** 2 + (b * below) ** 2
    return Fraction(squares * beneath - c * (below * under) ** 2, 2 * a * b * below * under * beneath)


def corner_of_cosine(cosine: Real) -> Corner | None:
    """The corner of a cosine, exact when square; None where no triangle has it."""
    if cosine == 0:
        return SQUARE
    if not -1 < cosine < 1:
        return None
    return corner(math.degrees(math.acos(cosine)))


def quadrilateral(shape: Quadrilateral, faults: Faults) -> Frame | None:
    """The frame, by the first of its diagonals and angles that was read; None, with the faults reported."""
    if not _positive(shape, faults):
        return None
    field = determining_field(shape)
    if field is None:
        faults.add(
            ("readings", "diagonal_from_bottom_left"),
            "not-determined",
            say("problem", "frame.not-determined"),
        )
        return None
    corners = corners_by(shape, field)
    if corners is None:
        faults.add(
            ("readings", field),
            "impossible-triangle",
            say("problem", "frame.impossible-triangle", reading=_words(field)),
        )
        return None
    _refuse_reflex(corners, field, faults)
    _refuse_doubtful(shape, corners, field, faults)
    return Frame(
        (shape.jamb_width, shape.right_jamb_height, shape.head_width, shape.left_jamb_height), corners
    )


def determining_field(shape: Quadrilateral) -> str | None:
    """The reading that the frame is computed by: a diagonal before an angle."""
    if shape.diagonal_from_bottom_left is not None:
        return "diagonal_from_bottom_left"
    if shape.diagonal_from_bottom_right is not None:
        return "diagonal_from_bottom_right"
    for name in ("bottom_left", "bottom_right", "top_right", "top_left"):
        if getattr(shape, f"{name}_angle") is not None:
            return f"{name}_angle"
    return None


def corners_by(shape: Quadrilateral, field: str) -> tuple[Corner, ...] | None:
    """The corners by one diagonal or angle, in the order of `CORNER_NAMES`; None where nothing closes."""
    bottom, right, top, left = (
        shape.jamb_width,
        shape.right_jamb_height,
        shape.head_width,
        shape.left_jamb_height,
    )
    rising = field in ("diagonal_from_bottom_left", "bottom_right_angle", "top_left_angle")
    if field.endswith("_angle"):
        at = corner(getattr(shape, field))
        one = bottom if field.startswith("bottom") else top
        other = left if "left" in field else right
        squared: Real = one * one + other * other - 2 * one * other * at.cos
    else:
        diagonal: Fraction = getattr(shape, field)
        squared = diagonal * diagonal
    if rising:
        return _by_rising(bottom, right, top, left, squared)
    mirrored = _by_rising(bottom, left, top, right, squared)
    return None if mirrored is None else (mirrored[3], mirrored[2], mirrored[1], mirrored[0])


def _by_rising(
    bottom: Fraction, right: Fraction, top: Fraction, left: Fraction, squared: Real
) -> tuple[Corner, Corner, Corner, Corner] | None:
    """Corners by the square of the diagonal from bottom left to top right."""
    bottom_right = corner_of_cosine(cosine_between(bottom, right, squared))
    top_left = corner_of_cosine(cosine_between(top, left, squared))
    if bottom_right is None or top_left is None:
        return None
    if bottom_right is SQUARE and top_left is SQUARE and bottom == top:
        return SQUARE, SQUARE, SQUARE, SQUARE
    # Each of the two other corners is split by the diagonal in two.
    lower = math.atan2(right * bottom_right.sin, bottom - right * bottom_right.cos)
    upper = math.atan2(left * top_left.sin, top - left * top_left.cos)
    bottom_left = math.degrees(lower) + _remainder(top_left, upper)
    top_right = math.degrees(upper) + _remainder(bottom_right, lower)
    return bottom_right, corner(top_right), top_left, corner(bottom_left)


def _remainder(at: Corner, other: float) -> float:
    """A triangle's third angle, degrees."""
    return 180 - float(at.degrees) - math.degrees(other)


def _positive(shape: Quadrilateral, faults: Faults) -> bool:
    if (
        shape.jamb_width > 0
        and shape.head_width > 0
        and shape.left_jamb_height > 0
        and shape.right_jamb_height > 0
    ):
        return True
    for name in ("jamb_width", "head_width", "left_jamb_height", "right_jamb_height"):
        if getattr(shape, name) <= 0:
            faults.add(
                ("readings", name),
                "not-positive",
                say("problem", "readings.not-positive", reading=_words(name)),
            )
    return False


def _refuse_reflex(corners: tuple[Corner, ...], field: str, faults: Faults) -> None:
    for name, each in zip(CORNER_NAMES, corners, strict=True):
        if each.degrees >= 180:
            faults.add(
                ("readings", field),
                "not-convex",
                say(
                    "problem",
                    "frame.corner-turns-in",
                    corner=_words(name),
                    degrees=float(each.degrees),
                    reading=_words(field),
                ),
            )


def _refuse_doubtful(shape: Quadrilateral, corners: tuple[Corner, ...], field: str, faults: Faults) -> None:
    """Refuse a diagonal that says too little of the corner it is to give."""
    if field.endswith("_angle") or any(each is SQUARE for each in corners):
        return
    rising = field == "diagonal_from_bottom_left"
    below = shape.jamb_width * (shape.right_jamb_height if rising else shape.left_jamb_height)
    above = shape.head_width * (shape.left_jamb_height if rising else shape.right_jamb_height)
    low, high = (corners[0], corners[2]) if rising else (corners[3], corners[1])
    diagonal: Fraction = getattr(shape, field)
    doubt = math.degrees(float(TAPE_ERROR * diagonal) / min(float(below * low.sin), float(above * high.sin)))
    if doubt > GREATEST_DOUBT:
        faults.add(
            ("readings", field),
            "reading-tells-too-little",
            say("problem", "frame.reading-says-too-little", slip=TAPE_ERROR, doubt=doubt),
        )


def _words(name: str) -> str:
    return name.replace("_", " ")
