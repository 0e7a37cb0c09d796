"""The opening sheet: a page for each opening, to carry to the wall."""

from __future__ import annotations

from collections.abc import Iterator

from longpoint.geometry import Built, Opening
from longpoint.sheets.document import (
    Block,
    Cell,
    Document,
    Facts,
    Heading,
    Notes,
    Picture,
    Pictures,
    PrintedLength,
    Rows,
    Table,
    TableColumn,
    Tick,
)
from longpoint.sheets.drawing.elevation import Room, elevation
from longpoint.sheets.drawing.piece import end_words
from longpoint.sheets.drawing.section import section
from longpoint.sheets.drawing.style import Styling
from longpoint.sheets.house import AT_THE_WALL, SheetHouse, caution_notes
from longpoint.sheets.readings import readings_of
from longpoint.sheets.wording import Wording, unbroken, words
from longpoint.shop.build import BuiltOpening

PIECES = (
    TableColumn("No.", "number", 1),
    TableColumn("Piece", "piece", 3),
    TableColumn("Profile", "profile", 3),
    TableColumn("Long point", "long_point"),
    TableColumn("Short point", "short_point"),
    TableColumn("Width", "width"),
    TableColumn("Left end, on the saw", "left_end", 6),
    TableColumn("Right end, on the saw", "right_end", 6),
)
MARKS = (
    TableColumn("No.", "number", 1),
    TableColumn("Piece", "piece", 3),
    TableColumn("From its left end on the saw", "marks", 14),
)
OPENINGS = (
    TableColumn("Opening", "opening", 2),
    TableColumn("Room", "room", 5),
    TableColumn("Qty", "count", 1),
    TableColumn("Pieces", "pieces", 1),
    TableColumn("Trim", "trim", 5),
    TableColumn("Fitted", "installed", 1),
)
LOW, HIGH, FEW = Room(340.0, 250.0), Room(340.0, 330.0), 5
"""How much room an elevation takes: low beside a long table, so that it is printed at its full size and can be read."""


def opening_sheet(house: SheetHouse) -> Document:
    """The cautions and the openings in one list, then a page for each opening's drawings, pieces and marks."""
    blocks: list[Block] = [caution_notes(house, *AT_THE_WALL), _list_of_openings(house)]
    for one in house.shown:
        blocks += _opening(one, house.wording)
    return Document("opening-sheet", "Opening sheet", house.name, tuple(blocks), house.paper, main="pieces")


def _opening(one: BuiltOpening, wording: Wording) -> Iterator[Block]:
    built = one.built
    opening = built.opening
    room = HIGH if len(built.pieces) <= FEW else LOW
    yield Heading(opening.mark, where(one), new_page=True)
    yield Facts(_facts(built, wording))
    yield Pictures(
        (
            Picture(
                lambda: elevation(built, wording, Styling.NONE, room, legend=False),
                f"Elevation of {opening.mark}, seen from the room",
            ),
            Picture(
                lambda: section(built, wording, Styling.NONE, legend=False), f"Section of {opening.mark}"
            ),
        )
    )
    yield Table(
        "pieces", f"Pieces of {opening.mark}", PIECES, (Rows(tuple(_pieces(built))),), about=opening.mark
    )
    marks = tuple(_marks(built, wording))
    if marks:
        caption = f"Marks to lay out on {opening.mark}"
        yield Table("marks", caption, MARKS, (Rows(marks),), about=opening.mark)
    if built.findings:
        yield Notes("Check on site", tuple(dict.fromkeys(finding.detail for finding in built.findings)))
    notes = dict.fromkeys((*built.notes, *(note for piece in built.pieces for note in piece.notes)))
    if notes:
        yield Notes("Caution", tuple(notes))


def where(one: BuiltOpening) -> str:
    """Room and how many openings there are, as far as there is something to say."""
    several = f"Qty {one.count}" if one.count > 1 else ""
    return ", ".join(text for text in (one.room, several) if text)


def _facts(built: Built, wording: Wording) -> tuple[tuple[str, Cell], ...]:
    opening = built.opening
    trim = opening.trim
    own = opening.reveals
    reveals = dict.fromkeys(
        trim.reveal if side is None else side for side in (own.left, own.right, own.head, own.sill)
    )
    chosen: list[tuple[str, Cell]] = [
        ("reveal", ", ".join(wording.figure(reveal) for reveal in reveals)),
        ("stands on", words(opening.bottom)),
    ]
    if trim.stool is not None and opening.bottom == "stool":
        chosen += [("horn", PrintedLength(trim.stool.horn)), ("nosing", PrintedLength(trim.stool.nosing))]
    finish = words(trim.finish) if trim.species is None else f"{words(trim.finish)}, {trim.species}"
    return (*readings_of(opening, wording), *chosen, ("finish", finish))


def _pieces(built: Built) -> Iterator[tuple[Cell, ...]]:
    for number, piece in built.numbered:
        left, right = piece.ends
        yield (
            number,
            piece.title,
            piece.profile,
            PrintedLength(piece.long_point),
            PrintedLength(piece.short_point) if piece.short_point != piece.long_point else "",
            PrintedLength(piece.width),
            end_words(left),
            end_words(right),
        )


def _marks(built: Built, wording: Wording) -> Iterator[tuple[Cell, ...]]:
    for number, piece in built.numbered:
        if piece.marks:
            marks = "; ".join(f"{unbroken(wording.figure(mark.at))} {mark.name}" for mark in piece.marks)
            yield number, piece.title, marks


def _trim(opening: Opening) -> str:
    casing = opening.trim.casing
    return f"{casing.profile if casing else 'no casing'}, {words(opening.bottom)}"


def _list_of_openings(house: SheetHouse) -> Table:
    rows: list[tuple[Cell, ...]] = [
        (
            one.built.opening.mark,
            one.room,
            one.count,
            len(one.built.pieces),
            _trim(one.built.opening),
            Tick(),
        )
        for one in house.shown
    ]
    return Table("openings", "Openings", OPENINGS, (Rows(tuple(rows)),))
