"""The answers that the reference shows, made by the service itself over an invented house.

`PYTHONPATH=service:tests python tests/reference_answers.py` writes them again.
"""

import asyncio
import json
import re
import tempfile
from datetime import UTC, datetime, timedelta
from hashlib import sha256
from math import ceil
from pathlib import Path
from typing import Any

import httpx

from databases import fresh_sqlite
from longpoint.api.document import docs
from longpoint.api.document.openapi import document
from longpoint.schedules.migrate import migrate
from longpoint.schedules.store import Store
from stored import serving

FILE = Path(docs.__file__).parent / "pages" / "answers.json"
ORDER = [
    "create_schedule",
    "list_schedules",
    "get_schedule",
    "list_openings",
    "get_opening",
    "get_opening_drawing",
    "list_lengths",
    "get_length",
    "compute_schedule_cut_list",
    "get_sticks_drawing",
    "get_schedule_sheet",
    "make_plan",
    "get_job",
    "get_job_events",
    "get_job_result",
    "cancel_job",
    "list_plans",
    "get_plan",
    "get_stick",
    "claim_stick",
    "give_up_claim",
    "record_work",
    "list_pieces",
    "get_piece",
    "remove_piece",
    "cut_sticks",
    "hold_openings",
    "release_openings",
    "add_length",
    "put_length",
    "remove_length",
    "import_openings",
    "export_schedule",
    "replace_opening",
    "remove_opening",
    "add_opening",
    "replace_schedule",
    "list_revisions",
    "get_revision",
    "compare_revisions",
    "restore_revision",
    "archive_schedule",
    "unarchive_schedule",
    "archive_schedule",
    "delete_schedule",
]
"""The stored operations as a house goes through them."""
NO_CONTENT = 204
FIRST_EXAMPLE = {"create_schedule": "measured", "put_length": "delivered"}


class Recorder:
    """Calls one operation after the other and keeps what is answered."""

    def __init__(self, service: httpx.AsyncClient) -> None:
        self.service = service
        self.operations = {
            entry["operationId"]: (path, method, entry)
            for path, methods in document()["paths"].items()
            for method, entry in methods.items()
        }
        self.known: dict[str, str] = {
            "sheet": "material-list",
            "number": "1",
            "opening": "K1",
            "name": "C1",
            "from": "1",
        }
        self.answers: dict[str, Any] = {}

    async def call(self, name: str) -> None:
        path, method, entry = self.operations[name]
        for key, value in self.known.items():
            path = path.replace(f"{{{key}}}", value)
        headers = {}
        if any(one["name"] == "If-Match" for one in entry["parameters"]):
            tag = (await self.service.get(path)).headers.get("etag")
            if tag is None:
                where = f"/v1/schedules/{self.known['schedule_id']}"
                tag = (await self.service.get(where)).headers["etag"]
            headers["If-Match"] = tag
        examples = (
            entry.get("requestBody", {}).get("content", {}).get("application/json", {}).get("examples", {})
        )
        chosen = FIRST_EXAMPLE.get(name) or next(iter(examples), None)
        body = examples[chosen]["value"] if chosen else None
        asked = [one["name"] for one in entry["parameters"] if one["in"] == "query" and one["required"]]
        query = {one: self.known[one] for one in asked}
        answer = await self.service.request(method, path, json=body, params=query, headers=headers)
        if answer.status_code >= 300:
            raise AssertionError(f"{name}: {answer.status_code} {answer.text}")
        kept: dict[str, Any] = {"status": answer.status_code}
        if chosen:
            kept["example"] = chosen
        if answer.status_code == NO_CONTENT:
            assert answer.content in (b"", b"null"), answer.content
        elif answer.headers.get("content-type", "").startswith("application/json"):
            kept["body"] = answer.json()
        elif answer.content:
            kept["file"] = answer.text
        self.answers[name] = kept
        self.learn(name, kept.get("body"))
        if name == "get_schedule_sheet":
            prefer = {"prefer": "respond-async"}
            later = await self.service.get(path, headers=prefer)
            self.known["job_id"] = later.json()["id"]
            await self.service.get(path, headers={"prefer": "wait=20"})

    def learn(self, name: str, body: Any) -> None:
        """What later operations need to know."""
        if name == "create_schedule":
            self.known["schedule_id"] = body["id"]
        elif name == "list_lengths":
            self.known["lot"] = body["items"][0]["lot"]
        elif name == "record_work":
            self.known["piece_id"] = body["pieces"][0]["id"]


async def answers() -> dict[str, Any]:
    """Every operation's answer, by its name."""
    with tempfile.TemporaryDirectory() as folder:
        address = fresh_sqlite(Path(folder))
        store = Store(address, create=True)
        await migrate(store)
        await store.close()
        async with serving(address) as service:
            recorder = Recorder(service)
            for name in recorder.operations:
                if name not in ORDER:
                    await recorder.call(name)
            for name in ORDER:
                await recorder.call(name)
            good = recorder.operations["compute_opening"][2]["requestBody"]["content"]["application/json"]
            body = good["examples"]["window"]["value"]
            wrong = {**body, "jamb_width": "30 5/8 in", "readings": {**body["readings"], "jamb_depth": 3.125}}
            refused = await service.post("/v1/opening", json=wrong)
            recorder.answers["refused"] = refused.json()
            return {name: recorder.answers[name] for name in [*recorder.operations, "refused"]}


_ID = re.compile(r"\b01m[0-9a-z]{23}\b")
_FIRST_ID = "01m8rrj8383fkqfesen8nahm00"
_MOMENT = re.compile(r"20\d\d-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{6}Z")
_SECONDS = re.compile(r'("seconds": )(\d+\.\d+)')
_DIGEST = re.compile(r"\b[0-9a-f]{64}\b")
_REQUEST = re.compile(r'(?<="request_id": ")[0-9a-f]{12}')
_BEGAN = datetime(2026, 11, 2, 7, 30, tzinfo=UTC)


def settled(text: str) -> str:
    """Answers with ids, times, seconds and digests that are the same whenever they are written, each in its order."""
    ids = {
        id: f"{_FIRST_ID[: 26 - len(str(at))]}{at}" for at, id in enumerate(sorted(set(_ID.findall(text))))
    }
    for id, kept in ids.items():
        text = text.replace(id, kept)
    for at, when in enumerate(sorted(set(_MOMENT.findall(text)))):
        then = _BEGAN + timedelta(seconds=at)
        text = text.replace(when, then.isoformat(timespec="microseconds").replace("+00:00", "Z"))
    for at, digest in enumerate(dict.fromkeys(_DIGEST.findall(text))):
        text = text.replace(digest, sha256(str(at).encode()).hexdigest())
    text = _REQUEST.sub("e295c97cdddb", text)
    return _SECONDS.sub(lambda found: f"{found[1]}{max(1, ceil(float(found[2]) * 10)) / 10}", text)


if __name__ == "__main__":
    written = json.dumps(asyncio.run(answers()), indent=1, ensure_ascii=False) + "\n"
    FILE.write_text(settled(written), encoding="utf-8")
