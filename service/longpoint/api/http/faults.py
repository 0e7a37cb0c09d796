"""Gathering what is wrong with a request, so that a caller hears all of it in one answer."""

import difflib
from collections.abc import Iterable, Sequence
from typing import Self

from longpoint.api.http.problems import Fault, Problem

Path = Sequence[str | int]
"""Keys and indexes from the top of a body down to one value in it."""

MOST_FAULTS = 500
"""How many faults one answer lists; the detail says when there were more."""


def pointer(path: Path) -> str:
    """The RFC 6901 JSON pointer of a path."""
    return "".join("/" + str(step).replace("~", "~0").replace("/", "~1") for step in path)


def nearest(value: object, choices: Iterable[object]) -> str:
    """A guess at what was meant, as a sentence to put after another; "" when nothing is near."""
    near = difflib.get_close_matches(str(value)[:100], [str(choice) for choice in choices], n=1)
    return f' Was "{near[0]}" meant?' if near else ""


class Faults:
    """Gathers faults; raises them all at once.

    >>> faults = Faults()
    >>> faults.add(("openings", 2, "reveal"), "too-wide", "The reveal is wider than the jamb allows.")
    >>> faults.found[0].pointer
    '/openings/2/reveal'
    """

    def __init__(self) -> None:
        self.found: list[Fault] = []
        self.omitted = 0

    def __bool__(self) -> bool:
        return bool(self.found)

    @property
    def count(self) -> int:
        """How many faults there are, listed or not."""
        return len(self.found) + self.omitted

    @property
    def full(self) -> bool:
        """Whether further faults are only counted, so that nothing need be said of them."""
        return len(self.found) >= MOST_FAULTS

    def add(self, path: Path, code: str, detail: str) -> None:
        """Note a fault in the body at a path of keys and indexes."""
        self.note(Fault(code=code, detail=detail, pointer=pointer(path)))

    def note(self, fault: Fault) -> None:
        """Note a fault, in the body or elsewhere."""
        if self.full:
            self.omitted += 1
        else:
            self.found.append(fault)

    def raise_any(self) -> None:
        """Refuse the request if anything was noted.

        Raises:
            InvalidRequest: carrying every fault.
        """
        if self.found:
            raise InvalidRequest.of(self)


class InvalidRequest(Problem):
    status = 422
    slug = "invalid-request"
    title = "The request was read, but cannot be done as it stands"
    advice = (
        "Each of the errors says where (a JSON pointer into the body, a parameter or a header), what was "
        "wrong and what to send, measure or change. All that could be found is listed at once. Nothing "
        "was saved."
    )

    @classmethod
    def of(cls, faults: Faults) -> Self:
        """One refusal with every fault that was gathered."""
        detail = (
            faults.found[0].detail
            if faults.count == 1
            else f"{faults.count} things in the request are wrong."
        )
        if faults.omitted:
            detail += f" The first {len(faults.found)} are listed."
        return cls(detail, faults.found)
