"""Says why a text outside the grammar is no length, and what to write instead."""

import re
from typing import Final

from longpoint.lengths.errors import Code, LengthError, quoted

_HINT = "Write it like 30 5/8 in, 2 ft 6-5/8 in or 778 mm."

# Tried in order; the first that is found in the text names the fault.
_FAULTS: Final[tuple[tuple[re.Pattern[str], Code, str], ...]] = (
    (
        re.compile(r"\b(?:nan|inf|infinity)\b"),
        "not-finite",
        "{text} is not a finite number. Measure the length and write it with its unit.",
    ),
    (
        re.compile(r"^- *[0-9.]"),
        "negative",
        "{text} is negative. A length is zero or more: drop the sign, or check the readings it came from.",
    ),
    (
        re.compile(r"[0-9]\.?e[+-]?[0-9]"),
        "exponent",
        "{text} is written with an exponent. Write the number out, like 30.625 in.",
    ),
    (
        re.compile(r"[0-9],[0-9]|,[0-9]"),
        "decimal-comma",
        "{text} has a comma, which may mark decimals or thousands. Write a point and no thousands mark.",
    ),
    (
        re.compile(r"/[0-9]+[ -]+[0-9]+/[0-9]"),
        "not-a-length",
        "{text} has two fractions. Write one whole number and one fraction, like 30 5/8 in.",
    ),
    (
        re.compile(r"[0-9] *(?:mm|cm|m)\b.*[0-9]"),
        "mixed-units",
        "{text} has a metric unit and a further number. Write the whole length in one unit, like 1200 mm.",
    ),
    (
        re.compile(r"[./][0-9]+ *(?:'|ft|foot|feet).*[0-9]"),
        "mixed-units",
        "{text} has split feet with a number after them. Write whole feet and then inches, or feet alone.",
    ),
    (
        re.compile(r"[0-9] *(?:[\"']|[a-z]).*[0-9] *(?:[\"']|[a-z])"),
        "mixed-units",
        "{text} has units in no order read here. Write whole feet and then inches, or one unit alone.",
    ),
)


def refusal(text: str, written: str) -> LengthError:
    """Return the error for text, whose plain form `written` the grammar does not know."""
    if not written:
        return LengthError("empty", f"The length is empty. {_HINT}")
    for pattern, code, detail in _FAULTS:
        if pattern.search(written):
            return LengthError(code, detail.format(text=quoted(text)))
    return LengthError("not-a-length", f"{quoted(text)} does not read as a length. {_HINT}")
