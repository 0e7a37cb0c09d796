"""Casing round a curve or a polygon laid out by its marks and settings alone, corner by corner, on the outline that the
readings make: worked out here with complex numbers. Its slack is the step of the rounding, not what the answer says."""

import cmath
import math
import random
from collections.abc import Iterator, Sequence
from fractions import Fraction
from itertools import pairwise
from typing import Any, NamedTuple

from dryfit.openings import mixed
from dryfit.tape import inches

Request = dict[str, Any]


class Laid(NamedTuple):
    """A chain as it was cut.

    Attributes:
        keys: of its pieces, in order.
        gaps: how far each piece's end lies from its exact place, in steps.
        off: how far each length is off its exact one, in steps.
        stated: the gaps as the answer has them, in steps; of a ring the last is that of the whole.
        marks: the lengths, inches.
        exact: the exact lengths, inches.
    """

    keys: list[str]
    gaps: list[float]
    off: list[float]
    stated: list[float]
    marks: list[Fraction]
    exact: list[float]


def jamb(readings: Request) -> list[complex]:
    """The corners of the jamb's inside faces, counterclockwise from the base's left end."""
    if "sides" in readings:
        at, direction, points = 0j, 0.0, []
        for side, angle in zip(readings["sides"][:-1], readings["angles"][:-1], strict=True):
            points.append(at)
            at += cmath.rect(float(inches(side)), direction)
            direction += math.pi - math.radians(angle)
        return [*points, at]
    width, rise = float(inches(readings["jamb_width"])), float(inches(readings["rise"]))
    height = float(inches(readings.get("jamb_height", "0 in")))
    radius = (width * width / 4 + rise * rise) / (2 * rise)
    center = complex(width / 2, height + rise - radius)
    half = 2 * math.atan2(2 * rise, width)
    count = readings["head_pieces"]
    curve = [
        center + cmath.rect(radius, math.pi / 2 - half + 2 * half * number / count)
        for number in range(count + 1)
    ]
    return [0j, complex(width), *curve] if height else [curve[-1], *curve[:-1]]


def outside(points: Sequence[complex], by: float, *, ring: bool) -> list[complex]:
    """Where the outer edges of casing cross that lies so far outside: of a ring all of them; else from the foot on the
    base at the right to the foot at the left."""
    lines = []
    for start, end in zip(points, [*points[1:], points[0]], strict=True):
        along = (end - start) / abs(end - start)
        lines.append((start - 1j * along * by, along))
    if not ring:
        lines[0] = points[0], (points[1] - points[0]) / abs(points[1] - points[0])
    pairs = zip(lines, [*lines[1:], lines[0]], strict=True)
    return [_crossing(*one, *other) for one, other in pairs]


def _crossing(start: complex, along: complex, other: complex, across: complex) -> complex:
    apart = other - start
    return start + along * (_cross(apart, across) / _cross(along, across))


def _cross(one: complex, other: complex) -> float:
    return (one.conjugate() * other).imag


def lay(request: Request, answer: Request, number: int = 0, *, past: float = 0.0) -> Laid:
    """Lay one chain of an answer out.

    Args:
        request: a body of `/v1/opening`, each length with its unit.
        answer: what came back.
        number: of the closing.
        past: how far outside the casing's outer edge its line lies, inches.
    """
    trim, step = request["trim"], float(inches(request.get("rounding", {}).get("to", "1/16 in")))
    closing = answer["closings"][number]
    pieces = {piece["key"]: piece for piece in answer["pieces"]}
    ring = request["bottom"] == "casing"
    by = float(inches(trim["reveal"])) + float(inches(trim["casing"]["width"])) + past
    ends = outside(jamb(request["readings"]), by, ring=ring)
    joints = closing["corners"]
    keys = [joints[0]["before"], *(joint["after"] for joint in joints)]
    if ring:
        assert keys.pop() == keys[0]
    assert [joint["before"] for joint in joints] == keys[: len(joints)]
    count = len(keys)
    starts = [ends[-1], *ends[:-1]] if ring else ends[:-1]
    finishes = ends if ring else ends[1:]
    first = keys.index(closing["first"])
    order = [(first + place) % count for place in range(count)]
    at = starts[first]
    direction = cmath.phase(finishes[first] - at) + math.radians(closing["first_turned"])
    gaps, marks = [0.0] * count, [inches(pieces[key]["long_point"]["text"]) for key in keys]
    for place in order:
        at += cmath.rect(float(marks[place]), direction)
        gaps[place] = abs(at - finishes[place]) / step
        if place < len(joints):
            turn = joints[place]["before_degrees"] + joints[place]["after_degrees"]
            direction += math.radians(turn)
    exact = [abs(end - start) for start, end in zip(starts, finishes, strict=True)]
    off = [abs(float(mark) - length) / step for mark, length in zip(marks, exact, strict=True)]
    stated = [float(inches(joint["gap"])) / step for joint in joints]
    if not ring:
        stated.append(float(inches(closing["gap"])) / step)
    return Laid(keys, gaps, off, stated, marks, exact)


