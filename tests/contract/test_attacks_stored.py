"""What an attacker tried by hand on what is stored: another's things, retries, races, keys, origins and the log."""

import asyncio
import json
import logging
import re
import secrets
from collections import Counter
from collections.abc import AsyncIterator, Awaitable, Iterable
from contextlib import asynccontextmanager
from typing import Any, NamedTuple
from urllib.parse import quote

import httpx
import msgspec
import pytest
from sqlalchemy import insert

import databases
from longpoint.app import create_app
from longpoint.log import JsonFormatter
from longpoint.schedules import houses, keys, retries
from longpoint.schedules.basics import moment
from longpoint.schedules.check import check_store
from longpoint.schedules.migrate import migrate
from longpoint.schedules.models import Retry
from longpoint.schedules.store import Store
from longpoint.settings import Settings
from stored import TRIM, house, made, opening, serving

LEG = {"opening": "K1", "part": "casing_leg/left", "state": "cut"}
OFFCUT = {"profile": "casing", "length": "60 in"}


class World(NamedTuple):
    """A database, and a key of each of two accounts."""

    address: str
    ann: str
    bob: str
    ann_id: str


@pytest.fixture(scope="module", params=["sqlite", "postgresql"])
def world(request: pytest.FixtureRequest, tmp_path_factory: pytest.TempPathFactory) -> World:
    """One of each kind: what tests keep in it does not meet."""
    if request.param == "sqlite":
        return asyncio.run(furnish(databases.fresh_sqlite(tmp_path_factory.mktemp("attacks"))))
    return asyncio.run(furnish(databases.fresh_postgres(request.getfixturevalue("postgres"))))


async def furnish(address: str) -> World:
    store = Store(address, create=True)
    await migrate(store)
    async with store.writing() as connection:
        ann, bob = [await keys.account_named(connection, name) for name in ("ann", "bob")]
        shown = [
            await keys.make_key(connection, id, "key", frozenset(keys.SCOPES), None) for id in (ann, bob)
        ]
    await store.close()
    return World(address, *shown, ann)


class Pair(NamedTuple):
    """Two accounts at one service."""

    ann: httpx.AsyncClient
    bob: httpx.AsyncClient


@pytest.fixture
async def pair(world: World) -> AsyncIterator[Pair]:
    async with (
        serving(world.address) as anyone,
        calling(anyone, world.ann) as ann,
        calling(anyone, world.bob) as bob,
    ):
        yield Pair(ann, bob)


@asynccontextmanager
async def calling(service: httpx.AsyncClient, key: str) -> AsyncIterator[httpx.AsyncClient]:
    """A caller of a service, with a key."""
    # Not closed: that would close the transport that is shared.
    yield httpx.AsyncClient(
        transport=service._transport, base_url="http://longpoint", headers={"authorization": f"Bearer {key}"}
    )


@asynccontextmanager
async def storing(address: str) -> AsyncIterator[Store]:
    store = Store(address)
    try:
        yield store
    finally:
        await store.close()


@pytest.fixture(autouse=True)
async def sound(request: pytest.FixtureRequest) -> AsyncIterator[None]:
    """Whatever was tried, the history hangs together and what stands repeats it."""
    yield
    if "world" in request.fixturenames:
        async with storing(request.getfixturevalue("world").address) as store:
            assert await check_store(store) == []


async def at_once(requests: Iterable[Awaitable[httpx.Response]]) -> tuple[Counter[int], list[httpx.Response]]:
    """What each is answered, and how often each status is."""
    answers = await asyncio.gather(*requests)
    return Counter(answer.status_code for answer in answers), answers


def unlike(id: str) -> str:
    """An id of the same form that nothing has."""
    return id[:-8] + "00000000"


def items_of(answer: httpx.Response) -> set[Any]:
    """What is on a page."""
    return {one.get("id", one.get("number")) for one in answer.json().get("items", [])}


async def furnished(owner: httpx.AsyncClient, **changed: Any) -> tuple[str, dict[str, str]]:
    """A house with an opening, a piece cut, an offcut; where it is, and their ids."""
    where = (await made(owner, **{"openings": [opening("K1")], "rack": [OFFCUT], **changed})).headers[
        "location"
    ]
    done = await owner.post(f"{where}/work", json={"pieces": [LEG]})
    assert done.status_code == 201, done.text
    one = (await owner.get(f"{where}/openings")).json()["items"][0]
    offcut = (await owner.get(f"{where}/offcuts")).json()["items"][0]
    return where, {"opening": one["id"], "piece": done.json()["pieces"][0]["id"], "offcut": offcut["id"]}


