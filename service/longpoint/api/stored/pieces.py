"""Some rooms or openings of a stored house, as far as an answer or a sheet is asked for only those."""

from __future__ import annotations

from collections.abc import Sequence, Set
from typing import Annotated

from litestar.params import QueryParameter
from msgspec.structs import replace

from longpoint.api.http.problems import InvalidRequest
from longpoint.shop import Section, ShopWork, work
from longpoint.shop.build import BuiltOpening, CutList
from longpoint.shop.narrowed import chosen, cost_of, narrowed
from longpoint.texts import say
from longpoint.values import Fault, nearest

RoomsAsked = Annotated[
    list[str] | None, QueryParameter(description="Only the openings of these rooms.", max_items=100)
]
OpeningsAsked = Annotated[
    list[str] | None,
    QueryParameter(description="Only the openings, or groups, of these marks.", max_items=500),
]


def chosen_of(
    openings: Sequence[BuiltOpening], rooms: Sequence[str] | None, marks: Sequence[str] | None
) -> frozenset[str] | None:
    """Marks of the openings that are asked for; None for all.

    Raises:
        InvalidRequest: when the house has no such room or opening.
    """
    if not rooms and not marks:
        return None
    known = {
        "room": [one.room for one in openings],
        "opening": [one.built.opening.mark for one in openings],
    }
    faults = [
        Fault(
            code=f"unknown-{name}",
            detail=say("problem", "house.unknown-room-or-opening", what=name, name=one)
            + nearest(one, known[name]),
            parameter=name,
        )
        for name, asked in (("room", rooms), ("opening", marks))
        for one in asked or ()
        if one not in known[name]
    ]
    if faults:
        raise InvalidRequest(say("problem", "house.no-such-room-or-opening"), faults)
    return chosen(openings, rooms or (), marks or ())


def work_on(
    cut_list: CutList, sections: Set[Section], marks: frozenset[str] | None
) -> tuple[CutList, ShopWork]:
    """The cut list of these openings, None for all, and the shop's work on it."""
    if marks is None:
        return cut_list, work(cut_list, sections, cut_list.house.shop)
    some = narrowed(cut_list, marks)
    found = work(some, sections - {Section.COST}, some.house.shop)
    if Section.COST in sections:
        # A room costs what the whole house's cost sheet says, however its sticks are shared.
        whole = work(cut_list, {Section.COST}, cut_list.house.shop).cost
        found = replace(found, cost=None if whole is None else cost_of(whole, cut_list, marks))
    return some, found
