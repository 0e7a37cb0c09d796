"""The cut list as a sheet: what to buy, how each stick is cut, every piece."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from functools import partial

from longpoint.sheets.document import (
    Block,
    Cell,
    Document,
    Heading,
    Money,
    Notes,
    Picture,
    Pictures,
    PrintedLength,
    Rows,
    Table,
    TableColumn,
    Tick,
)
from longpoint.sheets.drawing.piece import end_words
from longpoint.sheets.drawing.sticks import DrawnStick, sticks_drawing
from longpoint.sheets.drawing.style import Styling
from longpoint.sheets.house import AT_THE_SAW, SheetHouse, caution_notes
from longpoint.sheets.pieces import pieces_by_key, to_cut
from longpoint.sheets.rows import stick_rows
from longpoint.shop.build import CutList
from longpoint.texts import say

BUY = (
    TableColumn("Profile", "profile", 9),
    TableColumn("Sticks", "quantity", 1),
    TableColumn("Length", "length"),
    TableColumn("Each", "price"),
    TableColumn("Total", "cost"),
    TableColumn("Got", "got", 1),
)
PIECES = (
    TableColumn("Piece", "piece"),
    TableColumn("Qty", "count", 1),
    TableColumn("What", "title", 3),
    TableColumn("Room", "room", 3),
    TableColumn("Profile", "profile", 3),
    TableColumn("Long point", "long_point"),
    TableColumn("Short point", "short_point"),
    TableColumn("Width", "width"),
    TableColumn("Left end, on the saw", "left_end", 5),
    TableColumn("Right end, on the saw", "right_end", 5),
)
UPRIGHT, SIDEWAYS = 560.0, 780.0
"""How wide the longest stick is drawn on a sheet of each kind."""
STICKS_TO_A_PICTURE = 4
"""So that a picture of many sticks can break across pages."""


def cut_list_sheet(house: SheetHouse) -> Document:
    """Sticks to buy, sticks as they are cut, and every piece with its ends."""
    blocks: list[Block] = [caution_notes(house, *AT_THE_SAW, "local_codes")]
    if house.cut_list.plans:
        blocks.append(buy_table(house.cut_list))
        blocks += stick_pictures(house, SIDEWAYS)
    unplanned = profiles_without_plan(house.cut_list)
    if unplanned:
        blocks.append(
            Notes("Not planned", tuple(say("note", "sheet.unplanned", profile=name) for name in unplanned))
        )
    blocks.append(pieces_table(house.cut_list))
    return Document(
        "cut-list", "Cut list", house.name, tuple(blocks), house.paper, sideways=True, main="pieces"
    )


def buy_table(cut_list: CutList) -> Table:
    """What the yard is asked for, each profile and length once."""
    bought: Counter[tuple[str, str, int]] = Counter()
    lengths = {}
    for plan in cut_list.plans:
        for layout in plan.layouts:
            if not layout.on_hand:
                bought[plan.profile, layout.stick, layout.price_cents] += layout.times
                lengths[plan.profile, layout.stick] = layout.length
    rows: list[tuple[Cell, ...]] = [
        (
            profile,
            count,
            PrintedLength(lengths[profile, stick], stick=True),
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
        piece.piece.profile for key, piece in pieces_by_key(cut_list).items() if to_cut(cut_list, key, piece)
    }
    return sorted(needed - planned)


def stick_pictures(house: SheetHouse, across: float) -> Iterator[Block]:
    """Each profile's sticks drawn to scale, a few to a picture."""
    pieces = pieces_by_key(house.cut_list)
    for plan in house.cut_list.plans:
        rows = list(stick_rows(house.cut_list, plan, pieces))
        yield Heading(plan.profile, f"{len(rows)} {'stick' if len(rows) == 1 else 'sticks'}")
        for start in range(0, len(rows), STICKS_TO_A_PICTURE):
            some: list[DrawnStick] = rows[start : start + STICKS_TO_A_PICTURE]
            alt = f"{plan.profile}, {some[0].name.lower()} to {some[-1].name.lower()}"
            draw = partial(sticks_drawing, plan.profile, [("", some)], house.wording, Styling.NONE, across)
            yield Pictures((Picture(draw, alt),))


def pieces_table(cut_list: CutList) -> Table:
    """Every piece that is to be cut, room by room as the openings come."""
    rows: list[tuple[Cell, ...]] = []
    for key, numbered in pieces_by_key(cut_list).items():
        count = to_cut(cut_list, key, numbered)
        if not count:
            continue
        piece = numbered.piece
        left, right = piece.ends
        rows.append(
            (
                numbered.label,
                count,
                piece.title,
                numbered.room,
                piece.profile,
                PrintedLength(piece.mitered_long_point),
                PrintedLength(piece.short_point) if piece.short_point != piece.mitered_long_point else "",
                PrintedLength(piece.sawn_width),
                end_words(left),
                end_words(right),
            )
        )
    return Table("pieces", "Pieces", PIECES, (Rows(tuple(rows)),))
