"""The exact value of every length in something sent, by its JSON pointer."""

from collections.abc import Hashable
from functools import lru_cache
from typing import Annotated, Any, get_args, get_origin, get_type_hints

import msgspec

from longpoint.api.http.explain import CHECK
from longpoint.api.http.faults import pointer
from longpoint.lengths import Unit, parse

_encode = msgspec.json.Encoder(order=None).encode


def exact_lengths(value: Any, unit: Unit | None) -> dict[str, str]:
    """Every length of a wire value, which have all been read before, as fractions of an inch."""
    found: dict[str, str] = {}
    _walk(value, unit, (), found)
    return found


def exact_json(value: Any, unit: Unit | None) -> str:
    """The same as JSON text."""
    return _encode(exact_lengths(value, unit)).decode()


def _walk(value: Any, unit: Unit | None, path: tuple[str | int, ...], found: dict[str, str]) -> None:
    for name, is_length in _fields(value.__class__):
        inner = getattr(value, name)
        if inner is None:
            continue
        if is_length:
            texts = inner if isinstance(inner, list) else [inner]
            for index, text in enumerate(texts):
                at = (*path, name, index) if isinstance(inner, list) else (*path, name)
                found[pointer(at)] = str(parse(text, unit))
        elif isinstance(inner, msgspec.Struct):
            _walk(inner, unit, (*path, name), found)
        elif isinstance(inner, dict):
            for key, one in inner.items():
                _walk(one, unit, (*path, name, key), found)
        elif isinstance(inner, list):
            for index, one in enumerate(inner):
                if isinstance(one, msgspec.Struct):
                    _walk(one, unit, (*path, name, index), found)


@lru_cache(maxsize=256)
def _fields(type_: Hashable) -> tuple[tuple[str, bool], ...]:
    """The fields of a wire type, each with whether it holds a length or lengths."""
    if not isinstance(type_, type) or not issubclass(type_, msgspec.Struct):
        return ()
    hints = get_type_hints(type_, include_extras=True)
    return tuple((name, _is_length(hints[name])) for name in type_.__struct_fields__)


def _is_length(hint: Any) -> bool:
    if get_origin(hint) is Annotated:
        inner, *metas = get_args(hint)
        if any(isinstance(meta, msgspec.Meta) and CHECK in (meta.extra or {}) for meta in metas):
            return True
        return _is_length(inner)
    if get_origin(hint) is dict:
        return False
    return any(_is_length(one) for one in get_args(hint))
