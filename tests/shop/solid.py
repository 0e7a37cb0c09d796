"""Saw a house's sticks as solids: each piece on its stick as its piece tells it, and what each cut's blade takes.

Shares no arithmetic with the plans. A solid is looked at in two slices, at its back and at its face, as polygons; a
blade takes what lies between two parallel planes, its kerf apart. Cuts are made from the left: what cuts a piece off
from its stick may touch nothing of that piece nor of any after it.
"""

from __future__ import annotations

from collections.abc import Iterator
from math import cos, hypot, radians, tan
from typing import NamedTuple

from shapely import Polygon, box

from longpoint.geometry import End, Piece
from longpoint.lengths import Rounding, Together
from longpoint.shop.build import CutList
from longpoint.shop.yard import Stock
from longpoint.stock import Layout, Placed

SLACK = 3e-6  # inches along the stick that rounding an irrational run or an eaten length may be off
FAR = 9.0


class Plane(NamedTuple):
    """x = at + y * across + z * up, y from the fence (of a stool and its returns from the front edge), z from the saw's
    table."""

    at: float
    across: float
    up: float

    def along(self, y: float, z: float) -> float:
        return self.at + y * self.across + z * self.up

    def moved(self, by: float) -> Plane:
        """A plane `by` away from it, square to it."""
        return Plane(self.at + by * hypot(1, self.across, self.up), self.across, self.up)


class Solid(NamedTuple):
    left: Plane
    right: Plane
    width: float
    thickness: float

    def slices(self) -> Iterator[Polygon]:
        for z in (0.0, self.thickness):
            yield _slice(self.left, self.right, self.width, z, 0.0)


def misfits(house: CutList) -> Iterator[str]:
    """What a saw would spoil of a house."""
    stocks = {stock.profile: stock for stock in house.house.stock}
    pieces = {
        (index, piece.key): piece for index, one in enumerate(house.openings) for piece in one.built.pieces
    }
    for plan in house.plans:
        for layout in plan.layouts:
            for keys in set(layout.keys):
                row = [pieces[key.opening, key.piece] for key in keys]
                yield from _stick(house, stocks[plan.profile], layout, row)


def _stick(house: CutList, stock: Stock, layout: Layout, row: list[Piece]) -> Iterator[str]:
    kerf, trim = float(house.house.kerf), float(house.house.end_trim)
    where, _, number = layout.stick.partition("/")
    kind = stock.lengths_on_hand if where == "lengths_on_hand" else stock.sticks
    defects = kind[int(number.partition("/")[0])].defects
    solids = [solid(piece, placed) for piece, placed in zip(row, layout.placed, strict=True)]
    for at, (piece, placed, one) in enumerate(zip(row, layout.placed, solids, strict=True)):
        if abs(float(placed.length) - float(piece.overall)) > _most(piece, house.house.rounding) + SLACK:
            yield f"{piece.title} is off its length by more than its rounding"
        usable = box(trim - SLACK, -1, float(layout.length) - trim + SLACK, FAR * 9)
        for slice in one.slices():
            if not slice.within(usable):
                yield f"{piece.title} lies past the end of its stick"
            if any(_overlap(slice, box(float(d.start), -1, float(d.end), FAR * 9)) for d in defects):
                yield f"{piece.title} has a defect in it"
        shared = at + 1 < len(row) and layout.placed[at + 1].shares_cut
        cutting_off = one.right
        if not shared and (stock.square_first or piece.ends[0].notch):
            cutting_off = Plane(float(placed.start + placed.length), 0.0, 0.0)
        # Across a board's front a miter goes no deeper than the return is wide.
        deep = one.width if "front" in {end.long_edge for end in piece.ends} else None
        cuts = ((one.left.moved(-kerf), one.left, deep), (cutting_off, cutting_off.moved(kerf), None))
        for begins, ends, depth in cuts:
            yield from (
                f"a cut of {piece.title} goes into {row[after].title}"
                for after in range(at, len(row))
                if _cut_into(begins, ends, solids[after], depth)
            )
        yield from (
            f"{piece.title} and {row[after].title} overlap"
            for after in range(at + 1, len(row))
            if any(map(_overlap, one.slices(), solids[after].slices()))
        )


def _most(piece: Piece, rounding: Rounding) -> float:
    """How far from its length a piece may be cut: one that closes with others may go to the farther mark."""
    mark = float(rounding.to.step)
    alone = not isinstance(piece.overall, Together)
    return mark / 2 if alone and rounding.mode == "nearest" else mark


def solid(piece: Piece, placed: Placed) -> Solid:
    """A piece as it lies on its stick, as long as it is cut.

    Face up, its outer edge against the fence; turned over, both are the other way; end for end, its face lies down.
    """
    width, thickness = float(piece.sawn_width), float(piece.thickness)
    left, right = piece.ends[::-1] if placed.reversed else piece.ends
    down = placed.turned != placed.reversed
    start, end = float(placed.start), float(placed.start + placed.length)
    ends = []
    for one, at, inward in ((left, start, 1.0), (right, end, -1.0)):
        across = inward * _tan(0 if one.notch else one.miter)
        up = inward * _tan(one.bevel) / cos(radians(float(one.miter)))
        outer_long = one.long_edge != "inner"
        if outer_long == placed.turned:  # the long edge lies away from the fence
            at, across = at + across * width, -across
        if _face_long(one) != down:  # the longer face lies up
            at, up = at + up * thickness, -up
        ends.append(Plane(at, across, up))
    return Solid(ends[0], ends[1], width, thickness)


def _face_long(end: End) -> bool:
    return (
        end.long_edge == "face"
        if end.bevel_direction is None or not end.miter
        else end.bevel_direction == end.on_saw
    )


def _tan(degrees: object) -> float:
    return tan(radians(float(degrees)))  # type: ignore[arg-type]


def _slice(left: Plane, right: Plane, width: float, z: float, over: float) -> Polygon:
    y = (-over, width + over)
    return Polygon(
        (
            (left.along(y[0], z), y[0]),
            (right.along(y[0], z), y[0]),
            (right.along(y[1], z), y[1]),
            (left.along(y[1], z), y[1]),
        )
    )


def _cut_into(begins: Plane, ends: Plane, other: Solid, depth: float | None) -> bool:
    wide, over = (other.width, 1.0) if depth is None else (depth, 0.0)
    return any(
        _overlap(_slice(begins, ends, wide, z, over), slice)
        for z, slice in zip((0.0, other.thickness), other.slices(), strict=True)
    )


def _overlap(one: Polygon, other: Polygon) -> bool:
    """By more than what is rounded along the stick."""
    return bool(one.intersects(other.buffer(-SLACK, join_style="mitre")))
