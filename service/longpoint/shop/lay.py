"""Pieces laid along their sticks as a saw takes them quickest, at the same cost: the same pieces on the same sticks.

Short pieces come first, while the stick is long: returns before their own apron or stool, so that what is held is long.
Then comes, each time, what the saw as it stands can cut soonest. Sections with no room for another order, or with a
defect after them, stay as they were planned.
"""

from __future__ import annotations

import dataclasses
from collections.abc import Sequence
from itertools import accumulate

from longpoint.lengths import Fraction
from longpoint.shop.beside import OWNER, Beside
from longpoint.shop.build import BuiltOpening, HouseKey
from longpoint.shop.clock import Clock
from longpoint.shop.house import House
from longpoint.shop.operations import Setting
from longpoint.shop.saw_settings import SQUARE
from longpoint.shop.saw_step import SawStep
from longpoint.shop.steps import Bench, Rest
from longpoint.shop.sticks import PieceToMake, StickSection, WorkStick, defects_of, sections, work_piece
from longpoint.stock import Layout, Placed, Plan

Unit = list[int]
"""Blanks that are cut one after the other, by their places."""
Kind = tuple[object, ...]
"""What units have in common that the saw takes alike."""
Places = tuple[int, ...]
"""Pieces of a stick by the places they were planned at."""


