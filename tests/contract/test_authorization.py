"""Who may do what: every operation of the document by every kind of caller, so that a new one cannot be forgotten."""

import asyncio
from typing import Any

import httpx
import pytest

import databases
from calls import OPERATIONS, prepare, success
from longpoint.schedules import keys
from longpoint.schedules.migrate import migrate
from longpoint.schedules.store import Store
from stored import serving

ACCOUNT, OTHER = "ann", "bob"
CALLERS = (
    "no key",
    "no key of ours",
    "wrong account",
    "read key",
    "write key",
    "expired",
    "revoked",
    "full key",
)


@pytest.fixture(scope="module")
def world(tmp_path_factory: pytest.TempPathFactory) -> tuple[str, dict[str, str]]:
    """A database, and a key for each kind of caller that has one."""
    address = databases.fresh_sqlite(tmp_path_factory.mktemp("matrix"))
    return address, asyncio.run(_make_keys(address))


async def _make_keys(address: str) -> dict[str, str]:
    store = Store(address, create=True)
    await migrate(store)

    async def make(account: str, *scopes: str, days: float | None = None) -> str:
        async with store.writing() as connection:
            id = await keys.account_named(connection, account)
            return await keys.make_key(connection, id, "matrix", frozenset(scopes or keys.SCOPES), days)

    made = {
        "wrong account": await make(OTHER),
        "read key": await make(ACCOUNT, "read"),
        "write key": await make(ACCOUNT, "write"),
        "expired": await make(ACCOUNT, days=1e-9),
        "revoked": await make(ACCOUNT),
        "full key": await make(ACCOUNT),
    }
    made["no key of ours"] = made["full key"][:-4] + "aaaa"
    async with store.writing() as connection:
        await keys.revoke_key(connection, made["revoked"].split("_")[1])
    await store.close()
    return made


def expected(name: str, caller: str) -> int:
    """What an operation must answer a caller, from what the document says of it."""
    path, _, entry = OPERATIONS[name]
    if not entry["security"]:
        return success(name)
    ((needed,),) = [one["bearer"] for one in entry["security"] if "bearer" in one]
    match caller:
        case "no key" | "no key of ours" | "expired" | "revoked":
            return 401
        case "wrong account":
            return 404 if "{" in path else success(name)
        case "read key" | "write key":
            return success(name) if caller.startswith(needed) else 403
    return success(name)


def bearer(made: dict[str, str], caller: str) -> dict[str, str]:
    return {"authorization": f"Bearer {made[caller]}"} if caller in made else {}


async def house_tag(owner: httpx.AsyncClient, address: str) -> Any:
    """What the house that an address is under is at; None where there is none."""
    if not address.startswith("/v1/schedules/"):
        return None
    return (await owner.get("/".join(address.split("/")[:4]))).headers["etag"]


@pytest.mark.parametrize("name", OPERATIONS)
async def test_every_caller_is_answered_as_they_may(world: tuple[str, dict[str, str]], name: str) -> None:
    database, made = world
    wrong = []
    async with (
        serving(database) as service,
        httpx.AsyncClient(
            transport=service._transport, base_url="http://longpoint", headers=bearer(made, "full key")
        ) as owner,
    ):
        call = await prepare(owner, name)
        for caller in CALLERS:
            wanted = expected(name, caller)
            before = await house_tag(owner, call.address)
            answer = await call.send(service, **bearer(made, caller))
            if answer.status_code != wanted:
                wrong.append(f"{caller}: {answer.status_code} instead of {wanted}: {answer.text[:300]}")
            if wanted == 401:
                assert answer.headers["www-authenticate"].startswith("Bearer")
            if wanted >= 400:
                assert await house_tag(owner, call.address) == before, f"{caller} changed something"
            elif call.method != "get":
                call = await prepare(owner, name)  # what was there was changed by it
    assert not wrong, wrong


def test_only_health_is_open() -> None:
    assert {name for name, (_, _, entry) in OPERATIONS.items() if not entry["security"]} == {
        "check_live",
        "check_ready",
    }


def test_reading_is_read_and_changing_is_write() -> None:
    for name, (path, method, entry) in OPERATIONS.items():
        if entry["security"]:
            wanted = "write" if path.startswith("/v1/schedules") and method != "get" else "read"
            assert entry["security"][0] == {"bearer": [wanted]}, name


async def test_lists_of_one_account_hold_nothing_of_another(world: tuple[str, dict[str, str]]) -> None:
    database, made = world
    async with serving(database) as service:
        listed = await service.get("/v1/schedules", headers=bearer(made, "wrong account"))
        for line in listed.json()["items"]:
            found = await service.get(f"/v1/schedules/{line['id']}", headers=bearer(made, "full key"))
            assert found.status_code == 404
