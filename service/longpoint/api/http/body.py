"""Reading a body: fast when it is right, thorough when it is not.

The typed msgspec decoder does the work when all is well. Only when it refuses is the body read again, without
types, and compared with them to find everything that is wrong.
"""

import json
from collections.abc import Callable
from typing import Any, Generic, NoReturn, TypeVar

import msgpack
import msgspec

from longpoint.api.http.explain import explain, find_nul, stand_ins
from longpoint.api.http.negotiate import Encoding
from longpoint.api.http.problems import InvalidRequest, MalformedBody, refuse_any
from longpoint.lengths import Unit
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


class _Says(msgspec.Struct):
    unit: Unit | None = None


class BodyReader(Generic[T]):
    """Reads bodies into one type.

    Attributes:
        type: The type.
    """

    def __init__(self, type_: type[T]) -> None:
        self.type: Any = type_
        # What is sent to be stored under a house is read under the house's unit once that is known.
        self._unit_is_stored = getattr(type_, "unit_is_stored", False)

    def read(self, body: bytes, encoding: Encoding) -> T:
        """Decode a body.

        Args:
            body: As it came.
            encoding: What it is in.

        Raises:
            MalformedBody: when it cannot be read at all.
            InvalidRequest: when it can, but is not what is wanted; carries every fault.
        """
        if self._unit_is_stored:
            return self.read_under(Unit.IN, body, encoding)[0]
        return self._read(_unit_said(body, encoding), body, encoding)

    def read_under(self, unit: Unit | None, body: bytes, encoding: Encoding) -> tuple[T, Faults]:
        """A body that is to be stored under a house's unit, and the texts of it that cannot be read: others stand for
        them, so that all that is wrong can be told at once.

        Raises:
            MalformedBody: when it cannot be read at all.
            InvalidRequest: when it is not of the right form.
        """
        misread = Faults()
        try:
            return self._read(unit, body, encoding), misread
        except InvalidRequest:
            value = whole(self.type, _UNTYPED[encoding](body))
            stood_in = stand_ins(self.type, value, misread, unit)
            if stood_in is None:
                raise
            return converted(stood_in, self.type, unit), misread

    def _read(self, unit: Unit | None, body: bytes, encoding: Encoding) -> T:
        try:
            value: T = decoded(_TYPED[encoding](self.type, unit), _UNTYPED[encoding], body, self.type, unit)
            refuse_keys_twice(body, encoding)
        except (msgspec.MsgspecError, UnicodeDecodeError, RecursionError, KeyTwiceError) as refusal:
            self._refuse(body, encoding, unit, refusal)
        faults = Faults()
        if _NUL[encoding] in body:
            find_nul(_UNTYPED[encoding](body), faults)
        tell = getattr(value, "tell", None)
        if tell is not None and not self._unit_is_stored:  # those are told of with their house
            tell(faults)
        refuse_any(faults)
        return value

    def _refuse(self, body: bytes, encoding: Encoding, unit: Unit | None, refusal: Exception) -> NoReturn:
        if not body:
            raise MalformedBody(f"The body is empty; send {_NAMES[encoding]}.")
        if isinstance(refusal, KeyTwiceError):
            raise MalformedBody(f"The body gives {refusal} twice in one object; send each key once.")
        try:
            value = _read_untyped(body, encoding)
            faults = Faults()
            explain(self.type, value, faults, unit)
            if not faults:
                # The types know something the explanation does not: pass their own words on.
                reason, _, path = str(refusal).partition(" - at ")
                faults.add((), "invalid", f"{reason} at {path.strip('`')}." if path else f"{reason}.")
        except UnicodeDecodeError as error:
            raise MalformedBody(f"The body is not valid UTF-8: {error.reason}.") from refusal
        except RecursionError:
            raise MalformedBody("The body is nested too deeply to be a request of this service.") from refusal
        except (msgspec.DecodeError, ValueError) as error:
            raise MalformedBody(f"The body is not valid {_NAMES[encoding]}: {error}.") from refusal
        refuse_any(faults)
        raise AssertionError("unreachable") from refusal


def _unit_said(body: bytes, encoding: Encoding) -> Unit | None:
    """The unit that a body gives its bare lengths; None where it gives none, or none that can be read."""
    if b"unit" not in body:
        return None
    try:
        return _SAYS[encoding](body).unit
    except (msgspec.MsgspecError, UnicodeDecodeError, RecursionError):
        return None


_SAYS: dict[Encoding, Callable[[bytes], _Says]] = {
    "json": msgspec.json.Decoder(_Says).decode,
    "msgpack": msgspec.msgpack.Decoder(_Says).decode,
}


class KeyTwiceError(ValueError):
    """A key given twice in one object. Its text is the key as JSON writes it."""

    def __init__(self, key: object) -> None:
        super().__init__(json.dumps(key, default=str))


def refuse_keys_twice(body: bytes, encoding: Encoding) -> None:
    """Refuse an object with one key twice, of which the decoder would keep the last.

    A body that is written again as it came, spaces apart, has none: that is quicker than looking, and true of most.

    Args:
        body: What was decoded already.
        encoding: What it is in.

    Raises:
        KeyTwiceError: for the first such key.
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
            raise KeyTwiceError(key)
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
