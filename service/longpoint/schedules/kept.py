"""What is kept of a house: what was said of it, the lengths on its rack, the pieces that were cut."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Sequence
from typing import Annotated, ClassVar

import msgspec
from msgspec import Meta

from longpoint.geometry import PieceKey
from longpoint.lengths import EXACT, Rounding, Unit, exact_lengths, length_writer
from longpoint.schedules.states import PieceState
from longpoint.schedules.values import Change, Kind
from longpoint.shop.house import AnyHouse, House, HouseGroup, HouseOpening, tell_of_house
from longpoint.shop.shape import PieceShape
from longpoint.shop.yard import OnHand, Remnant, Stock
from longpoint.values import Faults, Given, Name, Path, Text, Value, decoder, encoder, fields_of

MOST_OPENINGS = 5000
MOST_OFFCUTS = 200
_encode = encoder(length_writer(Rounding())).encode
_encode_exact = encoder(EXACT).encode


class RackLength(OnHand, frozen=True, kw_only=True):
    """A length of stock on the rack.

    Attributes:
        profile: The profile's name, as the trim specs have it.
        note: Where it came from, or stands.
    """

    unit_is_stored: ClassVar[bool] = True

    profile: Name
    note: Text = ""

    @property
    def remnant(self) -> Remnant:
        """It as a cut list takes it."""
        return Remnant(**fields_of(OnHand, self))


class KeptHouse(AnyHouse, frozen=True, kw_only=True):
    """What is said of a house as a whole.

    Attributes:
        name: What the house is called.
        site_note: Anything about the site.
    """

    # Told with what is kept of the house already.
    unit_is_stored: ClassVar[bool] = True

    name: Name
    site_note: Text = ""

    def whole(
        self,
        openings: Sequence[HouseOpening] = (),
        rack: Iterable[RackLength] = (),
        groups: Sequence[HouseGroup] | None = None,
    ) -> House:
        """The house with some of its openings, what is on its rack, and those of its groups that are all there."""
        said = fields_of(AnyHouse, self)
        said |= {"stock": self._stock(rack), "openings": tuple(openings)}
        if groups is not None:
            said["groups"] = tuple(groups)
        return House(**said)

    def _stock(self, rack: Iterable[RackLength]) -> tuple[Stock, ...]:
        remnants: dict[str, list[Remnant]] = {}
        for one in rack:
            remnants.setdefault(one.profile, []).append(one.remnant)
        sold = [
            Stock(**msgspec.structs.asdict(one), remnants=tuple(remnants.pop(one.profile, ())))
            for one in self.stock
        ]
        # A profile the yard does not sell can still be cut from the rack.
        only = [Stock(profile=name, sticks=(), remnants=tuple(left)) for name, left in remnants.items()]
        return (*sold, *only)

    def tell(self, faults: Faults, at: Path = ()) -> None:
        """Note what cannot be, the openings apart."""
        tell_of_house(self.whole(groups=()), faults, at)


class NewSchedule(KeptHouse, frozen=True, kw_only=True):
    """A house's schedule, with its openings and its rack where they are known already; an export looks the same.

    Attributes:
        openings: In the order they are to be listed.
        rack: Lengths on hand.
    """

    unit_is_stored: ClassVar[bool] = False

    openings: Annotated[tuple[HouseOpening, ...], Meta(max_length=MOST_OPENINGS)] = ()
    rack: Annotated[tuple[RackLength, ...], Meta(max_length=2000)] = ()

    def tell(self, faults: Faults, at: Path = ()) -> None:
        """Note what cannot be."""
        tell_of_house(self.whole(self.openings), faults, at)
        for profile, count in Counter(one.profile for one in self.rack).items():
            if count > MOST_OFFCUTS:
                faults.add((*at, "rack"), "rack-full", rack_full(profile, MOST_OFFCUTS))

    @property
    def head(self) -> KeptHouse:
        """What is said of the house as a whole."""
        return KeptHouse(**fields_of(KeptHouse, self))

    @classmethod
    def of(
        cls, house: KeptHouse, openings: Sequence[HouseOpening], rack: Sequence[RackLength]
    ) -> NewSchedule:
        """A schedule that is there, as one that starts another just like it."""
        return cls(**fields_of(KeptHouse, house), openings=tuple(openings), rack=tuple(rack))


def rack_full(profile: str, most: int) -> str:
    """What is told of a rack with more lengths of a profile than a cut list takes."""
    return f"The rack holds at most {most} lengths of {profile!r}: take some off first."


class RecordedPiece(Value, frozen=True, kw_only=True):
    """What is said of a piece when work is recorded, and kept and answered as it was said.

    Attributes:
        part: Which part of it, by its `key` in the cut list.
        instance: Which of several alike, counted from 1.
        note: Anything worth knowing.
    """

    part: PieceKey
    instance: Annotated[int, Meta(ge=1, le=500)] = 1
    note: Text = ""


class PlacedPiece(RecordedPiece, frozen=True, kw_only=True):
    """The same of a piece whose place was found.

    Attributes:
        opening_id: What it was cut for: an opening, or a group for what its openings share.
        opening: The mark of that opening or group when it was cut.
        state: What became of it.
    """

    opening_id: str
    opening: str
    state: PieceState


class KeptPiece(PlacedPiece, frozen=True, kw_only=True):
    """One piece as it was cut.

    Attributes:
        rounding: by which it was marked.
        shape: as it lay on the saw.
    """

    rounding: Rounding
    shape: PieceShape


def read_house(document: str) -> KeptHouse:
    """What was said of a house as a whole, out of its document."""
    head = decoder(_Says).decode(document)
    house: KeptHouse = decoder(KeptHouse, head.unit).decode(document)
    return house


class _Says(msgspec.Struct):
    unit: Unit | None = None


def read_opening(document: str, unit: Unit | None) -> HouseOpening:
    """An opening out of its document, under its house's unit."""
    opening: HouseOpening = decoder(HouseOpening, unit).decode(document)
    return opening


def read_length(document: str, unit: Unit | None) -> RackLength:
    """A length on the rack out of its document, under its house's unit."""
    length: RackLength = decoder(RackLength, unit).decode(document)
    return length


def read_piece(document: str) -> KeptPiece:
    """A piece that was cut, out of its document."""
    piece: KeptPiece = decoder(KeptPiece).decode(document)
    return piece


def exact_json(value: Given) -> str:
    """The exact lengths in something that is kept, as they are kept beside it."""
    return _encode(exact_lengths(value)).decode()


def house_change(id: str, house: KeptHouse) -> Change:
    """What is said of a house as a whole, as a change for the history."""
    return Change(Kind.SCHEDULE, id, _encode(house).decode(), exact_json(house))


def opening_change(id: str, position: int, opening: HouseOpening) -> Change:
    """An opening at its place."""
    return Change(Kind.OPENING, id, _encode(opening).decode(), exact_json(opening), position)


def length_change(id: str, length: RackLength) -> Change:
    """A length on the rack."""
    return Change(Kind.OFFCUT, id, _encode(length).decode(), exact_json(length))


def piece_change(id: str, piece: KeptPiece) -> Change:
    """A piece that was cut."""
    return Change(Kind.PIECE, id, _encode_exact(piece).decode())
