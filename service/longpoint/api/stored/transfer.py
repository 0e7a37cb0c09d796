"""/v1/schedules/{id}/import and /export: whole houses in and out."""

from __future__ import annotations

import asyncio
from collections.abc import Mapping, Sequence
from typing import Annotated

from litestar import get, post
from litestar.params import JSONBody, QueryParameter
from msgspec.structs import replace

from longpoint.api.document.examples_schedule import IMPORT
from longpoint.api.http.answer import File, Reply
from longpoint.api.http.conditional import ETAG, check_news, etag, state_tag
from longpoint.api.http.negotiate import BOTH, CSV
from longpoint.api.http.request import CSV_PLACES, AnyRequest
from longpoint.api.stored.changing import HeldSchedule, changing_once
from longpoint.api.stored.csv_openings import Places, at_row, read_csv, write_csv
from longpoint.api.stored.groups import members, naming, refuse_taken
from longpoint.api.stored.house import check_house, gathering, marks_of, replacing, without_stock
from longpoint.api.stored.openings import refuse_more
from longpoint.api.stored.revisions import find_revision
from longpoint.api.stored.storage import ScheduleId, Why, find_schedule, store_of, stored
from longpoint.schedules import history, items
from longpoint.schedules.basics import new_id
from longpoint.schedules.kept import (
    KeptHouse,
    NewSchedule,
    opening_change,
    read_house,
    read_length,
    read_opening,
)
from longpoint.schedules.made import Imported
from longpoint.schedules.rows import OpeningRow
from longpoint.schedules.sent import Existing, Openings
from longpoint.schedules.values import Change, ItemKind
from longpoint.shop.house import HouseGroup, HouseOpening
from longpoint.texts import say
from longpoint.values import Fault, Faults

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
    data: JSONBody[Openings],
    existing: Annotated[
        Existing,
        QueryParameter(
            description="What to do about marks that are there already: refuse them all (when left out), update them, "
            "or replace the schedule's openings by these. If-Match is needed unless they are refused."
        ),
    ] = "refuse",
    dry_run: Annotated[bool, QueryParameter(description="Only try it: keep nothing.")] = False,
    why: Why = "",
) -> Reply[Imported]:
    """All of it is kept, as one revision, or when anything is wrong none.

    Faults are reported by row and column in a CSV, all of one kind at once: first cells that are no value of their
    column, then lengths and trim specs, then what cannot be built or is there already.

    CSV has a column for each field, named by its words: "mark", "trim", "jamb width", "jamb height", "jamb depth".
    Comma, semicolon or tab; a cell of several values has | between them. An export has the columns that are in use.
    """

    async def work(held: HeldSchedule) -> Reply[Imported]:
        (held.check_match if existing == "refuse" else held.check_current)()
        house, sent = held.house, await request.under(held.house.unit, data)
        places: Places | None = request.scope["state"].get(CSV_PLACES)
        marks = marks_of(sent.openings)
        groups: Sequence[HouseGroup] = house.groups if existing == "replace" else naming(house, marks)
        kept = [] if existing == "replace" else await members(held.connection, held.schedule, groups, marks)
        faults = Faults()
        with gathering(faults):
            await asyncio.to_thread(_check, house, sent, places, groups, kept, build=not request.misread)
        with gathering(faults):
            changes, answer = await _changes(held, sent, existing, places)
        faults.raise_any()
        refuse_more(held.schedule.opening_count + len(answer.added) - len(answer.removed))
        held.refuse_misread()
        if dry_run:
            return Reply(replace(answer, dry_run=True), headers=held.headers(held.schedule))
        if not changes:
            return Reply(answer, headers=held.headers(held.schedule))
        made = await held.write("import", *changes)
        return Reply(replace(answer, revision=made.number), headers=held.headers(made))

    return await changing_once(request, data, schedule_id, work, why)


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
) -> Reply[NewSchedule]:
    """The whole house as it stands, with its lengths on hand: a body that starts a schedule just like it.

    Plans, cut sticks and claims are not in it: the new schedule is planned for itself, under stick names of its own. A
    backup of the database has them. As CSV, the openings alone.
    """
    async with store_of(request).reading() as connection:
        schedule = await find_schedule(connection, request, schedule_id)
        row = await find_revision(connection, schedule, revision or schedule.revision)
        tag = state_tag(row.number, row.digest)
        check_news(request, tag)
        kinds = [ItemKind.SCHEDULE, ItemKind.OPENING, ItemKind.LENGTH]
        state = await history.state_at(connection, schedule.id, row.number, kinds)
    documents: dict[str, list[str]] = {kind: [] for kind in kinds}
    for version in state:
        documents[version.kind].append(version.stands)
    house = read_house(documents[ItemKind.SCHEDULE][0])
    openings = [read_opening(text, house.unit) for text in documents[ItemKind.OPENING]]
    headers = {"etag": etag(request, tag)}
    if getattr(request, "wanted", "") == CSV:
        return File(write_csv(openings).encode(), f"{CSV}; charset=utf-8; header=present", headers)
    lengths = [read_length(text, house.unit) for text in documents[ItemKind.LENGTH]]
    return Reply(NewSchedule.of(house, openings, lengths), status_code=200, headers=headers)


