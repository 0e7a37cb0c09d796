"""The one error of this room."""

from typing import Literal

Code = Literal[
    "decimal-comma",
    "empty",
    "exponent",
    "improper-fraction",
    "inches-past-a-foot",
    "missing-unit",
    "mixed-units",
    "negative",
    "not-a-length",
    "not-finite",
    "too-fine",
    "too-large",
    "too-long",
    "too-many-digits",
    "unknown-unit",
    "zero-denominator",
]


class LengthError(ValueError):
    """A length that cannot be used.

    Attributes:
        code: a stable name of the fault, for programs.
        detail: a sentence for people: what was wrong and what to write instead.
    """

    def __init__(self, code: Code, detail: str) -> None:
        super().__init__(code, detail)  # both, so that the error survives a trip between processes
        self.code: Code = code
        self.detail = detail

    def __str__(self) -> str:
        return self.detail


def quoted(text: str) -> str:
    """Return text in quotation marks, fit to be shown: what does not print is escaped."""
    return "“" + "".join(c if c.isprintable() else ascii(c)[1:-1] for c in text) + "”"