class TestAnotherAccount:
    """Nothing of another's can be read, changed, counted or known of."""

    async def test_parts_of_anothers_house_are_in_no_house_of_ones_own(self, pair: Pair) -> None:
        """The house is one's own, what is asked of it another's: as if it had been made up."""
        hers, ids = await furnished(pair.ann)
        his = (await made(pair.bob, openings=[opening("K2")])).headers["location"]
        before = [
            (await pair.ann.get(f"{hers}{rest}")).text for rest in ("", "/openings", "/work", "/offcuts")
        ]

        async def asked(ids: dict[str, str]) -> list[tuple[int, str]]:
            any_state = {"if-match": "*"}
            one, piece, offcut = ids["opening"], ids["piece"], ids["offcut"]
            cut = {"opening": "K2", "part": "casing_leg/left", "state": "cut"}
            works = [
                {"pieces": [{**LEG, "opening": one}]},
                {"pieces": [{**cut, "recut_from": piece}]},
                {"pieces": [cut], "used_offcuts": [offcut]},
            ]
            answers = [
                await pair.bob.get(f"{his}/openings/{one}"),
                await pair.bob.get(f"{his}/openings/{one}/drawing"),
                await pair.bob.put(f"{his}/openings/{one}", json=opening("K1"), headers=any_state),
                await pair.bob.delete(f"{his}/openings/{one}", headers=any_state),
                await pair.bob.get(f"{his}/offcuts/{offcut}"),
                await pair.bob.delete(f"{his}/offcuts/{offcut}", headers=any_state),
                await pair.bob.get(f"{his}/work/{piece}"),
                await pair.bob.delete(f"{his}/work/{piece}", headers=any_state),
                await pair.bob.get(f"{his}/work", params={"opening": one}),
                *[await pair.bob.post(f"{his}/work", json=work) for work in works],
            ]
            said = []
            for answer in answers:
                text = answer.text.replace(answer.headers["x-request-id"], "")
                for name, id in ids.items():
                    text = text.replace(id, name)
                said.append((answer.status_code, text))
            return said

        theirs = await asked(ids)
        assert {status for status, _ in theirs} == {404, 422}
        assert theirs == await asked({name: unlike(id) for name, id in ids.items()})
        assert (await pair.bob.get(his)).json()["revision"] == 1
        after = [
            (await pair.ann.get(f"{hers}{rest}")).text for rest in ("", "/openings", "/work", "/offcuts")
        ]
        assert after == before

    async def test_anothers_tag_and_address_tell_nothing(self, pair: Pair) -> None:
        """Who knows the address and the state is answered as who knows neither."""
        hers, ids = await furnished(pair.ann)
        for rest in (
            "/export",
            "/cut-list",
            "/sheets/piece-labels",
            "/drawings/sticks",
            "/changes?from=1",
            "/revisions/2",
            "/openings/K1/drawing",
            "/openings/{opening}",
            "/offcuts/{offcut}",
            "/work/{piece}",
        ):
            address = hers + rest.format(**ids)
            tag = (await pair.ann.get(address)).headers["etag"]
            assert (await pair.ann.get(address, headers={"if-none-match": tag})).status_code == 304
            for headers in ({"if-none-match": tag}, {"if-none-match": "*"}, {"if-match": tag}, {}):
                answer = await pair.bob.get(address, headers=headers)
                assert answer.status_code == 404
                assert "etag" not in answer.headers
            for method in ("PUT", "DELETE"):
                for headers in ({"if-match": tag}, {"if-match": '"another"'}, {}):
                    answer = await pair.bob.request(method, address, headers=headers, json=opening("K1"))
                    assert answer.status_code in (404, 405), "not 412 nor 428: they tell that it is there"

    async def test_two_houses_alike_share_no_answer(self, pair: Pair) -> None:
        """Answers worked out lately are kept: never for whoever sent the same."""
        (hers, her_ids), (his, his_ids) = await furnished(pair.ann), await furnished(pair.bob)
        for rest in (
            "",
            "/cut-list",
            "/export",
            "/sheets/saw-sheet",
            "/drawings/sticks",
            "/openings/K1/drawing",
        ):
            own, other = await pair.ann.get(hers + rest), await pair.bob.get(his + rest)
            assert own.status_code == other.status_code == 200
            assert own.headers["etag"] != other.headers["etag"], rest
            tagged = {"if-none-match": own.headers["etag"]}
            assert (await pair.bob.get(his + rest, headers=tagged)).status_code == 200
            for id in (hers.rpartition("/")[2], *her_ids.values()):
                assert id not in other.text, rest
        tag = (await pair.ann.get(f"{hers}/openings/K1")).headers["etag"]
        stale = await pair.bob.put(f"{his}/openings/K1", json=opening("K1", "31"), headers={"if-match": tag})
        assert stale.status_code == 412
        mine = await pair.bob.get(f"{his}/openings/{his_ids['opening']}")
        assert stale.headers["etag"] == mine.headers["etag"]

    async def test_a_cursor_leads_into_no_other_list(self, pair: Pair) -> None:
        lists = ("openings", "offcuts", "revisions", "work")
        hers, _ = await furnished(pair.ann, openings=[opening("K1"), opening("K2")], rack=[OFFCUT] * 2)
        his, _ = await furnished(pair.bob, openings=[opening("K1"), opening("K2")], rack=[OFFCUT] * 2)
        await pair.ann.post(f"{hers}/work", json={"pieces": [{**LEG, "opening": "K2"}]})
        cursors = [
            (await pair.ann.get(address, params={"limit": 1})).json()["next"]
            for address in ("/v1/schedules", *(f"{hers}/{rest}" for rest in lists))
        ]
        for address in ("/v1/schedules", *(f"{his}/{rest}" for rest in lists)):
            own = items_of(await pair.bob.get(address, params={"limit": 500}))
            assert hers.rpartition("/")[2] not in own
            for cursor in cursors:
                answer = await pair.bob.get(address, params={"cursor": cursor, "limit": 500})
                assert answer.status_code in (200, 422), answer.text
                assert items_of(answer) <= own

    async def test_anothers_retry_key_is_a_new_one(self, pair: Pair) -> None:
        """On every operation that takes one: never another's answer, and never word that it was used."""
        hers, _ = await furnished(pair.ann)
        his, _ = await furnished(pair.bob)
        imported = {"openings": [opening("I1")]}
        tries: list[tuple[str, Any]] = [
            ("/openings", opening("K9")),
            ("/offcuts", OFFCUT),
            ("/work", {"pieces": [{**LEG, "part": "stool"}]}),
            ("/import", imported),
            ("/cut-sticks", {"profile": "casing", "sticks": [1]}),
            ("/restore", {"revision": 1}),
            ("/archive", None),
            ("/unarchive", None),
        ]
        for rest, body in tries:
            headers = {"idempotency-key": f"{hers}{rest}", "if-match": "*"}
            first = await pair.ann.post(hers + rest, json=body, headers=headers)
            assert first.status_code in (200, 201), first.text
            again = await pair.ann.post(hers + rest, json=body, headers=headers)
            assert again.headers["idempotency-replayed"] == "true"
            stranger = await pair.bob.post(hers + rest, json=body, headers=headers)
            assert stranger.status_code == 404, rest
            own = await pair.bob.post(his + rest, json=body, headers=headers)
            assert own.status_code == first.status_code, own.text
            assert "idempotency-replayed" not in own.headers
            assert hers.rpartition("/")[2] not in own.text + str(own.headers)


