"""The fitting sheet: a page for each opening, to carry to the wall."""

from __future__ import annotations

from collections.abc import Iterator

from longpoint.geometry import Built, Opening
from longpoint.sheets.document import (
    Block,
    Cell,
    Column,
    Document,
    Facts,
    Heading,
    Length,
    Notes,
    Picture,
    Pictures,
    Rows,
    Table,
    Tick,
)
from longpoint.sheets.drawing.elevation import Room, elevation
from longpoint.sheets.drawing.piece import end_words
from longpoint.sheets.drawing.section import section
from longpoint.sheets.drawing.style import Styling
from longpoint.sheets.job import AT_THE_WALL, Job, caution_notes
from longpoint.sheets.readings import readings_of
from longpoint.sheets.wording import Wording, unbroken, words
from longpoint.shop.build import BuiltOpening

PIECES = (
    Column("No.", "number", 1),
    Column("Piece", "piece", 3),
    Column("Profile", "profile", 3),
    Column("Long point", "long_point"),
    Column("Short point", "short_point"),
    Column("Width", "width"),
    Column("Left end, on the saw", "left_end", 6),
    Column("Right end, on the saw", "right_end", 6),
)
MARKS = (
    Column("No.", "number", 1),
    Column("Piece", "piece", 3),
    Column("From its left end on the saw", "marks", 14),
)
OPENINGS = (
    Column("Opening", "opening", 2),
    Column("Room", "room", 5),
    Column("Alike", "count", 1),
    Column("Pieces", "pieces", 1),
    Column("Trim", "trim", 5),
    Column("Fitted", "fitted", 1),
)
LOW, HIGH, FEW = Room(340.0, 250.0), Room(340.0, 330.0), 5
"""How much room an elevation takes: low beside a long table, so that it is printed at its full size and can be read."""


def fitting_sheet(job: Job) -> Document:
    """The cautions and the openings in one list, then a page for each opening's drawings, pieces and marks."""
    blocks: list[Block] = [caution_notes(job, *AT_THE_WALL), _list_of_openings(job)]
    for one in job.shown:
        blocks += _opening(one, job.wording)
    return Document("fitting-sheet", "Fitting sheet", job.name, tuple(blocks), job.paper, main="pieces")


def _opening(one: BuiltOpening, wording: Wording) -> Iterator[Block]:
    built = one.built
    opening = built.opening
    room = HIGH if len(built.parts) <= FEW else LOW
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
    notes = dict.fromkeys((*built.notes, *(note for part in built.parts for note in part.notes)))
    if notes:
        yield Notes("Mind", tuple(notes))


def where(one: BuiltOpening) -> str:
    """Room and number of openings alike, as far as there is something to say."""
    alike = f"{one.count} alike" if one.count > 1 else ""
    return ", ".join(text for text in (one.room, alike) if text)


def _facts(built: Built, wording: Wording) -> tuple[tuple[str, Cell], ...]:
    opening = built.opening
    trim = opening.trim
    own = opening.reveals
    reveals = dict.fromkeys(
        trim.reveal if side is None else side for side in (own.left, own.right, own.head, own.sill)
    )
    chosen: list[tuple[str, Cell]] = [
        ("reveal", ", ".join(wording.figure(reveal) for reveal in reveals)),
        ("stands on", words(opening.foot_style)),
    ]
    if trim.stool is not None and opening.foot_style == "stool":
        chosen += [("horn", Length(trim.stool.horn)), ("nosing", Length(trim.stool.nosing))]
    return (*readings_of(opening, wording), *chosen)


def _pieces(built: Built) -> Iterator[tuple[Cell, ...]]:
    for number, part in built.numbered:
        left, right = part.ends
        yield (
            number,
            part.title,
            part.profile,
            Length(part.long_point),
            Length(part.short_point) if part.short_point != part.long_point else "",
            Length(part.width),
            end_words(left),
            end_words(right),
        )


def _marks(built: Built, wording: Wording) -> Iterator[tuple[Cell, ...]]:
    for number, part in built.numbered:
        if part.marks:
            marks = "; ".join(f"{unbroken(wording.figure(mark.at))} {mark.name}" for mark in part.marks)
            yield number, part.title, marks


def _trim(opening: Opening) -> str:
    casing = opening.trim.casing
    return f"{casing.profile if casing else 'no casing'}, {words(opening.foot_style)}"


def _list_of_openings(job: Job) -> Table:
    rows: list[tuple[Cell, ...]] = [
        (
            one.built.opening.mark,
            one.room,
            one.count,
            len(one.built.parts),
            _trim(one.built.opening),
            Tick(),
        )
        for one in job.shown
    ]
    return Table("openings", "Openings", OPENINGS, (Rows(tuple(rows)),))
