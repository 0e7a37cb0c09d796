"""/v1/schedules/{id}/release and /hold: which openings are bought and cut for now."""

from __future__ import annotations

from litestar import post
from litestar.params import JSONBody
from msgspec.structs import replace

from longpoint.api.document.examples_schedule import RELEASE
from longpoint.api.http.answer import Reply
from longpoint.api.http.request import AnyRequest
from longpoint.api.stored.changing import HeldSchedule, changing_once
from longpoint.api.stored.storage import ScheduleId, Why, stored
from longpoint.schedules import items
from longpoint.schedules.kept import opening_change, read_opening
from longpoint.schedules.made import Released
from longpoint.schedules.rows import OpeningRow
from longpoint.schedules.sent import Chosen
from longpoint.texts import say
from longpoint.values import Faults, nearest

_TAG = "Openings"
_PROBLEMS = (403, 409, 412)


@post(
    "/v1/schedules/{schedule_id:str}/release",
    **stored(
        "release_openings",
        summary="Release openings for buying and cutting",
        tag=_TAG,
        access="write",
        examples=RELEASE,
        problems=_PROBLEMS,
    ),
)
async def release_openings(
    request: AnyRequest, schedule_id: ScheduleId, data: JSONBody[Chosen], why: Why = ""
) -> Reply[Released]:
    """Sticks are bought and cut for these openings from now on; one that is only estimated waits until it is measured.

    What is held already stays held, and what is released stays so. Nothing is changed when all of it is so already.
    """
    return await changing_once(
        request, data, schedule_id, lambda held: _set(held, data, held_back=False), why
    )


@post(
    "/v1/schedules/{schedule_id:str}/hold",
    **stored(
        "hold_openings",
        summary="Hold openings back",
        tag=_TAG,
        access="write",
        examples=RELEASE,
        problems=_PROBLEMS,
    ),
)
async def hold_openings(
    request: AnyRequest, schedule_id: ScheduleId, data: JSONBody[Chosen], why: Why = ""
) -> Reply[Released]:
    """Nothing is bought or cut for these openings until they are released; they still count in the cost."""
    return await changing_once(request, data, schedule_id, lambda held: _set(held, data, held_back=True), why)


async def _set(held: HeldSchedule, data: Chosen, *, held_back: bool) -> Reply[Released]:
    held.check_match()
    rows = await items.list_openings(held.connection, held.schedule.id)
    unit = held.house.unit
    openings = [(row, read_opening(row.document, unit)) for row in _chosen(rows, data)]
    changed = [(row, one) for row, one in openings if one.held is not held_back]
    number = held.schedule.revision
    if changed:
        changes = [opening_change(row.id, row.position, replace(one, held=held_back)) for row, one in changed]
        number = (await held.write("hold" if held_back else "release", *changes)).number
    waiting = tuple(one.mark for _, one in openings if not held_back and not replace(one, held=False).to_cut)
    return Reply(Released(number, tuple(one.mark for _, one in changed), waiting))


def _chosen(rows: list[OpeningRow], data: Chosen) -> list[OpeningRow]:
    """The openings that are meant.

    Raises:
        Refusal: when one is named that there is not, or none.
    """
    faults = Faults()
    marks, rooms = {row.mark for row in rows}, {row.room for row in rows}
    for name, there, given in (("openings", marks, data.openings), ("rooms", rooms, data.rooms)):
        for index, one in enumerate(given):
            if one not in there:
                detail = say("problem", "release.unknown", what=name[:-1], name=one) + nearest(one, there)
                faults.add((name, index), f"unknown-{name[:-1]}", detail)
    if not (data.openings or data.rooms or data.all):
        faults.add((), "empty", say("problem", "release.say-which"))
    faults.raise_any()
    return [row for row in rows if data.all or row.mark in data.openings or row.room in data.rooms]
