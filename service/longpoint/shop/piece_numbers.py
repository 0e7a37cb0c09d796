"""The numbers by which sheets name pieces: `K1-4`, and of several alike which, `L1-4.2`.

Pieces are numbered in the order in which an opening has them. In a house that is kept a number stays with its piece and
is never used again: what is new takes the numbers after the highest.
"""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from typing import NamedTuple

from msgspec.structs import replace

from longpoint.geometry import Piece
from longpoint.shop.build import BuiltOpening

Numbers = Mapping[str, Mapping[str, int]]
"""By what an opening is kept under and by a piece's key, its number."""


class Printed(NamedTuple):
    """A piece as sheets name it. Attributes: mark, number; which of several alike, None where it does not say."""

    mark: str
    number: int
    instance: int | None


def printed(text: str) -> Printed | None:
    """What `K1-4` or `L1-4.2` names; None for a text that is no such name."""
    found = re.fullmatch(r"(.+)-([1-9][0-9]{0,3})(?:\.([1-9][0-9]{0,2}))?", text)
    if found is None:
        return None
    mark, number, instance = found.groups()
    return Printed(mark, int(number), None if instance is None else int(instance))


def numbered(one: BuiltOpening, given: Mapping[str, int]) -> BuiltOpening:
    """An opening whose pieces have the numbers they were given, and those after them where they have none yet."""
    if not given:
        return one
    after = max(given.values())
    numbers = []
    for piece in one.built.pieces:
        number = given.get(str(piece.key))
        if number is None:
            number = after = after + 1
        numbers.append(number)
    return replace(one, built=replace(one.built, numbers=tuple(numbers)))


def not_given_yet(
    openings: Sequence[BuiltOpening], ids: Sequence[str], given: Numbers
) -> dict[str, dict[str, int]]:
    """All numbers of openings where those of some pieces were not given before."""
    new: dict[str, dict[str, int]] = {}
    for one, id in zip(openings, ids, strict=True):
        known = given.get(id, {})
        more = {str(piece.key): number for number, piece in one.built.numbered if str(piece.key) not in known}
        if more:
            new[id] = {**known, **more}
    return new


def piece_numbered(one: BuiltOpening, number: int) -> Piece | None:
    """The piece of a number."""
    return next((piece for own, piece in one.built.numbered if own == number), None)
