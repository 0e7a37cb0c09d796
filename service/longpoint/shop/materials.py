"""What to buy beside the sticks: from amounts and rates to packages."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable, Mapping, Sequence

from longpoint.lengths import Fraction, tape
from longpoint.shop.amounts import Amounts
from longpoint.shop.nails import Nailing, nail_length, too_short
from longpoint.shop.packages import Package, buy, sold
from longpoint.shop.quantity import Quantity
from longpoint.shop.rates import Rates
from longpoint.shop.takeoff import Bought, Figure, Material, Materials, Share
from longpoint.texts import Sentence

CUBIC_INCHES_A_FLUID_OUNCE = Fraction(231, 128)
SQUARE_INCHES_A_SQUARE_FOOT = 144
COATED_BY_A_GALLON = Fraction(231 * 1000, 144)
"""Square feet covered by a gallon, all solids, at one mil: 1604.17."""
FLUID_OUNCES_A_GALLON = 128


def materials(amounts: Sequence[Amounts], rates: Rates, packages: Iterable[Package] = ()) -> Materials:
    """Every material of a house, with what it was computed from.

    Args:
        amounts: of each opening.
        packages: what is sold, by material; common sizes where none is given.
    """
    offers = sold(packages)
    lines = (
        *_nails(amounts, rates, offers),
        *(line(amounts, rates, offers) for line in (_glue, _caulk, _filler, _primer, _paint)),
        *(line(amounts, rates, offers) for line in (_shims, _tape, _abrasive)),
    )
    lines = tuple(line for line in lines if line.quantity > 0)
    return Materials(lines, rates.used(name for line in lines for name in line.rates))


def coverage(solids: Fraction, film: Fraction) -> Fraction:
    """Square feet a gallon covers: 1604.17 x solids by volume / dry film in mils. `solids` is a share."""
    return COATED_BY_A_GALLON * solids / film


def bead_area(fillet: Fraction, gap: Fraction, depth: Fraction) -> Fraction:
    """Square inches across a bead: a triangle of two equal legs, and what fills the gap behind it."""
    return fillet * fillet / 2 + gap * depth


def hole_volume(width: Fraction, depth: Fraction) -> Fraction:
    """Cubic inches over a set nail: a cylinder."""
    return Fraction(math.pi).limit_denominator(10_000_000) / 4 * width * width * depth


Offers = Mapping[str, tuple[Package, ...]]


def _line(
    code: str,
    name: str,
    unit: str,
    shares: list[tuple[str, Fraction]],
    offers: Offers,
    rule: str,
    inputs: tuple[Figure, ...],
    rates: tuple[str, ...],
    notes: tuple[Sentence, ...] = (),
) -> Material:
    quantity = sum((share for _, share in shares), Fraction(0))
    bought: tuple[Bought, ...] = buy(quantity, offers[code]) if code in offers else ()
    by_opening = tuple(Share(opening, Quantity(share)) for opening, share in shares)
    return Material(code, name, Quantity(quantity), unit, bought, rule, inputs, rates, by_opening, notes)


def _figure(name: str, value: Fraction, unit: str) -> Figure:
    return Figure(name, Quantity(value), unit)


def _per(amounts: Sequence[Amounts], each: Callable[[Amounts], Fraction]) -> list[tuple[str, Fraction]]:
    return [(one.opening, each(one)) for one in amounts]


def _nails(amounts: Sequence[Amounts], rates: Rates, offers: Offers) -> Iterable[Material]:
    uses: dict[int, dict[str, list[Nailing]]] = {}
    for one in amounts:
        for each in one.nailing:
            uses.setdefault(each.penny, {}).setdefault(each.use, []).append(each)
    more = 1 + rates.share("nail_waste")
    for penny in sorted(uses):
        by_use = uses[penny]
        yield _line(
            f"nails_{penny}d",
            f"{penny}d finishing nails, {tape(nail_length(penny))}",
            "nail",
            _per(amounts, lambda one: more * sum(n.count for n in one.nailing if n.penny == penny)),  # noqa: B023
            offers,
            "nails along each piece, from length and spacing, and at the corners; more for waste. The size is the "
            "shortest that passes the piece and the wall's face and goes far enough in",
            tuple(
                figure
                for use, found in by_use.items()
                for figure in (
                    _figure(use, Fraction(sum(n.count for n in found)), "nail"),
                    _figure(f"{use}: least length", max(n.needed for n in found), "in"),
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
    return _line(
        "glue",
        "wood glue",
        "fl oz",
        _per(amounts, lambda one: one.glued * per_inch),
        offers,
        "faces of mitered joints and returns x wet film, more for waste",
        (_figure("faces of joints", _sum(amounts, lambda one: one.glued), "in2"),),
        ("glue_film", "glue_waste"),
    )


def _caulk(amounts: Sequence[Amounts], rates: Rates, offers: Offers) -> Material:
    bead = bead_area(rates["caulk_bead"], rates["caulk_gap"], rates["caulk_depth"])
    per_inch = bead * (1 + rates.share("caulk_waste")) / CUBIC_INCHES_A_FLUID_OUNCE
    return _line(
        "caulk",
        "paintable caulk",
        "fl oz",
        _per(amounts, lambda one: one.caulked * per_inch),
        offers,
        "joints with wall and jamb x the bead's section (fillet and gap), more for waste",
        (
            _figure("joints", _sum(amounts, lambda one: one.caulked) / 12, "ft"),
            _figure("bead's section", bead, "in2"),
        ),
        ("caulk_bead", "caulk_gap", "caulk_depth", "caulk_waste"),
    )


def _filler(amounts: Sequence[Amounts], rates: Rates, offers: Offers) -> Material:
    hole = hole_volume(rates["hole_width"], rates["hole_depth"])
    each = hole * (1 + rates.share("filler_waste")) / CUBIC_INCHES_A_FLUID_OUNCE
    return _line(
        "filler",
        "wood filler",
        "fl oz",
        _per(amounts, lambda one: one.nails * each),
        offers,
        "nail holes x the volume of one, more for waste",
        (
            _figure("nail holes", Fraction(sum(one.nails for one in amounts)), "hole"),
            _figure("volume of a hole", hole, "in3"),
        ),
        ("hole_width", "hole_depth", "filler_waste"),
    )


def _primer(amounts: Sequence[Amounts], rates: Rates, offers: Offers) -> Material:
    coats, backs = rates["primer_coats"], rates["painted_backs"]
    return _coating(
        "primer",
        amounts,
        lambda one: one.faces * coats + one.backs * backs,
        rates,
        offers,
        ("primer_coats", "painted_backs"),
    )


def _paint(amounts: Sequence[Amounts], rates: Rates, offers: Offers) -> Material:
    coats = rates["paint_coats"]
    return _coating("paint", amounts, lambda one: one.faces * coats, rates, offers, ("paint_coats",))


def _coating(
    code: str,
    amounts: Sequence[Amounts],
    area: Callable[[Amounts], Fraction],
    rates: Rates,
    offers: Offers,
    counted: tuple[str, ...],
) -> Material:
    covers = coverage(rates.share(f"{code}_solids"), rates[f"{code}_film"])
    per_inch = FLUID_OUNCES_A_GALLON / covers * (1 + rates.share("paint_waste")) / SQUARE_INCHES_A_SQUARE_FOOT
    faces = _sum(amounts, lambda one: one.faces) / SQUARE_INCHES_A_SQUARE_FOOT
    return _line(
        code,
        code,
        "fl oz",
        _per(amounts, lambda one: area(one) * per_inch),
        offers,
        "developed faces and edges x coats / (1604.17 x solids / dry film), more for waste; the label rules",
        (_figure("faces and edges", faces, "ft2"), _figure("covered by a gallon", covers, "ft2")),
        (*counted, f"{code}_solids", f"{code}_film", "profile_girth", "paint_waste"),
    )


def _shims(amounts: Sequence[Amounts], rates: Rates, offers: Offers) -> Material:
    return _line(
        "shims",
        "tapered shims",
        "shim",
        _per(amounts, lambda one: one.count * rates["shims_per_opening"]),
        offers,
        "openings x shims for each",
        (_figure("openings", Fraction(sum(one.count for one in amounts)), "opening"),),
        ("shims_per_opening",),
    )


def _tape(amounts: Sequence[Amounts], rates: Rates, offers: Offers) -> Material:
    more = 1 + rates.share("tape_waste")
    return _line(
        "tape",
        "masking tape",
        "ft",
        _per(amounts, lambda one: one.caulked / 12 * more),
        offers,
        "joints with wall and jamb, more for overlap",
        (_figure("joints", _sum(amounts, lambda one: one.caulked) / 12, "ft"),),
        ("tape_waste",),
    )


def _abrasive(amounts: Sequence[Amounts], rates: Rates, offers: Offers) -> Material:
    per_inch = rates["sandings"] / (rates["sheet_area"] * SQUARE_INCHES_A_SQUARE_FOOT)
    return _line(
        "abrasive",
        "abrasive sheets",
        "sheet",
        _per(amounts, lambda one: one.faces * per_inch),
        offers,
        "developed faces and edges x sandings / what one sheet sands",
        (
            _figure(
                "faces and edges", _sum(amounts, lambda one: one.faces) / SQUARE_INCHES_A_SQUARE_FOOT, "ft2"
            ),
        ),
        ("sandings", "sheet_area", "profile_girth"),
    )


def _sum(amounts: Sequence[Amounts], each: Callable[[Amounts], Fraction]) -> Fraction:
    return sum((each(one) for one in amounts), Fraction(0))
