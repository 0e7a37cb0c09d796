"""A sheet's tables as CSV (RFC 4180), for a spreadsheet or another program."""

from __future__ import annotations

import csv
import io

from longpoint.lengths import round_to
from longpoint.sheets.document import Cell, Money, Number, PrintedLength, Table, Tick
from longpoint.sheets.formulas import kept_as_text
from longpoint.sheets.wording import Wording, number, tape_text


def csv_text(table: Table, wording: Wording) -> str:
    """One table as CSV text.

    Each length comes twice: as a tape reads it, with its unit, and as a decimal number in that unit, which is
    exact where six places can hold it. Rows of a group begin with its title. A text that a spreadsheet would take
    for a formula gets an apostrophe before it.
    """
    lengths = [
        any(isinstance(row[index], PrintedLength) for group in table.groups for row in group.cells)
        for index in range(len(table.columns))
    ]
    ticks = [
        any(isinstance(row[index], Tick) for group in table.groups for row in group.cells)
        for index in range(len(table.columns))
    ]
    grouped = any(group.title for group in table.groups)
    out = io.StringIO()
    writer = csv.writer(out)
    heads = ["group"] if grouped else []
    for column, length, tick in zip(table.columns, lengths, ticks, strict=True):
        if not tick:
            heads += [column.key, f"{column.key}_{wording.unit}"] if length else [column.key]
    writer.writerow(heads)
    for group in table.groups:
        for row in group.cells:
            cells = [kept_as_text(group.title)] if grouped else []
            for cell, length, tick in zip(row, lengths, ticks, strict=True):
                if length:
                    cells += _both(cell, wording)
                elif not tick:
                    cells.append(_one(cell))
            writer.writerow(cells)
    return out.getvalue()


def _both(cell: Cell, wording: Wording) -> list[str]:
    if not isinstance(cell, PrintedLength):
        return [_one(cell), ""]
    value = round_to(cell.inches, wording.rounding)
    number = float(value if wording.unit == "in" else value * 254 / 10)
    return [tape_text(cell.inches, wording), f"{number:.6f}".rstrip("0").rstrip(".")]


def _one(cell: Cell) -> str:
    match cell:
        case Money():
            sign = "-" if cell.cents < 0 else ""
            return f"{sign}{abs(cell.cents) // 100}.{abs(cell.cents) % 100:02d}"
        case Number():
            return number(cell.value)
        case int():
            return str(cell)
        case str():
            return kept_as_text(cell)
    return ""
