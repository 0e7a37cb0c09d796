"""What a type of a field must say of itself to stand on the wire as something other than it is inside."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any, Protocol, Self

from longpoint.texts import Sentence, Speaks, say


class Unreadable(ValueError):  # noqa: N818 - said of the text, as a refusal is of the request
    """A text, or another value, that a field's type cannot take.

    Attributes:
        code: a stable name of the fault, for programs.
        detail: what was wrong and what to write instead.
    """

    def __init__(self, code: str, detail: Sentence) -> None:
        super().__init__(code, detail)  # both, so that the error survives a trip between processes
        self.code = code
        self.detail = detail

    def __str__(self) -> str:
        return str(self.detail)


class Writes(Speaks, Protocol):
    """Whoever writes an answer: gives lengths their text in the answer's unit and rounding.

    Attributes:
        by_kind: What writes the commonest kinds of number, so that it is soon found.
    """

    @property
    def by_kind(self) -> Mapping[type, Callable[[Any], Any]]: ...

    def __call__(self, value: Any, /) -> Any:
        """A length in inches as the wire carries it."""

    def plain(self, value: Any, /) -> str:
        """A length in inches as exact text."""


class Wired:
    """A type with a form of its own on the wire. The three methods are all that decoding, encoding, the document,
    storage, CSV columns and the SDK know of it."""

    __slots__ = ()

    @classmethod
    def read(cls, given: Any, unit: Any) -> Self:  # noqa: ARG003
        """The value that was sent; `unit` is that of lengths without one.

        Raises:
            Unreadable: saying what to write instead.
        """
        raise Unreadable("wrong-type", say("problem", "values.only-answered", type=cls.__name__))

    def written(self, write: Writes) -> Any:
        """What goes out."""
        raise NotImplementedError

    @classmethod
    def schema(cls) -> dict[str, Any]:
        """Its JSON Schema."""
        raise NotImplementedError
