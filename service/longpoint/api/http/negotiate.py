"""Which format to answer in (RFC 9110, section 12.5.1), and which a body is in."""

from functools import lru_cache
from typing import Literal

JSON = "application/json"
MSGPACK = "application/vnd.msgpack"
MSGPACK_SHORT = "application/msgpack"
CSV = "text/csv"
EVENTS = "text/event-stream"
BOTH = (JSON, MSGPACK, MSGPACK_SHORT)
"""What every computation reads and answers in."""
HTML, PDF, SVG = "text/html", "application/pdf", "image/svg+xml"
"""What sheets and drawings are answered in besides."""

Encoding = Literal["json", "msgpack"]


@lru_cache(maxsize=256)
def choose(accept: bytes, offers: tuple[str, ...]) -> str | None:
    """The offer a client likes best, the earliest among equals; None when it refuses them all.

    Args:
        accept: The Accept header as it came; empty when there was none.
        offers: Media types, the service's favorite first.
    """
    if not accept.strip():
        return offers[0]
    ranges: dict[str, float] = {}
    for part in accept.decode("latin-1").lower().split(","):
        name, parameters = _parse(part)
        ranges[name] = max(_number(parameters.get("q", "1")), ranges.get(name, 0.0))

    def quality(offer: str) -> float:
        """That of the most specific range that matches, 0 when none does."""
        matching = (offer, f"{offer.partition('/')[0]}/*", "*/*")
        return next((ranges[name] for name in matching if name in ranges), 0.0)

    best = max(offers, key=quality)
    return best if quality(best) > 0 else None


def _parse(text: str) -> tuple[str, dict[str, str]]:
    """A media type or range, and its parameters."""
    name, *parameters = (piece.strip() for piece in text.split(";"))
    pairs = (parameter.partition("=") for parameter in parameters)
    return name, {key.strip(): value.strip() for key, _, value in pairs}


def _number(quality: str) -> float:
    try:
        return min(max(float(quality), 0.0), 1.0)
    except ValueError:
        return 0.0


@lru_cache(maxsize=256)
def encoding_of(content_type: bytes) -> Encoding | None:
    """How a body of this Content-Type is encoded; None when the service does not read it."""
    name, parameters = _parse(content_type.decode("latin-1").lower())
    if name in (MSGPACK, MSGPACK_SHORT):
        return "msgpack"
    charset = parameters.get("charset", "utf-8").strip(' "')
    return "json" if name == JSON and charset in ("utf-8", "utf8") else None


@lru_cache(maxsize=64)
def is_csv(content_type: bytes) -> bool:
    """Whether a body of this Content-Type is CSV; it is read as UTF-8, whatever charset is said."""
    return _parse(content_type.decode("latin-1").lower())[0] == CSV