class Layer:
    """Lays a house's sticks."""

    def __init__(self, house: House, openings: Sequence[BuiltOpening]) -> None:
        self._house = house
        self._openings = openings
        self._bench = Bench(house.rounding, house.shop.saw)
        self._clock = Clock(house.shop.rates, house.shop.saw)
        self._square_first = {stock.profile: stock.square_first for stock in house.stock}
        self._orders: dict[tuple[object, ...], list[int]] = {}
        self._pieces = {
            HouseKey(index, piece.key): piece
            for index, one in enumerate(openings)
            for piece in one.built.pieces
        }
        self._cut: dict[int, Kind] = {}  # by the identity of pieces, which the openings hold
        self._defects = defects_of(house)
        self._beside = Beside(house, self._pieces, self._defects)

    def laid(self, plan: Plan) -> Plan:
        """The plan with each stick's pieces in that order, returns with their owners as far as that costs nothing."""
        layouts: list[Layout] = []
        for layout in self._beside.brought(plan).layouts:
            # Sticks cut alike, of pieces that belong together alike, are laid alike: most sticks of a large house are.
            known: dict[tuple[object, ...], tuple[int, Places]] = {}
            alike: dict[tuple[int, Places], list[tuple[HouseKey, ...]]] = {}
            for keys in layout.keys:
                like = self._like(keys)
                if like not in known:
                    known[like] = self._places(plan.profile, layout, keys)
                _, places = order = known[like]
                alike.setdefault(order, []).append(tuple(keys[at] for at in places))
            layouts += [
                dataclasses.replace(layout, placed=_moved(layout, first, places), keys=tuple(named))
                for (first, places), named in alike.items()
            ]
        return dataclasses.replace(plan, layouts=tuple(layouts))

    def _like(self, keys: tuple[HouseKey, ...]) -> tuple[object, ...]:
        """What decides how the pieces of a layout are laid: what each is, and which are of one opening."""
        openings: dict[int, int] = {}
        return tuple((self._cut_as(key), openings.setdefault(key.opening, len(openings))) for key in keys)

    def _cut_as(self, key: HouseKey) -> Kind:
        """What of a piece is not known from its place on a stick."""
        piece = self._pieces[key]
        kind = self._cut.get(id(piece))
        if kind is None:
            ends = (
                (end.cut, end.miter, end.miter_direction, end.bevel, end.bevel_direction)
                for end in piece.ends
            )
            kind = self._cut[id(piece)] = (piece.kind, piece.rip_width, piece.taper, *ends)
        return kind

    def _places(self, profile: str, layout: Layout, keys: tuple[HouseKey, ...]) -> tuple[int, Places]:
        """The pieces of a stick in the order to cut them, and from which on that may be another than was planned."""
        own = self._defects.get((profile, layout.stick), ())
        pieces = tuple(self._to_make(key) for key in keys)
        found = sections(self._house, layout, pieces, own)
        last, as_planned = found[-1], tuple(range(len(keys)))
        if len(last.blanks) == 1:
            return len(keys), as_planned
        stick = WorkStick(
            profile, "laid", layout.length, None, self._house.kerf, self._square_first[profile], found
        )
        first = len(keys) - sum(len(blank.pieces) for blank in last.blanks)
        order = self._order(stick, last, keys[first:])
        if not last.fits(last.blanks[order[-1]]):
            return len(keys), as_planned
        starts = list(accumulate((len(blank.pieces) for blank in last.blanks), initial=first))
        ordered = (place for at in order for place in as_planned[starts[at] : starts[at + 1]])
        return first, (*as_planned[:first], *ordered)

    def _to_make(self, key: HouseKey) -> PieceToMake:
        mark = self._openings[key.opening].built.opening.mark
        return work_piece(mark, self._pieces[key], 1, self._house.rounding)

    def _order(self, stick: WorkStick, section: StickSection, keys: Sequence[HouseKey]) -> list[int]:
        """The blanks' places in the order to cut them."""
        units = self._units(section, keys)
        kinds = tuple(self._kind(section, unit) for unit in units)
        alike = stick.profile, section.waste > 0, section.tight, kinds
        if alike not in self._orders:
            self._orders[alike] = self._quickest(stick, section, units, kinds)
        return [place for number in self._orders[alike] for place in units[number]]

    def _quickest(
        self, stick: WorkStick, section: StickSection, units: Sequence[Unit], kinds: Sequence[Kind]
    ) -> list[int]:
        """The numbers of the units: loose short pieces first, and each time what can be cut soonest."""
        order: list[int] = []
        rest, now = Rest((), section.waste), SQUARE
        short = [number for number, unit in enumerate(units) if self._is_short(section, unit)]
        for group in (short, [number for number in range(len(units)) if number not in short]):
            while group:
                tried = {}
                for number in group:
                    if kinds[number] not in tried:
                        tried[kinds[number]] = number, self._seconds(stick, section, units[number], rest, now)
                number, (_, rest, now) = min(tried.values(), key=lambda one: one[1][0])
                order.append(number)
                group.remove(number)
        return order

    def _is_short(self, section: StickSection, unit: Unit) -> bool:
        return self._bench.is_short(section.blanks[unit[-1]])

    def _units(self, section: StickSection, keys: Sequence[HouseKey]) -> list[Unit]:
        """Each long blank with the returns that belong to it before it, then what belongs to nothing here."""
        owners: dict[tuple[int, str], list[Unit]] = {}
        returns: list[tuple[int, tuple[int, str]]] = []
        units: list[Unit] = []
        at = 0
        for place, blank in enumerate(section.blanks):
            key = keys[at]
            at += len(blank.pieces)
            owner = OWNER.get(key.piece.kind) if len(blank.pieces) == 1 else None
            if owner is not None:
                returns.append((place, (key.opening, owner.value)))
                continue
            units.append([place])
            owners.setdefault((key.opening, str(key.piece.kind)), []).append(units[-1])
        for number, (place, owner_key) in enumerate(returns):
            alike = owners.get(owner_key)
            if alike:
                min(alike, key=len).insert(0, place)
            else:
                units.insert(number, [place])
        return units

    def _kind(self, section: StickSection, unit: Unit) -> Kind:
        """What is the same of units that the saw takes alike."""
        return tuple(
            (
                *(place.turned, place.reversed, self._bench.is_short(section.blanks[at])),
                *(
                    (end.miter, end.miter_direction, end.bevel, end.bevel_direction)
                    for end in piece.piece.ends
                ),
            )
            for at in unit
            for piece, place in zip(section.blanks[at].pieces, section.blanks[at].placed, strict=True)
        )

    def _seconds(
        self, stick: WorkStick, section: StickSection, unit: Unit, rest: Rest, now: Setting
    ) -> tuple[Fraction, Rest, Setting]:
        """What a unit takes, and how it leaves the stick and the saw."""
        after = Rest((), rest.waste)
        after.square = rest.square
        steps: list[SawStep] = []
        for at in unit:
            steps += self._bench.along(stick, section, section.blanks[at], after)
        return self._clock.at_the_saw(steps, now), after, steps[-1].setting


def _moved(layout: Layout, first: int, places: Places) -> tuple[Placed, ...]:
    """The pieces of a layout in another order from there on, each after the cut of the one before it."""
    moved = list(layout.placed[:first])
    for at in places[first:]:
        one = layout.placed[at]
        if len(moved) == first:
            start = layout.placed[first].start
        elif one.shares_cut:
            start = moved[-1].start + one.start - layout.placed[at - 1].start
        else:
            start = moved[-1].end + moved[-1].eats
        moved.append(one.at(start))
    return tuple(moved)
