"""Keys given twice in a MessagePack map, of which a decoder keeps the last and tells nobody."""

import json

import msgspec

_FIXED = {0xCA: 4, 0xCB: 8, 0xCC: 1, 0xCD: 2, 0xCE: 4, 0xCF: 8, 0xD0: 1, 0xD1: 2, 0xD2: 4, 0xD3: 8}
_FIXED |= {0xD4: 2, 0xD5: 3, 0xD6: 5, 0xD7: 9, 0xD8: 17, 0xC0: 0, 0xC2: 0, 0xC3: 0}
_SIZED = {0xC4: (1, 0), 0xC5: (2, 0), 0xC6: (4, 0), 0xC7: (1, 1), 0xC8: (2, 1), 0xC9: (4, 1)}
_SIZED |= {0xD9: (1, 0), 0xDA: (2, 0), 0xDB: (4, 0)}
_MANY = {0xDC: (2, False), 0xDD: (4, False), 0xDE: (2, True), 0xDF: (4, True)}
_decode = msgspec.msgpack.Decoder().decode


class KeyTwiceError(ValueError):
    """A key given twice in one map or object. Its text is the key as JSON writes it."""

    def __init__(self, key: object) -> None:
        super().__init__(json.dumps(key, default=str))


def refuse_keys_twice(body: bytes) -> None:
    """Refuse a body in which a map has one key twice.

    Args:
        body: One value, which was decoded already: well-formed, and no deeper than a decoder goes.

    Raises:
        KeyTwiceError: for the first such key.
    """
    _end(body, 0)


def _end(body: bytes, at: int) -> int:
    """Where the value that begins at a place ends."""
    first = body[at]
    at += 1
    if first < 0x80 or first >= 0xE0:
        return at
    if first < 0xA0:
        return _end_of_many(body, at, first & 0x0F, first < 0x90)
    if first < 0xC0:
        return at + (first & 0x1F)
    if first in _FIXED:
        return at + _FIXED[first]
    if first in _SIZED:
        wide, more = _SIZED[first]
        return at + wide + int.from_bytes(body[at : at + wide], "big") + more
    wide, is_map = _MANY[first]
    return _end_of_many(body, at + wide, int.from_bytes(body[at : at + wide], "big"), is_map)


def _end_of_many(body: bytes, at: int, count: int, is_map: bool) -> int:
    seen: set[object] = set()
    for _ in range(count):
        if is_map:
            end = _end(body, at)
            key = _decode(body[at:end])
            if key in seen:
                raise KeyTwiceError(key)
            seen.add(key)
            at = end
        at = _end(body, at)
    return at
