"""Brings the characters people type to the few the grammar knows."""

import re
import unicodedata
from typing import Final

_MARKS: Final = str.maketrans(
    {
        **dict.fromkeys("′’‘ʹ", "'"),
        **dict.fromkeys("″”“ʺ", '"'),
        **dict.fromkeys("⁄∕", "/"),
        **dict.fromkeys("‐‑‒–−", "-"),
        **dict.fromkeys("\t\u00a0\u2002\u2003\u2007\u2009\u202f", " "),
    }
)

# One character (½), or superscript over subscript (³⁄₁₆): the only way to set a sixteenth.
_BUILT_FRACTION: Final = re.compile("[¼½¾⅐-⅞]|[⁰¹²³⁴-⁹]+[⁄/][₀-₉]+")


def plain(text: str) -> str:
    """Return text in small letters and plain marks, spaces and ends of lines at its ends removed."""
    if not text.isascii():
        # Set apart on both sides, so that 30⅝ is not 305/8 and ½5 is not 1/25.
        text = _BUILT_FRACTION.sub(lambda built: f" {unicodedata.normalize('NFKC', built[0])} ", text)
        text = text.translate(_MARKS)
    return text.lower().replace("\t", " ").replace("''", '"').strip(" \r\n")
