"""A schedule as the changes that make it, and what another house may take the place of it."""

from __future__ import annotations

import asyncio
from collections.abc import Iterable, Sequence

from longpoint.api.stored.changing import HeldSchedule
from longpoint.api.stored.groups import members
from longpoint.api.stored.house import check_house, gathering, replacing, without_stock
from longpoint.schedules import items
from longpoint.schedules.basics import new_id
from longpoint.schedules.kept import (
    KeptHouse,
    NewSchedule,
    house_change,
    length_change,
    opening_change,
    read_opening,
)
from longpoint.schedules.lots import LengthOnHand, named_lots, profiles_of
from longpoint.schedules.rows import LengthRow
from longpoint.schedules.values import Change
from longpoint.shop.house import HouseOpening, opening_and_group_called
from longpoint.texts import say
from longpoint.values import Fault, Faults, Place


def schedule_changes(data: NewSchedule) -> tuple[Change, list[Change]]:
    """A new schedule: what is said of it as a whole, and its openings and lengths on hand, as changes."""
    changes = [
        opening_change(new_id(), position, opening) for position, opening in enumerate(data.openings, start=1)
    ]
    return house_change(new_id(), data.head), [*changes, *lot_changes(named_lots(data.lengths))]


def lot_changes(lots: Iterable[LengthOnHand]) -> list[Change]:
    """Lots that are new, each with its name."""
    return [length_change(new_id(), one) for one in lots]


async def check_new_house(held: HeldSchedule, house: KeptHouse) -> None:
    """Make sure that a house can take the place of a schedule's present one.

    Args:
        held: The schedule.
        house: What is to be said of the house from now on.

    Raises:
        Refusal: with every fault, openings that could no longer be built among them.
    """
    before, row, connection = held.house, held.schedule, held.connection
    faults = Faults()
    house.report(faults)
    lots = await items.list_lengths(connection, row.id)
    if house.unit != before.unit and (row.opening_count or lots):
        faults.add(
            ("unit",),
            "unit-in-use",
            say("problem", "schedule.unit-in-use"),
        )
        faults.raise_any()
    _keep_profiles(house, before, lots, faults)
    kept = {name for name, spec in house.trim_specs.items() if before.trim_specs.get(name) == spec}
    used = await items.trims_used(connection, row.id)
    rows = [
        one
        for trim in sorted(used - kept)
        for one in await items.list_openings(connection, row.id, trim=trim)
    ]
    openings = [read_opening(one.document, before.unit) for one in rows]
    if used - kept or house.groups != before.groups:
        # Openings that shared a stool and do so no more want one of their own again.
        there = [one.mark for one in openings]
        openings += await members(connection, row, [*before.groups, *house.groups], there)
        with gathering(faults):
            await _refuse_marks(held, house)
        with gathering(faults):
            build = not faults and not held.request.misread
            await asyncio.to_thread(_check_openings, house, openings, used - kept, build=build)
    faults.raise_any()


def _keep_profiles(house: KeptHouse, before: KeptHouse, lots: Sequence[LengthRow], faults: Faults) -> None:
    """Note profiles that were known and that lengths on hand have."""
    gone = set(profiles_of(before)).difference(profiles_of(house))
    for profile in sorted(gone.intersection(row.profile for row in lots)):
        named = next(row.lot for row in lots if row.profile == profile)
        faults.add(
            ("stock",),
            "profile-in-use",
            say("problem", "lot.profile-in-use", lot=named, profile=profile),
        )


async def _refuse_marks(held: HeldSchedule, house: KeptHouse) -> None:
    """Refuse a group called like an opening."""
    taken = await items.openings_marked(
        held.connection, held.schedule.id, [group.mark for group in house.groups]
    )
    faults = Faults()
    for number, group in enumerate(house.groups):
        if group.mark in taken:
            faults.add(("groups", number, "mark"), "duplicate-mark", opening_and_group_called(group.mark))
    faults.raise_any()


def _check_openings(
    house: KeptHouse, openings: list[HouseOpening], changed: set[str], *, build: bool
) -> None:
    replacing(
        lambda: check_house(without_stock(house), openings, groups=house.groups, build=build),
        lambda fault: _of_house(fault, openings, house, changed),
    )


def _of_house(fault: Fault, openings: list[HouseOpening], house: KeptHouse, changed: set[str]) -> Fault:
    """A fault of a stored opening, reported at the trim spec that no longer suits it, or at its group."""
    name, *rest = fault.path
    if name != "openings":
        return fault
    opening = openings[int(rest[0])]
    where = Place(rest[1:])
    if opening.trim not in changed:
        number = next((n for n, group in enumerate(house.groups) if opening.mark in group.openings), None)
        detail = say("problem", "schedule.opening-at", mark=opening.mark, why=fault.detail, where=str(where))
        return Fault.at(("groups",) if number is None else ("groups", number), fault.code, detail)
    detail = say(
        "problem", "schedule.opening-needs-trim", mark=opening.mark, why=fault.detail, where=str(where)
    )
    return Fault.at(("trim_specs", opening.trim), fault.code, detail)