class TestRetries:
    """A key sent again while the first is under way, by the same or another, with the same or another body."""

    async def test_of_twenty_at_once_one_does_it(self, pair: Pair) -> None:
        key = {"idempotency-key": secrets.token_hex(8)}
        statuses, answers = await at_once(
            [
                *(pair.ann.post("/v1/schedules", json=house(), headers=key) for _ in range(20)),
                pair.bob.post("/v1/schedules", json=house(name=key["idempotency-key"]), headers=key),
            ]
        )
        assert statuses == {201: 21}
        assert len({answer.content for answer in answers[:20]}) == 1
        assert sum("idempotency-replayed" not in answer.headers for answer in answers) == 2
        named = await pair.bob.get("/v1/schedules", params={"name": key["idempotency-key"]})
        assert len(named.json()["items"]) == 1

    async def test_of_twenty_different_at_once_one_is_done(self, pair: Pair) -> None:
        where = (await made(pair.ann)).headers["location"]
        key = {"idempotency-key": secrets.token_hex(8)}
        statuses, answers = await at_once(
            [*(pair.ann.post(f"{where}/openings", json=opening(f"K{n}"), headers=key) for n in range(10))]
            + [
                pair.ann.post(f"{where}/offcuts", json={**OFFCUT, "note": f"{n}"}, headers=key)
                for n in range(10)
            ]
        )
        assert statuses == {201: 1, 422: 19}
        codes = {answer.json()["errors"][0]["code"] for answer in answers if answer.status_code == 422}
        assert codes == {"key-reused"}
        assert (await pair.ann.get(where)).json()["revision"] == 2

    async def test_what_comes_while_the_first_is_held_up_waits_for_it(self, world: World, pair: Pair) -> None:
        where = (await made(pair.ann)).headers["location"]
        key = {"idempotency-key": secrets.token_hex(8)}
        async with storing(world.address) as store:
            async with store.writing() as connection:
                await houses.find(connection, world.ann_id, where.rpartition("/")[2], hold=True)
                first = asyncio.create_task(
                    pair.ann.post(f"{where}/openings", json=opening("K1"), headers=key)
                )
                await asyncio.sleep(0.2)
                same = asyncio.create_task(
                    pair.ann.post(f"{where}/openings", json=opening("K1"), headers=key)
                )
                other = asyncio.create_task(
                    pair.ann.post(f"{where}/openings", json=opening("K2"), headers=key)
                )
                await asyncio.sleep(0.2)
                assert not any(task.done() for task in (first, same, other))
            assert (await first).status_code == 201
            assert (await same).content == (await first).content
            assert (await other).json()["type"] == "/problems/idempotency-key-reused"

    async def test_a_first_that_is_refused_or_given_up_leaves_the_key_free(
        self, world: World, pair: Pair
    ) -> None:
        where = (await made(pair.ann)).headers["location"]
        key = {"idempotency-key": secrets.token_hex(8)}
        bad = opening("K1", trim="no such trim")
        statuses, _ = await at_once(
            [pair.ann.post(f"{where}/openings", json=bad, headers=key) for _ in range(10)]
            + [pair.ann.post("/v1/schedules", json=house(kerf="x"), headers=key) for _ in range(5)]
        )
        assert statuses == {422: 15}
        async with storing(world.address) as store, store.writing() as connection:
            await houses.find(connection, world.ann_id, where.rpartition("/")[2], hold=True)
            given_up = asyncio.create_task(
                pair.ann.post(f"{where}/openings", json=opening("K1"), headers=key)
            )
            await asyncio.sleep(0.1)
            given_up.cancel()
        done = await pair.ann.post(f"{where}/openings", json=opening("K2"), headers=key)
        assert done.status_code == 201
        assert "idempotency-replayed" not in done.headers

    async def test_the_same_said_otherwise_is_the_same(self, pair: Pair) -> None:
        """White space, the order of members at every depth, and the encoding say nothing."""
        body = house(trim_specs={"painted": TRIM, "oak": TRIM}, openings=[opening("K1")])
        key = {"idempotency-key": secrets.token_hex(8), "content-type": "application/json"}
        packed = {**key, "content-type": "application/msgpack"}
        first = await pair.ann.post("/v1/schedules", json=body, headers=key)
        assert first.status_code == 201
        for content, headers in (
            (json.dumps(body, indent=7).encode(), key),
            (json.dumps(backwards(body)).encode(), key),
            (json.dumps(body).replace("K1", "\\u004b1").encode(), key),
            (msgspec.msgpack.encode(backwards(body)), packed),
        ):
            again = await pair.ann.post("/v1/schedules", content=content, headers=headers)
            assert again.content == first.content, content[:100]
        other = {**body, "openings": []}
        assert (await pair.ann.post("/v1/schedules", json=other, headers=key)).status_code == 422

    async def test_what_another_account_is_at_keeps_nobody_waiting(self, postgres: Any) -> None:
        """Keys whose time is over are forgotten by whoever comes; the next one waited until the first was done."""
        world = await furnish(databases.fresh_postgres(postgres))
        async with serving(world.address) as anyone, storing(world.address) as store:
            old = {
                "status": 200,
                "request_digest": "",
                "headers": "{}",
                "body": "{}",
                "expires_at": moment(-1),
            }
            async with store.writing() as connection:
                rows = [{**old, "account_id": world.ann_id, "key": f"old {number}"} for number in range(60)]
                await connection.execute(insert(Retry), rows)
            async with store.writing() as connection:
                assert await retries.claim(connection, world.ann_id, secrets.token_hex(8), "") is None
                his = {"authorization": f"Bearer {world.bob}", "idempotency-key": "his"}
                async with asyncio.timeout(3):
                    own = await anyone.post("/v1/schedules", json=house(), headers=his)
                assert own.status_code == 201
                await connection.rollback()


