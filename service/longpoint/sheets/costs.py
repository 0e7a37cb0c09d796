"""The cost sheet: the same money by line, by room and by opening, and the hours behind it."""

from __future__ import annotations

from collections.abc import Iterator

from longpoint.sheets.document import Block, Cell, Document, Money, Notes, Number, Rows, Table, TableColumn
from longpoint.sheets.house import SheetHouse
from longpoint.sheets.wording import time, unit_words, words
from longpoint.shop import CostSheet, CostTotals, Hours
from longpoint.texts import Sentence, say

LINES = (TableColumn("Line", "line", 6), TableColumn("Cost", "cost"))
MONEY = (
    TableColumn("Sticks", "stock"),
    TableColumn("Waste", "waste"),
    TableColumn("Kept", "kept_offcut"),
    TableColumn("Materials", "consumable"),
    TableColumn("Labor", "labor"),
    TableColumn("Total", "total"),
)
OPENINGS = (TableColumn("Opening", "opening", 3), TableColumn("Room", "room", 5), *MONEY)
ROOMS = (TableColumn("Room", "room", 5), TableColumn("Openings", "openings", 1), *MONEY)
WORK = (
    TableColumn("Work", "work", 4),
    TableColumn("Amount", "quantity", 1),
    TableColumn("Unit", "unit", 2),
    TableColumn("Time", "time", 3),
    TableColumn("Minutes", "minutes", 1),
)
WAITS = (TableColumn("After", "after", 4), TableColumn("Hours", "hours", 2))
CATEGORIES = {
    "stock": "Sticks, as far as they become pieces",
    "waste": "Waste of the sticks",
    "kept_offcut": "Offcuts that go back on the rack",
    "consumable": "Materials",
    "labor": "Labor",
}


def cost_sheet(house: SheetHouse) -> Document:
    """The house's money and hours.

    Raises:
        ValueError: for a house whose cost was not worked out.
    """
    cost = house.work.cost if house.work else None
    if cost is None:
        raise ValueError("a cost sheet needs the house's cost")
    blocks: list[Block] = []
    if cost.unpriced:
        blocks.append(Notes("Without a price", tuple(_unpriced(cost))))
    blocks += [_lines(cost), _rooms(cost), _openings(cost)]
    if house.work and house.work.hours:
        blocks += [_work(house.work.hours), _waits(house.work.hours)]
    return Document("cost-sheet", "Cost sheet", house.name, tuple(blocks), house.paper)


def _unpriced(cost: CostSheet) -> Iterator[Sentence]:
    profiles = [one.name for one in cost.unpriced if one.category == "stock"]
    others = [words(one.name) for one in cost.unpriced if one.category != "stock"]
    if profiles:
        yield say("note", "sheet.unstocked", profiles=tuple(profiles))
    if others:
        yield say("note", "sheet.unpriced", lines=tuple(others))


def _names_unpriced(cost: CostSheet) -> Iterator[str]:
    """What has no price, category by category: sheets have little room."""
    for category in CATEGORIES:
        names = [one.name for one in cost.unpriced if one.category == category]
        if names:
            yield ", ".join(names if category == "stock" else map(words, names))


def _lines(cost: CostSheet) -> Table:
    groups = []
    for category, title in CATEGORIES.items():
        cells: tuple[tuple[Cell, ...], ...] = tuple(
            (words(line.name), Money(line.amount)) for line in cost.lines if line.category == category
        )
        if cells:
            groups.append(Rows(cells, title))
    if cost.unpriced:
        missing: tuple[tuple[Cell, ...], ...] = tuple((names, "") for names in _names_unpriced(cost))
        groups.append(Rows(missing, "Without a price, not in the total"))
    return Table(
        "lines",
        f"What it costs ({cost.currency})",
        LINES,
        tuple(groups),
        ("The whole house", Money(cost.total.total)),
    )


def _money(amounts: CostTotals) -> tuple[Cell, ...]:
    return (
        Money(amounts.stock),
        Money(amounts.waste),
        Money(amounts.kept_offcut),
        Money(amounts.consumable),
        Money(amounts.labor),
        Money(amounts.total),
    )


def _rooms(cost: CostSheet) -> Table:
    rows: tuple[tuple[Cell, ...], ...] = tuple(
        (one.room or "no room named", one.openings, *_money(one.amounts)) for one in cost.rooms
    )
    total: tuple[Cell, ...] = (
        "The whole house",
        sum(one.openings for one in cost.rooms),
        *_money(cost.total),
    )
    return Table("rooms", "By room", ROOMS, (Rows(rows),), total)


def _openings(cost: CostSheet) -> Table:
    rows: tuple[tuple[Cell, ...], ...] = tuple(
        (one.opening, one.room, *_money(one.amounts)) for one in cost.openings
    )
    return Table(
        "openings", "By opening", OPENINGS, (Rows(rows),), ("The whole house", "", *_money(cost.total))
    )


def _work(hours: Hours) -> Table:
    rows: tuple[tuple[Cell, ...], ...] = tuple(
        (
            words(one.task),
            Number(one.quantity),
            unit_words(one.unit),
            time(one.minutes),
            Number(one.minutes),
        )
        for one in hours.tasks
    )
    total: tuple[Cell, ...] = ("Hands-on, total", "", "", time(hours.minutes), Number(hours.minutes))
    return Table("work", "Hands-on time", WORK, (Rows(rows),), total)


def _waits(hours: Hours) -> Table:
    rows: tuple[tuple[Cell, ...], ...] = tuple((words(one.after), Number(one.hours)) for one in hours.waits)
    return Table(
        "waits", "Drying, when nobody works", WAITS, (Rows(rows),), ("Total", Number(hours.wait_hours))
    )
