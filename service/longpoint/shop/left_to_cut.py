"""The cut list of what is left to cut, from the sticks of a kept plan that are not cut yet."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Callable, Iterable, Mapping, Sequence
from itertools import groupby

from longpoint.shop.build import BuiltOpening, CutList, HouseKey
from longpoint.shop.named_sticks import NamedStick, PlannedProfile, Sited, laid_out
from longpoint.stock import Plan


def cut_list_of(
    sited: Sited,
    openings: tuple[BuiltOpening, ...],
    profiles: Iterable[PlannedProfile],
    sticks: Mapping[str, NamedStick],
    left: Mapping[HouseKey, tuple[int, ...]],
    number: int,
) -> CutList:
    """The cut list of what is left to cut.

    Args:
        sited: The house.
        openings: Its openings, worked out.
        profiles: What is planned.
        sticks: Those of the plan that are not cut yet, by name.
        left: Which of the pieces alike are not cut yet.
        number: Of the plan.
    """
    in_order: dict[HouseKey, list[int]] = defaultdict(list)
    names: dict[str, tuple[str, ...]] = {}
    plans = []
    for one in profiles:
        there = [name for name in one.sticks if name in sticks]
        if there:
            names[one.profile] = tuple(there)
            plans.append(_plan(sited, one, [sticks[name] for name in there], in_order))
    return CutList(
        sited.house,
        openings,
        tuple(plans),
        {key: tuple(in_order.get(key, instances)) for key, instances in left.items()},
        names,
        number,
    )


def _plan(
    sited: Sited, one: PlannedProfile, sticks: Sequence[NamedStick], in_order: dict[HouseKey, list[int]]
) -> Plan:
    """What is left of a profile's plan: what was cut from it is neither in its cost nor in its bound."""
    places, key_of = sited.places, _stock_keys(sited, one.profile)
    layouts = []
    for _, alike in groupby(sticks, _pattern):
        rows = list(alike)
        keys = tuple(
            tuple(HouseKey(places[piece.opening_id], piece.piece) for piece in stick.pieces) for stick in rows
        )
        for stick, row in zip(rows, keys, strict=True):
            for piece, key in zip(stick.pieces, row, strict=True):
                in_order[key].append(piece.instance)
        layouts.append(laid_out(key_of(rows[0]), rows[0], keys))
    cost = sum(stick.price for stick in sticks)
    bound = max(0, one.bound - (one.cost - cost))
    return Plan(
        one.profile,
        tuple(layouts),
        cost,
        bound,
        one.seconds,
        one.method,
        one.stopped,
        one.split_openings,
    )


def _stock_keys(sited: Sited, profile: str) -> Callable[[NamedStick], str]:
    """What gives the key by which the stock room knows what a stick is cut from."""
    stock = next((one for one in sited.house.stock if one.profile == profile), None)
    sold = {} if stock is None else {(one.length, one.price_cents): one.key for one in stock.kinds}
    lots = {} if stock is None else {sited.lot_of(profile, one.key): one.key for one in stock.each_on_hand}

    def key_of(stick: NamedStick) -> str:
        found = sold.get((stick.length, stick.price)) if stick.lot is None else lots.get(stick.lot)
        return found or str(stick.length)

    return key_of


def _pattern(stick: NamedStick) -> tuple[object, ...]:
    """What sticks that are cut alike have in common."""
    return stick.length, stick.price, stick.lot, tuple(piece.placed for piece in stick.pieces)
