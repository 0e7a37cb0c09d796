"""The parts of a stored house at one revision, by what has them: an opening, or a group for those that are shared."""

from __future__ import annotations

from collections.abc import Mapping

import msgspec

from longpoint.api.read.house import read_house
from longpoint.api.stored.built import built_with_group
from longpoint.api.stored.groups import shares
from longpoint.api.stored.house import cut_list_request
from longpoint.api.wire.opening import OpeningIn
from longpoint.api.wire.schedule import HouseIn
from longpoint.geometry import Part, Pieces, build_opening


def shared_marks(house: HouseIn) -> set[str]:
    """The marks of the openings that have no stool of their own."""
    return {mark for group in house.groups if shares(group) for mark in group.openings}


def opening_parts(house: HouseIn, opening: OpeningIn) -> dict[str, Part]:
    """An opening's own parts, by key."""
    trims = {opening.trim: house.trim_specs[opening.trim]}
    alone = msgspec.structs.replace(house, trim_specs=trims, stock=[])
    (one,) = read_house(cut_list_request(alone, [opening])).openings
    wanted = Pieces.CASING if opening.mark in shared_marks(house) else Pieces.ALL
    return {part.key: part for part in build_opening(one.opening, wanted).parts}


def shared_parts(house: HouseIn, members: Mapping[str, OpeningIn]) -> dict[str, dict[str, Part]]:
    """What each group shares, by the group's mark and the part's key."""
    found: dict[str, dict[str, Part]] = {}
    for group in house.groups:
        if shares(group):
            built = built_with_group(house, [members[mark] for mark in group.openings], group)[-1]
            found[group.mark] = {part.key: part for part in built.built.parts}
    return found
