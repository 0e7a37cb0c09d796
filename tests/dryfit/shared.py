"""A stool or an apron under several openings: its pieces laid end to end by their scarfs, over the openings."""

from itertools import pairwise
from typing import Any

from dryfit.misfits import Misfits
from dryfit.piece import Measure
from dryfit.tape import inches, unrounded


def fit_shared(request: dict[str, Any], answer: dict[str, Any], measure: Measure, slack: float) -> list[str]:
    """Everything that does not fit of what a cut list's only group shares, in words.

    Args:
        request: a body of `/v1/cut-list` with one group over all of its openings, left to right.
        answer: what came back.
        measure: exactly, or as marked.
        slack: inches that the rounding of the pieces accounts for.
    """
    misfits = Misfits(slack)
    (trim,) = request["trim_specs"].values()
    (group,) = request["groups"]
    shared = answer["openings"][-1]
    misfits.says("the group's mark", shared["mark"], group["mark"])
    jambs = [float(inches(one["readings"]["jamb_width"])) for one in request["openings"]]
    gaps = [float(inches(gap)) for gap in group["gaps"]]
    spread = float(inches(trim["reveal"]) + inches(trim["casing"]["width"]))
    wide = sum(jambs) + sum(gaps)
    for kind, past in (("apron", 0.0), ("stool", float(inches(trim["stool"]["horn"])))):
        pieces = [part for part in shared["parts"] if part["kind"] == kind]
        starts = _laid(pieces, measure, misfits)
        end = starts[-1] + float(measure(pieces[-1]["overall"]))
        misfits.near(f"the {kind}, end to end", end, wide + 2 * (spread + past))
        _check_joints(group, pieces, starts, spread + past, jambs, misfits)
        if kind == "stool":
            _check_cutouts(pieces, starts, spread + past, jambs, gaps, misfits)
    return misfits.found


def _laid(pieces: list[dict[str, Any]], measure: Measure, misfits: Misfits) -> list[float]:
    """Where each piece starts: a right-hand piece lies over the left-hand one by the thickness, at 45 degrees."""
    starts = [0.0]
    for left, right in pairwise(pieces):
        lower, upper = left["ends"][1], right["ends"][0]
        misfits.says(
            "a scarf's lower half",
            (lower["cut"], lower["bevel_degrees"], lower["long_edge"]),
            ("bevel", 45.0, "back"),
        )
        misfits.says(
            "a scarf's upper half",
            (upper["cut"], upper["bevel_degrees"], upper["long_edge"]),
            ("bevel", 45.0, "face"),
        )
        misfits.says("both halves lean alike", lower["tilt"], upper["tilt"])
        lap = float(unrounded(left["thickness"]))
        starts.append(starts[-1] + float(measure(left["overall"])) - lap)
    return starts


def _check_joints(
    group: dict[str, Any],
    pieces: list[dict[str, Any]],
    starts: list[float],
    before: float,
    jambs: list[float],
    misfits: Misfits,
) -> None:
    """Every joint's middle lies over something solid, and every piece comes from one stick."""
    solid = [before + float(inches(place)) for place in group.get("solid", [])]
    if not solid:
        reached = before
        for jamb, gap in zip(jambs, map(float, map(inches, group["gaps"])), strict=False):
            solid.append(reached + jamb + gap / 2)
            reached += jamb + gap
    for piece, start in zip(pieces[1:], starts[1:], strict=True):
        middle = start + float(unrounded(piece["thickness"])) / 2
        nearest = min(solid, key=lambda place: abs(place - middle))
        misfits.near(f"{piece['key']}'s joint", middle, nearest)
    if "stock_length" in group:
        longest = max(float(unrounded(piece["overall"])) for piece in pieces)
        misfits.says(
            "every piece comes from a stick", longest <= float(inches(group["stock_length"])) + 1e-9, True
        )


def _check_cutouts(
    pieces: list[dict[str, Any]],
    starts: list[float],
    before: float,
    jambs: list[float],
    gaps: list[float],
    misfits: Misfits,
) -> None:
    """Taken together, the cutouts are the stretches of wall between openings."""
    found: list[list[float]] = []
    for piece, start in zip(pieces, starts, strict=True):
        for cutout in piece["cutouts"]:
            left = start + float(unrounded(cutout["at"]))
            right = left + float(unrounded(cutout["length"]))
            if found and left <= found[-1][1] + misfits.slack:
                found[-1][1] = max(found[-1][1], right)
            else:
                found.append([left, right])
    reached, wanted = before, []
    for jamb, gap in zip(jambs, gaps, strict=False):
        wanted.append([reached + jamb, reached + jamb + gap])
        reached += jamb + gap
    misfits.says("the stool's cutouts", len(found), len(wanted))
    for one, other in zip(found, wanted, strict=False):
        misfits.near("a cutout's left", one[0], other[0])
        misfits.near("a cutout's right", one[1], other[1])
