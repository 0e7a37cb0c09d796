"""Saw every stick of a plan as polygons: the stick, its pieces, and the kerf of each cut as a strip.

Shares no arithmetic with the optimizer: a strip is the blade's width square to the cut's own line. Cuts are made from
the left. A piece is cut off by the cut at its right end or by a shared one; where pieces are cut off square first, by a
square one at its long point.
"""

from collections.abc import Iterator
from math import hypot

from shapely import Polygon, box

from longpoint.stock import Cutting, Layout, Placed, Plan, StickOnHand, Wanted

SHORT = 2e-6  # inches along the stick that what is rounded may be off
Line = tuple[tuple[float, float], tuple[float, float]]


def misfits(cutting: Cutting, plan: Plan, width: float) -> Iterator[str]:
    """What a saw would spoil in a plan for pieces of that width."""
    pieces = {piece.key: piece for piece in cutting.pieces}
    for layout in plan.layouts:
        for keys in set(layout.keys):
            yield from _stick(cutting, layout, [pieces[key] for key in keys], width)


def _stick(cutting: Cutting, layout: Layout, row: list[Wanted], width: float) -> Iterator[str]:
    stock = next(one for one in cutting.stock if one.key == layout.stick)
    trim = cutting.end_trim
    if isinstance(stock, StickOnHand) and stock.end_trim is not None:
        trim = stock.end_trim
    faces = [_faces(piece, placed, width) for piece, placed in zip(row, layout.placed, strict=True)]
    solids = [_within(Polygon([*left, *reversed(right)])) for left, right in faces]
    usable = box(float(trim), 0, float(stock.length - trim), width)
    kerf = float(cutting.kerf)
    for at, solid in enumerate(solids):
        if not solid.within(usable):
            yield "a piece is not within the trimmed stick"
        for defect in stock.defects:
            if solid.intersects(box(float(defect.start), -1, float(defect.end), width + 1)):
                yield "a piece has a defect in it"
        left, right = faces[at]
        shared = at + 1 < len(row) and layout.placed[at + 1].shares_cut
        cutting_off = right
        if cutting.square_first and not shared:
            end = float(layout.placed[at].start + row[at].length)
            cutting_off = (end, 0.0), (end, width)
        for what, strip in (("left", _strip(left, kerf, -1)), ("right", _strip(cutting_off, kerf, 1))):
            for after, other in enumerate(solids[at:]):
                if other.intersects(strip):
                    yield f"the cut at a piece's {what} end goes into the piece {after} after it"
        if any(solid.intersects(other) for other in solids[at + 1 :]):
            yield "two pieces overlap"
        if shared and _apart(right, faces[at + 1][0], kerf) > 4 * SHORT:
            yield "a shared cut is not one cut"


def _within(solid: Polygon) -> Polygon:
    """The solid less what rounding may take of it."""
    return solid.buffer(-SHORT, join_style="mitre")


def _faces(piece: Wanted, placed: Placed, width: float) -> tuple[Line, Line]:
    """The lines of a piece's left and right end, each from the stick's near edge to its far one."""
    runs = (piece.right, piece.left) if placed.reversed else (piece.left, piece.right)
    left, right = float(runs[0]), float(runs[1])
    start, end = float(placed.start), float(placed.start + piece.length)
    if placed.turned:
        return ((start, 0.0), (start + left, width)), ((end, 0.0), (end - right, width))
    return ((start + left, 0.0), (start, width)), ((end - right, 0.0), (end, width))


def _strip(line: Line, kerf: float, side: int) -> Polygon:
    """What the blade takes along a line, on its right (1) or on its left (-1)."""
    (x0, y0), (x1, y1) = line
    along = hypot(x1 - x0, y1 - y0)
    dx, dy = (x1 - x0) / along, (y1 - y0) / along
    a, b = (x0 - 9 * dx, y0 - 9 * dy), (x1 + 9 * dx, y1 + 9 * dy)
    over = side * kerf * dy, -side * kerf * dx
    return Polygon([a, b, (b[0] + over[0], b[1] + over[1]), (a[0] + over[0], a[1] + over[1])])


def _apart(one: Line, other: Line, kerf: float) -> float:
    """By how much two lines are not parallel, or not a kerf from each other."""
    moved = Polygon([*one, *reversed(other)]).area / hypot(one[1][0] - one[0][0], one[1][1] - one[0][1])
    slant = abs((one[1][0] - one[0][0]) - (other[1][0] - other[0][0]))
    return max(slant, abs(moved - kerf))
