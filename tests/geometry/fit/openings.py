"""Openings drawn at random, their readings by coordinates, and the slips a tape is read with."""

from __future__ import annotations

import math
import random
from collections.abc import Mapping, Sequence

from longpoint.geometry.fit.readings import Reading, ReadingKind

SIX = (
    ReadingKind.WIDTH_BOTTOM,
    ReadingKind.WIDTH_TOP,
    ReadingKind.HEIGHT_LEFT,
    ReadingKind.HEIGHT_RIGHT,
    ReadingKind.DIAGONAL_FROM_BOTTOM_LEFT,
    ReadingKind.DIAGONAL_FROM_BOTTOM_RIGHT,
)
NINE = (*SIX, ReadingKind.SILL_LEVEL, ReadingKind.LEFT_PLUMB, ReadingKind.RIGHT_PLUMB)
TEN = (*NINE, ReadingKind.HEAD_LEVEL)
MIDDLE = (*SIX, ReadingKind.WIDTH_MIDDLE, ReadingKind.HEIGHT_MIDDLE)
ALL = (*TEN, ReadingKind.WIDTH_MIDDLE, ReadingKind.HEIGHT_MIDDLE)
SPREAD, BUBBLE = 1 / 32, 1 / 64
BUBBLES = {ReadingKind.SILL_LEVEL, ReadingKind.HEAD_LEVEL, ReadingKind.LEFT_PLUMB, ReadingKind.RIGHT_PLUMB}

Shape = Mapping[str, complex]


WINDOWS = (24, 60, 36, 66)
"""Least and greatest width, least and greatest height, inches: what most windows of a house are."""

ANY = (20, 72, 30, 84)
"""The same, with doors and narrow windows: the longer an opening, the less its short sides show in its diagonals."""


def opening(
    draw: random.Random, off_square: float = 0.5, sizes: tuple[float, float, float, float] = WINDOWS
) -> Shape:
    """An opening with each upper corner off by up to half of so much, the whole up to half a degree off level."""
    width, height = draw.uniform(*sizes[:2]), draw.uniform(*sizes[2:])

    def off() -> float:
        return draw.uniform(-off_square, off_square) / 2

    turn = complex(math.cos(at := draw.uniform(-0.008, 0.008)), math.sin(at))
    return {
        "bl": 0j,
        "br": width * turn,
        "tr": complex(width + off(), height + off()) * turn,
        "tl": complex(off(), height + off()) * turn,
    }


def exact(shape: Shape, bow: float = 0.0) -> dict[ReadingKind, float]:
    """What a perfect tape reads; a bow opens each pair of members by so much in the middle."""
    bl, br, tr, tl = (shape[name] for name in ("bl", "br", "tr", "tl"))
    return {
        ReadingKind.WIDTH_BOTTOM: abs(br - bl),
        ReadingKind.WIDTH_TOP: abs(tr - tl),
        ReadingKind.HEIGHT_LEFT: abs(tl - bl),
        ReadingKind.HEIGHT_RIGHT: abs(tr - br),
        ReadingKind.DIAGONAL_FROM_BOTTOM_LEFT: abs(tr - bl),
        ReadingKind.DIAGONAL_FROM_BOTTOM_RIGHT: abs(tl - br),
        ReadingKind.WIDTH_MIDDLE: abs((br + tr) / 2 - (bl + tl) / 2) + bow,
        ReadingKind.HEIGHT_MIDDLE: abs((tl + tr) / 2 - (bl + br) / 2) + bow,
        ReadingKind.SILL_LEVEL: (br - bl).imag,
        ReadingKind.HEAD_LEVEL: (tr - tl).imag,
        ReadingKind.LEFT_PLUMB: (tl - bl).real,
        ReadingKind.RIGHT_PLUMB: (tr - br).real,
    }


def read(
    draw: random.Random,
    shape: Shape,
    kinds: Sequence[ReadingKind],
    bow: float = 0.0,
    spread: float = SPREAD,
    bubble: float = BUBBLE,
) -> list[Reading]:
    """Readings off by what a tape and a bubble are."""
    true = exact(shape, bow)
    return [
        Reading(kind, true[kind] + draw.gauss(0, bubble if kind in BUBBLES else spread)) for kind in kinds
    ]


def slipped(readings: Sequence[Reading], number: int, by: float) -> list[Reading]:
    changed = list(readings)
    one = changed[number]
    changed[number] = Reading(one.kind, float(one.value) + by, one.spread, one.over)
    return changed


def swapped(reading: Reading) -> float | None:
    """By how much the reading is off when the last two digits of its whole inches are exchanged; None for alike."""
    whole = int(reading.value)
    other = whole // 100 * 100 + whole % 10 * 10 + whole // 10 % 10
    return other - whole if other != whole and other >= 10 else None
