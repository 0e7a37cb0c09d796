"""The measure sheet: to fill in by hand at the openings, or filled in to check against the tape."""

from __future__ import annotations

from collections.abc import Iterator
from functools import partial

from longpoint.geometry import Bottom, Opening, PlumbSides, Quadrilateral
from longpoint.lengths import Fraction
from longpoint.sheets.document import (
    Block,
    Cell,
    Document,
    Facts,
    Heading,
    Notes,
    Paper,
    Picture,
    Pictures,
    PrintedLength,
    Rows,
    Table,
    TableColumn,
)
from longpoint.sheets.drawing.style import Styling
from longpoint.sheets.drawing.where_to_measure import depth_key, opening_key
from longpoint.sheets.house import SheetHouse
from longpoint.sheets.readings import readings_of
from longpoint.sheets.wording import Wording, words
from longpoint.shop.build import BuiltOpening
from longpoint.texts import say

COLUMNS = (
    TableColumn("Mark", "mark", 3),
    TableColumn("Room", "room", 5),
    TableColumn("Qty", "count", 2),
    TableColumn("W jamb to jamb", "jamb_width", 3),
    TableColumn("T across the head", "head_width", 3),
    TableColumn("L left jamb height", "left_jamb_height", 3),
    TableColumn("R right jamb height", "right_jamb_height", 3),
    TableColumn("D depth left", "left_depth", 3),
    TableColumn("D depth right", "right_depth", 3),
    TableColumn("X from bottom left", "diagonal_from_bottom_left", 3),
    TableColumn("Y from bottom right", "diagonal_from_bottom_right", 3),
    TableColumn("Stands on", "foot", 3),
    TableColumn("Remarks", "remarks", 6),
)
HOW = (
    say("note", "measure.jamb-faces"),
    say("note", "measure.widths"),
    say("note", "measure.heights"),
    say("note", "measure.depth"),
    say("note", "measure.diagonals"),
    say("note", "measure.fractions"),
)
ROWS_TO_A_PAGE = 12


def blank_measure_sheet(
    paper: Paper = Paper.LETTER, name: str = "", rows: int = ROWS_TO_A_PAGE, unit: str = "in"
) -> Document:
    """Empty rows, with a key to what each reading is."""
    empty = tuple(("",) * len(COLUMNS) for _ in range(rows))
    table = Table("readings", f"Readings ({unit})", COLUMNS, (Rows(empty),), roomy=True)
    facts = Facts((("house", name), ("measured by", ""), ("date", ""), ("house built", "")))
    blocks: tuple[Block, ...] = (facts, *_key(), table)
    return Document("measure-sheet", "Measure sheet", name, blocks, paper, sideways=True)


def measure_sheet(house: SheetHouse) -> Document:
    """The readings a house was worked out from; shapes of their own are listed below the table."""
    plain = [one for one in house.shown if _row_shape(one.built.opening)]
    other = [one for one in house.shown if not _row_shape(one.built.opening)]
    blocks: list[Block] = [Facts((("measured by", ""), ("date", ""))), *_key()]
    if plain:
        rows = tuple(_row(one) for one in plain)
        blocks.append(Table("readings", "Readings", COLUMNS, (Rows(rows),), roomy=True))
    for one in other:
        blocks += _shape(one, house.wording)
    return Document("measure-sheet", "Measure sheet", house.name, tuple(blocks), house.paper, sideways=True)


def _key() -> tuple[Block, ...]:
    pictures = (
        Picture(
            partial(opening_key, Styling.NONE), "Where W, T, L, R and the diagonals X and Y are measured"
        ),
        Picture(partial(depth_key, Styling.NONE), "Where the jamb's depth D is measured"),
    )
    return (Pictures(pictures, Notes("How to measure", HOW)),)


def _row_shape(opening: Opening) -> bool:
    return isinstance(opening.outline.shape, (PlumbSides, Quadrilateral))


def _row(one: BuiltOpening) -> tuple[Cell, ...]:
    opening = one.built.opening
    outline = opening.outline

    def reading(name: str) -> Cell:
        value = getattr(outline.shape, name, None)
        return PrintedLength(value) if isinstance(value, Fraction) else ""

    depths = (outline.left_depth, outline.right_depth) if opening.bottom is Bottom.STOOL else (None, None)
    return (
        opening.mark,
        one.room,
        one.count,
        reading("jamb_width"),
        reading("head_width"),
        reading("left_jamb_height"),
        reading("right_jamb_height"),
        *("" if depth is None else PrintedLength(depth) for depth in depths),
        reading("diagonal_from_bottom_left"),
        reading("diagonal_from_bottom_right"),
        words(opening.bottom),
        "",
    )


def _shape(one: BuiltOpening, wording: Wording) -> Iterator[Block]:
    opening = one.built.opening
    yield Heading(opening.mark, one.room)
    yield Facts(readings_of(opening, wording))
