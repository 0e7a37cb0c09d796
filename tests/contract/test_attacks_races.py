"""What was tried by hand of retries and of many who write at once."""

import asyncio
import json
import secrets
from collections.abc import AsyncIterator
from typing import Any

import httpx
import msgspec
import pytest
from sqlalchemy import insert

import databases
from accounts import FOUND, LEG, Pair, World, at_once, furnish, furnished, storing
from longpoint.schedules import houses, retries
from longpoint.schedules.basics import moment
from longpoint.schedules.models import Retry
from stored import TRIM, house, made, opening, serving

pytestmark = pytest.mark.usefixtures("sound")


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
                pair.ann.post(f"{where}/lengths", json={**FOUND, "note": f"{n}"}, headers=key)
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
        # One that waits too long for the others is told to try again.
        assert statuses[200] == 1
        assert statuses[412] + statuses[503] == 19
        assert statuses[412]
        (won,) = [answer for answer in answers if answer.status_code == 200]
        now = await replicas[1].get(f"{where}/openings/K1")
        assert now.json()["readings"] == won.json()["readings"]
        known = {answer.headers["etag"] for answer in answers if answer.status_code != 503}
        assert known == {now.headers["etag"]}
        assert (await replicas[0].get(where)).json()["revision"] == 2

    async def test_of_all_kinds_of_writers_from_one_state_one_wins(
        self, replicas: list[httpx.AsyncClient]
    ) -> None:
        """Each needs the schedule's own state, or would take its only opening or length away."""
        where, _ = await furnished(replicas[0])
        tag = (await replicas[0].get(where)).headers["etag"]
        whole = {"if-match": tag}
        one, two = replicas
        statuses, _ = await at_once(
            [
                one.put(where, json=house(name="A"), headers=whole),
                two.put(where, json=house(name="B"), headers=whole),
                one.post(f"{where}/openings", json=opening("K2"), headers=whole),
                two.post(f"{where}/lengths", json=FOUND, headers=whole),
                one.post(f"{where}/work", json={"pieces": [{**LEG, "piece": "stool"}]}, headers=whole),
                two.post(f"{where}/cut-sticks", json={"sticks": ["C1"]}, headers=whole),
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
        for rest in ("/openings", "/revisions", "/work", "/lengths"):
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
        assert statuses == {201: 10}
        assert len({answer.content for answer in answers}) == 1, "the same fact changes nothing"
        assert (await replicas[0].get(where)).json()["revision"] == 2
        (piece,) = (await replicas[0].get(f"{where}/work")).json()["items"]
        again = {**LEG, "opening": "K2", "recut_from": piece["id"]}
        await replicas[0].post(f"{where}/openings", json=opening("K2", "30 5/8", "45"))
        statuses, _ = await at_once(
            replicas[n % 2].post(f"{where}/work", json={"pieces": [again]}) for n in range(10)
        )
        assert statuses == {201: 1, 422: 9}
        (recut,) = (await replicas[0].get(f"{where}/work")).json()["items"]
        assert recut["opening"] == "K2"

    async def test_a_length_is_taken_once(self, replicas: list[httpx.AsyncClient]) -> None:
        where, _ = await furnished(replicas[0], lengths=[{**FOUND, "lot": "bench"}])
        statuses, _ = await at_once(
            [
                *(replicas[n % 2].post(f"{where}/work", json={"used_lengths": ["bench"]}) for n in range(6)),
                *(
                    replicas[n % 2].delete(f"{where}/lengths/bench", headers={"if-match": "*"})
                    for n in range(6)
                ),
            ]
        )
        assert statuses[200] == 1
        assert statuses[201] <= 1
        assert statuses[422] + statuses[404] == 11 - statuses[201]
        assert (await replicas[0].get(f"{where}/lengths")).json()["items"] == []
        assert (await replicas[0].get(where)).json()["revision"] == 3 + statuses[201]

    async def test_no_more_is_on_hand_for_many_at_once(
        self, replicas: list[httpx.AsyncClient], monkeypatch: pytest.MonkeyPatch
    ) -> None:
        monkeypatch.setattr("longpoint.schedules.lots.MOST_LENGTHS", 5)
        where = (await made(replicas[0])).headers["location"]
        statuses, _ = await at_once(
            replicas[n % 2].post(f"{where}/lengths", json=FOUND)
            if n % 2
            else replicas[0].post(f"{where}/work", json={"lengths": [FOUND]})
            for n in range(12)
        )
        assert statuses == {201: 5, 422: 7}
        assert len((await replicas[0].get(f"{where}/lengths")).json()["items"]) == 5
