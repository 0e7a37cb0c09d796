"""Every stored thing is read as the document says, over a database."""

from typing import Any

import httpx
import jsonschema_rs

from longpoint.api.document.openapi import document
from stored import serving

DOCUMENT = document()
STORED = {
    entry["operationId"]: (path, method, entry)
    for path, methods in DOCUMENT["paths"].items()
    for method, entry in methods.items()
    if path.startswith("/v1/schedules")
}


async def fill(service: httpx.AsyncClient) -> dict[str, str]:
    """The house of the examples with one opening and one lot on hand; gives what stands for the path's parameters."""
    examples = STORED["create_schedule"][2]["requestBody"]["content"]["application/json"]["examples"]
    made = await service.post("/v1/schedules", json=examples["measured"]["value"])
    assert made.status_code == 201, made.text
    return {"schedule_id": made.json()["id"], "opening": "K1"}


def address(path: str, known: dict[str, str]) -> str:
    for name, value in known.items():
        path = path.replace(f"{{{name}}}", value)
    return path


def check(entry: dict[str, Any], answer: httpx.Response) -> None:
    """The answer has the status and the shape that the document gives it."""
    success = min(status for status in entry["responses"] if status.startswith("2"))
    assert answer.status_code == int(success), answer.text
    said = entry["responses"][success]
    for name in said.get("headers", {}):
        assert name.lower() in answer.headers or name in ("Link", "Content-Disposition"), name
    if "application/json" in said.get("content", {}):
        schema = {**said["content"]["application/json"]["schema"], "components": DOCUMENT["components"]}
        jsonschema_rs.Draft202012Validator(schema, validate_formats=True).validate(answer.json())


async def test_every_read_is_answered_as_said(sqlite_database: str) -> None:
    async with serving(sqlite_database) as service:
        known = await fill(service)
        where = f"/v1/schedules/{known['schedule_id']}"
        work = {"pieces": [{"opening": "K1", "piece": "stool", "state": "cut"}]}
        known["piece_id"] = (await service.post(f"{where}/work", json=work)).json()["pieces"][0]["id"]
        known["lot"] = (await service.get(f"{where}/lengths")).json()["items"][0]["lot"]
        assert (await service.get(f"{where}/cut-list")).status_code == 200
        known["number"], known["name"] = "1", "C1"
        known["sheet"] = "material-list"
        for path, method, entry in STORED.values():
            if method == "get":
                needed = [
                    one for one in entry.get("parameters", []) if one["in"] == "query" and one.get("required")
                ]
                params = {one["name"]: 1 for one in needed}
                check(entry, await service.get(address(path, known), params=params))
