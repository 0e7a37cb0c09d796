"""A sheet's contents as data, for a page of one's own."""

from __future__ import annotations

from msgspec.structs import replace

from longpoint.sheets.document import Document, Pictures
from longpoint.sheets.view import view
from longpoint.sheets.wording import Wording
from longpoint.values import Value


class TableContents(Value, frozen=True):
    """One table of a sheet.

    Attributes:
        key: Its name, which `table` asks for in a CSV answer.
        caption: The title of the table.
        columns: The headings of the columns, from left to right.
        rows: The cells, as they are printed.
    """

    key: str
    caption: str
    columns: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]


class SheetContents(Value, frozen=True):
    """A sheet's contents as data, for a page of one's own; drawings are in the HTML and the PDF alone.

    Attributes:
        name: It says which sheet this is.
        title: The title at the sheet's head.
        house: The name of the house.
        plan: Which plan its sticks are from and how good that is; empty where it shows none.
        tables: The tables of the sheet, in order.
        notes: The cautions and notes of the sheet, in order.
        labels: Each label's texts, on a sheet of labels.
    """

    name: str
    title: str
    house: str
    plan: str
    tables: tuple[TableContents, ...]
    notes: tuple[str, ...]
    labels: tuple[tuple[str, ...], ...]


def contents(document: Document, wording: Wording) -> SheetContents:
    """A sheet's contents as data."""
    worded = tuple(block for block in document.blocks if not isinstance(block, Pictures))
    blocks = view(replace(document, blocks=worded), wording)["blocks"]
    return SheetContents(
        name=document.name,
        title=document.title,
        house=document.house,
        plan=document.plan,
        tables=tuple(
            TableContents(
                key=block["key"],
                caption=block["caption"],
                columns=tuple(column["heading"] for column in block["columns"]),
                rows=tuple(tuple(row) for group in block["groups"] for row in group["rows"]),
            )
            for block in blocks
            if block["kind"] == "table"
        ),
        notes=(
            *(line for block in blocks if block["kind"] == "notes" for line in block["lines"]),
            wording.sentence(document.closing),
        ),
        labels=tuple(
            (label["name"], label["figure"], *label["lines"])
            for block in blocks
            if block["kind"] == "labels"
            for page in block["pages"]
            for label in page
            if label
        ),
    )
