"""Examples are of an invented house: figures of a published example stand only where it is checked, in `outside`."""

import re
from pathlib import Path

ROOT = Path(__file__).parents[2]
ROOMS = ("service", "sdk", "deploy", "openapi", "tests")
KINDS = {".py", ".md", ".json", ".ts", ".sh", ".html", ".js", ".css", ".toml"}
OUTSIDE = ROOT / "tests" / "outside"
# 34 and a half jamb to jamb and the stool that follows from it, in every way a tape's reading is written.
BORROWED = re.compile(
    r"(?<![\d./])(?:34(?:[ -]1/2|\s?½)|2(?:'|′| ?ft| feet) ?10[ -]?(?:1/2|½)|43[ -]1/2)(?!\d)|\b69/2\b"
)


def test_no_example_is_of_the_worked_window_of_another() -> None:
    files = [ROOT / "README.md", ROOT / "DEVELOPERS.md"]
    for room in ROOMS:
        files += [file for file in (ROOT / room).rglob("*") if file.suffix in KINDS and file.is_file()]
    found = [
        f"{file.relative_to(ROOT)}: {match[0]}"
        for file in files
        if OUTSIDE not in file.parents and ".venv" not in file.parts and file != Path(__file__)
        for match in BORROWED.finditer(file.read_text(encoding="utf-8"))
    ]
    assert found == []
