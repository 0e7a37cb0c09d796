"""Looks for added fields everywhere they should turn up. A script: `test_one_line.py` runs it on its own copy of the
tree, where each field is one line.

It writes the document and the SDK anew, asks the service, and prints by kind and place where a field was missed.
"""

from __future__ import annotations

import asyncio
import copy
import json
import re
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path
from typing import Any, NamedTuple

import msgspec

import longpoint
from databases import fresh_sqlite
from longpoint.api.document.openapi import document_bytes
from longpoint.geometry import build_opening
from longpoint.lengths import Rounding, Unit, length_writer
from longpoint.schedules.kept import NewSchedule
from longpoint.schedules.migrate import migrate
from longpoint.schedules.store import Store
from longpoint.shop.house import House
from longpoint.values import decoder, encoder
from stored import house, opening, serving

Step = str | int
JSON = {"accept": "application/json"}
PACKED = {"content-type": "application/msgpack", "accept": "application/msgpack"}
ABSENT = "absent"


class Sent(NamedTuple):
    """A field that callers send: where it stands in a house, and what is said there at first, then later.

    Attributes:
        field: Its name.
        at: Where its record stands in the body that starts a schedule.
        before: What is sent at first.
        after: What is sent later.
    """

    field: str
    at: tuple[Step, ...]
    before: Any
    after: Any

    @property
    def asked_at(self) -> tuple[Step, ...]:
        """Where its record stands in a cut list's request, which has what is on hand among its stock."""
        return ("stock", 0, "lengths_on_hand", 0) if self.at[0] == "lengths" else self.at

    @property
    def place(self) -> tuple[Step, ...]:
        """Where it stands in the resource it is kept in: the house, one opening, one length."""
        return (*(self.at[2:] if self.at[0] in ("openings", "lengths") else self.at), self.field)


SENT = {
    "reading": Sent("tail_depth", ("openings", 0, "readings"), "1 1/4 in", "1 3/8 in"),
    "opening": Sent("ledge", ("openings", 0), "3/4 in", "7/8 in"),
    "trim": Sent("drip", ("trim_specs", "painted"), "1/8 in", "3/16 in"),
    "stock_rule": Sent("cartage", ("stock", 0), "4.50", "6.25"),
    "length_on_hand": Sent("sound_to", ("lengths", 0), "40 in", "41 in"),
    "rate": Sent("oil_wait", ("shop", "rates"), 2.5, 4.0),
    "wage": Sent("driving", ("shop", "wages"), "30.00", "32.50"),
    "group": Sent("label", ("groups", 0), "hall", "stairs"),
}
WORK = Sent("saw", ("pieces", 0), "the one at the window", "the one in the yard")
"""A field of recorded work, in the body that records it."""
ANSWERED = {
    "answered_piece": ("slack", ("openings", 0, "pieces", 0)),
    "answered_opening": ("sashes", ("openings", 0)),
    "answered_finding": ("spare", ("openings", 0, "findings", 0)),
}
VALUES = {"answered_piece": "5/8", "answered_opening": 2, "answered_finding": None}
"""What stands in an answered field: its default."""

Missed = dict[str, dict[str, list[str]]]


class Search:
    """Gathers where a field was looked for, and where it was missed."""

    def __init__(self) -> None:
        self.missed: Missed = {kind: {} for kind in (*SENT, "work", *ANSWERED)}

    def look(self, kind: str, place: str, where: str, found: Any, wanted: Any = True) -> None:
        """Note that a field was looked for in a place."""
        missed = self.missed[kind].setdefault(place, [])
        if found != wanted:
            missed.append(f"{where}: {found!r}, not {wanted!r}")


def value_at(value: Any, path: tuple[Step, ...]) -> Any:
    """What stands at a path in plain data or records."""
    for step in path:
        if isinstance(value, dict):
            value = value.get(step, ABSENT)
        elif isinstance(value, list | tuple):
            value = value[int(step)] if int(step) < len(value) else ABSENT
        else:
            value = getattr(value, str(step), ABSENT)
    return value


def whole_house(when: str) -> dict[str, Any]:
    """A body that starts a schedule, with every field that is sent."""
    body = house(
        openings=[opening("W1"), opening("W2")],
        groups=[{"mark": "pair", "openings": ["W1", "W2"], "heads": ["80", "80"]}],
        lengths=[{"profile": "casing", "length": "41 in"}],
        shop={"rates": {}, "wages": {}},
    )
    # Something in the way, so that there is a finding.
    body["openings"][0]["readings"]["clearances"] = {"left": "2 in"}
    for sent in SENT.values():
        value_at(body, sent.at)[sent.field] = getattr(sent, when)
    return body


