"""Openings of a stored house that are trimmed together: a group names them by their marks, so those must stay."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from sqlalchemy.ext.asyncio import AsyncConnection

from longpoint.api.http.problems import NotFound
from longpoint.api.stored.storage import clean
from longpoint.schedules import items
from longpoint.schedules.house_rows import group_id
from longpoint.schedules.kept import KeptHouse, read_house, read_opening
from longpoint.schedules.rows import ScheduleRow
from longpoint.shop.house import HouseGroup, HouseOpening, opening_and_group_called
from longpoint.texts import say
from longpoint.values import Faults


def naming(house: KeptHouse, marks: Iterable[str]) -> list[HouseGroup]:
    """The groups that name any of these marks."""
    wanted = set(marks)
    return [group for group in house.groups if wanted.intersection(group.openings)]


def sharing(house: KeptHouse, name: str) -> HouseGroup | None:
    """The group of this mark or id, where it has pieces of its own."""
    return next(
        (group for group in house.groups if group.shares and name in (group.mark, group_id(group.mark))),
        None,
    )


async def group_of(
    connection: AsyncConnection, schedule: ScheduleRow, house: KeptHouse, mark: str
) -> tuple[HouseGroup | None, list[HouseOpening]]:
    """The group that names an opening, and that group's other openings."""
    group = next(iter(naming(house, [mark])), None)
    if group is None:
        return None, []
    others = await members(connection, schedule, [group])
    return group, [one for one in others if one.mark != mark]


async def members(
    connection: AsyncConnection,
    schedule: ScheduleRow,
    groups: Sequence[HouseGroup],
    without: Iterable[str] = (),
) -> list[HouseOpening]:
    """Every opening that these groups name and the schedule has, each once, save some."""
    left_out = set(without)
    marks = dict.fromkeys(mark for group in groups for mark in group.openings if mark not in left_out)
    rows = await items.openings_marked(connection, schedule.id, list(marks))
    unit = read_house(schedule.document).unit
    return [read_opening(rows[mark].document, unit) for mark in marks if mark in rows]


async def find_place(connection: AsyncConnection, schedule: ScheduleRow, name: str) -> str:
    """What pieces are kept under: the id of an opening, by id or mark, or that of a group.

    Raises:
        NotFound: when the schedule has neither.
    """
    row = await items.find_opening(connection, schedule.id, clean(name))
    if row is not None:
        return str(row.id)
    group = sharing(read_house(schedule.document), name)
    if group is None:
        raise NotFound(say("problem", "schedule.no-opening-or-group", name=name))
    return group_id(group.mark)


def refuse_taken(house: KeptHouse, marks: Sequence[tuple[tuple[str | int, ...], str]]) -> None:
    """Refuse openings called like a group, each given with where it was sent.

    Raises:
        InvalidRequest: with every one.
    """
    groups = {group.mark for group in house.groups}
    faults = Faults()
    for path, mark in marks:
        if mark in groups:
            faults.add(path, "duplicate-mark", opening_and_group_called(mark))
    faults.raise_any()


def refuse_grouped(house: KeptHouse, mark: str, path: tuple[str | int, ...], *, goes: bool) -> None:
    """Refuse to take away a mark that a group names.

    Args:
        house: What is said of the house as a whole.
        mark: The opening's.
        path: Where the fault is reported.
        goes: Whether it was to go; else it was to be renamed.

    Raises:
        InvalidRequest: naming the group.
    """
    for group in naming(house, [mark]):
        faults = Faults()
        detail = (
            say("problem", "group.opening-cannot-go", group=group.mark, mark=mark)
            if goes
            else say("problem", "group.opening-cannot-be-renamed", group=group.mark, mark=mark)
        )
        faults.add(path, "in-group", detail)
        faults.raise_any()
