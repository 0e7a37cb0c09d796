"""The catalog: every sentence that is said stands in it once, and everything in it is said."""

import ast
import re
from collections.abc import Iterator
from string import Formatter

import pytest
from babel.messages.catalog import Message
from babel.messages.pofile import read_po

from contract.test_words import BANNED
from longpoint.api.http.problems import Problem
from longpoint.texts.catalog import COUNT
from texts.uses import SERVICE, details, modules, uses

PO = SERVICE / "texts" / "en.po"
KINDS = ["problem", "finding", "offer", "note", "caution", "hint", "word"]
USES = list(uses())
PROBLEMS = frozenset(kind.__name__ for kind in Problem.kinds.values())

with PO.open("rb") as file:
    MESSAGES: list[Message] = [one for one in read_po(file, locale="en") if one.id]


def name_of(message: Message) -> tuple[str, str]:
    key = message.id if isinstance(message.id, str) else message.id[0]
    return str(message.context), key


def forms_of(message: Message) -> tuple[str, ...]:
    return (message.string,) if isinstance(message.string, str) else tuple(message.string)


def sentences() -> Iterator[tuple[str, str]]:
    for message in MESSAGES:
        for form in forms_of(message):
            yield " ".join(name_of(message)), form


def places_of(sentence: str) -> set[str]:
    return {name for _, name, _, _ in Formatter().parse(sentence) if name is not None}


def test_what_is_said_is_named_by_plain_text() -> None:
    assert [one.where for one in USES if one.kind is None or one.key is None or "**" in one.values] == []


def test_every_sentence_that_is_said_is_in_the_catalog_and_every_one_there_is_said() -> None:
    there = {name_of(message) for message in MESSAGES}
    said = {(one.kind, one.key) for one in USES}
    assert said - there == set()
    assert there - said == set()


def test_the_places_of_a_sentence_are_the_values_it_is_said_with() -> None:
    places = {name_of(one): set().union(*map(places_of, forms_of(one))) for one in MESSAGES}
    wrong = [
        (one.where, one.key, sorted(one.values ^ places[one.kind, one.key]))
        for one in USES
        if one.values != places[one.kind, one.key]
    ]
    assert wrong == []


def test_a_sentence_has_a_plural_where_it_goes_by_a_count_and_nowhere_else() -> None:
    for message in MESSAGES:
        forms = forms_of(message)
        assert (len(forms) == 2) == any(COUNT in places_of(form) for form in forms), name_of(message)


def test_no_sentence_is_there_twice() -> None:
    known: dict[str, str] = {}
    for name, sentence in sentences():
        if places_of(sentence) != {sentence.strip("{}")}:  # one that is all a value says nothing of its own
            assert known.setdefault(sentence, name) == name
    assert len({name_of(one) for one in MESSAGES}) == len(MESSAGES)


def test_a_key_says_of_what_and_then_what() -> None:
    """So that none is the sentence itself, which is how a key that is not there would read."""
    assert [key for _, key in map(name_of, MESSAGES) if not re.fullmatch(r"[a-z-]+\.[a-z0-9-]+", key)] == []


def test_the_catalog_is_in_order() -> None:
    names = [(KINDS.index(kind), key) for kind, key in map(name_of, MESSAGES)]
    assert names == sorted(names)


def test_every_sentence_has_its_own_words() -> None:
    for name, sentence in sentences():
        assert sentence.strip(), name
        assert sentence == sentence.strip(), name
        assert "  " not in sentence, name


@pytest.mark.parametrize("phrase", [phrase for phrase, places in BANNED.items() if "prose" in places])
def test_a_banned_word_stands_in_no_sentence(phrase: str) -> None:
    assert [name for name, sentence in sentences() if re.search(phrase, sentence)] == []


@pytest.mark.parametrize(
    "phrase",
    [
        r"\b(told|borne|bears|wants)\b",
        r"(isation|yse[sd]?|gnise[sd]?|nalise[sd]?)\b",
        r"\b(grey|centre|metre|towards|inwards|outwards|afterwards)\b",
        r"-\{",  # a length that would be below nothing
    ],
)
def test_a_sentence_is_in_plain_words_of_this_country(phrase: str) -> None:
    assert [(name, sentence) for name, sentence in sentences() if re.search(phrase, sentence)] == []


def test_no_sentence_is_written_where_it_is_said() -> None:
    found = list(details(PROBLEMS))
    assert len(found) > 250  # those that are looked at
    wrong = [
        where
        for where, node in found
        if isinstance(node, ast.JoinedStr) or (isinstance(node, ast.Constant) and isinstance(node.value, str))
    ]
    assert [one for one in wrong if not one.startswith("texts/")] == []


def test_the_rooms_that_say_something_print_no_lengths() -> None:
    """A sentence takes a length as it is: whoever writes the answer gives it its words."""
    found = [
        f"{name}:{node.lineno} {one.name}"
        for name, module in modules()
        if name.startswith(("geometry/", "stock/", "schedules/", "values/"))
        for node in ast.walk(module)
        if isinstance(node, ast.ImportFrom)
        for one in node.names
        if one.name in ("tape", "feet_inches", "spoken")
    ]
    assert found == []
