"""What closes nail holes and coats the trim, by its finish."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator, Sequence
from typing import NamedTuple

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


class _Coat(NamedTuple):
    """Something that trim is coated with.

    Attributes:
        code: Of the material.
        name: In words.
        area: What is coated with it, square inches.
        backs: The rate that says how often backs are coated with it; "" where they are not.
        dries: Whether it dries to a film, by which it covers; else the rate `covers` says that.
    """

    code: str
    name: str
    area: Callable[[Amounts], Fraction]
    backs: str = ""
    dries: bool = True

    @property
    def rates(self) -> tuple[str, ...]:
        """What it is reckoned by."""
        short = self.code.removesuffix("_finish")
        covers = (f"{short}_solids", f"{short}_film") if self.dries else (f"{short}_covers",)
        return (f"{short}_coats", *filter(None, (self.backs,)), *covers)

    def covers(self, rates: Rates) -> Fraction:
        """Square feet by a gallon."""
        *_, solids, last = self.rates
        return coverage(rates.share(solids), rates[last]) if self.dries else rates[last]


_COATS = (
    _Coat("primer", "primer", lambda one: one.painted, backs="painted_backs"),
    _Coat("paint", "paint", lambda one: one.painted),
    _Coat("stain", "stain", lambda one: one.stained, dries=False),
    _Coat("clear_finish", "clear finish", lambda one: one.stained),
)
_BY_FILM = (
    "developed faces and edges x coats / (1604.17 x solids / dry film), more for waste; the label rules"
)
_BY_AREA = "developed faces and edges x coats / what a gallon covers, more for waste; the label rules"


def coatings(amounts: Sequence[Amounts], rates: Rates, offers: Offers) -> Iterator[Material]:
    """What the trim is coated with, the first coat first."""
    for coat in _COATS:
        coats, backs = rates[coat.rates[0]], rates[coat.backs] if coat.backs else Fraction(0)
        covers = coat.covers(rates)
        waste = (1 + rates.share("paint_waste")) / SQUARE_INCHES_A_SQUARE_FOOT
        per_inch = FLUID_OUNCES_A_GALLON / covers * waste
        yield material_line(
            coat.code,
            coat.name,
            "fl oz",
            [(one.opening, (coat.area(one) * coats + one.backs * backs) * per_inch) for one in amounts],
            offers,
            _BY_FILM if coat.dries else _BY_AREA,
            (
                figure("faces and edges", total(amounts, coat.area) / SQUARE_INCHES_A_SQUARE_FOOT, "ft2"),
                figure("covered by a gallon", covers, "ft2"),
            ),
            (*coat.rates, "profile_girth", "paint_waste"),
        )
