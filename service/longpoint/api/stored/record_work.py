"""What was done at the saw, checked against the house as it stands and turned into changes for the history."""

from __future__ import annotations

from typing import Any

import msgspec
from sqlalchemy.ext.asyncio import AsyncConnection

from longpoint.api.http.faults import Faults, Path
from longpoint.api.stored.built import built_with_group
from longpoint.api.stored.groups import group_id, group_of, members, shares, sharing
from longpoint.api.stored.house import read_house_document, read_opening_document
from longpoint.api.stored.piece_documents import (
    PieceDocument,
    cut_piece,
    is_live,
    piece_change,
    piece_document,
    read_piece_document,
)
from longpoint.api.wire.schedule_work import Done, PieceIn, PieceState
from longpoint.geometry import Part
from longpoint.lengths import Rounding
from longpoint.schedules import items
from longpoint.schedules.basics import new_id
from longpoint.schedules.values import Change, Kind
from longpoint.shop.house import BuiltOpening
from longpoint.shop.recut import can_be_recut
from longpoint.shop.shape import alike, shape_of

Slot = tuple[str, str, int]


class Found(msgspec.Struct, frozen=True):
    """What has pieces: an opening, or a group for those that its openings share.

    Attributes:
        id: What its pieces are kept under.
        mark: Its own.
        count: How many are alike.
        parts: By key.
    """

    id: str
    mark: str
    count: int
    parts: dict[str, Part]


class Recorder:
    """Records pieces of one schedule, gathering every fault on the way.

    Args:
        connection: A writing transaction that holds the schedule.
        schedule: The schedule's row.
        faults: Where faults are noted.
    """

    def __init__(self, connection: AsyncConnection, schedule: Any, faults: Faults) -> None:
        self._connection = connection
        self._schedule = schedule
        self._house = read_house_document(schedule.document)
        self._rounding: Rounding = self._house.rounding.value()
        self._faults = faults
        self._openings: dict[str, Found | None] = {}
        self._pieces: dict[str, dict[str, PieceDocument]] = {}
        self._seen: set[Slot] = set()
        self.changed: dict[str, PieceDocument | None] = {}

    @property
    def changes(self) -> list[Change]:
        """What all of it changes."""
        return [
            Change(Kind.PIECE, id, None) if document is None else piece_change(id, document)
            for id, document in self.changed.items()
        ]

    async def record(self, sent: PieceIn, at: Path) -> None:
        """Record what was done with one piece."""
        found = await self._opening(sent.opening)
        if found is None:
            detail = f"The schedule has no opening {sent.opening!r}."
            self._faults.add((*at, "opening"), "unknown-opening", detail)
            return
        part = found.parts.get(sent.part)
        if part is None:
            detail = f"Opening {found.mark!r} has no part {sent.part!r}; it has {', '.join(found.parts)}."
            self._faults.add((*at, "part"), "unknown-part", detail)
            return
        if sent.instance > found.count:
            detail = f"Opening {found.mark!r} is there {found.count} times only."
            self._faults.add((*at, "instance"), "too-many", detail)
            return
        slot = (found.id, sent.part, sent.instance)
        if slot in self._seen:
            self._faults.add(
                at, "given-twice", "This piece is in the list already: say once what was done with it."
            )
            return
        self._seen.add(slot)
        await self._write(sent, slot, found.mark, part, at)

    async def _write(self, sent: PieceIn, slot: Slot, mark: str, part: Part, at: Path) -> None:
        there = await self._live(slot)
        shape = shape_of(part, self._rounding)
        if sent.recut_from is not None and not await self._take(sent, shape, at):
            return
        if there is not None and there[0] != sent.recut_from:
            id, document = there
            right = alike(shape_of(part, cut_piece(id, document).rounding), cut_piece(id, document).shape)
            if sent.state is not Done.CUT:
                self._put(id, msgspec.structs.replace(document, state=PieceState(sent.state), note=sent.note))
                return
            if right:
                detail = (
                    "This piece is cut already; say that it was spoiled, if it was, before it is cut again."
                )
                self._faults.add(at, "already-cut", detail)
                return
            self._put(id, msgspec.structs.replace(document, state=PieceState.SPARE))
        state = PieceState(sent.state)
        self._put(new_id(), piece_document(slot, mark, state, sent.note, shape, self._rounding))

    async def _take(self, sent: PieceIn, shape: Any, at: Path) -> bool:
        """Take the piece that was cut again out of the shop; False when it cannot have been."""
        row = await items.find_piece(self._connection, self._schedule.id, sent.recut_from or "")
        if row is None or row.id in self.changed or row.state == PieceState.SPOILED:
            detail = "The schedule has no such piece to cut again."
            self._faults.add((*at, "recut_from"), "unknown-piece", detail)
            return False
        if not can_be_recut(cut_piece(row.id, read_piece_document(row.document)).shape, shape):
            detail = "That piece cannot be cut again into this one: its stock, length, width or ends do not allow it."
            self._faults.add((*at, "recut_from"), "cannot-be-recut", detail)
            return False
        self._put(row.id, None)
        return True

    def _put(self, id: str, document: PieceDocument | None) -> None:
        self.changed[id] = document

    async def _live(self, slot: Slot) -> tuple[str, PieceDocument] | None:
        """The piece in a place, cut or fitted."""
        id, part, instance = slot
        if id not in self._pieces:
            rows = await items.list_pieces(self._connection, self._schedule.id, opening_id=id)
            self._pieces[id] = {row.id: read_piece_document(row.document) for row in rows if is_live(row)}
        return next(
            (
                (piece_id, one)
                for piece_id, one in self._pieces[id].items()
                if (one.part, one.instance) == (part, instance)
            ),
            None,
        )

    async def _opening(self, name: str) -> Found | None:
        if name not in self._openings:
            self._openings[name] = await self._find(name)
        return self._openings[name]

    async def _find(self, name: str) -> Found | None:
        house = self._house
        row = await items.find_opening(self._connection, self._schedule.id, name)
        if row is None:
            own = sharing(house, name)
            if own is None:
                return None
            built = built_with_group(house, await members(self._connection, self._schedule, [own]), own)[-1]
            return _found(group_id(own.mark), built)
        sent = read_opening_document(row.document)
        group, others = await group_of(self._connection, self._schedule, house, row.mark)
        if group is None or not shares(group):
            group, others = None, []
        return _found(row.id, built_with_group(house, [sent, *others], group)[0])


def _found(id: str, built: BuiltOpening) -> Found:
    parts = {part.key: part for part in built.built.parts}
    return Found(id, built.built.opening.mark, built.count, parts)
