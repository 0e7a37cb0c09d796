"""A schedule as it stands: everything that a computed answer needs, out of its rows, and what is left to cut of it."""

from __future__ import annotations

from collections.abc import Iterable
from typing import NamedTuple

import msgspec

from longpoint.schedules.basics import digest_of
from longpoint.schedules.kept import KeptPiece, read_house, read_length, read_opening, read_piece
from longpoint.schedules.rows import LengthRow, OpeningRow, PieceRow, ScheduleRow
from longpoint.schedules.states import PieceState
from longpoint.shop.build import BuiltOpening, build_openings
from longpoint.shop.named_sticks import Sited
from longpoint.shop.piece_numbers import Numbers, numbered
from longpoint.shop.remaining import CutPiece, Remaining, Slot, remaining

_ID_LENGTH = 26


def group_id(mark: str) -> str:
    """What the pieces that a group shares are kept under, where others are kept under their opening's id."""
    return "g" + digest_of("group", mark)[: _ID_LENGTH - 1]


class StoredHouse(msgspec.Struct, frozen=True):
    """A schedule as it was at one moment.

    Attributes:
        schedule: Its row; the row's digest stands for all that is here.
        sited: The house, what is left on hand as lengths on hand, and what its openings and they are kept under.
        pieces: The rows of the pieces that were cut, by id.
        numbers: The numbers that were given to pieces.
        lots: The rows of the lengths on hand, those used up too.
    """

    schedule: ScheduleRow
    sited: Sited
    pieces: dict[str, PieceRow]
    numbers: Numbers
    lots: tuple[LengthRow, ...]


class HouseRows(NamedTuple):
    """The rows of a schedule, read in one transaction."""

    schedule: ScheduleRow
    openings: list[OpeningRow]
    pieces: list[PieceRow]
    lots: list[LengthRow]
    numbers: Numbers

    def house(self) -> StoredHouse:
        """What they say."""
        named: dict[str, list[str]] = {}
        left = [row for row in self.lots if row.available]
        for row in left:
            named.setdefault(row.profile, []).append(row.lot)
        kept = read_house(self.schedule.document)
        sited = Sited(
            house=kept.whole(
                [read_opening(row.document, kept.unit) for row in self.openings],
                [read_length(row.document, kept.unit) for row in left],
            ),
            ids=(
                *(row.id for row in self.openings),
                *(group_id(group.mark) for group in kept.groups if group.shares),
            ),
            lots={profile: tuple(names) for profile, names in named.items()},
        )
        pieces = {row.id: row for row in self.pieces}
        return StoredHouse(self.schedule, sited, pieces, self.numbers, tuple(self.lots))


class Left(msgspec.Struct, frozen=True):
    """What is left to do of a house.

    Attributes:
        openings: All of it, worked out.
        remaining: What is right, what is wrong and what is left to cut.
        cut: Names of the sticks that were cut as they were planned.
        slots: The places of the pieces that are left to cut.
    """

    openings: tuple[BuiltOpening, ...]
    remaining: Remaining
    cut: frozenset[str]
    slots: frozenset[Slot]


def find_left(stored: StoredHouse) -> Left:
    """What is left to do.

    Raises:
        Refusal: when an opening cannot be built; paths are into the house.
    """
    house = stored.sited.house
    ids = stored.sited.ids
    openings = tuple(
        numbered(one, stored.numbers.get(id, {})) for one, id in zip(build_openings(house), ids, strict=True)
    )
    there: list[CutPiece] = []
    spoiled: list[Slot] = []
    cut: set[str] = set()
    for id, row in stored.pieces.items():
        piece = read_piece(row.document)
        if piece.stick is not None:
            cut.add(piece.stick)
        if piece.state is PieceState.SPOILED:
            spoiled.append((piece.opening_id, piece.piece, piece.instance))
        else:
            there.append(cut_piece(id, piece))
    rest = remaining(openings, ids, house.rounding, there, spoiled)
    slots = ((ids[key.opening], key.piece, one) for key, instances in rest.left.items() for one in instances)
    return Left(openings, rest, frozenset(cut), frozenset(slots))


def cut_sticks_of(pieces: Iterable[PieceRow]) -> frozenset[str]:
    """The names of the sticks that pieces were cut from as they were planned."""
    named = (_read_stick_of(row.document).stick for row in pieces)
    return frozenset(name for name in named if name is not None)


class _OfStick(msgspec.Struct):
    stick: str | None = None


_read_stick_of = msgspec.json.Decoder(_OfStick).decode


def cut_piece(id: str, piece: KeptPiece) -> CutPiece:
    """A kept piece, as the shop reckons with it. A spare has no place, so it stands at instance 0 of its piece."""
    instance = 0 if piece.state is PieceState.SPARE else piece.instance
    return CutPiece(id, (piece.opening_id, piece.piece, instance), piece.shape, piece.rounding)
