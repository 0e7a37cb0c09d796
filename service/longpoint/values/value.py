"""The bases of the rooms' value types."""

from typing import Any

import msgspec


class Value(msgspec.Struct, frozen=True, cache_hash=True):
    """An immutable record. A struct and not a dataclass because one opening makes about fifty of them, and
    a frozen dataclass takes ten times as long to make."""


class Given(Value, frozen=True, forbid_unknown_fields=True):
    """A record that callers send: fields it does not know are refused, and what is stored or echoed is the same
    record again."""


def fields_of(base: type[Value], record: Value) -> dict[str, Any]:
    """What a record has in the fields of a base, by name: what another record of that base is made with."""
    return {name: getattr(record, name) for name in base.__struct_fields__}