def _check(
    house: KeptHouse,
    data: Openings,
    places: Places | None,
    groups: Sequence[HouseGroup],
    kept: Sequence[HouseOpening],
    *,
    build: bool,
) -> None:
    """Make sure every opening, and every group it is in, can be built; those of a file are reported by row and column.

    Args:
        house: What is said of it as a whole.
        data: What comes in.
        places: Where it stood in the file, when it came as one.
        groups: Those that name any of them.
        kept: What else these groups name.
        build: As of `check_house`.
    """

    def check() -> None:
        marks = enumerate(marks_of(data.openings))
        faults = Faults()
        with gathering(faults):
            refuse_taken(house, [(("openings", number, "mark"), mark) for number, mark in marks])
        with gathering(faults):
            check_house(
                without_stock(house), [*data.openings, *kept], groups=groups, build=build and not faults
            )
        faults.raise_any()

    def placed(fault: Fault) -> Fault:
        fault = _of_group(fault, len(data.openings), groups)
        return fault if places is None else at_row(fault, places)

    replacing(check, placed)


def _of_group(fault: Fault, count: int, groups: Sequence[HouseGroup]) -> Fault:
    """A fault of a group, or of an opening that is kept, placed at what comes in as a whole."""
    first, *rest = fault.path or ("",)
    if first == "groups":
        detail = say("problem", "import.group", group=groups[int(rest[0])].mark, why=fault.detail)
    elif first == "openings" and rest and int(rest[0]) >= count:
        detail = say("problem", "import.kept-group", why=fault.detail)
    else:
        return fault
    return Fault.at(("openings",), fault.code, detail)


async def _changes(
    held: HeldSchedule, data: Openings, existing: Existing, places: Places | None
) -> tuple[list[Change], Imported]:
    schedule, marks = held.schedule, marks_of(data.openings)
    there = await items.openings_marked(held.connection, schedule.id, marks)
    if existing == "refuse":
        _refuse_marks(data, there, places)
    changes: list[Change] = []
    added, updated, unchanged, position = [], [], 0, schedule.next_position
    for opening in data.openings:
        row = there.get(opening.mark)
        if row is None:
            changes.append(opening_change(new_id(), position, opening))
            added.append(opening.mark)
            position += 1
            continue
        change = opening_change(row.id, row.position, opening)
        if change.digest == row.digest:
            unchanged += 1
        else:
            changes.append(change)
            updated.append(opening.mark)
    removed = []
    if existing == "replace":
        kept = set(marks)
        rows = await items.list_openings(held.connection, schedule.id)
        gone = [row for row in rows if row.mark not in kept]
        removed = [row.mark for row in gone]
        changes += [Change(ItemKind.OPENING, row.id, None) for row in gone]
    answer = Imported(
        dry_run=False,
        revision=schedule.revision,
        added=tuple(added),
        updated=tuple(updated),
        unchanged=unchanged,
        removed=tuple(removed),
    )
    return changes, answer


def _refuse_marks(data: Openings, there: Mapping[str, OpeningRow], places: Places | None) -> None:
    faults = Faults()
    for index, opening in enumerate(data.openings):
        if opening.mark in there:
            detail = say("problem", "schedule.mark-there", mark=opening.mark)
            fault = Fault.at(("openings", index, "mark"), "duplicate-mark", detail)
            faults.note(fault if places is None else at_row(fault, places))
    faults.raise_any()
