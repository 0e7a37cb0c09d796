"""The stick sheet: every cut in the order to make it, with how the saw is set, where to mark and what to hold."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import groupby

from longpoint.geometry import PieceKey
from longpoint.sheets.cutting import UPRIGHT, stick_pictures
from longpoint.sheets.document import Block, Cell, Document, Notes, Number, Rows, Table, TableColumn, Tick
from longpoint.sheets.house import AT_THE_SAW, SheetHouse, caution_notes
from longpoint.sheets.pieces import pieces_by_key
from longpoint.sheets.saw_words import (
    care_words,
    cut_words,
    hold_words,
    mark_words,
    setting_words,
)
from longpoint.sheets.wording import Wording, words
from longpoint.shop import Operation, OperationKind, OrderKind, SawOrder
from longpoint.texts import say

ORDERS = (
    TableColumn("Order", "order", 6),
    TableColumn("Minutes", "minutes", 2),
    TableColumn("Cuts", "cuts", 2),
    TableColumn("Sticks picked up", "pick_ups", 3),
    TableColumn("Saw set", "settings", 2),
    TableColumn("Openings begun at once", "open_at_once", 4),
)
CUTS = (
    TableColumn("Step", "step", 2),
    TableColumn("Piece", "piece", 8),
    TableColumn("Cut", "cut", 5),
    TableColumn("Saw", "setting", 5),
    TableColumn("Mark", "mark", 8),
    TableColumn("Hold", "hold", 5),
    TableColumn("Caution", "caution", 4),
    TableColumn("Done", "done", 1),
)
HOW = Notes(
    "How to read it",
    (
        say("note", "sheet.face-up"),
        say("note", "sheet.free-end"),
        say("note", "sheet.hold"),
    ),
)
Labels = dict[tuple[str, PieceKey], str]


def stick_sheet(house: SheetHouse) -> Document:
    """The three orders, the cuts of the one to cut by, then the sticks as they are cut.

    Raises:
        ValueError: for a house whose saw order was not worked out.
    """
    order = house.work.saw_order if house.work else None
    if order is None:
        raise ValueError("a stick sheet needs the house's saw order")
    labels = {
        (piece.opening, piece.piece.key): piece.label for piece in pieces_by_key(house.cut_list).values()
    }
    blocks: list[Block] = [
        caution_notes(house, *AT_THE_SAW, "local_codes"),
        _orders(order),
        Notes(words(order.order).capitalize(), (order.why,)),
        HOW,
        *_apart(order, labels),
        _cuts(order, labels, house.wording),
    ]
    blocks += stick_pictures(house, UPRIGHT)
    return Document(
        "stick-sheet", "Stick sheet", house.name, tuple(blocks), house.paper, sideways=True, main="cuts"
    )


def _orders(order: SawOrder) -> Table:
    rows: tuple[tuple[Cell, ...], ...] = tuple(
        (
            words(one.order),
            Number(round(float(one.minutes))),
            one.cuts,
            one.pick_ups,
            one.settings,
            one.open_at_once,
        )
        for one in order.orders
    )
    return Table("orders", "Three orders", ORDERS, (Rows(rows),))


def _apart(order: SawOrder, labels: Labels) -> Iterator[Notes]:
    if order.apart:
        names = tuple(dict.fromkeys(labels[name.opening, name.piece] for name in order.apart))
        yield Notes("Returns on another stick than their own", (say("note", "sheet.apart", pieces=names),))


def _cuts(order: SawOrder, labels: Labels, wording: Wording) -> Table:
    groups = tuple(
        Rows(tuple(_row(order, one, labels, wording) for one in operations), title)
        for title, operations in groupby(order.operations, key=lambda one: _group(order, one, wording))
    )
    return Table("cuts", "Cuts in order", CUTS, groups)


def _group(order: SawOrder, one: Operation, wording: Wording) -> str:
    """What the cuts under one heading have in common."""
    match order.order:
        case OrderKind.STICK_BY_STICK:
            return f"{one.profile}, {one.stick}" if one.stick else f"{one.profile}, no stick planned"
        case OrderKind.OPENING_BY_OPENING:
            return one.pieces[0].opening
    return setting_words(order.setting_of(one), wording)


def _row(order: SawOrder, one: Operation, labels: Labels, wording: Wording) -> tuple[Cell, ...]:
    setting = order.setting_of(one)
    return (
        str(one.number),
        _piece(one, labels),
        cut_words(one, wording),
        setting_words(setting, wording),
        mark_words(one, setting, wording),
        hold_words(one, wording),
        care_words(one),
        Tick(),
    )


def _piece(one: Operation, labels: Labels) -> str:
    """Its number and its name; of a whole stick the numbers of its pieces."""
    names = ", ".join(dict.fromkeys(_names(one, labels)))
    return names if one.kind is OperationKind.RIP_STICK else f"{names} {one.title}"


def _names(one: Operation, labels: Labels) -> Iterator[str]:
    for name in one.pieces:
        label = labels[name.opening, name.piece]
        yield label if name.instance == 1 else f"{label}.{name.instance}"
