"""How much room a text takes in a drawing.

Drawings are lettered in a fixed-width face, so a text's extent is known without a font at hand: every common
one (DejaVu Sans Mono, Liberation Mono, Menlo, Courier, Consolas) advances 0.55 to 0.602 of its size.
"""

from __future__ import annotations

import unicodedata

FAMILY = "'DejaVu Sans Mono', Menlo, 'Liberation Mono', Consolas, monospace"
ADVANCE = 0.61
ASCENT, DESCENT = 0.95, 0.27
_TURNING = "\u202a\u202b\u202c\u202d\u202e\u2066\u2067\u2068\u2069"
_TAKE_OUT = str.maketrans("", "", _TURNING)


def unturned(text: str) -> str:
    """The text without the characters that turn what follows around: 37 1/2 must not read 2/1 73."""
    # Hardly any text has one, and to look for nine characters is far quicker than to go through a whole page.
    if text.isascii() or not any(one in text for one in _TURNING):
        return text
    return text.translate(_TAKE_OUT)


def width(text: str, size: float) -> float:
    """The widest that `text` comes out at `size`, in the drawing's units."""
    return _cells(text) * ADVANCE * size


def _cells(text: str) -> int:
    if text.isascii():
        return len(text)
    return sum(_character(c) for c in text)


def _character(character: str) -> int:
    if unicodedata.combining(character):
        return 0
    return 1 if unicodedata.east_asian_width(character) in "NaHA" else 2


def clipped(text: str, cells: int) -> str:
    """The text, cut with an ellipsis where it takes more than `cells` characters' room."""
    if _cells(text) <= cells:
        return text
    kept = text
    while kept and _cells(kept) > cells - 1:
        kept = kept[:-1]
    return kept.rstrip() + "…"
