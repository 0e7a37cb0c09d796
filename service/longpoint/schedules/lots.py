"""Lengths on hand, by lot: ordered, delivered, used up. A lot is of one profile, one length and one price."""

from __future__ import annotations

from collections import Counter
from collections.abc import Collection, Iterable, Iterator, Sequence
from itertools import count
from typing import Annotated, ClassVar

import msgspec
from msgspec import Meta
from msgspec.structs import replace

from longpoint.lengths import Fraction
from longpoint.schedules.states import LengthState
from longpoint.shop.house import MOST_LENGTHS_ON_HAND, AnyHouse
from longpoint.shop.paid import PaidLot
from longpoint.shop.stick_names import StickName
from longpoint.shop.yard import LengthsOnHand, OnHand
from longpoint.texts import Sentence, say
from longpoint.values import Faults, Name, Path, Price, Text, fields_of, nearest

MOST_LENGTHS = 200
"""Lots of one profile, of which some is left: as many as a cut list takes."""
MOST_LOTS = 5000
"""Lots of a schedule, those used up too."""
Quantity = Annotated[int, Meta(ge=0, le=1000)]


class LengthOnHand(OnHand, frozen=True, kw_only=True):
    """A lot of lengths on hand, or on their way: of one profile, one length and one price.

    Attributes:
        lot: The name of these sticks, entered together; no other lot of the schedule has it. The service names it
            where this is left out.
        profile: The profile's name, as trim specs and stock have it.
        ordered: How many were ordered in all; none when left out.
        delivered: The number that came or were found in all. When left out, it is none of those that were
            ordered and, where nothing is said of an order, one.
        used_up: The number of them that are gone in all: cut, spoiled or given away. When left out, it is as many
            as were recorded before; none of a new lot.
        paid: The price that was paid for each; `price` is what using one is taken to cost when sticks are planned.
            Leave `price` out for those that are paid for, so that they are used before any are bought.
        stick: The stick that it is left over from, where it is an offcut of one.
        note: It says where the lot came from, or where it stands.
    """

    unit_is_stored: ClassVar[bool] = True

    lot: Name | None = None
    profile: Name
    ordered: Quantity | None = None
    delivered: Quantity | None = None
    used_up: Quantity | None = None
    paid: Price = Price(0)
    stick: StickName | None = None
    note: Text = ""

    @property
    def came(self) -> int:
        """How many came."""
        if self.delivered is None:
            return 1 if self.ordered is None else 0
        return self.delivered

    @property
    def counted(self) -> int:
        """How many can be counted on in all: what was ordered comes."""
        return max(self.ordered or 0, self.came)

    @property
    def gone(self) -> int:
        """How many are gone."""
        return self.used_up or 0

    @property
    def available(self) -> int:
        """How many are left to plan with."""
        return max(0, self.counted - self.gone)

    @property
    def bought(self) -> bool:
        """Whether these are whole sticks that were paid for."""
        return self.stick is None and self.paid > 0

    @property
    def states(self) -> tuple[LengthState, ...]:
        """What can be said of it."""
        said = {
            LengthState.ORDERED: (self.ordered or 0) > self.came,
            LengthState.DELIVERED: self.came > 0,
            LengthState.ON_HAND: self.came > self.gone,
            LengthState.USED_UP: not self.available,
        }
        return tuple(state for state, so in said.items() if so)

    @property
    def notes(self) -> tuple[Sentence, ...]:
        """What is odd of it."""
        if self.ordered and self.came > self.ordered:
            return (say("note", "lot.more-came", came=self.came, ordered=self.ordered),)
        return ()

    @property
    def on_hand(self) -> LengthsOnHand:
        """What is left of it as a cut list takes it."""
        return LengthsOnHand(**fields_of(OnHand, self), count=self.available)

    @property
    def paid_lot(self) -> PaidLot:
        """It as what was paid is reckoned."""
        return PaidLot(self.named, self.profile, self.length, int(self.paid), self.counted, self.available)

    @property
    def named(self) -> str:
        """Its name."""
        assert self.lot is not None
        return self.lot

    def called(self, lot: str) -> LengthOnHand:
        """It under a name, its quantities said."""
        return replace(self, lot=lot, ordered=self.ordered or 0, delivered=self.came, used_up=self.gone)

    def less(self, number: int) -> LengthOnHand:
        """It with some more used up."""
        return replace(self, used_up=self.gone + number)

    def report(self, faults: Faults, at: Path = ()) -> None:
        """Note a name that no address can hold, and more used up than there were."""
        if self.lot in (".", ".."):
            faults.add(
                (*at, "lot"),
                "lot-is-a-path",
                say("problem", "lot.name-is-a-path", lot=self.lot),
            )
        if self.gone > self.counted:
            faults.add(
                (*at, "used_up"),
                "more-than-there-were",
                say("problem", "lot.more-used-than-came", used_up=self.gone, there=self.counted),
            )


