"""/v1/schedules/{id}/import and /export: whole houses in and out."""

from __future__ import annotations

import asyncio
from typing import Annotated, Any

import msgspec
from litestar import get, post
from litestar.params import JSONBody, QueryParameter
from sqlalchemy.ext.asyncio import AsyncConnection

from longpoint.api.document.examples_schedule import IMPORT
from longpoint.api.http.answer import Reply
from longpoint.api.http.conditional import ETAG, check_current, check_match, check_news, etag, state_tag
from longpoint.api.http.faults import Faults, InvalidRequest
from longpoint.api.http.negotiate import BOTH, CSV
from longpoint.api.http.problems import Fault
from longpoint.api.http.request import CSV_PLACES, AnyRequest
from longpoint.api.read.csv_openings import Places, at_row, read_csv, write_csv
from longpoint.api.stored.groups import members, naming, refuse_taken
from longpoint.api.stored.house import (
    check_house,
    read_house_document,
    read_offcut_document,
    read_opening_document,
    retold,
)
from longpoint.api.stored.openings import refuse_more
from longpoint.api.stored.retrying import once
from longpoint.api.stored.revisions import find_revision
from longpoint.api.stored.schedule_changes import opening_change
from longpoint.api.stored.storage import (
    ScheduleId,
    Why,
    author_of,
    find_schedule,
    hold_schedule,
    store_of,
    stored,
)
from longpoint.api.wire.cut_list import GroupIn
from longpoint.api.wire.opening import OpeningIn
from longpoint.api.wire.schedule import HouseIn, ScheduleIn
from longpoint.api.wire.transfer import Existing, ImportIn, ImportOut
from longpoint.schedules import history, houses, items
from longpoint.schedules.basics import new_id
from longpoint.schedules.values import Change, Kind

_TAG = "In and out"


@post(
    "/v1/schedules/{schedule_id:str}/import",
    request_max_body_size=8 * 1024 * 1024,
    **stored(
        "import_openings",
        summary="Import openings",
        tag=_TAG,
        access="write",
        examples=IMPORT,
        problems=(403, 409, 412, 428),
        headers=ETAG,
        reads_csv=read_csv,
        needs_match=False,
    ),
)
async def import_openings(
    request: AnyRequest,
    schedule_id: ScheduleId,
    data: JSONBody[ImportIn],
    existing: Annotated[
        Existing,
        QueryParameter(
            description="What to do about marks that are there already: refuse them all (when left out), update them, "
            "or replace the schedule's openings by these. If-Match is needed unless they are refused."
        ),
    ] = "refuse",
    dry_run: Annotated[bool, QueryParameter(description="Only try it: keep nothing.")] = False,
    why: Why = "",
) -> Reply[ImportOut]:
    """All of it is kept, as one revision, or when anything is wrong none.

    Faults are told by row and column in a CSV, all of one kind at once: first cells that are no value of their column,
    then lengths and trim specs, then what cannot be built or is there already.

    CSV has a column for each field, named by its words: "mark", "trim", "jamb width", "leg height", "jamb depth".
    Comma, semicolon or tab; a cell of several values has | between them. An export has the columns that are in use.
    """

    places: Places | None = request.scope["state"].get(CSV_PLACES)

    async def work(connection: AsyncConnection) -> Reply[ImportOut]:
        schedule = await hold_schedule(connection, request, schedule_id)
        tag = state_tag(schedule.revision, schedule.digest)
        (check_match if existing == "refuse" else check_current)(request, tag)
        house = read_house_document(schedule.document)
        groups = house.groups if existing == "replace" else naming(house, _marks(data))
        kept = [] if existing == "replace" else await members(connection, schedule, groups, _marks(data))
        await asyncio.to_thread(_check, house, data, places, groups, kept)
        changes, out = await _changes(connection, schedule, house, data, existing, places)
        refuse_more(schedule.opening_count + len(out.added) - len(out.removed))
        if dry_run:
            return Reply(
                msgspec.structs.replace(out, dry_run=True),
                status_code=200,
                headers={"etag": etag(request, tag)},
            )
        if changes:
            made = await houses.write(connection, schedule, author_of(request, why), "import", changes)
            out = msgspec.structs.replace(out, revision=made.number)
            tag = state_tag(made.number, made.digest)
        return Reply(out, status_code=200, headers={"etag": etag(request, tag)})

    return await once(request, data, work)