def backwards(node: Any) -> Any:
    """A body with the members of every object in the opposite order."""
    if isinstance(node, dict):
        return {name: backwards(node[name]) for name in reversed(node)}
    return [backwards(each) for each in node] if isinstance(node, list) else node


class TestRaces:
    """Many at once, at two replicas: one wins, all are told, and nothing is half done."""

    @pytest.fixture
    async def replicas(self, world: World) -> AsyncIterator[list[httpx.AsyncClient]]:
        shown = {"authorization": f"Bearer {world.ann}"}
        async with serving(world.address, **shown) as one, serving(world.address, **shown) as two:
            yield [one, two]

    async def test_of_twenty_writers_from_one_state_one_wins(self, replicas: list[httpx.AsyncClient]) -> None:
        where = (await made(replicas[0], openings=[opening("K1")])).headers["location"]
        one = await replicas[0].get(f"{where}/openings/K1")
        tag = {"if-match": one.headers["etag"]}
        statuses, answers = await at_once(
            replicas[n % 2].put(f"{where}/openings/K1", json=opening("K1", f"{30 + n}"), headers=tag)
            for n in range(20)
        )
        assert statuses == {200: 1, 412: 19}
        (won,) = [answer for answer in answers if answer.status_code == 200]
        now = await replicas[1].get(f"{where}/openings/K1")
        assert now.json()["readings"] == won.json()["readings"]
        assert {answer.headers["etag"] for answer in answers} == {now.headers["etag"]}
        assert (await replicas[0].get(where)).json()["revision"] == 2

    async def test_of_all_kinds_of_writers_from_one_state_one_wins(
        self, replicas: list[httpx.AsyncClient]
    ) -> None:
        """Each needs the schedule's own state, or would take its only opening or offcut away."""
        where, _ = await furnished(replicas[0])
        tag = (await replicas[0].get(where)).headers["etag"]
        whole = {"if-match": tag}
        one, two = replicas
        statuses, _ = await at_once(
            [
                one.put(where, json=house(name="A"), headers=whole),
                two.put(where, json=house(name="B"), headers=whole),
                one.post(f"{where}/openings", json=opening("K2"), headers=whole),
                two.post(f"{where}/offcuts", json=OFFCUT, headers=whole),
                one.post(f"{where}/work", json={"pieces": [{**LEG, "part": "stool"}]}, headers=whole),
                two.post(f"{where}/cut-sticks", json={"profile": "casing", "sticks": [1]}, headers=whole),
                one.post(
                    f"{where}/import?existing=replace", json={"openings": [opening("K5")]}, headers=whole
                ),
                two.post(f"{where}/restore", json={"revision": 1}, headers=whole),
            ]
        )
        assert statuses[412] == 7, statuses
        assert (await one.get(where)).json()["revision"] == 3

    async def test_an_opening_goes_while_it_is_written(self, replicas: list[httpx.AsyncClient]) -> None:
        where = (await made(replicas[0], openings=[opening("K1")])).headers["location"]
        any_state, one = {"if-match": "*"}, f"{where}/openings/K1"
        statuses, _ = await at_once(
            replicas[n % 2].delete(one, headers=any_state)
            if n in (7, 12)
            else replicas[n % 2].put(one, json=opening("K1", f"{30 + n}"), headers=any_state)
            for n in range(20)
        )
        assert set(statuses) == {200, 404}, statuses
        assert (await replicas[0].get(one)).status_code == 404
        assert (await replicas[0].get(where)).json()["revision"] == 1 + statuses[200]

    async def test_a_schedule_goes_while_it_is_written(self, replicas: list[httpx.AsyncClient]) -> None:
        where = (await made(replicas[0], openings=[opening("K1")])).headers["location"]
        any_state = {"if-match": "*"}
        requests = []
        for n in range(5):
            one = replicas[n % 2]
            requests += [
                one.post(f"{where}/openings", json=opening(f"N{n}")),
                one.post(f"{where}/archive", headers=any_state),
                one.delete(where, headers=any_state),
                one.get(f"{where}/cut-list"),
                one.get(f"{where}/export"),
            ]
        statuses, answers = await at_once(requests)
        assert set(statuses) <= {200, 201, 204, 404, 409}, statuses
        assert statuses[204] <= 1
        for answer in answers:
            if answer.status_code == 200 and answer.url.path.endswith("/export"):
                assert "K1" in {one["mark"] for one in answer.json()["openings"]}
        left = await replicas[0].get(where)
        assert left.status_code == (404 if statuses[204] else 200)
        for rest in ("/openings", "/revisions", "/work", "/offcuts"):
            assert (await replicas[1].get(where + rest)).status_code == left.status_code

    async def test_imports_at_once_stay_under_the_limit(
        self, replicas: list[httpx.AsyncClient], monkeypatch: pytest.MonkeyPatch
    ) -> None:
        monkeypatch.setattr("longpoint.api.stored.openings.MOST_OPENINGS", 10)
        where = (await made(replicas[0], openings=[opening("K1")])).headers["location"]
        statuses, _ = await at_once(
            [
                *(
                    replicas[n % 2].post(
                        f"{where}/import", json={"openings": [opening(f"{n}-{m}") for m in range(4)]}
                    )
                    for n in range(6)
                ),
                *(replicas[n % 2].post(f"{where}/openings", json=opening(f"N{n}")) for n in range(12)),
            ]
        )
        schedule = (await replicas[0].get(where)).json()
        listed = (await replicas[1].get(f"{where}/openings")).json()["items"]
        assert len(listed) == schedule["opening_count"] == 10
        assert set(statuses) == {200, 201, 422}
        assert 1 + 4 * statuses[200] + statuses[201] == 10
        assert len({one["position"] for one in listed}) == 10

    async def test_imports_of_one_mark_at_once_bring_it_once(self, replicas: list[httpx.AsyncClient]) -> None:
        where = (await made(replicas[0])).headers["location"]
        statuses, _ = await at_once(
            replicas[n % 2].post(f"{where}/import", json={"openings": [opening("K1"), opening(f"N{n}")]})
            if n % 3
            else replicas[n % 2].post(f"{where}/openings", json=opening("K1"))
            for n in range(12)
        )
        assert statuses[200] + statuses[201] == 1
        assert statuses[422] == 11
        listed = (await replicas[1].get(f"{where}/openings")).json()["items"]
        assert [one["mark"] for one in listed].count("K1") == 1

    async def test_a_piece_is_recorded_once(self, replicas: list[httpx.AsyncClient]) -> None:
        where = (await made(replicas[0], openings=[opening("K1")])).headers["location"]
        statuses, answers = await at_once(
            replicas[n % 2].post(f"{where}/work", json={"pieces": [LEG]}) for n in range(10)
        )
        assert statuses == {201: 1, 422: 9}
        codes = {answer.json()["errors"][0]["code"] for answer in answers if answer.status_code == 422}
        assert codes == {"already-cut"}
        (piece,) = (await replicas[0].get(f"{where}/work")).json()["items"]
        again = {**LEG, "opening": "K2", "recut_from": piece["id"]}
        await replicas[0].post(f"{where}/openings", json=opening("K2", "30 5/8", "45"))
        statuses, _ = await at_once(
            replicas[n % 2].post(f"{where}/work", json={"pieces": [again]}) for n in range(10)
        )
        assert statuses == {201: 1, 422: 9}
        (recut,) = (await replicas[0].get(f"{where}/work")).json()["items"]
        assert recut["opening"] == "K2"

    async def test_an_offcut_is_taken_once(self, replicas: list[httpx.AsyncClient]) -> None:
        where, ids = await furnished(replicas[0])
        offcut = ids["offcut"]
        statuses, _ = await at_once(
            [
                *(replicas[n % 2].post(f"{where}/work", json={"used_offcuts": [offcut]}) for n in range(6)),
                *(
                    replicas[n % 2].delete(f"{where}/offcuts/{offcut}", headers={"if-match": "*"})
                    for n in range(6)
                ),
            ]
        )
        assert statuses[200] + statuses[201] == 1
        assert statuses[422] + statuses[404] == 11
        assert (await replicas[0].get(f"{where}/offcuts")).json()["items"] == []
        assert (await replicas[0].get(where)).json()["revision"] == 3

    async def test_the_rack_is_no_fuller_for_many_at_once(
        self, replicas: list[httpx.AsyncClient], monkeypatch: pytest.MonkeyPatch
    ) -> None:
        monkeypatch.setattr("longpoint.api.stored.offcuts.MOST_OFFCUTS", 5)
        where = (await made(replicas[0])).headers["location"]
        statuses, _ = await at_once(
            replicas[n % 2].post(f"{where}/offcuts", json=OFFCUT)
            if n % 2
            else replicas[0].post(f"{where}/work", json={"offcuts": [OFFCUT]})
            for n in range(12)
        )
        assert statuses == {201: 5, 422: 7}
        assert len((await replicas[0].get(f"{where}/offcuts")).json()["items"]) == 5