def as_asked(body: dict[str, Any]) -> dict[str, Any]:
    """The same house as a cut list's request."""
    asked = {name: copy.deepcopy(said) for name, said in body.items() if name not in ("name", "lengths")}
    asked["stock"][0]["lengths_on_hand"] = [
        {name: said for name, said in one.items() if name != "profile"} for one in body["lengths"]
    ]
    return {**asked, "planning_seconds": 0}


def regenerate(root: Path) -> dict[str, Any]:
    """Write the document and the SDK, as their commands do."""
    written = document_bytes()
    (root / "openapi/longpoint.json").write_bytes(written)
    subprocess.run([sys.executable, "-m", "generator"], cwd=root / "sdk", check=True, stdout=sys.stderr)
    document: dict[str, Any] = json.loads(written)
    return document


class Described:
    """Looks into the document's schemas."""

    def __init__(self, document: dict[str, Any]) -> None:
        self.document = document
        self.schemas = document["components"]["schemas"]

    def asked(self, path: str, method: str = "post") -> Any:
        """The schema of a request."""
        return self.document["paths"][path][method]["requestBody"]["content"]["application/json"]["schema"]

    def given(self, path: str, method: str = "get") -> Any:
        """The schema of an answer."""
        answers = self.document["paths"][path][method]["responses"]
        return next(one for status, one in sorted(answers.items()) if status[0] == "2")["content"][
            "application/json"
        ]["schema"]

    def record(self, schema: Any, path: tuple[Step, ...]) -> str:
        """The name of the record at a path."""
        name = self._named(schema)
        for step in path:
            inner = self.schemas[name] if name else schema
            if isinstance(step, int):
                schema = inner["items"]
            else:
                schema = inner.get("properties", {}).get(step) or inner["additionalProperties"]
            name = self._named(schema)
        return name

    def _named(self, schema: Any) -> str:
        options = [schema, *schema.get("anyOf", [])]
        return next((one["$ref"].rpartition("/")[2] for one in options if "$ref" in one), "")


def records(described: Described) -> Iterator[tuple[str, str, str]]:
    """Every record of the document that must have a field: the kind, the field, the record's name."""
    schedule = "/v1/schedules/{schedule_id}"
    of_house = described.asked(schedule, "put"), described.given(schedule)
    of_opening = described.asked(f"{schedule}/openings"), described.given(f"{schedule}/openings/{{opening}}")
    of_length = described.asked(f"{schedule}/lengths"), described.given(f"{schedule}/lengths/{{lot}}")
    for kind, sent in SENT.items():
        kept = {"openings": of_opening, "lengths": of_length}.get(str(sent.at[0]), of_house)
        inside = sent.place[:-1]
        for schema, at in (
            (described.asked("/v1/cut-list"), sent.asked_at),
            (described.asked("/v1/schedules"), sent.at),
            (described.given(f"{schedule}/export"), sent.at),
            (kept[0], inside),
            (kept[1], ("house", *inside) if kept is of_house else inside),
        ):
            yield kind, sent.field, described.record(schema, at)
    of_piece = (
        (described.asked(f"{schedule}/work"), WORK.at),
        (described.given(f"{schedule}/work", "post"), WORK.at),
        (described.given(f"{schedule}/work"), ("items", 0)),
        (described.given(f"{schedule}/work/{{piece_id}}"), ()),
        (described.given(f"{schedule}/cut-list"), ("wrong", 0, "piece")),
    )
    for schema, at in of_piece:
        yield "work", WORK.field, described.record(schema, at)
    for kind, (field, at) in ANSWERED.items():
        yield kind, field, described.record(described.given("/v1/cut-list", "post"), at)
        yield kind, field, described.record(described.given("/v1/opening", "post"), at[2:])
        yield kind, field, described.record(described.given(f"{schedule}/cut-list"), ("cut_list", *at))


