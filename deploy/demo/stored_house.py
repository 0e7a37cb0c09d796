"""Keeps the demo house as a schedule, once, and says where its sheets are."""

from __future__ import annotations

import copy
import urllib.parse
from collections.abc import Callable
from typing import Any

NAME = "The demo house"
SHEETS = {
    "material-list": "what to buy",
    "stick-sheet": "every cut, in order",
    "opening-sheet": "a page for each opening",
    "labels": "a label for each piece",
    "cost-sheet": "money and hours",
    "measure-sheet": "the readings, to check",
    "cut-list": "sticks and pieces",
}
Ask = Callable[[str, Any], Any]
"""Sends a body (None to read) to a path of the service; gives the answer."""


def keep_house(ask: Ask, house: dict[str, Any]) -> str:
    """The id of the house's schedule: the one of its name that is there, as it stands by now, else a new one."""
    query = urllib.parse.urlencode({"name": NAME, "archived": "false", "limit": 100})
    for line in ask(f"/v1/schedules?{query}", None)["items"]:
        if line["name"] == NAME:
            return str(line["id"])
    return str(ask("/v1/schedules", schedule_of(house))["id"])


def schedule_of(house: dict[str, Any]) -> dict[str, Any]:
    """A cut-list request as a schedule: its lengths on hand are lots of lengths on hand."""
    body = {**copy.deepcopy(house), "name": NAME, "lengths": []}
    for stock in body["stock"]:
        for on_hand in stock.pop("lengths_on_hand", []):
            delivered = on_hand.pop("count", 1)
            body["lengths"].append({"profile": stock["profile"], "delivered": delivered, **on_hand})
    return body


def plan_line(plan: dict[str, Any]) -> str:
    """What the plan that every sheet is printed from comes to."""
    good = "proven cheapest" if plan["proven"] else f"at most {plan['above']} above the cheapest"
    return f"PLAN {plan['number']} of {NAME.lower()}: {plan['cost']}, {good}"


def sheet_lines(address: str, id: str) -> list[str]:
    """Where a browser finds each sheet: the page, and the PDF to print."""
    lines = [f"SHEETS of {NAME.lower()}, kept as schedule {id}"]
    for sheet, what in SHEETS.items():
        where = f"{address}/v1/schedules/{id}/sheets/{sheet}"
        lines += [f"  {sheet}: {what}", f"    page {where}?format=html", f"    PDF  {where}?format=pdf"]
    return lines
