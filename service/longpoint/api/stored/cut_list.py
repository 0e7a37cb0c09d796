"""/v1/schedules/{id}/cut-list: what is still to be cut of a stored house."""

from __future__ import annotations

from typing import Annotated

import msgspec
from litestar import get
from litestar.params import QueryParameter
from msgspec.structs import replace
from sqlalchemy.ext.asyncio import AsyncConnection

from longpoint.api.answers.sheet import wanted_by
from longpoint.api.http.answer import Encoded, Reply, encode
from longpoint.api.http.conditional import ETAG, check_news, etag, state_tag
from longpoint.api.http.request import AnyRequest
from longpoint.api.running.threads import apart
from longpoint.api.stored.groups import group_id
from longpoint.api.stored.recent import Recent
from longpoint.api.stored.storage import ScheduleId, find_schedule, store_of, stored
from longpoint.lengths import length_writer
from longpoint.schedules import items
from longpoint.schedules.answers import StoredPiece
from longpoint.schedules.kept import KeptPiece, read_house, read_length, read_opening, read_piece
from longpoint.schedules.left import PieceNeeded, StillToCut, WrongPiece
from longpoint.schedules.rows import PieceRow, ScheduleRow
from longpoint.schedules.states import PieceState
from longpoint.shop import Section, work
from longpoint.shop.answer import CutListAnswer, OpeningAnswer, cut_list_answer
from longpoint.shop.build import MOST_PIECES, CutList, HouseKey, build_openings
from longpoint.shop.house import House
from longpoint.shop.planning import Planning
from longpoint.shop.remaining import CutPiece, Need, Remaining, Slot, remaining


class StoredHouse(msgspec.Struct, frozen=True):
    """A schedule as it was at one moment, read from storage: everything a computed answer needs.

    Attributes:
        revision: The schedule's revision.
        digest: That revision's, which stands for all that is here.
        house: The house, its rack as remnants.
        opening_ids: The id of each of its openings, then of each group that has pieces of its own.
        offcut_ids: For each profile, the id of each of its remnants.
        pieces: The rows of the pieces that were cut, by id.
    """

    revision: int
    digest: str
    house: House
    opening_ids: list[str]
    offcut_ids: dict[str, list[str]]
    pieces: dict[str, PieceRow]


class WorkedOut(msgspec.Struct, frozen=True):
    """A stored house worked out: its cut list for what is left, and what is left."""

    cut_list: CutList
    remaining: Remaining


_recent: Recent[tuple[str, tuple[str, ...], str], bytes] = Recent(most=16, heaviest=MOST_PIECES)
_worked: Recent[str, WorkedOut] = Recent(most=4, heaviest=MOST_PIECES)


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
            description="Sections to work out, too; materials, hours and cost are the whole house's."
        ),
    ] = None,
) -> Reply[StillToCut]:
    """The cut list of what is not cut yet, from the stock at the yard and the rack.

    Pieces cut before that are not right any more are told, with what each can be cut again into and what must be cut
    from stock once more.
    """
    async with store_of(request).reading() as connection:
        schedule = await find_schedule(connection, request, schedule_id)
        tag = state_tag(schedule.revision, schedule.digest)
        check_news(request, tag)
        sections = tuple(sorted(set(include or ())))
        wanted = wanted_by(request)
        asked = schedule.digest, sections, wanted
        out = _recent.get(asked)
        house = None if out is not None else await load_house(connection, schedule)
    if out is None:
        assert house is not None
        done, write = await worked_out(house), length_writer(house.house.rounding)
        out = await apart(lambda: encode(still_to_cut(house, done, sections), wanted, write))
        _recent.put(asked, out, done.cut_list.pieces)
    return Encoded(out, wanted, {"etag": etag(request, tag)})


