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
    ranges = [_parse_range(part) for part in accept.decode("latin-1").lower().split(",") if part.strip()]
    best, best_quality = None, 0.0
    for offer in offers:
        quality = _quality(offer, ranges)
        if quality > best_quality:
            best, best_quality = offer, quality
    return best


def _parse_range(part: str) -> tuple[str, float]:
    name, *parameters = (piece.strip() for piece in part.split(";"))
    for parameter in parameters:
        key, _, value = parameter.partition("=")
        if key.strip() == "q":
            try:
                return name, min(max(float(value), 0.0), 1.0)
            except ValueError:
                return name, 0.0
    return name, 1.0


def _quality(offer: str, ranges: list[tuple[str, float]]) -> float:
    """The quality given by the most specific range that matches, 0 when none does."""
    kind = offer.partition("/")[0]
    found: dict[str, float] = {}
    for name, quality in ranges:
        found[name] = max(quality, found.get(name, 0.0))
    for name in (offer, f"{kind}/*", "*/*"):
        if name in found:
            return found[name]
    return 0.0


@lru_cache(maxsize=256)
def encoding_of(content_type: bytes) -> Encoding | None:
    """How a body of this Content-Type is encoded; None when the service does not read it."""
    name, *parameters = (piece.strip() for piece in content_type.decode("latin-1").lower().split(";"))
    if name in (MSGPACK, MSGPACK_SHORT):
        return "msgpack"
    if name != JSON:
        return None
    charsets = [
        value.strip(' "') for key, _, value in (p.partition("=") for p in parameters) if key == "charset"
    ]
    return "json" if all(charset in ("utf-8", "utf8") for charset in charsets) else None


@lru_cache(maxsize=64)
def is_csv(content_type: bytes) -> bool:
    """Whether a body of this Content-Type is CSV; it is read as UTF-8, whatever charset is said."""
    return content_type.decode("latin-1").lower().partition(";")[0].strip() == CSV
