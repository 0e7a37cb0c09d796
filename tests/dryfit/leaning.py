"""Casing that leans on a wall standing proud, corner by corner: put together in plan, its cuts held in space.

A piece's back runs from its inner edge, on the jamb, up to its outside edge, on the wall. Where the wall stands out
further at one end than at the other, each end is taken as it leans there.
"""

import math
from typing import Any

from dryfit.casing import CASING, Frame
from dryfit.misfits import Misfits
from dryfit.piece import Measure
from dryfit.tape import inches, unrounded

Vector = tuple[float, float, float]


def fit_leaning(
    request: dict[str, Any], frame: Frame, pieces: list[dict[str, Any]], measure: Measure, misfits: Misfits
) -> tuple[float, float] | None:
    """Chain the pieces by their lengths and miters as seen square on the wall, and their bevels by the cuts' planes.

    Args:
        request: what was asked.
        frame: as for casing that lies flat.
        pieces: of the answer.
        measure, misfits: as everywhere.

    Returns:
        Where the legs' outside edges stand, left and right; None in a picture frame.
    """
    unit, names = request.get("unit"), frame.outline.names
    rises = [_rise(corner, unit) for corner in request["readings"]["wall"]]
    cut = {piece["side"]: piece for piece in pieces if str(piece["kind"]).startswith(CASING)}
    wanted = [name for name in names if name != "sill" or frame.foot == "casing"]
    misfits.says("the casing's pieces", sorted(cut), sorted(wanted))
    if sorted(cut) != sorted(wanted):
        return None
    ends = {name: _ends(cut[name], frame, name, rises, measure, misfits) for name in cut}
    for index, name in enumerate(names):
        after = names[(index + 1) % len(names)]
        if name in cut and after in cut:
            _check_corner(name, after, ends, misfits)
        elif name in cut or after in cut:
            _, _, (inner, outer), normal = ends[name] if name in cut else _turned(ends[after])
            leg = name if name in cut else after
            misfits.near(f"the plane of {leg}'s foot", math.dist(normal, (0, -1, 0)), 0.0, 1e-7)
            misfits.near(f"{leg}'s foot, inner edge", inner.imag, frame.base)
            misfits.near(f"{leg}'s foot, outer edge", outer.imag, frame.base)
    if frame.foot == "casing":
        return None
    return ends["left"][2][1].real, ends["right"][0][1].real


Ends = tuple[tuple[complex, complex], Vector, tuple[complex, complex], Vector]
"""Of a piece laid on its side: where it starts, inner and outer; that cut's normal; where it finishes; that normal."""


def _turned(ends: Ends) -> Ends:
    return ends[2], ends[3], ends[0], ends[1]


def _rise(corner: dict[str, Any], unit: str | None) -> float:
    return float(inches(corner["proud"], unit)) if corner.get("proud") else 0.0


def _ends(
    piece: dict[str, Any], frame: Frame, name: str, rises: list[float], measure: Measure, misfits: Misfits
) -> Ends:
    """A piece as it hangs, from its own lengths and saw settings, its inner edge along its line from where it starts.

    On the saw the end a side finishes at is on the left.
    """
    index = frame.outline.names.index(name)
    line, jamb = frame.inner(name), frame.outline.side(index)
    width, thick = float(unrounded(piece["width"])), float(unrounded(piece["thickness"]))
    finish, start = piece["ends"]
    run = {}
    for key, end in (("start", start), ("finish", finish)):
        outer_long = end["long_edge"] == "outer"
        run[key] = width * math.tan(math.radians(end["miter_degrees"])) * (1 if outer_long else -1)
    past = sum(
        _face_past(end, thick) + max(0.0, run[key]) for key, end in (("start", start), ("finish", finish))
    )
    inner = float(measure(piece["overall"])) - past
    outer = inner + run["start"] + run["finish"]
    for figure, length in (("short_point", inner), ("long_point", outer)):
        told = piece[figure]
        # Each figure is rounded by itself, so the text of this one may miss by its own rounding as well.
        more = abs(float(measure(told)) - float(unrounded(told)))
        misfits.near(f"{piece['key']}'s {figure}", float(measure(told)), length, more)
    names = frame.outline.names
    before = names[index - 1]
    base = frame.floor if before == "sill" and frame.foot != "casing" else frame.inner(before)
    begins = line.crosses(base)
    out = -1j * jamb.along
    found: list[Any] = []
    for key, end, rise, at, way in (
        ("start", start, rises[index - 1], begins, -1),
        ("finish", finish, rises[index], begins + jamb.along * inner, 1),
    ):
        flat = math.sqrt(width**2 - rise**2)
        corner = (at, at + jamb.along * way * run[key] + out * flat)
        found += [corner, _normal(end, jamb.along * way, out, flat / width, rise / width, run[key], width)]
    return found[0], found[1], found[2], found[3]


def _face_past(end: dict[str, Any], thick: float) -> float:
    """How far the face runs past the back at an end, by the blade's tilt: outwards over the offcut it is longer."""
    if end["cut"] != "compound":
        return 0.0
    run = thick * math.tan(math.radians(end["bevel_degrees"])) / math.cos(math.radians(end["miter_degrees"]))
    return run if end["bevel_direction"] == end["on_saw"] else 0.0


def _normal(
    end: dict[str, Any], past: complex, out: complex, flat: float, up: float, run: float, width: float
) -> Vector:
    """Which way a cut faces, in space: along the piece past its end, turned by the miter, tipped by the bevel.

    Args:
        past: along the piece, out of its end.
        out: across the wall, away from the opening.
        flat, up: the cosine and the sine of the lean.
        run: how far the cut runs along the piece over its width, outwards positive.
    """
    miter, bevel = math.atan2(run, width), math.radians(end["bevel_degrees"])
    # A blade that leans out over the offcut leaves the face longer: the cut faces down to the back.
    tip = -bevel if end["bevel_direction"] == end["on_saw"] else bevel
    along, across = math.cos(miter) * math.cos(tip), -math.sin(miter) * math.cos(tip)
    x = past * along + out * across * flat - out * math.sin(tip) * up
    return x.real, x.imag, across * up + math.sin(tip) * flat


def _check_corner(name: str, after: str, ends: dict[str, Ends], misfits: Misfits) -> None:
    """Both pieces meet at the short and at the long point, and their cuts lie in one plane, facing each other."""
    mine, theirs = ends[name], ends[after]
    for what, one, other in zip(("short", "long"), mine[2], theirs[0], strict=True):
        misfits.near(f"the {what} points of {name} and {after}", other, one)
    apart = math.dist(mine[3], tuple(-each for each in theirs[1]))
    # Off by so much, the cuts of casing some inches wide gape by a few times as much.
    misfits.near(f"the planes of the cuts of {name} and {after}", apart, 0.0, 1e-7)
