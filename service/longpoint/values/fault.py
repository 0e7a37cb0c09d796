"""What is wrong with something, and where: one type from the place it is found to the answer that reports it."""

from __future__ import annotations

import difflib
from collections.abc import Iterable, Iterator, Sequence
from typing import Any, Self

import msgspec

from longpoint.texts import Sentence, say
from longpoint.values.renamed import renamed
from longpoint.values.wired import Wired, Writes

Path = Sequence[str | int]
"""Field names and indexes from the top of something down to one value in it."""

MOST_FAULTS = 500
"""How many faults one answer lists; the detail says when there were more."""


class Place(Wired):
    """Where in a body a value stands. On the wire it is an RFC 6901 JSON pointer.

    Attributes:
        steps: field names and indexes from the top.
    """

    __slots__ = ("steps",)

    def __init__(self, steps: Path = ()) -> None:
        self.steps = tuple(steps)

    def __eq__(self, other: object) -> bool:
        return isinstance(other, Place) and self.steps == other.steps

    def __hash__(self) -> int:
        return hash(self.steps)

    def __str__(self) -> str:
        return "".join("/" + str(step).replace("~", "~0").replace("/", "~1") for step in self.steps)

    def __repr__(self) -> str:
        return f"Place({self.steps!r})"

    def written(self, write: Writes) -> str:  # noqa: ARG002
        return str(self)

    @classmethod
    def schema(cls) -> dict[str, Any]:
        return {"type": "string", "format": "json-pointer"}


class Fault(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    """One thing that was wrong, where it was, and what to do about it.

    Attributes:
        code: A short stable name for the kind of fault, for programs.
        detail: A sentence for people: what was wrong and what to send instead.
        place: RFC 6901 JSON pointer into the body; "" is the whole body. Absent when it is not in the body.
        parameter: The query or path parameter at fault, when it is one.
        header: The header field at fault, when it is one.
        row: The row of a CSV body, the first being 1; absent when it is not in one.
        column: The column of a CSV body, as the file names it.
    """

    code: str
    detail: Sentence
    place: Place | None = msgspec.field(default=None, name="pointer")
    parameter: str | None = None
    header: str | None = None
    row: int | None = None
    column: str | None = None

    @classmethod
    def at(cls, path: Path, code: str, detail: Sentence) -> Self:
        """A fault at a path."""
        return cls(code=code, detail=detail, place=Place(path))

    @property
    def path(self) -> tuple[str | int, ...]:
        """The steps to it; none where it is not in the body."""
        return self.place.steps if self.place else ()

    def moved(self, *path: str | int) -> Fault:
        """The same fault at another path."""
        return msgspec.structs.replace(self, place=Place(path))

    def under(self, *prefix: str | int) -> Fault:
        """The same fault, seen from further up."""
        return self.moved(*prefix, *self.path)


class Refusal(ValueError):  # noqa: N818 - the rooms refuse; what of it is an error, the caller decides
    """Something that cannot be done as it stands.

    Attributes:
        faults: every fault that is reported; all of them at once.
        omitted: how many more there were.
    """

    def __init__(self, faults: Iterable[Fault], omitted: int = 0) -> None:
        self.faults = tuple(faults)
        self.omitted = omitted
        super().__init__(self.faults, omitted)

    def __str__(self) -> str:
        return "; ".join(str(fault.detail) for fault in self.faults)

    def __reduce__(self) -> tuple[type[Refusal], tuple[tuple[Fault, ...], int]]:
        """Cross a process boundary with the faults whole."""
        return type(self), (self.faults, self.omitted)


class Faults:
    """Gathers faults; raises them all at once.

    >>> faults = Faults()
    >>> faults.add(("openings", 2, "hinges"), "out-of-range", say("problem", "door.hinges-out-of-range"))
    >>> str(faults.found[0].place)
    '/openings/2/hinges'
    """

    __slots__ = ("found", "omitted")

    def __init__(self, found: Iterable[Fault] = ()) -> None:
        self.found: list[Fault] = []
        self.omitted = 0
        for fault in found:
            self.note(fault)

    def __bool__(self) -> bool:
        return bool(self.found)

    def __iter__(self) -> Iterator[Fault]:
        return iter(self.found)

    @property
    def count(self) -> int:
        """How many faults there are, listed or not."""
        return len(self.found) + self.omitted

    @property
    def full(self) -> bool:
        """Whether further faults are only counted, so that nothing need be said of them."""
        return len(self.found) >= MOST_FAULTS

    def add(self, path: Path, code: str, detail: Sentence) -> None:
        """Note a fault at a path."""
        self.note(Fault.at(path, code, detail))

    def note(self, fault: Fault) -> None:
        """Note a fault, in the body or elsewhere."""
        if self.full:
            self.omitted += 1
        else:
            self.found.append(fault)

    def raise_any(self, refusal: type[Refusal] = Refusal) -> None:
        """Refuse if anything was noted.

        Raises:
            Refusal: carrying every fault.
        """
        if self.found:
            raise refusal(self.found, self.omitted)


def nearest(value: object, choices: Iterable[object]) -> Sentence | None:
    """A guess at what was meant, to say after something else; None when nothing is near."""
    names = [str(choice) for choice in choices]
    if not names:
        return None
    if known := renamed(value, names):
        return known
    near = difflib.get_close_matches(str(value)[:100], names, n=1)
    return say("hint", "values.nearest", name=near[0]) if near else None
