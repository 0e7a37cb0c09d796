"""Rewrite an export of 0.1.0 under the names of today."""

import argparse
import csv
import io
import json
import sys
from pathlib import Path

from longpoint.schedules.words import export_of_today, row_of_today

NAME = "convert-export"
HELP = "Print an export of 0.1.0, JSON or CSV, under the names of today; the file stays as it is."


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Declare the command's arguments."""
    parser.add_argument("file", type=Path, help="the export; CSV when its name ends in .csv")


def run(chosen: argparse.Namespace) -> int:
    """Convert."""
    try:
        said = chosen.file.read_text(encoding="utf-8-sig")
        print(_csv(said) if chosen.file.suffix.lower() == ".csv" else _json(said), end="")
    except OSError as failure:
        print(f"longpoint: {chosen.file} cannot be read: {failure.strerror}.", file=sys.stderr)
        return 2
    except ValueError as failure:
        print(f"longpoint: {chosen.file} is no export: {failure}.", file=sys.stderr)
        return 2
    return 0


def _json(said: str) -> str:
    document = json.loads(said)
    if not isinstance(document, dict):
        raise ValueError("it is not one JSON object")
    return json.dumps(export_of_today(document), ensure_ascii=False, indent=2) + "\n"


def _csv(said: str) -> str:
    rows = csv.DictReader(io.StringIO(said))
    out = io.StringIO()
    renamed = [row_of_today({str(name): cell or "" for name, cell in row.items()}) for row in rows]
    if not renamed:
        raise ValueError("there is no opening below the columns' names")
    writer = csv.DictWriter(out, list(renamed[0]), lineterminator="\r\n")
    writer.writeheader()
    writer.writerows(renamed)
    return out.getvalue()
