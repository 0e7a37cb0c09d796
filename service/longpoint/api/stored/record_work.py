"""What was done at the saw, checked against the house as it stands and turned into changes for the history."""

from __future__ import annotations

import msgspec

from longpoint.api.stored.built import built_with_group
from longpoint.api.stored.changing import HeldSchedule
from longpoint.api.stored.groups import group_of, members, sharing
from longpoint.geometry import Piece, PieceKey
from longpoint.schedules import items, plans
from longpoint.schedules.as_printed import PieceThen
from longpoint.schedules.basics import new_id
from longpoint.schedules.house_rows import group_id
from longpoint.schedules.kept import KeptPiece, RecordedPiece, piece_change, read_opening, read_piece
from longpoint.schedules.sent import PieceDone
from longpoint.schedules.states import Done, PieceState
from longpoint.schedules.values import Change, ItemKind
from longpoint.shop.build import BuiltOpening
from longpoint.shop.named_sticks import StickPiece
from longpoint.shop.piece_numbers import Numbers, numbered, printed
from longpoint.shop.recut import can_be_recut
from longpoint.shop.remaining import Slot
from longpoint.shop.shape import PieceShape, alike, shape_of
from longpoint.texts import say
from longpoint.values import Faults, Path, fields_of, nearest


class FoundPiece(msgspec.Struct, frozen=True):
    """What has pieces: an opening, or a group for those that its openings share.

    Attributes:
        id: What its pieces are kept under.
        mark: Its own.
        count: How many are alike.
        pieces: By key.
        numbers: By the number that sheets have.
    """

    id: str
    mark: str
    count: int
    pieces: dict[PieceKey, Piece]
    numbers: dict[int, Piece]


