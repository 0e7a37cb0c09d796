"""/v1/schedules/{id}/changes: what two revisions differ in, down to the pieces."""

from __future__ import annotations

import asyncio
from typing import Annotated

import msgspec
from litestar import get
from litestar.params import QueryParameter
from sqlalchemy.ext.asyncio import AsyncConnection

from longpoint.api.http.answer import Reply
from longpoint.api.http.conditional import ETAG, check_news, etag
from longpoint.api.http.request import AnyRequest
from longpoint.api.stored.built import opening_pieces, shared_marks, shared_pieces
from longpoint.api.stored.revisions import find_revision
from longpoint.api.stored.storage import ScheduleId, find_schedule, store_of, stored
from longpoint.lengths import Unit, length_writer
from longpoint.schedules import history
from longpoint.schedules.compared import (
    Became,
    Changes,
    FieldChange,
    GroupChange,
    OpeningChange,
    PieceBecame,
    differences,
    piece_changes,
)
from longpoint.schedules.history import Pair
from longpoint.schedules.kept import KeptHouse, read_house, read_opening
from longpoint.schedules.rows import VersionRow
from longpoint.schedules.values import ItemKind
from longpoint.shop.house import HouseOpening


class Compared(msgspec.Struct, frozen=True):
    """All that is needed to compare two revisions, read from storage.

    Attributes:
        houses: The house as a whole, before and after.
        pairs: The versions, before and after, of each opening that changed or whose trim did.
        standing: How many openings stand at the later revision.
        members: The openings that groups name, before and after, by mark.
    """

    earlier: int
    later: int
    houses: tuple[KeptHouse, KeptHouse]
    pairs: list[Pair]
    standing: int
    members: tuple[dict[str, HouseOpening], dict[str, HouseOpening]]


@get(
    "/v1/schedules/{schedule_id:str}/changes",
    **stored("compare_revisions", summary="Compare two revisions", tag="Revisions", headers=ETAG),
)
async def compare_revisions(
    request: AnyRequest,
    schedule_id: ScheduleId,
    earlier: Annotated[
        int, QueryParameter(ge=1, le=2_000_000_000, name="from", description="The revision to compare from.")
    ],
    later: Annotated[
        int | None,
        QueryParameter(
            ge=1,
            le=2_000_000_000,
            name="to",
            description="The revision to compare to; the latest when left out.",
        ),
    ] = None,
) -> Reply[Changes]:
    """Which readings changed, hence which pieces are new, gone, longer, shorter or unchanged, by mark.

    The two may be given in either order: what is reported is what the one became on the way to the other.
    """
    async with store_of(request).reading() as connection:
        schedule = await find_schedule(connection, request, schedule_id)
        last = later if later is not None else schedule.revision
        ends = [await find_revision(connection, schedule, number) for number in (earlier, last)]
        tag = "-".join(one.digest[:16] for one in ends)
        check_news(request, tag)
        compared = await _load(connection, schedule.id, earlier, last)
    out = await asyncio.to_thread(_compare, compared)
    write = length_writer(compared.houses[1].rounding)
    return Reply(out, write, status_code=200, headers={"etag": etag(request, tag)})


async def _load(connection: AsyncConnection, schedule_id: str, earlier: int, later: int) -> Compared:
    low, high = sorted((earlier, later))
    pairs = await history.changed_between(connection, schedule_id, low, high, [ItemKind.OPENING])
    houses = []
    for number in (low, high):
        (row,) = await history.state_at(connection, schedule_id, number, [ItemKind.SCHEDULE])
        houses.append(read_house(row.stands))
    standing = await history.count_at(connection, schedule_id, high, ItemKind.OPENING)
    before, after = houses
    grouped = [shared_marks(house) for house in houses]
    states = [
        await history.state_at(connection, schedule_id, number, [ItemKind.OPENING]) if marks else []
        for number, marks in zip((low, high), grouped, strict=True)
    ]
    units = before.unit, after.unit
    then, now = (
        _named(state, marks, unit) for state, marks, unit in zip(states, grouped, units, strict=True)
    )
    trims = {
        name
        for name in before.trim_specs.keys() & after.trim_specs.keys()
        if before.trim_specs[name] != after.trim_specs[name]
    }
    if trims or grouped[0] != grouped[1]:
        seen = {_row(pair).item_id for pair in pairs}
        state = await history.state_at(connection, schedule_id, high, [ItemKind.OPENING])
        pairs += [
            (row, row)
            for row in state
            if row.item_id not in seen and _touched(read_opening(row.stands, after.unit), trims, *grouped)
        ]
        pairs.sort(key=lambda pair: _row(pair).position or 0)
    if earlier > later:
        standing = await history.count_at(connection, schedule_id, low, ItemKind.OPENING)
        back = [(two, one) for one, two in pairs]
        return Compared(earlier, later, (after, before), back, standing, (now, then))
    return Compared(earlier, later, (before, after), pairs, standing, (then, now))


