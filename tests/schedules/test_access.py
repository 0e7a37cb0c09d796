"""Keys: shown once, kept as hashes, bound to an account, scoped, ended, revoked."""

import asyncio

import httpx
import pytest
from sqlalchemy import select

from databases import fresh_sqlite
from longpoint.__main__ import main
from longpoint.api.http.access import Access
from longpoint.app import create_app
from longpoint.schedules import keys
from longpoint.schedules.models import AccessKey
from longpoint.schedules.store import Store
from longpoint.settings import Settings
from stored import house, made, opening, serving


async def make(address: str, account: str, *scopes: str, days: float | None = None) -> str:
    """A new key, made as `keys create` makes it."""
    store = Store(address)
    async with store.writing() as connection:
        id = await keys.account_named(connection, account)
        text = await keys.make_key(connection, id, f"{account}'s", frozenset(scopes or keys.SCOPES), days)
    await store.close()
    return text


def bearer(key: str) -> dict[str, str]:
    return {"authorization": f"Bearer {key}"}


async def test_one_account_sees_nothing_of_another(database: str) -> None:
    ann, bob = await make(database, "ann"), await make(database, "bob")
    async with serving(database) as service:
        mine = await service.post(
            "/v1/schedules",
            json=house(openings=[opening("K1")]),
            headers={**bearer(ann), "idempotency-key": "1"},
        )
        where = mine.headers["location"]
        other = bearer(bob)
        assert (await service.get("/v1/schedules", headers=other)).json()["items"] == []
        match = {**other, "if-match": "*"}
        answers = [
            await service.get(where, headers=other),
            await service.get(f"{where}/openings", headers=other),
            await service.get(f"{where}/openings/K1", headers=other),
            await service.get(f"{where}/revisions", headers=other),
            await service.get(f"{where}/revisions/1", headers=other),
            await service.put(where, json=house(), headers=match),
            await service.put(f"{where}/openings/K1", json=opening("K1"), headers=match),
            await service.post(f"{where}/openings", json=opening("K2"), headers=other),
            await service.post(f"{where}/restore", json={"revision": 1}, headers=match),
            await service.post(f"{where}/archive", headers=match),
            await service.delete(f"{where}/openings/K1", headers=match),
            await service.delete(where, headers=match),
        ]
        assert {answer.status_code for answer in answers} == {404}
        assert len({answer.json()["detail"] for answer in answers}) == 1
        # The same Idempotency-Key from another account is another key.
        theirs = await service.post(
            "/v1/schedules", json=house(openings=[opening("K1")]), headers={**other, "idempotency-key": "1"}
        )
        assert theirs.status_code == 201
        assert theirs.headers["location"] != where
        (revision,) = (await service.get(f"{where}/revisions", headers=bearer(ann))).json()["items"]
        assert revision["who"] == "ann's"
        assert revision["key_id"] in ann


async def test_a_key_does_what_its_scopes_allow(database: str) -> None:
    reader, writer = await make(database, "ann", "read"), await make(database, "ann", "write")
    async with serving(database) as service:
        refused = await service.post("/v1/schedules", json=house(), headers=bearer(reader))
        assert (refused.status_code, refused.json()["type"]) == (403, "/problems/scope-missing")
        assert 'scope="write"' in refused.headers["www-authenticate"]
        assert (await service.post("/v1/schedules", json=house(), headers=bearer(writer))).status_code == 201
        assert (await service.get("/v1/schedules", headers=bearer(writer))).status_code == 403
        assert (await service.get("/v1/schedules", headers=bearer(reader))).status_code == 200


async def test_once_a_key_is_made_every_request_needs_one(database: str) -> None:
    async with serving(database) as service:
        await made(service)
        key = await make(database, "ann")
        for answer in (
            await service.get("/v1/schedules"),
            await service.get("/v1/schedules", headers=bearer(key[:-1])),
            await service.get("/v1/schedules", headers=bearer(key + "x")),
            await service.get("/v1/schedules", headers=bearer("")),
            await service.get("/v1/schedules", headers={"authorization": f"Basic {key}"}),
            await service.get("/v1/schedules", headers={"authorization": key}),
            await service.get("/v1/schedules", headers=bearer("lp_a_b")),
            await service.post("/v1/schedules", content=b"{", headers={"content-type": "application/json"}),
        ):
            assert answer.status_code == 401
            assert answer.headers["www-authenticate"].startswith("Bearer")
        assert (await service.get("/health/live")).status_code == 200
        assert (await service.get("/health/ready")).status_code == 200
        assert (await service.get("/v1/schedules", headers=bearer(key))).json()["items"] == []


