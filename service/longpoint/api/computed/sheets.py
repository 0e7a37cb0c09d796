"""`/v1/sheets/...`: what is carried to the saw, the wall and the yard, as HTML, PDF, CSV or data."""

from __future__ import annotations

from hashlib import sha256
from typing import Any

from litestar import get, post
from litestar.di import NamedDependency
from litestar.params import JSONBody

from longpoint import __version__
from longpoint.api.answers.asked import ASKED, Asked
from longpoint.api.answers.sheet import FILE_HEADERS, SHEET_OFFERS, sheet_reply, wanted_by
from longpoint.api.computed.request import CutListRequest, LabelsRequest
from longpoint.api.computed.sheet_work import house_of
from longpoint.api.document.examples import CUT_LIST, LABELS
from longpoint.api.http.answer import Reply
from longpoint.api.http.conditional import ETAG, check_news, etag
from longpoint.api.http.operation import operation
from longpoint.api.http.request import AnyRequest
from longpoint.api.running.threads import apart
from longpoint.sheets import (
    LabelGrid,
    Paper,
    Sheet,
    SheetContents,
    Wording,
    blank_measure_sheet,
    grid_faults,
    label_sheet,
    made,
)
from longpoint.values import Faults

_TAG = "Sheets"
_KEPT = "public, max-age=86400"


def _said(id: str, summary: str) -> dict[str, Any]:
    return operation(
        id,
        summary=summary,
        tag=_TAG,
        examples=CUT_LIST,
        offers=SHEET_OFFERS,
        headers=FILE_HEADERS,
        problems=(503,),
    )


async def _make(
    request: AnyRequest, data: CutListRequest, sheet: Sheet, asked: Asked
) -> Reply[SheetContents]:
    wanted = wanted_by(request)
    house = await house_of(request, data, sheet, asked)
    return await apart(lambda: sheet_reply(made(house, sheet), house.wording, wanted, asked.table))


@post("/v1/sheets/opening-sheet", dependencies=ASKED, **_said("make_opening_sheet", "Make the opening sheet"))
async def make_opening_sheet(
    request: AnyRequest, data: JSONBody[CutListRequest], asked: NamedDependency[Asked]
) -> Reply[SheetContents]:
    """A page for each opening: its elevation and section to scale, its pieces, their ends and marks."""
    return await _make(request, data, Sheet.OPENING_SHEET, asked)


@post("/v1/sheets/stick-sheet", dependencies=ASKED, **_said("make_stick_sheet", "Make the stick sheet"))
async def make_stick_sheet(
    request: AnyRequest, data: JSONBody[CutListRequest], asked: NamedDependency[Asked]
) -> Reply[SheetContents]:
    """Each setting of the saw and the cuts made at it, in the order to make them, then the sticks to scale."""
    return await _make(request, data, Sheet.STICK_SHEET, asked)


@post("/v1/sheets/material-list", dependencies=ASKED, **_said("make_material_list", "Make the material list"))
async def make_material_list(
    request: AnyRequest, data: JSONBody[CutListRequest], asked: NamedDependency[Asked]
) -> Reply[SheetContents]:
    """Sticks and packages to buy, and lengths to take from what is on hand."""
    return await _make(request, data, Sheet.MATERIAL_LIST, asked)


@post("/v1/sheets/cost-sheet", dependencies=ASKED, **_said("make_cost_sheet", "Make the cost sheet"))
async def make_cost_sheet(
    request: AnyRequest, data: JSONBody[CutListRequest], asked: NamedDependency[Asked]
) -> Reply[SheetContents]:
    """The money by line, by room and by opening, and the hours behind it."""
    return await _make(request, data, Sheet.COST_SHEET, asked)


@post("/v1/sheets/measure-sheet", dependencies=ASKED, **_said("make_measure_sheet", "Make the measure sheet"))
async def make_measure_sheet(
    request: AnyRequest, data: JSONBody[CutListRequest], asked: NamedDependency[Asked]
) -> Reply[SheetContents]:
    """The readings a house was worked out from, to check against the tape."""
    return await _make(request, data, Sheet.MEASURE_SHEET, asked)


@get(
    "/v1/sheets/blank-measure-sheet",
    dependencies=ASKED,
    **operation(
        "get_blank_measure_sheet",
        summary="Get a blank measure sheet",
        tag=_TAG,
        offers=SHEET_OFFERS,
        headers={**FILE_HEADERS, **ETAG, "Cache-Control": "It may be kept for a day."},
    ),
)
async def get_blank_measure_sheet(request: AnyRequest, asked: NamedDependency[Asked]) -> Reply[SheetContents]:
    """Rows to fill in by hand at the openings, with a key to where each reading is taken."""
    # What it holds follows from the release and from what was asked; both are in its name.
    tag = sha256(repr((__version__, asked)).encode()).hexdigest()[:16]
    check_news(request, tag, _KEPT)
    wanted = wanted_by(request)
    document = blank_measure_sheet(asked.paper, asked.title)
    reply = await apart(lambda: sheet_reply(document, Wording(), wanted, asked.table))
    reply.headers.update({"cache-control": _KEPT, "etag": etag(request, tag)})
    return reply


@post(
    "/v1/sheets/labels",
    dependencies=ASKED,
    **operation(
        "make_labels",
        summary="Make the labels",
        tag=_TAG,
        examples=LABELS,
        offers=SHEET_OFFERS,
        headers=FILE_HEADERS,
        problems=(503,),
    ),
)
async def make_labels(
    request: AnyRequest, data: JSONBody[LabelsRequest], asked: NamedDependency[Asked]
) -> Reply[SheetContents]:
    """A label for every single piece: its name, length, ends and the stick it comes from."""
    wanted = wanted_by(request)

    grid = _grid(data, asked.paper)
    house = await house_of(request, data, Sheet.LABELS, asked)
    return await apart(
        lambda: sheet_reply(label_sheet(house, grid, data.skip), house.wording, wanted, asked.table)
    )


def _grid(data: LabelsRequest, paper: Paper) -> LabelGrid | None:
    """The grid asked for.

    Raises:
        Refusal: when the labels do not lie on the paper.
    """
    if data.grid is not None:
        faults = Faults()
        for fault in grid_faults(data.grid, paper):
            faults.add(("grid",), "grid-off-paper", fault)
        faults.raise_any()
    return data.grid
