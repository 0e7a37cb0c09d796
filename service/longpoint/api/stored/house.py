"""From what is stored to the house the computing rooms take: the seam every computed answer of a schedule uses."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence

import msgspec

from longpoint.api.computed.cut_list_work import house_field
from longpoint.api.http.faults import Faults, InvalidRequest
from longpoint.api.http.problems import Fault
from longpoint.api.read.build import raise_geometry
from longpoint.api.read.house import read_house
from longpoint.api.wire.cut_list import CutListRequest, GroupIn, RemnantIn, StockIn
from longpoint.api.wire.movement import ConditionsIn
from longpoint.api.wire.opening import OpeningIn
from longpoint.api.wire.schedule import HouseIn, OffcutIn
from longpoint.api.write.open_joints import read_conditions
from longpoint.geometry import GeometryError, check_conditions
from longpoint.shop.house import build_openings

read_house_document = msgspec.json.Decoder(HouseIn).decode
read_opening_document = msgspec.json.Decoder(OpeningIn).decode
read_offcut_document = msgspec.json.Decoder(OffcutIn).decode


def cut_list_request(
    house: HouseIn,
    openings: Sequence[OpeningIn],
    rack: Iterable[OffcutIn] = (),
    groups: Sequence[GroupIn] = (),
) -> CutListRequest:
    """The cut-list request that describes a house, or some of its openings with those groups that are all there."""
    remnants: dict[str, list[RemnantIn]] = {}
    for offcut in rack:
        remnants.setdefault(offcut.profile, []).append(
            RemnantIn(length=offcut.length, price=offcut.price, defects=offcut.defects)
        )
    stock = [
        StockIn(
            profile=one.profile,
            sticks=one.sticks,
            turnable=one.turnable,
            remnants=remnants.pop(one.profile, []),
        )
        for one in house.stock
    ]
    # A profile the yard does not sell can still be cut from the rack.
    stock += [StockIn(profile=profile, sticks=[], remnants=left) for profile, left in remnants.items()]
    return CutListRequest(
        openings=list(openings),
        trim_specs=house.trim_specs,
        groups=list(groups),
        movement=house.movement,
        stock=stock,
        unit=house.unit,
        rounding=house.rounding,
        kerf=house.kerf,
        end_trim=house.end_trim,
        keep_length=house.keep_length,
        currency=house.currency,
        shop=house.shop,
    )


def check_house(
    house: HouseIn,
    openings: Sequence[OpeningIn],
    rack: Sequence[OffcutIn] = (),
    *,
    groups: Sequence[GroupIn] = (),
    rack_name: str = "rack",
) -> None:
    """Make sure that all of a house can be read and every opening built.

    Args:
        house: What is said of it as a whole.
        openings: Its openings.
        rack: Its offcuts.
        groups: Those that some of these openings form.
        rack_name: The field they were sent in; "" when one was sent as the whole body.

    Raises:
        InvalidRequest: with every fault; openings that name a trim spec that is not there are among them.
    """
    faults = Faults()
    request = cut_list_request(house, openings, groups=groups)
    rack_request = cut_list_request(house, [], rack)
    try:
        read = read_house(request) if house.trim_specs or not openings else None
    except InvalidRequest as refusal:
        for fault in refusal.errors:
            faults.note(fault)
        read = None
    else:
        if read is None:
            for index, one in enumerate(openings):
                detail = f"No trim spec is called {one.trim!r}; the house has none yet."
                faults.add(("openings", index, "trim"), "unknown-trim", detail)
    _check_rack(rack_request, rack, rack_name, faults)
    if house.movement is not None:
        _check_movement(house.movement, faults)
    faults.raise_any()
    if read is not None:
        try:
            build_openings(read)
        except GeometryError as error:
            raise_geometry(error, lambda path: house_field(request, path))


def _check_rack(request: CutListRequest, rack: Sequence[OffcutIn], name: str, faults: Faults) -> None:
    """The rack's lengths are read as remnants; their faults are told where they were sent."""
    try:
        read_house(msgspec.structs.replace(request, trim_specs={}))
    except InvalidRequest as refusal:
        places: dict[str, list[int]] = {}
        for index, offcut in enumerate(rack):
            places.setdefault(offcut.profile, []).append(index)
        for fault in refusal.errors:
            steps = str(fault.pointer).split("/")
            if len(steps) > 4 and steps[1] == "stock" and steps[3] == "remnants":
                index = places[request.stock[int(steps[2])].profile][int(steps[4])]
                place = [name, str(index)] if name else []
                faults.note(moved(fault, "/".join(["", *place, *steps[5:]])))


def _check_movement(wire: ConditionsIn, faults: Faults) -> None:
    try:
        check_conditions(read_conditions(wire))
    except GeometryError as error:
        for fault in error.faults:
            faults.add(("movement", *fault.path), fault.code, fault.detail)


def check_opening(
    house: HouseIn, opening: OpeningIn, group: GroupIn | None = None, others: Sequence[OpeningIn] = ()
) -> None:
    """Make sure that one opening can be read and built with the trim it names.

    Args:
        house: What is said of the house as a whole.
        opening: The opening.
        group: The group that names it, if one does.
        others: That group's other openings.

    Raises:
        InvalidRequest: with every fault, at the fields of the opening as it was sent.
    """
    spec = house.trim_specs.get(opening.trim)
    if spec is None:
        faults = Faults()
        names = ", ".join(map(repr, house.trim_specs))[:200]
        known = f"the schedule has {names}" if names else "the schedule has none yet"
        faults.add(("trim",), "unknown-trim", f"No trim spec is called {opening.trim!r}; {known}.")
        faults.raise_any()
    else:
        try:
            trims = {opening.trim: spec} if group is None else house.trim_specs
            check_house(
                msgspec.structs.replace(house, trim_specs=trims, stock=[], movement=None),
                [opening, *others],
                groups=[] if group is None else [group],
            )
        except InvalidRequest as refusal:
            raise retold(refusal, lambda fault: _of_opening(fault, opening, group)) from None


def _of_opening(fault: Fault, opening: OpeningIn, group: GroupIn | None) -> Fault:
    """A fault of a one-opening house as a fault of that opening."""
    at = str(fault.pointer)
    if at.startswith("/openings/0"):
        return moved(fault, at.removeprefix("/openings/0"))
    if group is not None and at.startswith(("/openings", "/groups")):
        detail = f"With this, the group {group.mark!r} that names it cannot be made: {fault.detail}"
        return Fault(code=fault.code, detail=detail, pointer=_GROUPED.get(str(fault.code), "/readings"))
    detail = f"The trim spec {opening.trim!r} does not suit it ({at}): {fault.detail}"
    return Fault(code=fault.code, detail=detail, pointer="/trim")


_GROUPED = {"count-not-one": "/count", "stools-differ": "/trim"}


def retold(refusal: InvalidRequest, retell: Callable[[Fault], Fault]) -> InvalidRequest:
    """The same refusal, each of its faults told anew."""
    told = [retell(fault) for fault in refusal.errors]
    return InvalidRequest(told[0].detail if len(told) == 1 else refusal.detail, told)


def moved(fault: Fault, pointer: str) -> Fault:
    """The same fault at another place."""
    return Fault(code=fault.code, detail=fault.detail, pointer=pointer)


__all__ = [
    "check_house",
    "check_opening",
    "cut_list_request",
    "moved",
    "read_house_document",
    "read_offcut_document",
    "read_opening_document",
    "retold",
]
