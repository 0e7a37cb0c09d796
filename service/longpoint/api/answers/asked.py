"""What is asked of a sheet beside the house: how it is to look."""

from __future__ import annotations

from typing import Annotated

from litestar.di import Provide
from litestar.params import QueryParameter

from longpoint.sheets import Paper
from longpoint.values import Value

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
