"""Some openings of a stored house worked out, and what the group they form shares."""

from __future__ import annotations

from collections.abc import Sequence

import msgspec

from longpoint.api.computed.cut_list_work import built_openings
from longpoint.api.read.house import read_house
from longpoint.api.stored.house import cut_list_request
from longpoint.api.wire.cut_list import GroupIn
from longpoint.api.wire.opening import OpeningIn
from longpoint.api.wire.schedule import HouseIn
from longpoint.shop.house import BuiltOpening


def built_with_group(
    house: HouseIn, openings: Sequence[OpeningIn], group: GroupIn | None
) -> tuple[BuiltOpening, ...]:
    """These openings worked out, then what the group shares; only the trim specs they name are read.

    Args:
        house: What is said of the house as a whole.
        openings: With a group, all of those it names.
        group: The group they form, if they form one.

    Raises:
        InvalidRequest: when they cannot be built.
    """
    trims = {one.trim: house.trim_specs[one.trim] for one in openings}
    alone = msgspec.structs.replace(house, trim_specs=trims, stock=[])
    request = cut_list_request(alone, openings, groups=[] if group is None else [group])
    return built_openings(request, read_house(request))
