"""Pieces as they were when a sheet was printed: what was cut by it is recorded as it was cut."""

from __future__ import annotations

from collections.abc import Mapping
from typing import NamedTuple

from sqlalchemy.ext.asyncio import AsyncConnection

from longpoint.geometry import PieceKey
from longpoint.lengths import Rounding
from longpoint.schedules import history
from longpoint.schedules.house_rows import group_id
from longpoint.schedules.kept import read_house, read_opening
from longpoint.schedules.rows import VersionRow
from longpoint.schedules.values import ItemKind
from longpoint.shop.build import build_openings
from longpoint.shop.shape import PieceShape, shape_of


class PieceThen(NamedTuple):
    """A piece as it was.

    Attributes:
        mark: Of its opening or group.
        shape: As it was to lie on the saw.
        rounding: By which it was marked.
    """

    mark: str
    shape: PieceShape
    rounding: Rounding


PiecesThen = Mapping[tuple[str, PieceKey], PieceThen]
"""By what a piece is kept under, and which part of it."""


async def house_then(connection: AsyncConnection, schedule_id: str, revision: int) -> list[VersionRow]:
    """What was said of a house, and its openings in their order, at a revision."""
    return await history.state_at(connection, schedule_id, revision, (ItemKind.SCHEDULE, ItemKind.OPENING))


def pieces_then(versions: list[VersionRow]) -> PiecesThen:
    """Every piece of a house as it was; a plan was made of it, so that it can be built."""
    (head,) = (one.stands for one in versions if one.kind == ItemKind.SCHEDULE)
    openings = [one for one in versions if one.kind == ItemKind.OPENING]
    kept = read_house(head)
    house = kept.whole([read_opening(one.stands, kept.unit) for one in openings])
    ids = [one.item_id for one in openings]
    ids += [group_id(group.mark) for group in kept.groups if group.shares]
    return {
        (id, piece.key): PieceThen(one.built.opening.mark, shape_of(piece, kept.rounding), kept.rounding)
        for id, one in zip(ids, build_openings(house), strict=True)
        for piece in one.built.pieces
    }
