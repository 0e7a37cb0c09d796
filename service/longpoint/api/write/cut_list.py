"""A worked-out house as the wire carries it."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterator
from typing import Any

from longpoint.api.wire.cut_list import (
    BuyLineOut,
    CutListOut,
    OffcutOut,
    OpeningOut,
    PlacedOut,
    ProfilePlanOut,
    StickOut,
)
from longpoint.api.wire.findings import finding_out
from longpoint.api.wire.lengths import LengthWriter, length_writer
from longpoint.api.wire.money import money
from longpoint.api.wire.movement import ConditionsIn
from longpoint.api.wire.parts import gap_out, part_out
from longpoint.api.write.open_joints import open_joints_out
from longpoint.api.write.saw_order import saw_order_out
from longpoint.api.write.work_sections import caution_out, cost_out, hours_out, materials_out
from longpoint.geometry import Part
from longpoint.shop import ShopWork
from longpoint.shop.house import BuiltOpening, CutList, opening_index
from longpoint.stock import Layout, Placed, Plan

UNPROVEN = (
    "Not all sticks are proven cheapest: the bound of each plan says how far off it can be, and more "
    "`planning_seconds` may close the gap."
)
NO_STOCK = "No stock was given for {}: its parts are computed, its sticks are not."


def cut_list_out(
    cut_list: CutList, work: ShopWork, currency: str, movement: ConditionsIn | None = None
) -> CutListOut:
    """The whole answer."""
    write = length_writer(cut_list.house.rounding)
    planned = {plan.profile for plan in cut_list.plans}
    needed = {part.profile for one in cut_list.openings for part in one.built.parts}
    notes = [NO_STOCK.format(repr(profile)) for profile in sorted(needed - planned)]
    if any(not plan.proven for plan in cut_list.plans):
        notes.append(UNPROVEN)
    return CutListOut(
        openings=[opening_out(one, write, movement) for one in cut_list.openings],
        plans=[_plan_out(plan, cut_list, write) for plan in cut_list.plans],
        buy=[line for plan in cut_list.plans for line in _buy(plan, write)],
        cost=money(sum(plan.cost_cents for plan in cut_list.plans)),
        currency=currency,
        proven=all(plan.proven for plan in cut_list.plans),
        offcuts=[
            OffcutOut(plan.profile, write(length), quantity)
            for plan in cut_list.plans
            for length, quantity in plan.offcuts
        ],
        notes=notes,
        cautions=[caution_out(caution) for caution in work.cautions],
        saw_order=saw_order_out(work.saw_order, write) if work.saw_order else None,
        materials=materials_out(work.materials) if work.materials else None,
        hours=hours_out(work.hours) if work.hours else None,
        cost_sheet=cost_out(work.cost, currency) if work.cost else None,
    )


def opening_out(
    one: BuiltOpening,
    write: LengthWriter,
    movement: ConditionsIn | None = None,
    spell: Callable[[Part, str, LengthWriter, int], Any] = part_out,
) -> OpeningOut:
    """One opening and its parts, each as `spell` gives it."""
    built, mark = one.built, one.built.opening.mark
    return OpeningOut(
        mark=mark,
        room=one.room,
        count=one.count,
        parts=[spell(part, mark, write, one.count) for part in built.parts],
        square_gap=gap_out(built.square_gap, write.unit),
        notes=list(built.notes),
        findings=[finding_out(finding, write) for finding in built.findings],
        movement=open_joints_out(built, movement, write.unit),
    )


def _plan_out(plan: Plan, cut_list: CutList, write: LengthWriter) -> ProfilePlanOut:
    return ProfilePlanOut(
        profile=plan.profile,
        sticks=_sticks(plan, cut_list, write),
        cost=money(plan.cost_cents),
        bound=money(plan.bound_cents),
        gap=plan.gap,
        proven=plan.proven,
        method=plan.method,
        seconds=round(plan.seconds, 3),
        split_openings=list(plan.split_openings),
    )


def _sticks(plan: Plan, cut_list: CutList, write: LengthWriter) -> list[StickOut]:
    """Every stick by itself, numbered as they come to the saw, each piece with its opening and instance."""
    instances: dict[str, Iterator[int]] = {}
    sticks: list[StickOut] = []
    for layout in plan.layouts:
        for keys in layout.keys:
            pieces = []
            for placed, key in zip(layout.placed, keys, strict=True):
                if key not in instances:
                    count = cut_list.openings[opening_index(key)].count
                    instances[key] = iter(cut_list.instances(key, count))
                pieces.append(_placed_out(placed, key, next(instances[key]), cut_list, write))
            sticks.append(_stick_out(len(sticks) + 1, layout, pieces, write))
    return sticks


def _stick_out(number: int, layout: Layout, pieces: list[PlacedOut], write: LengthWriter) -> StickOut:
    return StickOut(
        number=number,
        length=write(layout.length),
        remnant=layout.remnant,
        price=money(layout.price_cents),
        pieces=pieces,
        offcut=write(layout.offcut),
        kept=layout.kept,
    )


def _placed_out(placed: Placed, key: str, instance: int, cut_list: CutList, write: LengthWriter) -> PlacedOut:
    index, _, part = key.partition(":")
    return PlacedOut(
        opening=cut_list.openings[int(index)].built.opening.mark,
        part=part,
        instance=instance,
        start=write(placed.start),
        length=write(placed.length),
        turned=placed.turned,
        reversed=placed.reversed,
        shares_cut=placed.shares_cut,
    )


def _buy(plan: Plan, write: LengthWriter) -> list[BuyLineOut]:
    bought: Counter[tuple[str, int]] = Counter()
    lengths = {}
    for layout in plan.layouts:
        if not layout.remnant:
            bought[layout.stick, layout.price_cents] += layout.times
            lengths[layout.stick] = layout.length
    return [
        BuyLineOut(plan.profile, write(lengths[stick]), count, money(price), money(price * count))
        for (stick, price), count in sorted(bought.items(), key=lambda item: lengths[item[0][0]])
    ]
