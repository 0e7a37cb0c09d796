"""Two states of one thing, compared: field by field as it was sent, part by part as it was worked out."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import Any

import msgspec

from longpoint.api.http.faults import pointer
from longpoint.api.wire.changes import FieldChange, PartBecame, PartChange
from longpoint.api.wire.lengths import LengthWriter
from longpoint.geometry import Part

_encode = msgspec.json.Encoder().encode
_ABSENT = object()
_Path = tuple[str | int, ...]


def differences(before: Any, after: Any) -> list[FieldChange]:
    """What was said differently in two values of one wire type."""
    found = _differ(msgspec.to_builtins(before), msgspec.to_builtins(after), ())
    return [
        FieldChange(pointer=pointer(path), before=_json(old), after=_json(new)) for path, old, new in found
    ]


def part_changes(
    before: Mapping[str, Part],
    after: Mapping[str, Part],
    count_before: int,
    count_after: int,
    write: LengthWriter,
) -> list[PartChange]:
    """What became of each part of one opening, those of the later state first."""
    return [
        _part_change(key, before.get(key), after.get(key), count_before, count_after, write)
        for key in dict.fromkeys([*after, *before])
    ]


def _differ(before: Any, after: Any, path: _Path) -> Iterator[tuple[_Path, Any, Any]]:
    if isinstance(before, dict) and isinstance(after, dict):
        for key in dict.fromkeys([*before, *after]):
            yield from _differ(before.get(key, _ABSENT), after.get(key, _ABSENT), (*path, key))
    elif isinstance(before, list) and isinstance(after, list) and len(before) == len(after):
        for index, (one, other) in enumerate(zip(before, after, strict=True)):
            yield from _differ(one, other, (*path, index))
    elif before != after:
        yield path, before, after


def _json(value: Any) -> str | None:
    return None if value is _ABSENT or value is None else _encode(value).decode()


def _part_change(
    key: str,
    before: Part | None,
    after: Part | None,
    count_before: int,
    count_after: int,
    write: LengthWriter,
) -> PartChange:
    longer_by = None
    if before is None:
        became = PartBecame.NEW
    elif after is None:
        became = PartBecame.GONE
    else:
        became = _became(before, after)
        if became in (PartBecame.LONGER, PartBecame.SHORTER):
            longer_by = str(after.overall - before.overall)
    return PartChange(
        part=key,
        became=became,
        before=None if before is None else write(before.overall),
        after=None if after is None else write(after.overall),
        longer_by=longer_by,
        quantity_before=0 if before is None else count_before,
        quantity_after=0 if after is None else count_after,
    )


def _became(before: Part, after: Part) -> PartBecame:
    if before.overall != after.overall:
        return PartBecame.LONGER if after.overall > before.overall else PartBecame.SHORTER
    return PartBecame.UNCHANGED if _made(before) == _made(after) else PartBecame.ALTERED


def _made(part: Part) -> Any:
    """What the saw makes of a part: its own mark and how it was computed are no matter."""
    return (
        part.profile,
        part.short_point,
        part.long_point,
        part.width,
        part.thickness,
        part.ends,
        part.taper,
        part.cutouts,
    )
