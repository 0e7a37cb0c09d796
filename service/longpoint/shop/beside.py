"""Returns laid on the stick of their own apron or stool where that costs nothing: the same sticks, at the same price.

A return changes names with an alike one that has no owner on its stick; else it moves, where its owner's stick has room
and what is kept of either stick stays kept.
"""

from __future__ import annotations

import dataclasses
from collections import Counter, defaultdict
from collections.abc import Iterable, Iterator, Mapping, Sequence
from itertools import groupby

from longpoint.geometry import Piece, PieceKind
from longpoint.lengths import Fraction, round_to
from longpoint.shop.build import HouseKey
from longpoint.shop.house import House
from longpoint.shop.sticks import Defects
from longpoint.stock import Layout, Placed, Plan

OWNER: Mapping[str, PieceKind] = {
    PieceKind.APRON_RETURN: PieceKind.APRON,
    PieceKind.STOOL_RETURN: PieceKind.STOOL,
    PieceKind.FILLET_RETURN: PieceKind.FILLET,
    PieceKind.CAP_RETURN: PieceKind.CAP,
}
"""What a return belongs to."""

Owner = tuple[int, str]
Returns = Mapping[Owner, Sequence[HouseKey]]


def owner_of(key: HouseKey) -> Owner | None:
    """The opening and the kind of what a return belongs to; None for any other piece."""
    kind = OWNER.get(key.piece.kind)
    return None if kind is None else (key.opening, kind)


def returns_of(keys: Iterable[HouseKey]) -> Returns:
    """The returns that belong to each apron, stool and so on."""
    found: dict[Owner, list[HouseKey]] = defaultdict(list)
    for key in keys:
        owner = owner_of(key)
        if owner is not None:
            found[owner].append(key)
    return found


def lacking(keys: Iterable[HouseKey], returns: Returns) -> Counter[HouseKey]:
    """How many of which returns a stick lacks; below zero where it has more than there are owners for on it."""
    found: Counter[HouseKey] = Counter()
    for key in keys:
        found.update(returns.get((key.opening, key.piece.kind), ()))
        if owner_of(key) is not None:
            found[key] -= 1
    return found


Row = tuple[HouseKey, Placed]


def _taken(row: Row) -> Fraction:
    _, placed = row
    return placed.length + placed.eats


class _Stick:
    """A stick whose returns may change.

    Attributes:
        rows: its pieces, each with its place.
        room: how much its pieces may take; None where it has a defect or shared cuts, and nothing may move.
        taken: how much they take, the cut after each with it.
    """

    def __init__(
        self, layout: Layout, keys: tuple[HouseKey, ...], room: Fraction | None, keep: Fraction
    ) -> None:
        self.rows: list[Row] = list(zip(keys, layout.placed, strict=True))
        self.room = room
        self.taken = sum((_taken(row) for row in self.rows), Fraction(0)) if room is not None else Fraction(0)
        self._planned = layout
        self._begin = layout.placed[0].start
        self._keep = keep
        self._moved = False

    @property
    def keys(self) -> list[HouseKey]:
        return [key for key, _ in self.rows]

    def rename(self, key: HouseKey, other: HouseKey) -> None:
        at = self.keys.index(key)
        self.rows[at] = other, self.rows[at][1]

    def fits(self, taken: Fraction, last: Row) -> bool:
        """Whether it has room for pieces that take so much, and what goes back on the rack of it does so still."""
        if self.room is None or taken - last[1].eats > self.room:
            return False
        return self._kept(self._offcut(taken)) == self._planned.kept

    def put(self, rows: list[Row], taken: Fraction) -> None:
        """Lay these pieces on it, which fit and take so much."""
        self.rows, self.taken, self._moved = rows, taken, True

    @property
    def pattern(self) -> tuple[object, ...]:
        """What sticks that are cut alike have in common."""
        layout = self.layout
        return layout.stick, layout.on_hand, layout.placed, layout.kept

    @property
    def layout(self) -> Layout:
        """How it is cut; whose pieces they are is said of the whole row of sticks cut alike."""
        if not self._moved:
            return self._planned
        free, placed = self._begin, []
        for _, one in self.rows:
            placed.append(one.at(free))
            free += one.length + one.eats
        return dataclasses.replace(
            self._planned,
            placed=tuple(placed),
            offcut=self._offcut(self.taken),
        )

    def _offcut(self, taken: Fraction) -> Fraction:
        return max(Fraction(0), self._planned.length - self._begin - taken)

    def _kept(self, offcut: Fraction) -> bool:
        return offcut > 0 and offcut >= self._keep


class Beside:
    """Brings a house's returns to their owners."""

    def __init__(self, house: House, pieces: Mapping[HouseKey, Piece], defects: Defects) -> None:
        self._house = house
        self._pieces = pieces
        self._defects = defects
        self._returns = returns_of(pieces)

    def brought(self, plan: Plan) -> Plan:
        """The plan with as many returns as can be on the stick of their owner."""
        if not any(owner_of(key) for layout in plan.layouts for keys in layout.keys for key in keys):
            return plan
        sticks = [self._stick(plan.profile, layout, keys) for layout in plan.layouts for keys in layout.keys]
        astray: dict[HouseKey, list[_Stick]] = defaultdict(list)
        for stick in sticks:
            for key, count in lacking(stick.keys, self._returns).items():
                astray[key] += [stick] * -count
        for stick in sticks:
            for key, count in lacking(stick.keys, self._returns).items():
                for _ in range(count):
                    if astray[key] and self._bring(key, astray[key][-1], stick, astray):
                        astray[key].pop()
        return dataclasses.replace(plan, layouts=tuple(_alike(sticks)))

    def _stick(self, profile: str, layout: Layout, keys: tuple[HouseKey, ...]) -> _Stick:
        as_planned = (profile, layout.stick) in self._defects or any(one.shares_cut for one in layout.placed)
        room = None if as_planned else layout.length - self._house.end_trim - layout.placed[0].start
        return _Stick(layout, keys, room, self._house.keep_length)

    def _bring(self, key: HouseKey, source: _Stick, to: _Stick, astray: dict[HouseKey, list[_Stick]]) -> bool:
        """Whether a return could be brought from one stick to another."""
        for other in to.keys:
            if to in astray[other] and self._alike(other, key):
                source.rename(key, other)
                to.rename(other, key)
                astray[other].remove(to)
                astray[other].append(source)
                return True
        at = source.keys.index(key)
        row = source.rows[at]
        less = [*source.rows[:at], *source.rows[at + 1 :]]
        left, more = source.taken - _taken(row), to.taken + _taken(row)
        if not (less and source.fits(left, less[-1]) and to.fits(more, to.rows[-1])):
            return False
        source.put(less, left)
        to.put([row, *to.rows], more)
        return True

    def _alike(self, one: HouseKey, other: HouseKey) -> bool:
        """Whether two returns can change names."""
        piece, same = self._pieces[one], self._pieces[other]
        return piece is same or self._shape(piece) == self._shape(same)

    def _shape(self, piece: Piece) -> tuple[object, ...]:
        length = round_to(piece.overall, self._house.rounding)
        return length, piece.kind, piece.side, piece.width, piece.ends


def _alike(sticks: Sequence[_Stick]) -> Iterator[Layout]:
    """Layouts in the order of the sticks; those next to each other that are cut alike are one."""
    for _, alike in groupby(sticks, lambda stick: stick.pattern):
        rows = list(alike)
        yield dataclasses.replace(rows[0].layout, keys=tuple(tuple(stick.keys) for stick in rows))