async def load_house(connection: AsyncConnection, schedule: ScheduleRow) -> StoredHouse:
    """Read all of a schedule that its computed answers need.

    Args:
        connection: A transaction.
        schedule: The schedule's row, read in that same transaction.
    """
    openings = await items.list_openings(connection, schedule.id)
    offcuts = await items.list_offcuts(connection, schedule.id)
    pieces = await items.list_pieces(connection, schedule.id)
    offcut_ids: dict[str, list[str]] = {}
    for row in offcuts:
        offcut_ids.setdefault(row.profile, []).append(row.id)
    kept = read_house(schedule.document)
    return StoredHouse(
        revision=schedule.revision,
        digest=schedule.digest,
        house=kept.whole(
            [read_opening(row.document, kept.unit) for row in openings],
            [read_length(row.document, kept.unit) for row in offcuts],
        ),
        opening_ids=[
            *(row.id for row in openings),
            *(group_id(group.mark) for group in kept.groups if group.shares),
        ],
        offcut_ids=offcut_ids,
        pieces={row.id: row for row in pieces},
    )


async def worked_out(house: StoredHouse) -> WorkedOut:
    """A stored house worked out, in a thread of its own; what was worked out lately is not done again.

    Raises:
        Refusal: as `work_out_stored` does.
    """
    done = _worked.get(house.digest)
    if done is None:
        done = await apart(lambda: work_out_stored(house))
        _worked.put(house.digest, done, done.cut_list.pieces)
    return done


def work_out_stored(stored: StoredHouse) -> WorkedOut:
    """A stored house worked out, only what is left to cut planned.

    Raises:
        Refusal: when the stock cannot give what is needed; paths are into the house.
    """
    house = stored.house
    openings = build_openings(house)
    there: list[CutPiece] = []
    spoiled: list[Slot] = []
    for id, row in stored.pieces.items():
        piece = read_piece(row.document)
        if piece.state is PieceState.SPOILED:
            spoiled.append((piece.opening_id, piece.part, piece.instance))
        else:
            there.append(cut_piece(id, piece))
    rest = remaining(openings, stored.opening_ids, house.rounding, there, spoiled)
    planning = Planning(house, searched=False, openings=openings, left=rest.left)
    return WorkedOut(planning.cut_list, rest)


def cut_piece(id: str, piece: KeptPiece) -> CutPiece:
    """A kept piece, as the shop reckons with it. A spare has no place, so it stands at instance 0 of its part."""
    instance = 0 if piece.state is PieceState.SPARE else piece.instance
    return CutPiece(id, (piece.opening_id, piece.part, instance), piece.shape, piece.rounding)


def still_to_cut(house: StoredHouse, done: WorkedOut, sections: tuple[Section, ...] = ()) -> StillToCut:
    """The whole answer."""
    cut_list, rest = done.cut_list, done.remaining
    whole = cut_list_answer(cut_list, work(cut_list, frozenset(sections), house.house.shop))
    marks = {id: one.built.opening.mark for id, one in zip(house.opening_ids, cut_list.openings, strict=True)}
    return StillToCut(
        revision=house.revision,
        needed=cut_list.pieces,
        right=len(rest.right),
        wrong=tuple(
            WrongPiece(
                piece=StoredPiece.of_row(house.pieces[wrong.piece.id]),
                needed=_needed(wrong.need, marks),
                recut_into=_needed(wrong.recut, marks),
            )
            for wrong in rest.wrong
        ),
        cut_again=tuple(place for need in rest.again if (place := _needed(need, marks))),
        cut_list=_only_left(whole, cut_list),
    )


def _only_left(whole: CutListAnswer, cut_list: CutList) -> CutListAnswer:
    """Without the parts, and the openings, of which nothing is left to cut."""
    left = cut_list.left or {}
    openings: list[OpeningAnswer] = []
    for index, answer in enumerate(whole.openings):
        counts = [len(left.get(HouseKey(index, part.key), ())) for part in answer.parts]
        parts = tuple(
            part if part.quantity == count else replace(part, quantity=count)
            for part, count in zip(answer.parts, counts, strict=True)
            if count
        )
        if parts:
            openings.append(replace(answer, parts=parts))
    return replace(whole, openings=tuple(openings))


def _needed(need: Need | None, marks: dict[str, str]) -> PieceNeeded | None:
    if need is None:
        return None
    id, part, instance = need.slot
    return PieceNeeded(marks[id], part, instance, need.shape.length)