class TestKeys:
    """Keys that end while they are used, and what only looks like a key."""

    async def fresh(self, world: World, days: float | None = None) -> str:
        async with storing(world.address) as store, store.writing() as connection:
            return await keys.make_key(connection, world.ann_id, "short", frozenset(keys.SCOPES), days)

    async def test_a_key_revoked_while_a_request_is_under_way_does_nothing_more(self, world: World) -> None:
        """What was let in is done whole and signed with the key; what comes after is refused, computations soon."""
        key = await self.fresh(world)
        async with (
            serving(world.address, authorization=f"Bearer {key}") as service,
            storing(world.address) as store,
        ):
            where = (await made(service)).headers["location"]
            async with store.writing() as connection:
                await houses.find(connection, world.ann_id, where.rpartition("/")[2], hold=True)
                under_way = asyncio.create_task(service.post(f"{where}/openings", json=opening("K1")))
                await asyncio.sleep(0.2)
                assert await keys.revoke_key(connection, key.split("_")[1])
            assert (await under_way).status_code == 201
            for answer in (
                await service.post(f"{where}/openings", json=opening("K2")),
                await service.get(f"{where}/openings"),
                await service.post("/v1/lengths", json={"lengths": ["1 in"]}),
            ):
                assert (answer.status_code, answer.json()["type"]) == (401, "/problems/key-refused")
        async with serving(world.address, authorization=f"Bearer {world.ann}") as owner:
            (revision, _) = (await owner.get(f"{where}/revisions")).json()["items"]
            assert revision["key_id"] == key.split("_")[1]

    async def test_a_key_ends_at_its_moment_even_where_it_is_remembered(self, world: World) -> None:
        key = await self.fresh(world, days=0.7 / 86400)
        body = {"lengths": ["1 in"]}
        async with serving(world.address, authorization=f"Bearer {key}") as service:
            assert (await service.post("/v1/lengths", json=body)).status_code == 200
            assert (await service.get("/v1/schedules")).status_code == 200
            await asyncio.sleep(0.75)
            for answer in (await service.post("/v1/lengths", json=body), await service.get("/v1/schedules")):
                assert answer.status_code == 401
                assert "ended at" in answer.json()["detail"]

    async def test_what_is_no_key_is_refused_and_nothing_else(self, world: World) -> None:
        key, id = world.ann, world.ann.split("_")[1]
        shown: list[list[bytes]] = [
            [b"Bearer"],
            [b"Bearer "],
            [b"Bearer lp__"],
            [b"Bearer lp_%s_" % id.encode()],
            [b"Bearer lp_%s" % id.encode()],
            [b"Bearer lp_%s_\xff\xfe" % id.encode()],
            [b"Bearer lp_\xe9\x80_\xa0"],
            [b"Bearer lp_' OR 1=1 --_x"],
            [b"Bearer lp_%_%"],
            [b"Bearer lp_" + b"a" * 50_000 + b"_" + b"b" * 50_000],
            [b"Bearer " + key.upper().encode()],
            [b"Bearer " + key.encode() + b"="],
            [b"Bearer " + key.encode() + b", Bearer " + key.encode()],
            [b"Bearer " + key.encode() + b" x"],
            [b"Bearer\t" + key.encode()],
            [b"Basic " + key.encode()],
            [key.encode()],
            [b"Bearer " + key.encode(), b"Bearer " + key.encode()],
            [b"Bearer none", b"Bearer " + key.encode()],
            [b"Bearer " + key.encode(), b""],
        ]
        async with serving(world.address) as service:
            for lines in shown:
                for method, address in (("GET", "/v1/schedules"), ("POST", "/v1/lengths")):
                    headers = [(b"authorization", line) for line in lines]
                    answer = await service.request(method, address, headers=headers)
                    assert answer.status_code == 401, (lines, answer.text)
                    assert answer.headers["www-authenticate"].startswith("Bearer")
                    assert key not in answer.text
            elsewhere = {
                "x-api-key": key,
                "cookie": f"authorization=Bearer {key}",
                "proxy-authorization": f"Bearer {key}",
            }
            for name in ("key", "access_token", "authorization", "api_key"):
                answer = await service.get("/v1/schedules", params={name: key}, headers=elsewhere)
                assert answer.status_code == 401
            for kind in ("bearer", "BEARER", "Bearer  "):
                good = {"authorization": f"{kind} {key}"}
                assert (await service.get("/v1/schedules", headers=good)).status_code == 200


