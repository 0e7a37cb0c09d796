"""A caller learns the trade's words from the document: each is explained, and each field that uses one links to it."""

import json
import re

import pytest

from longpoint.api.document.glossary import GLOSSARY, anchor, linked, terms_in
from longpoint.api.document.openapi import document

DOCUMENT = document()
FIELDS = [
    (f"{title}.{name}", name, field["description"])
    for title, schema in DOCUMENT["components"]["schemas"].items()
    for name, field in schema.get("properties", {}).items()
] + [
    (entry["operationId"], parameter["name"], parameter["description"])
    for methods in DOCUMENT["paths"].values()
    for entry in methods.values()
    for parameter in entry["parameters"]
]
LINK = re.compile(r"\[[^]]*\]\(/docs#([^)]*)\)")


def test_every_word_is_explained_in_a_sentence_or_two():
    for term, meaning in GLOSSARY.items():
        assert meaning.endswith("."), term
        assert 5 <= len(meaning.split()) <= 40, term
    assert list(GLOSSARY) == sorted(GLOSSARY)


def test_the_description_has_the_whole_glossary():
    for term, meaning in GLOSSARY.items():
        assert f"**{term}**: {meaning}" in DOCUMENT["info"]["description"]


def test_a_field_named_by_a_word_links_to_it():
    missing = [
        (at, term)
        for at, name, text in FIELDS
        for term in terms_in(name.replace("_", " "))
        if anchor(term) not in LINK.findall(text)
    ]
    assert missing == []


def test_a_field_described_by_a_word_links_to_it_once():
    for at, _, text in FIELDS:
        links = LINK.findall(text)
        assert len(links) == len(set(links)), at
        assert {anchor(term) for term in terms_in(LINK.sub("", text))} <= set(links), at


def test_no_link_leads_nowhere():
    assert set(LINK.findall(json.dumps(DOCUMENT))) == {anchor(term) for term in GLOSSARY}, "and each is used"


@pytest.mark.parametrize(
    ("text", "name", "expected"),
    [
        ("Two horns.", "", "Two [horns](/docs#glossary-horn)."),
        ("The name is `horn`.", "", "The name is `horn`."),
        ("Its tip.", "long_point", "Its tip. See [long point](/docs#glossary-long-point)."),
        (
            "The side casing.",
            "casing",
            "The [side casing](/docs#glossary-side-casing). See [casing](/docs#glossary-casing).",
        ),
        ("Hornbeam.", "", "Hornbeam."),
    ],
)
def test_how_a_text_is_linked(text, name, expected):
    assert linked(text, name) == expected
