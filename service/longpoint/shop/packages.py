"""Rounding up to what is sold."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator, Mapping
from enum import StrEnum
from typing import Annotated

from msgspec import Meta

from longpoint.lengths import Fraction
from longpoint.shop.quantity import Quantity
from longpoint.shop.rates import LEAST, as_written
from longpoint.shop.takeoff import Bought
from longpoint.texts import say
from longpoint.values import Faults, Given, Name, Path, Price

MOST_SIZES = 4
NEAR_ENOUGH = 8
"""How many of the best package are given up, at most, in the search for a better fit with other sizes."""


class MaterialCode(StrEnum):
    """What is bought beside sticks, and the unit it is counted in: nails; glue, caulk, filler, putty, primer, paint,
    stain and clear finish in fluid ounces; shims; tape in feet; abrasive in sheets."""

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
    STAIN = "stain"
    CLEAR_FINISH = "clear_finish"
    PUTTY = "putty"
    SHIMS = "shims"
    TAPE = "tape"
    ABRASIVE = "abrasive"


class Package(Given, frozen=True):
    """Something sold. Without a price it is bought and costs nothing in the answer.

    Attributes:
        material: The material that it holds.
        name: The name that it is sold under.
        size: How much it holds, in the material's unit: nails by the piece; glue, caulk, filler, putty, primer, paint,
            stain and clear finish in fluid ounces; tape in feet; abrasive in sheets.
        price: The price of one package.
    """

    material: MaterialCode
    name: Name
    size: Annotated[float, Meta(ge=LEAST, le=1_000_000)]
    price: Price | None = None

    @property
    def holds(self) -> Fraction:
        """Its size exactly."""
        return as_written(self.size)


# A pound of finishing nails, by penny: table of finishing nails at sizes.com (10d is the longest used here).
NAILS_A_POUND = {2: 1351, 3: 807, 4: 584, 5: 500, 6: 309, 7: 238, 8: 189, 9: 172, 10: 121}

SOLD: tuple[Package, ...] = (
    *(Package(MaterialCode(f"nails_{penny}d"), "1 lb box", count) for penny, count in NAILS_A_POUND.items()),
    Package(MaterialCode.GLUE, "8 fl oz bottle", 8),
    Package(MaterialCode.GLUE, "16 fl oz bottle", 16),
    Package(MaterialCode.CAULK, "10.1 fl oz tube", 10.1),
    Package(MaterialCode.FILLER, "8 fl oz tub", 8),
    Package(MaterialCode.PRIMER, "quart", 32),
    Package(MaterialCode.PRIMER, "gallon", 128),
    Package(MaterialCode.PAINT, "quart", 32),
    Package(MaterialCode.PAINT, "gallon", 128),
    Package(MaterialCode.STAIN, "half pint", 8),
    Package(MaterialCode.STAIN, "quart", 32),
    Package(MaterialCode.CLEAR_FINISH, "quart", 32),
    Package(MaterialCode.CLEAR_FINISH, "gallon", 128),
    Package(MaterialCode.PUTTY, "3 fl oz jar", 3),
    Package(MaterialCode.SHIMS, "bundle of 12", 12),
    Package(MaterialCode.TAPE, "60 yd roll", 180),
    Package(MaterialCode.ABRASIVE, "pack of 5 sheets", 5),
)
"""What is sold unless the caller says otherwise; common sizes, no source, and no prices."""


def report_packages(packages: Iterable[Package], faults: Faults, at: Path) -> None:
    """Note those of a material that are too many to be weighed against each other."""
    counted: Counter[MaterialCode] = Counter()
    for index, each in enumerate(packages):
        counted[each.material] += 1
        if counted[each.material] > MOST_SIZES:
            faults.add(
                (*at, index),
                "too-many-packages",
                say("problem", "packages.too-many", most=MOST_SIZES, material=each.material),
            )


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
    priced = all(package.price is not None for package in packages)

    def badness(counts: tuple[int, ...]) -> tuple[Fraction, int]:
        pairs = list(zip(packages, counts, strict=True))
        if priced:
            return Fraction(sum((package.price or 0) * count for package, count in pairs)), sum(counts)
        return sum((package.holds * count for package, count in pairs), Fraction(0)), sum(counts)

    best_first = sorted(
        range(len(packages)),
        key=lambda at: (packages[at].price or 0) / packages[at].holds if priced else -packages[at].holds,
    )
    chosen = min(_covers(need, packages, best_first), key=badness)
    return tuple(_bought(package, count) for package, count in zip(packages, chosen, strict=True) if count)


def _bought(package: Package, count: int) -> Bought:
    price = package.price
    cost = None if price is None else Price(price * count)
    return Bought(package.name, Quantity(package.holds), count, price, cost)


def _covers(need: Fraction, packages: tuple[Package, ...], order: list[int]) -> Iterator[tuple[int, ...]]:
    """Counts that cover a need, trying fewer of the best package and the rest from the others."""
    at, *others = order
    most = max(0, -int(-need // packages[at].holds))
    for count in range(max(0, most - NEAR_ENOUGH) if others else most, most + 1):
        left = need - count * packages[at].holds
        if left <= 0 or not others:
            yield tuple(count if each == at else 0 for each in range(len(packages)))
        else:
            for rest in _covers(left, packages, others):
                yield tuple(count if each == at else more for each, more in enumerate(rest))
