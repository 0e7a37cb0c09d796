"""Openings that many tests start from. Invented sizes."""

from __future__ import annotations

from typing import Any

from longpoint.geometry import Apron, Built, Casing, Opening, Part, Readings, Shape, Stool, Trim
from longpoint.lengths import Fraction

F = Fraction
CASING = Casing("casing", F(5, 2), F(5, 8))
STOOL = Stool("stool", F(3, 4), horn=F(3, 4), nosing=F(7, 8))
APRON = Apron("apron", F(5, 2), F(5, 8))
TRIM = Trim(CASING, F(3, 16), stool=STOOL, apron=APRON)
DEPTH = F("3.125")


def opening(shape: Shape, trim: Trim = TRIM, **fields: Any) -> Opening:
    """An opening of a shape on a stool, its depths read."""
    return Opening("T1", Readings(shape, DEPTH, DEPTH), trim, **fields)


def part(built: Built, key: str) -> Part:
    """The one part of that key."""
    (found,) = [each for each in built.parts if each.key == key]
    return found
