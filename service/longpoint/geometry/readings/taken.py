"""What the readings come to: which kind of shape they describe, one reading where it stands for both sides, and what
is lacking or too much."""

from __future__ import annotations

from functools import lru_cache
from operator import attrgetter

from longpoint.geometry.faults import GeometryError
from longpoint.geometry.readings.outline import (
    Arch,
    Mull,
    Outline,
    PlumbSides,
    Polygon,
    Quadrilateral,
    Shape,
    Wall,
)
from longpoint.geometry.readings.readings import Readings
from longpoint.geometry.value import KEPT
from longpoint.lengths import Fraction
from longpoint.texts import Sentence, say
from longpoint.values import Fault, Faults, Path

ZERO = Fraction(0)
# What a reading that is missing stands as until all faults are reported; never answered to anybody.
UNREAD = Fraction(1)

_WIDTHS = ("jamb_width", "joined_widths", "mull_widths")
_HEIGHTS = ("jamb_height", "left_jamb_height", "right_jamb_height")
_DIAGONALS = ("diagonal_from_bottom_left", "diagonal_from_bottom_right")
_ANGLES = ("bottom_left_angle", "bottom_right_angle", "top_right_angle", "top_left_angle")
_OUT_OF_SQUARE = ("head_width", *_DIAGONALS, *_ANGLES)
_CURVE = ("rise", "head_pieces", "departure")
_POLYGON = ("sides", "angles")
# Fetched and compared together: one by one they take five times as long.
_curve_of, _NO_CURVE = attrgetter(*_CURVE), (None,) * len(_CURVE)
_out_of_square, _SQUARE = attrgetter(*_OUT_OF_SQUARE), (None,) * len(_OUT_OF_SQUARE)

_HEIGHT = (
    "Give jamb_height, or left_jamb_height and right_jamb_height: from the stool top, sill jamb or floor to the "
    "underside of the "
    "head jamb."
)
_STOOD_FOR = {
    "left_jamb_height": "jamb_height",
    "right_jamb_height": "jamb_height",
    "left_depth": "jamb_depth",
    "right_depth": "jamb_depth",
    "spring_height": "jamb_height",
    "jamb_width": "sides",
}
"""The reading that was taken where another is at fault: one for both sides, a side for the width."""


@lru_cache(KEPT)
def outline_of(readings: Readings) -> Outline:
    """What the readings come to, each a plain Fraction: that reckons with others in a third of the time that a length
    as it was sent takes.

    Raises:
        GeometryError: with every fault found; paths start with "readings".
    """
    faults = Faults()
    found = report_readings(readings, faults, ("readings",))
    faults.raise_any(GeometryError)
    return found


def report_readings(readings: Readings, faults: Faults, at: Path) -> Outline:
    """The same, noting what is lacking or too much."""
    left, right = pair(readings, "depth", faults, at)
    return Outline(
        _shape(readings, faults, at),
        left,
        right,
        _plain(readings.left_horn_depth),
        _plain(readings.right_horn_depth),
        () if readings.joined_widths is None else _mulls(readings),
        None if readings.wall is None else _wall(readings, faults, at),
    )


def _plain(value: Fraction | None) -> Fraction | None:
    return None if value is None else +value


def as_read(readings: Readings, path: Path) -> tuple[str | int, ...]:
    """A place in the outline, as it was read: which of the readings stood for what is at fault there."""
    name, *rest = path
    if name == "mulls":
        return ("mull_widths", *rest) if rest else ("joined_widths",)
    stood_for = _STOOD_FOR.get(str(name))
    if stood_for and getattr(readings, str(name), None) is None:
        if name == "jamb_width" and readings.sides is None:
            return tuple(path)
        return (stood_for, *rest)
    return tuple(path)


def _shape(readings: Readings, faults: Faults, at: Path) -> Shape:
    def refuse(names: tuple[str, ...], by: Sentence | str) -> None:
        for name in names:
            if getattr(readings, name) is not None:
                detail = say("problem", "readings.outline-given-twice", by=by, field=name)
                faults.add((*at, name), "given-twice", detail)

    if readings.door is not None:
        refuse((*_WIDTHS, *_HEIGHTS, *_OUT_OF_SQUARE, *_CURVE, *_POLYGON), "`door`")
        return readings.door
    if readings.sides is not None:
        refuse((*_WIDTHS, *_HEIGHTS, *_OUT_OF_SQUARE, *_CURVE), "`sides`")
        return Polygon(readings.sides, tuple(Fraction(angle) for angle in readings.angles or ()))
    if readings.angles is not None:
        detail = say("problem", "readings.sides-missing")
        faults.add((*at, "angles"), "sides-missing", detail)
    if _curve_of(readings) != _NO_CURVE:
        refuse((*_WIDTHS[1:], *_HEIGHTS[1:], *_OUT_OF_SQUARE), say("word", "outline.curved-head"))
        return _arch(readings, faults, at)
    if readings.joined_widths is not None:
        refuse(("jamb_width",), "`joined_widths`")
    width = _width(readings, faults, at)
    left, right = pair(readings, "jamb_height", faults, at)
    if left is None or right is None:
        faults.add((*at, "jamb_height"), "missing", say("problem", "readings.jamb-height-missing"))
        left = right = UNREAD
    elif not left or not right:
        faults.add((*at, "jamb_height"), "zero", say("problem", "lengths.zero"))
        left = right = UNREAD
    if _out_of_square(readings) != _SQUARE:
        return _quadrilateral(readings, width, left, right)
    return PlumbSides(width, left, right)


