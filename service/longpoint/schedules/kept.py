"""What is kept of a house: what was said of it, the lengths on hand, the pieces that were cut."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import Annotated, ClassVar

import msgspec
from msgspec import Meta

from longpoint.geometry import PieceKey
from longpoint.lengths import EXACT, Rounding, Unit, exact_lengths, length_writer
from longpoint.schedules.lots import (
    MOST_LOTS,
    LengthOnHand,
    report_lots,
    report_names,
    report_too_many,
)
from longpoint.schedules.states import PieceState
from longpoint.schedules.values import Change, ItemKind
from longpoint.shop.house import AnyHouse, House, HouseGroup, HouseOpening, report_house
from longpoint.shop.named_sticks import NamedStick, PlannedProfile
from longpoint.shop.shape import PieceShape
from longpoint.shop.yard import LengthsOnHand, Stock
from longpoint.values import Faults, Given, Name, Path, Text, Value, decoder, encoder, fields_of
from longpoint.values.kept import Kept

MOST_OPENINGS = 5000
_encode = encoder(length_writer(Rounding())).encode
_encode_exact = encoder(EXACT).encode
_MOST_READ = 4096
"""Documents that stay read: most of a house is as it was when it was asked about before."""


class KeptHouse(AnyHouse, frozen=True, kw_only=True):
    """A record of what is said of a house as a whole.

    Attributes:
        name: The name of the house.
        site_note: A note about the site.
    """

    # Read with what is kept of the house already.
    unit_is_stored: ClassVar[bool] = True

    name: Name
    site_note: Text = ""

    def whole(
        self,
        openings: Sequence[HouseOpening] = (),
        lengths: Iterable[LengthOnHand] = (),
        groups: Sequence[HouseGroup] | None = None,
    ) -> House:
        """The house with some of its openings, what is left on hand, and those of its groups that are all there."""
        said = fields_of(AnyHouse, self)
        said |= {"stock": self._stock(lengths), "openings": tuple(openings)}
        if groups is not None:
            said["groups"] = tuple(groups)
        return House(**said)

    def _stock(self, lengths: Iterable[LengthOnHand]) -> tuple[Stock, ...]:
        lengths_on_hand: dict[str, list[LengthsOnHand]] = {}
        for one in lengths:
            if one.available:
                lengths_on_hand.setdefault(one.profile, []).append(one.on_hand)
        sold = [
            Stock(**msgspec.structs.asdict(one), lengths_on_hand=tuple(lengths_on_hand.pop(one.profile, ())))
            for one in self.stock
        ]
        # A profile the yard does not sell can still be cut from what is on hand.
        only = [
            Stock(profile=name, sticks=(), lengths_on_hand=tuple(left))
            for name, left in lengths_on_hand.items()
        ]
        return (*sold, *only)

    def report(self, faults: Faults, at: Path = ()) -> None:
        """Note what cannot be, the openings apart."""
        report_house(self.whole(groups=()), faults, at)


class NewSchedule(KeptHouse, frozen=True, kw_only=True):
    """A house's schedule, with its openings and lengths on hand where they are known already; an export looks the same.

    Attributes:
        openings: The openings, in the order in which they are to be listed.
        lengths: The lots that are on hand, or on their way.
    """

    unit_is_stored: ClassVar[bool] = False

    openings: Annotated[tuple[HouseOpening, ...], Meta(max_length=MOST_OPENINGS)] = ()
    lengths: Annotated[tuple[LengthOnHand, ...], Meta(max_length=MOST_LOTS)] = ()

    def report(self, faults: Faults, at: Path = ()) -> None:
        """Note what cannot be."""
        report_house(self.whole(self.openings), faults, at)
        lots = [((*at, "lengths", index), one) for index, one in enumerate(self.lengths)]
        report_lots(self, lots, (), faults)
        report_names(lots, faults)
        report_too_many(self.lengths, faults, (*at, "lengths"))

    @property
    def head(self) -> KeptHouse:
        """What is said of the house as a whole."""
        return KeptHouse(**fields_of(KeptHouse, self))

    @classmethod
    def of(
        cls, house: KeptHouse, openings: Sequence[HouseOpening], lengths: Sequence[LengthOnHand]
    ) -> NewSchedule:
        """A schedule that is there, as one that starts another just like it."""
        return cls(**fields_of(KeptHouse, house), openings=tuple(openings), lengths=tuple(lengths))


class RecordedPiece(Value, frozen=True, kw_only=True):
    """What is said of a piece when work is recorded, and kept and answered as it was said.

    Attributes:
        piece: Which part of it: its `key` in the cut list or, where work is recorded, its number as sheets have it,
            `K1-4` or, of several alike, `L1-4.2`.
        instance: It says which of several alike this is, counted from 1.
        note: A note about the piece.
    """

    piece: PieceKey
    instance: Annotated[int, Meta(ge=1, le=500)] = 1
    note: Text = ""


class MadePiece(RecordedPiece, frozen=True, kw_only=True):
    """The same of a piece that was made, and what became of it.

    Attributes:
        opening_id: What it was cut for: an opening, or a group for what its openings share.
        opening: The mark of that opening or group when it was cut.
        state: It says what became of the piece.
        stick: The name of the stick it was cut from as planned; null where it was cut otherwise.
    """

    opening_id: str
    opening: str
    state: PieceState
    stick: str | None = None


class KeptPiece(MadePiece, frozen=True, kw_only=True):
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


_OPENINGS: Kept[tuple[str, Unit | None], HouseOpening] = Kept(
    _MOST_READ, lambda kept: decoder(HouseOpening, kept[1]).decode(kept[0])
)
_STICKS: Kept[str, NamedStick] = Kept(_MOST_READ, lambda document: decoder(NamedStick).decode(document))


class _Says(msgspec.Struct):
    unit: Unit | None = None


def read_opening(document: str, unit: Unit | None) -> HouseOpening:
    """An opening out of its document, under its house's unit."""
    return _OPENINGS[document, unit]


def read_length(document: str, unit: Unit | None) -> LengthOnHand:
    """A lot of lengths on hand out of its document, under its house's unit."""
    length: LengthOnHand = decoder(LengthOnHand, unit).decode(document)
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
    return Change(ItemKind.SCHEDULE, id, _encode(house).decode(), exact_json(house))


def opening_change(id: str, position: int, opening: HouseOpening) -> Change:
    """An opening at its place."""
    return Change(ItemKind.OPENING, id, _encode(opening).decode(), exact_json(opening), position)


def length_change(id: str, length: LengthOnHand) -> Change:
    """A lot of lengths on hand."""
    return Change(ItemKind.LENGTH, id, _encode(length).decode(), exact_json(length))


def piece_change(id: str, piece: KeptPiece) -> Change:
    """A piece that was cut."""
    return Change(ItemKind.PIECE, id, _encode_exact(piece).decode())


def written(value: NamedStick | tuple[PlannedProfile, ...]) -> str:
    """A stick, or what a plan says of each profile, as it is kept."""
    return _encode_exact(value).decode()


def read_stick(document: str) -> NamedStick:
    """A stick out of its document."""
    return _STICKS[document]


read_names = msgspec.json.Decoder(dict[str, int]).decode
"""Reads the highest number given to a stick, by letter."""


def read_plan(document: str) -> tuple[PlannedProfile, ...]:
    """What a plan says of each profile, out of its document."""
    profiles: tuple[PlannedProfile, ...] = decoder(tuple[PlannedProfile, ...]).decode(document)
    return profiles
