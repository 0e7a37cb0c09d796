"""Decoding and encoding by the types of fields: the one way of values in and out of the service.

A field's type says how it is read, written and described (`Wired`); msgspec does the rest. The unit of bare lengths
goes with the decoder, the unit and rounding of written ones with the encoder.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from functools import lru_cache, partial
from typing import Any
from unittest.mock import patch

import msgspec

from longpoint.texts import Sentence
from longpoint.values.whole import whole
from longpoint.values.wired import Wired, Writes

Hook = Callable[[Any], Any]
_SAY_THEMSELVES = (Wired, Sentence)


def _reads(unit: Any) -> Callable[[Any, Any], Any]:
    def hook(type_: Any, given: Any) -> Any:
        return type_.read(given, unit)

    return hook


@lru_cache(maxsize=512)
def decoder(type_: Any, unit: Any = None) -> msgspec.json.Decoder[Any]:
    """Decodes JSON into a type; bare lengths are in `unit`, refused without one."""
    return msgspec.json.Decoder(type_, dec_hook=_reads(unit))


@lru_cache(maxsize=512)
def packed_decoder(type_: Any, unit: Any = None) -> msgspec.msgpack.Decoder[Any]:
    """The same for MessagePack."""
    return msgspec.msgpack.Decoder(type_, dec_hook=_reads(unit))


def converted(value: Any, type_: Any, unit: Any = None) -> Any:
    """A value decoded without types, as a type."""
    return msgspec.convert(value, type_, dec_hook=_reads(unit))


def decoded(typed: Any, untyped: Callable[[bytes], Any], body: bytes, type_: Any, unit: Any) -> Any:
    """A body as a type, whole numbers that came with a point among it: those the decoder itself refuses."""
    try:
        return typed.decode(body)
    except msgspec.ValidationError as refusal:
        if "got `float`" not in str(refusal):
            raise
    return converted(whole(type_, untyped(body)), type_, unit)


def _writes(write: Writes) -> Hook:
    ways: dict[type, Hook] = dict(write.by_kind)

    def hook(value: Any) -> Any:
        kind = type(value)
        way = ways.get(kind)
        if way is None:
            way = ways[kind] = _way(kind, write)
        return way(value)

    return hook


def _way(kind: type, write: Writes) -> Hook:
    """How values of a kind are written: most say it themselves."""
    if not issubclass(kind, _SAY_THEMSELVES):
        return write
    written = kind.written
    return lambda value: written(value, write)


@lru_cache(maxsize=64)
def encoder(write: Writes, *, sort: bool = False) -> msgspec.json.Encoder:
    """Encodes as JSON what is written so; sorted, an object is the same in whatever order its members came."""
    return msgspec.json.Encoder(enc_hook=_writes(write), order="deterministic" if sort else None)


@lru_cache(maxsize=64)
def packer(write: Writes) -> msgspec.msgpack.Encoder:
    """The same as MessagePack."""
    return msgspec.msgpack.Encoder(enc_hook=_writes(write))


def _schema_of(type_: Any) -> dict[str, Any]:
    if isinstance(type_, type) and hasattr(type_, "schema"):
        found: dict[str, Any] = type_.schema()
        return found
    raise NotImplementedError(f"{type_} says nothing of how it stands on the wire")


def schemas(
    types: Iterable[Any], ref_template: str, write: Writes
) -> tuple[tuple[dict[str, Any], ...], dict[str, dict[str, Any]]]:
    """The JSON Schema of each type, and the components they share; defaults stand in it as `write` would write them."""
    # msgspec 0.22 writes a field's default without the hook that writes values; a test relies on this line.
    with patch("msgspec._json_schema.to_builtins", partial(msgspec.to_builtins, enc_hook=_writes(write))):
        return msgspec.json.schema_components(types, schema_hook=_schema_of, ref_template=ref_template)
