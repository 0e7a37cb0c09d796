"""The format of an answer is the one the Accept header likes best."""

import msgspec
import pytest

from longpoint.api.document.examples import OPENING
from longpoint.api.http.negotiate import BOTH, choose

JSON, MSGPACK, SHORT = BOTH


@pytest.mark.parametrize(
    ("accept", "expected"),
    [
        ("", JSON),
        (" ", JSON),
        ("*/*", JSON),
        ("application/*", JSON),
        ("APPLICATION/JSON", JSON),
        (MSGPACK, MSGPACK),
        (SHORT, SHORT),
        (f"{JSON};q=0.5, {MSGPACK}", MSGPACK),
        (f"{MSGPACK};q=0.5, {JSON};q=0.6", JSON),
        (f"*/*;q=0.1, {SHORT};q=0.2", SHORT),
        (f"{JSON};q=0, */*", MSGPACK),
        (f"{JSON};q=0", None),
        ("*/*;q=0", None),
        ("text/html", None),
        ("text/html, */*;q=0.8", JSON),
        ("application/json;charset=utf-8", JSON),
        (f"{JSON};q=x", None),
        (f"{JSON};q=7", JSON),
        (",,", None),
        ("nonsense", None),
    ],
)
def test_the_best_offer_is_chosen(accept, expected):
    assert choose(accept.encode(), BOTH) == expected


@pytest.mark.parametrize("kind", [MSGPACK, SHORT])
async def test_an_answer_comes_as_messagepack(client, kind):
    body = {"lengths": ["30 5/8 in"]}
    packed = await client.post("/v1/lengths", json=body, headers={"accept": kind})
    assert packed.headers["content-type"] == kind
    assert packed.headers["vary"] == "accept"
    plain = await client.post("/v1/lengths", json=body)
    assert plain.headers["content-type"] == JSON
    assert msgspec.msgpack.decode(packed.content) == plain.json()


async def test_what_cannot_be_given_is_refused_before_any_work(client):
    answer = await client.post(
        "/v1/lengths", content=b"{", headers={"accept": "text/html", "content-type": JSON}
    )
    assert answer.status_code == 406
    assert answer.json()["type"] == "/problems/not-acceptable"
    assert MSGPACK in answer.json()["detail"]


@pytest.mark.parametrize("mark", ["K1", '"opening":"",', 'a "quantity":1 \\', "Küche 7"])
async def test_json_and_messagepack_say_the_same_of_a_window(client, mark):
    for width in ("30 5/8 in", "30 5/8 in", "31 in"):  # a piece comes again from what is kept of it
        body = {**OPENING["window"].request, "mark": mark}
        body["readings"] = {**body["readings"], "jamb_width": width}
        json, packed = [
            await client.post("/v1/opening", json=body, headers={"accept": accept})
            for accept in (JSON, MSGPACK)
        ]
        assert json.status_code == packed.status_code == 200
        assert json.json() == msgspec.msgpack.decode(packed.content)
        assert json.json()["mark"] == mark
