"""One opening's answer put together and held against its readings."""

import math
from dataclasses import replace
from typing import Any

from dryfit.casing import CASING, Frame, fit_casing, wander_of
from dryfit.door import fit_door
from dryfit.headdress import fit_strip
from dryfit.leaning import fit_leaning
from dryfit.lining import fit_lining
from dryfit.misfits import Misfits
from dryfit.mulls import fit_mulls
from dryfit.outline import Outline, outline
from dryfit.piece import Measure, SolidPiece
from dryfit.rounding import check_roundings
from dryfit.stool import fit_apron, fit_shim_below, fit_stool
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
    shape = outline(readings, unit, request.get("bottom", "stool") == "stool")
    frame = _frame(request, answer, shape, measure)
    if "door" in readings:
        fit_door(request, answer, measure, misfits)
    if request.get("wall_answer") == "extend":
        fit_lining(request, frame, answer["pieces"], measure, misfits)
    if request.get("wall_answer") == "lean":
        check_widths(request, answer["pieces"], misfits)
        outsides = fit_leaning(request, frame, answer["pieces"], measure, misfits)
        if frame.foot == "stool" and outsides:
            _fit_under(request, answer, outsides, frame, measure, misfits)
        return misfits.found
    check_widths(request, answer["pieces"], misfits)
    placed = fit_casing(frame, answer["pieces"], measure, misfits)
    if not placed:
        return misfits.found
    if "joined_widths" in readings:
        fit_mulls(request, frame, placed, answer["pieces"], measure, misfits)
    strips = (
        {
            "fillet": frame.inner("head"),
            "cap": frame.inner("head").outside(frame.fillet + _width(placed["head"])),
        }
        if frame.butted
        else {}
    )
    loose = frame.taken_square + wander_of(frame) if strips and frame.taken_square else 0.0
    misfits.slack += loose
    for kind, under in strips.items():
        if trim.get(kind):
            middle = shape.corners[3] + (shape.corners[2] - shape.corners[3]) / 2
            overhang = float(inches(trim[kind].get("overhang", "0 in"), unit))
            legs = placed["left"], placed["right"]
            fit_strip(
                kind,
                answer["pieces"],
                measure,
                misfits,
                under=under,
                legs=legs,
                overhang=overhang,
                middle=middle,
            )
    misfits.slack -= loose
    band = trim.get("back_band")
    if band:
        lap = float(inches(band.get("lap", "0 in"), unit))
        reveals = {name: frame.reveals[name] + _width(piece) - lap for name, piece in placed.items()}
        around = replace(frame, reveals=frame.reveals | reveals)
        placed = fit_casing(around, answer["pieces"], measure, misfits, ("back_band",))
    if frame.foot == "stool" and placed:
        outsides = placed["left"].left.outer.real, placed["right"].right.outer.real
        _fit_under(request, answer, outsides, frame, measure, misfits)
    return misfits.found


def _frame(request: dict[str, Any], answer: dict[str, Any], shape: Outline, measure: Measure) -> Frame:
    unit, trim = request.get("unit"), request["trim"]
    style, fillet = trim.get("head_style", "mitered"), trim.get("fillet")
    return Frame(
        outline=shape,
        reveals={name: reveal_of(request, name, unit) for name in shape.names},
        foot=request.get("bottom", "stool"),
        butted=style == "butted",
        overhang=float(inches(trim.get("overhang", "0 in"), unit)),
        fillet=float(inches(fillet["height"], unit)) if fillet and style == "butted" else 0.0,
        blocks={piece["side"]: piece for piece in answer["pieces"] if piece["kind"] == "corner_block"},
        base=_base(request, answer, measure),
        counted=_counted(request, shape),
        taken_square=_told_gap(answer["square_gap"]),
    )


def _counted(request: dict[str, Any], shape: Outline) -> bool:
    """Round a picture frame of other than four sides there are no legs, unless a curve springs from some."""
    if request.get("bottom") != "casing" or len(shape.corners) == 4:
        return False
    return "jamb_height" not in request["readings"]


def check_widths(request: dict[str, Any], pieces: list[dict[str, Any]], misfits: Misfits) -> None:
    """Every piece of casing is as wide as its stock, or as what it was asked to be ripped to."""
    unit, trim, own = request.get("unit"), request["trim"], request.get("widths", {})
    for piece in pieces:
        if piece["kind"] not in CASING:
            continue
        side = piece["side"].split()[0]
        stock = trim.get({"head": "head_casing", "sill": "bottom_casing"}.get(side, "")) or trim["casing"]
        wanted = float(inches(own.get(side) or stock["width"], unit))
        misfits.near(f"{piece['key']}'s width", float(unrounded(piece["width"])), wanted)
        ripped = None if piece["rip_width"] is None else float(unrounded(piece["rip_width"]))
        narrower = own.get(side) and inches(own[side], unit) < inches(stock["width"], unit)
        misfits.says(f"{piece['key']} ripped", ripped, float(unrounded(piece["width"])) if narrower else None)


