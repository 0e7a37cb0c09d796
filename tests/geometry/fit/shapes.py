"""Arches and polygons drawn at random, from those a house has to those that try the rounding."""

from __future__ import annotations

import cmath
import math
import random
from collections.abc import Iterator

from longpoint.geometry.fit.chain import Chain, equal_chords, polygon
from longpoint.lengths import Fraction


def arch(draw: random.Random) -> Chain:
    """Equal chords over a width of 1 to 8 ft that rise by a twentieth to a half of it."""
    width = draw.randint(12 * 16, 96 * 16) / 16
    rise = width * draw.uniform(0.05, 0.5)
    radius = (width * width / 4 + rise * rise) / (2 * rise)
    pieces = draw.randint(3, 60)
    turn = 4 * math.degrees(math.atan2(2 * rise, width)) / pieces
    return equal_chords(2 * radius * math.sin(math.radians(turn / 2)), turn, pieces)


def regular(draw: random.Random) -> Chain:
    """Equal sides, at times on the marks, round a circle 1 to 5 ft across."""
    sides = draw.randint(3, 60)
    side = draw.uniform(12, 60) * math.sin(math.pi / sides)
    inside = 180 - 360 / sides
    return polygon(
        [Fraction(round(16 * side) or 1, 16) if draw.random() < 0.3 else side] * sides, [inside] * sides
    )


def uneven(draw: random.Random) -> Chain:
    """Corners anywhere on an ellipse 1 to 5 ft across; no side under a quarter of its share."""
    sides = draw.randint(3, 60)
    while True:
        shares = [draw.uniform(0.5, 1.5) for _ in range(sides)]
        across, up = draw.uniform(6, 30), draw.uniform(6, 30)
        at = 0.0
        corners = []
        for share in shares:
            at += share / sum(shares) * 2 * math.pi
            corners.append(complex(across * math.cos(at), up * math.sin(at)))
        runs = [after - before for before, after in zip(corners, corners[1:] + corners[:1], strict=True)]
        if min(map(abs, runs)) > 1:
            break
        if min(across, up) * 6 / sides < 1.5:
            sides = 3 + sides // 2
    turns = [cmath.phase(after / before) for before, after in zip(runs, runs[1:] + runs[:1], strict=True)]
    return polygon([abs(run) for run in runs], [180 - math.degrees(turn) for turn in turns])


def shapes(count: int, seed: int = 1) -> Iterator[tuple[str, Chain]]:
    draw = random.Random(seed)
    for number in range(count):
        kind = (arch, regular, uneven)[number % 3]
        yield kind.__name__, kind(draw)
