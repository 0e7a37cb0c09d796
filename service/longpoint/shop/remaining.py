"""What is left to cut of a house when pieces have been cut already, some of them to readings that no longer hold."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence

from longpoint.geometry import Piece, PieceKey
from longpoint.lengths import Rounding
from longpoint.shop.build import BuiltOpening, HouseKey, every_instance
from longpoint.shop.recut import can_be_recut
from longpoint.shop.shape import PieceShape, alike, shape_of
from longpoint.values import Value

Slot = tuple[str, PieceKey, int]
"""A piece's place: its opening's id, its key there, and which of several alike."""


class CutPiece(Value, frozen=True):
    """A piece that lies in the shop or hangs on the wall.

    Attributes:
        slot: which piece it was cut for: the opening's id, the piece's key, which of several alike.
        rounding: how its lengths were rounded.
    """

    id: str
    slot: Slot
    shape: PieceShape
    rounding: Rounding


class Need(Value, frozen=True):
    """One piece the house needs. Attributes: its slot, the opening's index, the piece, its shape as now needed."""

    slot: Slot
    index: int
    piece: Piece
    shape: PieceShape


class Wrong(Value, frozen=True):
    """A piece that is not what the house needs any more.

    Attributes:
        piece: as it was cut.
        need: what its place needs now; None when that place is gone.
        recut: what it can be cut again into; None when it is too short for anything needed.
    """

    piece: CutPiece
    need: Need | None
    recut: Need | None


class Remaining(Value, frozen=True):
    """What is left to do.

    Attributes:
        right: pieces that are what they should be.
        wrong: those that are not.
        left: for each piece of the plans, by its key, which of those alike must be cut from stock.
        again: needs to cut from stock whose place had a piece already, spoiled or wrong.
    """

    right: tuple[CutPiece, ...]
    wrong: tuple[Wrong, ...]
    left: Mapping[HouseKey, tuple[int, ...]]
    again: tuple[Need, ...]


def remaining(
    openings: Sequence[BuiltOpening],
    ids: Sequence[str],
    rounding: Rounding,
    pieces: Iterable[CutPiece],
    spoiled: Iterable[Slot] = (),
) -> Remaining:
    """What is left to cut.

    Args:
        openings: The house as it is now.
        ids: Each opening's id.
        rounding: How lengths are rounded now.
        pieces: What was cut and is not spoiled, at most one for each slot.
        spoiled: Slots whose piece was spoiled.
    """
    pieces, spoiled = list(pieces), set(spoiled)
    if not pieces and not spoiled:
        # Nothing was begun, as for most houses when they are planned: no shape need be known.
        return Remaining((), (), every_instance(openings), ())
    needs = {need.slot: need for need in _needs(openings, ids, rounding)}
    right, misfits = [], []
    met: set[Slot] = set()
    for piece in pieces:
        need = needs.get(piece.slot)
        if need is not None and alike(shape_of(need.piece, piece.rounding), piece.shape):
            right.append(piece)
            met.add(piece.slot)
        else:
            misfits.append(piece)
    taken = _recut([need for slot, need in needs.items() if slot not in met], misfits)
    wrong = tuple(Wrong(piece, needs.get(piece.slot), taken.get(piece.id)) for piece in misfits)
    met |= {need.slot for need in taken.values()}
    had = {piece.slot for piece in misfits} | spoiled
    return Remaining(
        tuple(right),
        wrong,
        _left(needs.values(), met),
        tuple(need for slot, need in needs.items() if slot in had and slot not in met),
    )


def _needs(openings: Sequence[BuiltOpening], ids: Sequence[str], rounding: Rounding) -> Iterable[Need]:
    for index, (one, id) in enumerate(zip(openings, ids, strict=True)):
        for piece in one.built.pieces:
            shape = shape_of(piece, rounding)
            for instance in range(1, one.count + 1):
                yield Need((id, piece.key, instance), index, piece, shape)


def _recut(needs: list[Need], pieces: list[CutPiece]) -> dict[str, Need]:
    """Which piece is cut again into what: the longest needs first, each from the shortest piece that does."""
    taken: dict[str, Need] = {}
    spare = sorted(pieces, key=lambda piece: piece.shape.length)
    for need in sorted(needs, key=lambda need: -need.shape.length):
        found = next((piece for piece in spare if can_be_recut(piece.shape, need.shape)), None)
        if found is not None:
            spare.remove(found)
            taken[found.id] = need
    return taken


def _left(needs: Iterable[Need], met: set[Slot]) -> dict[HouseKey, tuple[int, ...]]:
    left: dict[HouseKey, list[int]] = {}
    for need in needs:
        instances = left.setdefault(HouseKey(need.index, need.piece.key), [])
        if need.slot not in met:
            instances.append(need.slot[2])
    return {key: tuple(instances) for key, instances in left.items()}
