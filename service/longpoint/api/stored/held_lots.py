"""The lengths on hand of a schedule that is held: as they are to be, and what that changes."""

from __future__ import annotations

from collections.abc import Sequence

from longpoint.api.stored.changing import HeldSchedule
from longpoint.schedules import items
from longpoint.schedules.basics import new_id
from longpoint.schedules.kept import KeptHouse, length_change, read_length
from longpoint.schedules.lots import (
    LengthOnHand,
    lot_called,
    named_lots,
    planned_alike,
    report_lots,
    report_names,
    report_too_many,
)
from longpoint.schedules.rows import LengthRow
from longpoint.schedules.values import Change, ItemKind
from longpoint.values import Faults, Path


class HeldLots:
    """Lots of a schedule, and what becomes of them.

    Args:
        house: What is said of the house as a whole.
        rows: Every lot that is kept.
    """

    def __init__(self, house: KeptHouse, rows: Sequence[LengthRow]) -> None:
        self._house = house
        self._rows = {row.lot: row for row in rows}
        self._now: dict[str, LengthOnHand] = {}

    @classmethod
    async def of(cls, held: HeldSchedule) -> HeldLots:
        """Those of a schedule that is held."""
        return cls(held.house, await items.list_lengths(held.connection, held.schedule.id))

    @property
    def names(self) -> tuple[str, ...]:
        """What lots are called already."""
        return (*self._rows, *(lot for lot in self._now if lot not in self._rows))

    def find(self, lot: str) -> LengthOnHand | None:
        """A lot as it is to be."""
        row = self._rows.get(lot)
        return self._now.get(lot) or (None if row is None else self._kept(row))

    def put(self, one: LengthOnHand) -> None:
        """What a lot is to be."""
        self._now[one.named] = one

    def add(self, sent: Sequence[LengthOnHand], at: Path, faults: Faults) -> tuple[str, ...]:
        """Add lots that were sent, each a fact of its own; gives their names.

        Args:
            sent: Those without a name get one.
            at: Where the list stands; where it is empty, one lot was sent by itself.
            faults: Where what is wrong is noted.
        """
        placed = [((*at, index) if at else (), one) for index, one in enumerate(sent)]
        others = self._others({one.profile for one in sent})
        report_lots(self._house, placed, others, faults)
        report_names(placed, faults)
        for place, one in placed:
            there = None if one.lot is None else self.find(one.lot)
            if there is not None and one.called(there.named) != there:
                faults.add((*place, "lot"), "duplicate-lot", lot_called(there.named))
        named = named_lots(sent, self.names)
        for one in named:
            self.put(one)
        report_too_many(self._all(), faults, at)
        return tuple(one.named for one in named)

    def change(self, row: LengthRow | None, one: LengthOnHand, faults: Faults) -> None:
        """What a lot is to be that was sent by itself; what was taken of it before is taken again."""
        before = None if row is None else self._kept(row)
        if before is not None and (before.profile, before.length) == (one.profile, one.length):
            one.report(faults)
        else:
            others = [other for other in self._others({one.profile}) if other.lot != one.lot]
            report_lots(self._house, [((), one)], others, faults)
        self.put(one)
        report_too_many(self._all(), faults)

    def use(self, lot: str) -> bool:
        """Use one length of a lot up; False where there is none."""
        one = self.find(lot)
        if one is None or not one.available:
            return False
        self.put(one.less(1))
        return True

    def not_cut(self, stick: str, lot: str | None) -> list[Change]:
        """What it changes that a stick was not cut after all: what is left of its offcuts goes, its length is back."""
        gone = [
            Change(ItemKind.LENGTH, row.id, None)
            for row in self._rows.values()
            if (one := self._kept(row)).stick == stick and not one.gone
        ]
        was = None if lot is None else self.find(lot)
        if was is not None and was.gone:
            self.put(was.less(-1))
        return [*gone, *self.changes]

    @property
    def changes(self) -> list[Change]:
        """What all of it changes; a lot that is as it was changes nothing."""
        found = []
        for lot, one in self._now.items():
            row = self._rows.get(lot)
            id = new_id() if row is None else row.id
            change = length_change(id, one)
            if row is None or change != length_change(id, self._kept(row)):
                found.append(change)
        return found

    @property
    def as_planned(self) -> bool:
        """Whether sticks are planned from them as they were before."""
        return all(
            (before := self._rows.get(lot)) is not None and planned_alike(self._kept(before), one)
            for lot, one in self._now.items()
        )

    def _kept(self, row: LengthRow) -> LengthOnHand:
        return read_length(row.document, self._house.unit)

    def _others(self, profiles: set[str]) -> list[LengthOnHand]:
        return [self._kept(row) for row in self._rows.values() if row.profile in profiles]

    def _all(self) -> list[LengthOnHand]:
        return [self._now.get(lot) or self._kept(row) for lot, row in self._rows.items()] + [
            one for lot, one in self._now.items() if lot not in self._rows
        ]
