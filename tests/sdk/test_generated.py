"""What is generated follows the published document, and nothing in it is missing or invented."""

import inspect
import json
import subprocess
import sys
from pathlib import Path
from typing import Any, get_args

import msgspec
import pytest

from longpoint_sdk import AsyncClient, Client, Unit, calls, problems, types
from longpoint_sdk._async_client import BaseAsyncClient
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
    public = {name for name, made in vars(calls).items() if getattr(made, "__module__", "") == calls.__name__}
    assert public == set(OPERATIONS)


@pytest.mark.parametrize("name", sorted(OPERATIONS))
def test_the_twins_take_the_same(name: str) -> None:
    sync, twin, call = (inspect.signature(getattr(one, name)) for one in (Client, AsyncClient, calls))
    assert sync == twin
    assert list(sync.parameters.values())[1:] == list(call.parameters.values())
    assert inspect.getdoc(getattr(Client, name)) == inspect.getdoc(getattr(AsyncClient, name))


def test_an_exception_for_each_kind_of_problem() -> None:
    from longpoint.api.problems import Problem

    assert set(problems.KINDS) == {kind.type_uri() for kind in Problem.kinds.values()}


def test_the_units_are_the_services() -> None:
    assert set(get_args(Unit)) == set(DOCUMENT["components"]["schemas"]["Unit"]["enum"])


@pytest.mark.parametrize(
    ("name", "body"),
    [
        (name, example["value"])
        for name, (_, _, entry) in OPERATIONS.items()
        for example in entry.get("requestBody", {})
        .get("content", {})
        .get("application/json", {})
        .get("examples", {})
        .values()
    ],
)
def test_each_example_of_the_document_fits_its_struct_and_is_answered_in_its_own(
    client: Client, name: str, body: Any
) -> None:
    request = inspect.signature(getattr(calls, name), eval_str=True, locals={"types": types}).parameters[
        "request"
    ]
    struct = get_args(request.annotation)[0]
    typed = msgspec.convert(body, struct)
    call = getattr(calls, name)(typed)
    raw = client.send_raw(call)
    assert isinstance(raw.value, call.result)
    answered = set(json.loads(raw.content))
    assert answered <= set(call.result.__struct_fields__), "the answer has fields the struct lacks"
