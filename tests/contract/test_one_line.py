"""A field is defined once: one line in its record, and it is read, refused, kept, compared, answered and described."""

import ast
import json
import os
import shutil
import subprocess
import sys
from pathlib import Path
from typing import NamedTuple

import pytest

ROOT = Path(__file__).parents[2]
TESTS = ROOT / "tests"

# x: it must turn up there. A computation does not answer what it was asked, and what is only answered is never sent; a
# comparison and a restored revision are of the house and its openings, not of lengths on hand; a spreadsheet holds
# openings alone. Recorded work is answered when it is recorded; what is exported and brought back is the house without
# it.
TABLE = """
                  document request refused worked_out answered stored history restored compared export import csv sdk ts
reading           x        x       x       x          -        x      x       x        x        x      x      x   x   x
opening           x        x       x       x          -        x      x       x        x        x      x      x   x   x
trim              x        x       x       x          -        x      x       x        x        x      x      -   x   x
stock_rule        x        x       x       x          -        x      x       x        x        x      x      -   x   x
length_on_hand    x        x       x       x          -        x      x       -        -        x      x      -   x   x
rate              x        x       x       x          -        x      x       x        x        x      x      -   x   x
wage              x        x       x       x          -        x      x       x        x        x      x      -   x   x
group             x        x       x       x          -        x      x       x        x        x      x      -   x   x
work              x        x       x       -          x        x      -       -        -        -      -      -   x   x
answered_piece     x        -       -       -          x        x      -       -        -        -      -      -   x   x
answered_opening  x        -       -       -          x        x      -       -        -        -      -      -   x   x
answered_finding  x        -       -       -          x        x      -       -        -        -      -      -   x   x
"""


class Line(NamedTuple):
    """The line that defines a field, and the record (or the list of rates) it is added to."""

    file: str
    record: str
    text: str


LINES = {
    "reading": Line("geometry/readings/readings.py", "Readings", "tail_depth: Length | None = None"),
    "opening": Line(
        "geometry/readings/inputs.py", "AnyOpening", 'ledge: PositiveLength = PositiveLength.of("1/2 in")'
    ),
    "trim": Line("geometry/readings/trim.py", "Trim", "drip: Length = NOUGHT"),
    "stock_rule": Line("shop/yard.py", "StockForSale", "cartage: Price = Price(0)"),
    "length_on_hand": Line("shop/yard.py", "OnHand", "sound_to: PositiveLength | None = None"),
    "rate": Line("shop/rates.py", "DEFAULTS", '_rate("oil_wait", "3", "h", "until oil can be sanded"),'),
    "wage": Line("shop/wages.py", "Wages", "driving: Price | None = None"),
    "group": Line("geometry/group.py", "Group", "label: Name | None = None"),
    "work": Line("schedules/kept.py", "RecordedPiece", "saw: Name | None = None"),
    "answered_piece": Line("geometry/piece.py", "Piece", "slack: Real = Fraction(5, 8)"),
    "answered_opening": Line("shop/answer.py", "OpeningAnswer", "sashes: int = 2"),
    "answered_finding": Line("geometry/checks/findings.py", "Finding", "spare: Real | None = None"),
}


def rows() -> dict[str, set[str]]:
    """The places where each kind must turn up."""
    head, *lines = TABLE.strip().splitlines()
    places = head.split()
    return {
        kind: {place for place, mark in zip(places, marks, strict=True) if mark == "x"}
        for kind, *marks in map(str.split, lines)
    }


def add(source: Path, line: Line) -> None:
    """Put the line behind the record's last field, or the last rate."""
    text = source.read_text()
    (node,) = (
        one
        for one in ast.parse(text).body
        if getattr(one, "name", getattr(getattr(one, "target", None), "id", None)) == line.record
    )
    last: ast.stmt | ast.expr
    if isinstance(node, ast.ClassDef):
        last = [one for one in node.body if isinstance(one, ast.AnnAssign)][-1]
    else:
        (listed,) = (one for one in ast.walk(node) if isinstance(one, ast.Tuple) and len(one.elts) > 5)
        last = listed.elts[-1]
    lines = text.splitlines(keepends=True)
    lines.insert(last.end_lineno or 0, f"{' ' * last.col_offset}{line.text}\n")
    source.write_text("".join(lines))


@pytest.fixture(scope="module")
def missed(tmp_path_factory: pytest.TempPathFactory) -> dict[str, dict[str, list[str]]]:
    """Where each kind was looked for in a copy with one line more for each, and where it was not found."""
    copy = tmp_path_factory.mktemp("copy")
    for name in ("service", "sdk", "openapi"):
        shutil.copytree(ROOT / name, copy / name, ignore=shutil.ignore_patterns("__pycache__"))
    shutil.copy(ROOT / "pyproject.toml", copy)
    for line in LINES.values():
        add(copy / "service/longpoint" / line.file, line)
    done = subprocess.run(
        [sys.executable, TESTS / "one_line.py", copy],
        capture_output=True,
        text=True,
        env={
            "PATH": os.environ["PATH"],
            "PYTHONPATH": os.pathsep.join(map(str, (copy / "service", copy / "sdk/src", TESTS))),
        },
    )
    assert done.returncode == 0, done.stderr
    found: dict[str, dict[str, list[str]]] = json.loads(done.stdout)
    return found


@pytest.mark.parametrize("kind", rows())
def test_one_line_is_the_whole_definition_of_a_field(
    kind: str, missed: dict[str, dict[str, list[str]]]
) -> None:
    assert missed[kind] == {place: [] for place in rows()[kind]}
