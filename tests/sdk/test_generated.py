"""What is generated follows the published document, and nothing in it is missing or invented."""

import inspect
import json
import subprocess
import sys
from pathlib import Path
from typing import Any, get_args

import msgspec
import pytest

from longpoint_sdk import AsyncClient, Client, Fault, Unit, Versioned, calls, problems
from longpoint_sdk._async_client import BaseAsyncClient
from longpoint_sdk._call import encode
from longpoint_sdk._client import BaseClient

ROOT = Path(__file__).parents[2]
DOCUMENT: dict[str, Any] = json.loads((ROOT / "openapi/longpoint.json").read_text())
OPERATIONS = {
    entry["operationId"]: (method, path, entry)
    for path, methods in DOCUMENT["paths"].items()
    for method, entry in methods.items()
    if isinstance(entry, dict) and "operationId" in entry
}


def own_methods(client: type, base: type) -> set[str]:
    inherited = {name for name, _ in inspect.getmembers(base)}
    return {name for name, _ in inspect.getmembers(client) if not name.startswith("_")} - inherited


def test_the_generated_files_are_what_the_document_makes() -> None:
    done = subprocess.run(
        [sys.executable, "-m", "generator", "--check"],
        cwd=ROOT / "sdk",
        capture_output=True,
        text=True,
        check=False,
    )
    assert done.returncode == 0, done.stdout + done.stderr


def test_one_method_for_each_operation() -> None:
    assert own_methods(Client, BaseClient) == set(OPERATIONS)
    assert own_methods(AsyncClient, BaseAsyncClient) == set(OPERATIONS)
    public = {
        name
        for name, made in vars(calls).items()
        if getattr(made, "__module__", "").startswith(f"{calls.__name__}.")
    }
    assert public == set(OPERATIONS)


@pytest.mark.parametrize("name", sorted(OPERATIONS))
def test_the_twins_take_the_same(name: str) -> None:
    sync, twin, call = (inspect.signature(getattr(one, name)) for one in (Client, AsyncClient, calls))
    assert sync.parameters == twin.parameters
    assert sync.return_annotation == twin.return_annotation.removeprefix("Async")
    assert list(sync.parameters.values())[1:] == list(call.parameters.values())
    told, twins = (inspect.getdoc(getattr(one, name)) or "" for one in (Client, AsyncClient))
    assert told == twins.replace("await ", "").replace("async for", "for")


def test_an_exception_for_each_kind_of_problem() -> None:
    from longpoint.api.http.problems import Problem

    assert set(problems.KINDS) == {kind.type_uri() for kind in Problem.kinds.values()}


def test_a_fault_says_all_that_the_services_does() -> None:
    schema = DOCUMENT["components"]["schemas"]["Fault"]
    assert set(Fault.__struct_fields__) == set(schema["properties"])


def test_the_units_are_the_services() -> None:
    assert set(get_args(Unit)) == set(DOCUMENT["components"]["schemas"]["Unit"]["enum"])


EXAMPLES = [
    (name, example["value"])
    for name, (_, _, entry) in OPERATIONS.items()
    for example in entry.get("requestBody", {})
    .get("content", {})
    .get("application/json", {})
    .get("examples", {})
    .values()
]


def struct_of(name: str) -> Any:
    signature = inspect.signature(getattr(calls, name), eval_str=True)
    return get_args(signature.parameters["request"].annotation)[0]


@pytest.mark.parametrize(("name", "body"), EXAMPLES)
def test_each_example_of_the_document_fits_its_struct_and_nothing_is_lost(name: str, body: Any) -> None:
    typed = msgspec.convert(body, struct_of(name))
    assert msgspec.convert(msgspec.json.decode(encode(typed)), struct_of(name)) == typed
    written = msgspec.to_builtins(typed, enc_hook=str)
    assert set(body) >= set(written)


@pytest.mark.parametrize(("name", "body"), [(n, b) for n, b in EXAMPLES if "{" not in OPERATIONS[n][1]])
def test_each_example_is_answered_in_its_own_struct(client: Client, name: str, body: Any) -> None:
    call = getattr(calls, name)(msgspec.convert(body, struct_of(name)))
    reply = client.send_raw(call)
    value = reply.value.value if isinstance(reply.value, Versioned) else reply.value
    assert isinstance(value, call.result)
    no_field_is_missing(json.loads(reply.content), value)


def no_field_is_missing(answered: Any, value: Any) -> None:
    """Each field of the answer is a field of the struct it was read into, all the way down."""
    if isinstance(value, msgspec.Struct):
        fields = dict(zip(value.__struct_encode_fields__, value.__struct_fields__, strict=True))
        assert answered.keys() <= fields.keys(), type(value).__name__
        for name, inner in answered.items():
            no_field_is_missing(inner, getattr(value, fields[name]))
    elif isinstance(value, list | tuple):
        for one, other in zip(answered, value, strict=True):
            no_field_is_missing(one, other)
    elif isinstance(value, dict):
        for name, inner in answered.items():
            no_field_is_missing(inner, value[name])
