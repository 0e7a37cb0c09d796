"""The words faults are told in, and which wire types take which kind of decoded value."""

import json
from typing import Any

from msgspec import inspect as mi

from longpoint.values import belongs, nearest

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


def unknown_field(key: str, names: list[str], cls: type) -> str:
    """The sentence about a field that is not known, with where it belongs or a guess at what was meant."""
    hint = nearest(key, names) or f" The fields here are: {', '.join(names)}." if names else ""
    return belongs(key, cls) or f"{show(key)} is not a field here; take it out.{hint}"
