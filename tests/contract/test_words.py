"""The trade's words: one word for a thing, one thing for a word."""

import ast
import json
import re
from collections import defaultdict
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import httpx
import pytest

ROOT = Path(__file__).parents[2]
SERVICE = ROOT / "service" / "longpoint"
DOCUMENT: dict[str, Any] = json.loads((ROOT / "openapi" / "longpoint.json").read_text(encoding="utf-8"))

# What is banned, and where: in a field's name or a value of an enumeration, in a key or path, in prose.
BANNED = {
    r"\bparts?\b": "field",
    r"remnant|foot_style|leg_height|sill_casing|casing_(leg|head|sill)": "field prose",
    r"mitre|labour|colour|neighbour|moulded|levelling|favourite|behaviour": "field key prose",
    r"(centi|milli)metre|catalogue": "field key prose",
    r"^(swing|tilt|lights)$": "field",
    r"saw-sheet|yard-list|fitting-sheet|piece-labels": "key prose",
    r"casing (leg|sill)\b|leg height|levelling strip|part off": "prose",
    r"\bfitted\b": "field",
    r"\bfitted\b|\b[Ff]itting (and|sheet)|bear in mind|\b[Tt]old\b(?! apart)": "document",
    r"[Rr]eleases? (a|the) (stick|claim)": "prose",
    r"^(Count|In all|Mind|Take care)$|, in all$": "prose",  # heads of columns and notes on sheets
}
EXCEPTIONS = {
    "schedules/words.py": "what 0.1.0 stored is renamed from its old names",
    "schedules/rewording.py": "the columns of 0.1.0 are renamed from their old names",
    "values/renamed.py": "a problem says what an old name is called now",
    "schedules/migrations": "a migration speaks of the tables as they were",
    "lengths/": "lengths are read in both spellings of a unit",
}


def fields() -> Iterator[str]:
    for schema in DOCUMENT["components"]["schemas"].values():
        yield from schema.get("properties", {})
        yield from (str(one) for one in schema.get("enum", ()))


def prose_of_the_document(node: Any = DOCUMENT) -> Iterator[str]:
    if isinstance(node, dict):
        yield from (node[name] for name in ("description", "summary") if isinstance(node.get(name), str))
        for inner in node.values():
            yield from prose_of_the_document(inner)
    elif isinstance(node, list):
        for inner in node:
            yield from prose_of_the_document(inner)


def prose_of_the_service() -> Iterator[tuple[str, str]]:
    for path in sorted(SERVICE.rglob("*.py")):
        name = str(path.relative_to(SERVICE))
        if any(name.startswith(one) for one in EXCEPTIONS):
            continue
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            if isinstance(node, ast.Constant) and isinstance(node.value, str):
                yield f"{name}:{node.lineno}", node.value


@pytest.mark.parametrize(("phrase", "places"), BANNED.items())
def test_a_banned_word_stands_nowhere(phrase: str, places: str) -> None:
    found = []
    if "field" in places:
        found += [name for name in fields() if re.search(phrase, name)]
    if "key" in places:
        found += [path for path in DOCUMENT["paths"] if re.search(phrase, path)]
    if "document" in places:
        found += [text for text in prose_of_the_document() if re.search(phrase, text)]
    if "prose" in places:
        found += [text for text in prose_of_the_document() if re.search(phrase, text)]
        found += [f"{at} {text}" for at, text in prose_of_the_service() if re.search(phrase, text)]
    assert found == []


def test_no_two_public_classes_share_a_name() -> None:
    homes: dict[str, list[str]] = defaultdict(list)
    for path in SERVICE.rglob("*.py"):
        for node in ast.parse(path.read_text(encoding="utf-8")).body:
            if isinstance(node, ast.ClassDef) and not node.name.startswith("_"):
                homes[node.name].append(str(path.relative_to(SERVICE)))
    assert {name: found for name, found in homes.items() if len(found) > 1} == {}


@pytest.mark.parametrize(
    ("change", "said"),
    [
        ({"foot_style": "floor"}, '"foot_style" is called "bottom" now'),
        ({"bottom": "picture_frame"}, '"picture_frame" is called "casing" now'),
        (
            {"readings": {"jamb_width": "30 5/8 in", "leg_height": "40 in"}},
            '"leg_height" is called "jamb_height" now',
        ),
    ],
)
async def test_whoever_sends_an_old_name_reads_the_new_one(
    client: httpx.AsyncClient, change: dict[str, Any], said: str
) -> None:
    trim = {"casing": {"width": "2 1/2 in", "thickness": "5/8 in"}, "reveal": "3/16 in"}
    answer = await client.post("/v1/opening", json={"mark": "K1", "trim": trim, "readings": {}} | change)
    assert answer.status_code == 422
    assert said in answer.text.replace('\\"', '"')


@pytest.mark.parametrize(
    ("old", "new"),
    [
        ("saw-sheet", "stick-sheet"),
        ("yard-list", "material-list"),
        ("fitting-sheet", "opening-sheet"),
        ("piece-labels", "labels"),
    ],
)
async def test_the_address_of_an_old_sheet_says_the_new_one(
    client: httpx.AsyncClient, old: str, new: str
) -> None:
    answer = await client.post(f"/v1/sheets/{old}", json={})
    assert answer.status_code == 404
    assert f'called "{new}" now' in answer.json()["detail"]
    assert (await client.post(f"/v1/sheets/{new}", json={})).status_code == 422