@get(
    "/v1/schedules/{schedule_id:str}/export",
    **stored("export_schedule", summary="Export a schedule", tag=_TAG, headers=ETAG, offers=(*BOTH, CSV)),
)
async def export_schedule(
    request: AnyRequest,
    schedule_id: ScheduleId,
    revision: Annotated[
        int | None,
        QueryParameter(ge=1, le=2_000_000_000, description="As of this revision; the latest when left out."),
    ] = None,
) -> Reply[ScheduleIn]:
    """The whole house as it was sent: a body that starts a schedule just like it. As CSV, its openings alone."""
    async with store_of(request).reading() as connection:
        schedule = await find_schedule(connection, request, schedule_id)
        row = await find_revision(connection, schedule, revision or schedule.revision)
        tag = state_tag(row.number, row.digest)
        check_news(request, tag)
        kinds = [Kind.SCHEDULE, Kind.OPENING, Kind.OFFCUT]
        state = await history.state_at(connection, schedule.id, row.number, kinds)
    documents: dict[str, list[str]] = {kind: [] for kind in kinds}
    for version in state:
        documents[version.kind].append(version.document)
    openings = [read_opening_document(text) for text in documents[Kind.OPENING]]
    headers = {"etag": etag(request, tag)}
    if getattr(request, "wanted", "") == CSV:
        reply: Reply[Any] = Reply(write_csv(openings), status_code=200, headers={**headers, "vary": "accept"})
        reply.media_type = f"{CSV}; charset=utf-8; header=present"
        return reply
    house = read_house_document(documents[Kind.SCHEDULE][0])
    whole = ScheduleIn(
        **{name: getattr(house, name) for name in HouseIn.__struct_fields__},
        openings=openings,
        rack=[read_offcut_document(text) for text in documents[Kind.OFFCUT]],
    )
    return Reply(whole, status_code=200, headers=headers)


def _marks(data: ImportIn) -> list[str]:
    return [opening.mark for opening in data.openings]


def _check(
    house: HouseIn, data: ImportIn, places: Places | None, groups: list[GroupIn], kept: list[OpeningIn]
) -> None:
    """Make sure every opening, and every group it is in, can be read and built; those from a file are told by row
    and column.

    Args:
        house: What is said of it as a whole.
        data: What comes in.
        places: Where it stood in the file, when it came as one.
        groups: Those that name any of them.
        kept: What else these groups name.
    """
    try:
        refuse_taken(
            house, [(("openings", number, "mark"), mark) for number, mark in enumerate(_marks(data))]
        )
        try:
            check_house(msgspec.structs.replace(house, stock=[]), [*data.openings, *kept], groups=groups)
        except InvalidRequest as refusal:
            raise retold(refusal, lambda fault: _of_group(fault, len(data.openings), groups)) from None
    except InvalidRequest as refusal:
        if places is None:
            raise
        raise InvalidRequest(refusal.detail, [at_row(fault, places) for fault in refusal.errors]) from None


def _of_group(fault: Fault, count: int, groups: list[GroupIn]) -> Fault:
    """A fault of a group, or of an opening that is kept, told of what comes in as a whole."""
    _, *steps = str(fault.pointer).split("/")
    if steps[:1] == ["groups"]:
        named = f"The group {groups[int(steps[1])].mark!r}"
    elif steps[:1] == ["openings"] and len(steps) > 1 and int(steps[1]) >= count:
        named = "A group of openings that are kept"
    else:
        return fault
    detail = f"{named} cannot be made with these: {fault.detail}"
    return Fault(code=fault.code, detail=detail, pointer="/openings")


async def _changes(
    connection: AsyncConnection,
    schedule: Any,
    house: HouseIn,
    data: ImportIn,
    existing: Existing,
    places: Places | None,
) -> tuple[list[Change], ImportOut]:
    marks = _marks(data)
    there = await items.openings_marked(connection, schedule.id, marks)
    if existing == "refuse":
        _refuse_marks(data, there, places)
    changes: list[Change] = []
    added, updated, unchanged, position = [], [], 0, schedule.next_position
    for opening in data.openings:
        row = there.get(opening.mark)
        if row is None:
            changes.append(opening_change(new_id(), position, opening, house.unit))
            added.append(opening.mark)
            position += 1
            continue
        change = opening_change(row.id, row.position, opening, house.unit)
        if change.digest == row.digest:
            unchanged += 1
        else:
            changes.append(change)
            updated.append(opening.mark)
    removed = []
    if existing == "replace":
        kept = set(marks)
        gone = [row for row in await items.list_openings(connection, schedule.id) if row.mark not in kept]
        removed = [row.mark for row in gone]
        changes += [Change(Kind.OPENING, row.id, None) for row in gone]
    out = ImportOut(
        dry_run=False,
        revision=schedule.revision,
        added=added,
        updated=updated,
        unchanged=unchanged,
        removed=removed,
    )
    return changes, out


def _refuse_marks(data: ImportIn, there: dict[str, Any], places: Places | None) -> None:
    faults = Faults()
    for index, opening in enumerate(data.openings):
        if opening.mark in there:
            detail = f"The schedule has an opening {opening.mark!r} already; import with existing=update to change it."
            faults.add(("openings", index, "mark"), "duplicate-mark", detail)
    if places is not None:
        faults.found = [at_row(fault, places) for fault in faults.found]
    faults.raise_any()
