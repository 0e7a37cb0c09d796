"""What to buy beside the sticks: from amounts and rates to packages."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from longpoint.lengths import Fraction, tape
from longpoint.shop.amounts import Amounts
from longpoint.shop.finishing import coatings, filler, putty
from longpoint.shop.material_line import (
    CUBIC_INCHES_A_FLUID_OUNCE,
    SQUARE_INCHES_A_SQUARE_FOOT,
    Offers,
    figure,
    material_line,
    per_opening,
    total,
)
from longpoint.shop.nails import Nailing, nail_length, too_short
from longpoint.shop.packages import Package, sold
from longpoint.shop.rates import Rates
from longpoint.shop.takeoff import Material, Materials


def materials(amounts: Sequence[Amounts], rates: Rates, packages: Iterable[Package] = ()) -> Materials:
    """Every material of a house, with what it was computed from.

    Args:
        amounts: of each opening.
        packages: what is sold, by material; common sizes where none is given.
    """
    offers = sold(packages)
    lines = (
        *_nails(amounts, rates, offers),
        *(line(amounts, rates, offers) for line in (_glue, _caulk, filler, putty)),
        *coatings(amounts, rates, offers),
        *(line(amounts, rates, offers) for line in (_shims, _tape, _abrasive)),
    )
    lines = tuple(line for line in lines if line.quantity > 0)
    return Materials(lines, rates.used(name for line in lines for name in line.rates))


def bead_area(fillet: Fraction, gap: Fraction, depth: Fraction) -> Fraction:
    """Square inches across a bead: a triangle of two equal legs, and what fills the gap behind it."""
    return fillet * fillet / 2 + gap * depth


def _nails(amounts: Sequence[Amounts], rates: Rates, offers: Offers) -> Iterable[Material]:
    uses: dict[int, dict[str, list[Nailing]]] = {}
    for one in amounts:
        for each in one.nailing:
            uses.setdefault(each.penny, {}).setdefault(each.use, []).append(each)
    more = 1 + rates.share("nail_waste")
    for penny in sorted(uses):
        by_use = uses[penny]
        yield material_line(
            f"nails_{penny}d",
            f"{penny}d finishing nails, {tape(nail_length(penny))}",
            "nail",
            per_opening(amounts, lambda one: more * sum(n.count for n in one.nailing if n.penny == penny)),  # noqa: B023
            offers,
            "nails along each piece, from length and spacing, and at the corners; more for waste. The size is the "
            "shortest that passes the piece and the wall's face and goes far enough in",
            tuple(
                one
                for use, found in by_use.items()
                for one in (
                    figure(use, Fraction(sum(n.count for n in found)), "nail"),
                    figure(f"{use}: least length", max(n.needed for n in found), "in"),
                )
            ),
            _NAIL_RATES,
            tuple(filter(None, dict.fromkeys(too_short(n) for found in by_use.values() for n in found))),
        )


_NAIL_RATES = (
    "drywall",
    "stud_penetration",
    "jamb_penetration",
    "nail_spacing",
    "nail_end_distance",
    "shim_space",
    "stool_nail_spacing",
    "corner_nails",
    "block_nails",
    "outer_nail",
    "inner_nail",
    "nail_waste",
)


def _glue(amounts: Sequence[Amounts], rates: Rates, offers: Offers) -> Material:
    per_inch = rates["glue_film"] / 1000 * (1 + rates.share("glue_waste")) / CUBIC_INCHES_A_FLUID_OUNCE
    return material_line(
        "glue",
        "wood glue",
        "fl oz",
        per_opening(amounts, lambda one: one.glued * per_inch),
        offers,
        "faces of mitered joints and returns x wet film, more for waste",
        (figure("faces of joints", total(amounts, lambda one: one.glued), "in2"),),
        ("glue_film", "glue_waste"),
    )


def _caulk(amounts: Sequence[Amounts], rates: Rates, offers: Offers) -> Material:
    bead = bead_area(rates["caulk_bead"], rates["caulk_gap"], rates["caulk_depth"])
    per_inch = bead * (1 + rates.share("caulk_waste")) / CUBIC_INCHES_A_FLUID_OUNCE
    return material_line(
        "caulk",
        "paintable caulk",
        "fl oz",
        per_opening(amounts, lambda one: one.caulked * per_inch),
        offers,
        "joints with wall and jamb x the bead's section (fillet and gap), more for waste",
        (
            figure("joints", total(amounts, lambda one: one.caulked) / 12, "ft"),
            figure("bead's section", bead, "in2"),
        ),
        ("caulk_bead", "caulk_gap", "caulk_depth", "caulk_waste"),
    )


def _shims(amounts: Sequence[Amounts], rates: Rates, offers: Offers) -> Material:
    return material_line(
        "shims",
        "tapered shims",
        "shim",
        per_opening(amounts, lambda one: one.count * rates["shims_per_opening"]),
        offers,
        "openings x shims for each",
        (figure("openings", Fraction(sum(one.count for one in amounts)), "opening"),),
        ("shims_per_opening",),
    )


def _tape(amounts: Sequence[Amounts], rates: Rates, offers: Offers) -> Material:
    more = 1 + rates.share("tape_waste")
    return material_line(
        "tape",
        "masking tape",
        "ft",
        per_opening(amounts, lambda one: one.caulked / 12 * more),
        offers,
        "joints with wall and jamb, more for overlap",
        (figure("joints", total(amounts, lambda one: one.caulked) / 12, "ft"),),
        ("tape_waste",),
    )


def _abrasive(amounts: Sequence[Amounts], rates: Rates, offers: Offers) -> Material:
    per_inch = rates["sandings"] / (rates["sheet_area"] * SQUARE_INCHES_A_SQUARE_FOOT)
    return material_line(
        "abrasive",
        "abrasive sheets",
        "sheet",
        per_opening(amounts, lambda one: one.faces * per_inch),
        offers,
        "developed faces and edges x sandings / what one sheet sands",
        (
            figure(
                "faces and edges", total(amounts, lambda one: one.faces) / SQUARE_INCHES_A_SQUARE_FOOT, "ft2"
            ),
        ),
        ("sandings", "sheet_area", "profile_girth"),
    )
