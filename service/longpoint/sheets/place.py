"""Where each part of an opening sits: its outline as it lies on the saw, and on the wall seen from the room.

Inches, as floats: this is for drawing, and no length is ever read back from it.
"""

from __future__ import annotations

import math

from longpoint.geometry.opening import Built
from longpoint.geometry.parts import End, Part, PartKind
from longpoint.geometry.sides import CasedSide, cased_sides
from longpoint.geometry.value import Value
from longpoint.sheets.drawing.shapes import Point
from longpoint.sheets.place_styles import STYLED, board_start, over_fillet, styled


class Placed(Value, frozen=True):
    """A part on the wall.

    Attributes:
        part: the part.
        number: its number within the opening, from 1.
        outline: its corners seen from the room, y upwards from the base line; two points for a part that
            only shows as an edge.
        inner, outer: its two long edges, each from start to end; None where a part has no such edges.
    """

    part: Part
    number: int
    outline: tuple[Point, ...]
    inner: tuple[Point, Point] | None = None
    outer: tuple[Point, Point] | None = None


def lying(part: Part) -> tuple[Point, ...]:
    """The part's corners as it lies on the saw, face up.

    x runs from the left end's farthest point; y from the outer edge, which is against the fence, to the inner
    one. The order is outer left, outer right, inner right, inner left, a notch adding two corners at its end.
    """
    width, length = float(part.width), float(part.overall)
    left, right = part.ends
    outer_left, inner_left = _retreat(left, width)
    outer_right, inner_right = _retreat(right, width)
    return (
        *_corner(left, (outer_left, 0.0), 1, width),
        *reversed(_corner(right, (length - outer_right, 0.0), -1, width)),
        (length - inner_right, width),
        (inner_left, width),
    )


def _retreat(end: End, width: float) -> tuple[float, float]:
    """How far the outer and the inner edge stop short of the end's farthest point."""
    run = width * math.tan(math.radians(float(end.mitre)))
    return (run, 0.0) if end.long_edge in ("inner", "front") else (0.0, run)


def _corner(end: End, at: Point, inward: int, width: float) -> tuple[Point, ...]:
    """The outer corner at an end; three corners where a notch is sawn out of it."""
    if end.notch is None:
        return (at,)
    tangent = math.tan(math.radians(float(end.mitre)))
    # A mitre that keeps its long point on the front reaches its short point at the notch, not at the back edge.
    tip = at[0] - width * tangent * inward
    depth, length = float(end.notch.depth), float(end.notch.length) * inward
    at_end = depth if end.notch.end_depth is None else float(end.notch.end_depth)
    short = tip + (width - at_end) * tangent * inward
    return ((short, at[1] + at_end), (tip + length, at[1] + depth), (tip + length, at[1]))


def placed_parts(built: Built) -> tuple[Placed, ...]:
    """Every part that shows in the elevation, numbered in the order of the opening's parts."""
    sides = {side.name: (index, side) for index, side in enumerate(cased_sides(built.opening, built.frame))}
    points = tuple((float(x), float(y)) for x, y in built.frame.vertices)
    found: list[Placed] = []
    for number, part in enumerate(built.parts, 1):
        placed = _placed(built, part, number, sides, points)
        if placed is not None:
            found.append(placed)
    return tuple(found)


def _placed(
    built: Built, part: Part, number: int, sides: dict[str, tuple[int, CasedSide]], points: tuple[Point, ...]
) -> Placed | None:
    if part.side in sides and part.kind in _CASING:
        index, side = sides[part.side]
        if side.casing is not None:
            outer = float(side.edge if part.kind is PartKind.BACK_BAND else side.outer)
            lifted = over_fillet(built) if part.side == "head" else 0.0
            return _casing(part, number, points[index], points[(index + 1) % len(points)], outer + lifted)
    if part.kind in STYLED:
        outline = styled(built, part, points)
        if outline is None:
            return None
        low_left, low_right, high_right, high_left = outline
        if part.kind is PartKind.MULL_CASING:
            return Placed(part, number, outline, (low_left, high_left), (low_right, high_right))
        return Placed(part, number, outline, (low_left, low_right), (high_left, high_right))
    jamb = float(built.frame.sides[0])
    if part.kind is PartKind.STOOL:
        return _level(part, number, board_start(built, part), 0.0, float(part.thickness))
    if part.kind in (PartKind.APRON, PartKind.APRON_RETURN):
        return _apron(built, part, number)
    if part.kind is PartKind.PLINTH_BLOCK:
        width, height = float(part.width), float(part.overall)
        inner = float(sides[part.side][1].reveal)
        start = -inner - width if part.side == "left" else jamb + inner
        return _level(part, number, start, height, height, width)
    return None


_CASING = frozenset({PartKind.CASING_LEG, PartKind.CASING_HEAD, PartKind.CASING_SILL, PartKind.BACK_BAND})


def _mark(part: Part, name: str, otherwise: float) -> float:
    return next((float(mark.at) for mark in part.marks if mark.name == name), otherwise)


def _casing(part: Part, number: int, start: Point, end: Point, outer: float) -> Placed:
    """A piece along one side of the jamb, which runs from start to end with the room's wall on its right."""
    jamb = math.hypot(end[0] - start[0], end[1] - start[1])
    direction = (end[0] - start[0]) / jamb, (end[1] - start[1]) / jamb
    outward = direction[1], -direction[0]
    anchor = {"left": 0.0, "right": jamb}.get(part.side, jamb / 2)
    past = _mark(part, "underside of head jamb", math.nan)
    if math.isnan(past):
        anchor = jamb / 2
        past = _mark(part, "centre line of opening", float(part.overall) / 2)
    # The end where the side finishes lies at the saw's left.
    finish = anchor + past

    def on_wall(point: Point) -> Point:
        along, out = finish - point[0], outer - point[1]
        return (
            start[0] + direction[0] * along + outward[0] * out,
            start[1] + direction[1] * along + outward[1] * out,
        )

    outer_left, outer_right, inner_right, inner_left = (on_wall(p) for p in lying(part))
    outline = (inner_right, outer_right, outer_left, inner_left)
    return Placed(part, number, outline, (inner_right, inner_left), (outer_right, outer_left))


def _level(
    part: Part, number: int, start: float, top: float, height: float, length: float | None = None
) -> Placed:
    end = start + (float(part.overall) if length is None else length)
    bottom = top - height
    outline = ((start, bottom), (end, bottom), (end, top), (start, top))
    return Placed(part, number, outline, ((start, top), (end, top)), ((start, bottom), (end, bottom)))


def _apron(built: Built, part: Part, number: int) -> Placed | None:
    top = -next((float(p.thickness) for p in built.parts if p.kind is PartKind.STOOL), 0.0)
    if part.kind is PartKind.APRON:
        return _level(part, number, board_start(built, part), top, float(part.width))
    # A return closes the apron's end: from the room only its edge shows.
    bodies = [p for p in built.parts if p.kind is PartKind.APRON]
    if not bodies:
        return None
    x = board_start(built, bodies[0])
    if part.side == "right":
        x = board_start(built, bodies[-1]) + float(bodies[-1].overall)
    return Placed(part, number, ((x, top), (x, top - float(part.width))))
