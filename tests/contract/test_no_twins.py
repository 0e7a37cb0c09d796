"""A thing that is asked or answered is described once: the API's own records do not repeat those of the rooms."""

import dataclasses
import importlib
import pkgutil
from collections.abc import Iterator
from functools import cache
from pathlib import Path

import msgspec

import longpoint
from longpoint.api.document.openapi import document

SERVICE = Path(longpoint.__file__).parent
ROOMS = ("geometry", "shop", "schedules", "stock", "lengths", "values", "sheets")
MOST_TWINS = 12
MOST_LINES_OF_API = 10_500
MOST_LINES_OF_SHELL = 2_450
"""What every request passes: the modules of `api/http`, the server and what finds the routes."""
MOST_LINES_OF_A_FILE = 300

HOW_SAID = "How lengths are written is said of one question as of a house, with no house in it."
IN_PART = "Pieces of no one opening: without its mark, frame or findings."
SECTIONS = "Two of its sections, without a plan of sticks."
ASKED = "What is asked for; the other holds the labels that come of it."
TWINS = {
    ("CornersRequest", "AnyHouse", "rounding unit"): HOW_SAID,
    ("LengthsRequest", "NewSchedule", "lengths rounding unit"): HOW_SAID + " Its lengths are texts to read.",
    ("StoolRequest", "AnyHouse", "rounding unit"): HOW_SAID,
    ("ApronRequest", "AnyHouse", "rounding unit"): HOW_SAID,
    ("CasingRequest", "AnyHouse", "rounding unit"): HOW_SAID,
    ("OpeningRequest", "AnyHouse", "movement rounding unit"): HOW_SAID,
    ("PiecesAnswer", "Built", "notes pieces"): IN_PART,
    ("MaterialsAnswer", "CutListAnswer", "cautions materials"): SECTIONS,
    ("LabelsRequest", "Labels", "grid skip"): ASKED,
}
"""Records of the API that share fields with a record of a room, the fields, and why they may."""


def modules(package: str) -> Iterator[str]:
    found = importlib.import_module(package)
    yield package
    for one in pkgutil.walk_packages(getattr(found, "__path__", ()), f"{package}."):
        yield one.name


@cache
def records(room: str) -> dict[type, frozenset[str]]:
    """Every record that a room defines, with its fields, bases before what is made of them."""
    found: dict[type, frozenset[str]] = {}
    for module in modules(f"longpoint.{room}"):
        for value in vars(importlib.import_module(module)).values():
            if not isinstance(value, type) or value.__module__ != module:
                continue
            if issubclass(value, msgspec.Struct):
                found[value] = frozenset(value.__struct_fields__)
            elif dataclasses.is_dataclass(value):
                found[value] = frozenset(field.name for field in dataclasses.fields(value))
    return dict(sorted(found.items(), key=lambda item: (len(item[0].__mro__), item[0].__qualname__)))


def on_the_wire() -> dict[type, frozenset[str]]:
    """The API's records that bodies are made of, each with the fields it does not have from another record."""
    schemas = {
        (schema["title"].partition("[")[0], frozenset(schema.get("properties", ())))
        for schema in document()["components"]["schemas"].values()
    }
    found = {}
    for record, fields in records("api").items():
        encoded = frozenset(getattr(record, "__struct_encode_fields__", ()))
        if (record.__name__, encoded) in schemas:
            inherited = [getattr(base, "__struct_fields__", ()) for base in record.__mro__[1:-1]]
            found[record] = fields.difference(*(names for names in inherited if isinstance(names, tuple)))
    return found


def twins() -> set[tuple[str, str, str]]:
    """Each record of the API that has two fields or more of one room's record, with the one that has most of them."""
    found = set()
    rooms = [record for room in ROOMS for record in records(room).items()]
    for record, fields in on_the_wire().items():
        shared = [(fields & others, other) for other, others in rooms]
        names, other = max(shared, key=lambda one: len(one[0]))
        if len(names) > 1:
            found.add((record.__name__, other.__name__, " ".join(sorted(names))))
    return found


def lines(path: Path) -> int:
    return len(path.read_text().splitlines())


def test_no_record_of_the_api_repeats_one_of_a_room():
    assert twins() == set(TWINS)
    assert len(TWINS) <= MOST_TWINS


def test_the_records_are_looked_at():
    """The records of every room are found, and those of the API that bodies are made of."""
    assert all(records(room) for room in ROOMS)
    assert {record.__name__ for record in on_the_wire()} >= {"CutListRequest", "Page", "ProblemBody"}


def test_the_api_stays_thin():
    assert sum(map(lines, (SERVICE / "api").rglob("*.py"))) <= MOST_LINES_OF_API


def test_the_shell_stays_small():
    shell = [*(SERVICE / "api" / "http").rglob("*.py"), SERVICE / "api" / "routes.py", SERVICE / "server.py"]
    assert sum(map(lines, shell)) <= MOST_LINES_OF_SHELL


def test_no_file_is_too_long_to_read():
    long = {str(path.relative_to(SERVICE)): lines(path) for path in SERVICE.rglob("*.py")}
    assert {path: count for path, count in long.items() if count > MOST_LINES_OF_A_FILE} == {}