class Recorder:
    """Records pieces of one schedule, gathering every fault on the way.

    Args:
        held: The schedule.
        faults: Where faults are noted.

    Attributes:
        changed: What pieces become, by id; None for one that is gone.
        unchanged: Ids of pieces that stand as they were recorded before.
        new: Whether there are pieces that were not there before.
    """

    def __init__(self, held: HeldSchedule, faults: Faults) -> None:
        self._held = held
        self._connection = held.connection
        self._schedule = held.schedule
        self._house = held.house
        self._rounding = held.house.rounding
        self._faults = faults
        self._openings: dict[str, FoundPiece | None] = {}
        self._pieces: dict[str, dict[str, KeptPiece]] = {}
        self._numbers: Numbers | None = None
        self._seen: set[Slot] = set()
        self.changed: dict[str, KeptPiece | None] = {}
        self.unchanged: list[str] = []
        self.new = False

    @property
    def changes(self) -> list[Change]:
        """What all of it changes."""
        return [
            Change(ItemKind.PIECE, id, None) if document is None else piece_change(id, document)
            for id, document in self.changed.items()
        ]

    async def record(self, sent: PieceDone, at: Path, stick: str | None = None) -> None:
        """Record what was done with one piece, cut from a stick as planned or otherwise."""
        named = await self._named(sent, at)
        if named is None:
            return
        found, piece, instance = named
        if instance > found.count:
            detail = say("problem", "work.too-many", mark=found.mark, count=found.count)
            self._faults.add((*at, "instance"), "too-many", detail)
            return
        slot = (found.id, piece.key, instance)
        sent = msgspec.structs.replace(sent, piece=piece.key, instance=instance)
        if slot in self._seen:
            self._faults.add(at, "given-twice", say("problem", "work.piece-twice"))
            return
        self._seen.add(slot)
        await self._write(sent, slot, found.mark, piece, at, stick)

    async def record_then(self, piece: StickPiece, was: PieceThen, stick: str) -> None:
        """Record a piece that was cut as it was printed; where its place has one already it is a spare."""
        there = await self._there(piece.slot, Done.CUT)
        taken = there is not None or piece.slot in self._seen
        self._seen.add(piece.slot)
        self.new = True
        self._put(
            new_id(),
            KeptPiece(
                piece=piece.piece,
                instance=piece.instance,
                state=PieceState.SPARE if taken else PieceState.CUT,
                opening_id=piece.opening_id,
                opening=was.mark,
                stick=stick,
                rounding=was.rounding,
                shape=was.shape,
            ),
        )

    async def _named(self, sent: PieceDone, at: Path) -> tuple[FoundPiece, Piece, int] | None:
        """The piece that is meant, by its key or by its number on sheets; None when there is none such."""
        by_number = printed(str(sent.piece))
        name = sent.opening or (by_number.mark if by_number else None)
        if name is None:
            detail = say("problem", "work.say-whose")
            self._faults.add((*at, "opening"), "unknown-opening", detail)
            return None
        found = await self._opening(name)
        if found is None:
            detail = say("problem", "work.unknown-opening", name=name)
            self._faults.add((*at, "opening"), "unknown-opening", detail)
            return None
        piece, instance = found.pieces.get(sent.piece), sent.instance
        if piece is None and by_number is not None and by_number.mark == found.mark:
            piece, instance = found.numbers.get(by_number.number), by_number.instance or sent.instance
        if piece is None:
            has = tuple(f"{found.mark}-{number} {one.key}" for number, one in found.numbers.items())
            detail = say("problem", "work.unknown-piece", mark=found.mark, piece=str(sent.piece), has=has)
            self._faults.add((*at, "piece"), "unknown-piece", detail + nearest(sent.piece, found.pieces))
            return None
        return found, piece, instance

    async def _write(
        self, sent: PieceDone, slot: Slot, mark: str, piece: Piece, at: Path, stick: str | None
    ) -> None:
        there = await self._there(slot, sent.state)
        shape = shape_of(piece, self._rounding)
        said = fields_of(RecordedPiece, sent) | {"state": PieceState(sent.state)}
        if sent.recut_from is not None and not await self._take(sent, shape, at):
            return
        if there is not None and there[0] != sent.recut_from:
            id, document = there
            right = alike(shape_of(piece, document.rounding), document.shape)
            if sent.state is not Done.CUT or right:
                self._say_again(id, document, msgspec.structs.replace(document, **said))
                return
            self._put(id, msgspec.structs.replace(document, state=PieceState.SPARE))
        kept = KeptPiece(
            **said, opening_id=slot[0], opening=mark, stick=stick, rounding=self._rounding, shape=shape
        )
        self.new = True
        self._put(new_id(), kept)

    def _say_again(self, id: str, was: KeptPiece, now: KeptPiece) -> None:
        """A fact that was recorded before changes nothing; a piece on the wall was cut, whoever says so again."""
        if now.state is PieceState.CUT and was.state is PieceState.INSTALLED:
            now = msgspec.structs.replace(now, state=was.state)
        if now == was:
            self.unchanged.append(id)
        else:
            self._put(id, now)

    async def _take(self, sent: PieceDone, shape: PieceShape, at: Path) -> bool:
        """Take the piece that was cut again out of the shop; False when it cannot have been."""
        row = await items.find_piece(self._connection, self._schedule.id, sent.recut_from or "")
        if row is None or row.id in self.changed or row.state == PieceState.SPOILED:
            detail = say("problem", "work.nothing-to-cut-again")
            self._faults.add((*at, "recut_from"), "unknown-piece", detail)
            return False
        if not can_be_recut(read_piece(row.document).shape, shape):
            detail = say("problem", "work.cannot-be-cut-again")
            self._faults.add((*at, "recut_from"), "cannot-be-recut", detail)
            return False
        self._put(row.id, None)
        return True

    def _put(self, id: str, document: KeptPiece | None) -> None:
        self.changed[id] = document

    async def _there(self, slot: Slot, state: Done) -> tuple[str, KeptPiece] | None:
        """The piece in a place; where it was spoiled and nothing was cut since, that one is spoiled again."""
        id, piece, instance = slot
        if id not in self._pieces:
            rows = await items.list_pieces(self._connection, self._schedule.id, opening_id=id)
            self._pieces[id] = {row.id: read_piece(row.document) for row in rows}
        own = [
            (piece_id, one)
            for piece_id, one in self._pieces[id].items()
            if (one.piece, one.instance) == (piece, instance)
        ]
        live = next((pair for pair in own if pair[1].state in (PieceState.CUT, PieceState.INSTALLED)), None)
        if live is None and state is Done.SPOILED:
            return next((pair for pair in reversed(own) if pair[1].state is PieceState.SPOILED), None)
        return live

    async def _opening(self, name: str) -> FoundPiece | None:
        if name not in self._openings:
            self._openings[name] = await self._find(name)
        return self._openings[name]

    async def _find(self, name: str) -> FoundPiece | None:
        house = self._house
        row = await items.find_opening(self._connection, self._schedule.id, name)
        if row is None:
            own = sharing(house, name)
            if own is None:
                return None
            built = built_with_group(house, await members(self._connection, self._schedule, [own]), own)[-1]
            return await self._found(group_id(own.mark), built)
        sent = read_opening(row.document, house.unit)
        group, others = await group_of(self._connection, self._schedule, house, row.mark)
        if group is None or not group.shares:
            group, others = None, []
        return await self._found(row.id, built_with_group(house, [sent, *others], group)[0])

    async def _found(self, id: str, built: BuiltOpening) -> FoundPiece:
        if self._numbers is None:
            self._numbers = await plans.piece_numbers(self._connection, self._schedule.id)
        own = numbered(built, self._numbers.get(id, {})).built
        by_key = {piece.key: piece for piece in own.pieces}
        return FoundPiece(id, own.opening.mark, built.count, by_key, dict(own.numbered))
