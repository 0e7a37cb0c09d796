"""Sticks cut just as a cut list has them, as the work they are."""

from __future__ import annotations

from collections.abc import Iterator

from longpoint.api.stored.cut_list import StoredHouse, WorkedOut
from longpoint.lengths import Mode, PositiveLength, Rounding, round_to, tape
from longpoint.schedules.kept import MOST_OFFCUTS, RackLength
from longpoint.schedules.sent import CutSticks, PieceDone, Work
from longpoint.schedules.states import Done
from longpoint.shop.build import HouseKey
from longpoint.stock import Layout, Plan
from longpoint.values import Faults


def sticks_as_work(data: CutSticks, house: StoredHouse, done: WorkedOut) -> Work:
    """The pieces on the sticks that were cut, the remnants they used up and the offcuts they left.

    Raises:
        Refusal: when the cut list has no such sticks.
    """
    faults = Faults()
    plan = next((plan for plan in done.cut_list.plans if plan.profile == data.profile), None)
    sticks = list(_numbered(plan)) if plan else []
    if plan is None:
        faults.add(("profile",), "unknown-profile", f"The cut list has no sticks of {data.profile!r}.")
    for index, number in enumerate(data.sticks):
        if plan and number > len(sticks):
            detail = f"The cut list has {len(sticks)} sticks of {data.profile!r}."
            faults.add(("sticks", index), "unknown-stick", detail)
        elif number in data.sticks[:index]:
            faults.add(("sticks", index), "given-twice", "This stick is in the list already.")
    faults.raise_any()
    instances = {key: iter(left) for key, left in (done.cut_list.left or {}).items()}
    down = Rounding(done.cut_list.house.rounding.to, Mode.DOWN)
    pieces: list[PieceDone] = []
    used: list[str] = []
    offcuts: list[RackLength] = []
    stock = next(one for one in house.house.stock if one.profile == data.profile)
    room = MOST_OFFCUTS - len(house.offcut_ids.get(data.profile, []))
    for number, (layout, keys) in enumerate(sticks, start=1):
        cut = [(key, next(instances[key])) for key in keys]
        if number not in data.sticks:
            continue
        pieces += [_piece(house, key, instance) for key, instance in cut]
        if layout.remnant:
            used.append(house.offcut_ids[data.profile][stock.remnant_at(layout.stick)])
        if layout.kept and len(offcuts) < room + len(used):
            length = round_to(layout.offcut, down)
            offcuts.append(
                RackLength(profile=data.profile, length=PositiveLength(length, tape(length, down.to.unit)))
            )
    return Work(pieces=tuple(pieces), offcuts=tuple(offcuts), used_offcuts=tuple(used))


def _numbered(plan: Plan) -> Iterator[tuple[Layout, tuple[HouseKey, ...]]]:
    """Each stick in the order the cut list numbers them, with the keys of the pieces on it."""
    for layout in plan.layouts:
        for keys in layout.keys:
            yield layout, keys


def _piece(house: StoredHouse, key: HouseKey, instance: int) -> PieceDone:
    return PieceDone(
        opening=house.opening_ids[key.opening], part=key.piece, instance=instance, state=Done.CUT
    )
