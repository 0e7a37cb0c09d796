"""No caller written by the last release is broken; and what would break one is found."""

import copy
import json
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest

from breaking import breaking
from longpoint.api.document.openapi import document

RELEASED = Path(__file__).parents[2] / "openapi/released"


def version(file: Path) -> tuple[int, ...]:
    return tuple(int(part) for part in file.stem.split("."))


def now() -> dict[str, Any]:
    return json.loads(json.dumps(document()))


def test_nothing_breaks_a_caller_of_the_last_release():
    last = max(RELEASED.glob("*.json"), key=version, default=None)
    if last is None:
        return  # nothing is released yet: there is nobody to break
    found = breaking(json.loads(last.read_text()), now())
    assert not found, f"against {last.name}: see 'Changing the API' in DEVELOPERS.md\n" + "\n".join(found)


def test_a_document_does_not_break_itself():
    assert breaking(now(), now()) == []


def schema(data: dict[str, Any], name: str) -> Any:
    return data["components"]["schemas"][name]


def operation(data: dict[str, Any], path: str, method: str = "post") -> Any:
    return data["paths"][path][method]


def remove_operation(data):
    del data["paths"]["/v1/stool"]


def rename_operation(data):
    operation(data, "/v1/stool")["operationId"] = "work_stool"


def need_a_parameter(data):
    schedules = operation(data, "/v1/schedules", "get")
    schedules["parameters"].append({"name": "x", "in": "query", "required": True, "schema": {}})


def drop_a_parameter(data):
    operation(data, "/v1/schedules", "get")["parameters"].pop()


def narrow_a_parameter(data):
    for one in operation(data, "/v1/schedules", "get")["parameters"]:
        if one["name"] == "limit":
            one["schema"]["maximum"] = 10


def ask_for_more_rights(data):
    operation(data, "/v1/stool")["security"] = [{"bearer": ["write"]}]


def drop_a_format(data):
    del operation(data, "/v1/stool")["requestBody"]["content"]["application/msgpack"]


def drop_an_answers_format(data):
    del operation(data, "/v1/stool")["responses"]["200"]["content"]["application/msgpack"]


def answer_otherwise(data):
    responses = operation(data, "/v1/stool")["responses"]
    responses["201"] = responses.pop("200")


def need_a_field(data):
    schema(data, "LengthsRequest")["required"].append("unit")


def drop_a_field(data):
    del schema(data, "LengthsRequest")["properties"]["unit"]


def shorten_a_list(data):
    schema(data, "LengthsRequest")["properties"]["lengths"]["maxItems"] = 5


def change_a_type(data):
    schema(data, "LengthsRequest")["properties"]["lengths"] = {"type": "string"}


def take_fewer_values(data):
    schema(data, "Unit")["enum"].pop()


def drop_an_answers_field(data):
    del schema(data, "Health")["properties"]["status"]


def drop_a_header(data):
    del operation(data, "/v1/schedules")["responses"]["201"]["headers"]["ETag"]


def change_an_answers_type(data):
    schema(data, "ScheduleLine")["properties"]["revision"] = {"type": "string"}


def let_an_answer_be_null(data):
    schema(data, "ScheduleLine")["properties"]["name"] = {"anyOf": [{"type": "string"}, {"type": "null"}]}


BREAKING: list[Callable[[dict[str, Any]], None]] = [
    remove_operation,
    rename_operation,
    need_a_parameter,
    drop_a_parameter,
    narrow_a_parameter,
    ask_for_more_rights,
    drop_a_format,
    drop_an_answers_format,
    answer_otherwise,
    need_a_field,
    drop_a_field,
    shorten_a_list,
    change_a_type,
    take_fewer_values,
    drop_an_answers_field,
    drop_a_header,
    change_an_answers_type,
    let_an_answer_be_null,
]


@pytest.mark.parametrize("change", BREAKING, ids=lambda change: change.__name__)
def test_what_would_break_a_caller_is_found(change):
    new = now()
    change(new)
    assert breaking(now(), new)


def add_an_operation(data):
    added = copy.deepcopy(operation(data, "/v1/stool"))
    data["paths"]["/v1/another"] = {"post": {**added, "operationId": "compute_another"}}


def add_a_field_to_an_answer(data):
    schema(data, "Health")["properties"]["more"] = {"type": "string"}


def take_another_field(data):
    schema(data, "LengthsRequest")["properties"]["more"] = {"type": "string"}


def take_more_values(data):
    schema(data, "Unit")["enum"].append("furlong")


def take_longer_lists(data):
    schema(data, "LengthsRequest")["properties"]["lengths"]["maxItems"] = 5000


def refuse_with_another_status(data):
    operation(data, "/v1/stool")["responses"]["451"] = {"description": "No."}


def ask_for_less_rights(data):
    operation(data, "/v1/stool")["security"] = []


@pytest.mark.parametrize(
    "change",
    [
        add_an_operation,
        add_a_field_to_an_answer,
        take_another_field,
        take_more_values,
        take_longer_lists,
        refuse_with_another_status,
        ask_for_less_rights,
    ],
    ids=lambda change: change.__name__,
)
def test_what_breaks_nobody_is_let_pass(change):
    new = now()
    change(new)
    assert breaking(now(), new) == []