def _needed(value: Fraction | None, name: str, missing: Sentence, faults: Faults, at: Path) -> Fraction:
    if value is None:
        faults.add((*at, name), "missing", missing)
        return UNREAD
    return +value


def _width(readings: Readings, faults: Faults, at: Path) -> Fraction:
    """Jamb to jamb: read as such, or made up of units and the mulls between them."""
    joined_widths, mulls = readings.joined_widths, readings.mull_widths or ()
    if joined_widths is None:
        if mulls:
            faults.add(
                (*at, "mull_widths"),
                "joined-widths-missing",
                say("problem", "mulls.joined-widths-missing"),
            )
        return _needed(
            readings.jamb_width, "jamb_width", say("problem", "readings.jamb-width-missing"), faults, at
        )
    if len(mulls) != len(joined_widths) - 1:
        units = len(joined_widths)
        detail = say("problem", "mulls.width-count", units=units, count=units - 1, given=len(mulls))
        faults.add((*at, "mull_widths"), "mull-count", detail)
    return sum((*joined_widths, *mulls), ZERO)


def _mulls(readings: Readings) -> tuple[Mull, ...]:
    """Each mull from the left jamb; the outline's width was made up of the same readings."""
    mulls: list[Mull] = []
    reached = ZERO
    for unit_width, width in zip(readings.joined_widths or (), readings.mull_widths or (), strict=False):
        reached += unit_width
        mulls.append(Mull(reached, width))
        reached += width
    return tuple(mulls)


def _wall(readings: Readings, faults: Faults, at: Path) -> Wall:
    for number, one in enumerate(readings.wall or ()):
        if one.proud is not None and one.shy is not None:
            detail = say("problem", "wall.proud-and-shy")
            faults.add((*at, "wall", number, "shy"), "given-twice", detail)
    return Wall(tuple(one.by for one in readings.wall or ()))


def _arch(readings: Readings, faults: Faults, at: Path) -> Arch:
    missing = say("problem", "readings.rise-missing")
    return Arch(
        jamb_width=_needed(
            readings.jamb_width, "jamb_width", say("problem", "readings.jamb-width-missing"), faults, at
        ),
        spring_height=ZERO if readings.jamb_height is None else readings.jamb_height,
        rise=_needed(readings.rise, "rise", missing, faults, at),
        head_pieces=readings.head_pieces,
        departure=readings.departure,
    )


def _quadrilateral(readings: Readings, width: Fraction, left: Fraction, right: Fraction) -> Quadrilateral:
    angles = (getattr(readings, name) for name in _ANGLES)
    return Quadrilateral(
        width,
        width if readings.head_width is None else +readings.head_width,
        left,
        right,
        *(_plain(getattr(readings, name)) for name in _DIAGONALS),
        *(None if angle is None else Fraction(angle) for angle in angles),
    )


def pair(readings: object, what: str, faults: Faults, at: Path) -> tuple[Fraction | None, Fraction | None]:
    """A reading taken once for both sides, or once for each: `what` is jamb_height or depth."""
    shared = "jamb_depth" if what == "depth" else what
    both: Fraction | None = getattr(readings, shared)
    left: Fraction | None = getattr(readings, f"left_{what}")
    right: Fraction | None = getattr(readings, f"right_{what}")
    if both is None:
        if (left is None) is not (right is None):
            lacking = "left" if left is None else "right"
            detail = say(
                "problem", "readings.other-side-missing", reading=what, lacking=lacking, shared=shared
            )
            faults.add((*at, f"{lacking}_{what}"), "missing", detail)
            return UNREAD, UNREAD
        return _plain(left), _plain(right)
    for side, own in (("left", left), ("right", right)):
        if own is not None:
            detail = say("problem", "readings.both-sides-given", shared=shared)
            faults.add((*at, f"{side}_{what}"), "given-twice", detail)
    plain = +both
    return plain, plain


def at_the_reading(readings: Readings, fault: Fault) -> Fault:
    """A fault of an outline, at the reading that was taken."""
    name, *rest = fault.path
    return fault.moved("readings", *as_read(readings, rest)) if name == "readings" and rest else fault
