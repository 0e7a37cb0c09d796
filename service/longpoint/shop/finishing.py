"""What closes nail holes and coats the trim, by its finish."""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence

from longpoint.lengths import Fraction
from longpoint.shop.amounts import Amounts
from longpoint.shop.material_line import (
    CUBIC_INCHES_A_FLUID_OUNCE,
    SQUARE_INCHES_A_SQUARE_FOOT,
    Offers,
    figure,
    material_line,
    per_opening,
    total,
)
from longpoint.shop.rates import Rates
from longpoint.shop.takeoff import Material
from longpoint.texts import Sentence, say

COATED_BY_A_GALLON = Fraction(231 * 1000, 144)
"""Square feet covered by a gallon, all solids, at one mil: 1604.17."""
FLUID_OUNCES_A_GALLON = 128


def coverage(solids: Fraction, film: Fraction) -> Fraction:
    """Square feet a gallon covers: 1604.17 x solids by volume / dry film in mils. `solids` is a share."""
    return COATED_BY_A_GALLON * solids / film


def hole_volume(width: Fraction, depth: Fraction) -> Fraction:
    """Cubic inches over a set nail: a cylinder."""
    return Fraction(math.pi).limit_denominator(10_000_000) / 4 * width * width * depth


def filler(amounts: Sequence[Amounts], rates: Rates, offers: Offers) -> Material:
    """Filler for the nail holes of trim that is painted."""
    return _in_holes("filler", "wood filler", amounts, lambda one: one.filled, rates, offers)


def putty(amounts: Sequence[Amounts], rates: Rates, offers: Offers) -> Material:
    """Putty for the nail holes of trim that is not painted."""
    woods = tuple(dict.fromkeys(one.species for one in amounts if one.puttied and one.species))
    notes = (say("note", "materials.putty-color", woods=woods),) if woods else ()
    return _in_holes("putty", "color-matched putty", amounts, lambda one: one.puttied, rates, offers, notes)


def _in_holes(
    code: str,
    name: str,
    amounts: Sequence[Amounts],
    holes: Callable[[Amounts], int],
    rates: Rates,
    offers: Offers,
    notes: tuple[Sentence, ...] = (),
) -> Material:
    hole = hole_volume(rates["hole_width"], rates["hole_depth"])
    each = hole * (1 + rates.share("filler_waste")) / CUBIC_INCHES_A_FLUID_OUNCE
    return material_line(
        code,
        name,
        "fl oz",
        per_opening(amounts, lambda one: holes(one) * each),
        offers,
        "nail holes x the volume of one, more for waste",
        (
            figure("nail holes", Fraction(sum(holes(one) for one in amounts)), "hole"),
            figure("volume of a hole", hole, "in3"),
        ),
        ("hole_width", "hole_depth", "filler_waste"),
        notes,
    )


def primer(amounts: Sequence[Amounts], rates: Rates, offers: Offers) -> Material:
    """Primer for trim that is painted."""
    coats, backs = rates["primer_coats"], rates["painted_backs"]
    return _coating(
        "primer",
        "primer",
        per_opening(amounts, lambda one: one.painted * coats + one.backs * backs),
        total(amounts, lambda one: one.painted),
        rates,
        offers,
        ("primer_coats", "painted_backs", "primer_solids", "primer_film"),
    )


def paint(amounts: Sequence[Amounts], rates: Rates, offers: Offers) -> Material:
    """Paint."""
    return _coating(
        "paint",
        "paint",
        per_opening(amounts, lambda one: one.painted * rates["paint_coats"]),
        total(amounts, lambda one: one.painted),
        rates,
        offers,
        ("paint_coats", "paint_solids", "paint_film"),
    )


def stain(amounts: Sequence[Amounts], rates: Rates, offers: Offers) -> Material:
    """Stain for stain-grade trim."""
    return _spread(
        "stain",
        "stain",
        per_opening(amounts, lambda one: one.stained * rates["stain_coats"]),
        total(amounts, lambda one: one.stained),
        rates["stain_covers"],
        rates,
        offers,
        "developed faces and edges x coats / what a gallon covers, more for waste; the label rules",
        ("stain_coats", "stain_covers"),
    )


def clear_finish(amounts: Sequence[Amounts], rates: Rates, offers: Offers) -> Material:
    """Clear finish for stain-grade trim."""
    return _coating(
        "clear_finish",
        "clear finish",
        per_opening(amounts, lambda one: one.stained * rates["clear_coats"]),
        total(amounts, lambda one: one.stained),
        rates,
        offers,
        ("clear_coats", "clear_solids", "clear_film"),
    )


def _coating(
    code: str,
    name: str,
    areas: list[tuple[str, Fraction]],
    faces: Fraction,
    rates: Rates,
    offers: Offers,
    used: tuple[str, ...],
) -> Material:
    """What dries to a film; the last two rates that it uses are its solids and how thick that is."""
    return _spread(
        code,
        name,
        areas,
        faces,
        coverage(rates.share(used[-2]), rates[used[-1]]),
        rates,
        offers,
        "developed faces and edges x coats / (1604.17 x solids / dry film), more for waste; the label rules",
        used,
    )


def _spread(
    code: str,
    name: str,
    areas: list[tuple[str, Fraction]],
    faces: Fraction,
    covers: Fraction,
    rates: Rates,
    offers: Offers,
    rule: str,
    used: tuple[str, ...],
) -> Material:
    per_inch = FLUID_OUNCES_A_GALLON / covers * (1 + rates.share("paint_waste")) / SQUARE_INCHES_A_SQUARE_FOOT
    return material_line(
        code,
        name,
        "fl oz",
        [(opening, area * per_inch) for opening, area in areas],
        offers,
        rule,
        (
            figure("faces and edges", faces / SQUARE_INCHES_A_SQUARE_FOOT, "ft2"),
            figure("covered by a gallon", covers, "ft2"),
        ),
        (*used, "profile_girth", "paint_waste"),
    )