def planned_alike(one: LengthOnHand, other: LengthOnHand) -> bool:
    """Whether sticks are planned from both the same."""
    return (one.lot, one.profile, one.available, fields_of(OnHand, one)) == (
        other.lot,
        other.profile,
        other.available,
        fields_of(OnHand, other),
    )


def free_name(wanted: str, taken: Iterable[str]) -> str:
    """A name for a lot, with a number behind it where another has it."""
    there = set(taken)
    return next(name for name in _names(wanted) if name not in there)


def _names(wanted: str) -> Iterator[str]:
    yield wanted
    for number in count(2):
        yield f"{wanted} {number}"


def named_lots(lengths: Iterable[LengthOnHand], taken: Iterable[str] = ()) -> tuple[LengthOnHand, ...]:
    """Lots, those without a name given one."""
    lots = list(lengths)
    there = {*taken, *(one.lot for one in lots if one.lot is not None)}
    found = []
    for one in lots:
        name = one.lot
        if name is None:
            name = free_name("length" if one.stick is None else f"{one.stick} offcut", there)
            there.add(name)
        found.append(one.called(name))
    return tuple(found)


def profiles_of(house: AnyHouse) -> tuple[str, ...]:
    """Every profile that the stock or a trim spec of a house names."""
    found = dict.fromkeys(one.profile for one in house.stock)
    for trim in house.trim_specs.values():
        found |= dict.fromkeys(_profiles(trim))
    return tuple(found)


def _profiles(value: object) -> Iterator[str]:
    if not isinstance(value, msgspec.Struct):
        return
    for name in value.__struct_fields__:
        inner = getattr(value, name)
        if name == "profile":
            yield inner
        else:
            yield from _profiles(inner)


def report_lots(
    house: AnyHouse,
    lots: Sequence[tuple[Path, LengthOnHand]],
    others: Sequence[LengthOnHand],
    faults: Faults,
) -> None:
    """Note lots that cannot be: of no profile of the house, or longer than any stick they can be of.

    Args:
        house: What is said of it as a whole.
        lots: Each with where it was sent.
        others: What else there is on hand; of it comes what was bought.
        faults: Where faults are noted.
    """
    known = profiles_of(house)
    there = [*others, *(one for _, one in lots)]
    for at, one in lots:
        one.report(faults, at)
        if one.profile not in known:
            detail = _unknown_profile(one.profile, known) + nearest(one.profile, known)
            faults.add((*at, "profile"), "unknown-profile", detail)
        elif not one.bought:
            _report_length(house, one, there, faults, at)


def _unknown_profile(profile: str, known: Collection[str]) -> Sentence:
    if not known:
        return say("problem", "lot.no-profiles", profile=profile)
    names = ", ".join(map(repr, known))[:200]
    return say("problem", "lot.unknown-profile", profile=profile, names=names)


def _report_length(
    house: AnyHouse, one: LengthOnHand, there: Sequence[LengthOnHand], faults: Faults, at: Path
) -> None:
    sold = [stick.length for stock in house.stock if stock.profile == one.profile for stick in stock.sticks]
    bought = [other.length for other in there if other.bought and other.profile == one.profile]
    longest: Fraction | None = max((*sold, *bought), default=None)
    if longest is not None and one.length > longest:
        faults.add(
            (*at, "length"),
            "longer-than-any",
            say("problem", "lot.longer-than-any", profile=one.profile, longest=longest),
        )


def report_too_many(lots: Sequence[LengthOnHand], faults: Faults, at: Path = ()) -> None:
    """Note more lots, or lengths in them, than are planned with or kept."""
    if len(lots) > MOST_LOTS:
        faults.add(at, "too-many", say("problem", "lot.too-many", most=MOST_LOTS))
    left = [one for one in lots if one.available]
    for profile, number in Counter(one.profile for one in left).items():
        if number > MOST_LENGTHS:
            faults.add(
                at,
                "too-many-lengths",
                say("problem", "lot.too-many-of-profile", most=MOST_LENGTHS, profile=profile),
            )
    if sum(one.available for one in left) > MOST_LENGTHS_ON_HAND:
        faults.add(
            at,
            "too-many-lengths",
            say("problem", "lot.too-many-lengths-on-hand", most=MOST_LENGTHS_ON_HAND),
        )


def report_names(lots: Sequence[tuple[Path, LengthOnHand]], faults: Faults) -> None:
    """Note lots called alike."""
    seen: set[str] = set()
    for at, one in lots:
        if one.lot is not None and one.lot in seen:
            faults.add((*at, "lot"), "duplicate-lot", lot_called(one.lot))
        elif one.lot is not None:
            seen.add(one.lot)


def lot_called(lot: str) -> Sentence:
    """What is said of a lot's name that another has."""
    return say("problem", "lot.called", lot=lot)
