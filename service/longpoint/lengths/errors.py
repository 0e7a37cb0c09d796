"""The one error of this room."""

from typing import Literal

from longpoint.texts import Sentence
from longpoint.values.wired import Unreadable

Code = Literal[
    "decimal-comma",
    "empty",
    "exponent",
    "feet-or-inches",
    "improper-fraction",
    "inches-past-a-foot",
    "missing-unit",
    "mixed-units",
    "negative",
    "not-a-length",
    "not-finite",
    "not-on-a-tape",
    "too-fine",
    "too-large",
    "too-long",
    "too-many-digits",
    "unknown-unit",
    "wrong-type",
    "zero",
    "zero-denominator",
]


class LengthError(Unreadable):
    """A length that cannot be used."""

    code: Code

    def __init__(self, code: Code, detail: Sentence) -> None:
        super().__init__(code, detail)


def quoted(text: str) -> str:
    """Return text in quotation marks, fit to be shown: what does not print is escaped."""
    return "“" + "".join(c if c.isprintable() else ascii(c)[1:-1] for c in text) + "”"
