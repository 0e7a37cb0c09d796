"""The columns that openings have in a spreadsheet: one for each field, named by its words."""

from __future__ import annotations

import types
import typing
from enum import Enum
from functools import lru_cache
from typing import Annotated, Literal, NamedTuple, get_args, get_origin, get_type_hints

import msgspec

from longpoint.lengths import Length
from longpoint.shop.house import HouseOpening

Kind = Literal["text", "whole", "number", "yes_no", "texts", "numbers", "json"]
BETWEEN = " | "
"""What stands between the values of a cell that holds several."""
FIRST = ("mark", "room", "trim", "count", "jamb width", "jamb height", "jamb depth")
"""The columns every export has, in their order."""


class CsvColumn(NamedTuple):
    """A column: its name, the path of its field in an opening, how its cells are read, and what is left unsaid."""

    name: str
    path: tuple[str, ...]
    kind: Kind
    default: object


@lru_cache(maxsize=1)
def columns() -> dict[str, CsvColumn]:
    """Every column, by name."""
    found = {column.name: column for column in _walk(HouseOpening, (), True)}
    rest = [name for name in found if name not in FIRST]
    return {name: found[name] for name in [*FIRST, *rest]}


def _walk(type_: type[msgspec.Struct], path: tuple[str, ...], always: bool) -> list[CsvColumn]:
    found: list[CsvColumn] = []
    hints = get_type_hints(type_, include_extras=True)
    for field in msgspec.structs.fields(type_):
        inner = _bare(hints[field.name])
        at = (*path, field.name)
        if isinstance(inner, type) and issubclass(inner, msgspec.Struct):
            found += _walk(inner, at, always and field.default is not None)
        else:
            default = None if field.default is msgspec.NODEFAULT or not always else field.default
            found.append(CsvColumn(_name(at), at, _kind(inner), default))
    return found


def _name(path: tuple[str, ...]) -> str:
    words = path[1:] if path[0] == "readings" else path
    return " ".join(words).replace("_", " ")


def _bare(hint: object) -> object:
    """A hint without its limits, and without None among its choices."""
    while get_origin(hint) is Annotated:
        hint = get_args(hint)[0]
    if get_origin(hint) in (typing.Union, types.UnionType):
        rest = [one for one in get_args(hint) if one is not type(None)]
        return _bare(rest[0]) if len(rest) == 1 else hint
    return hint


def _kind(inner: object) -> Kind:
    if get_origin(inner) is tuple:
        item = _bare(get_args(inner)[0])
        if isinstance(item, type) and issubclass(item, Length | str):
            return "texts"
        return "numbers" if item is float else "json"
    if inner is bool:
        return "yes_no"
    if inner is int:
        return "whole"
    if inner is float:
        return "number"
    if isinstance(inner, type) and issubclass(inner, Enum | str | Length):
        return "text"
    return "json"
