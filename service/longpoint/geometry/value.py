"""The base of the room's value types, and how many pieces are remembered."""

import msgspec


class Value(msgspec.Struct, frozen=True, cache_hash=True):
    """An immutable record. A struct and not a dataclass because one opening makes about fifty of them, and
    a frozen dataclass takes ten times as long to make."""


KEPT = 1024
"""How many pieces of a kind are remembered. A house repeats itself: its openings share their trim and many a reading,
and after every change it is worked out again with all the rest as it was."""
