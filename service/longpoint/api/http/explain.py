"""Everything that is wrong with a decoded body, compared with the wire type it should have been.

Only runs once a body has been refused. It follows msgspec's strict rules, so that a body msgspec takes has no
faults here and one it refuses has at least one, as long as it is made of the types that requests are made of.
"""

import math
import re
from collections.abc import Iterable
from typing import Any

from msgspec import inspect as mi

from longpoint.api.http.fault_words import (
    Words,
    bare_of,
    is_plain,
    kind_of,
    options_of,
    out_of_bounds,
    show,
    takes_kind,
    unknown_field,
    wanted,
)
from longpoint.lengths import Unit
from longpoint.texts import Sentence, say
from longpoint.values import Faults, Unreadable, inspected, nearest
from longpoint.values.names import EXPECT

_Trail = tuple[str | int, ...]

LONGEST_NAME = 200
"""Characters of a field's name that stands in pointers; what is wrong with a longer one is reported where it stands."""


def stand_ins(type_: Any, value: Any, faults: Faults, unit: Unit | None) -> Any:
    """Note every way in which a value, decoded without types, is not of a type.

    Returns:
        The value with others in place of the texts that cannot be read, so that what can only be said of a whole of the
        right form can be reported as well; None where there are none, or more is wrong than they.
    """
    explainer = _Explainer(unit, faults)
    before = faults.count
    explainer.walk(inspected(type_), value, ())
    if not explainer.stood_in or faults.count - before > len(explainer.stood_in):
        return None
    for path, stand_in in explainer.stood_in:
        _put(value, path, stand_in)
    return value


def _put(value: Any, path: _Trail, stand_in: str) -> None:
    *way, last = path
    for step in way:
        value = value[step]
    value[last] = stand_in


def find_nul(value: Any, faults: Faults, path: _Trail = ()) -> None:
    """Note every text and key with a NUL character in it, which no part of the service can keep."""
    if isinstance(value, str):
        if "\0" in value:
            faults.add(path, "nul-character", say("problem", "text.nul"))
    elif isinstance(value, dict):
        for key, inner in value.items():
            find_nul(key, faults, path)
            find_nul(inner, faults, (*path, str(key)))
    elif isinstance(value, list):
        for index, inner in enumerate(value):
            find_nul(inner, faults, (*path, index))


