"""Openings of a stored house that are trimmed together: a group names them by their marks, so those must stay."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import Any

from sqlalchemy.ext.asyncio import AsyncConnection

from longpoint.api.http.faults import Faults
from longpoint.api.http.problems import NotFound
from longpoint.api.stored.house import read_house_document, read_opening_document
from longpoint.api.stored.storage import clean
from longpoint.api.wire.cut_list import GroupIn
from longpoint.api.wire.opening import OpeningIn
from longpoint.api.wire.schedule import HouseIn
from longpoint.schedules import items
from longpoint.schedules.basics import digest_of

_ID_LENGTH = 26


def group_id(mark: str) -> str:
    """What the pieces that a group shares are kept under, where others are kept under their opening's id."""
    return "g" + digest_of("group", mark)[: _ID_LENGTH - 1]


def shares(group: GroupIn) -> bool:
    """Whether its openings share a stool, so that there are pieces of the group's own."""
    return group.gaps is not None


def naming(house: HouseIn, marks: Iterable[str]) -> list[GroupIn]:
    """The groups that name any of these marks."""
    wanted = set(marks)
    return [group for group in house.groups if wanted.intersection(group.openings)]


def sharing(house: HouseIn, name: str) -> GroupIn | None:
    """The group of this mark or id, where it has pieces of its own."""
    return next(
        (group for group in house.groups if shares(group) and name in (group.mark, group_id(group.mark))),
        None,
    )


async def group_of(
    connection: AsyncConnection, schedule: Any, house: HouseIn, mark: str
) -> tuple[GroupIn | None, list[OpeningIn]]:
    """The group that names an opening, and that group's other openings."""
    group = next(iter(naming(house, [mark])), None)
    if group is None:
        return None, []
    others = await members(connection, schedule, [group])
    return group, [one for one in others if one.mark != mark]


async def members(
    connection: AsyncConnection, schedule: Any, groups: Sequence[GroupIn], without: Iterable[str] = ()
) -> list[OpeningIn]:
    """Every opening that these groups name and the schedule has, each once, save some."""
    left_out = set(without)
    marks = dict.fromkeys(mark for group in groups for mark in group.openings if mark not in left_out)
    rows = await items.openings_marked(connection, schedule.id, list(marks))
    return [read_opening_document(rows[mark].document) for mark in marks if mark in rows]


async def find_place(connection: AsyncConnection, schedule: Any, name: str) -> str:
    """What pieces are kept under: the id of an opening, by id or mark, or that of a group.

    Raises:
        NotFound: when the schedule has neither.
    """
    row = await items.find_opening(connection, schedule.id, clean(name))
    if row is not None:
        return str(row.id)
    group = sharing(read_house_document(schedule.document), name)
    if group is None:
        raise NotFound(f"The schedule has no opening {name}, and no group of that mark that shares a stool.")
    return group_id(group.mark)


def refuse_taken(house: HouseIn, marks: Sequence[tuple[tuple[str | int, ...], str]]) -> None:
    """Refuse openings called like a group, each given with where it was sent.

    Raises:
        InvalidRequest: with every one.
    """
    groups = {group.mark for group in house.groups}
    faults = Faults()
    for path, mark in marks:
        if mark in groups:
            faults.add(path, "duplicate-mark", f"A group is called {mark!r}: give this one its own mark.")
    faults.raise_any()


def refuse_grouped(house: HouseIn, mark: str, path: tuple[str | int, ...], what: str) -> None:
    """Refuse to take away a mark that a group names.

    Args:
        house: What is said of the house as a whole.
        mark: The opening's.
        path: Where the fault is told.
        what: What was to be done, "be renamed".

    Raises:
        InvalidRequest: naming the group.
    """
    for group in naming(house, [mark]):
        faults = Faults()
        faults.add(
            path,
            "in-group",
            f"The group {group.mark!r} names {mark!r}, so it cannot {what}: change the group first, with the house.",
        )
        faults.raise_any()
