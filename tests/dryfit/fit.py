"""One opening's answer put together and held against its readings."""

import math
from typing import Any

from dryfit.casing import Job, fit_casing
from dryfit.misfits import Misfits
from dryfit.outline import outline
from dryfit.rounding import check_roundings
from dryfit.stool import fit_apron, fit_stool
from dryfit.tape import as_cut, inches, rounding_error, unrounded

ANGLE_SLACK = math.radians(0.5e-6)
"""Angles come with six decimals of a degree; every end may be so far off, and turn all that follows it."""

EXACT_SLACK = 2e-6
"""Inches that nine decimals of a real length and floats themselves may come to."""


def dry_fit(request: dict[str, Any], answer: dict[str, Any], *, as_marked: bool = False) -> list[str]:
    """Everything that does not fit, in words.

    Args:
        request: a body of `/v1/opening` (or one opening of a cut list with its trim spec put in).
        answer: what came back, one opening.
        as_marked: cut the pieces to the rounded texts, and allow what rounding them accounts for.
    """
    unit = request.get("unit")
    trim, readings = request["trim"], request["readings"]
    measure = as_cut if as_marked else unrounded
    misfits = Misfits(_turned_away(answer) + (_rounded_away(answer) if as_marked else 0.0))
    if as_marked:
        check_roundings(request, answer, misfits)
    shape = outline(readings, unit)
    job = Job(
        outline=shape,
        reveals={name: _reveal(request, name, unit) for name in shape.names},
        foot=request.get("foot_style", "stool"),
        butted=trim.get("head_style") == "butted",
        overhang=float(inches(trim.get("overhang", "0 in"), unit)),
        base=_base(request, answer, measure),
        taken_square=_told_gap(answer["square_gap"]),
    )
    placed = fit_casing(job, answer["parts"], measure, misfits)
    if job.foot != "stool" or not placed:
        return misfits.found
    # Where a leg leans and was cut square, its outside edge at the stool comes in by the versed sine of its lean.
    misfits.slack += job.taken_square**2
    outsides = (placed["left"].left.outer.real, placed["right"].right.outer.real)
    apron = trim.get("apron")
    if apron:
        fit_apron(
            answer["parts"],
            measure,
            misfits,
            jamb=shape.length(0),
            outsides=outsides,
            returned=apron.get("ends", "mitred_return") == "mitred_return",
        )
    stool = trim["stool"]
    both = readings.get("jamb_depth")
    under = apron or trim["casing"]
    fit_stool(
        next(part for part in answer["parts"] if part["kind"] == "stool"),
        measure,
        misfits,
        jamb=shape.length(0),
        depths=(
            float(inches(both or readings["left_depth"], unit)),
            float(inches(both or readings["right_depth"], unit)),
        ),
        outsides=outsides,
        horn=float(inches(stool["horn"], unit)),
        clearance=float(inches(stool.get("sash_clearance", "0 in"), unit)),
        front=float(inches(under["thickness"], unit) + inches(stool["nosing"], unit)),
    )
    return misfits.found


def _told_gap(text: str) -> float:
    """The gap told, with half of the last decimal it is told to; nought stays nought."""
    gap = float(inches(text))
    return gap + 5e-5 if gap else 0.0


def _reveal(request: dict[str, Any], name: str, unit: str | None) -> float:
    own = request.get("reveals", {}).get(name.split()[0])
    return float(inches(own or request["trim"]["reveal"], unit))


def _base(request: dict[str, Any], answer: dict[str, Any], measure: Any) -> float:
    foot = request.get("foot_style", "stool")
    if foot == "floor":
        return float(inches(request["trim"].get("floor_clearance", "0 in"), request.get("unit")))
    if foot == "plinth":
        blocks = [part for part in answer["parts"] if part["kind"] == "plinth_block"]
        assert sorted(block["side"] for block in blocks) == ["left", "right"]
        left, right = (float(measure(block["overall"])) for block in blocks)
        assert left == right
        return left
    return 0.0


def _turned_away(answer: dict[str, Any]) -> float:
    """What the last decimals of the angles come to over all pieces, had they all turned the same way."""
    around = sum(float(unrounded(part["overall"])) for part in answer["parts"])
    return EXACT_SLACK + ANGLE_SLACK * 2 * len(answer["parts"]) * around


def _rounded_away(answer: dict[str, Any]) -> float:
    """What all roundings of one opening's pieces come to, had they all gone the same way."""
    total = 0.0
    for part in answer["parts"]:
        lengths = [part["overall"], part["rip_width"]]
        lengths += [
            notch[name] for end in part["ends"] if (notch := end["notch"]) for name in ("depth", "length")
        ]
        total += sum(abs(rounding_error(length)) for length in lengths if length)
    return total
