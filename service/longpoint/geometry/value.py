"""The base of the room's value types."""

import msgspec


class Value(msgspec.Struct, frozen=True):
    """An immutable record. A struct and not a dataclass because one opening makes about fifty of them, and
    a frozen dataclass takes ten times as long to make."""