class TestOrigins:
    """Which pages may call from a browser: the listed, to the letter."""

    LISTED = ("https://trim.example", "http://localhost:5173", "https://Yard.example")
    NOT_LISTED = (
        "null",
        "",
        "*",
        "https://trim.example.evil.example",
        "https://trim.examples",
        "https://trimxexample",
        "https://sub.trim.example",
        "https://trim.example:443",
        "https://trim.example/",
        "https://trim.example@evil.example",
        "https://trim.example, https://evil.example",
        "https://trim.example|http://localhost:5173",
        "HTTPS://TRIM.EXAMPLE",
        "http://trim.example",
        "http://localhost",
        "http://localhost:51730",
    )

    @pytest.fixture
    async def listed(self, sqlite_database: str) -> AsyncIterator[httpx.AsyncClient]:
        app = create_app(Settings(access_log=False, database=sqlite_database, cors_origins=self.LISTED))
        async with httpx.AsyncClient(
            transport=httpx.ASGITransport(app=app), base_url="http://longpoint"
        ) as caller:
            yield caller
        await app.state.access.close()
        await app.state.store.close()

    async def test_no_other_may(self, listed: httpx.AsyncClient) -> None:
        for origin in self.NOT_LISTED:
            for method in ("GET", "POST", "PUT", "DELETE", "PATCH", "get", "TRACE", "x" * 1000):
                asked = await listed.options(
                    "/v1/schedules", headers={"origin": origin, "access-control-request-method": method}
                )
                assert not [name for name in asked.headers if name.startswith("access-control-allow")], origin
            answer = await listed.get("/v1/schedules", headers={"origin": origin})
            assert answer.status_code == 200
            assert not [name for name in answer.headers if name.startswith("access-control")], origin
        both = [("origin", "https://trim.example"), ("origin", "https://evil.example")]
        assert "access-control-allow-origin" not in (await listed.get("/v1/schedules", headers=both)).headers

    async def test_a_listed_one_may_do_what_there_is_to_do(self, listed: httpx.AsyncClient) -> None:
        for origin in (one.lower() for one in self.LISTED):
            for path in ("/v1/schedules", "/v1/lengths", "/v1/nowhere"):
                asked = await listed.options(
                    path, headers={"origin": origin, "access-control-request-method": "DELETE"}
                )
                assert asked.status_code == 204
                assert asked.headers["access-control-allow-origin"] == origin
                assert asked.headers["access-control-allow-methods"] == "DELETE, GET, POST, PUT"
                assert "access-control-allow-credentials" not in asked.headers
            plain = await listed.options("/v1/schedules", headers={"origin": origin})
            assert "GET" in plain.headers["allow"], "no preflight: a question for the methods"

    async def test_every_answer_says_what_it_depends_on(self, listed: httpx.AsyncClient) -> None:
        """Accept was lost where Origin came; a cache could give a page in one format to who asked for another."""
        where = (await made(listed, openings=[opening("K1")])).headers["location"]
        for origin in ("https://trim.example", "https://evil.example", None):
            headers = {"origin": origin} if origin else {}
            for rest in ("", "/cut-list", "/sheets/saw-sheet", "/openings/K1/drawing", "/export"):
                answer = await listed.get(where + rest, headers=headers)
                assert set(answer.headers["vary"].split(", ")) == {"accept", "origin"}, rest
                told = await listed.get(
                    where + rest, headers={**headers, "if-none-match": answer.headers["etag"]}
                )
                assert told.status_code == 304
                assert set(told.headers["vary"].split(", ")) == {"accept", "origin"}, rest

    async def test_a_listed_page_hears_why_it_was_turned_away(self, listed: httpx.AsyncClient) -> None:
        late = {"origin": "https://trim.example", "x-request-start": "t=1000000000.000"}
        for answer, status in (
            (await listed.get("/v1/schedules", headers=late), 503),
            (await listed.get("/v1/nowhere", headers={"origin": "https://trim.example"}), 404),
            (await listed.put("/v1/lengths", headers={"origin": "https://trim.example"}), 405),
        ):
            assert answer.status_code == status
            assert answer.headers["access-control-allow-origin"] == "https://trim.example"
            assert "Retry-After" in answer.headers["access-control-expose-headers"]


