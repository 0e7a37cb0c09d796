"""Two states of one thing, compared: field by field as it was sent, piece by piece as it was worked out."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from enum import StrEnum

import msgspec

from longpoint.geometry import Piece, PieceKey
from longpoint.lengths import Real, Rounding, length_writer, real
from longpoint.values import Given, Place, Value, encoder

_encode = encoder(length_writer(Rounding())).encode
_decode = msgspec.json.decode
_ABSENT = object()
_Path = tuple[str | int, ...]


class Became(StrEnum):
    """It says whether an opening is new, gone or changed: itself, its trim or its group."""

    NEW = "new"
    GONE = "gone"
    CHANGED = "changed"
    TRIM_CHANGED = "trim_changed"
    GROUP_CHANGED = "group_changed"


class PieceBecame(StrEnum):
    """What became of a piece; altered is the same length with other ends, width or stock."""

    NEW = "new"
    GONE = "gone"
    LONGER = "longer"
    SHORTER = "shorter"
    ALTERED = "altered"
    UNCHANGED = "unchanged"


class FieldChange(Value, frozen=True):
    """One thing that was said differently.

    Attributes:
        pointer: The place of the field, as a JSON pointer into the opening or the house.
        before: What it was, as JSON; null when it was not there.
        after: What it is, as JSON; null when it is not there.
    """

    pointer: Place
    before: str | None
    after: str | None


class PieceChange(Value, frozen=True):
    """It says what became of one piece of an opening.

    Attributes:
        piece: The key of the piece.
        became: Longer and shorter go by what it takes of a stick, exactly.
        before: The length that the piece took of a stick; null where there was none.
        after: The piece as the later revision has it; null where it is gone.
        longer_by: The length after less the length before; negative when the piece became shorter.
        quantity_before: The number of such pieces before.
        quantity_after: The number of such pieces afterwards.
    """

    piece: PieceKey
    became: PieceBecame
    before: Real | None
    after: Real | None
    longer_by: Real | None
    quantity_before: int
    quantity_after: int


class OpeningChange(Value, frozen=True):
    """It says what became of one opening.

    Attributes:
        id: The id of the opening.
        mark: The mark of the opening; the later one where it changed.
        mark_before: The mark it had before; null when it is new.
        became: With trim_changed only the trim spec it names was changed; with group_changed it began or ceased to
            share a stool.
        readings: The readings that changed, each before and after.
        pieces: The changes of its pieces, one for each.
    """

    id: str
    mark: str
    mark_before: str | None
    became: Became
    readings: tuple[FieldChange, ...]
    pieces: tuple[PieceChange, ...]


class GroupChange(Value, frozen=True):
    """It says what became of the pieces that a group's openings share.

    Attributes:
        mark: The mark of the group.
        became: It says what became of the group.
        pieces: The changes of its pieces, one for each.
    """

    mark: str
    became: Became
    pieces: tuple[PieceChange, ...]


class Changes(Value, frozen=True):
    """A comparison of two revisions: it says what changed between them.

    Attributes:
        from_revision: The number of the earlier revision.
        to_revision: The number of the later revision.
        house: The changes to what is said of the house as a whole.
        openings: Each opening that changed, by its place in the schedule.
        groups: Each group of which a shared piece changed, by its mark.
        unchanged_openings: The number of openings that stand in both and did not change.
    """

    from_revision: int
    to_revision: int
    house: tuple[FieldChange, ...]
    openings: tuple[OpeningChange, ...]
    groups: tuple[GroupChange, ...]
    unchanged_openings: int


def differences(before: Given, after: Given) -> tuple[FieldChange, ...]:
    """What was said differently in two records of one type."""
    found = _differ(_decode(_encode(before)), _decode(_encode(after)), ())
    return tuple(FieldChange(Place(path), _json(old), _json(new)) for path, old, new in found)


def piece_changes(
    before: Mapping[PieceKey, Piece], after: Mapping[PieceKey, Piece], count_before: int, count_after: int
) -> tuple[PieceChange, ...]:
    """What became of each piece of one opening, those of the later state first."""
    return tuple(
        _piece_change(key, before.get(key), after.get(key), count_before, count_after)
        for key in dict.fromkeys([*after, *before])
    )


def _differ(before: object, after: object, path: _Path) -> Iterator[tuple[_Path, object, object]]:
    if isinstance(before, dict) and isinstance(after, dict):
        for key in dict.fromkeys([*before, *after]):
            yield from _differ(before.get(key, _ABSENT), after.get(key, _ABSENT), (*path, key))
    elif isinstance(before, list) and isinstance(after, list) and len(before) == len(after):
        for index, (one, other) in enumerate(zip(before, after, strict=True)):
            yield from _differ(one, other, (*path, index))
    elif before != after:
        yield path, before, after


def _json(value: object) -> str | None:
    return None if value is _ABSENT or value is None else msgspec.json.encode(value).decode()


def _piece_change(
    key: PieceKey, before: Piece | None, after: Piece | None, count_before: int, count_after: int
) -> PieceChange:
    longer_by: Real | None = None
    if before is None:
        became = PieceBecame.NEW
    elif after is None:
        became = PieceBecame.GONE
    else:
        became = _became(before, after)
        if became in (PieceBecame.LONGER, PieceBecame.SHORTER):
            longer_by = real(after.overall - before.overall)
    return PieceChange(
        piece=key,
        became=became,
        before=None if before is None else before.overall,
        after=None if after is None else after.overall,
        longer_by=longer_by,
        quantity_before=0 if before is None else count_before,
        quantity_after=0 if after is None else count_after,
    )


def _became(before: Piece, after: Piece) -> PieceBecame:
    if before.overall != after.overall:
        return PieceBecame.LONGER if after.overall > before.overall else PieceBecame.SHORTER
    return PieceBecame.UNCHANGED if _made(before) == _made(after) else PieceBecame.ALTERED


def _made(piece: Piece) -> tuple[object, ...]:
    """What the saw makes of a piece: its own mark and how it was computed are no matter."""
    return (
        piece.profile,
        piece.short_point,
        piece.long_point,
        piece.width,
        piece.thickness,
        piece.ends,
        piece.taper,
        piece.cutouts,
    )
