"""The names that 0.1.0 used and what they are called now, in what it stored and exported.

Migration 0004 and the command `convert-export` both use this; what it says never changes once released.
"""

from __future__ import annotations

import math
import re
from collections.abc import Callable
from fractions import Fraction
from typing import Any

Document = dict[str, Any]
FIELDS = {
    "foot_style": "bottom",
    "leg_height": "jamb_height",
    "left_height": "left_jamb_height",
    "right_height": "right_jamb_height",
    "lights": "joined_widths",
    "left_neighbour": "left_neighbor",
    "right_neighbour": "right_neighbor",
    "sill_casing": "bottom_casing",
    "remnants": "lengths_on_hand",
    "fit_minutes": "install_minutes",
    "sharpest_mitre": "sharpest_miter",
    "caulk_fillet": "caulk_bead",
    "part": "piece",
    "mitre": "miter",
    "tilt": "bevel_direction",
}
"""Fields, wherever they stand but as the name of a trim."""
KINDS = {
    "casing_leg": "side_casing",
    "casing_head": "head_casing",
    "casing_sill": "bottom_casing",
    "levelling_strip": "tapered_shim",
}
_ENDS = {"mitred_return": "mitered_return", "mitred": "mitered"}
VALUES = {
    "bottom": {"picture_frame": "casing"},
    "head_style": _ENDS,
    "ends": _ENDS,
    "corners": _ENDS,
    "sill_answer": {"tapered_strip": "tapered_shim"},
    "state": {"fitted": "installed"},
    "cut": {"mitre": "miter"},
}
"""Values, by the new name of their field."""
_TASKS = {"fit": "install"}
_RATES_GONE = ("cut_minutes", "setup_minutes")
"""Rates of 0.1.0 that follow from others today."""
_NAMED_BY_CALLERS = "trim_specs"
_CURVED = re.compile(r"(.+)/head (\d+)")


def _turned(names: dict[str, str]) -> dict[str, str]:
    return {new: old for old, new in names.items()}


class Renaming:
    """Renames a stored document, to the new names or back to those of 0.1.0."""

    def __init__(self, *, back: bool = False) -> None:
        self._back = back
        self._fields = _turned(FIELDS) if back else FIELDS
        self._tasks = _turned(_TASKS) if back else _TASKS
        values = {name: _turned(each) for name, each in VALUES.items()} if back else VALUES
        self._values = (
            {self._fields.get(name, name): each for name, each in values.items()} if back else values
        )

    def document(self, given: Any) -> Any:
        """The same with the other names."""
        if isinstance(given, list):
            return [self.document(one) for one in given]
        if not isinstance(given, dict):
            return given
        new: Document = {}
        for name, value in given.items():
            called = str(self._fields.get(name, name))
            if name == _NAMED_BY_CALLERS and isinstance(value, dict):
                new[name] = {trim: self.document(one) for trim, one in value.items()}
            elif name == "tasks" and isinstance(value, dict):
                new[name] = {self._tasks.get(task, task): self.document(one) for task, one in value.items()}
            elif isinstance(value, str):
                new[called] = self._values.get(called, {}).get(value, value)
            else:
                new[called] = self.document(value)
        return new

    def pointer(self, given: str) -> str:
        """A JSON pointer into such a document."""
        names = given.split("/")
        kept = {2} if names[1:2] == [_NAMED_BY_CALLERS] else set()
        return "/".join(
            name if place in kept else self._fields.get(name, name) for place, name in enumerate(names)
        )

    def key(self, given: str, heads: Callable[[], int]) -> str:
        """A piece's key; `heads` is how many pieces the head of its opening has: they were counted from the right."""
        if self._back:
            given = _with_side(given)
        kind, slash, side = given.partition("/")
        if found := _CURVED.fullmatch(given):
            side = f"head {heads() + 1 - int(found[2])}"
        names = _turned(KINDS) if self._back else KINDS
        new = f"{names.get(kind, kind)}{slash}{side}"
        return new if self._back else _without_side(new)


def _without_side(key: str) -> str:
    """Of casing over the top and under a picture frame the kind says already where it goes."""
    if key in ("head_casing/head", "bottom_casing/sill"):
        return key.partition("/")[0]
    return key.replace("head_casing/head ", "head_casing/")


def _with_side(key: str) -> str:
    if key == "head_casing":
        return "head_casing/head"
    if key == "bottom_casing":
        return "bottom_casing/sill"
    return key.replace("head_casing/", "head_casing/head ")


def heads_of(opening: Document, exact: dict[str, str]) -> int:
    """How many pieces the head of an opening has.

    Args:
        opening: as it is stored, under the old names or the new.
        exact: its lengths as exact fractions of an inch, by pointer.
    """
    readings = opening.get("readings") or {}
    if readings.get("sides"):
        return len(readings["sides"]) - 3
    # On its base a curve's first and last piece stand for the legs.
    legs = 0 if readings.get("leg_height") or readings.get("jamb_height") else 2
    if readings.get("head_pieces"):
        return int(readings["head_pieces"]) - legs
    names = ("jamb_width", "rise", "departure")
    if not all(f"/readings/{name}" in exact for name in names):
        return 1
    width, rise, departure = (Fraction(exact[f"/readings/{name}"]) for name in names)
    radius = float((width * width / 4 + rise * rise) / (2 * rise))
    half = 2 * math.atan2(2 * rise, width)
    turn = math.acos(max(-1.0, 1 - float(departure) / radius))
    return max(3 if legs else 2, math.ceil(half / turn - 1e-9)) - legs


def export_of_today(export: Document) -> Document:
    """An export of 0.1.0 as a body that starts a schedule today."""
    new: Document = Renaming().document(export)
    rack = new.pop("rack", None)
    if rack:
        new["lengths"] = rack
    shop = new.get("shop") or {}
    for name, said in list(shop.items()):
        if said is None:
            del shop[name]
    for name in _RATES_GONE:
        (shop.get("rates") or {}).pop(name, None)
    return {name: said for name, said in new.items() if said is not None}


def row_of_today(row: dict[str, str]) -> dict[str, str]:
    """A row of a CSV export of 0.1.0, by its columns' names of today."""
    new = {}
    for column, cell in row.items():
        field = column.strip().replace(" ", "_")
        called = FIELDS.get(field, field)
        new[called.replace("_", " ")] = VALUES.get(called, {}).get(cell, cell)
    return new
