"""The saw sheet: every cut in the order to make it, with how the saw is set, where to mark and what to hold."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import groupby

from longpoint.geometry import PieceKey
from longpoint.sheets.cutting import UPRIGHT, stick_pictures
from longpoint.sheets.document import Block, Cell, Column, Document, Notes, Number, Rows, Table, Tick
from longpoint.sheets.job import AT_THE_SAW, Job, caution_notes
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

ORDERS = (
    Column("Order", "order", 6),
    Column("Minutes", "minutes", 2),
    Column("Cuts", "cuts", 2),
    Column("Sticks picked up", "pick_ups", 3),
    Column("Saw set", "settings", 2),
    Column("Openings begun at once", "open_at_once", 4),
)
CUTS = (
    Column("Step", "step", 2),
    Column("Piece", "piece", 8),
    Column("Cut", "cut", 5),
    Column("Saw", "setting", 5),
    Column("Mark", "mark", 8),
    Column("Hold", "hold", 5),
    Column("Caution", "caution", 4),
    Column("Done", "done", 1),
)
HOW = Notes(
    "How to read it",
    (
        "Face up, outer edge to the fence; an apron flat, top edge to the fence; a stool, back edge.",
        "Cut from the free end of the stick. A mark is the long point of the cut, on the edge named.",
        "Hold what the step says, which is the longer side. Tick and label each piece as it comes off.",
    ),
)
Labels = dict[tuple[str, PieceKey], str]


def saw_sheet(job: Job) -> Document:
    """The three orders, the cuts of the one to cut by, then the sticks as they are cut.

    Raises:
        ValueError: for a job whose saw order was not worked out.
    """
    order = job.work.saw_order if job.work else None
    if order is None:
        raise ValueError("a saw sheet needs the job's saw order")
    labels = {(piece.opening, piece.part.key): piece.label for piece in pieces_by_key(job.cut_list).values()}
    blocks: list[Block] = [
        caution_notes(job, *AT_THE_SAW, "local_codes"),
        _orders(order),
        Notes(words(order.order).capitalize(), (order.why,)),
        HOW,
        *_apart(order, labels),
        _cuts(order, labels, job.wording),
    ]
    blocks += stick_pictures(job, UPRIGHT)
    return Document("saw-sheet", "Saw sheet", job.name, tuple(blocks), job.paper, sideways=True, main="cuts")


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
        names = ", ".join(dict.fromkeys(labels[name.opening, name.part] for name in order.apart))
        yield Notes(
            "Returns on another stick than their own",
            (f"Theirs has no room, or moving them would change what is kept: {names}.",),
        )


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
        label = labels[name.opening, name.part]
        yield label if name.instance == 1 else f"{label}.{name.instance}"
