"""Something stored, with the version it was read in."""

from __future__ import annotations

from typing import Generic, TypeVar

T = TypeVar("T")


class Versioned(Generic[T]):
    """Something stored, as it stood when it was read.

    Pass it as `if_match` to change what was read and nothing newer, as `if_none_match` to read it again only if it
    changed (it comes back itself when it did not). A change gives the next one, to change again.

    Attributes:
        value: What was read.
        etag: The version it was read in, as the service names it.
    """

    __slots__ = ("etag", "value")

    def __init__(self, value: T, etag: str) -> None:
        self.value = value
        self.etag = etag

    def __repr__(self) -> str:
        return f"Versioned({self.value!r}, {self.etag})"
