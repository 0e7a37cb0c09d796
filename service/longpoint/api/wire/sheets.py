"""The wire's view of sheets: how they are to look, what labels they are printed on, and their contents as data."""

from __future__ import annotations

from typing import Annotated

from litestar.di import Provide
from litestar.params import QueryParameter
from msgspec import Meta

from longpoint.api.wire.base import LengthText, Wire, WireOut
from longpoint.api.wire.cut_list import CutListRequest
from longpoint.geometry.value import Value
from longpoint.sheets import Paper

PaperAsked = Annotated[Paper, QueryParameter(description="What a sheet is printed on; letter when left out.")]
# The limits stand in QueryParameter: the framework leaves out those of a Meta beside it.
TitleAsked = Annotated[
    str,
    QueryParameter(
        description="Whose house it is: printed at the head and part of the file's name.",
        max_length=120,
        pattern=r"^[^\x00-\x1f\x7f]*$(?![\s\S])",
    ),
]
FeetAsked = Annotated[
    bool, QueryParameter(description="Write lengths in drawings that are in inches in feet and inches.")
]
TableAsked = Annotated[
    str,
    QueryParameter(
        description="Which of the sheet's tables a CSV answer holds; the main one when left out.",
        max_length=40,
        pattern=r"^[a-z_]*$(?![\s\S])",
    ),
]


class Asked(Value, frozen=True):
    """How a sheet is to look. Attributes: paper; title; feet; table, the one a CSV answer holds."""

    paper: Paper
    title: str
    feet: bool
    table: str


async def _asked(
    paper: PaperAsked = Paper.LETTER, title: TitleAsked = "", feet: FeetAsked = False, table: TableAsked = ""
) -> Asked:
    return Asked(paper, title, feet, table)


ASKED = {"asked": Provide(_asked)}
"""The query parameters that every sheet takes."""


class LabelGridIn(Wire):
    """Where labels lie on their sheet.

    Attributes:
        across: Labels side by side.
        down: Labels under one another.
        width: Of one label.
        height: Of one label.
        left: From the sheet's left edge to the first label.
        top: From the sheet's top edge to the first label.
        gap_across: Between labels side by side.
        gap_down: Between labels under one another.
    """

    across: Annotated[int, Meta(ge=1, le=20)]
    down: Annotated[int, Meta(ge=1, le=50)]
    width: LengthText
    height: LengthText
    left: LengthText
    top: LengthText
    gap_across: LengthText = "0 in"
    gap_down: LengthText = "0 in"


class LabelsRequest(CutListRequest):
    """A house, and the labels its pieces are to have.

    Attributes:
        grid: Where labels lie; without it 3 by 10 labels of 2 5/8 by 1 in on Letter, 3 by 8 of 70 by 37 mm on A4.
        skip: Places on the first sheet that are used up.
    """

    grid: LabelGridIn | None = None
    skip: Annotated[int, Meta(ge=0, le=500)] = 0


class TableOut(WireOut):
    """One table of a sheet.

    Attributes:
        key: Its name, which `table` asks for in a CSV answer.
        caption: Its title.
        columns: Headings from left to right.
        rows: The cells, as they are printed.
    """

    key: str
    caption: str
    columns: list[str]
    rows: list[list[str]]


class SheetOut(WireOut):
    """A sheet's contents as data, for a page of one's own; drawings are in the HTML and the PDF alone.

    Attributes:
        name: What the sheet is.
        title: At its head.
        job: Whose house it is.
        tables: Every table, in order.
        notes: Cautions and notes, in order.
        labels: Each label's texts, on a sheet of labels.
    """

    name: str
    title: str
    job: str
    tables: list[TableOut]
    notes: list[str]
    labels: list[list[str]]
