"""What the README shows is what the service answers."""

import json
import re
from pathlib import Path
from typing import Any

import httpx

README = (Path(__file__).parents[2] / "README.md").read_text()


def readme_request() -> dict[str, Any]:
    found = re.search(r"/v1/stool .*? -d '(\{.*?\})'", README, re.DOTALL)
    assert found, "the README shows a request to /v1/stool"
    body: dict[str, Any] = json.loads(found.group(1))
    return body


def at(answer: Any, path: str) -> str:
    for key, index in re.findall(r"(\w+)|\[(\d+)\]", path):
        answer = answer[key] if key else answer[int(index)]
    return answer["text"] if isinstance(answer, dict) else answer


async def test_the_readmes_request_gives_the_readmes_answer(client: httpx.AsyncClient) -> None:
    answer = await client.post("/v1/stool", json=readme_request())
    piece = answer.json()["pieces"][0]
    rows = re.findall(r"^\| `([^`]+)`.*? \| `([^`]+)` \|$", README, re.MULTILINE)
    assert len(rows) >= 5
    assert {path: at(piece, path) for path, _ in rows} == dict(rows)
    assert piece["marks"][2]["name"] == "center line of opening"


async def test_the_readmes_refusal_is_the_services(client: httpx.AsyncClient) -> None:
    answer = await client.post("/v1/stool", json={**readme_request(), "jamb_width": "30 5/8"})
    assert answer.status_code == 422
    assert [error["pointer"] for error in answer.json()["errors"]] == ["/jamb_width"]


def test_the_readme_opens_with_the_house() -> None:
    _title, first, *_ = README.split("\n\n")
    assert first.startswith("Longpoint does the arithmetic of trimming a house.")