def look_in_files(search: Search, root: Path, described: Described) -> None:
    """The document, and what the SDK has of it."""
    from longpoint_sdk import types

    typescript = (root / "sdk/typescript/longpoint.d.ts").read_text()
    for kind, field, name in records(described):
        search.look(kind, "document", name, field in described.schemas[name]["properties"])
        search.look(kind, "sdk", name, field in getattr(types, name).__struct_fields__)
        body = re.search(rf"^export interface {name} {{\n(.*?)^}}", typescript, re.DOTALL | re.MULTILINE)
        search.look(kind, "ts", name, bool(body and re.search(rf"^  {field}\??: ", body[1], re.MULTILINE)))


def look_in_sdk(search: Search, kept: dict[str, Any]) -> None:
    """What the SDK sends of a house, and what it reads of one."""
    from longpoint_sdk import types
    from longpoint_sdk._call import encode

    body = whole_house("after")
    again = json.loads(encode(msgspec.convert(body, types.NewSchedule)))
    asked = json.loads(encode(msgspec.convert(as_asked(body), types.CutListRequest)))
    read = {
        "openings": msgspec.convert(kept["openings"], types.StoredOpening),
        "lengths": msgspec.convert(kept["lengths"], types.StoredLength),
        "house": msgspec.convert(kept["house"], types.StoredSchedule).house,
    }
    for kind, sent in SENT.items():
        search.look(kind, "sdk", "sent", value_at(again, (*sent.at, sent.field)), sent.after)
        search.look(kind, "sdk", "asked", value_at(asked, (*sent.asked_at, sent.field)), sent.after)
        got = value_at(read[home_of(sent)], sent.place)
        search.look(kind, "sdk", "read", str(got) if isinstance(sent.after, str) else got, sent.after)


def look_inside(search: Search) -> None:
    """The house that a schedule is worked out as, and what is worked out of it."""
    body = whole_house("after")
    new = decoder(NewSchedule, Unit.IN).decode(msgspec.json.encode(body))
    worked_out: House = new.head.whole(new.openings, new.lengths, new.groups)
    write = encoder(length_writer(Rounding())).encode
    one = json.loads(write(worked_out.opening(0)))
    out = json.loads(write(worked_out))
    for kind, sent in SENT.items():
        search.look(kind, "worked_out", "house", value_at(out, (*sent.asked_at, sent.field)), sent.after)
        if sent.at[0] in ("openings", "trim_specs"):
            at = sent.at[2:] if sent.at[0] == "openings" else ("trim",)
            search.look(kind, "worked_out", "opening", value_at(one, (*at, sent.field)), sent.after)
    # However the geometry comes by a length, it goes out as the others do.
    built = build_opening(worked_out.opening(0))
    for kind, record in (("answered_piece", built.pieces[0]), ("answered_finding", built.findings[0])):
        field = ANSWERED[kind][0]
        marked = json.loads(write(msgspec.structs.replace(record, **{field: 2**0.5})))
        search.look(kind, "answered", "irrational", value_at(marked, (field, "real")), 1.414213562)


async def look_in_computing(search: Search, client: Any) -> None:
    """What is taken and answered without keeping anything."""
    asked = as_asked(whole_house("before"))
    text = await client.post("/v1/cut-list", json=asked)
    packed = await client.post("/v1/cut-list", content=msgspec.msgpack.encode(asked), headers=PACKED)
    wrong = copy.deepcopy(asked)
    for sent in SENT.values():
        value_at(wrong, sent.asked_at)[sent.field] = []
    refused = await client.post("/v1/cut-list", json=wrong)
    pointers = {one["pointer"] for one in refused.json()["errors"]}
    taken = {"JSON": text, "MessagePack": packed}
    for kind, sent in SENT.items():
        pointer = "/" + "/".join(map(str, (*sent.asked_at, sent.field)))
        search.look(kind, "refused", pointer, pointer in pointers)
        for name, answer in taken.items():
            body = answer.json() if name == "JSON" else msgspec.msgpack.decode(answer.content)
            search.look(
                kind, "request", name, pointer in {one["pointer"] for one in body.get("errors", [])}, False
            )
    assert text.status_code == packed.status_code == 200, text.text
    one = {**asked["openings"][0], "unit": "in", "trim": asked["trim_specs"]["painted"]}
    alone = await client.post("/v1/opening", json=one)
    assert alone.status_code == 200, alone.text
    for kind, (field, at) in ANSWERED.items():
        for name, body, here in (
            ("JSON", text.json(), at),
            ("MessagePack", msgspec.msgpack.decode(packed.content), at),
            ("an opening", alone.json(), at[2:]),
        ):
            search.look(kind, "answered", name, plain(value_at(body, (*here, field))), VALUES[kind])


