"""Openings as a spreadsheet saves them: read with every fault at its row and column, and written to be read again."""

from __future__ import annotations

import csv
import io
import re
from collections.abc import Callable, Iterable, Iterator
from typing import NamedTuple

import msgspec

from longpoint.api.http.answer import PLAIN
from longpoint.api.http.explain import find_nul, stand_ins
from longpoint.api.http.problems import InvalidRequest, MalformedBody
from longpoint.api.stored.csv_columns import BETWEEN, FIRST, CsvColumn, columns
from longpoint.lengths import Length, Unit
from longpoint.schedules.kept import MOST_OPENINGS
from longpoint.schedules.sent import Openings
from longpoint.sheets.formulas import as_it_was, kept_as_text
from longpoint.shop.house import HouseOpening
from longpoint.texts import Sentence, say
from longpoint.values import Fault, Faults, Place, converted, encoder, nearest

_encode = encoder(PLAIN).encode
_YES = {"yes": True, "true": True, "1": True, "no": False, "false": False, "0": False}
_LARGEST_CELL = 20_000
_MOST_COLUMNS = 500


class Places(NamedTuple):
    """Where the openings of a file came from.

    Attributes:
        rows: The row that each came from.
        columns: The file's own name of each column it has, by the pointer of the field in an opening.
    """

    rows: list[int]
    columns: dict[str, str]


def read_csv(body: bytes, unit: Unit | None) -> tuple[Openings, Places, Faults]:
    """Read a CSV body, its bare lengths in `unit`; what of them cannot be read comes with it, others in its place.

    Raises:
        MalformedBody: when it is not CSV in UTF-8.
        InvalidRequest: with every fault, each at its row and column.
    """
    faults, misread = Faults(), Faults()
    rows = _rows(body)
    header = next(rows, None)
    if header is None:
        raise MalformedBody(say("problem", "csv.empty"))
    if len(header[1]) > _MOST_COLUMNS:
        raise MalformedBody(
            say("problem", "csv.too-many-columns", columns=len(header[1]), most=_MOST_COLUMNS)
        )
    used = _header(header[1], faults)
    openings, numbers, count = [], [], 0
    for number, cells in rows:
        if not any(cell.strip() for cell in cells):
            continue
        count += 1
        if count > MOST_OPENINGS:
            continue  # only counted, to say how many there are
        opening = _opening(number, cells, used, header[1], faults, misread, unit)
        if opening is not None:
            openings.append(opening)
            numbers.append(number)
    if not openings and not faults:
        faults.note(Fault(code="too-few", detail=say("problem", "csv.no-openings"), row=1))
    if count > MOST_OPENINGS:
        detail = say("problem", "csv.too-many-openings", most=MOST_OPENINGS, openings=count)
        faults.note(Fault(code="too-many", detail=detail))
    if faults:
        raise InvalidRequest(_summary(faults), faults.found)
    names = {
        str(Place(column.path)): header[1][place].strip()
        for place, column in enumerate(used)
        if column is not None
    }
    return Openings(tuple(openings)), Places(numbers, names), misread


def write_csv(openings: Iterable[HouseOpening]) -> str:
    """The openings as CSV, with the columns any of them needs; importing it gives the same openings.

    A text that a spreadsheet would take for a formula gets an apostrophe before it, which an import takes off.
    """
    known = list(columns().values())
    rows = [[_cell(column, opening) for column in known] for opening in openings]
    kept = [
        place
        for place, column in enumerate(known)
        if column.name in FIRST or any(row[place] != _shown(column, column.default) for row in rows)
    ]
    out = io.StringIO()
    writer = csv.writer(out)
    writer.writerow([known[place].name for place in kept])
    writer.writerows([row[place] for place in kept] for row in rows)
    return out.getvalue()


def at_row(fault: Fault, sent: Places) -> Fault:
    """A fault of an opening that came as CSV, at its row and column."""
    first, *rest = fault.path or ("",)
    if first != "openings" or not rest:
        return fault
    steps = [str(step) for step in rest[1:]]
    place = str(Place(steps))
    while place and place not in sent.columns:
        place = place.rpartition("/")[0]
    column = sent.columns.get(place) or " ".join(steps).removeprefix("readings ").replace("_", " ")
    return Fault(code=fault.code, detail=fault.detail, row=sent.rows[int(rest[0])], column=column)


def _rows(body: bytes) -> Iterator[tuple[int, list[str]]]:
    try:
        text = body.decode("utf-8-sig")
    except UnicodeDecodeError as error:
        raise MalformedBody(say("problem", "csv.not-utf-8", reason=error.reason)) from error
    first = text.partition("\n")[0]
    delimiter = max(",;\t", key=first.count)
    reader = csv.reader(io.StringIO(text, newline=""), delimiter=delimiter, strict=True)
    before = 0
    try:
        for cells in reader:
            yield before + 1, cells
            before = reader.line_num
    except csv.Error as error:
        raise MalformedBody(say("problem", "csv.not-csv", line=reader.line_num, reason=str(error))) from error


