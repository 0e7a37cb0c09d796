"""Where a field that was sent in the wrong place belongs."""

from collections.abc import Iterator
from functools import lru_cache

from msgspec import inspect as mi

from longpoint.texts import Sentence, say

_MOST_PLACES = 3
"""A field that is known in more places than that could be meant for any."""


@lru_cache(maxsize=256)
def fields_below(cls: type) -> dict[str, list[str]]:
    """The fields of the records within a record, each with the paths to those that have it, the nearest alone."""
    found: dict[str, list[str]] = {}
    seen = {cls}
    level = [("", record) for record in _records_in(mi.type_info(cls))]
    while level:
        below = [
            (f"{path}.{field.encode_name}".lstrip("."), inner)
            for path, record in level
            for field in record.fields
            for inner in _records_in(field.type)
        ]
        level = [(path, inner) for path, inner in below if inner.cls not in seen]
        seen |= {inner.cls for _, inner in level}
        here: dict[str, list[str]] = {}
        for path, inner in level:
            # One that goes by the names of another record's fields is not where they belong.
            for field in () if getattr(inner.cls, "names_anothers", False) else inner.fields:
                here.setdefault(field.encode_name, []).append(path)
        found = here | found
    return found


def _records_in(t: mi.Type) -> Iterator[mi.StructType]:
    """The records that a field's values may be, or that a list of them has."""
    if isinstance(t, mi.StructType):
        yield t
    for inner in (
        *(t.types if isinstance(t, mi.UnionType) else ()),
        *((t.type,) if isinstance(t, mi.Metadata) else ()),
        *((t.item_type,) if isinstance(t, mi.CollectionType) else ()),
        *((t.value_type,) if isinstance(t, mi.DictType) else ()),
    ):
        yield from _records_in(inner)


def belongs(key: str, cls: type) -> Sentence | None:
    """Where a field that a record has not does belong, within it; None where none has it, or many have."""
    places = fields_below(cls).get(key, ())
    if not 0 < len(places) <= _MOST_PLACES:
        return None
    return say("problem", "values.belongs-under", field=key, places=tuple(f"`{place}`" for place in places))
