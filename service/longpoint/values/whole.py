"""Whole numbers written with a point, as 3477.0: to JSON Schema they are whole numbers like any other."""

from functools import lru_cache
from typing import Any

from msgspec import inspect as mi

_MOST = 2**53
"""Beyond it a float is no longer one whole number alone."""


@lru_cache(maxsize=512)
def inspected(type_: Any) -> mi.Type:
    """A type as msgspec describes it, which takes a while to find."""
    return mi.type_info(type_)


def whole(type_: Any, value: Any) -> Any:
    """A value decoded without types, with plain whole numbers where a type takes no others."""
    return _whole(inspected(type_), value)


def _whole(t: mi.Type, value: Any) -> Any:
    if isinstance(t, mi.Metadata):
        return _whole(t.type, value)
    if isinstance(t, mi.UnionType):
        return _of_union(t, value)
    if isinstance(value, float):
        return int(value) if _is_whole(t) and value.is_integer() and abs(value) < _MOST else value
    if isinstance(value, dict) and isinstance(t, mi.StructType):
        types = {field.encode_name: field.type for field in t.fields}
        return {name: _whole(types[name], one) if name in types else one for name, one in value.items()}
    if isinstance(value, dict) and isinstance(t, mi.DictType):
        return {name: _whole(t.value_type, one) for name, one in value.items()}
    if isinstance(value, list) and isinstance(t, mi.CollectionType):
        return [_whole(t.item_type, one) for one in value]
    return value


def _is_whole(t: mi.Type) -> bool:
    return isinstance(t, mi.IntType) or (
        isinstance(t, mi.LiteralType) and any(type(one) is int for one in t.values)
    )


def _of_union(t: mi.UnionType, value: Any) -> Any:
    """A union's value: of its records the one that the tag names, of its numbers a float where it takes one."""
    if isinstance(value, float) and any(isinstance(one, mi.FloatType) for one in t.types):
        return value
    for one in t.types:
        tag = one.tag_field if isinstance(one, mi.StructType) else None
        if tag is None or (isinstance(value, dict) and value.get(tag) == one.tag):  # type: ignore[attr-defined]
            value = _whole(one, value)
    return value
