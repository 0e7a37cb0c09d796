"""The cut list as a sheet: what to buy, how each stick is cut, every piece."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from functools import partial

from longpoint.sheets.document import (
    Block,
    Cell,
    Column,
    Document,
    Heading,
    Length,
    Money,
    Notes,
    Picture,
    Pictures,
    Rows,
    Table,
    Tick,
)
from longpoint.sheets.drawing.piece import end_words
from longpoint.sheets.drawing.sticks import StickRow, sticks_drawing
from longpoint.sheets.drawing.style import Styling
from longpoint.sheets.job import AT_THE_SAW, Job, caution_notes
from longpoint.sheets.pieces import pieces_by_key, to_cut
from longpoint.sheets.rows import stick_rows
from longpoint.shop.build import CutList

BUY = (
    Column("Profile", "profile", 9),
    Column("Sticks", "quantity", 1),
    Column("Length", "length"),
    Column("Each", "price"),
    Column("Together", "cost"),
    Column("Got", "got", 1),
)
PIECES = (
    Column("Piece", "piece"),
    Column("Count", "count", 1),
    Column("What", "title", 3),
    Column("Room", "room", 3),
    Column("Profile", "profile", 3),
    Column("Long point", "long_point"),
    Column("Short point", "short_point"),
    Column("Width", "width"),
    Column("Left end, on the saw", "left_end", 5),
    Column("Right end, on the saw", "right_end", 5),
)
UNPLANNED = "No stock was given for {}, so its pieces are on no stick."
UPRIGHT, SIDEWAYS = 560.0, 780.0
"""How wide the longest stick is drawn on a sheet of each kind."""
STICKS_TO_A_PICTURE = 4
"""So that a picture of many sticks can break across pages."""


def cut_list_sheet(job: Job) -> Document:
    """Sticks to buy, sticks as they are cut, and every piece with its ends."""
    blocks: list[Block] = [caution_notes(job, *AT_THE_SAW, "local_codes")]
    if job.cut_list.plans:
        blocks.append(buy_table(job.cut_list))
        blocks += stick_pictures(job, SIDEWAYS)
    unplanned = profiles_without_plan(job.cut_list)
    if unplanned:
        blocks.append(Notes("Not planned", tuple(UNPLANNED.format(name) for name in unplanned)))
    blocks.append(pieces_table(job.cut_list))
    return Document("cut-list", "Cut list", job.name, tuple(blocks), job.paper, sideways=True, main="pieces")


def buy_table(cut_list: CutList) -> Table:
    """What the yard is asked for, each profile and length once."""
    bought: Counter[tuple[str, str, int]] = Counter()
    lengths = {}
    for plan in cut_list.plans:
        for layout in plan.layouts:
            if not layout.remnant:
                bought[plan.profile, layout.stick, layout.price_cents] += layout.times
                lengths[plan.profile, layout.stick] = layout.length
    rows: list[tuple[Cell, ...]] = [
        (
            profile,
            count,
            Length(lengths[profile, stick], stick=True),
            Money(price),
            Money(price * count),
            Tick(),
        )
        for (profile, stick, price), count in bought.items()
    ]
    cents = sum(price * count for (_, _, price), count in bought.items())
    total: tuple[Cell, ...] = ("all sticks", sum(bought.values()), "", "", Money(cents), "")
    return Table("buy", "Sticks to buy", BUY, (Rows(tuple(rows)),), total)


def profiles_without_plan(cut_list: CutList) -> list[str]:
    """Profiles that pieces need and no stock was given for."""
    planned = {plan.profile for plan in cut_list.plans}
    needed = {
        piece.part.profile for key, piece in pieces_by_key(cut_list).items() if to_cut(cut_list, key, piece)
    }
    return sorted(needed - planned)


def stick_pictures(job: Job, across: float) -> Iterator[Block]:
    """Each profile's sticks drawn to scale, a few to a picture."""
    pieces = pieces_by_key(job.cut_list)
    for plan in job.cut_list.plans:
        rows = list(stick_rows(job.cut_list, plan, pieces))
        yield Heading(plan.profile, f"{len(rows)} {'stick' if len(rows) == 1 else 'sticks'}")
        for start in range(0, len(rows), STICKS_TO_A_PICTURE):
            some: list[StickRow] = rows[start : start + STICKS_TO_A_PICTURE]
            alt = f"{plan.profile}, {some[0].name.lower()} to {some[-1].name.lower()}"
            draw = partial(sticks_drawing, plan.profile, [("", some)], job.wording, Styling.NONE, across)
            yield Pictures((Picture(draw, alt),))


def pieces_table(cut_list: CutList) -> Table:
    """Every piece that is to be cut, room by room as the openings come."""
    rows: list[tuple[Cell, ...]] = []
    for key, piece in pieces_by_key(cut_list).items():
        count = to_cut(cut_list, key, piece)
        if not count:
            continue
        part = piece.part
        left, right = part.ends
        rows.append(
            (
                piece.label,
                count,
                part.title,
                piece.room,
                part.profile,
                Length(part.long_point),
                Length(part.short_point) if part.short_point != part.long_point else "",
                Length(part.width),
                end_words(left),
                end_words(right),
            )
        )
    return Table("pieces", "Pieces", PIECES, (Rows(tuple(rows)),))