FORGED = '"}\n{"level":"error"}\r\x1b[2J\x7f\x85\x9b31m\u2028\u202e\u2066'
"""What ends a text, an object or a line, and what a terminal obeys."""


class TestRecords:
    """What is written into a record stays in its field."""

    async def test_a_reason_and_a_note_forge_no_other_record(self, pair: Pair) -> None:
        """They may have any character but NUL; they come back as they were sent, in one revision each."""
        where = (await made(pair.ann)).headers["location"]
        text = FORGED + '", "who": "bob", "number": 99'
        added = await pair.ann.post(
            f"{where}/offcuts", json={**OFFCUT, "note": text}, params={"why": text}, headers={"if-match": "*"}
        )
        assert added.status_code == 201, added.text
        assert added.json()["note"] == text
        latest, first = (await pair.ann.get(f"{where}/revisions")).json()["items"]
        assert (latest["number"], latest["who"], latest["why"]) == (2, "key", text)
        assert (first["number"], first["why"]) == (1, "")
        assert (await pair.ann.get(f"{where}/export")).json()["rack"][0]["note"] == text

    async def test_a_mark_and_a_name_are_one_line(self, pair: Pair) -> None:
        where = (await made(pair.ann)).headers["location"]
        for mark in ("K1\nK2", "K1\r", "K1\x00", "\x1b[2JK1", "K1\x7f", "K1\t", " K1"):
            for answer in (
                await pair.ann.post(f"{where}/openings", json=opening(mark)),
                await pair.ann.post(f"{where}/import", json={"openings": [opening(mark)]}),
                await pair.ann.post("/v1/schedules", json=house(name=mark)),
                await pair.ann.post("/v1/schedules", json=house(trim_specs={mark: TRIM})),
            ):
                assert answer.status_code == 422, (mark, answer.text)

    async def test_a_mark_and_a_filter_forge_no_field_of_an_answer(self, pair: Pair) -> None:
        """File names and links to the next page are made from what was sent."""
        mark = 'K1"; filename="x.exe>; rel="next", <//evil.example\x85\u2028é'
        sent = {"name": mark, "trim_specs": {mark: TRIM}, "openings": [opening(mark, trim=mark, room=mark)]}
        where = (await made(pair.ann, **sent)).headers["location"]
        await pair.ann.post(f"{where}/openings", json=opening("K2", trim=mark, room=mark))
        page = await pair.ann.get(f"{where}/openings", params={"room": mark, "limit": 1})
        assert page.links["next"]["url"].startswith(f"{where}/openings?room=")
        assert page.headers["link"].count("<") == page.headers["link"].count(">") == 1
        following = await pair.ann.get(page.links["next"]["url"])
        assert [one["mark"] for one in following.json()["items"]] == ["K2"]
        id = page.json()["items"][0]["id"]
        for rest in ("/sheets/saw-sheet?format=csv", f"/openings/{id}/drawing"):
            name = (await pair.ann.get(where + rest)).headers["content-disposition"]
            assert re.fullmatch(r'(inline|attachment); filename="[a-z0-9-]+\.(csv|svg)"', name), name


