"""Working in stages: what is bought and cut now, and what only counts in the cost."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace
from itertools import count

from longpoint.shop.build import BuiltOpening, CutList, HouseKey, cuttings, every_instance
from longpoint.stock import Budget, Cutting, Placed, Plan, Standing, StickOnHand, StockError, plan

AHEAD = "ahead "
"""Begins what a stick that looks ahead is called: it has no name of its own yet, and comes after those that have."""

Instances = Mapping[HouseKey, tuple[int, ...]]
"""By piece key, which of the pieces alike."""


def split(openings: Sequence[BuiltOpening], left: Instances | None) -> tuple[Instances | None, Instances]:
    """Which pieces are cut now, None for all there are, and which only count in the cost.

    Args:
        openings: Of a house.
        left: Which of its pieces are not cut yet; None for all.
    """
    if all(one.to_cut for one in openings):
        return left, {}
    every = every_instance(openings) if left is None else left
    now = {key: found if openings[key.opening].to_cut else () for key, found in every.items()}
    later = {key: () if openings[key.opening].to_cut else found for key, found in every.items()}
    return now, later


def with_later(cut_list: CutList, later: Instances) -> CutList:
    """A cut list with what the sticks of the rest are taken to cost: planned at once, from what it leaves over too."""
    if not any(later.values()):
        return cut_list
    used = {one.profile: one for one in cut_list.plans}
    plans, missing = [], []
    for cutting in cuttings(cut_list.house, cut_list.openings, later):
        try:
            plans.append(plan(_after(cutting, used.get(cutting.profile)), Budget(seconds=0)))
        except StockError:
            missing.append(cutting.profile)
    return cut_list.with_later(tuple(plans), tuple(missing))


def looking_ahead(cutting: Cutting, whole: Cutting) -> Iterator[Standing]:
    """Sticks to be kept where that costs nothing: those of the whole house, with room left for what is cut later.

    Args:
        house: Of what is cut now.
        whole: Of that and of what is cut later.
    """
    now = {piece.key for piece in cutting.pieces}
    try:
        found = plan(whole, Budget(seconds=0))
    except StockError:
        return
    sticks = [(layout, keys) for layout in found.layouts for keys in layout.keys]
    for number, (layout, keys) in enumerate(sticks):
        placed = tuple(_without(layout.placed, [key in now for key in keys]))
        if placed:
            kept = tuple(key for key in keys if key in now)
            offcut = layout.length - placed[-1].end
            yield Standing(f"{AHEAD}{number}", replace(layout, placed=placed, keys=(kept,), offcut=offcut))


def _without(placed: Sequence[Placed], stays: Sequence[bool]) -> Iterator[Placed]:
    """Pieces of a stick moved together to its left end, some of them taken off."""
    end, before = placed[0].start, None
    for index, (one, is_kept) in enumerate(zip(placed, stays, strict=True)):
        if not is_kept:
            continue
        beside = before == index - 1
        if before is not None:
            end += one.start - placed[before].end if beside else placed[before].eats
        yield replace(one, start=end, shares_cut=one.shares_cut and beside)
        end += one.length
        before = index


def _after(cutting: Cutting, before: Plan | None) -> Cutting:
    """A cutting with the lengths on hand that a plan leaves, and the offcuts that it keeps."""
    if before is None:
        return cutting
    taken = before.sticks
    free = [one for one in cutting.lengths_on_hand if one.key not in taken]
    numbers = count()
    kept = [
        StickOnHand(f"offcut {next(numbers)}", length)
        for length, quantity in before.offcuts
        for _ in range(quantity)
    ]
    return replace(cutting, lengths_on_hand=(*free, *kept))
