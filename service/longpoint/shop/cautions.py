"""Cautions: what the person should know before starting, by what is in the job."""

from __future__ import annotations

from longpoint.geometry.value import Value


class Caution(Value, frozen=True):
    """A caution. It informs and defers; it approves nothing.

    Attributes:
        code: a stable snake_case name.
        text: the sentence to print.
        source: where it comes from, or "common practice, no source".
        applies_to: marks of the openings or keys of the pieces it was raised for; empty for the whole job.
    """

    code: str
    text: str
    source: str
    applies_to: tuple[str, ...] = ()
