"""Texts in CSV that a spreadsheet would take for a formula: an apostrophe before them keeps them texts."""

import re

_FORMULA = re.compile(r"'*[=+\-@\t\r＝＋－＠]")
"""How such a text begins, and one that was kept from it before."""


def kept_as_text(text: str) -> str:
    """The text as a spreadsheet may read it."""
    return f"'{text}" if _FORMULA.match(text) else text


def as_it_was(text: str) -> str:
    """What `kept_as_text` was given."""
    return text[1:] if text.startswith("'") and _FORMULA.match(text) else text
