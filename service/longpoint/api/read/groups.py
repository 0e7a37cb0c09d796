"""From a cut-list request to the groups that some of its openings form."""

from __future__ import annotations

from longpoint.api.read.reader import Path, Reader
from longpoint.api.wire.cut_list import CutListRequest, GroupIn
from longpoint.geometry import Group, SharedStool
from longpoint.shop.house import HouseGroup


def read_groups(read: Reader, wire: CutListRequest) -> tuple[HouseGroup, ...]:
    """Every group, its members by their place among the openings."""
    places = {one.mark: index for index, one in enumerate(wire.openings)}
    taken: dict[str, str] = {}
    groups: list[HouseGroup] = []
    for number, one in enumerate(wire.groups):
        at: Path = ("groups", number)
        if one.mark in places or one.mark in {each.mark for each in wire.groups[:number]}:
            read.fault(
                (*at, "mark"), "duplicate-mark", f"{one.mark!r} is taken: give the group a mark of its own."
            )
        members = _members(read, wire, one, places, taken, at)
        groups.append(HouseGroup(members, _group(read, one, at)))
    return tuple(groups)


def _members(
    read: Reader, wire: CutListRequest, one: GroupIn, places: dict[str, int], taken: dict[str, str], at: Path
) -> tuple[int, ...]:
    members: list[int] = []
    for place, mark in enumerate(one.openings):
        here = (*at, "openings", place)
        index = places.get(mark)
        if index is None:
            read.fault(
                here, "unknown-opening", f"No opening is called {mark!r}: use the marks of this request."
            )
        elif mark in taken:
            read.fault(here, "taken-twice", f"{mark!r} belongs to the group {taken[mark]!r} already.")
        elif wire.openings[index].count != 1:
            read.fault(
                here, "count-not-one", f"{mark!r} stands for several alike: give each its own opening."
            )
        else:
            taken[mark] = one.mark
            members.append(index)
    return tuple(members)


def _group(read: Reader, one: GroupIn, at: Path) -> Group:
    heads = tuple(read.length(text, (*at, "heads"), number) for number, text in enumerate(one.heads or ()))
    solid = tuple(read.length(text, (*at, "solid"), number) for number, text in enumerate(one.solid))
    stock = read.optional_positive(one.stock_length, at, "stock_length")
    if one.gaps is None:
        for name, given in (("stock_length", stock is not None), ("solid", bool(solid))):
            if given:
                read.fault(
                    (*at, name),
                    "gaps-missing",
                    "A shared stool needs the gaps between its openings: give them.",
                )
        return Group(one.mark, heads)
    gaps = tuple(read.positive(text, (*at, "gaps"), number) for number, text in enumerate(one.gaps))
    return Group(one.mark, heads, SharedStool(gaps, stock, solid))
