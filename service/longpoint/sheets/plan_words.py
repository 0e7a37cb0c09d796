"""Which plan a sheet's sticks come from, and how good it is, in words."""

from __future__ import annotations

from longpoint.sheets.wording import money
from longpoint.shop.build import CutList
from longpoint.texts import say


def plan_words(cut_list: CutList) -> str:
    """ "Plan 3, proven cheapest.", how far it may be above, or what it lacks; "" for a house without sticks."""
    lacking = cut_list.unstocked
    if not cut_list.plans and not lacking:
        return ""
    above = sum(plan.cost_cents - plan.bound_cents for plan in cut_list.plans)
    which = "Sticks" if cut_list.plan_number is None else f"Plan {cut_list.plan_number},"
    if lacking:
        return f"{which} not proven: {say('word', 'sheet.plan-lacks', profiles=lacking)}."
    if not above:
        return f"{which} proven cheapest."
    return f"{which} not proven: at most {money(above)} {cut_list.house.currency} above the cheapest."
