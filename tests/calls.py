"""A call of any operation that is answered well, made from the document alone, over a house made for it."""

from typing import Any, NamedTuple

import httpx

from longpoint.api.document.openapi import document

DOCUMENT = document()
OPERATIONS: dict[str, tuple[str, str, dict[str, Any]]] = {
    entry["operationId"]: (path, method, entry)
    for path, methods in DOCUMENT["paths"].items()
    for method, entry in methods.items()
}
"""Path, method and entry of every operation, by its id."""


class Call(NamedTuple):
    """What a caller sends."""

    method: str
    address: str
    params: dict[str, Any]
    headers: dict[str, str]
    body: Any

    async def send(self, client: httpx.AsyncClient, **headers: str) -> httpx.Response:
        """Send it, with further header fields."""
        sent = {} if self.body is None else {"json": self.body}
        return await client.request(
            self.method, self.address, params=self.params, headers={**self.headers, **headers}, **sent
        )


def success(name: str) -> int:
    """The status with which an operation says that it was done."""
    return min(int(status) for status in OPERATIONS[name][2]["responses"] if status.startswith("2"))


def body_of(name: str) -> Any:
    """The first example of an operation's body; None where it takes none."""
    content = OPERATIONS[name][2].get("requestBody", {}).get("content", {})
    if not content:
        return None
    examples = content["application/json"]["examples"]
    return next(iter(examples.values()))["value"]


async def prepare(owner: httpx.AsyncClient, name: str) -> Call:
    """A call of an operation that will be answered well.

    Args:
        owner: Who may do everything, and for whose account a house is made where the operation wants one.
        name: The operation.
    """
    path, method, entry = OPERATIONS[name]
    body = body_of(name)
    if "{" in path:
        values = await _furnish(owner)
        if name == "add_opening":
            body = {**body, "mark": "another"}
        if name == "delete_schedule":
            archive = f"/v1/schedules/{values['schedule_id']}/archive"
            assert (await owner.post(archive, headers={"if-match": "*"})).status_code == 200
        for parameter in _parameters(entry, "path"):
            assert parameter in values, f"say in tests/calls.py what stands for {{{parameter}}}"
            path = path.replace(f"{{{parameter}}}", values[parameter])
    headers = {"if-match": "*"} if "If-Match" in _parameters(entry, "header") else {}
    params = dict.fromkeys(_parameters(entry, "query", required=True), 1)
    return Call(method, path, params, headers, body)


def _parameters(entry: dict[str, Any], place: str, *, required: bool = False) -> list[str]:
    return [
        one["name"]
        for one in entry.get("parameters", [])
        if one["in"] == place and (not required or one.get("required"))
    ]


async def _furnish(owner: httpx.AsyncClient) -> dict[str, str]:
    """A house with an opening, work done on it and a length on hand; what stands for the parameters of a path."""
    house = OPERATIONS["create_schedule"][2]["requestBody"]["content"]["application/json"]["examples"]
    made = await owner.post("/v1/schedules", json=house["measured"]["value"])
    assert made.status_code == 201, made.text
    where = made.headers["location"]
    (opening,) = (await owner.get(f"{where}/openings")).json()["items"]
    work = {"pieces": [{"opening": opening["mark"], "piece": "stool", "state": "cut"}]}
    done = await owner.post(f"{where}/work", json=work)
    assert done.status_code == 201, done.text
    assert (await owner.get(f"{where}/cut-list")).status_code == 200  # plans its sticks
    (length,) = (await owner.get(f"{where}/lengths")).json()["items"]
    sheet = f"{where}/sheets/material-list"
    later = await owner.get(sheet, headers={"prefer": "respond-async"})
    assert later.status_code == 202, later.text
    assert (await owner.get(sheet, headers={"prefer": "wait=20"})).status_code == 200  # the job is done
    return {
        "job_id": later.json()["id"],
        "schedule_id": made.json()["id"],
        "opening": opening["id"],
        "piece_id": done.json()["pieces"][0]["id"],
        "lot": length["lot"],
        "name": "C1",
        "number": "1",
        "sheet": "material-list",
    }
