"""Says why a text outside the grammar is no length, and what to write instead."""

import re
from collections.abc import Callable
from typing import Final

from longpoint.lengths.errors import Code, LengthError, quoted
from longpoint.texts import Sentence, say

# Tried in order; the first that is found in the text names the fault.
_FAULTS: Final[tuple[tuple[re.Pattern[str], Code, Callable[[str], Sentence]], ...]] = (
    (
        re.compile(r"\b(?:nan|inf|infinity)\b"),
        "not-finite",
        lambda text: say("problem", "lengths.not-finite", text=text),
    ),
    (
        re.compile(r"^- *[0-9.]"),
        "negative",
        lambda text: say("problem", "lengths.negative", text=text),
    ),
    (
        re.compile(r"[0-9]\.?e[+-]?[0-9]"),
        "exponent",
        lambda text: say("problem", "lengths.exponent", text=text),
    ),
    (
        re.compile(r"[0-9],[0-9]|,[0-9]"),
        "decimal-comma",
        lambda text: say("problem", "lengths.decimal-comma", text=text),
    ),
    (
        re.compile(r"/[0-9]+[ -]+[0-9]+/[0-9]"),
        "not-a-length",
        lambda text: say("problem", "lengths.two-fractions", text=text),
    ),
    (
        re.compile(r"[0-9] *(?:mm|cm|m)\b.*[0-9]"),
        "mixed-units",
        lambda text: say("problem", "lengths.metric-and-more", text=text),
    ),
    (
        re.compile(r"[./][0-9]+ *(?:'|ft|foot|feet).*[0-9]"),
        "mixed-units",
        lambda text: say("problem", "lengths.split-feet", text=text),
    ),
    (
        re.compile(r"[0-9] *(?:[\"']|[a-z]).*[0-9] *(?:[\"']|[a-z])"),
        "mixed-units",
        lambda text: say("problem", "lengths.units-out-of-order", text=text),
    ),
)


def refusal(text: str, written: str) -> LengthError:
    """Return the error for text, whose plain form `written` the grammar does not know."""
    if not written:
        return LengthError("empty", say("problem", "lengths.empty"))
    for pattern, code, detail in _FAULTS:
        if pattern.search(written):
            return LengthError(code, detail(quoted(text)))
    return LengthError("not-a-length", say("problem", "lengths.not-a-length", text=quoted(text)))
