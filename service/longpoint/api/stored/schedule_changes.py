"""What is sent, as changes for the history to append: documents kept as they were read, with their exact values."""

from __future__ import annotations

import asyncio
from collections.abc import Iterable
from typing import Any

import msgspec
from sqlalchemy.ext.asyncio import AsyncConnection

from longpoint.api.http.faults import Faults, InvalidRequest
from longpoint.api.http.problems import Fault
from longpoint.api.read.exact_lengths import exact_json
from longpoint.api.stored.groups import members
from longpoint.api.stored.house import check_house, read_house_document, read_opening_document, retold
from longpoint.api.wire.opening import OpeningIn
from longpoint.api.wire.schedule import HouseIn, OffcutIn, ScheduleIn
from longpoint.lengths import Unit
from longpoint.schedules import items
from longpoint.schedules.basics import new_id
from longpoint.schedules.values import Change, Kind

_encode = msgspec.json.Encoder().encode
_SINCE = ("groups", "movement")


def schedule_changes(data: ScheduleIn) -> tuple[str, str, list[Change]]:
    """A new schedule: its document, the exact lengths in it, and its openings and rack as changes."""
    house = HouseIn(**{name: getattr(data, name) for name in HouseIn.__struct_fields__})
    changes = [
        opening_change(new_id(), position, opening, data.unit)
        for position, opening in enumerate(data.openings, start=1)
    ]
    changes += offcut_changes(data.rack, data.unit)
    return _house_document(house), exact_json(house, data.unit), changes


def house_change(id: str, house: HouseIn) -> Change:
    """What is said of the house as a whole."""
    return Change(Kind.SCHEDULE, id, _house_document(house), exact_json(house, house.unit))


def _house_document(house: HouseIn) -> str:
    """A house as it is kept: what the first release did not know is left out where nothing is said of it, since a
    replica of that release refuses fields it does not know."""
    kept = msgspec.to_builtins(house)
    return _encode({name: value for name, value in kept.items() if value or name not in _SINCE}).decode()


def opening_change(id: str, position: int, opening: OpeningIn, unit: Unit | None) -> Change:
    """An opening at its place."""
    return Change(Kind.OPENING, id, _encode(opening).decode(), exact_json(opening, unit), position)


def offcut_changes(offcuts: Iterable[OffcutIn], unit: Unit | None) -> list[Change]:
    """Offcuts put on the rack."""
    return [
        Change(Kind.OFFCUT, new_id(), _encode(offcut).decode(), exact_json(offcut, unit))
        for offcut in offcuts
    ]


async def check_new_house(connection: AsyncConnection, row: Any, house: HouseIn) -> None:
    """Make sure that a house can take the place of a schedule's present one.

    Args:
        connection: The transaction.
        row: The schedule's row.
        house: What is to be said of the house from now on.

    Raises:
        InvalidRequest: with every fault, openings that could no longer be built among them.
    """
    before = read_house_document(row.document)
    if house.unit != before.unit and (
        row.opening_count or await items.list_offcuts(connection, row.id, limit=1)
    ):
        faults = Faults()
        faults.add(
            ("unit",),
            "unit-in-use",
            "The unit cannot change while there are openings or offcuts: those written without one would change their "
            "meaning. Keep it, and write new lengths with their own unit.",
        )
        faults.raise_any()
    check_house(house, [])
    kept = {name for name, spec in house.trim_specs.items() if before.trim_specs.get(name) == spec}
    used = await items.trims_used(connection, row.id)
    rows = [
        one
        for trim in sorted(used - kept)
        for one in await items.list_openings(connection, row.id, trim=trim)
    ]
    openings = [read_opening_document(one.document) for one in rows]
    regrouped = bool(used - kept) or house.groups != before.groups
    if regrouped:
        # Openings that shared a stool and do so no more want one of their own again.
        there = [one.mark for one in openings]
        openings += await members(connection, row, [*before.groups, *house.groups], there)
        await _refuse_marks(connection, row, house)
    if regrouped:
        await asyncio.to_thread(_check_openings, house, openings, used - kept)


async def _refuse_marks(connection: AsyncConnection, row: Any, house: HouseIn) -> None:
    """Refuse a group called like an opening."""
    taken = await items.openings_marked(connection, row.id, [group.mark for group in house.groups])
    faults = Faults()
    for number, group in enumerate(house.groups):
        if group.mark in taken:
            detail = f"An opening is called {group.mark!r}: give the group a mark of its own."
            faults.add(("groups", number, "mark"), "duplicate-mark", detail)
    faults.raise_any()


def _check_openings(house: HouseIn, openings: list[OpeningIn], changed: set[str]) -> None:
    try:
        check_house(msgspec.structs.replace(house, stock=[]), openings, groups=house.groups)
    except InvalidRequest as refusal:
        raise retold(refusal, lambda fault: _of_house(fault, openings, house, changed)) from None


def _of_house(fault: Fault, openings: list[OpeningIn], house: HouseIn, changed: set[str]) -> Fault:
    """A fault of a stored opening, told at the trim spec that no longer suits it, or at its group."""
    steps = str(fault.pointer).split("/")
    if steps[1] != "openings":
        return fault
    opening = openings[int(steps[2])]
    if opening.trim not in changed:
        number = next((n for n, group in enumerate(house.groups) if opening.mark in group.openings), None)
        detail = f"Opening {opening.mark!r}, at {'/'.join(['', *steps[3:]])}: {fault.detail}"
        return Fault(
            code=fault.code, detail=detail, pointer="/groups" if number is None else f"/groups/{number}"
        )
    detail = f"Opening {opening.mark!r} needs it, at {'/'.join(['', *steps[3:]])}: {fault.detail}"
    place = opening.trim.replace("~", "~0").replace("/", "~1")
    return Fault(code=fault.code, detail=detail, pointer=f"/trim_specs/{place}")
