"""The words faults are told in, and which wire types take which kind of decoded value."""

import json
from collections.abc import Iterator
from functools import lru_cache
from typing import Any

from msgspec import inspect as mi

from longpoint.values import nearest

_TAKEN: dict[type[mi.Type], tuple[type | tuple[type, ...], str]] = {
    mi.StrType: (str, "text"),
    mi.IntType: (int, "a whole number"),
    mi.FloatType: ((int, float), "a number"),
    mi.BoolType: (bool, "true or false"),
    mi.NoneType: (type(None), "null"),
    mi.StructType: (dict, "an object"),
    mi.DictType: (dict, "an object"),
    mi.ListType: (list, "a list"),
    mi.VarTupleType: (list, "a list"),
    mi.TupleType: (list, "a list"),
}
"""What each wire type is made of, decoded and in a caller's words."""
_GIVEN: dict[type, str] = {
    type(None): "null",
    bool: "true or false",
    int: "a number",
    float: "a number",
    str: "text",
    list: "a list",
    dict: "an object",
}


def bare_of(t: mi.Type) -> mi.Type:
    """A type without its constraints."""
    while isinstance(t, mi.Metadata):
        t = t.type
    return t


def is_plain(t: mi.Type) -> bool:
    """Whether it is a type of one kind of decoded value."""
    return type(t) in _TAKEN


def takes_kind(t: mi.Type, value: Any) -> bool:
    """Whether a value is of the kind a type is made of, whatever else is wrong with it."""
    if isinstance(t, mi.CustomType):
        return value is not None
    if not is_plain(t) or (isinstance(value, bool) and not isinstance(t, mi.BoolType)):
        return False
    return isinstance(value, _TAKEN[type(t)][0])


def kind_of(value: Any) -> str:
    """What a decoded value is, in a caller's words."""
    return _GIVEN.get(type(value), "binary data")


def is_whole(value: Any) -> bool:
    """Whether it is a whole number with a point, as 3477.0: to JSON Schema a whole number like any other."""
    return isinstance(value, float) and value.is_integer() and abs(value) < 2**53


def show(value: Any) -> str:
    """A value as JSON, cut short."""
    text = json.dumps(value, ensure_ascii=False, default=str)
    return text if len(text) <= 60 else text[:57] + "..."


def options_of(t: mi.Type) -> list[Any]:
    """The values a choice allows; none when it is no choice."""
    if isinstance(t, mi.EnumType):
        return [member.value for member in t.cls]
    return list(t.values) if isinstance(t, mi.LiteralType) else []


def wanted(t: mi.Type) -> str:
    """What a type takes, in a caller's words."""
    if is_plain(t):
        return _TAKEN[type(t)][1]
    return " or ".join(show(option) for option in options_of(t)) or "something else"


def out_of_bounds(t: mi.IntType | mi.FloatType, value: float) -> str:
    """The bound a number breaks, in words; "" when it breaks none."""
    if t.ge is not None and value < t.ge:
        return f"at least {t.ge}"
    if t.gt is not None and value <= t.gt:
        return f"more than {t.gt}"
    if t.le is not None and value > t.le:
        return f"at most {t.le}"
    if t.lt is not None and value >= t.lt:
        return f"less than {t.lt}"
    if t.multiple_of is not None and value % t.multiple_of:
        return f"a multiple of {t.multiple_of}"
    return ""


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
            for field in inner.fields:
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


def unknown_field(key: str, names: list[str], cls: type) -> str:
    """The sentence about a field that is not known, with where it belongs or a guess at what was meant."""
    places = fields_below(cls).get(key, ())
    if 0 < len(places) <= _MOST_PLACES:
        where = " or ".join(f"`{place}`" for place in places)
        return f"This is not a field here: `{key}` belongs under {where}."
    hint = nearest(key, names) or f" The fields here are: {', '.join(names)}." if names else ""
    return f"{show(key)} is not a field here; take it out.{hint}"
