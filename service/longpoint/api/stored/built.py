"""Some openings of a kept house worked out, and what the group they form shares."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from longpoint.geometry import Piece, PieceKey, Pieces, build_opening
from longpoint.schedules.kept import KeptHouse
from longpoint.shop.build import BuiltOpening, build_openings
from longpoint.shop.house import HouseGroup, HouseOpening


def built_with_group(
    house: KeptHouse, openings: Sequence[HouseOpening], group: HouseGroup | None
) -> tuple[BuiltOpening, ...]:
    """These openings worked out, then what the group shares.

    Args:
        house: What is said of the house as a whole.
        openings: With a group, all of those it names.
        group: The group they form, if they form one.

    Raises:
        GeometryError: when they cannot be built.
    """
    return build_openings(house.whole(openings, groups=() if group is None else (group,)))


def shared_marks(house: KeptHouse) -> set[str]:
    """The marks of the openings that have no stool of their own."""
    return {mark for group in house.groups if group.shares for mark in group.openings}


def opening_pieces(house: KeptHouse, opening: HouseOpening) -> dict[PieceKey, Piece]:
    """An opening's own pieces, by key."""
    wanted = Pieces.CASING if opening.mark in shared_marks(house) else Pieces.ALL
    built = build_opening(opening.with_trim(house.trim_specs[opening.trim]), wanted, house.rounding)
    return {piece.key: piece for piece in built.pieces}


def shared_pieces(house: KeptHouse, members: Mapping[str, HouseOpening]) -> dict[str, dict[PieceKey, Piece]]:
    """What each group shares, by the group's mark and the piece's key."""
    found: dict[str, dict[PieceKey, Piece]] = {}
    for group in house.groups:
        if group.shares:
            built = built_with_group(house, [members[mark] for mark in group.openings], group)[-1]
            found[group.mark] = {piece.key: piece for piece in built.built.pieces}
    return found
