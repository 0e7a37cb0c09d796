"""The answers that the reference shows are the service's own, and still what it says."""

import json
from typing import Any

import jsonschema_rs

from longpoint.api.document.openapi import document
from reference_answers import FILE, answers

DOCUMENT = document()
KEPT: dict[str, Any] = json.loads(FILE.read_text(encoding="utf-8"))
OPERATIONS = {
    entry["operationId"]: (path, entry)
    for path, methods in DOCUMENT["paths"].items()
    for entry in methods.values()
}
CHANGING = {"check_live", "check_ready"}
"""What is not the same at any two times; so is all that is stored, with its ids and its times."""


def test_every_operation_has_an_answer():
    assert set(KEPT) == {*OPERATIONS, "refused"}


def test_every_answer_is_as_the_document_says():
    for name, (_, entry) in OPERATIONS.items():
        answer = KEPT[name]
        content = entry["responses"][str(answer["status"])].get("content", {})
        if "body" in answer:
            schema = {**content["application/json"]["schema"], "components": DOCUMENT["components"]}
            jsonschema_rs.Draft202012Validator(schema, validate_formats=True).validate(answer["body"])
        else:
            assert bool(content) == ("file" in answer), name


async def test_what_is_computed_is_answered_so_now():
    """Where this fails, `PYTHONPATH=service:tests python tests/reference_answers.py` writes them again."""
    now = await answers()
    for name, (path, _) in OPERATIONS.items():
        if "/schedules" not in path and "/jobs/" not in path and name not in CHANGING:
            assert steady(now[name]) == steady(KEPT[name]), name
    assert steady(now["refused"]) == steady(KEPT["refused"])


def steady(value: Any) -> Any:
    """A value without what is never the same."""
    if isinstance(value, dict):
        return {name: steady(inner) for name, inner in value.items() if name not in ("seconds", "request_id")}
    return [steady(each) for each in value] if isinstance(value, list) else value