class TestTheLog:
    """One request is one line, and a terminal that shows it does nothing else."""

    @pytest.fixture
    async def logged(self, sqlite_database: str) -> AsyncIterator[httpx.AsyncClient]:
        app = create_app(Settings(access_log=True, database=sqlite_database))
        async with httpx.AsyncClient(
            transport=httpx.ASGITransport(app=app), base_url="http://longpoint"
        ) as caller:
            yield caller
            app.asgi_handler.log.flush()
        await app.state.access.close()
        await app.state.store.close()

    async def test_an_address_forges_no_line(
        self, logged: httpx.AsyncClient, caplog: pytest.LogCaptureFixture
    ) -> None:
        with caplog.at_level(logging.INFO, logger="longpoint"):
            for path in ("/v1/nowhere", "/v1/schedules", "/docs/assets"):
                assert (await logged.get(f"{path}/{quote(FORGED, safe='')}")).status_code == 404
            logged._transport.app.asgi_handler.log.flush()
        lines = caplog.messages[-1].splitlines()
        assert len(lines) == 3
        assert all(line.isprintable() for line in lines)
        assert {json.loads(line)["path"].rpartition("/")[2] for line in lines} == {FORGED}

    @pytest.mark.parametrize("text", [FORGED, "half a character: \ud800"])
    def test_a_failure_that_repeats_what_was_sent_forges_no_line(self, text: str) -> None:
        try:
            raise ValueError(text)
        except ValueError as failure:
            info = (type(failure), failure, failure.__traceback__)
        record = logging.LogRecord("longpoint.errors", logging.ERROR, "", 0, "no %s", (text,), info)
        line = JsonFormatter().format(record)
        assert line.isprintable()
        assert json.loads(line)["message"] == f"no {text}"
        assert text in json.loads(line)["trace"]

    def test_letters_stay_readable(self) -> None:
        record = logging.LogRecord("longpoint", logging.INFO, "", 0, "Fenêtre 3″", (), None)
        assert "Fenêtre 3″" in JsonFormatter().format(record)