def _header(cells: list[str], faults: Faults) -> list[CsvColumn | None]:
    known = columns()
    used: list[CsvColumn | None] = []
    for cell in cells:
        name = re.sub(r"[\s_]+", " ", cell).strip().lower()
        column = known.get(name)
        if column is not None and column in used:
            detail = say("problem", "csv.column-twice")
            faults.note(Fault(code="given-twice", detail=detail, row=1, column=cell.strip()))
            column = None  # its cells are looked at once
        elif column is None and (name or len(cells) == 1):
            detail = say("problem", "csv.unknown-column") + nearest(name, known)
            faults.note(Fault(code="unknown-column", detail=detail, row=1, column=cell.strip()[:60]))
        used.append(column)
    lacking = [name for name in ("mark", "trim") if known[name] not in used]
    for name in lacking:
        faults.note(
            Fault(
                code="missing", detail=say("problem", "csv.column-missing", column=name), row=1, column=name
            )
        )
    return used


def _opening(
    number: int,
    cells: list[str],
    used: list[CsvColumn | None],
    header: list[str],
    faults: Faults,
    misread: Faults,
    unit: Unit | None,
) -> HouseOpening | None:
    value: dict[str, object] = {"readings": {}}
    before = faults.count
    for place, cell in enumerate(cells):
        text = cell.strip()
        if place >= len(used):
            if text:
                detail = say("problem", "csv.too-many-cells")
                faults.note(Fault(code="too-many", detail=detail, row=number))
            continue
        column = used[place]
        if text and column is not None:
            _put(value, column.path, _read(text, column, number, header[place].strip(), faults))
    if faults.count > before:
        return None
    found, into = Faults(), faults
    opening: HouseOpening | None = None
    try:
        opening = converted(value, HouseOpening, unit)
        find_nul(value, found)
    except msgspec.ValidationError as refusal:
        stood_in = stand_ins(HouseOpening, value, found, unit)
        if stood_in is not None:
            opening, into = converted(stood_in, HouseOpening, unit), misread
        elif not found:
            found.add((), "invalid", say("problem", "body.invalid", reason=str(refusal)))
    names = {str(Place(one.path)): header[place].strip() for place, one in enumerate(used) if one}
    for one in found:
        into.note(at_row(one.under("openings", 0), Places([number], names)))
    return opening if into is misread or not found else None


def _put(value: dict[str, object], path: tuple[str, ...], given: object) -> None:
    first, *rest = path
    if rest:
        inner = value.setdefault(first, {})
        assert isinstance(inner, dict)
        _put(inner, tuple(rest), given)
    else:
        value[first] = given


def _read(text: str, column: CsvColumn, row: int, name: str, faults: Faults) -> object:
    def refuse(detail: Sentence) -> None:
        faults.note(Fault(code="wrong-type", detail=detail, row=row, column=name))

    if len(text) > _LARGEST_CELL:
        refuse(say("problem", "csv.cell-too-long", most=_LARGEST_CELL, given=text[:60]))
        return None
    try:
        match column.kind:
            case "text":
                return as_it_was(text)
            case "texts":
                return [piece.strip() for piece in text.split(BETWEEN.strip())]
            case "whole":
                return int(text)
            case "number":
                return float(text.replace(",", "."))
            case "numbers":
                return [float(piece.replace(",", ".")) for piece in text.split(BETWEEN.strip())]
            case "yes_no":
                return _YES[text.lower()]
            case "json":
                return msgspec.json.decode(text)
    except (ValueError, KeyError, msgspec.DecodeError, RecursionError):
        refuse(_WANTED[column.kind](text[:60]))
        return None


_WANTED: dict[str, Callable[[str], Sentence]] = {
    "whole": lambda given: say("problem", "csv.not-whole", given=given),
    "number": lambda given: say("problem", "csv.not-a-number", given=given),
    "numbers": lambda given: say("problem", "csv.not-numbers", given=given),
    "yes_no": lambda given: say("problem", "csv.not-yes-or-no", given=given),
    "json": lambda given: say("problem", "csv.not-json", given=given),
}


def _cell(column: CsvColumn, opening: HouseOpening) -> str:
    value: object = opening
    for step in column.path:
        value = getattr(value, step, None)
    return _shown(column, value)


def _shown(column: CsvColumn, value: object) -> str:
    if value is None:
        return ""
    match column.kind:
        case "texts" | "numbers":
            assert isinstance(value, tuple | list)
            return BETWEEN.join(_text(one) for one in value)
        case "yes_no":
            return "yes" if value else "no"
        case "json":
            return _encode(value).decode()
        case "text":
            return kept_as_text(_text(value))
    return str(value)


def _text(value: object) -> str:
    return value.text if isinstance(value, Length) else str(value)


def _summary(faults: Faults) -> Sentence:
    if faults.count == 1:
        return faults.found[0].detail
    return say("problem", "csv.several-wrong", faults=faults.count)
