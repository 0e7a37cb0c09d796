"""What cannot be built, told with the field to change."""

from __future__ import annotations

from longpoint.geometry.faults import Faults
from longpoint.geometry.inputs import Arch, Foot, HeadStyle, Opening, Polygon, Readings, Shape
from longpoint.geometry.parts import Part, PartKind
from longpoint.lengths import Fraction, spoken


def check_trim(opening: Opening, faults: Faults, *, stands_on_stool: bool) -> None:
    """Trim that does not fit the opening it was chosen for; the stool is judged only where it is asked for."""
    _check_reveals(opening, faults)
    if opening.foot is Foot.STOOL and stands_on_stool:
        _check_stool(opening, faults)
    if opening.foot is Foot.PLINTH and opening.trim.plinth is None:
        faults.add(
            ("trim", "plinth"),
            "plinth-missing",
            "This opening stands on plinth blocks and its trim names none: give the plinth.",
        )
    if opening.trim.head_style is HeadStyle.BUTTED:
        _check_butted(opening, faults)


def _check_reveals(opening: Opening, faults: Faults) -> None:
    own, edge = opening.reveals, opening.readings.jamb_thickness
    named = {"left": own.left, "right": own.right, "head": own.head, "sill": own.sill}
    paths: list[tuple[tuple[str, ...], Fraction]] = [(("trim", "reveal"), opening.trim.reveal)]
    paths += [(("reveals", side), value) for side, value in named.items() if value is not None]
    for path, reveal in paths:
        if reveal >= edge:
            faults.add(
                path,
                "reveal-too-wide",
                f"A reveal of {spoken(reveal)} leaves the casing no jamb to lie on: the jamb's edge is "
                f"{spoken(edge)}. Take a smaller reveal, or give the jamb_thickness that was measured.",
            )


def _check_stool(opening: Opening, faults: Faults) -> None:
    stool, readings = opening.trim.stool, opening.readings
    if stool is None:
        faults.add(
            ("trim", "stool"),
            "stool-missing",
            "This opening stands on a stool and its trim names none: give the stool, or another foot_style.",
        )
        return
    for side, depth in (("left_depth", readings.left_depth), ("right_depth", readings.right_depth)):
        if depth is None:
            faults.add(
                ("readings", side),
                "depth-missing",
                "A stool needs the jamb's depth: measure from the wall's face back to the sash stop.",
            )
        elif depth < stool.sash_clearance:
            faults.add(
                ("readings", side),
                "depth-too-small",
                f"The depth is less than the sash clearance of {spoken(stool.sash_clearance)}. Measure again.",
            )
    _check_stool_stock(opening, readings, faults)


def _check_stool_stock(opening: Opening, readings: Readings, faults: Faults) -> None:
    stool, apron = opening.trim.stool, opening.trim.apron
    if (
        stool is None
        or stool.stock_width is None
        or readings.left_depth is None
        or readings.right_depth is None
    ):
        return
    under = apron.thickness if apron else opening.trim.casing.thickness
    needed = max(readings.left_depth, readings.right_depth) + under + stool.nosing - stool.sash_clearance
    if needed > stool.stock_width:
        faults.add(
            ("trim", "stool", "stock_width"),
            "stock-too-narrow",
            f"The stool must be {spoken(needed)} wide and its stock is {spoken(stool.stock_width)}: "
            "take wider stock or a smaller nosing.",
        )


def _check_butted(opening: Opening, faults: Faults) -> None:
    if opening.foot is Foot.PICTURE_FRAME:
        faults.add(
            ("trim", "head_style"),
            "butted-picture-frame",
            "A picture frame is mitred at every corner: take head_style mitred, or another foot_style.",
        )
    shape = opening.readings.shape
    if isinstance(shape, Arch) or (isinstance(shape, Polygon) and len(shape.sides) != 4):
        faults.add(
            ("trim", "head_style"),
            "butted-many-heads",
            "A butted head needs one straight head across two legs: take head_style mitred for this shape.",
        )


def check_lengths(opening: Opening, parts: list[Part], faults: Faults) -> None:
    """Pieces whose edges would have no length left."""
    for part in parts:
        if part.kind is PartKind.APRON_RETURN or (part.short_point > 0 and part.long_point > 0):
            continue
        faults.add(
            ("readings", *_reading(opening.readings.shape, part.side)),
            "piece-vanishes",
            f"The {part.title} would be {spoken(min(part.short_point, part.long_point))} long at its shorter edge. "
            "The opening is too small for this trim, or a reading is wrong.",
        )


_READINGS = {"left": "left_height", "right": "right_height"}


def _reading(shape: Shape, side: str) -> tuple[str | int, ...]:
    """The reading behind a side's piece; the base's for a stool or an apron."""
    if isinstance(shape, Polygon):
        last = len(shape.sides) - 1
        at = {"": 0, "sill": 0, "right": 1, "head": 2, "left": last}
        return ("sides", at[side] if side in at else 1 + int(side.removeprefix("head ")))
    if isinstance(shape, Arch):
        return (
            "rise" if side.startswith("head") else "spring_height" if side in _READINGS else "jamb_width",
        )
    return (_READINGS.get(side, "jamb_width"),)
