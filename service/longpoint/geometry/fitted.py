"""Makes the lengths of records that go out fit to go."""

from __future__ import annotations

from typing import get_args, get_type_hints

import msgspec
from msgspec.structs import force_setattr

from longpoint.lengths import MADE_REAL, Fraction, Real


class _Lengths(dict[type, tuple[str, ...]]):
    """The fields of each kind of record that are lengths, by their types, worked out once."""

    def __missing__(self, kind: type) -> tuple[str, ...]:
        found = get_type_hints(kind).items()
        names = self[kind] = tuple(
            name for name, hint in found if any(one in (Real, Fraction) for one in (hint, *get_args(hint)))
        )
        return names


_LENGTHS = _Lengths()


def fit(record: msgspec.Struct) -> None:
    """Make the lengths of a record that goes out fit to go."""
    for name in _LENGTHS[type(record)]:
        value = getattr(record, name)
        if type(value) in MADE_REAL:  # as `real` does, without a call for each length
            force_setattr(record, name, MADE_REAL[type(value)](value))