async def test_a_key_ends_and_is_revoked(database: str) -> None:
    short, long = await make(database, "ann", days=1e-9), await make(database, "ann", days=1)
    async with serving(database) as service:
        ended = await service.get("/v1/schedules", headers=bearer(short))
        assert (ended.status_code, ended.json()["type"]) == (401, "/problems/key-refused")
        assert "ended at" in ended.json()["detail"]
        assert (await service.get("/v1/schedules", headers=bearer(long))).status_code == 200
        store = Store(database)
        async with store.writing() as connection:
            assert await keys.revoke_key(connection, long.split("_")[1])
        await store.close()
        revoked = await service.get("/v1/schedules", headers=bearer(long))
        assert (revoked.status_code, revoked.json()["type"]) == (401, "/problems/key-refused")


async def test_a_key_is_kept_as_a_hash_and_its_use_is_noted(database: str) -> None:
    key = await make(database, "ann")
    _, id, secret = key.split("_", 2)
    store = Store(database)

    async def row() -> object:
        async with store.reading() as connection:
            return (await connection.execute(select(AccessKey).where(AccessKey.id == id))).one()

    before = await row()
    assert before.last_used_at is None
    assert secret not in repr(before)
    async with serving(database) as service:
        await service.get("/v1/schedules", headers=bearer(key))
    assert (await row()).last_used_at is not None
    await store.close()


async def test_without_keys_only_this_machine_is_served(sqlite_database: str) -> None:
    app = create_app(Settings(access_log=False, database=sqlite_database))
    for address, status in (("192.0.2.7", 401), ("127.0.0.1", 200), ("::1", 200)):
        transport = httpx.ASGITransport(app=app, client=(address, 4711))
        async with httpx.AsyncClient(transport=transport, base_url="http://longpoint") as caller:
            assert (await caller.get("/v1/schedules")).status_code == status
            body = {"lengths": ["1 in"]}
            assert (await caller.post("/v1/lengths", json=body)).status_code == status
    await app.state.store.close()


async def test_a_service_without_a_database_only_computes(client: httpx.AsyncClient) -> None:
    assert (await client.post("/v1/lengths", json={"lengths": ["1 in"]})).status_code == 200
    answer = await client.get("/v1/schedules")
    assert (answer.status_code, answer.json()["type"]) == (503, "/problems/no-storage")
    assert Access(None) is not None


def test_keys_are_made_listed_and_revoked_at_the_prompt(
    tmp_path: object, capsys: pytest.CaptureFixture[str]
) -> None:
    address = fresh_sqlite(tmp_path)
    assert main(["migrate", "--database", address]) == 0
    capsys.readouterr()
    given = ["keys", "create", "--database", address, "--account", "mill", "--name", "van", "--scope", "read"]
    assert main(given) == 0
    shown = capsys.readouterr()
    key = shown.out.strip()
    assert "shown once" in shown.err
    assert main(["keys", "list", "--database", address]) == 0
    listed = capsys.readouterr().out
    assert "mill  van  read" in listed
    assert key not in listed
    assert key.split("_", 2)[2] not in listed
    assert main(["keys", "revoke", "--database", address, key.split("_")[1]]) == 0
    assert main(["keys", "revoke", "--database", address, "none"]) == 1
    capsys.readouterr()
    assert main(["keys", "list", "--database", address]) == 0
    assert "revoked" in capsys.readouterr().out

    async def refused() -> int:
        async with serving(address) as service:
            return (await service.get("/v1/schedules", headers=bearer(key))).status_code

    assert asyncio.run(refused()) == 401
    for wrong in (["--name", ""], ["--name", "x", "--days", "0"], ["--name", "x", "--scope", "all"]):
        with pytest.raises(SystemExit):
            main(["keys", "create", "--database", address, *wrong])
