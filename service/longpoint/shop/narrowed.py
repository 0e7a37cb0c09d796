"""A part of a house: some of its rooms or openings, with the sticks their pieces come from."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Collection, Iterable, Iterator, Sequence
from dataclasses import replace as with_changed

from msgspec.structs import replace

from longpoint.shop.build import BuiltOpening, CutList, HouseKey
from longpoint.shop.cost import summed
from longpoint.shop.takeoff import CostSheet
from longpoint.stock import Layout, Plan
from longpoint.values import Cents


def chosen(
    openings: Iterable[BuiltOpening], rooms: Collection[str], marks: Collection[str]
) -> frozenset[str]:
    """Marks of the openings, and groups, that are in these rooms or have these marks."""
    return frozenset(
        one.built.opening.mark for one in openings if one.room in rooms or one.built.opening.mark in marks
    )


def narrowed(cut_list: CutList, marks: Collection[str]) -> CutList:
    """The openings of these marks and the sticks that hold a piece of theirs, with whatever else is on those.

    So it is with the sticks that are cut later, too: one that holds pieces of others besides counts whole.
    """
    openings = tuple(replace(one, shown=one.built.opening.mark in marks) for one in cut_list.openings)
    shown = {index for index, one in enumerate(openings) if one.shown}
    left: dict[HouseKey, list[int]] = defaultdict(list)
    names: dict[str, list[str]] = defaultdict(list)
    plans = []
    for plan in cut_list.plans:
        layouts = list(_layouts(cut_list, plan, shown, left, names[plan.profile]))
        if layouts:
            plans.append(_of(plan, layouts))
    planned = {plan.profile for plan in cut_list.plans}
    for index, one in enumerate(openings):
        for piece in one.built.pieces:
            key = HouseKey(index, piece.key)
            if one.shown and piece.profile not in planned:
                left[key] = list(cut_list.instances(key, one.count))
    return replace(
        cut_list,
        openings=openings,
        plans=tuple(plans),
        left={key: tuple(instances) for key, instances in left.items()},
        kept_names={profile: tuple(some) for profile, some in names.items()},
        later=tuple(_later(plan, shown) for plan in cut_list.later),
        later_missing=tuple(
            profile
            for profile in cut_list.later_missing
            if any(
                piece.profile == profile
                for one in openings
                if one.shown and not one.to_cut
                for piece in one.built.pieces
            )
        ),
    )


def _later(plan: Plan, shown: set[int]) -> Plan:
    """The sticks of a plan that hold a piece of the openings shown."""
    rows = (
        with_changed(
            layout, keys=tuple(keys for keys in layout.keys if any(key.opening in shown for key in keys))
        )
        for layout in plan.layouts
    )
    layouts = [layout for layout in rows if layout.keys]
    return _of(plan, layouts)


def _of(plan: Plan, layouts: Sequence[Layout]) -> Plan:
    """Some of a plan's sticks; what of its cost may be too much is as much as before."""
    cost = sum(layout.price_cents * layout.times for layout in layouts)
    bound = max(0, cost - (plan.cost_cents - plan.bound_cents))
    return with_changed(plan, layouts=tuple(layouts), cost_cents=cost, bound_cents=bound)


def _layouts(
    cut_list: CutList, plan: Plan, shown: set[int], left: dict[HouseKey, list[int]], names: list[str]
) -> Iterator[Layout]:
    """The sticks of a plan that hold a piece of the openings shown; notes their names and the pieces on them."""
    instances: dict[HouseKey, Iterator[int]] = {}
    called = iter(cut_list.stick_names[plan.profile])
    for layout in plan.layouts:
        rows = []
        for keys in layout.keys:
            name = next(called)
            own = []
            for key in keys:
                if key not in instances:
                    instances[key] = iter(cut_list.instances(key, cut_list.openings[key.opening].count))
                own.append((key, next(instances[key])))
            if any(key.opening in shown for key in keys):
                rows.append(keys)
                names.append(name)
                for key, instance in own:
                    left[key].append(instance)
        if rows:
            yield with_changed(layout, keys=tuple(rows))


def cost_of(cost: CostSheet, cut_list: CutList, marks: Collection[str]) -> CostSheet:
    """What some of a house's openings cost, as the whole house's cost sheet has it."""
    alone = len(cut_list.house.openings)
    counts = {one.built.opening.mark: one.count for one in cut_list.openings[:alone]}
    places = [at for at, one in enumerate(cost.openings) if one.opening in marks]
    lines = tuple(
        replace(
            line,
            amount=Cents(sum(line.by_opening[at] for at in places)),
            by_opening=tuple(line.by_opening[at] for at in places),
        )
        for line in cost.lines
    )
    openings = tuple(cost.openings[at] for at in places)
    rooms: dict[str, list[int]] = defaultdict(list)
    for at, one in enumerate(openings):
        rooms[one.room].append(at)
    return replace(
        cost,
        total=summed((line.category, line.amount) for line in lines),
        lines=lines,
        openings=openings,
        rooms=tuple(
            replace(
                one,
                openings=sum(counts.get(openings[at].opening, 0) for at in rooms[one.room]),
                amounts=summed(
                    (line.category, line.by_opening[at]) for line in lines for at in rooms[one.room]
                ),
            )
            for one in cost.rooms
            if one.room in rooms
        ),
    )
