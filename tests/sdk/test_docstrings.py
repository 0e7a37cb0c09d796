"""What is public says what it does, and the examples in what it says run as they stand."""

import ast
import inspect
import re
import textwrap
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import msgspec
import pytest

import longpoint_sdk
from longpoint_sdk import AsyncClient, Client, calls, problems, types

HEADINGS = r"(?:Attributes|Args|Returns|Raises|Example):"


def public() -> Iterator[tuple[str, Any]]:
    """Everything public that can have a docstring: modules, what they name, and the members of classes."""
    yield "longpoint_sdk", longpoint_sdk
    for module in (longpoint_sdk, types, calls, problems):
        names = getattr(module, "__all__", None) or [
            name for name, made in vars(module).items() if inspect.isclass(made)
        ]
        for name in names:
            made = getattr(module, name)
            if inspect.isclass(made) and made.__module__ == "builtins":
                continue  # an enumeration, which is any text at run time
            if inspect.ismodule(made) or inspect.isfunction(made):
                yield f"{module.__name__}.{name}", made
            elif inspect.isclass(made):
                yield f"{module.__name__}.{name}", made
                yield from members(f"{module.__name__}.{name}", made)


def members(of: str, cls: type) -> Iterator[tuple[str, Any]]:
    for name, member in inspect.getmembers(cls):
        if name.startswith("_") or name not in {key for base in cls.__mro__[:-1] for key in vars(base)}:
            continue
        if inspect.isfunction(member) or inspect.ismethod(member) or isinstance(member, property):
            yield f"{of}.{name}", member


PUBLIC = dict(public())


def words(text: str) -> str:
    return re.sub(r"[^a-z0-9]", "", text.lower())


def test_all_of_the_sdk_is_looked_at() -> None:
    assert len(PUBLIC) > 300
    assert {
        "longpoint_sdk.Client.replace_opening",
        "longpoint_sdk.Pages.pages",
        "longpoint_sdk.types.Trim",
    } <= {*PUBLIC}


@pytest.mark.parametrize("name", PUBLIC)
def test_what_is_public_says_more_than_its_name(name: str) -> None:
    own = PUBLIC[name].__doc__ or ""
    first = re.split(rf"\n\s*{HEADINGS}", own)[0].strip()
    assert len(first.split()) >= 2, name
    assert words(first) != words(name.rpartition(".")[2]), name
    assert first[0].isupper() or first[0] in "`'\"", name
    assert first.rstrip("`").endswith((".", "?", "!", ")", '"', ":")) or "\n" in first, name


@pytest.mark.parametrize("name", sorted(calls.__all__))
def test_a_method_tells_of_all_its_arguments(name: str) -> None:
    method = getattr(Client, name)
    told = re.findall(r"^ {4}(\w+): \S", inspect.getdoc(method) or "", re.MULTILINE)
    assert set(inspect.signature(method).parameters) - {"self"} <= set(told)


@pytest.mark.parametrize("kind", ["types"])
def test_what_is_told_of_a_field_is_told_of_one_it_has(kind: str) -> None:
    for name in getattr(longpoint_sdk, kind).__all__:
        made = getattr(types, name)
        if inspect.isclass(made) and issubclass(made, msgspec.Struct):
            _, _, told = (inspect.getdoc(made) or "").partition("Attributes:\n")
            named = set(re.findall(r"^ {4}(\w+): ", told, re.MULTILINE))
            assert named <= set(made.__struct_encode_fields__), name


def example(method: Any) -> str:
    _, _, text = (inspect.getdoc(method) or "").partition("Example:\n")
    return textwrap.dedent(text)


EXAMPLES = [name for name in sorted(calls.__all__) if example(getattr(Client, name))]
TRIM = types.Trim(casing=types.Casing(width="2 1/2 in", thickness="5/8 in"), reveal="3/16 in")
READINGS = types.Readings(jamb_width="30 5/8 in", jamb_height="46 1/4 in")
K1 = types.HouseOpening(mark="K1", trim="plain", bottom="casing", readings=READINGS)
STICKS = [types.Stick(length="14 ft", price="16.10")]
KEPT = types.NewSchedule(
    name="Heron Cottage",
    trim_specs={"plain": TRIM},
    openings=[K1],
    stock=[types.StockForSale(profile="casing", sticks=STICKS)],
)
ASKED: dict[str, Any] = {
    "trim_specs": {"plain": TRIM},
    "openings": [K1],
    "stock": [types.Stock(profile="casing", sticks=STICKS)],
}
TABLE = "mark,trim,bottom,jamb width,jamb height\nK2,plain,casing,24 in,46 1/4 in\n"


def given(client: Any, schedule_id: str) -> dict[str, Any]:
    """What the examples take for granted."""
    return {
        **vars(longpoint_sdk),
        "Path": Path,
        "client": client,
        "schedule_id": schedule_id,
        "house": types.CutListRequest(**ASKED),
        "labels": types.LabelsRequest(**ASKED),
    }


@pytest.fixture
def in_a_folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(tmp_path)
    Path("openings.csv").write_text(TABLE)


@pytest.mark.usefixtures("in_a_folder")
@pytest.mark.parametrize("name", EXAMPLES)
def test_an_example_runs(client: Client, name: str) -> None:
    kept = client.create_schedule(KEPT)
    exec(compile(example(getattr(Client, name)), name, "exec"), given(client, kept.value.id))


@pytest.mark.usefixtures("in_a_folder")
@pytest.mark.parametrize("name", EXAMPLES)
async def test_its_async_twin_runs(async_client: AsyncClient, name: str) -> None:
    kept = await async_client.create_schedule(KEPT)
    code = compile(example(getattr(AsyncClient, name)), name, "exec", flags=ast.PyCF_ALLOW_TOP_LEVEL_AWAIT)
    running = eval(code, given(async_client, kept.value.id))
    if running is not None:
        await running
