"""Where the pieces sit that casing or another piece partly hides: extension boards, a door's jamb, returns, a strip.

Each is its outline seen from the room, and the edge of it that something in front hides. A door's stops hide nothing
and are hidden by nothing, but lie on the jamb as these do.
"""

from __future__ import annotations

import math

from longpoint.geometry.frame.joint import mitre, stand, under_head
from longpoint.geometry.frame.kernel import meet
from longpoint.geometry.frame.sides import CasedSide, cased_sides
from longpoint.geometry.opening import Built
from longpoint.geometry.parts import Hand, Part
from longpoint.geometry.piece_names import PartKind
from longpoint.geometry.readings.readings import Door
from longpoint.geometry.readings.trim import BoxCorners, Casing, JambExtension
from longpoint.sheets.drawing.shapes import Point
from longpoint.sheets.place_styles import Outline

RETURNS = {
    PartKind.APRON_RETURN: PartKind.APRON,
    PartKind.STOOL_RETURN: PartKind.STOOL,
    PartKind.FILLET_RETURN: PartKind.FILLET,
    PartKind.CAP_RETURN: PartKind.CAP,
}
"""Each return, and the piece whose end it closes."""
ON_THE_JAMB = frozenset({PartKind.JAMB_EXTENSION, PartKind.JAMB_LEG, PartKind.HEAD_JAMB, PartKind.DOOR_STOP})


def on_the_jamb(built: Built, part: Part, points: tuple[Point, ...]) -> Outline:
    """The part's corners: its inner edge from start to end, then its outer edge back.

    Raises:
        ValueError: for a part that does not lie on the jamb.
    """
    shape = built.opening.outline.shape
    if part.kind is PartKind.JAMB_EXTENSION:
        return _board(built, part, points)
    if isinstance(shape, Door):
        if part.kind is PartKind.JAMB_LEG:
            return _jamb_leg(shape, part)
        if part.kind is PartKind.HEAD_JAMB:
            return _head_jamb(shape, part)
        if part.kind is PartKind.DOOR_STOP:
            return _stop(shape, part)
    raise ValueError(f"a {part.title} does not lie on the jamb")


def _board(built: Built, part: Part, points: tuple[Point, ...]) -> Outline:
    """A board of the extension, seen by its edge."""
    opening = built.opening
    extension = opening.trim.extension
    assert extension is not None
    sides = tuple(_boxed(side, extension) for side in cased_sides(opening, built.frame))
    index = next(number for number, side in enumerate(sides) if side.name == part.side)
    inner, outer = float(sides[index].reveal), float(sides[index].outer)
    past = [
        _past(built, sides, index, corner, other)
        for corner, other in ((index - 1, index - 1), (index, (index + 1) % len(sides)))
    ]
    start, end = points[index], points[(index + 1) % len(points)]
    length = math.dist(start, end)
    x, y = (end[0] - start[0]) / length, (end[1] - start[1]) / length

    def at(along: float, out: float) -> Point:
        return start[0] + x * along + y * out, start[1] + y * along - x * out

    (inner_start, outer_start), (inner_end, outer_end) = past
    return (
        at(-inner_start, inner),
        at(length + inner_end, inner),
        at(length + outer_end, outer),
        at(-outer_start, outer),
    )


def _boxed(side: CasedSide, extension: JambExtension) -> CasedSide:
    """The side as the extension's boards see it."""
    if side.name == "base":
        return side
    outer = extension.reveal + extension.thickness
    stock = Casing(extension.thickness, extension.thickness, extension.profile)
    return CasedSide(side.name, extension.reveal, stock, outer, outer)


def _past(
    built: Built, sides: tuple[CasedSide, ...], index: int, corner: int, other: int
) -> tuple[float, float]:
    """How far a board runs past the jamb's corner, at its inner and its outer edge."""
    opening, at = built.opening, built.frame.corners[corner]
    mine, theirs = sides[index], sides[other]
    extension = opening.trim.extension
    assert extension is not None
    if theirs.casing is None:
        reach = stand(opening.foot_style, at, mine, theirs)
    elif extension.corners is BoxCorners.MITRED:
        reach = mitre(at, mine, theirs)
    elif mine.name in ("left", "right"):
        reach = under_head(at, mine, theirs)
    else:
        over = float(meet(at, mine.reveal, theirs.outer))
        return over, over
    return float(reach.inner), float(reach.outer)


def _jamb_leg(door: Door, part: Part) -> Outline:
    """On the hinge side or the other, its face the jamb's inside face."""
    right = (door.hinge_side is Hand.RIGHT) is (part.side == "hinge")
    width, thick, high = float(door.jamb_width), float(part.thickness), float(part.overall)
    if right:
        return (width, 0.0), (width, high), (width + thick, high), (width + thick, 0.0)
    return (0.0, high), (0.0, 0.0), (-thick, 0.0), (-thick, high)


def _head_jamb(door: Door, part: Part) -> Outline:
    width, low = float(door.jamb_width), float(door.clear_height)
    past, high = (float(part.overall) - width) / 2, low + float(part.thickness)
    return (width + past, low), (-past, low), (-past, high), (width + past, high)


def _stop(door: Door, part: Part) -> Outline:
    """Within the opening, its back on the jamb's inside face."""
    width, high = float(door.jamb_width), float(door.clear_height)
    thick, face, back = float(part.thickness), float(part.short_point), float(part.long_point)
    if part.side == "left":
        return (thick, face), (thick, 0.0), (0.0, 0.0), (0.0, back)
    if part.side == "right":
        return (width - thick, 0.0), (width - thick, face), (width, back), (width, 0.0)
    drawn_in = (back - face) / 2
    return (width - drawn_in, high - thick), (drawn_in, high - thick), (0.0, high), (width, high)


def return_outline(part: Part, bodies: list[Outline]) -> Outline | None:
    """A return behind the end of the piece it closes: its inner end from low to high, then the piece's end back.

    Args:
        part: the return.
        bodies: the outlines of the piece, or of its lengths from left to right, from the bottom left corner.
    """
    if not bodies:
        return None
    deep = float(part.overall)
    if part.side == "left":
        low, _, _, high = bodies[0]
        inwards, level = deep, bodies[0]
    else:
        _, low, high, _ = bodies[-1]
        inwards, level = -deep, bodies[-1]
    # Along the piece, which a head out of level tilts.
    run = math.dist(level[0], level[1])
    x, y = (level[1][0] - level[0][0]) / run * inwards, (level[1][1] - level[0][1]) / run * inwards
    return (low[0] + x, low[1] + y), (high[0] + x, high[1] + y), high, low


def levelling_strip(built: Built, part: Part) -> Outline:
    """Under the stool between the jambs, as deep at each end as the sill lies low there: its upper edge first."""
    stool = next((float(p.thickness) for p in built.parts if p.kind is PartKind.STOOL), 0.0)
    width = float(part.overall)
    left, right = (float(deep) for deep in part.taper or (part.width, part.width))
    return (0.0, -stool), (width, -stool), (width, -stool - right), (0.0, -stool - left)
