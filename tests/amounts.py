"""Houses of some size as the computed operations take them, what they are refused for, and how much work they are."""

from typing import Any

import httpx
import pytest

from stored import STOCK, TRIM, opening

PIECES = 7
"""Of each of these windows: stool, apron and its two returns, two legs, a head."""


def asked(*openings: dict[str, Any], **changed: Any) -> dict[str, Any]:
    """A house as the computed operations take it."""
    body = {"unit": "in", "trim_specs": {"painted": TRIM}, "stock": STOCK, "planning_seconds": 0}
    return {**body, "openings": list(openings) or [opening("K1")], **changed}


def fault_of(answer: httpx.Response) -> dict[str, Any]:
    """The one thing that a refusal says was wrong."""
    assert answer.status_code == 422, answer.text[:500]
    (fault,) = answer.json()["errors"]
    return dict(fault)


def counted(monkeypatch: pytest.MonkeyPatch, owner: Any, name: str) -> list[int]:
    """Counts the calls of a function from now on."""
    calls, real = [0], getattr(owner, name)

    def call(*given: Any, **named: Any) -> Any:
        calls[0] += 1
        return real(*given, **named)

    monkeypatch.setattr(owner, name, call)
    return calls