class _Explainer:
    """Walks one body."""

    def __init__(self, unit: Unit | None, faults: Faults) -> None:
        self.unit = unit
        self.faults = faults
        self.stood_in: list[tuple[_Trail, str]] = []

    def walk(self, t: mi.Type, value: Any, path: _Trail, extra: dict[Any, Any] | None = None) -> None:
        if isinstance(t, mi.Metadata):
            self.walk(t.type, value, path, {**(extra or {}), **(t.extra or {})})
        elif isinstance(t, mi.CustomType):
            self._custom(t, value, path)
        elif isinstance(t, mi.UnionType):
            self._union(t, value, path, extra)
        elif isinstance(t, (mi.LiteralType, mi.EnumType)):
            self._option(options_of(t), value, path)
        elif is_plain(t) and not takes_kind(t, value):
            self._wrong(path, wanted(t), value, (extra or {}).get(EXPECT))
        elif isinstance(t, mi.StructType):
            self._struct(t, value, path)
        elif isinstance(t, mi.DictType):
            self._dict(t, value, path)
        elif isinstance(t, mi.CollectionType):
            self._list(t, value, path)
        elif isinstance(t, mi.StrType):
            self._text(t, value, path, extra or {})
        elif isinstance(t, (mi.IntType, mi.FloatType)):
            self._number(t, value, path)

    def _wrong(self, path: _Trail, wanted: Words, value: Any, hint: Sentence | None = None) -> None:
        detail = say("problem", "value.wrong-type", wanted=wanted, given=kind_of(value))
        self.faults.add(path, "wrong-type", detail + hint)

    def _struct(self, t: mi.StructType, value: dict[Any, Any], path: _Trail) -> None:
        fields = {field.encode_name: field for field in t.fields}
        names = [*fields, t.tag_field] if t.tag_field else list(fields)
        # msgspec takes a lone struct without its tag; within a union the tag was read already.
        if t.tag_field and value.get(t.tag_field, t.tag) != t.tag:
            self._option([t.tag], value[t.tag_field], (*path, t.tag_field))
        for name, field in fields.items():
            if name in value:
                self.walk(field.type, value[name], (*path, name))
            elif field.required:
                self.faults.add((*path, name), "missing", say("problem", "field.missing", field=name))
        for key in value:
            if not isinstance(key, str):
                self.faults.add(path, "wrong-type", say("problem", "field.name-not-text", given=kind_of(key)))
            elif key not in names and t.forbid_unknown_fields:
                at = (*path, key) if len(key) <= LONGEST_NAME else path
                self.faults.add(
                    at, "unknown-field", unknown_field(key, () if self.faults.full else names, t.cls)
                )

    def _custom(self, t: mi.CustomType, value: Any, path: _Trail) -> None:
        if isinstance(value, str) and "\0" in value:
            find_nul(value, self.faults, path)
            return
        try:
            read: Any = t.cls
            read.read(value, self.unit)
        except Unreadable as refusal:
            self.faults.add(path, refusal.code, refusal.detail)
            stand_in = getattr(t.cls, "STAND_IN", None)
            if stand_in is not None and isinstance(value, str):
                self.stood_in.append((path, stand_in))

    def _list(self, t: mi.CollectionType, value: list[Any], path: _Trail) -> None:
        self._size(t.min_length, t.max_length, len(value), say("word", "list.items"), path)
        for index, item in enumerate(value[: t.max_length]):
            self.walk(t.item_type, item, (*path, index))

    def _dict(self, t: mi.DictType, value: dict[Any, Any], path: _Trail) -> None:
        self._size(t.min_length, t.max_length, len(value), say("word", "list.pairs"), path)
        for key, item in list(value.items())[: t.max_length]:
            name = str(key)
            if len(name) > LONGEST_NAME:
                detail = say("problem", "text.name-too-long", name=show(name), characters=len(name))
                self.faults.add(path, "too-long", detail)
                continue
            inner = (*path, name)
            self.walk(t.key_type, key, inner)
            self.walk(t.value_type, item, inner)

    def _size(self, least: int | None, most: int | None, size: int, things: Sentence, path: _Trail) -> None:
        if least is not None and size < least:
            came = str(size) if size else say("word", "value.none")
            few = say("problem", "list.too-few", things=things, least=least, came=came)
            self.faults.add(path, "too-few", few)
        if most is not None and size > most:
            many = say("problem", "list.too-many", things=things, most=most, there=size)
            self.faults.add(path, "too-many", many)

    def _text(self, t: mi.StrType, value: str, path: _Trail, extra: dict[Any, Any]) -> None:
        if t.min_length is not None and len(value) < t.min_length:
            short = say("problem", "text.too-short", least=t.min_length, characters=len(value))
            self.faults.add(path, "too-short", short if value else say("problem", "text.empty"))
        elif t.max_length is not None and len(value) > t.max_length:
            long = say("problem", "text.too-long", most=t.max_length, characters=len(value))
            self.faults.add(path, "too-long", long)
        elif t.pattern is not None and not re.search(t.pattern, value):
            hint = extra.get(EXPECT) or say("hint", "text.pattern", pattern=t.pattern)
            self.faults.add(path, "wrong-form", say("problem", "text.wrong-form", given=show(value)) + hint)
        elif "\0" in value:
            find_nul(value, self.faults, path)

    def _number(self, t: mi.IntType | mi.FloatType, value: float, path: _Trail) -> None:
        if isinstance(value, float) and not math.isfinite(value):
            self.faults.add(path, "out-of-range", say("problem", "number.not-finite"))
        elif wrong := out_of_bounds(t, value):
            self.faults.add(path, "out-of-range", wrong)

    def _option(self, options: Iterable[Any], value: Any, path: _Trail) -> None:
        choices = list(options)
        if not any(type(choice) is type(value) and choice == value for choice in choices):
            hint = None if self.faults.full else nearest(value, choices)
            listed = tuple(map(show, choices))
            detail = say("problem", "choice.none-of-these", choices=listed, given=show(value))
            self.faults.add(path, "not-an-option", detail + hint)

    def _union(self, t: mi.UnionType, value: Any, path: _Trail, extra: dict[Any, Any] | None) -> None:
        members = [(member, bare_of(member)) for member in t.types]
        structs = [bare for _, bare in members if isinstance(bare, mi.StructType)]
        if isinstance(value, dict) and len(structs) > 1:
            self._tagged(structs, value, path)
            return
        fitting = [member for member, bare in members if takes_kind(bare, value)]
        options = [option for _, bare in members for option in options_of(bare)]
        if not fitting:
            fitting = [member for member, bare in members if not isinstance(bare, mi.NoneType)]
        if len(fitting) == 1:
            self.walk(fitting[0], value, path, extra)
        elif options and isinstance(value, (str, int)) and not isinstance(value, bool):
            self._option(options, value, path)
        elif not any(takes_kind(bare, value) for _, bare in members):
            self._wrong(path, tuple(dict.fromkeys(one for _, bare in members for one in wanted(bare))), value)

    def _tagged(self, structs: list[mi.StructType], value: dict[Any, Any], path: _Trail) -> None:
        by_tag = {member.tag: member for member in structs}
        tag_field = str(structs[0].tag_field)
        if tag_field not in value:
            detail = say("problem", "field.tag-missing", field=tag_field, choices=tuple(map(show, by_tag)))
            self.faults.add((*path, tag_field), "missing", detail)
            return
        tag = value[tag_field]
        if isinstance(tag, (str, int)) and tag in by_tag:
            self._struct(by_tag[tag], value, path)
        else:
            self._option(by_tag, tag, (*path, tag_field))
