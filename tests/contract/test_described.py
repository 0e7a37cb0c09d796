"""Everything in the document says what it is, in words of its own."""

from collections.abc import Iterator
from typing import Any

from longpoint.api.document.openapi import document
from longpoint.api.document.records import read_doc
from longpoint.lengths import Length, MarkedLength
from longpoint.values import Value

DOCUMENT = document()
SCHEMAS = DOCUMENT["components"]["schemas"]
GENERIC = {Length.schema()["description"], MarkedLength.__doc__ or ""}
"""What the type of a length says of every length."""


def properties(schema: Any, at: str) -> Iterator[tuple[str, dict[str, Any]]]:
    """Every property of a schema, those of its options and items among them."""
    for name, found in schema.get("properties", {}).items():
        yield f"{at}.{name}", found
        yield from properties(found, f"{at}.{name}")
    for option in ("anyOf", "allOf", "oneOf"):
        for index, found in enumerate(schema.get(option, ())):
            yield from properties(found, f"{at}/{index}")
    for inner in ("items", "additionalProperties"):
        if isinstance(schema.get(inner), dict):
            yield from properties(schema[inner], f"{at}[]")


EVERY = [each for name, schema in SCHEMAS.items() for each in properties(schema, name)]
OPERATIONS = [entry for methods in DOCUMENT["paths"].values() for entry in methods.values()]


def test_every_property_is_described_where_it_stands():
    assert [at for at, found in EVERY if not found.get("description", "").strip()] == []


def test_no_property_says_only_what_its_type_says():
    kinds = GENERIC | {schema["description"] for schema in SCHEMAS.values()}
    assert [at for at, found in EVERY if found["description"] in kinds] == []


def test_no_description_is_a_word_or_two():
    assert [(at, found["description"]) for at, found in EVERY if len(found["description"].split()) < 3] == []


def test_every_schema_operation_and_parameter_is_described():
    assert [name for name, schema in SCHEMAS.items() if not schema.get("description")] == []
    assert [one["operationId"] for one in OPERATIONS if not (one.get("description") and one["summary"])] == []
    bare = [
        (one["operationId"], parameter["name"])
        for one in OPERATIONS
        for parameter in one["parameters"]
        if not parameter.get("description")
    ]
    assert bare == []


def test_every_described_attribute_is_a_field():
    """A field that was renamed takes its description along."""
    stray = [
        (record.__name__, name)
        for record in subclasses(Value)
        if record.__name__ in SCHEMAS
        for name in read_doc(record.__doc__ or "")[1]
        if name not in (*record.__struct_fields__, *record.__struct_encode_fields__)
    ]
    assert stray == []


def subclasses(type_: type) -> Iterator[Any]:
    """The records under this one."""
    for each in type_.__subclasses__():
        yield each
        yield from subclasses(each)
