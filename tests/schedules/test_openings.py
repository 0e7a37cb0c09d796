"""Openings one by one: added, measured again, taken off; nobody's change lost."""

import asyncio

import httpx

from stored import house, made, opening


async def test_an_opening_is_found_by_its_id_and_its_mark(service: httpx.AsyncClient) -> None:
    where = (await made(service)).headers["location"]
    added = await service.post(f"{where}/openings", json=opening("K 1/2 ″", room="kitchen", count=2))
    assert added.status_code == 201
    by_id = await service.get(added.headers["location"])
    assert by_id.json() == added.json()
    assert by_id.headers["etag"] == added.headers["etag"]
    plain = await service.post(f"{where}/openings", json=opening("Bedroom é"))
    assert (await service.get(f"{where}/openings/Bedroom é")).json() == plain.json()


async def test_only_news_is_sent_twice(service: httpx.AsyncClient) -> None:
    where = (await made(service, openings=[opening("K1")])).headers["location"]
    for address in (where, f"{where}/openings", f"{where}/openings/K1", f"{where}/revisions/1"):
        tag = (await service.get(address)).headers["etag"]
        same = await service.get(address, headers={"if-none-match": f'"other", {tag}'})
        assert (same.status_code, same.headers["etag"], same.content) == (304, tag, b"")
        packed = await service.get(
            address, headers={"if-none-match": tag, "accept": "application/vnd.msgpack"}
        )
        assert packed.status_code == 200
        assert packed.headers["etag"] != tag
    await service.post(f"{where}/openings", json=opening("K2"))
    assert (await service.get(where, headers={"if-none-match": tag})).status_code == 200


async def test_a_change_says_what_it_was_made_from(service: httpx.AsyncClient) -> None:
    where = (await made(service, openings=[opening("K1"), opening("K2")])).headers["location"]
    one = f"{where}/openings/K1"
    tag = (await service.get(one)).headers["etag"]
    assert (await service.put(one, json=opening("K1", "31"))).status_code == 428
    assert (await service.delete(one)).status_code == 428
    changed = await service.put(one, json=opening("K1", "31"), headers={"if-match": tag})
    assert changed.status_code == 200
    assert changed.json()["revision"] == 2
    stale = await service.put(one, json=opening("K1", "32"), headers={"if-match": tag})
    assert stale.status_code == 412
    assert stale.headers["etag"] == changed.headers["etag"]
    weak = await service.put(
        one, json=opening("K1", "32"), headers={"if-match": f"W/{changed.headers['etag']}"}
    )
    assert weak.status_code == 412
    broken = await service.put(one, json=opening("K1", "32"), headers={"if-match": "5"})
    assert broken.status_code == 400
    # The other opening was not touched, so its tag still holds.
    other = await service.get(f"{where}/openings/K2")
    gone = await service.delete(f"{where}/openings/K2", headers={"if-match": other.headers["etag"]})
    assert gone.json() == {"revision": 3}
    assert (await service.get(f"{where}/openings/K2")).status_code == 404
    packed = await service.get(one, headers={"accept": "application/vnd.msgpack"})
    from_packed = await service.put(
        one, json=opening("K1", "33"), headers={"if-match": packed.headers["etag"]}
    )
    assert from_packed.status_code == 200


async def test_an_opening_must_be_one_that_can_be_built(service: httpx.AsyncClient) -> None:
    where = (await made(service, openings=[opening("K1")])).headers["location"]

    async def refusal(body: object) -> set[tuple[str, str]]:
        answer = await service.post(f"{where}/openings", json=body)
        assert answer.status_code == 422
        return {(one["pointer"], one["code"]) for one in answer.json()["errors"]}

    assert await refusal(opening("K1")) == {("/mark", "duplicate-mark")}
    assert await refusal(opening("K2", trim="oak")) == {("/trim", "unknown-trim")}
    assert await refusal(opening("K2", "0 in", "-1")) >= {("/readings/jamb_width", "zero")}
    assert {pointer for pointer, _ in await refusal(opening("K2", reveals={"left": "9 in"}))} == {
        "/reveals/left"
    }
    assert (await service.get(where)).json()["revision"] == 1


