"""The words faults are reported in, and which wire types take which kind of decoded value."""

import json
from collections.abc import Collection
from typing import Any

from msgspec import inspect as mi

from longpoint.texts import Sentence, say
from longpoint.values import belongs, nearest

_TAKEN: dict[type[mi.Type], tuple[type | tuple[type, ...], Sentence]] = {
    mi.StrType: (str, say("word", "value.text")),
    mi.IntType: (int, say("word", "value.whole-number")),
    mi.FloatType: ((int, float), say("word", "value.number")),
    mi.BoolType: (bool, say("word", "value.true-or-false")),
    mi.NoneType: (type(None), say("word", "value.null")),
    mi.StructType: (dict, say("word", "value.object")),
    mi.DictType: (dict, say("word", "value.object")),
    mi.ListType: (list, say("word", "value.list")),
    mi.VarTupleType: (list, say("word", "value.list")),
}
"""What each wire type is made of, decoded and in a caller's words."""
_NUMBERS = dict.fromkeys((int, float), say("word", "value.number"))
_GIVEN = {kind: words for kind, words in _TAKEN.values() if isinstance(kind, type)} | _NUMBERS
Words = tuple[Sentence | str, ...]


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


def kind_of(value: Any) -> Sentence:
    """What a decoded value is, in a caller's words."""
    return _GIVEN.get(type(value), say("word", "value.binary-data"))


def show(value: Any) -> str:
    """A value as JSON, cut short."""
    text = json.dumps(value, ensure_ascii=False, default=str)
    return text if len(text) <= 60 else text[:57] + "..."


def options_of(t: mi.Type) -> list[Any]:
    """The values a choice allows; none when it is no choice."""
    if isinstance(t, mi.EnumType):
        return [member.value for member in t.cls]
    return list(t.values) if isinstance(t, mi.LiteralType) else []


def wanted(t: mi.Type) -> Words:
    """What a type takes, in a caller's words, each of several."""
    if is_plain(t):
        return (_TAKEN[type(t)][1],)
    return tuple(show(option) for option in options_of(t)) or (say("word", "value.something-else"),)


def out_of_bounds(t: mi.IntType | mi.FloatType, value: float) -> Sentence | None:
    """What is wrong with a number that breaks a bound; None when it breaks none."""
    given = show(value)
    if t.ge is not None and value < t.ge:
        return say("problem", "number.below", least=str(t.ge), given=given)
    if t.gt is not None and value <= t.gt:
        return say("problem", "number.not-more", bound=str(t.gt), given=given)
    if t.le is not None and value > t.le:
        return say("problem", "number.above", most=str(t.le), given=given)
    if t.lt is not None and value >= t.lt:
        return say("problem", "number.not-less", bound=str(t.lt), given=given)
    if t.multiple_of is not None and value % t.multiple_of:
        return say("problem", "number.not-a-multiple", step=str(t.multiple_of), given=given)
    return None


def unknown_field(key: str, names: Collection[str], cls: type) -> Sentence:
    """What is said of a field that is not known, with where it belongs or a guess at what was meant."""
    hint = nearest(key, names) or (say("hint", "field.those-here", fields=tuple(names)) if names else None)
    return belongs(key, cls) or say("problem", "field.unknown", field=show(key)) + hint
