"""The shop's whole answer to a cut list, only what is asked of it computed."""

from __future__ import annotations

from collections.abc import Set
from enum import StrEnum

from longpoint.geometry.value import Value
from longpoint.shop.amounts import amounts
from longpoint.shop.cautions import Caution, cautions
from longpoint.shop.cost import Wages, cost_sheet
from longpoint.shop.hours import hours
from longpoint.shop.house import CutList
from longpoint.shop.materials import materials
from longpoint.shop.operations import SawOrder
from longpoint.shop.packages import Package
from longpoint.shop.rates import Rates
from longpoint.shop.saw_order import saw_order
from longpoint.shop.steps import SawHabits
from longpoint.shop.takeoff import CostSheet, Hours, Materials


class Section(StrEnum):
    """A part of the shop's answer."""

    SAW_ORDER = "saw_order"
    MATERIALS = "materials"
    HOURS = "hours"
    COST = "cost"


class ShopSettings(Value, frozen=True):
    """How the shop works.

    Attributes:
        packages: what is sold and at which price; a material named here is bought in these alone.
        build_year: when the house was built; None when nobody knows.
    """

    rates: Rates = Rates()
    packages: tuple[Package, ...] = ()
    wages: Wages = Wages()
    habits: SawHabits = SawHabits()
    build_year: int | None = None


class ShopWork(Value, frozen=True):
    """The sections asked for, None for the others, and the cautions of the job."""

    cautions: tuple[Caution, ...]
    saw_order: SawOrder | None = None
    materials: Materials | None = None
    hours: Hours | None = None
    cost: CostSheet | None = None


STANDARD = ShopSettings()


def work(cut_list: CutList, wanted: Set[Section], settings: ShopSettings = STANDARD) -> ShopWork:
    """The sections wanted, each computed from the same cut list and settings."""
    order = bought = time = cost = None
    timed = bool(wanted & {Section.HOURS, Section.COST})
    if timed or Section.SAW_ORDER in wanted:
        order = saw_order(cut_list, settings.habits)
    if timed or Section.MATERIALS in wanted:
        taken = amounts(cut_list, settings.rates)
        bought = materials(taken, settings.rates, settings.packages)
        if order is not None and timed:
            time = hours(taken, len(order.setups), settings.rates)
            cost = cost_sheet(cut_list, taken, bought, time, settings.wages)
    raised = order.cautions if order else ()
    return ShopWork(
        cautions=cautions(cut_list, build_year=settings.build_year, at_the_saw=raised),
        saw_order=order if Section.SAW_ORDER in wanted else None,
        materials=bought if Section.MATERIALS in wanted else None,
        hours=time if Section.HOURS in wanted else None,
        cost=cost if Section.COST in wanted else None,
    )
