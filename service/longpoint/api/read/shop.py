"""From a request's shop settings to the shop's own."""

from __future__ import annotations

from collections import Counter

from longpoint.api.read.reader import Path, Reader
from longpoint.api.wire.money import cents
from longpoint.api.wire.shop import PackageIn, RatesIn, SawIn, ShopIn, WagesIn
from longpoint.lengths import Fraction, tape
from longpoint.shop import DEFAULTS, MaterialCode, Package, Rates, SawHabits, ShopSettings, Wages
from longpoint.shop.packages import MOST_SIZES
from longpoint.shop.rates import DIVISORS

STANDARD = ShopSettings()
LEAST_LENGTH, MOST_LENGTH = Fraction(1, 16), Fraction(120)


def read_shop(read: Reader, wire: ShopIn | None, at: Path) -> ShopSettings:
    """The settings; lengths that cannot be read are noted as faults of the reader."""
    if wire is None:
        return STANDARD
    _check_sizes(read, wire.packages, (*at, "packages"))
    return ShopSettings(
        rates=_rates(read, wire.rates, (*at, "rates")),
        packages=tuple(
            Package(
                each.material,
                each.name,
                decimal(each.size),
                None if each.price is None else cents(each.price),
            )
            for each in wire.packages
        ),
        wages=_wages(wire.wages),
        habits=_habits(read, wire.saw, (*at, "saw")),
        build_year=wire.build_year,
    )


def _check_sizes(read: Reader, packages: list[PackageIn], at: Path) -> None:
    counted: Counter[MaterialCode] = Counter()
    for index, each in enumerate(packages):
        counted[each.material] += 1
        if counted[each.material] > MOST_SIZES:
            read.fault(
                (*at, index),
                "too-many-packages",
                f"At most {MOST_SIZES} packages of {each.material} can be weighed against each other: leave some out.",
            )


def decimal(number: float) -> Fraction:
    """The number as it was written: 0.1 is a tenth."""
    return Fraction(repr(number))


def _rates(read: Reader, wire: RatesIn, at: Path) -> Rates:
    given: dict[str, Fraction] = {}
    for name, rate in DEFAULTS.items():
        value = getattr(wire, name)
        if value is None:
            continue
        if rate.unit == "in":
            given[name] = _length(read, value, at, name)
        else:
            given[name] = decimal(value)
    return Rates(given)


def _length(read: Reader, value: str, at: Path, name: str) -> Fraction:
    """A length among the rates, kept to what a shop could mean so that counts stay within reason."""
    if name not in DIVISORS:
        found, least = read.length(value, at, name), Fraction(0)
    else:
        found, least = read.positive(value, at, name), LEAST_LENGTH
    if not least <= found <= MOST_LENGTH:
        read.fault(
            (*at, name),
            "out-of-range",
            f"{name} ({DEFAULTS[name].says}) must be from {tape(least)} to {tape(MOST_LENGTH)}, not {tape(found)}.",
        )
    return found


def _wages(wire: WagesIn | None) -> Wages:
    if wire is None:
        return Wages()
    tasks = tuple((task.value, cents(hour)) for task, hour in wire.tasks.items())
    return Wages(None if wire.hour is None else cents(wire.hour), tasks)


def _habits(read: Reader, wire: SawIn, at: Path) -> SawHabits:
    return SawHabits(
        smallest_held=read.length(wire.smallest_held, at, "smallest_held"),
        smallest_ripped=read.length(wire.smallest_ripped, at, "smallest_ripped"),
        sharpest_mitre=decimal(wire.sharpest_mitre),
        angle_step=decimal(wire.angle_step),
    )
