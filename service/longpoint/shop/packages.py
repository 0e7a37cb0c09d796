"""Rounding up to what is sold."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from enum import StrEnum

from longpoint.geometry.value import Value
from longpoint.lengths import Fraction
from longpoint.shop.takeoff import Bought

MOST_SIZES = 4
NEAR_ENOUGH = 8
"""How many of the best package are given up, at most, in the search for a better fit with other sizes."""


class MaterialCode(StrEnum):
    """What is bought beside sticks, and the unit it is counted in: nails; glue, caulk, filler, primer and paint in
    fluid ounces; shims; tape in feet; abrasive in sheets."""

    NAILS_2D = "nails_2d"
    NAILS_3D = "nails_3d"
    NAILS_4D = "nails_4d"
    NAILS_5D = "nails_5d"
    NAILS_6D = "nails_6d"
    NAILS_7D = "nails_7d"
    NAILS_8D = "nails_8d"
    NAILS_9D = "nails_9d"
    NAILS_10D = "nails_10d"
    GLUE = "glue"
    CAULK = "caulk"
    FILLER = "filler"
    PRIMER = "primer"
    PAINT = "paint"
    SHIMS = "shims"
    TAPE = "tape"
    ABRASIVE = "abrasive"


class Package(Value, frozen=True):
    """Something sold. Attributes: material, its code; name; size, in the material's unit; price_cents, if told."""

    material: str
    name: str
    size: Fraction
    price_cents: int | None = None


# A pound of finishing nails, by penny: table of finishing nails at sizes.com (10d is the longest used here).
NAILS_A_POUND = {2: 1351, 3: 807, 4: 584, 5: 500, 6: 309, 7: 238, 8: 189, 9: 172, 10: 121}

SOLD: tuple[Package, ...] = (
    *(Package(f"nails_{penny}d", "1 lb box", Fraction(count)) for penny, count in NAILS_A_POUND.items()),
    Package("glue", "8 fl oz bottle", Fraction(8)),
    Package("glue", "16 fl oz bottle", Fraction(16)),
    Package("caulk", "10.1 fl oz tube", Fraction(101, 10)),
    Package("filler", "8 fl oz tub", Fraction(8)),
    Package("primer", "quart", Fraction(32)),
    Package("primer", "gallon", Fraction(128)),
    Package("paint", "quart", Fraction(32)),
    Package("paint", "gallon", Fraction(128)),
    Package("shims", "bundle of 12", Fraction(12)),
    Package("tape", "60 yd roll", Fraction(180)),
    Package("abrasive", "pack of 5 sheets", Fraction(5)),
)
"""What is sold unless the caller says otherwise; common sizes, no source, and no prices."""


def sold(given: Iterable[Package] = ()) -> Mapping[str, tuple[Package, ...]]:
    """Packages by material: the caller's where he gave any, else the common ones."""
    own: dict[str, list[Package]] = {}
    for package in given:
        own.setdefault(package.material, []).append(package)
    common: dict[str, list[Package]] = {}
    for package in SOLD:
        common.setdefault(package.material, []).append(package)
    return {material: tuple(packages) for material, packages in {**common, **own}.items()}


def buy(need: Fraction, packages: tuple[Package, ...]) -> tuple[Bought, ...]:
    """The packages that cover a need: the cheapest when all have a price, else those that leave least over.

    Ties go to the fewest packages. The search grows fast with the sizes: take no more than `MOST_SIZES`.
    """
    if need <= 0:
        return ()
    priced = all(package.price_cents is not None for package in packages)

    def badness(counts: tuple[int, ...]) -> tuple[Fraction, int]:
        pairs = list(zip(packages, counts, strict=True))
        if priced:
            return Fraction(sum((package.price_cents or 0) * count for package, count in pairs)), sum(counts)
        return sum((package.size * count for package, count in pairs), Fraction(0)), sum(counts)

    best_first = sorted(
        range(len(packages)),
        key=lambda at: (packages[at].price_cents or 0) / packages[at].size if priced else -packages[at].size,
    )
    chosen = min(_covers(need, packages, best_first), key=badness)
    return tuple(
        Bought(package.name, package.size, count, package.price_cents)
        for package, count in zip(packages, chosen, strict=True)
        if count
    )


def _covers(need: Fraction, packages: tuple[Package, ...], order: list[int]) -> Iterator[tuple[int, ...]]:
    """Counts that cover a need, trying fewer of the best package and the rest from the others."""
    at, *others = order
    most = max(0, -int(-need // packages[at].size))
    for count in range(max(0, most - NEAR_ENOUGH) if others else most, most + 1):
        left = need - count * packages[at].size
        if left <= 0 or not others:
            yield tuple(count if each == at else 0 for each in range(len(packages)))
        else:
            for rest in _covers(left, packages, others):
                yield tuple(count if each == at else more for each, more in enumerate(rest))