def _named(state: list[VersionRow], marks: set[str], unit: Unit | None) -> dict[str, HouseOpening]:
    sent = (read_opening(row.stands, unit) for row in state)
    return {one.mark: one for one in sent if one.mark in marks}


def _touched(opening: HouseOpening, trims: set[str], before: set[str], after: set[str]) -> bool:
    """Whether its trim changed, or it began or ceased to share a stool."""
    return opening.trim in trims or (opening.mark in before) != (opening.mark in after)


def _compare(compared: Compared) -> Changes:
    before, after = compared.houses
    openings = tuple(_opening_change(pair, compared.houses) for pair in compared.pairs)
    touched = sum(1 for _, later in compared.pairs if later is not None)
    return Changes(
        from_revision=compared.earlier,
        to_revision=compared.later,
        house=differences(before, after),
        openings=openings,
        groups=_group_changes(compared),
        unchanged_openings=compared.standing - touched,
    )


def _opening_change(pair: Pair, houses: tuple[KeptHouse, KeptHouse]) -> OpeningChange:
    sent = [
        None if row is None else read_opening(row.stands, house.unit)
        for row, house in zip(pair, houses, strict=True)
    ]
    before, after = sent
    pieces = [
        {} if one is None else opening_pieces(house, one) for one, house in zip(sent, houses, strict=True)
    ]
    counts = [0 if one is None else one.count for one in sent]
    now = after or before
    assert now is not None
    return OpeningChange(
        id=_row(pair).item_id,
        mark=now.mark,
        mark_before=None if before is None else before.mark,
        became=_became(pair, sent, houses),
        readings=_readings(before, after),
        pieces=piece_changes(pieces[0], pieces[1], counts[0], counts[1]),
    )


def _row(pair: Pair) -> VersionRow:
    """The later version, where it did not go."""
    row = pair[0] if pair[1] is None else pair[1]
    assert row is not None
    return row


def _became(pair: Pair, sent: list[HouseOpening | None], houses: tuple[KeptHouse, KeptHouse]) -> Became:
    before, after = pair
    if before is None:
        return Became.NEW
    if after is None:
        return Became.GONE
    if before is not after:
        return Became.CHANGED
    trims = [house.trim_specs[one.trim] for one, house in zip(sent, houses, strict=True) if one is not None]
    return Became.GROUP_CHANGED if trims[0] == trims[-1] else Became.TRIM_CHANGED


def _readings(before: HouseOpening | None, after: HouseOpening | None) -> tuple[FieldChange, ...]:
    return () if before is None or after is None else differences(before, after)


def _group_changes(compared: Compared) -> tuple[GroupChange, ...]:
    """The groups of which any shared piece is another."""
    before, after = (
        shared_pieces(house, members)
        for house, members in zip(compared.houses, compared.members, strict=True)
    )
    found = []
    for mark in dict.fromkeys([*after, *before]):
        counts = int(mark in before), int(mark in after)
        pieces = piece_changes(before.get(mark, {}), after.get(mark, {}), *counts)
        became = {(0, 1): Became.NEW, (1, 0): Became.GONE}.get(counts, Became.CHANGED)
        if became is not Became.CHANGED or any(piece.became is not PieceBecame.UNCHANGED for piece in pieces):
            found.append(GroupChange(mark, became, pieces))
    return tuple(found)
