"""A kept house checked before it is kept: every opening can be built, or every fault is reported where it was sent."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from contextlib import contextmanager

from msgspec.structs import replace

from longpoint.schedules.kept import KeptHouse
from longpoint.schedules.lots import LengthOnHand
from longpoint.shop.build import build_openings
from longpoint.shop.house import HouseGroup, HouseOpening, report_house
from longpoint.texts import say
from longpoint.values import Fault, Faults, Refusal

_GROUPED = {"count-not-one": ("count",), "stools-differ": ("trim",)}


def check_house(
    house: KeptHouse,
    openings: Sequence[HouseOpening] = (),
    lengths: Sequence[LengthOnHand] = (),
    groups: Sequence[HouseGroup] = (),
    *,
    build: bool = True,
) -> None:
    """Make sure that a house holds together and every opening of it can be built.

    Args:
        house: What is said of it as a whole.
        openings: Its openings.
        lengths: What is on hand.
        groups: Those that some of these openings form.
        build: Whether to build the openings, too; not where something stands for what could not be read.

    Raises:
        Refusal: with every fault, each at the field of the house.
    """
    whole = house.whole(openings, lengths, groups)
    faults = Faults()
    report_house(whole, faults)
    faults.raise_any()
    if build:
        build_openings(whole)


def check_opening(
    house: KeptHouse,
    opening: HouseOpening,
    group: HouseGroup | None = None,
    others: Sequence[HouseOpening] = (),
    *,
    build: bool = True,
) -> None:
    """Make sure that one opening can be built with the trim it names.

    Args:
        house: What is said of the house as a whole.
        opening: The opening.
        group: The group that names it, if one does.
        others: That group's other openings.
        build: As of `check_house`.

    Raises:
        Refusal: with every fault, at the fields of the opening as it was sent.
    """
    groups = () if group is None else (group,)
    replacing(
        lambda: check_house(without_stock(house), [opening, *others], groups=groups, build=build),
        lambda fault: _of_opening(fault, opening, group),
    )


def without_stock(house: KeptHouse) -> KeptHouse:
    """What openings are built by: stock and seasons are no matter to them."""
    return replace(house, stock=(), movement=None)


@contextmanager
def gathering(faults: Faults) -> Iterator[None]:
    """Faults that a check refuses with are noted, each once, so that those of the next are reported with them."""
    try:
        yield
    except Refusal as refusal:
        for fault in refusal.faults:
            if fault not in faults.found:
                faults.note(fault)
        faults.omitted += refusal.omitted


def replacing(check: Callable[[], None], replaced: Callable[[Fault], Fault]) -> None:
    """A check whose faults are reported elsewhere than where it found them.

    Raises:
        Refusal: with the faults so placed.
    """
    try:
        check()
    except Refusal as refusal:
        raise Refusal(dict.fromkeys(map(replaced, refusal.faults)), refusal.omitted) from None


def _of_opening(fault: Fault, opening: HouseOpening, group: HouseGroup | None) -> Fault:
    """A fault of a one-opening house as a fault of that opening."""
    at = fault.path
    if at[:2] == ("openings", 0):
        return fault.moved(*at[2:])
    if group is not None and at[:1] in (("openings",), ("groups",)):
        detail = say("problem", "group.cannot-be-made", group=group.mark, why=fault.detail)
        return Fault.at(_GROUPED.get(fault.code, ("readings",)), fault.code, detail)
    detail = say("problem", "trim.does-not-suit", trim=opening.trim, why=fault.detail, place=str(fault.place))
    return Fault.at(("trim",), fault.code, detail)


def marks_of(openings: Iterable[HouseOpening]) -> list[str]:
    """The marks of some openings."""
    return [one.mark for one in openings]