def _width(piece: SolidPiece) -> float:
    return float(unrounded(piece.answered["width"]))


def _fit_under(
    request: dict[str, Any],
    answer: dict[str, Any],
    outsides: tuple[float, float],
    frame: Frame,
    measure: Measure,
    misfits: Misfits,
) -> None:
    """The stool and the apron, under the trim that stands on the stool."""
    unit, trim, readings = request.get("unit"), request["trim"], request["readings"]
    # Where a leg leans and was cut square, its outside edge at the stool comes in by the versed sine of its lean.
    misfits.slack += frame.taken_square**2
    jamb, apron, stool = frame.outline.length(0), trim.get("apron"), trim["stool"]
    if apron and not request.get("without_apron"):
        fit_apron(answer["pieces"], measure, misfits, jamb=jamb, outsides=outsides, asked=apron)
        (told,) = (piece["width"] for piece in answer["pieces"] if piece["kind"] == "apron")
        own = request.get("widths", {}).get("apron") or apron["width"]
        misfits.near("the apron's width", float(unrounded(told)), float(inches(own, unit)))
    else:
        misfits.says(
            "no apron", [piece for piece in answer["pieces"] if piece["kind"].startswith("apron")], []
        )
    fit_shim_below(request, answer["pieces"], jamb, measure, misfits)
    both = readings.get("jamb_depth")
    own_horns = request.get("horns", {})
    under = apron or trim["casing"]
    fit_stool(
        next(piece for piece in answer["pieces"] if piece["kind"] == "stool"),
        {piece["side"]: piece for piece in answer["pieces"] if piece["kind"] == "stool_return"},
        measure,
        misfits,
        jamb=jamb,
        depths=(
            float(inches(both or readings["left_depth"], unit)),
            float(inches(both or readings["right_depth"], unit)),
        ),
        outsides=outsides,
        horn_depths=tuple(
            float(inches(readings[name], unit)) if name in readings else None
            for name in ("left_horn_depth", "right_horn_depth")
        ),
        horns=tuple(float(inches(own_horns.get(side) or stool["horn"], unit)) for side in ("left", "right")),
        scribe=float(inches(stool.get("scribe", "0 in"), unit)),
        clearance=float(inches(stool.get("sash_clearance", "0 in"), unit)),
        front=float(inches(under["thickness"], unit) + inches(stool["nosing"], unit)),
    )


def _told_gap(text: str) -> float:
    """The gap told, with half of the last decimal it is told to; zero stays zero."""
    gap = float(inches(text))
    return gap + 5e-5 if gap else 0.0


def reveal_of(request: dict[str, Any], name: str, unit: str | None) -> float:
    """The jamb that is asked to show on a side, with what an extension sets it back."""
    own = request.get("reveals", {}).get(name.split()[0])
    behind = (
        request["trim"]["extension"].get("reveal", "0 in")
        if request.get("wall_answer") == "extend"
        else "0 in"
    )
    return float(inches(own or request["trim"]["reveal"], unit) + inches(behind, unit))


def _base(request: dict[str, Any], answer: dict[str, Any], measure: Any) -> float:
    foot = request.get("bottom", "stool")
    if foot == "floor":
        return float(inches(request["trim"].get("floor_clearance", "0 in"), request.get("unit")))
    if foot == "plinth":
        blocks = [piece for piece in answer["pieces"] if piece["kind"] == "plinth_block"]
        assert sorted(block["side"] for block in blocks) == ["left", "right"]
        left, right = (float(measure(block["overall"])) for block in blocks)
        assert left == right
        return left
    return 0.0


def _turned_away(answer: dict[str, Any]) -> float:
    """What the last decimals of the angles come to over all pieces, had they all turned the same way."""
    around = sum(float(unrounded(piece["overall"])) for piece in answer["pieces"])
    return EXACT_SLACK + ANGLE_SLACK * 2 * len(answer["pieces"]) * around


def _rounded_away(answer: dict[str, Any]) -> float:
    """What all roundings of one opening's pieces come to, had they all gone the same way."""
    total = 0.0
    for piece in answer["pieces"]:
        lengths = [piece["overall"], piece["rip_width"]]
        lengths += [
            notch[name]
            for end in piece["ends"]
            if (notch := end["notch"])
            for name in ("depth", "length", "end_depth")
        ]
        total += sum(abs(rounding_error(length)) for length in lengths if length)
    return total
