"""How much of a house is worked out together."""

from __future__ import annotations

from longpoint.geometry import Built, Fault
from longpoint.texts import say

MOST_PIECES = 50_000
"""Pieces worked out together, each of those alike counted: 5,000 openings of ten pieces."""
MOST_NAMING = 4_000_000
"""Bytes of the names that their answers repeat for each piece, of its opening and its profile: 80 a piece."""


def naming(built: Built) -> int:
    """Bytes of the names that are repeated for the pieces of an opening."""
    mark = len(built.opening.mark.encode())
    return sum(mark + len(piece.profile.encode()) for piece in built.pieces)


def too_long_names(index: int) -> Fault:
    return Fault.at(
        ("openings", index, "mark"),
        "too-much-naming",
        say("problem", "house.too-much-naming", most=MOST_NAMING),
    )


def too_many(index: int, pieces: int) -> Fault:
    return Fault.at(
        ("openings", index, "count"),
        "too-many-pieces",
        say("problem", "house.too-many-pieces", pieces=pieces, most=MOST_PIECES),
    )
