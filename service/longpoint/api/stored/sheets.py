"""Sheets and drawings of a stored house: addresses to open, send and print, fresh as the schedule is."""

from __future__ import annotations

from enum import StrEnum
from hashlib import sha256
from typing import Annotated, TypeVar

import msgspec
from litestar import get
from litestar.di import NamedDependency
from litestar.params import PathParameter, QueryParameter
from sqlalchemy.ext.asyncio import AsyncConnection

from longpoint import __version__
from longpoint.api.answers.asked import ASKED, Asked, FeetAsked
from longpoint.api.answers.sheet import (
    FILE_HEADERS,
    SHEET_OFFERS,
    check_printed,
    file,
    sheet_reply,
    wanted_by,
)
from longpoint.api.computed.opening import Drawing, DrawingAsked, PieceAsked, drawn
from longpoint.api.http.answer import Reply
from longpoint.api.http.conditional import ETAG, check_news, etag, state_tag
from longpoint.api.http.negotiate import CSV, HTML, JSON, PDF, SVG
from longpoint.api.http.request import AnyRequest
from longpoint.api.running.threads import apart
from longpoint.api.stored.built import built_with_group
from longpoint.api.stored.groups import find_place, group_of, members, sharing
from longpoint.api.stored.openings import OpeningName, find_opening
from longpoint.api.stored.pieces import OpeningsAsked, RoomsAsked, chosen_of, work_on
from longpoint.api.stored.planned import mark_used, plan_tag, read_to_print, search_on, with_paid, work_out
from longpoint.api.stored.storage import ScheduleId, find_schedule, store_of, stored
from longpoint.schedules import plans
from longpoint.schedules.kept import KeptHouse, read_house, read_opening
from longpoint.schedules.rows import PlanRow, ScheduleRow
from longpoint.sheets import (
    RECIPES,
    Sheet,
    SheetContents,
    SheetHouse,
    Wording,
    house_sticks,
    made,
)
from longpoint.shop import Section
from longpoint.shop.house import HouseGroup, HouseOpening
from longpoint.shop.narrowed import narrowed
from longpoint.shop.piece_numbers import numbered

T = TypeVar("T")
_TAG = "Work"
KEPT = "private, no-cache"
"""A caller may keep it for itself, and asks whether it still stands before using it again."""
_HEADERS = {
    **FILE_HEADERS,
    **ETAG,
    "Cache-Control": "Private; ask with If-None-Match whether it still stands.",
}


class Format(StrEnum):
    """What a sheet is answered in, where an address must say it: a link carries no Accept header."""

    HTML = "html"
    PDF = "pdf"
    CSV = "csv"
    JSON = "json"


_MEDIA_TYPES = {Format.HTML: HTML, Format.PDF: PDF, Format.CSV: CSV, Format.JSON: JSON}
SheetAsked = Annotated[Sheet, PathParameter(description="Which sheet.")]
FormatAsked = Annotated[
    Format | None,
    QueryParameter(description="For a link to one format; goes before what the Accept header likes best."),
]
SkipAsked = Annotated[
    int, QueryParameter(ge=0, le=500, description="Places used up on the first sheet of labels.")
]


@get(
    "/v1/schedules/{schedule_id:str}/sheets/{sheet:str}",
    dependencies=ASKED,
    **stored(
        "get_schedule_sheet",
        summary="Make a sheet of a schedule",
        tag=_TAG,
        offers=SHEET_OFFERS,
        headers=_HEADERS,
    ),
)
async def get_schedule_sheet(
    request: AnyRequest,
    schedule_id: ScheduleId,
    sheet: SheetAsked,
    asked: NamedDependency[Asked],
    format: FormatAsked = None,
    skip: SkipAsked = 0,
    room: RoomsAsked = None,
    opening: OpeningsAsked = None,
) -> Reply[SheetContents]:
    """A sheet to print, with the schedule's shop settings and lengths on hand.

    Stick sheet, cut list, labels and the sticks to buy are of what is not cut yet; opening and measure sheet, materials
    and hours are the whole house's, or of the rooms and openings that are asked for. `title` is the schedule's name
    when left out. A sheet of sticks that were not planned with a search yet waits a few seconds for that, so that what
    is printed stands; where it is not over then, the sheet says that it is not proven, and the search goes on.
    """
    if format is not None:
        request.wanted = _MEDIA_TYPES[format]
    wanted = wanted_by(request)
    house, plan = await read_to_print(
        request, schedule_id, lambda *stands: check_news(request, _tag(*stands, sheet, asked, skip), KEPT)
    )
    done = await work_out(house, plan)
    check_printed(done.cut_list, sheet, wanted)
    if Section.COST in RECIPES[sheet].needs:
        done = await with_paid(request, done)
    await mark_used(request, plan)
    look = asked if asked.title else msgspec.structs.replace(asked, title=house.schedule.name)

    marks = chosen_of(done.cut_list.openings, room, opening)

    def make() -> Reply[SheetContents]:
        cut_list, found = work_on(done.cut_list, RECIPES[sheet].needs, marks)
        sheet_house = SheetHouse(cut_list, found, look.title, look.paper, look.feet)
        return sheet_reply(made(sheet_house, sheet, skip), sheet_house.wording, wanted, look.table)

    reply = await apart(make)
    search_on(request, house.schedule, plan.row)
    return _kept(request, reply, _tag(house.schedule, plan.row, sheet, asked, skip))


