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
    first, last = request["openings"][0], request["openings"][-1]
    jambs = [float(inches(one["readings"]["jamb_width"])) for one in request["openings"]]
    gaps = [float(inches(gap)) for gap in group["gaps"]]
    spreads = _spread(first, trim, "left"), _spread(last, trim, "right")
    horns = [
        float(inches(one.get("horns", {}).get(side) or trim["stool"]["horn"]))
        for one, side in ((first, "left"), (last, "right"))
    ]
    wide = sum(jambs) + sum(gaps)
    kinds = [("stool", horns[0], horns[1]), *([("apron", 0.0, 0.0)] if "apron" in trim else [])]
    misfits.says("an apron", any(piece["kind"] == "apron" for piece in shared["pieces"]), len(kinds) == 2)
    for kind, before, after in kinds:
        pieces = [piece for piece in shared["pieces"] if piece["kind"] == kind]
        starts = _laid(pieces, measure, misfits)
        end = starts[-1] + float(measure(pieces[-1]["overall"]))
        misfits.near(f"the {kind}, end to end", end, wide + sum(spreads) + before + after)
        _check_joints(group, pieces, starts, spreads[0] + before, jambs, misfits)
        if kind == "stool":
            _check_cutouts(pieces, starts, spreads[0] + before, jambs, gaps, misfits)
            _check_depths(request, trim, pieces, starts, spreads[0] + before, misfits)
        _check_returns(kind, trim[kind], pieces, shared["pieces"], measure, misfits)
    return misfits.found


def _spread(opening: dict[str, Any], trim: dict[str, Any], side: str) -> float:
    reveal = opening.get("reveals", {}).get(side) or trim["reveal"]
    return float(inches(reveal) + inches(opening.get("widths", {}).get(side) or trim["casing"]["width"]))


def _depths(opening: dict[str, Any]) -> tuple[float, float]:
    readings = opening["readings"]
    both = readings.get("jamb_depth")
    return float(inches(both or readings["left_depth"])), float(inches(both or readings["right_depth"]))


def _check_depths(
    request: dict[str, Any],
    trim: dict[str, Any],
    pieces: list[dict[str, Any]],
    starts: list[float],
    before: float,
    misfits: Misfits,
) -> None:
    """The stool is ripped for the deepest opening, and sawn out as deep as each was read at its own side."""
    stool = trim["stool"]
    clearance = float(inches(stool.get("sash_clearance", "0 in")))
    less = clearance + float(inches(stool.get("scribe", "0 in")))
    read = [_depths(opening) for opening in request["openings"]]
    under = trim.get("apron") or trim["casing"]
    front = float(inches(under["thickness"]) + inches(stool["nosing"]))
    width = max(each for pair in read for each in pair) + front - clearance
    for piece in pieces:
        misfits.near(f"{piece['key']}'s width", float(unrounded(piece["rip_width"])), width)
    for end, depth in ((pieces[0]["ends"][0], read[0][0]), (pieces[-1]["ends"][1], read[-1][1])):
        misfits.near(f"the {end['at']} notch", float(unrounded(end["notch"]["depth"])), depth - less)
    # From the left: where each gap begins and ends, and how deep the wall lies there.
    reached, walls = before, []
    for number, opening in enumerate(request["openings"][:-1]):
        reached += float(inches(opening["readings"]["jamb_width"]))
        gap = float(inches(request["groups"][0]["gaps"][number]))
        walls.append((reached, reached + gap, read[number][1] - less, read[number + 1][0] - less))
        reached += gap
    for piece, start in zip(pieces, starts, strict=True):
        for cutout in piece["cutouts"]:
            left = start + float(unrounded(cutout["at"]))
            right = left + float(unrounded(cutout["length"]))
            one, other = cutout["depth"], cutout["end_depth"] or cutout["depth"]
            for at, told in ((left, one), (right, other)):
                begins, ends, deep, deeper = min(
                    walls, key=lambda wall: abs(wall[0] + wall[1] - left - right)
                )
                wanted = deep + (deeper - deep) * (at - begins) / (ends - begins)
                # Laid by marked lengths a place may be off by the slack, and a sloping depth with it.
                more = abs(deeper - deep) * misfits.slack / (ends - begins)
                misfits.near(f"{piece['key']}'s depth at {at:.2f}", float(unrounded(told)), wanted, more)


def _check_returns(
    kind: str,
    asked: dict[str, Any],
    pieces: list[dict[str, Any]],
    every: list[dict[str, Any]],
    measure: Measure,
    misfits: Misfits,
) -> None:
    """The two outer ends are cut as asked, and returned by as much as they stand off the wall."""
    usual = "square" if kind == "stool" else "mitered_return"
    style = asked.get("ends", usual)
    returns = {piece["side"]: piece for piece in every if piece["kind"] == f"{kind}_return"}
    misfits.says(
        f"the {kind}'s returns", sorted(returns), ["left", "right"] if style == "mitered_return" else []
    )
    cuts = {"mitered_return": "miter" if kind == "stool" else "bevel", "angled": "miter"}
    for end, side in ((pieces[0]["ends"][0], "left"), (pieces[-1]["ends"][1], "right")):
        misfits.says(f"the {kind}'s {side} end", end["cut"], cuts.get(style, "square"))
        if side in returns:
            off = float(unrounded(pieces[0]["thickness"]))
            if kind == "stool":
                off = float(unrounded(pieces[0]["rip_width"])) - float(unrounded(end["notch"]["depth"]))
            told = returns[side]["overall"]
            misfits.near(
                f"the {kind}'s {side} return",
                float(measure(told)),
                off,
                abs(float(measure(told)) - float(unrounded(told))),
            )


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
        misfits.says("both halves lean alike", lower["bevel_direction"], upper["bevel_direction"])
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
