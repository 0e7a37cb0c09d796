"""A document worded: every cell as text with how it is set, the one source of the HTML and the PDF."""

from __future__ import annotations

import re
from typing import Any

from longpoint.lengths import Fraction
from longpoint.sheets.document import (
    Block,
    Cell,
    Document,
    Facts,
    Heading,
    Labels,
    Money,
    Notes,
    Number,
    Picture,
    Pictures,
    PrintedLength,
    Table,
    Tick,
)
from longpoint.sheets.grid import LabelGrid
from longpoint.sheets.wording import Wording, money, number

View = dict[str, Any]
TICK = "\N{BALLOT BOX}"


def view(document: Document, wording: Wording) -> View:
    """The document as plain texts, numbers and lists, whose order is the page's."""
    width, height = document.paper.size
    across, down = (height, width) if document.sideways else (width, height)
    blocks = document.blocks
    return {
        "title": document.title,
        "house": document.house,
        "plan": document.plan,
        "closing": wording.sentence(document.closing),
        "paper": document.paper.value,
        "sideways": document.sideways,
        "width": float(across),
        "height": float(down),
        "labels_only": bool(blocks) and all(isinstance(block, Labels) for block in blocks),
        "blocks": [_block(block, wording) for block in blocks],
    }


def _block(block: Block, wording: Wording) -> View:
    match block:
        case Heading():
            return {
                "kind": "heading",
                "text": block.text,
                "beside": block.beside,
                "new_page": block.new_page,
            }
        case Table():
            return _table(block, wording)
        case Pictures():
            notes = _block(block.notes, wording) if block.notes else None
            return {"kind": "pictures", "pictures": [_picture(one) for one in block.pictures], "notes": notes}
        case Facts():
            return {"kind": "facts", "pairs": [[name, _fact(value, wording)] for name, value in block.pairs]}
        case Notes():
            return {
                "kind": "notes",
                "title": block.title,
                "lines": [wording.sentence(line) for line in block.lines],
                "caution": block.caution,
            }
        case Labels():
            return _labels(block)


def _table(table: Table, wording: Wording) -> View:
    figures = [_is_figure(table, index) for index in range(len(table.columns))]
    lengths = [_has_length(table, index) for index in range(len(table.columns))]
    return {
        "kind": "table",
        "key": table.key,
        "caption": table.caption,
        "roomy": table.roomy,
        "shares": sum(column.share for column in table.columns),
        "columns": [
            {
                "heading": f"{column.heading} ({wording.unit})" if length else column.heading,
                "figure": figure,
                "share": column.share,
            }
            for column, figure, length in zip(table.columns, figures, lengths, strict=True)
        ],
        "groups": [
            {"title": group.title, "rows": [[said(cell, wording) for cell in row] for row in group.cells]}
            for group in table.groups
        ],
        "total": [said(cell, wording) for cell in table.total],
    }


def _column(table: Table, index: int) -> list[Cell]:
    return [row[index] for group in table.groups for row in group.cells]


def _is_figure(table: Table, index: int) -> bool:
    """Whether a column's cells are numbers, to be set one under the other."""
    cells = [cell for cell in _column(table, index) if cell != ""]
    return bool(cells) and all(isinstance(cell, (int, PrintedLength, Money, Number)) for cell in cells)


def _has_length(table: Table, index: int) -> bool:
    return any(isinstance(cell, PrintedLength) and not cell.stick for cell in _column(table, index))


def said(cell: Cell, wording: Wording) -> str:
    """A cell as it is printed."""
    match cell:
        case PrintedLength():
            return wording.stick(cell.inches) if cell.stick else wording.length(cell.inches)
        case Money():
            return money(cell.cents)
        case Number():
            return number(cell.value)
        case Tick():
            return TICK
    return str(cell)


def _fact(value: Cell, wording: Wording) -> str:
    """A value that stands alone, so a length says its unit."""
    return wording.figure(value.inches) if isinstance(value, PrintedLength) else said(value, wording)


_SIZE = re.compile(r'width="([0-9.]+)" height="([0-9.]+)"')


def _picture(picture: Picture) -> View:
    svg = picture.draw()
    size = _SIZE.search(svg)
    assert size is not None
    return {
        "svg": svg,
        "alt": picture.alt,
        "width": float(size.group(1)),
        "height": float(size.group(2)),
    }


def _labels(block: Labels) -> View:
    grid = block.grid
    each: list[View | None] = [None] * block.skip
    each += [{"name": one.name, "figure": one.figure, "lines": list(one.lines)} for one in block.labels]
    page = grid.across * grid.down
    return {
        "kind": "labels",
        "grid": _grid(grid),
        "pages": [each[start : start + page] for start in range(0, len(each), page)],
    }


def _grid(grid: LabelGrid) -> View:
    return {
        name: float(value) if isinstance(value, Fraction) else value
        for name, value in (
            ("across", grid.across),
            ("down", grid.down),
            ("width", grid.width),
            ("height", grid.height),
            ("left", grid.left),
            ("top", grid.top),
            ("gap_across", grid.gap_across),
            ("gap_down", grid.gap_down),
        )
    }