@get(
    "/v1/schedules/{schedule_id:str}/drawings/sticks",
    **stored(
        "get_sticks_drawing", summary="Draw the sticks to scale", tag=_TAG, offers=(SVG,), headers=_HEADERS
    ),
)
async def get_sticks_drawing(
    request: AnyRequest,
    schedule_id: ScheduleId,
    feet: FeetAsked = False,
    room: RoomsAsked = None,
    opening: OpeningsAsked = None,
) -> Reply[str]:
    """Every stick that is still to be cut, with its pieces and what is left of it, as SVG."""
    house, plan = await read_to_print(
        request, schedule_id, lambda *stands: check_news(request, _tag(*stands, "sticks", feet), KEPT)
    )
    cut_list = (await work_out(house, plan)).cut_list
    marks = chosen_of(cut_list.openings, room, opening)
    if marks is not None:
        cut_list = narrowed(cut_list, marks)
    check_printed(cut_list, Sheet.CUT_LIST, SVG)
    svg = await apart(lambda: house_sticks(cut_list, Wording(cut_list.house.rounding, feet)))
    await mark_used(request, plan)
    search_on(request, house.schedule, plan.row)
    tag = _tag(house.schedule, plan.row, "sticks", feet)
    return _kept(request, file(svg.encode(), SVG, house.schedule.name, "sticks"), tag)


@get(
    "/v1/schedules/{schedule_id:str}/openings/{opening:str}/drawing",
    **stored(
        "get_opening_drawing", summary="Draw an opening to scale", tag=_TAG, offers=(SVG,), headers=_HEADERS
    ),
)
async def get_opening_drawing(
    request: AnyRequest,
    schedule_id: ScheduleId,
    opening: OpeningName,
    drawing: DrawingAsked = Drawing.ELEVATION,
    piece: PieceAsked = "",
    feet: FeetAsked = False,
) -> Reply[str]:
    """The elevation, the section, or one piece as it lies on the saw, as SVG.

    By the mark of a group, what its openings share.
    """
    async with store_of(request).reading() as connection:
        schedule = await find_schedule(connection, request, schedule_id)
        place = await find_place(connection, schedule, opening)
        tag = _tag(schedule, None, place, drawing, piece, feet)
        check_news(request, tag, KEPT)
        house = read_house(schedule.document)
        wanted = await _find_drawn(connection, schedule, house, opening)
        given = (await plans.piece_numbers(connection, schedule.id)).get(place, {})

    def make() -> tuple[str, str]:
        # Only what has a piece in the drawing is worked out: the opening, and those it shares a stool with.
        one = built_with_group(house, wanted.openings, wanted.group)[wanted.index]
        built = numbered(one, given).built
        return built.opening.mark, drawn(built, drawing, piece, Wording(house.rounding, feet))

    mark, svg = await apart(make)
    what = piece if drawing is Drawing.PIECE else drawing
    return _kept(request, file(svg.encode(), SVG, schedule.name, mark, what), tag)


class _Drawn(msgspec.Struct, frozen=True):
    """Openings to work out, the group they form, and which of what they come to is to be drawn."""

    openings: list[HouseOpening]
    group: HouseGroup | None
    index: int


async def _find_drawn(
    connection: AsyncConnection, schedule: ScheduleRow, house: KeptHouse, name: str
) -> _Drawn:
    own = sharing(house, name)
    if own is not None:
        return _Drawn(await members(connection, schedule, [own]), own, -1)
    row = await find_opening(connection, schedule.id, name)
    group, others = await group_of(connection, schedule, house, row.mark)
    if group is None or not group.shares:
        group, others = None, []
    return _Drawn([read_opening(row.document, house.unit), *others], group, 0)


def _tag(schedule: ScheduleRow, plan: PlanRow | None, *asked: object) -> str:
    """Names what an answer holds: what stands, the release that drew it, and what was asked for."""
    drawn_by = sha256(repr((__version__, *asked)).encode()).hexdigest()[:12]
    stands = state_tag(schedule.revision, schedule.digest) if plan is None else plan_tag(schedule, plan)
    return f"{stands}-{drawn_by}"


def _kept(request: AnyRequest, reply: Reply[T], tag: str) -> Reply[T]:
    reply.headers.update({"cache-control": KEPT, "etag": etag(request, tag)})
    return reply
