"""How a shop works, as it says."""

from __future__ import annotations

from typing import Annotated

from msgspec import Meta

from longpoint.shop.operations import OrderKind
from longpoint.shop.packages import Package, report_packages
from longpoint.shop.rates import Rates
from longpoint.shop.saw import Saw
from longpoint.shop.wages import NO_WAGES, Wages
from longpoint.values import Faults, Given, Path


class Shop(Given, frozen=True):
    """The settings of the shop: its rates, packages, wages and saw, and the order it cuts in.

    Attributes:
        rates: The rates of the shop, where they are not the usual ones.
        packages: What is sold and at which price; a material named here is bought in these alone, up to four of each.
        wages: They say what an hour of work costs.
        saw: The limits of the shop at the saw.
        order: The order to cut in; when left out, the one of three that takes least by its rates.
        build_year: When the house was built: paint of before 1978, or of unknown age, may hold lead.
    """

    rates: Rates = Rates()
    packages: Annotated[list[Package], Meta(max_length=100)] = []
    wages: Wages = NO_WAGES
    saw: Saw = Saw()
    order: OrderKind | None = None
    build_year: Annotated[int, Meta(ge=1000, le=2200)] | None = None

    def report(self, faults: Faults, at: Path = ()) -> None:
        """Note what cannot be reckoned with."""
        self.rates.report(faults, (*at, "rates"))
        report_packages(self.packages, faults, (*at, "packages"))


STANDARD = Shop()
