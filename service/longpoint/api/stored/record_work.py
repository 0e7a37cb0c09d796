"""What was done at the saw, checked against the house as it stands and turned into changes for the history."""

from __future__ import annotations

import msgspec

from longpoint.api.stored.built import built_with_group
from longpoint.api.stored.changing import Held
from longpoint.api.stored.groups import group_id, group_of, members, sharing
from longpoint.geometry import Part, PieceKey
from longpoint.schedules import items
from longpoint.schedules.basics import new_id
from longpoint.schedules.kept import KeptPiece, RecordedPiece, piece_change, read_opening, read_piece
from longpoint.schedules.rows import PieceRow
from longpoint.schedules.sent import PieceDone
from longpoint.schedules.states import Done, PieceState
from longpoint.schedules.values import Change, Kind
from longpoint.shop.build import BuiltOpening
from longpoint.shop.recut import can_be_recut
from longpoint.shop.remaining import Slot
from longpoint.shop.shape import PieceShape, alike, shape_of
from longpoint.values import Faults, Path, fields_of


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
    parts: dict[PieceKey, Part]


class Recorder:
    """Records pieces of one schedule, gathering every fault on the way.

    Args:
        held: The schedule.
        faults: Where faults are noted.
    """

    def __init__(self, held: Held, faults: Faults) -> None:
        self._held = held
        self._connection = held.connection
        self._schedule = held.schedule
        self._house = held.house
        self._rounding = held.house.rounding
        self._faults = faults
        self._openings: dict[str, Found | None] = {}
        self._pieces: dict[str, dict[str, KeptPiece]] = {}
        self._seen: set[Slot] = set()
        self.changed: dict[str, KeptPiece | None] = {}

    @property
    def changes(self) -> list[Change]:
        """What all of it changes."""
        return [
            Change(Kind.PIECE, id, None) if document is None else piece_change(id, document)
            for id, document in self.changed.items()
        ]

    async def record(self, sent: PieceDone, at: Path) -> None:
        """Record what was done with one piece."""
        found = await self._opening(sent.opening)
        if found is None:
            detail = f"The schedule has no opening {sent.opening!r}."
            self._faults.add((*at, "opening"), "unknown-opening", detail)
            return
        part = found.parts.get(sent.part)
        if part is None:
            detail = f"Opening {found.mark!r} has no part {sent.part!r}; it has {', '.join(map(str, found.parts))}."
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

    async def _write(self, sent: PieceDone, slot: Slot, mark: str, part: Part, at: Path) -> None:
        there = await self._live(slot)
        shape = shape_of(part, self._rounding)
        said = fields_of(RecordedPiece, sent) | {"state": PieceState(sent.state)}
        if sent.recut_from is not None and not await self._take(sent, shape, at):
            return
        if there is not None and there[0] != sent.recut_from:
            id, document = there
            right = alike(shape_of(part, document.rounding), document.shape)
            if sent.state is not Done.CUT:
                self._put(id, msgspec.structs.replace(document, **said))
                return
            if right:
                detail = (
                    "This piece is cut already; say that it was spoiled, if it was, before it is cut again."
                )
                self._faults.add(at, "already-cut", detail)
                return
            self._put(id, msgspec.structs.replace(document, state=PieceState.SPARE))
        kept = KeptPiece(**said, opening_id=slot[0], opening=mark, rounding=self._rounding, shape=shape)
        self._put(new_id(), kept)

    async def _take(self, sent: PieceDone, shape: PieceShape, at: Path) -> bool:
        """Take the piece that was cut again out of the shop; False when it cannot have been."""
        row = await items.find_piece(self._connection, self._schedule.id, sent.recut_from or "")
        if row is None or row.id in self.changed or row.state == PieceState.SPOILED:
            detail = "The schedule has no such piece to cut again."
            self._faults.add((*at, "recut_from"), "unknown-piece", detail)
            return False
        if not can_be_recut(read_piece(row.document).shape, shape):
            detail = "That piece cannot be cut again into this one: its stock, length, width or ends do not allow it."
            self._faults.add((*at, "recut_from"), "cannot-be-recut", detail)
            return False
        self._put(row.id, None)
        return True

    def _put(self, id: str, document: KeptPiece | None) -> None:
        self.changed[id] = document

    async def _live(self, slot: Slot) -> tuple[str, KeptPiece] | None:
        """The piece in a place, cut or fitted."""
        id, part, instance = slot
        if id not in self._pieces:
            rows = await items.list_pieces(self._connection, self._schedule.id, opening_id=id)
            self._pieces[id] = {row.id: read_piece(row.document) for row in rows if _is_live(row)}
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
        sent = read_opening(row.document, house.unit)
        group, others = await group_of(self._connection, self._schedule, house, row.mark)
        if group is None or not group.shares:
            group, others = None, []
        return _found(row.id, built_with_group(house, [sent, *others], group)[0])


def _found(id: str, built: BuiltOpening) -> Found:
    parts = {part.key: part for part in built.built.parts}
    return Found(id, built.built.opening.mark, built.count, parts)


def _is_live(row: PieceRow) -> bool:
    """Whether a piece's row is of a piece that has its place: cut or fitted."""
    return row.state in (PieceState.CUT, PieceState.FITTED)
