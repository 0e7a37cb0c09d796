"""Reading a body: fast when it is right, thorough when it is not.

The typed msgspec decoder does the work when all is well. Only when it refuses is the body read again, without
types, and compared with them to find everything that is wrong.
"""

import json
from collections.abc import Callable
from typing import Any, Generic, NoReturn, TypeVar

import msgpack
import msgspec

from longpoint.api.http.explain import find_nul, stand_ins
from longpoint.api.http.negotiate import Encoding
from longpoint.api.http.problems import MalformedBody
from longpoint.lengths import Unit
from longpoint.texts import say
from longpoint.values import Faults, converted, decoded, decoder, packed_decoder, whole

T = TypeVar("T")
_encode = msgspec.json.Encoder().encode
_pack = msgspec.msgpack.Encoder().encode
_NAMES: dict[Encoding, str] = {"json": "JSON", "msgpack": "MessagePack"}
_NUL: dict[Encoding, bytes] = {"json": b"\\u0000", "msgpack": b"\0"}
_TYPED: dict[Encoding, Callable[[Any, Unit | None], Any]] = {"json": decoder, "msgpack": packed_decoder}
_UNTYPED: dict[Encoding, Callable[[bytes], Any]] = {
    "json": msgspec.json.Decoder().decode,
    "msgpack": msgspec.msgpack.Decoder().decode,
}


class BodyReader(Generic[T]):
    """Reads bodies into one type."""

    def __init__(self, type_: type[T]) -> None:
        self.type: Any = type_
        # What is sent to be stored under a house is read under the house's unit once that is known.
        self._unit_is_stored = getattr(type_, "unit_is_stored", False)

    def read(self, body: bytes, encoding: Encoding) -> T:
        """Decode a body as it came.

        Raises:
            MalformedBody: when it cannot be read at all.
            Refusal: when it can, but is not what is wanted; carries every fault.
        """
        if self._unit_is_stored:  # what is wrong is reported with its house
            return self.read_under(Unit.IN, body, encoding)[0]
        value, faults = self.read_under(_unit_said(body, encoding), body, encoding)
        if report := getattr(value, "report", None):
            report(faults)
        faults.raise_any()
        return value

    def read_under(self, unit: Unit | None, body: bytes, encoding: Encoding) -> tuple[T, Faults]:
        """A body whose bare lengths are in a unit, and the texts of it that cannot be read: others stand for them, so
        that all that is wrong can be reported at once.

        Raises:
            MalformedBody: when it cannot be read at all.
            Refusal: when it is not of the right form.
        """
        faults = Faults()
        try:
            value: T = decoded(_TYPED[encoding](self.type, unit), _UNTYPED[encoding], body, self.type, unit)
            refuse_keys_twice(body, encoding)
        except (msgspec.MsgspecError, UnicodeDecodeError, RecursionError) as refusal:
            return self._stood_in(body, encoding, unit, refusal, faults), faults
        if _NUL[encoding] in body:
            find_nul(_UNTYPED[encoding](body), faults)
            if self._unit_is_stored:
                faults.raise_any()
        return value, faults

    def _stood_in(
        self, body: bytes, encoding: Encoding, unit: Unit | None, refusal: Exception, faults: Faults
    ) -> T:
        try:
            value = whole(self.type, _read_untyped(body, encoding))
            stood_in = stand_ins(self.type, value, faults, unit)
        except UnicodeDecodeError as error:
            raise MalformedBody(say("problem", "body.not-utf-8", reason=error.reason)) from refusal
        except RecursionError:
            raise MalformedBody(say("problem", "body.too-deep")) from refusal
        except (msgspec.DecodeError, ValueError) as error:
            detail = say("problem", "body.not-valid", format=_NAMES[encoding], reason=str(error))
            raise MalformedBody(detail) from refusal
        if not faults:
            # The types know something the explanation does not: pass their own words on.
            reason = str(refusal).replace(" - at ", " at ")
            faults.add((), "invalid", say("problem", "body.invalid", reason=reason))
        if stood_in is None:
            faults.raise_any()
        found: T = converted(stood_in, self.type, unit)
        return found


class _Says(msgspec.Struct):
    unit: Unit | None = None


_SAYS: dict[Encoding, Callable[[bytes], _Says]] = {
    "json": msgspec.json.Decoder(_Says).decode,
    "msgpack": msgspec.msgpack.Decoder(_Says).decode,
}


def _unit_said(body: bytes, encoding: Encoding) -> Unit | None:
    """The unit that a body gives its bare lengths; None where it gives none, or none that can be read."""
    if b"unit" not in body:
        return None
    try:
        return _SAYS[encoding](body).unit
    except (msgspec.MsgspecError, UnicodeDecodeError, RecursionError):
        return None


def refuse_keys_twice(body: bytes, encoding: Encoding) -> None:
    """Refuse an object with one key twice, of which the decoder would keep the last.

    A body that is written again as it came, spaces apart, has none: that is quicker than looking, and true of most.

    Args:
        body: What was decoded already.
        encoding: What it is in.

    Raises:
        MalformedBody: for the first such key.
    """
    if encoding == "json":
        again = _encode(_UNTYPED["json"](body))
        if again != body and again != msgspec.json.format(body, indent=-1):
            _scan_pairs(body.decode())
    elif _pack(_UNTYPED["msgpack"](body)) != body:
        msgpack.unpackb(body, object_pairs_hook=_refuse_pairs, strict_map_key=False, use_list=False)


def _refuse_pairs(pairs: list[tuple[str, Any]]) -> None:
    seen: set[object] = set()
    for key, _ in pairs:
        if key in seen:
            twice = json.dumps(key, default=str)
            raise MalformedBody(say("problem", "body.key-twice", key=twice))
        seen.add(key)


_scan_pairs = json.JSONDecoder(object_pairs_hook=_refuse_pairs).decode


def _refuse_constant(name: str) -> NoReturn:
    raise ValueError(f"{name} is not a JSON number")


def _big_int(digits: str) -> int | float:
    return int(digits) if len(digits) < 400 else float("inf")


def _read_untyped(body: bytes, encoding: Encoding) -> Any:
    try:
        return _UNTYPED[encoding](body)
    except msgspec.ValidationError:
        # Well-formed, but with a number beyond any range: the standard library reads it, to point at it.
        value = json.loads(body, parse_constant=_refuse_constant, parse_int=_big_int)
        json.dumps(value, ensure_ascii=False).encode()  # refuses lone surrogates, as msgspec does
        return value
