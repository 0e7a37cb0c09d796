"""The document says all that the service does: limits, refusals, examples, and nothing loose."""

import re
from collections.abc import Iterator
from typing import Any

import jsonschema_rs
import pytest

from longpoint.api.document.examples_schedule import SCHEDULE
from longpoint.api.document.openapi import document
from longpoint.api.http.negotiate import BOTH
from longpoint.api.http.problems import Problem
from stored import serving

DOCUMENT = document()
SCHEMAS = DOCUMENT["components"]["schemas"]
OPERATIONS = {
    entry["operationId"]: (path, method, entry)
    for path, methods in DOCUMENT["paths"].items()
    for method, entry in methods.items()
}
DRAWINGS = {"get_sticks_drawing", "get_opening_drawing"}
"""What is a picture and nothing else: its data is the opening and the cut list."""
every_operation = pytest.mark.parametrize("name", OPERATIONS)


def walk(node: Any) -> Iterator[Any]:
    """Every object and list below a node, itself included."""
    yield node
    for inner in node.values() if isinstance(node, dict) else node if isinstance(node, list) else ():
        yield from walk(inner)


def refs(node: Any) -> set[str]:
    """The names of the schemas a node refers to, directly or not."""
    found: set[str] = set()
    todo = [node]
    while todo:
        for each in walk(todo.pop()):
            name = each.get("$ref", "") if isinstance(each, dict) else ""
            if name.startswith("#/components/schemas/") and (last := name.rpartition("/")[2]) not in found:
                found.add(last)
                todo.append(SCHEMAS[last])
    return found


def taken(name: str) -> dict[str, Any] | None:
    """The schema of an operation's JSON body."""
    body = OPERATIONS[name][2].get("requestBody")
    return body["content"]["application/json"]["schema"] if body else None


def test_it_is_openapi_3_1():
    assert DOCUMENT["openapi"].startswith("3.1.")


def test_every_schema_is_a_schema():
    for schema in SCHEMAS.values():
        jsonschema_rs.meta.validate({"$schema": "https://json-schema.org/draft/2020-12/schema", **schema})
        jsonschema_rs.Draft202012Validator({**schema, "components": {"schemas": SCHEMAS}})


def test_every_reference_leads_somewhere():
    for node in walk(DOCUMENT):
        if isinstance(node, dict) and isinstance(node.get("$ref"), str):
            target: Any = DOCUMENT
            for step in node["$ref"].removeprefix("#/").split("/"):
                target = target[step]


@every_operation
def test_an_operation_is_named_verb_noun_and_explained(name):
    entry = OPERATIONS[name][2]
    assert re.fullmatch(r"[a-z]+(_[a-z]+)+", name)
    assert entry["summary"]
    assert entry["description"]
    assert entry["tags"]


@every_operation
def test_a_body_is_taken_and_given_in_both_encodings(name):
    entry = OPERATIONS[name][2]
    if "requestBody" in entry:
        assert set(entry["requestBody"]["content"]) - {"text/csv"} == set(BOTH)
        assert entry["requestBody"]["required"]
    success, *_ = (answer for status, answer in entry["responses"].items() if status.startswith("2"))
    if name in DRAWINGS:
        assert set(success["content"]) == {"image/svg+xml"}
        return
    if name == "get_job_events":
        assert set(success["content"]) == {"text/event-stream"}
        return
    assert "204" in entry["responses"] or set(BOTH) <= set(success["content"])
    assert "X-Request-Id" in success["headers"]


@every_operation
def test_every_field_that_comes_in_is_known_and_described(name):
    for schema in (SCHEMAS[each] for each in refs(taken(name) or {})):
        if schema.get("type") == "object":
            assert schema["description"], schema["title"]
            assert schema["additionalProperties"] is False, schema["title"]


@every_operation
def test_every_list_mapping_and_text_that_comes_in_is_bounded(name):
    for each in refs(taken(name) or {}):
        for node in walk(SCHEMAS[each]):
            if not isinstance(node, dict):
                continue
            if node.get("type") == "array":
                assert "maxItems" in node, (each, node)
            if node.get("type") == "string":
                assert "pattern" in node, (each, node, "a text must say that it takes no NUL")
                assert "maxLength" in node or not re.search(r"[*+]|,\}", node["pattern"]), (each, node)
            if node.get("type") == "object" and isinstance(node.get("additionalProperties"), dict):
                assert "maxProperties" in node, (each, node)


@every_operation
def test_a_choice_of_objects_has_a_discriminator(name):
    for node in walk([SCHEMAS[each] for each in refs(OPERATIONS[name][2])]):
        if isinstance(node, dict) and sum("$ref" in option for option in node.get("anyOf", [])) > 1:
            assert node["discriminator"]["mapping"]


@every_operation
def test_every_refusal_is_a_shared_problem(name):
    path, _, entry = OPERATIONS[name]
    refusals = {status: answer for status, answer in entry["responses"].items() if status >= "4"}
    expected = {"400", "406", "422", "500"}
    expected |= {"413", "415"} if "requestBody" in entry else set()
    expected |= {"404"} if "{" in path else set()
    assert expected <= set(refusals)
    for status, answer in refusals.items():
        assert answer == {"$ref": f"#/components/responses/Problem{status}"}


def test_every_kind_of_problem_is_documented():
    responses = DOCUMENT["components"]["responses"]
    for kind in Problem.kinds.values():
        shared = responses[f"Problem{kind.status}"]
        assert kind.type_uri() in shared["description"]
        assert list(shared["content"]) == ["application/problem+json"]


def test_keys_are_declared():
    assert DOCUMENT["components"]["securitySchemes"]["bearer"]["scheme"] == "bearer"


@pytest.fixture
async def service(sqlite_database):
    """The service over a fresh database."""
    async with serving(sqlite_database) as caller:
        yield caller


async def place(service, path: str) -> tuple[str, dict[str, str]]:
    """An address that exists for a path with parameters, and the headers to change what is there."""
    if "{" not in path:
        return path, {}
    # An opening is added to a house that has none, or its mark would be there already.
    house = SCHEDULE["empty" if path.endswith("/openings") else "measured"].request
    made = (await service.post("/v1/schedules", json=house)).json()
    path = path.replace("{schedule_id}", made["id"])
    if "{opening}" in path:
        listed = (await service.get(f"/v1/schedules/{made['id']}/openings")).json()
        path = path.replace("{opening}", listed["items"][0]["id"])
    await service.get(f"/v1/schedules/{made['id']}/cut-list")  # plans its sticks
    return path.replace("{lot}", "length").replace("{name}", "C1"), {"if-match": "*"}


@every_operation
async def test_every_body_has_examples_and_each_is_answered_as_said(service, name):
    path, method, entry = OPERATIONS[name]
    if "requestBody" not in entry:
        return
    examples = entry["requestBody"]["content"]["application/json"]["examples"]
    assert examples
    success = min(status for status in entry["responses"] if status.startswith("2"))
    content = entry["responses"][success]["content"]["application/json"]
    validator = jsonschema_rs.Draft202012Validator(
        {**content["schema"], "components": {"schemas": SCHEMAS}}, validate_formats=True
    )
    for key, example in examples.items():
        assert example["summary"]
        address, headers = await place(service, path)
        answer = await service.request(method, address, json=example["value"], headers=headers)
        assert answer.status_code == int(success), (key, answer.text)
        validator.validate(answer.json())
        if said := content.get("examples", {}).get(key):
            assert answer.json() == said["value"], f"the answer to {key} is not what its example says"
