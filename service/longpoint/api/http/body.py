"""Reading a body: fast when it is right, thorough when it is not.

The typed msgspec decoder does the work when all is well. Only when it refuses is the body read again, without
types, and compared with them to find everything that is wrong.
"""

import json
from collections.abc import Callable
from typing import Any, Generic, NoReturn, TypeVar

import msgspec

from longpoint.api.http.explain import explain, find_nul
from longpoint.api.http.faults import Faults
from longpoint.api.http.msgpack_keys import KeyTwiceError, refuse_keys_twice
from longpoint.api.http.negotiate import Encoding
from longpoint.api.http.problems import MalformedBody

T = TypeVar("T")
_encode = msgspec.json.Encoder().encode
_pack = msgspec.msgpack.Encoder().encode
_NAMES: dict[Encoding, str] = {"json": "JSON", "msgpack": "MessagePack"}
_UNTYPED: dict[Encoding, Callable[[bytes], Any]] = {
    "json": msgspec.json.Decoder().decode,
    "msgpack": msgspec.msgpack.Decoder().decode,
}


class BodyReader(Generic[T]):
    """Reads bodies into one wire type.

    Attributes:
        type: The wire type.
    """

    def __init__(self, type_: type[T]) -> None:
        self.type = type_
        self._json = msgspec.json.Decoder(type_)
        self._msgpack = msgspec.msgpack.Decoder(type_)

    def read(self, body: bytes, encoding: Encoding) -> T:
        """Decode a body.

        Raises:
            MalformedBody: when it cannot be read at all.
            InvalidRequest: when it can, but is not what is wanted; carries every fault.
        """
        try:
            if encoding == "json":
                value = self._json.decode(body)
                _refuse_duplicate_keys(body)
                suspicious = b"\\u0000" in body
            else:
                value = self._msgpack.decode(body)
                _refuse_duplicate_packed_keys(body)
                suspicious = b"\0" in body
        except (msgspec.MsgspecError, UnicodeDecodeError, RecursionError, KeyTwiceError) as refusal:
            self._refuse(body, encoding, refusal)
        if suspicious:
            faults = Faults()
            find_nul(_UNTYPED[encoding](body), faults)
            faults.raise_any()
        return value

    def _refuse(self, body: bytes, encoding: Encoding, refusal: Exception) -> NoReturn:
        if not body:
            raise MalformedBody(f"The body is empty; send {_NAMES[encoding]}.")
        if isinstance(refusal, KeyTwiceError):
            raise MalformedBody(f"The body gives {refusal} twice in one object; send each key once.")
        try:
            value = _read_untyped(body, encoding)
            faults = Faults()
            explain(self.type, value, faults)
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
        faults.raise_any()
        raise AssertionError("unreachable") from refusal


def _refuse_duplicate_keys(body: bytes) -> None:
    """Refuse an object with one key twice, of which the decoder would keep the last.

    A body that is written again just as it came has none: that is quicker than looking, and true of most.
    """
    if _encode(_UNTYPED["json"](body)) != body:
        _scan_pairs(body.decode())


def _refuse_duplicate_packed_keys(body: bytes) -> None:
    """The same for MessagePack."""
    if _pack(_UNTYPED["msgpack"](body)) != body:
        refuse_keys_twice(body)


def _refuse_duplicates(pairs: list[tuple[str, Any]]) -> None:
    if len(dict(pairs)) != len(pairs):
        seen: set[str] = set()
        for key, _ in pairs:
            if key in seen:
                raise KeyTwiceError(key)
            seen.add(key)


_scan_pairs = json.JSONDecoder(object_pairs_hook=_refuse_duplicates).decode


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