def plain(value: Any) -> Any:
    """A length that is answered, exactly."""
    return value["exact"] if isinstance(value, dict) else value


async def made(client: Any, body: dict[str, Any]) -> str:
    """Start a schedule."""
    answer = await client.post("/v1/schedules", json=body)
    assert answer.status_code == 201, answer.text
    return str(answer.headers["location"])


async def kept_at(client: Any, where: str) -> dict[str, Any]:
    """What is kept: the house, its first opening, the newest length on hand, and the whole exported."""
    one = (await client.get(f"{where}/openings/W1")).json()
    lengths = (await client.get(f"{where}/lengths")).json()["items"]
    return {
        "house": (await client.get(where)).json(),
        "openings": one,
        "lengths": (await client.get(f"{where}/lengths/{lengths[-1]['id']}")).json(),
        "export": (await client.get(f"{where}/export", headers=JSON)).json(),
    }


def look_in_kept(search: Search, place: str, kept: dict[str, Any], when: str, without: str = "") -> None:
    """The resources that things are kept in, save one, and the exact lengths beside them."""
    for kind, sent in SENT.items():
        if home_of(sent) == without:
            continue
        resource, wanted = kept[home_of(sent)], getattr(sent, when)
        said = resource.get("house", resource)
        search.look(kind, place, "as sent", value_at(said, sent.place), wanted)
        if str(wanted).endswith(" in"):
            pointer = "/" + "/".join(map(str, sent.place))
            search.look(kind, place, "exactly", pointer in resource["exact"])


def home_of(sent: Sent) -> str:
    """The resource that a field is kept in."""
    return str(sent.at[0]) if sent.at[0] in ("openings", "lengths") else "house"


async def change_all(client: Any, where: str) -> None:
    """Say everything differently."""
    later = whole_house("after")
    changes = {
        where: {name: said for name, said in later.items() if name not in ("openings", "lengths")},
        f"{where}/openings/W1": later["openings"][0],
    }
    for path, body in changes.items():
        tag = (await client.get(path)).headers["etag"]
        answer = await client.put(path, json=body, headers={"if-match": tag})
        assert answer.status_code == 200, answer.text
    for one in (await client.get(f"{where}/lengths")).json()["items"]:
        path = f"{where}/lengths/{one['id']}"
        tag = (await client.get(path)).headers["etag"]
        assert (await client.delete(path, headers={"if-match": tag})).status_code == 200
    assert (await client.post(f"{where}/lengths", json=later["lengths"][0])).status_code == 201


async def look_in_keeping(search: Search, client: Any) -> None:
    """What is kept, changed, compared, exported and brought back."""
    where = await made(client, whole_house("before"))
    look_in_kept(search, "stored", await kept_at(client, where), "before")
    await change_all(client, where)
    kept = await kept_at(client, where)
    look_in_kept(search, "stored", kept, "after")
    look_in_sdk(search, kept)
    worked_out = (await client.get(f"{where}/cut-list", headers=JSON)).json()
    for kind, (field, at) in ANSWERED.items():
        found = plain(value_at(worked_out, ("cut_list", *at, field)))
        search.look(kind, "stored", "cut list", found, VALUES[kind])
    again = await made(client, kept["export"])
    look_in_kept(search, "import", await kept_at(client, again), "after")
    earlier = (await client.get(f"{where}/export?revision=1", headers=JSON)).json()
    compared = (await client.get(f"{where}/changes?from=1", headers=JSON)).json()
    tag = (await client.get(where)).headers["etag"]
    back = await client.post(f"{where}/restore", json={"revision": 1}, headers={"if-match": tag})
    assert back.status_code == 200, back.text
    look_in_kept(search, "restored", await kept_at(client, where), "before", without="lengths")
    for kind, sent in SENT.items():
        place = (*sent.at, sent.field)
        search.look(kind, "export", "as it stands", value_at(kept["export"], place), sent.after)
        search.look(kind, "history", "as it stood", value_at(earlier, place), sent.before)
        if sent.at[0] != "lengths":
            told = compared["openings"][0]["readings"] if sent.at[0] == "openings" else compared["house"]
            pointer = "/" + "/".join(map(str, sent.place))
            was = {one["pointer"]: (json.loads(one["before"]), json.loads(one["after"])) for one in told}
            search.look(kind, "compared", pointer, was.get(pointer), (sent.before, sent.after))
    await look_in_spreadsheet(search, client, again)


