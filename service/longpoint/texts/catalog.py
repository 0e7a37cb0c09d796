"""The catalog of sentences, read once, when the first of them is written."""

from __future__ import annotations

import io
from collections.abc import Iterator
from functools import cache
from gettext import GNUTranslations
from importlib import resources
from string import Formatter
from typing import NamedTuple

COUNT = "count"
"""The value by whose number a sentence takes its singular or its plural, where it has the two."""


class _Stretch(NamedTuple):
    """A stretch of a sentence.

    Attributes:
        words: What it begins with.
        name: The value that follows; None at the end.
        form: How that is written, where it is no length; "" where it says so itself.
    """

    words: str
    name: str | None
    form: str


@cache
def read() -> GNUTranslations:
    """The catalog. It takes a sixth of a second, most of it Babel, which a process that says nothing never needs."""
    from babel.messages.mofile import write_mo
    from babel.messages.pofile import read_po

    compiled = io.BytesIO()
    with resources.files(__package__).joinpath("en.po").open("rb") as file:
        write_mo(compiled, read_po(file, locale="en"))
    compiled.seek(0)
    return GNUTranslations(compiled)


@cache
def words(kind: str, key: str) -> str:
    """The words of a sentence without values.

    Raises:
        KeyError: when the catalog has no such sentence, or it has places for values.
    """
    cut = stretches(kind, key, None)
    if any(one.name for one in cut):
        raise KeyError(f"the {kind} {key} is said without its values")
    return "".join(one.words for one in cut)


@cache
def stretches(kind: str, key: str, count: int | None) -> tuple[_Stretch, ...]:
    """A sentence cut at its values.

    Args:
        count: what decides between its singular and its plural: 1, any other number, or None where it has but one form.

    Raises:
        KeyError: when the catalog has no such sentence.
    """
    catalog = read()
    found = catalog.pgettext(kind, key) if count is None else catalog.npgettext(kind, key, key, count)
    if found == key:
        raise KeyError(f"the catalog has no {kind} {key}")
    return tuple(_cut(found))


def _cut(sentence: str) -> Iterator[_Stretch]:
    for before, name, form, _ in Formatter().parse(sentence):
        yield _Stretch(before, name, form or "")
