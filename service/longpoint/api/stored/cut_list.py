"""/v1/schedules/{id}/cut-list: what is still to be cut of a stored house."""

from __future__ import annotations

from typing import Annotated, Any

import msgspec
from litestar import get
from litestar.params import QueryParameter
from sqlalchemy.ext.asyncio import AsyncConnection

from longpoint.api.computed.cut_list_work import built_openings, planned
from longpoint.api.http.answer import Reply, in_pieces
from longpoint.api.http.conditional import ETAG, check_news, etag, state_tag
from longpoint.api.http.request import AnyRequest
from longpoint.api.read.house import read_job
from longpoint.api.stored.groups import group_id, shares
from longpoint.api.stored.house import (
    cut_list_request,
    read_house_document,
    read_offcut_document,
    read_opening_document,
)
from longpoint.api.stored.piece_documents import PieceDocument, cut_piece, piece_out, read_piece_document
from longpoint.api.stored.recent import Recent
from longpoint.api.stored.storage import ScheduleId, find_schedule, store_of, stored
from longpoint.api.wire.cut_list import CutListOut, CutListRequest, OpeningOut
from longpoint.api.wire.lengths import LengthWriter, length_writer
from longpoint.api.wire.schedule_work import PieceState, Place, ScheduleCutListOut, WrongPiece
from longpoint.api.write.cut_list import cut_list_out
from longpoint.api.write.sheet import apart, wanted_by
from longpoint.schedules import items
from longpoint.shop import Section, ShopSettings, work
from longpoint.shop.house import MOST_PIECES, CutList, cutting_jobs, piece_key
from longpoint.shop.remaining import CutPiece, Need, Remaining, remaining


class StoredHouse(msgspec.Struct, frozen=True):
    """A schedule as it was at one moment, read from storage: everything a computed answer needs.

    Attributes:
        revision: The schedule's revision.
        digest: That revision's, which stands for all that is here.
        request: The cut-list request that describes it, its rack as remnants.
        opening_ids: The id of each of the request's openings, then of each group that has pieces of its own.
        offcut_ids: For each profile, the id of each of its remnants.
        pieces: The pieces that were cut, by id, with the revision that last changed each.
    """

    revision: int
    digest: str
    request: CutListRequest
    opening_ids: list[str]
    offcut_ids: dict[str, list[str]]
    pieces: dict[str, tuple[int, PieceDocument]]


class WorkedOut(msgspec.Struct, frozen=True):
    """A stored house worked out: its cut list for what is left, what is left, and how its shop works."""

    cut_list: CutList
    remaining: Remaining
    settings: ShopSettings


_recent: Recent[tuple[str, tuple[str, ...], str], ScheduleCutListOut] = Recent(most=16, heaviest=MOST_PIECES)
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
) -> Reply[ScheduleCutListOut]:
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
    if out is None and house is not None:
        done = await worked_out(house)
        out = await apart(lambda: in_pieces(schedule_cut_list_out(house, done, sections), wanted))
        _recent.put(asked, out, out.needed)
    return Reply(out, status_code=200, headers={"etag": etag(request, tag)})  # type: ignore[arg-type]


async def load_house(connection: AsyncConnection, schedule: Any) -> StoredHouse:
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
    house = read_house_document(schedule.document)
    return StoredHouse(
        revision=schedule.revision,
        digest=schedule.digest,
        request=cut_list_request(
            house,
            [read_opening_document(row.document) for row in openings],
            [read_offcut_document(row.document) for row in offcuts],
            house.groups,
        ),
        opening_ids=[
            *(row.id for row in openings),
            *(group_id(group.mark) for group in house.groups if shares(group)),
        ],
        offcut_ids=offcut_ids,
        pieces={row.id: (row.revision, read_piece_document(row.document)) for row in pieces},
    )


async def worked_out(house: StoredHouse) -> WorkedOut:
    """A stored house worked out, in a thread of its own; what was worked out lately is not done again.

    Raises:
        InvalidRequest: as `work_out_stored` does.
    """
    done = _worked.get(house.digest)
    if done is None:
        done = await apart(lambda: work_out_stored(house))
        _worked.put(house.digest, done, done.cut_list.pieces)
    return done


def work_out_stored(house: StoredHouse) -> WorkedOut:
    """A stored house worked out, only what is left to cut planned.

    Raises:
        InvalidRequest: when the stock cannot give what is needed; pointers are into the cut-list request.
    """
    read, settings = read_job(house.request)
    openings = built_openings(house.request, read)
    there, spoiled = [], []
    for id, (_, document) in house.pieces.items():
        if document.state is PieceState.SPOILED:
            spoiled.append((document.opening_id, document.part, document.instance))
        else:
            there.append(cut_piece(id, document))
    rest = remaining(openings, house.opening_ids, read.rounding, there, spoiled)
    plans = planned(read, openings, cutting_jobs(read, openings, rest.left))
    return WorkedOut(CutList(read, openings, plans, rest.left), rest, settings)


def schedule_cut_list_out(
    house: StoredHouse, done: WorkedOut, sections: tuple[Section, ...] = ()
) -> ScheduleCutListOut:
    """The whole answer."""
    cut_list, rest = done.cut_list, done.remaining
    write = length_writer(cut_list.house.rounding)
    found = work(cut_list, frozenset(sections), done.settings)
    whole = cut_list_out(cut_list, found, house.request.currency, house.request.movement)
    marks = {id: one.built.opening.mark for id, one in zip(house.opening_ids, cut_list.openings, strict=True)}
    return ScheduleCutListOut(
        revision=house.revision,
        needed=cut_list.pieces,
        right=len(rest.right),
        wrong=[
            WrongPiece(
                piece=_piece_out(house, wrong.piece, write),
                needed=_place(wrong.need, marks, write),
                recut_into=_place(wrong.recut, marks, write),
            )
            for wrong in rest.wrong
        ],
        cut_again=[place for need in rest.again if (place := _place(need, marks, write))],
        cut_list=_only_left(whole, cut_list),
    )


def _only_left(whole: CutListOut, cut_list: CutList) -> CutListOut:
    """Without the parts, and the openings, of which nothing is left to cut."""
    left = cut_list.left or {}
    openings: list[OpeningOut] = []
    for index, (out, one) in enumerate(zip(whole.openings, cut_list.openings, strict=True)):
        parts = [
            part_out if count == part_out.quantity else msgspec.structs.replace(part_out, quantity=count)
            for part_out, part in zip(out.parts, one.built.parts, strict=True)
            if (count := len(left.get(piece_key(index, part), ())))
        ]
        if parts:
            openings.append(msgspec.structs.replace(out, parts=parts))
    return msgspec.structs.replace(whole, openings=openings)


def _place(need: Need | None, marks: dict[str, str], write: LengthWriter) -> Place | None:
    if need is None:
        return None
    id, part, instance = need.slot
    return Place(opening=marks[id], part=part, instance=instance, length=write(need.shape.length))


def _piece_out(house: StoredHouse, piece: CutPiece, write: LengthWriter) -> Any:
    revision, document = house.pieces[piece.id]
    return piece_out(piece.id, revision, document, write)
