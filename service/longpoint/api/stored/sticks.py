"""/v1/schedules/{id}/sticks: one stick by its name, and who is about to cut it."""

from __future__ import annotations

from typing import Annotated

from litestar import delete, get, put
from litestar.params import JSONBody, PathParameter
from sqlalchemy.ext.asyncio import AsyncConnection

from longpoint.api.document.examples_schedule import CLAIM
from longpoint.api.document.links import STICK_LINKS
from longpoint.api.http.answer import Reply
from longpoint.api.http.conditional import ETAG, check_news, etag
from longpoint.api.http.problems import NotFound
from longpoint.api.http.problems_stored import StickChanged, StickClaimed, StickCut
from longpoint.api.http.request import AnyRequest
from longpoint.api.stored.changing import changing
from longpoint.api.stored.held_plan import held_plan
from longpoint.api.stored.planned import marks_of, plan_first, plan_tag, read_planned
from longpoint.api.stored.sticks_cut import claimed, never_had, otherwise_by_now
from longpoint.api.stored.storage import ScheduleId, by_name, clean, store_of, stored
from longpoint.api.stored.stored_house import load_house
from longpoint.lengths import length_writer
from longpoint.schedules import claims, plans
from longpoint.schedules.basics import digest_of
from longpoint.schedules.claims import Claim, claim_of
from longpoint.schedules.house_rows import StoredHouse, cut_sticks_of
from longpoint.schedules.kept import read_stick
from longpoint.schedules.making import KeptPlan
from longpoint.schedules.plan_answers import StickDetail
from longpoint.schedules.rows import StickRow
from longpoint.texts import Sentence, say
from longpoint.values import Fault

_TAG = "Plans"
StickCalled = Annotated[str, PathParameter(max_length=12, description="The name of a stick: C7.")]


@get(
    "/v1/schedules/{schedule_id:str}/sticks/{name:str}",
    **stored("get_stick", summary="Read a stick", tag=_TAG, headers=ETAG, links=STICK_LINKS),
)
async def get_stick(request: AnyRequest, schedule_id: ScheduleId, name: StickCalled) -> Reply[StickDetail]:
    """A stick by the name on any sheet, whatever plan that was printed from: how it is laid out, and who claims it."""
    house, plan = await read_planned(request, schedule_id, lambda *_: None)
    async with store_of(request).reading() as connection:
        row = await _find(connection, house.schedule.id, name)
    claim = claim_of(row)
    note = None if claim is None else claim.note(row.name, None)
    # A claim ends without a write: that it is over is a part of what is answered.
    said = digest_of(row.claimed_by, row.claimed_until, note is None)
    tag = f"{plan_tag(house.schedule, plan.row)}-{said[:12]}"
    check_news(request, tag)
    reply = _reply(house, plan, row, () if note is None else (note,))
    reply.headers["etag"] = etag(request, tag)
    return reply


@put(
    "/v1/schedules/{schedule_id:str}/sticks/{name:str}/claim",
    **stored(
        "claim_stick",
        summary="Claim a stick to cut it",
        tag=_TAG,
        access="write",
        examples=CLAIM,
        problems=(403, 409),
    ),
)
async def claim_stick(
    request: AnyRequest, schedule_id: ScheduleId, name: StickCalled, data: JSONBody[Claim]
) -> Reply[StickDetail]:
    """So that two people do not cut one stick: until the claim is over nobody else can claim it or record it as cut.

    Claimed again by the same name it holds from now on. One that is over can be taken over; `notes` says whose it was.
    """
    await plan_first(request, schedule_id)
    async with changing(request, schedule_id) as held:
        plan = await held_plan(held)
        row = await _find(held.connection, held.schedule.id, name)
        house = await load_house(held.connection, held.schedule)
        before = claim_of(row)
        _refuse_gone(house, plan, row)
        if before is not None and before.holds_off(data.by):
            raise StickClaimed(
                claimed(before, row, data.by),
                [
                    Fault.at(
                        ("by",),
                        "claimed",
                        say("problem", "stick.only-claimer", by=before.by, until=before.until),
                    )
                ],
            )
        note = None if before is None else before.note(row.name, data.by)
        row = await claims.claim(held.connection, row, data)
        return _reply(house, plan, row, () if note is None else (note,))


@delete(
    "/v1/schedules/{schedule_id:str}/sticks/{name:str}/claim",
    **stored(
        "give_up_claim",
        summary="Give up a claim",
        tag=_TAG,
        access="write",
        problems=(403, 409),
    ),
)
async def give_up_claim(
    request: AnyRequest,
    schedule_id: ScheduleId,
    name: StickCalled,
    by: Annotated[
        str | None, by_name("Only where the claim is this one's; whoever's it is when left out.")
    ] = None,
) -> Reply[StickDetail]:
    """Nobody has it claimed from now on; where nobody had, nothing changes."""
    await plan_first(request, schedule_id)
    async with changing(request, schedule_id) as held:
        plan = await held_plan(held)
        row = await _find(held.connection, held.schedule.id, name)
        house = await load_house(held.connection, held.schedule)
        before = claim_of(row)
        if before is not None and by is not None and before.holds_off(by):
            raise StickClaimed(claimed(before, row, by))
        return _reply(house, plan, await claims.release(held.connection, row), ())


def _refuse_gone(house: StoredHouse, plan: KeptPlan, row: StickRow) -> None:
    """Refuse a stick that nobody is to cut any more."""
    if row.name in cut_sticks_of(house.pieces.values()):
        raise StickCut(say("problem", "stick.was-cut", stick=row.name))
    if row.name not in plan.sticks:
        detail = otherwise_by_now(row.name, read_stick(row.document), plan, marks_of(house))
        raise StickChanged(detail, [Fault(code="stick-changed", detail=detail)])


async def _find(connection: AsyncConnection, schedule_id: str, name: str) -> StickRow:
    found = await plans.sticks(connection, schedule_id, [clean(name)])
    if clean(name) not in found:
        raise NotFound(never_had([name]))
    return found[clean(name)]


def _reply(
    house: StoredHouse, plan: KeptPlan, row: StickRow, notes: tuple[Sentence, ...]
) -> Reply[StickDetail]:
    gone = row.name not in plan.sticks
    stick = StickDetail.of_row(
        row, marks_of(house), cut_sticks_of(house.pieces.values()), changed=gone, notes=notes
    )
    return Reply(stick, length_writer(house.sited.house.rounding), status_code=200)
