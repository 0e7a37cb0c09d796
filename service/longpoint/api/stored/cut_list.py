"""/v1/schedules/{id}/cut-list: what is still to be cut of a stored house."""

from __future__ import annotations

from typing import Annotated, Any

from litestar import get
from litestar.params import QueryParameter
from msgspec.structs import replace

from longpoint.api.answers.kept import ready
from longpoint.api.answers.sheet import wanted_by
from longpoint.api.http.answer import File, Reply, encode
from longpoint.api.http.conditional import ETAG, check_news, etag
from longpoint.api.http.request import AnyRequest
from longpoint.api.running.threads import apart
from longpoint.api.stored.pieces import OpeningsAsked, RoomsAsked, chosen_of, work_on
from longpoint.api.stored.plan_making import SECONDS, is_searched
from longpoint.api.stored.planned import (
    PlannedHouse,
    marks_of,
    plan_tag,
    read_planned,
    search_on,
    with_paid,
    work_out,
)
from longpoint.api.stored.recent import Recent
from longpoint.api.stored.storage import ScheduleId, stored
from longpoint.lengths import length_writer
from longpoint.schedules.answers import StoredPiece
from longpoint.schedules.left import PieceNeeded, StillToCut, WrongPiece
from longpoint.schedules.plan_answers import PlanLine
from longpoint.schedules.rows import PlanRow, ScheduleRow
from longpoint.shop import Section
from longpoint.shop.answer import CutListAnswer, OpeningAnswer, cut_list_answer
from longpoint.shop.build import CutList, HouseKey
from longpoint.shop.remaining import Need
from longpoint.shop.too_much import MOST_PIECES

_Asked = tuple[str, bool, tuple[str, ...], tuple[str, ...], tuple[str, ...], str]
_recent: Recent[_Asked, bytes] = Recent(most=16, heaviest=MOST_PIECES)


@get(
    "/v1/schedules/{schedule_id:str}/cut-list",
    **stored(
        "compute_schedule_cut_list",
        summary="Work out what is still to be cut",
        tag="Work",
        headers=ETAG,
    ),
)
async def compute_schedule_cut_list(
    request: AnyRequest,
    schedule_id: ScheduleId,
    include: Annotated[
        list[Section] | None,
        QueryParameter(
            description="Sections to work out, too; materials, hours and cost are the whole house's, and what was "
            "paid for lengths on hand and for sticks that are cut is in the cost."
        ),
    ] = None,
    room: RoomsAsked = None,
    opening: OpeningsAsked = None,
) -> Reply[StillToCut]:
    """The cut list of what is not cut yet, from the plan that stands.

    Where there is no plan yet, the first that is found is kept and answered, and a search for a cheaper one goes on;
    `plan` says how good it is. Pieces cut before that are not right any more are reported, with what each can be cut
    again into and what must be cut from stock once more. Asked for some rooms or openings, `cut_list` is of these:
    their pieces, and the sticks that hold any of them with all that is on those; so are `held` and `cost_later`, in
    which a stick that holds pieces of others besides counts whole.
    """
    sections = tuple(sorted(set(include or ())))
    wanted = wanted_by(request)

    def asked(schedule: ScheduleRow, plan: PlanRow) -> _Asked:
        tag = plan_tag(schedule, plan)
        return (
            tag,
            is_searched(plan, SECONDS),
            sections,
            tuple(room or ()),
            tuple(opening or ()),
            wanted,
        )

    def reply(out: bytes, schedule: ScheduleRow, plan: PlanRow) -> Reply[Any]:
        search_on(request, schedule, plan)
        tag = etag(request, plan_tag(schedule, plan))
        return File(out, wanted, {"etag": tag})

    def look(schedule: ScheduleRow, plan: PlanRow) -> None:
        check_news(request, plan_tag(schedule, plan))
        out = _recent.get(asked(schedule, plan))
        if out is not None:
            raise _Known(reply(out, schedule, plan))

    try:
        house, plan = await read_planned(request, schedule_id, look)
    except _Known as found:
        return found.reply
    done = await work_out(house, plan)
    if Section.COST in sections:
        done = await with_paid(request, done)
    marks = chosen_of(done.cut_list.openings, room, opening)
    write = length_writer(done.cut_list.house.rounding)

    def encoded() -> bytes:
        answer = still_to_cut(done, sections, marks)
        return encode(replace(answer, cut_list=ready(answer.cut_list, wanted, write)), wanted, write)

    out = await apart(encoded)
    _recent.put(asked(house.schedule, plan.row), out, done.cut_list.pieces)
    return reply(out, house.schedule, plan.row)


class _Known(Exception):  # noqa: N818 - no error: it ends a reading that would find nothing new
    """The answer was made lately."""

    def __init__(self, reply: Reply[Any]) -> None:
        super().__init__()
        self.reply = reply


def still_to_cut(
    done: PlannedHouse, sections: tuple[Section, ...] = (), marks: frozenset[str] | None = None
) -> StillToCut:
    """The whole answer; `marks` names the openings it is of, None for all."""
    cut_list, found = work_on(done.cut_list, frozenset(sections), marks)
    rest, house = done.left.remaining, done.house
    whole = cut_list_answer(cut_list, found)
    called = marks_of(house)
    return StillToCut(
        revision=house.schedule.revision,
        plan=PlanLine.of(done.plan.row, done.plan.profiles, stands=True),
        searching=done.searching,
        needed=done.cut_list.pieces,
        right=len(rest.right),
        wrong=tuple(
            WrongPiece(
                piece=StoredPiece.of_row(house.pieces[wrong.piece.id]),
                needed=_needed(wrong.need, called),
                recut_into=_needed(wrong.recut, called),
            )
            for wrong in rest.wrong
        ),
        cut_again=tuple(place for need in rest.again if (place := _needed(need, called))),
        cut_list=_only_left(whole, cut_list),
    )


def _only_left(whole: CutListAnswer, cut_list: CutList) -> CutListAnswer:
    """Without the pieces, and the openings, of which nothing is left to cut."""
    left = cut_list.left or {}
    openings: list[OpeningAnswer] = []
    for index, answer in enumerate(whole.openings):
        counts = [len(left.get(HouseKey(index, piece.key), ())) for piece in answer.pieces]
        pieces = tuple(
            piece if piece.quantity == count else replace(piece, quantity=count)
            for piece, count in zip(answer.pieces, counts, strict=True)
            if count
        )
        if pieces:
            numbers = {str(piece.key): (answer.numbers or {})[str(piece.key)] for piece in pieces}
            openings.append(replace(answer, pieces=pieces, numbers=numbers))
    return replace(whole, openings=tuple(openings))


def _needed(need: Need | None, marks: dict[str, str]) -> PieceNeeded | None:
    if need is None:
        return None
    id, piece, instance = need.slot
    return PieceNeeded(marks[id], piece, instance, need.shape.length)
