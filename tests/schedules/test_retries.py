"""A request sent again: the same answer, once; nothing doubled, nothing half done."""

import asyncio

import httpx
import pytest
from sqlalchemy import update

from longpoint.api.stored import openings as openings_module
from longpoint.schedules.basics import moment
from longpoint.schedules.models import Retry
from longpoint.schedules.store import Store
from stored import house, made, opening, serving


async def test_the_same_key_and_body_give_the_same_answer_once(service: httpx.AsyncClient) -> None:
    key = {"idempotency-key": '"9b2f-1"'}
    first = await service.post("/v1/schedules", json=house(), headers=key)
    again = await service.post("/v1/schedules", json=house(), headers=key)
    assert (again.status_code, again.content) == (201, first.content)
    for name in ("location", "etag", "content-type"):
        assert again.headers[name] == first.headers[name]
    assert again.headers["idempotency-replayed"] == "true"
    assert "idempotency-replayed" not in first.headers
    assert len((await service.get("/v1/schedules")).json()["items"]) == 1
    where = first.headers["location"]
    added = await service.post(
        f"{where}/openings", json=opening("K1"), headers=key | {"idempotency-key": "o1"}
    )
    assert added.status_code == 201
    twice = await service.post(f"{where}/openings", json=opening("K1"), headers={"idempotency-key": "o1"})
    assert twice.content == added.content
    bare = await service.post(f"{where}/openings", json=opening("K1"))
    assert bare.status_code == 422


async def test_the_same_key_with_another_body_is_refused(service: httpx.AsyncClient) -> None:
    key = {"idempotency-key": "k"}
    where = (await service.post("/v1/schedules", json=house(), headers=key)).headers["location"]
    for answer in (
        await service.post("/v1/schedules", json=house(name="Other"), headers=key),
        await service.post("/v1/schedules?why=x", json=house(), headers=key),
        await service.post(f"{where}/openings", json=opening("K1"), headers=key),
    ):
        assert (answer.status_code, answer.json()["type"]) == (422, "/problems/idempotency-key-reused")


async def test_a_refused_request_leaves_its_key_free(service: httpx.AsyncClient) -> None:
    key = {"idempotency-key": "k"}
    refused = await service.post("/v1/schedules", json=house(kerf="x"), headers=key)
    assert refused.status_code == 422
    assert (await service.post("/v1/schedules", json=house(), headers=key)).status_code == 201


async def test_of_many_at_once_one_wins_and_all_hear_the_same(service: httpx.AsyncClient) -> None:
    where = (await made(service)).headers["location"]
    key = {"idempotency-key": '"at once"'}
    answers = await asyncio.gather(
        *(service.post(f"{where}/openings", json=opening("K1"), headers=key) for _ in range(12))
    )
    assert {answer.status_code for answer in answers} == {201}
    assert len({answer.content for answer in answers}) == 1
    assert sum("idempotency-replayed" not in answer.headers for answer in answers) == 1
    assert (await service.get(where)).json()["revision"] == 2


@pytest.mark.parametrize("key", ["x" * 255, '"' + "x" * 255 + '"', '"' + '\\"' * 255 + '"'])
async def test_the_longest_keys_are_kept(service: httpx.AsyncClient, key: str) -> None:
    answers = [
        await service.post("/v1/schedules", json=house(), headers={"idempotency-key": key}) for _ in "ab"
    ]
    assert [answer.status_code for answer in answers] == [201, 201]
    assert answers[0].json() == answers[1].json()


async def test_a_key_is_the_same_with_quotes_and_without(sqlite_service: httpx.AsyncClient) -> None:
    keys = ("k-1", '"k-1"')
    first, again = [
        await sqlite_service.post("/v1/schedules", json=house(), headers={"idempotency-key": key})
        for key in keys
    ]
    assert first.json() == again.json()


@pytest.mark.parametrize("key", ["", "a b", '"', "é", "x" * 256, '"' + "x" * 256 + '"'])
async def test_keys_that_are_none(sqlite_service: httpx.AsyncClient, key: str) -> None:
    answer = await sqlite_service.post(
        "/v1/schedules", json=house(), headers={"idempotency-key": key.encode("latin-1")}
    )
    assert answer.status_code == 400
    assert answer.json()["errors"][0]["header"] == "Idempotency-Key"


async def test_a_key_is_forgotten_when_its_time_is_over(database: str) -> None:
    async with serving(database) as service:
        key = {"idempotency-key": "k"}
        first = await service.post("/v1/schedules", json=house(), headers=key)
        store = Store(database)
        async with store.writing() as connection:
            await connection.execute(update(Retry).values(expires_at=moment(-1)))
        await store.close()
        again = await service.post("/v1/schedules", json=house(name="Another"), headers=key)
        assert again.status_code == 201
        assert again.headers["location"] != first.headers["location"]


async def test_what_fails_on_the_way_is_not_half_kept(database: str, monkeypatch: pytest.MonkeyPatch) -> None:
    async with serving(database) as service:
        where = (await made(service)).headers["location"]

        def fail(_row: object, _unit: object) -> None:
            raise RuntimeError("the last step, after everything was written")

        with monkeypatch.context() as patched:
            patched.setattr(openings_module.StoredOpening, "of", fail)
            answer = await service.post(
                f"{where}/openings", json=opening("K1"), headers={"idempotency-key": "k"}
            )
            assert answer.status_code == 500
        assert (await service.get(where)).json()["revision"] == 1
        assert (await service.get(f"{where}/openings")).json()["items"] == []
        done = await service.post(f"{where}/openings", json=opening("K1"), headers={"idempotency-key": "k"})
        assert done.status_code == 201


async def test_two_replicas_give_one_truth(postgres: object) -> None:
    from databases import fresh_postgres
    from longpoint.schedules.migrate import migrate

    address = fresh_postgres(postgres)
    store = Store(address)
    await migrate(store)
    await store.close()
    async with serving(address) as one, serving(address) as two:
        key = {"idempotency-key": "k"}
        answers = await asyncio.gather(
            *(one_of.post("/v1/schedules", json=house(), headers=key) for one_of in (one, two) * 4)
        )
        assert len({answer.content for answer in answers}) == 1
        where = answers[0].headers["location"]

        async def widen(replica: httpx.AsyncClient, mark: str) -> None:
            left = 6
            while left:
                now = await replica.get(f"{where}/openings/{mark}")
                wider = str(int(now.json()["readings"]["jamb_width"]) + 1)
                answer = await replica.put(
                    now.url, json=opening(mark, wider), headers={"if-match": now.headers["etag"]}
                )
                assert answer.status_code in (200, 412), answer.text
                left -= answer.status_code == 200

        await one.post(f"{where}/openings", json=opening("K1", "30"))
        cached = await one.get(f"{where}/cut-list")
        await asyncio.gather(*(widen(replica, "K1") for replica in (one, two) * 3))
        for replica in (one, two):
            assert (await replica.get(f"{where}/openings/K1")).json()["readings"]["jamb_width"] == "66"
        fresh = [await replica.get(f"{where}/cut-list") for replica in (one, two)]
        assert fresh[0].content == fresh[1].content != cached.content
        assert [
            one["number"] for one in (await two.get(f"{where}/revisions?limit=99")).json()["items"]
        ] == list(range(38, 0, -1))
