"""The shop's whole answer to a cut list, only what is asked of it computed."""

from __future__ import annotations

from collections.abc import Set
from enum import StrEnum

from longpoint.shop.amounts import amounts
from longpoint.shop.build import CutList
from longpoint.shop.cautions import Caution, cautions
from longpoint.shop.cost import cost_sheet
from longpoint.shop.hours import hours
from longpoint.shop.materials import materials
from longpoint.shop.operations import SawOrder
from longpoint.shop.saw_order import raised, saw_order
from longpoint.shop.settings import STANDARD, Shop
from longpoint.shop.takeoff import CostSheet, Hours, Materials
from longpoint.values import Value


class Section(StrEnum):
    """A part of the shop's answer."""

    SAW_ORDER = "saw_order"
    MATERIALS = "materials"
    HOURS = "hours"
    COST = "cost"


class ShopWork(Value, frozen=True):
    """The sections asked for, None for the others, and the cautions of the house."""

    cautions: tuple[Caution, ...]
    saw_order: SawOrder | None = None
    materials: Materials | None = None
    hours: Hours | None = None
    cost: CostSheet | None = None


def work(cut_list: CutList, wanted: Set[Section], shop: Shop = STANDARD) -> ShopWork:
    """The sections wanted, each computed from the same cut list and shop."""
    order = bought = time = cost = None
    timed = bool(wanted & {Section.HOURS, Section.COST})
    if timed or Section.SAW_ORDER in wanted:
        order = saw_order(cut_list, shop)
    if timed or Section.MATERIALS in wanted:
        taken = amounts(cut_list, shop.rates)
        bought = materials(taken, shop.rates, shop.packages)
        if order is not None and timed:
            time = hours(taken, order, shop.rates)
            cost = cost_sheet(cut_list, taken, bought, time, shop.wages)
    at_the_saw = raised(order) if order else ()
    return ShopWork(
        cautions=cautions(cut_list, build_year=shop.build_year, at_the_saw=at_the_saw),
        saw_order=order if Section.SAW_ORDER in wanted else None,
        materials=bought if Section.MATERIALS in wanted else None,
        hours=time if Section.HOURS in wanted else None,
        cost=cost if Section.COST in wanted else None,
    )
