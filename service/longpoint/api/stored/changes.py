"""/v1/schedules/{id}/changes: what two revisions differ in, down to the parts."""

from __future__ import annotations

import asyncio
from typing import Annotated, Any

import msgspec
from litestar import get
from litestar.params import QueryParameter

from longpoint.api.http.answer import Reply
from longpoint.api.http.conditional import ETAG, check_news, etag
from longpoint.api.http.request import AnyRequest
from longpoint.api.stored.compared_parts import opening_parts, shared_marks, shared_parts
from longpoint.api.stored.differences import differences, part_changes
from longpoint.api.stored.house import read_house_document, read_opening_document
from longpoint.api.stored.revisions import find_revision
from longpoint.api.stored.storage import ScheduleId, find_schedule, store_of, stored
from longpoint.api.wire.changes import (
    Became,
    ChangesOut,
    FieldChange,
    GroupChange,
    OpeningChange,
    PartBecame,
)
from longpoint.api.wire.lengths import LengthWriter, length_writer
from longpoint.api.wire.opening import OpeningIn
from longpoint.api.wire.schedule import HouseIn
from longpoint.schedules import history
from longpoint.schedules.values import Kind


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
    houses: tuple[HouseIn, HouseIn]
    pairs: list[tuple[Any | None, Any | None]]
    standing: int
    members: tuple[dict[str, OpeningIn], dict[str, OpeningIn]]


@get(
    "/v1/schedules/{schedule_id:str}/changes",
    **stored("compare_revisions", summary="Compare two revisions", tag="Revisions", headers=ETAG),
)
async def compare_revisions(
    request: AnyRequest,
    schedule_id: ScheduleId,
    earlier: Annotated[
        int, QueryParameter(ge=1, le=2_000_000_000, name="from", description="The earlier revision.")
    ],
    later: Annotated[
        int | None,
        QueryParameter(
            ge=1, le=2_000_000_000, name="to", description="The later revision; the latest when left out."
        ),
    ] = None,
) -> Reply[ChangesOut]:
    """Which readings changed, hence which parts are new, gone, longer, shorter or unchanged, by mark.

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
    return Reply(out, status_code=200, headers={"etag": etag(request, tag)})


async def _load(connection: Any, schedule_id: str, earlier: int, later: int) -> Compared:
    low, high = sorted((earlier, later))
    pairs = await history.changed_between(connection, schedule_id, low, high, [Kind.OPENING])
    houses = []
    for number in (low, high):
        (row,) = await history.state_at(connection, schedule_id, number, [Kind.SCHEDULE])
        houses.append(read_house_document(row.document))
    standing = await history.count_at(connection, schedule_id, high, Kind.OPENING)
    before, after = houses
    grouped = [shared_marks(house) for house in houses]
    states = [
        await history.state_at(connection, schedule_id, number, [Kind.OPENING]) if marks else []
        for number, marks in zip((low, high), grouped, strict=True)
    ]
    then, now = (_named(state, marks) for state, marks in zip(states, grouped, strict=True))
    trims = {
        name
        for name in before.trim_specs.keys() & after.trim_specs.keys()
        if before.trim_specs[name] != after.trim_specs[name]
    }
    if trims or grouped[0] != grouped[1]:
        seen = {_row(pair).item_id for pair in pairs}
        state = await history.state_at(connection, schedule_id, high, [Kind.OPENING])
        pairs += [
            (row, row)
            for row in state
            if row.item_id not in seen and _touched(read_opening_document(row.document), trims, *grouped)
        ]
        pairs.sort(key=lambda pair: _row(pair).position)
    if earlier > later:
        standing = await history.count_at(connection, schedule_id, low, Kind.OPENING)
        back = [(two, one) for one, two in pairs]
        return Compared(earlier, later, (after, before), back, standing, (now, then))
    return Compared(earlier, later, (before, after), pairs, standing, (then, now))


def _named(state: list[Any], marks: set[str]) -> dict[str, OpeningIn]:
    sent = (read_opening_document(row.document) for row in state)
    return {one.mark: one for one in sent if one.mark in marks}


def _touched(opening: OpeningIn, trims: set[str], before: set[str], after: set[str]) -> bool:
    """Whether its trim changed, or it began or ceased to share a stool."""
    return opening.trim in trims or (opening.mark in before) != (opening.mark in after)


def _compare(compared: Compared) -> ChangesOut:
    before, after = compared.houses
    write = length_writer(after.rounding.value())
    openings = [_opening_change(pair, compared.houses, write) for pair in compared.pairs]
    touched = sum(1 for _, later in compared.pairs if later is not None)
    return ChangesOut(
        from_revision=compared.earlier,
        to_revision=compared.later,
        house=differences(before, after),
        openings=openings,
        groups=_group_changes(compared, write),
        unchanged_openings=compared.standing - touched,
    )


def _opening_change(
    pair: tuple[Any | None, Any | None], houses: tuple[HouseIn, HouseIn], write: LengthWriter
) -> OpeningChange:
    sent = [None if row is None else read_opening_document(row.document) for row in pair]
    before, after = sent
    parts = [
        {} if one is None else opening_parts(house, one) for one, house in zip(sent, houses, strict=True)
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
        parts=part_changes(parts[0], parts[1], counts[0], counts[1], write),
    )


def _row(pair: tuple[Any | None, Any | None]) -> Any:
    """The later version, where it did not go."""
    return pair[0] if pair[1] is None else pair[1]


def _became(
    pair: tuple[Any | None, Any | None], sent: list[OpeningIn | None], houses: tuple[HouseIn, HouseIn]
) -> Became:
    before, after = pair
    if before is None:
        return Became.NEW
    if after is None:
        return Became.GONE
    if before is not after:
        return Became.CHANGED
    trims = [house.trim_specs[one.trim] for one, house in zip(sent, houses, strict=True) if one is not None]
    return Became.GROUP_CHANGED if trims[0] == trims[-1] else Became.TRIM_CHANGED


def _readings(before: OpeningIn | None, after: OpeningIn | None) -> list[FieldChange]:
    return [] if before is None or after is None else differences(before, after)


def _group_changes(compared: Compared, write: LengthWriter) -> list[GroupChange]:
    """The groups of which any shared piece is another."""
    before, after = (
        shared_parts(house, members) for house, members in zip(compared.houses, compared.members, strict=True)
    )
    found = []
    for mark in dict.fromkeys([*after, *before]):
        counts = int(mark in before), int(mark in after)
        parts = part_changes(before.get(mark, {}), after.get(mark, {}), *counts, write)
        became = {(0, 1): Became.NEW, (1, 0): Became.GONE}.get(counts, Became.CHANGED)
        if became is not Became.CHANGED or any(part.became is not PartBecame.UNCHANGED for part in parts):
            found.append(GroupChange(mark=mark, became=became, parts=parts))
    return found
