"""From readings to the frame: what closes, what is square, and what is refused."""

from __future__ import annotations

import math

from longpoint.geometry.frame.arch import arched
from longpoint.geometry.frame.kernel import (
    ALL_SQUARE,
    RIGHT_ANGLE,
    ZERO,
    Corner,
    Frame,
    corner,
    plumb_sided,
    rectangle,
)
from longpoint.geometry.frame.quadrilateral import corner_of_cosine, cosine_between, quadrilateral
from longpoint.geometry.frame.six import refuse_contradictions
from longpoint.geometry.frame.tape import Check, check_tape
from longpoint.geometry.piece import Hand
from longpoint.geometry.readings.inputs import Bottom, Opening
from longpoint.geometry.readings.outline import Arch, PlumbSides, Polygon, Quadrilateral, Shape
from longpoint.geometry.readings.readings import Door
from longpoint.lengths import Fraction, Real
from longpoint.texts import Sentence, say
from longpoint.values import Faults

LEAST_ANGLE, GREATEST_ANGLE = 15, 178
# A tape reads to 1/16 in and an angle finder to half a degree: what a closed polygon may miss by.
CLOSING_LENGTH = Fraction(1, 8)
CLOSING_ANGLE = 0.6
# Below this the readings close by themselves, and stay as they were read.
EXACT = 1e-9


def base_rise(opening: Opening) -> Fraction:
    """How far the right end of the floor or the sill jamb lies above its left one. A stool is set level, whatever it
    lies on."""
    sill = opening.readings.sill
    if sill is None or opening.bottom is Bottom.STOOL:
        return ZERO
    return +sill.by if sill.low is Hand.LEFT else -sill.by


def frame_of(shape: Shape, faults: Faults, rise: Fraction = ZERO) -> Frame | None:
    """The frame of an opening's outline; None, with the faults reported, when there is none.

    Args:
        shape: its outline.
        faults: takes what is wrong with it.
        rise: how far the base's right end lies above its left one, where the sides are plumb.
    """
    if isinstance(shape, PlumbSides):
        if shape.left_jamb_height == shape.right_jamb_height and not rise:
            return rectangle(shape.jamb_width, shape.left_jamb_height)
        frame = plumb_sided(shape.jamb_width, shape.left_jamb_height, shape.right_jamb_height, rise)
        check_corners(frame.corners, ("readings", "left_jamb_height"), faults)
        return frame
    if isinstance(shape, Polygon):
        return _polygon(shape, faults)
    if isinstance(shape, Arch):
        return _arched(shape, faults)
    if isinstance(shape, Door):
        return rectangle(shape.jamb_width, shape.clear_height)
    return _quadrilateral(shape, faults)


def _arched(shape: Arch, faults: Faults) -> Frame | None:
    frame = arched(shape, faults)
    if frame is not None and shape.spring_height == 0:
        check_corners((frame.corners[0],), ("readings", "rise"), faults)
    return frame


def _quadrilateral(shape: Quadrilateral, faults: Faults) -> Frame | None:
    if refuse_contradictions(shape, faults):
        return None
    frame = quadrilateral(shape, faults)
    if frame is None:
        return None
    check_corners(frame.corners, ("readings", "jamb_width"), faults)
    tape = check_tape(shape, frame.corners)
    for check in tape.checks if tape else ():
        # Two diagonals that disagree are found, and the readings that may be off named: `checks.readings`.
        if check.agrees or not check.reading.endswith("_angle"):
            continue
        suspects = tape.suspects if tape else ()
        likeliest = say("hint", "frame.likeliest-wrong", reading=suspects[0].reading) if suspects else None
        faults.add(("readings", check.reading), "readings-disagree", _disagrees(check) + likeliest)
    return frame


def _disagrees(check: Check) -> Sentence:
    computed, away = float(check.computed), abs(float(check.difference))
    return say("problem", "frame.angles-disagree", computed=computed, away=away)


_FOUR = ("bottom right", "top right", "top left", "bottom left")
_THREE = ("bottom right", "top", "bottom left")


def corner_name(number: int, corners: int) -> str:
    """A corner in words, the base's right-hand one being number zero: "top right corner".

    Where there are many it goes by its sides, counted from the base as they are read.
    """
    if corners == len(_THREE):
        return f"{_THREE[number]} corner"
    if corners <= len(_FOUR):
        return f"{_FOUR[number]} corner"
    return f"corner between sides {number + 1} and {(number + 1) % corners + 1}"


def check_corners(corners: tuple[Corner, ...], path: tuple[str | int, ...], faults: Faults) -> None:
    for number, each in enumerate(corners):
        if not LEAST_ANGLE <= each.degrees <= GREATEST_ANGLE:
            faults.add(
                path,
                "angle-out-of-range",
                say(
                    "problem",
                    "corner.out-of-range",
                    corner=corner_name(number, len(corners)),
                    degrees=float(each.degrees),
                    least=LEAST_ANGLE,
                    most=GREATEST_ANGLE,
                ),
            )


def _polygon(shape: Polygon, faults: Faults) -> Frame | None:
    sides, angles = shape.sides, shape.angles
    if len(sides) == 3 and not angles:
        return _triangle(sides, faults)
    if len(angles) != len(sides):
        faults.add(
            ("readings", "angles"),
            "angle-count",
            say("problem", "polygon.angle-count", sides=len(sides), angles=len(angles)),
        )
        return None
    before = len(faults.found)
    for number, angle in enumerate(angles):
        if not LEAST_ANGLE <= angle <= GREATEST_ANGLE:
            faults.add(
                ("readings", "angles", number),
                "not-convex" if angle >= 180 else "angle-out-of-range",
                say(
                    "problem",
                    "corner.cannot-be-cased",
                    corner=corner_name(number, len(sides)),
                    degrees=float(angle),
                    least=LEAST_ANGLE,
                    most=GREATEST_ANGLE,
                ),
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
            say(
                "problem",
                "polygon.angles-do-not-close",
                sides=len(sides),
                total=total,
                came=float(sum(angles)),
            ),
        )
        return None
    if (
        len(sides) == 4
        and sides[0] == sides[2]
        and sides[1] == sides[3]
        and all(a == RIGHT_ANGLE for a in angles)
    ):
        return Frame(sides, ALL_SQUARE)
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
            say("problem", "polygon.does-not-close", closing=closing, before_last=before_last, last=last),
        )
        return None
    if gap < EXACT and turn < EXACT:
        return Frame(sides, tuple(corner(angle) for angle in angles))
    corners = tuple(corner(a) for a in (*angles[:-2], before_last, last))
    check_corners(corners, ("readings", "angles"), faults)
    return Frame((*sides[:-1], closing), corners)


def _triangle(sides: tuple[Fraction, ...], faults: Faults) -> Frame | None:
    base, right, left = sides
    if max(sides) * 2 >= sum(sides):
        faults.add(
            ("readings", "sides"),
            "impossible-triangle",
            say("problem", "polygon.impossible-triangle"),
        )
        return None
    corners = tuple(
        corner_of_cosine(cosine_between(one, other, far * far))
        for one, other, far in ((base, right, left), (right, left, base), (left, base, right))
    )
    found = tuple(each for each in corners if each is not None)
    check_corners(found, ("readings", "sides"), faults)
    return Frame(sides, found)
