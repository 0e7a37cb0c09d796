"""The words faults are told in."""

import json
from typing import Any

from msgspec import inspect as mi

from longpoint.values import nearest

_WORDS: dict[type[mi.Type], str] = {
    mi.StrType: "text",
    mi.IntType: "a whole number",
    mi.FloatType: "a number",
    mi.BoolType: "true or false",
    mi.NoneType: "null",
    mi.StructType: "an object",
    mi.DictType: "an object",
    mi.ListType: "a list",
    mi.VarTupleType: "a list",
    mi.TupleType: "a list",
}


def kind_of(value: Any) -> str:
    """What a decoded value is, in a caller's words."""
    if value is None:
        return "null"
    if isinstance(value, bool):
        return "true or false"
    if isinstance(value, (int, float)):
        return "a number"
    if isinstance(value, str):
        return "text"
    if isinstance(value, list):
        return "a list"
    if isinstance(value, dict):
        return "an object"
    return "binary data"


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
    return _WORDS.get(type(t)) or " or ".join(show(option) for option in options_of(t)) or "something else"


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


def unknown_field(key: str, names: list[str]) -> str:
    """The sentence about a field that is not known, with a guess at what was meant."""
    hint = nearest(key, names) or f" The fields here are: {', '.join(names)}." if names else ""
    return f"{show(key)} is not a field here; take it out.{hint}"