def misfits(request: Request, answer: Request) -> list[str]:
    """What of a chain is off by more than a step, or a corner by more than one and a half, or not as it is stated."""
    laid, closing = lay(request, answer), answer["closings"][0]
    step = float(inches(request.get("rounding", {}).get("to", "1/16 in")))
    slack = 6e-5 / step  # gaps come with four decimals, settings with six
    found = []
    last = laid.keys[laid.keys.index(closing["first"]) - 1]
    end = laid.gaps[laid.keys.index(last)]
    if closing["closes"] and end > 1 + slack:
        found.append(f"the whole stands {end:.3f} steps open")
    if closing["closes"] and max(laid.gaps) > 1.5 + slack:
        found.append(f"a corner stands {max(laid.gaps):.3f} steps off")
    if max(laid.off) > 1 + slack:
        found.append(f"a piece is {max(laid.off):.3f} steps off its length")
    for key, gap, stated in zip(laid.keys, laid.gaps, laid.stated, strict=True):
        if abs(gap - stated) > slack:
            found.append(f"{key} ends {gap:.4f} steps off, {stated:.4f} stated")
    settings = [joint[name] for joint in closing["corners"] for name in ("before_degrees", "after_degrees")]
    off_the_scale = [each for each in settings if abs(each * 10 - round(each * 10)) > 1e-9]
    return found + [f"{setting} is on no mark of the saw's scale" for setting in off_the_scale]


def openings(count: int, seed: int, to: str) -> Iterator[tuple[str, Request]]:
    """Random arches up to 8 ft wide and polygons up to 4 1/2 ft across, as requests of `/v1/opening`, and of which kind
    each is. In larger ones a tenth of a degree is more than the finer marks can mend."""
    chance = random.Random(seed)
    for _ in range(count):
        kind = chance.choice(("arch", "arch on the base", "regular", "uneven"))
        yield (
            kind,
            {
                "mark": "A1",
                "bottom": chance.choice(("casing", "floor")),
                "readings": _readings(kind, chance),
                "trim": {
                    "casing": {"width": _length(chance, 1, 5), "thickness": "5/8 in"},
                    "reveal": _length(chance, 0, 1, 12),
                },
                "rounding": {"to": to},
            },
        )


def _length(chance: random.Random, least: int, most: int, top: int = 16) -> str:
    return f"{mixed(Fraction(chance.randrange(least * 16 + 1, (most - 1) * 16 + top), 16))} in"


def _readings(kind: str, chance: random.Random) -> Request:
    if kind.startswith("arch"):
        width = Fraction(chance.randrange(20 * 16, 96 * 16), 16)
        least = 50 if kind == "arch on the base" else 5
        rise = max(round(width * 16 * Fraction(chance.randrange(least, 101), 200)), 16)
        head = {
            "jamb_width": f"{mixed(width)} in",
            "rise": f"{mixed(Fraction(rise, 16))} in",
            "head_pieces": chance.randrange(3, 40),
        }
        return head | ({"jamb_height": _length(chance, 20, 60)} if kind == "arch" else {})
    count = chance.choice((3, *range(5, 25))) if kind == "regular" else chance.randrange(4, 13)
    if kind == "regular":
        side = Fraction(round(chance.uniform(14, 54) * math.sin(math.pi / count) * 16), 16)
        return {"sides": [f"{mixed(side)} in"] * count, "angles": [180 - 360 / count] * count}
    return _uneven(count, chance)


def _uneven(count: int, chance: random.Random) -> Request:
    """The corners lie about evenly on an ellipse, so that none is too sharp or too flat."""
    wide, high = chance.uniform(8, 27), chance.uniform(8, 27)
    turns = [(number + chance.uniform(-0.2, 0.2)) * math.tau / count for number in range(count)]
    points = [complex(wide * math.cos(turn), high * math.sin(turn)) for turn in turns]
    runs = [end - start for start, end in pairwise([*points, points[0]])]
    sides = [f"{mixed(Fraction(round(abs(run) * 64), 64))} in" for run in runs]
    angles = [180 - math.degrees(cmath.phase(after / run)) for run, after in pairwise([*runs, runs[0]])]
    return {"sides": sides, "angles": [round(angle, 4) for angle in angles]}
