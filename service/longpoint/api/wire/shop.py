"""The wire's view of how a shop works: rates, packages, wages, its limits at the saw."""

from __future__ import annotations

from typing import TYPE_CHECKING, Annotated, Any, Literal

from msgspec import Meta

from longpoint.api.wire.base import LengthText, Name, Wire
from longpoint.api.wire.money import MoneyText
from longpoint.shop import DEFAULTS, MaterialCode, Rate, Section, Task
from longpoint.shop.rates import DIVISORS

Sections = Annotated[list[Section], Meta(max_length=len(Section))]

LEAST = 0.01
"""Of a number that something is divided by."""
_PENNY = Literal[0, 2, 3, 4, 5, 6, 7, 8, 9, 10]
_MOST = {"percent": 1000, "mil": 100, "each": 100, "ft2": 10_000, "min": 1440, "h": 720}


_UNITS = {
    "percent": "%",
    "mil": " mil",
    "ft2": " ft2",
    "min": " min",
    "h": " h",
    "in": " in",
    "penny": " penny",
}


def _says(rate: Rate) -> str:
    """What a rate is, and how much it is in its unit when it is left out, by which source."""
    number = str(rate.value) if rate.unit == "in" else f"{float(rate.value):g}"
    words = f"{rate.says[0].upper()}{rate.says[1:]}"
    return f"{words}; {number}{_UNITS.get(rate.unit, '')} when left out ({rate.source})."


def _rate_type(rate: Rate) -> Any:
    """What a rate may be on the wire: a length is text with its unit, a count whole, the rest numbers."""
    says = _says(rate)
    if rate.unit == "in":
        return Annotated[LengthText, Meta(description=says)] | None
    if rate.unit == "penny":
        return Annotated[_PENNY, Meta(description=says)] | None
    most = _MOST[rate.unit]
    if rate.unit == "each":
        return Annotated[int, Meta(ge=0, le=most, description=says)] | None
    if rate.name in DIVISORS:
        return Annotated[float, Meta(ge=LEAST, le=most, description=says)] | None
    return Annotated[float, Meta(ge=0, le=most, description=says)] | None


if TYPE_CHECKING:

    class RatesIn(Wire):
        """Has a field for each of `longpoint.shop.DEFAULTS`."""
else:
    RatesIn = type(Wire)(
        "RatesIn",
        (Wire,),
        {
            "__doc__": "The shop's own rates; the answer names the source of each rate it used.",
            "__module__": __name__,
            "__annotations__": {name: _rate_type(rate) for name, rate in DEFAULTS.items()},
            **dict.fromkeys(DEFAULTS),
        },
        forbid_unknown_fields=True,
    )


class PackageIn(Wire):
    """Something sold: its size in the material's unit (nails by the piece; glue, caulk, filler, primer and paint in
    fluid ounces; tape in feet; abrasive in sheets). Without a price it is bought and costs nothing in the answer."""

    material: MaterialCode
    name: Name
    size: Annotated[float, Meta(ge=LEAST, le=1_000_000)]
    price: MoneyText | None = None


class WagesIn(Wire):
    """What an hour of hands-on work costs: `hour`, and `tasks` that cost otherwise. Without either, labour has its
    hours and no money."""

    hour: MoneyText | None = None
    tasks: Annotated[dict[Task, MoneyText], Meta(max_length=len(Task))] = {}


class SawIn(Wire):
    """The shop's limits at the saw: the shortest workpiece held by hand, the shortest pushed through the table saw, the
    sharpest mitre the table turns to, and how finely its scale can be set, in degrees.

    Attributes:
        angle_step: In degrees.
        sharpest_mitre: In degrees off a square cut.
        smallest_held: The shortest workpiece held by hand.
        smallest_ripped: The shortest pushed through the table saw.
    """

    smallest_held: LengthText = "6 in"
    smallest_ripped: LengthText = "12 in"
    sharpest_mitre: Annotated[float, Meta(ge=0, le=90)] = 50.0
    angle_step: Annotated[float, Meta(ge=0.001, le=5)] = 0.1


class ShopIn(Wire):
    """How the shop works. A material named in `packages` is bought in these alone, up to four of each. `build_year` is
    the house's: paint of before 1978, or of unknown age, may hold lead.

    Attributes:
        wages: What an hour of work costs.
    """

    rates: RatesIn = RatesIn()
    packages: Annotated[list[PackageIn], Meta(max_length=100)] = []
    wages: WagesIn | None = None
    saw: SawIn = SawIn()
    build_year: Annotated[int, Meta(ge=1000, le=2200)] | None = None