async def look_in_work(search: Search, client: Any) -> None:
    """Work recorded, told of again, and no longer right."""
    from longpoint_sdk import types
    from longpoint_sdk._call import encode

    where = await made(client, house(openings=[opening("W1")]))

    def work(state: str, said: Any) -> dict[str, Any]:
        piece = {"opening": "W1", "piece": "side_casing/left", "state": state, WORK.field: said}
        return {"pieces": [piece]}

    wrong = await client.post(f"{where}/work", json=work("cut", []))
    pointers = [one["pointer"] for one in wrong.json()["errors"]]
    search.look("work", "refused", "pieces", pointers, [f"/pieces/0/{WORK.field}"])
    cut = await client.post(f"{where}/work", json=work("cut", WORK.before))
    packed = msgspec.msgpack.encode(work("installed", WORK.after))
    fitted = await client.post(f"{where}/work", content=packed, headers=PACKED)
    search.look("work", "request", "JSON", cut.status_code, 201)
    search.look("work", "request", "MessagePack", fitted.status_code, 201)
    assert cut.status_code == 201, cut.text
    place = (*WORK.at, WORK.field)
    search.look("work", "answered", "JSON", value_at(cut.json(), place), WORK.before)
    told = msgspec.msgpack.decode(fitted.content)
    search.look("work", "answered", "MessagePack", value_at(told, place), WORK.after)
    one = (await client.get(f"{where}/work/{cut.json()['pieces'][0]['id']}")).json()
    listed = (await client.get(f"{where}/work")).json()["items"]
    tag = (await client.get(f"{where}/openings/W1")).headers["etag"]
    await client.put(f"{where}/openings/W1", json=opening("W1", "32", "48"), headers={"if-match": tag})
    left = (await client.get(f"{where}/cut-list", headers=JSON)).json()
    found = {"one": one, "list": listed[0], "no longer right": left["wrong"][0]["piece"]}
    for name, piece in found.items():
        search.look("work", "stored", name, piece.get(WORK.field, ABSENT), WORK.after)
    again = json.loads(encode(msgspec.convert(work("cut", WORK.before), types.Work)))
    search.look("work", "sdk", "sent", value_at(again, place), WORK.before)
    read = msgspec.convert(one, types.StoredPiece)
    search.look("work", "sdk", "read", value_at(read, (WORK.field,)), WORK.after)


async def look_in_spreadsheet(search: Search, client: Any, where: str) -> None:
    """A spreadsheet of the openings, and the openings out of it."""
    sheet = await client.get(f"{where}/export", headers={"accept": "text/csv"})
    bare = whole_house("after")
    empty = await made(client, {**bare, "openings": [], "groups": []})
    answer = await client.post(
        f"{empty}/import", content=sheet.content, headers={"content-type": "text/csv; charset=utf-8"}
    )
    assert answer.status_code == 200, answer.text
    back = (await client.get(f"{empty}/openings/W1")).json()
    columns = sheet.text.splitlines()[0].split(",")
    for kind, sent in SENT.items():
        name = sent.field.replace("_", " ")
        if sent.at[0] == "openings" or name in columns:
            search.look(kind, "csv", "column", name in columns)
            search.look(kind, "csv", "back", value_at(back, sent.place), sent.after)


async def look_in_service(search: Search, root: Path, document: dict[str, Any]) -> None:
    """The service itself, over a database of its own."""
    address = fresh_sqlite(root)
    store = Store(address, create=True)
    await migrate(store)
    await store.close()
    async with serving(address) as client:
        assert (await client.get("/openapi.json")).json() == document
        await look_in_computing(search, client)
        await look_in_keeping(search, client)
        await look_in_work(search, client)


def main(root: Path) -> None:
    search, document = Search(), regenerate(root)
    import longpoint_sdk  # only now that it is written anew

    for package in (longpoint, longpoint_sdk):
        assert Path(str(package.__file__)).is_relative_to(root), f"{package.__name__} is not the copy's"
    look_in_files(search, root, Described(document))
    look_inside(search)
    asyncio.run(look_in_service(search, root, document))
    print(json.dumps(search.missed))


if __name__ == "__main__":
    main(Path(sys.argv[1]))
