"""Sticks sawn as the saw order says, mark by mark, from its words alone: every piece comes out as its piece.

What is sawn is a stick seen from above. A cut is a line through the mark, leaning as the saw is swung; what it eats
lies beyond it. Sticks with a tilted blade on them, ripped pieces and defects are left to other checks.
"""

from __future__ import annotations

from collections import defaultdict
from math import cos, radians, tan
from random import Random
from typing import NamedTuple

import pytest
from hypothesis import given
from hypothesis import strategies as st

from longpoint.geometry import Hand, Piece
from longpoint.shop import (
    Holding,
    MarkFrom,
    Operation,
    OperationKind,
    OrderKind,
    PieceName,
    SawOrder,
    Shop,
    saw_order,
)
from longpoint.shop.build import CutList
from shop.builders import solid_house

Kind = OperationKind
CUTTING_OFF = (Kind.CUT_OFF, Kind.ANGLED_CUT_OFF, Kind.SHARED_CUT)
MARK = 1 / 16


class Line(NamedTuple):
    """x where it meets the fence, and how far right it runs for each inch away from it."""

    at: float
    lean: float

    def along(self, y: float) -> float:
        return self.at + self.lean * y


class Sawn(NamedTuple):
    left: Line
    right: Line


class Yard:
    """Sticks being sawn, each from its free end."""

    def __init__(self, house: CutList, order: SawOrder) -> None:
        self.order = order
        self.kerf = float(house.house.kerf)
        self.needed = {
            (one.built.opening.mark, piece.key): piece for one in house.openings for piece in one.built.pieces
        }
        self.lengths: dict[tuple[str, str | None], float] = {
            (plan.profile, name): float(layout.length)
            for plan in house.plans
            for name, layout in zip(
                house.stick_names[plan.profile],
                [one for one in plan.layouts for _ in range(one.times)],
                strict=True,
            )
        }
        self.free: dict[tuple[str, str | None], Line] = defaultdict(lambda: Line(0.0, 0.0))
        self.pieces: dict[PieceName, Sawn] = {}
        self.cut_off: dict[PieceName, Operation] = {}

    def saw(self, one: Operation) -> None:
        stick = one.profile, one.stick
        piece = self.needed[one.pieces[0].opening, one.pieces[0].piece]
        y = 0.0 if one.mark_edge in ("", one.fence_edge) else float(piece.sawn_width)
        if one.holds is Holding.PIECE and one.kind is Kind.ANGLED_END:
            self._own_end(one, y)
            return
        free = self.free[stick]
        x = free.along(y) if one.mark_edge else max(free.along(0.0), free.along(float(piece.sawn_width)))
        setting = self.order.setting_of(one)
        cut = self._line(one, y, x + float(one.mark or setting.stop or 0))
        if one.kind in CUTTING_OFF:
            self.cut_off[one.pieces[0]] = one
            self.pieces[one.pieces[0]] = face_up(Sawn(free, cut), one, float(piece.sawn_width))
            cut = Line(cut.at + self.kerf / cos(radians(setting.miter)), cut.lean)
        self.free[stick] = cut

    def _own_end(self, one: Operation, y: float) -> None:
        name = one.pieces[0]
        if name not in self.pieces:  # the last of its stick, which nothing had to cut off
            stick = one.profile, one.stick
            self.pieces[name] = Sawn(self.free[stick], Line(self.lengths[stick], 0.0))
        left, right = self.pieces[name]
        if one.on_saw is Hand.LEFT:
            left = self._line(one, y, left.along(y))
        else:
            right = self._line(one, y, right.along(y))
        self.pieces[name] = Sawn(left, right)

    def _line(self, one: Operation, y: float, x: float) -> Line:
        setting = self.order.setting_of(one)
        lean = tan(radians(setting.miter)) * (1 if setting.miter_direction is Hand.RIGHT else -1)
        return Line(x - lean * y, lean)


def face_up(piece: Sawn, one: Operation, wide: float) -> Sawn:
    """A piece turned so that its face lies up and the edge that belongs there lies against the fence."""
    turned = one.fence_edge in ("inner", "bottom", "front")
    if turned:
        piece = Sawn(*(Line(line.along(wide), -line.lean) for line in piece))
    if turned == one.face_up:  # it lies end for end
        piece = Sawn(*(Line(-line.at, -line.lean) for line in reversed(piece)))
    return piece


def plain(operations: list[Operation], order: SawOrder) -> bool:
    """Whether a stick can be looked at from above alone."""
    return all(
        one.kind in (*CUTTING_OFF, Kind.SQUARE_END, Kind.ANGLED_END)
        and one.stops_after is None
        and not order.setting_of(one).bevel
        for one in operations
    )


def sawn(house: CutList, order: SawOrder) -> Yard:
    """Every plain stick sawn."""
    sticks = defaultdict(list)
    for one in order.operations:
        if one.stick is not None:
            sticks[one.profile, one.stick].append(one)
    yard = Yard(house, order)
    for operations in sticks.values():
        if plain(operations, order):
            for one in operations:
                yard.saw(one)
    return yard


def off(piece: Piece, sawn_piece: Sawn) -> float:
    """How far a sawn sawn_piece's two edges are from the piece's."""
    fence, away = (
        sawn_piece.right.along(y) - sawn_piece.left.along(y) for y in (0.0, float(piece.sawn_width))
    )
    if "front" in {end.long_edge for end in piece.ends}:
        fence, away = away, fence
    return max(abs(fence - float(piece.mitered_long_point)), abs(away - float(piece.short_point)))


@given(st.integers(0, 10**9), st.sampled_from(OrderKind))
def test_every_piece_comes_out_as_its_piece(seed: int, kind: OrderKind) -> None:
    house = solid_house(Random(seed))
    order = saw_order(house, Shop(order=kind))
    yard = sawn(house, order)
    for name, sawn_piece in yard.pieces.items():
        piece = yard.needed[name.opening, name.piece]
        # Half a mark for its length; each end's angle is off by half a step of the saw's scale at most.
        scale = 2 * float(piece.sawn_width) * radians(0.06) / cos(radians(60)) ** 2
        assert off(piece, sawn_piece) <= MARK / 2 + scale
    kerf = float(house.house.kerf)
    for stick, free in yard.free.items():
        # The last cut may lie past the end, and what it eats with it.
        assert free.at - kerf / cos(radians(60)) <= yard.lengths[stick] + MARK


@pytest.mark.parametrize("kind", OrderKind)
def test_enough_is_sawn_to_tell(kind: OrderKind) -> None:
    kinds, froms, edges, pieces = set(), set(), set(), 0
    for seed in range(30):
        house = solid_house(Random(seed))
        cut_off = sawn(house, saw_order(house, Shop(order=kind))).cut_off.values()
        pieces += len(cut_off)
        kinds |= {one.kind for one in cut_off}
        froms |= {one.mark_from for one in cut_off}
        edges |= {one.fence_edge for one in cut_off}
    assert pieces > 100
    assert kinds == set(CUTTING_OFF)
    assert {MarkFrom.SQUARE_END, MarkFrom.LONG_POINT, MarkFrom.SHORT_POINT} <= froms
    assert {"outer", "inner"} <= edges
