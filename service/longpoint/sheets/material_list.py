"""The material list: sticks and packages to buy, for the counter."""

from __future__ import annotations

import math
from collections import Counter

from longpoint.lengths import Fraction, Real
from longpoint.sheets.cutting import buy_table, profiles_without_plan
from longpoint.sheets.document import (
    Block,
    Cell,
    Document,
    Money,
    Notes,
    Number,
    PrintedLength,
    Rows,
    Table,
    TableColumn,
    Tick,
)
from longpoint.sheets.house import SheetHouse, caution_notes
from longpoint.sheets.pieces import pieces_by_key, to_cut
from longpoint.sheets.wording import unit_words
from longpoint.shop import Bought, Material
from longpoint.texts import say

PACKAGES = (
    TableColumn("What", "material", 4),
    TableColumn("Needed", "needed", 1),
    TableColumn("Unit", "unit", 2),
    TableColumn("Buy", "buy", 6),
    TableColumn("Total", "cost"),
    TableColumn("Got", "got", 1),
)
RACK = (
    TableColumn("Profile", "profile", 9),
    TableColumn("Pieces", "quantity", 1),
    TableColumn("Length", "length"),
    TableColumn("Got", "got", 1),
)
RUNNING = (
    TableColumn("Profile", "profile", 9),
    TableColumn("Pieces", "quantity", 1),
    TableColumn("Longest", "longest"),
    TableColumn("Total", "running_length"),
)
COUNTED = ("nail", "shim")


def material_list(house: SheetHouse) -> Document:
    """What to buy, and what there is already. Materials are listed when the house's were worked out."""
    cut_list = house.cut_list
    blocks: list[Block] = []
    if cut_list.plans:
        blocks.append(buy_table(cut_list))
        rack = _from_the_rack(house)
        if rack:
            blocks.append(rack)
    unplanned = profiles_without_plan(cut_list)
    if unplanned:
        blocks.append(_running(house, set(unplanned)))
        blocks.append(
            Notes("Not planned", tuple(say("note", "sheet.unplanned", profile=name) for name in unplanned))
        )
    if house.work and house.work.materials:
        blocks.append(_packages(house.work.materials.lines))
        notes = dict.fromkeys(note for line in house.work.materials.lines for note in line.notes)
        if notes:
            blocks.append(Notes("Check", tuple(notes)))
    if any(not plan.proven for plan in cut_list.plans):
        blocks.append(Notes("About the sticks", (say("note", "sheet.cheaper-not-ruled-out"),)))
    blocks.append(caution_notes(house, "lead_paint", "finishes", "local_codes"))
    return Document("material-list", "Material list", house.name, tuple(blocks), house.paper)


def _from_the_rack(house: SheetHouse) -> Table | None:
    used: Counter[tuple[str, Fraction]] = Counter()
    for plan in house.cut_list.plans:
        for layout in plan.layouts:
            if layout.on_hand:
                used[plan.profile, layout.length] += layout.times
    rows: tuple[tuple[Cell, ...], ...] = tuple(
        (profile, count, PrintedLength(length), Tick()) for (profile, length), count in used.items()
    )
    return Table("rack", "On hand, or ordered already", RACK, (Rows(rows),)) if rows else None


def _running(house: SheetHouse, profiles: set[str]) -> Table:
    """What profiles without stock come to, end to end, before kerfs and waste."""
    count: Counter[str] = Counter()
    running: dict[str, Real] = {}
    longest: dict[str, Real] = {}
    for key, numbered in pieces_by_key(house.cut_list).items():
        piece, quantity = numbered.piece, to_cut(house.cut_list, key, numbered)
        if piece.profile in profiles and quantity:
            count[piece.profile] += quantity
            running[piece.profile] = running.get(piece.profile, Fraction(0)) + piece.overall * quantity
            longest[piece.profile] = max(longest.get(piece.profile, Fraction(0)), piece.overall)
    rows: tuple[tuple[Cell, ...], ...] = tuple(
        (
            profile,
            count[profile],
            PrintedLength(longest[profile]),
            PrintedLength(running[profile], stick=True),
        )
        for profile in sorted(count)
    )
    return Table("running", "Profiles with no stock given, without kerfs or waste", RUNNING, (Rows(rows),))


def _packages(lines: tuple[Material, ...]) -> Table:
    rows: list[tuple[Cell, ...]] = []
    cents = 0
    for line in lines:
        price = _price(line.bought)
        cents += price or 0
        rows.append(
            (
                line.name,
                _needed(line),
                unit_words(line.unit),
                "; ".join(f"{one.count} × {one.package}" for one in line.bought),
                "" if price is None else Money(price),
                Tick(),
            )
        )
    total: tuple[Cell, ...] = ("all with a price", "", "", "", Money(cents), "") if cents else ()
    return Table("packages", "Packages to buy", PACKAGES, (Rows(tuple(rows)),), total)


def _needed(line: Material) -> Cell:
    """How much of it; whole ones of what is counted, since waste is reckoned in shares."""
    return math.ceil(line.quantity) if line.unit in COUNTED else Number(line.quantity)


def _price(bought: tuple[Bought, ...]) -> int | None:
    costs = [one.cost for one in bought if one.cost is not None]
    return sum(costs) if costs and len(costs) == len(bought) else None
