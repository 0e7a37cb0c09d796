"""What is taken as a body and what is not: encodings, sizes, depth, and odd characters."""

import json

import httpx
import msgspec
import pytest

from longpoint.app import create_app
from longpoint.settings import Settings

GOOD = {"lengths": ["30 5/8 in"]}
JSON = "application/json"
MSGPACK = "application/vnd.msgpack"


async def send(client, body, kind=JSON, **headers):
    return await client.post("/v1/lengths", content=body, headers={"content-type": kind, **headers})


@pytest.mark.parametrize(
    ("kind", "encode"),
    [
        (JSON, msgspec.json.encode),
        ("application/json; charset=UTF-8", msgspec.json.encode),
        ('application/json;charset="utf-8"', msgspec.json.encode),
        (MSGPACK, msgspec.msgpack.encode),
        ("application/msgpack", msgspec.msgpack.encode),
    ],
)
async def test_json_and_messagepack_are_read(client, kind, encode):
    answer = await send(client, encode(GOOD), kind)
    assert answer.status_code == 200
    assert answer.json()["lengths"][0]["exact"] == "245/8"


@pytest.mark.parametrize(
    "kind", ["text/plain", "application/x-www-form-urlencoded", "application/json; charset=latin-1", ""]
)
async def test_another_content_type_is_not_read(client, kind):
    answer = await send(client, json.dumps(GOOD), kind)
    assert answer.status_code == 415
    assert "application/json" in answer.headers["accept"]
    assert "application/json" in answer.json()["detail"]


async def test_a_packed_body_is_not_read(client):
    assert (await send(client, json.dumps(GOOD), **{"content-encoding": "gzip"})).status_code == 415


@pytest.mark.parametrize(
    ("kind", "body"),
    [
        (JSON, b""),
        (JSON, b"{"),
        (JSON, b'{"lengths": ["1 in"]} x'),
        (JSON, b'{"lengths": [NaN]}'),
        (JSON, b'{"lengths": [1e999, NaN]}'),
        (JSON, b'{"lengths": [1e999'),
        (JSON, b'{"lengths": ["\xff"]}'),
        (JSON, b'{"lengths": ["\xed\xa0\x80"]}'),
        (JSON, b'{"lengths": ["\\ud800"]}'),
        (JSON, b'{"lengths": ["\\ud800", 1e999]}'),
        (JSON, b'{"lengths": ["1 in\x00"]}'),
        (JSON, b"\xef\xbb\xbf{}"),
        (JSON, b"[" * 100_000),
        (JSON, b'{"x":' * 50_000),
        (JSON, b'{"lengths": ' + b"[" * 100_000),
        (JSON, b'{"lengths": ["1 in"], "lengths": ["2 in"]}'),
        (JSON, b'{"lengths": ["1 in"], "l\\u0065ngths": ["2 in"]}'),
        (JSON, b'{"lengths": ["1 in"], "rounding": {"to": "1/8 in", "to": "1/16 in"}}'),
        (MSGPACK, b""),
        (MSGPACK, b"\xc1"),
        (MSGPACK, msgspec.msgpack.encode(GOOD) + b"\x00"),
        (MSGPACK, msgspec.msgpack.encode(GOOD)[:-1]),
        (MSGPACK, b"\x81\xa7lengths\x91\xa1\xff"),
        (MSGPACK, b"\x91" * 100_000),
    ],
)
async def test_what_cannot_be_read_is_refused_as_malformed(client, kind, body):
    answer = await send(client, body, kind)
    assert answer.status_code == 400, answer.text
    assert answer.json()["type"] == "/problems/malformed-body"


@pytest.mark.parametrize(
    ("kind", "body", "pointers"),
    [
        (JSON, b"null", [""]),
        (JSON, b"[]", [""]),
        (JSON, b"{}", ["/lengths"]),
        (JSON, b'{"lengths": []}', ["/lengths"]),
        (JSON, b'{"lengths": [1e999]}', ["/lengths/0"]),
        (JSON, b'{"lengths": [' + b"9" * 10_000 + b"]}", ["/lengths/0"]),
        (JSON, b'{"lengths": ["' + b"9" * 10_000 + b' in"]}', ["/lengths/0"]),
        (JSON, b'{"lengths": ["1 in\\u0000", "2 in"]}', ["/lengths/0"]),
        (JSON, b'{"lengths": ["1 in"], "\\u0000": 1}', ["/\0"]),
        (JSON, b'{"lengths": ["1 in", "x"], "unti": "mm"}', ["/lengths/1", "/unti"]),
        (MSGPACK, msgspec.msgpack.encode({"lengths": ["1 in", b"x", 3]}), ["/lengths/1", "/lengths/2"]),
        (MSGPACK, msgspec.msgpack.encode({"lengths": ["1 in\0"]}), ["/lengths/0"]),
        (MSGPACK, msgspec.msgpack.encode({"lengths": ["1 in"], 5: 6}), [""]),
        (MSGPACK, msgspec.msgpack.encode({"lengths": [msgspec.msgpack.Ext(1, b"x")]}), ["/lengths/0"]),
    ],
)
async def test_what_can_be_read_but_is_wrong_is_told_whole(client, kind, body, pointers):
    answer = await send(client, body, kind)
    assert answer.status_code == 422, answer.text
    assert [fault["pointer"] for fault in answer.json()["errors"]] == pointers


async def test_an_escaped_backslash_before_u0000_is_no_nul(client):
    answer = await send(client, b'{"lengths": ["\\\\u0000"]}')
    assert answer.json()["errors"][0]["code"] != "nul-character"


async def test_a_great_many_faults_are_told_in_piece(client):
    answer = await send(client, json.dumps({"lengths": [1] * 1000}))
    assert len(answer.json()["errors"]) == 500
    assert answer.json()["detail"].startswith("1000 things")


async def test_a_long_list_is_refused_quickly_and_briefly(client):
    answer = await send(client, json.dumps({"lengths": [1] * 500_000}))
    assert answer.status_code == 422
    assert answer.json()["errors"][0]["code"] == "too-many"
    assert len(answer.content) < 200_000


@pytest.fixture
async def small():
    """The service with the smallest limit on bodies."""
    app = create_app(Settings(max_body_bytes=1024))
    async with httpx.AsyncClient(
        transport=httpx.ASGITransport(app=app), base_url="http://longpoint"
    ) as caller:
        yield caller


async def test_a_body_up_to_the_limit_is_read(small):
    body = json.dumps(GOOD).encode()
    assert (await send(small, body + b" " * (1024 - len(body)))).status_code == 200


async def test_a_longer_body_is_refused_by_what_it_announces(small):
    answer = await send(small, json.dumps(GOOD).encode() + b" " * 1024)
    assert answer.status_code == 413
    assert answer.json()["type"] == "/problems/content-too-large"
    assert "1024" in answer.json()["detail"]
    assert answer.headers["connection"] == "close"


async def test_a_longer_body_is_refused_when_it_announces_nothing(small):
    sent = 0

    async def stream():
        nonlocal sent
        yield json.dumps(GOOD).encode()
        for _ in range(100):
            sent += 1
            yield b" " * 100

    answer = await send(small, stream())
    assert answer.status_code == 413


async def test_a_body_in_pieces_is_read(client):
    async def stream():
        for byte in json.dumps(GOOD).encode():
            yield bytes([byte])

    assert (await send(client, stream())).status_code == 200
