"""What an attacker tried by hand with an account and a key of their own on what is another's."""

import asyncio
from typing import Any

import pytest

from accounts import FOUND, LEG, Pair, World, furnished, items_of, storing, unlike
from longpoint.schedules import houses, keys
from stored import made, opening, serving

pytestmark = pytest.mark.usefixtures("sound")


class TestAnotherAccount:
    """Nothing of another's can be read, changed, counted or known of."""

    async def test_pieces_of_anothers_house_are_in_no_house_of_ones_own(self, pair: Pair) -> None:
        """The house is one's own, what is asked of it another's: as if it had been made up."""
        hers, ids = await furnished(pair.ann)
        his = (await made(pair.bob, openings=[opening("K2")])).headers["location"]
        before = [
            (await pair.ann.get(f"{hers}{rest}")).text for rest in ("", "/openings", "/work", "/lengths")
        ]

        async def asked(ids: dict[str, str]) -> list[tuple[int, str]]:
            any_state = {"if-match": "*"}
            one, piece, length = ids["opening"], ids["piece"], ids["length"]
            cut = {"opening": "K2", "piece": "side_casing/left", "state": "cut"}
            works = [
                {"pieces": [{**LEG, "opening": one}]},
                {"pieces": [{**cut, "recut_from": piece}]},
                {"pieces": [cut], "used_lengths": [length]},
            ]
            answers = [
                await pair.bob.get(f"{his}/openings/{one}"),
                await pair.bob.get(f"{his}/openings/{one}/drawing"),
                await pair.bob.put(f"{his}/openings/{one}", json=opening("K1"), headers=any_state),
                await pair.bob.delete(f"{his}/openings/{one}", headers=any_state),
                await pair.bob.get(f"{his}/lengths/{length}"),
                await pair.bob.delete(f"{his}/lengths/{length}", headers=any_state),
                await pair.bob.put(f"{his}/lengths/{length}", json=FOUND, headers=any_state),
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
        assert {status for status, _ in theirs} == {404, 412, 422}
        assert theirs == await asked({name: unlike(id) for name, id in ids.items()})
        assert (await pair.bob.get(his)).json()["revision"] == 1
        after = [
            (await pair.ann.get(f"{hers}{rest}")).text for rest in ("", "/openings", "/work", "/lengths")
        ]
        assert after == before

    async def test_anothers_tag_and_address_tell_nothing(self, pair: Pair) -> None:
        """Who knows the address and the state is answered as who knows neither."""
        hers, ids = await furnished(pair.ann)
        for rest in (
            "/export",
            "/cut-list",
            "/sheets/labels",
            "/drawings/sticks",
            "/changes?from=1",
            "/revisions/2",
            "/openings/K1/drawing",
            "/openings/{opening}",
            "/lengths/{length}",
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
                    body = FOUND if rest.startswith("/lengths") else opening("K1")
                    answer = await pair.bob.request(method, address, headers=headers, json=body)
                    assert answer.status_code in (404, 405), "not 412 nor 428: they tell that it is there"

    async def test_two_houses_alike_share_no_answer(self, pair: Pair) -> None:
        """Answers worked out lately are kept: never for whoever sent the same."""
        (hers, her_ids), (his, his_ids) = await furnished(pair.ann), await furnished(pair.bob)
        for rest in (
            "",
            "/cut-list",
            "/export",
            "/sheets/stick-sheet",
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
        lists = ("openings", "lengths", "revisions", "work")
        hers, _ = await furnished(pair.ann, openings=[opening("K1"), opening("K2")], lengths=[FOUND] * 2)
        his, _ = await furnished(pair.bob, openings=[opening("K1"), opening("K2")], lengths=[FOUND] * 2)
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
            ("/lengths", FOUND),
            ("/work", {"pieces": [{**LEG, "piece": "stool"}]}),
            ("/import", imported),
            ("/cut-sticks", {"sticks": ["C1"]}),
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
        body = {"lengths": ["1 in"]}
        async with serving(world.address) as service:
            key = await self.fresh(world, days=1.5 / 86400)
            service.headers["authorization"] = f"Bearer {key}"
            assert (await service.post("/v1/lengths", json=body)).status_code == 200
            assert (await service.get("/v1/schedules")).status_code == 200
            await asyncio.sleep(1.55)
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