async def test_pages_of_openings_hold_still(service: httpx.AsyncClient) -> None:
    marks = [f"W{number}" for number in range(9)]
    where = (await made(service, openings=[opening(mark) for mark in marks])).headers["location"]
    first = await service.get(f"{where}/openings", params={"limit": 4})
    assert [one["mark"] for one in first.json()["items"]] == marks[:4]
    await service.post(f"{where}/openings", json=opening("last"))
    for mark in ("W0", "W5"):
        tag = (await service.get(f"{where}/openings/{mark}")).headers["etag"]
        await service.delete(f"{where}/openings/{mark}", headers={"if-match": tag})
    second = await service.get(first.links["next"]["url"])
    assert [one["mark"] for one in second.json()["items"]] == ["W4", "W6", "W7", "W8"]
    third = await service.get(second.links["next"]["url"])
    assert [one["mark"] for one in third.json()["items"]] == ["last"]


async def test_openings_are_filtered(service: httpx.AsyncClient) -> None:
    trim = house()["trim_specs"]["painted"]
    openings = [
        opening("K1", room="kitchen"),
        opening("K2", room="kitchen", trim="oak"),
        opening("B1", room="bath", bottom="casing"),
    ]
    body = house(trim_specs={"painted": trim, "oak": trim}, openings=openings)
    where = (await made(service, **body)).headers["location"]

    async def marks(**params: str) -> list[str]:
        return [
            one["mark"] for one in (await service.get(f"{where}/openings", params=params)).json()["items"]
        ]

    assert await marks(room="kitchen") == ["K1", "K2"]
    assert await marks(trim="oak") == ["K2"]
    assert await marks(bottom="casing") == ["B1"]
    assert await marks(room="attic") == []


async def test_going_back_makes_a_new_revision_and_loses_nothing(service: httpx.AsyncClient) -> None:
    answer = await made(service, openings=[opening("K1"), opening("K2")])
    where = answer.headers["location"]
    ids = {one["mark"]: one["id"] for one in (await service.get(f"{where}/openings")).json()["items"]}
    one = await service.get(f"{where}/openings/K1")
    await service.put(one.url, json=opening("K3", "31"), headers={"if-match": one.headers["etag"]})
    two = await service.get(f"{where}/openings/K2")
    await service.delete(two.url, headers={"if-match": two.headers["etag"]})
    await service.post(f"{where}/openings", json=opening("K9"))
    now = await service.get(where)
    await service.put(where, json=house(name="Renamed"), headers={"if-match": now.headers["etag"]})
    now = await service.get(where)
    back = await service.post(
        f"{where}/restore?why=a slip", json={"revision": 1}, headers={"if-match": now.headers["etag"]}
    )
    assert back.json()["revision"] == 6
    assert back.json()["house"] == answer.json()["house"]
    openings = (await service.get(f"{where}/openings")).json()["items"]
    assert {one["mark"]: one["id"] for one in openings} == ids
    assert [one["readings"]["jamb_width"] for one in openings] == ["30 5/8", "30 5/8"]
    latest = (await service.get(f"{where}/revisions/6")).json()
    assert (latest["action"], latest["why"]) == ("restore 1", "a slip")
    again = await service.post(
        f"{where}/restore", json={"revision": 5}, headers={"if-match": back.headers["etag"]}
    )
    assert again.json()["house"]["name"] == "Renamed"
    marks = [one["mark"] for one in (await service.get(f"{where}/openings")).json()["items"]]
    assert marks == ["K3", "K9"]


async def test_eight_writers_lose_no_update(service: httpx.AsyncClient) -> None:
    where = (await made(service, openings=[opening("K1", "30")])).headers["location"]
    one = f"{where}/openings/K1"

    async def widen(times: int) -> int:
        tries = 0
        while times:
            now = await service.get(one)
            wider = int(now.json()["readings"]["jamb_width"]) + 1
            tries += 1
            answer = await service.put(
                one, json=opening("K1", str(wider)), headers={"if-match": now.headers["etag"]}
            )
            assert answer.status_code in (200, 412), answer.text
            times -= answer.status_code == 200
        return tries

    tries = sum(await asyncio.gather(*(widen(5) for _ in range(8))))
    assert tries > 40, "the writers never met: nothing was tried"
    assert (await service.get(one)).json()["readings"]["jamb_width"] == "70"
    revisions = (await service.get(f"{where}/revisions", params={"limit": 500})).json()["items"]
    assert [one["number"] for one in revisions] == list(range(41, 0, -1))


async def test_a_change_of_a_metric_house_is_refused_in_millimeters(service: httpx.AsyncClient) -> None:
    where = (await made(service, rounding={"to": "1 mm"})).headers["location"]
    refused = await service.post(f"{where}/openings", json=opening("K1", reveals={"left": "1"}))
    assert refused.status_code == 422
    assert refused.json()["detail"].startswith("A reveal of 25 mm leaves the casing no jamb to lie on")
    assert "the jamb's edge is 19 mm" in refused.json()["detail"]
