"""A sentence to be said: its key and its values, put into words where the answer is written."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any, ClassVar, Protocol

from longpoint.texts.catalog import COUNT, stretches, words

_FINEST_TAPE_FRACTION = 64


class Speaks(Protocol):
    """Whoever writes an answer: gives the lengths of a sentence their words, in the answer's unit and rounding."""

    def spoken(self, lengths: Sequence[Any], /) -> Sequence[str]:
        """Lengths in inches, all those of one sentence, as that has them."""


class Sentence:
    """What is to be said. On the wire it is text.

    `a + b` says one after the other; b may be None.

    Attributes:
        kind: what it is: a problem, a finding, an offer, a note, a caution.
        key: its name in the catalog.
        values: what goes into it, each by its name: lengths in inches, numbers, names, lists of them, sentences.
        then: what is said after it.
    """

    __slots__ = ("key", "kind", "then", "values")

    def __init__(
        self,
        kind: str,
        key: str,
        values: tuple[tuple[str, Any], ...] = (),
        then: tuple[Sentence, ...] = (),
    ) -> None:
        self.kind = kind
        self.key = key
        self.values = values
        self.then = then

    def __eq__(self, other: object) -> bool:
        return isinstance(other, Sentence) and self._parts == other._parts

    def __hash__(self) -> int:
        return hash(self._parts)

    @property
    def _parts(self) -> tuple[Any, ...]:
        return self.kind, self.key, self.values, self.then

    def __reduce__(self) -> tuple[type[Sentence], tuple[Any, ...]]:
        return Sentence, self._parts

    def __add__(self, other: Sentence | None) -> Sentence:
        if other is None:
            return self
        following = Sentence(other.kind, other.key, other.values)
        return Sentence(self.kind, self.key, self.values, (*self.then, following, *other.then))

    def __repr__(self) -> str:
        return f"Sentence{self._parts!r}"

    def __str__(self) -> str:
        return self.written(SPOKEN)

    def written(self, write: Speaks) -> str:
        """The sentence in words."""
        said = _filled(self.kind, self.key, self.values, write) if self.values else words(self.kind, self.key)
        return " ".join([said, *(one.written(write) for one in self.then)]) if self.then else said

    @classmethod
    def schema(cls) -> dict[str, Any]:
        """Its JSON Schema."""
        return {"type": "string"}


def say(kind: str, key: str, /, **values: Any) -> Sentence:
    """A sentence of the catalog with its values, each by the name of its place there."""
    return Sentence(kind, key, tuple(values.items()))


def _filled(kind: str, key: str, values: tuple[tuple[str, Any], ...], write: Speaks) -> str:
    given = dict(values)
    count = given.get(COUNT)
    cut = stretches(kind, key, None if count is None else 1 if count == 1 else 2)
    lengths = [given[name] for _, name, form in cut if name and not form and _is_length(given[name])]
    spoken = iter(write.spoken(lengths) if lengths else ())
    said: list[str] = []
    for before, name, form in cut:
        said.append(before)
        if name:
            value = given[name]
            said.append(_in_words(value, form, write) if form or not _is_length(value) else next(spoken))
    return "".join(said)


_NO_LENGTHS = (str, int, tuple, Sentence)


def _is_length(value: object) -> bool:
    return not isinstance(value, _NO_LENGTHS)


def _in_words(value: Any, form: str, write: Speaks) -> str:
    """A value that is no length; of a list, the form is what stands before its last: a word, or another mark."""
    if isinstance(value, Sentence):
        return value.written(write)
    if not isinstance(value, tuple):
        return format(value, form)
    each = [_in_words(one, "", write) for one in value]
    if form.isalpha() and len(each) > 1:
        each[-2:] = [f"{each[-2]} {form} {each[-1]}"]
        form = ""
    return f"{'' if form.isalpha() else form or ','} ".join(each)


class _Spoken:
    """Says lengths in inches: a tape's fraction as such, anything else to a thousandth."""

    by_kind: ClassVar[dict[type, Any]] = {}

    def __call__(self, value: Any) -> Any:
        raise TypeError(f"{value!r} is to be said in a sentence only")

    def plain(self, value: Any) -> str:
        return self.spoken([value])[0]

    def spoken(self, lengths: Sequence[Any]) -> list[str]:
        return [_inches(value) for value in lengths]


SPOKEN = _Spoken()
"""Says lengths where no house says how."""


def _inches(value: Any) -> str:
    above, below = value.as_integer_ratio()
    if isinstance(value, float) or _FINEST_TAPE_FRACTION % below:
        return f"{float(value):.3f} in"
    whole, rest = divmod(abs(above), below)
    number = f"{whole} {rest}/{below}" if whole and rest else f"{rest}/{below}" if rest else f"{whole}"
    return f"{'-' if above < 0 else ''}{number} in"
