"""Schedules as wholes: kept as they were read, listed in pages, archived, deleted."""

import httpx

from stored import STOCK, TRIM, house, made, opening


async def test_what_is_kept_is_the_text_as_read_and_its_exact_value(service: httpx.AsyncClient) -> None:
    answer = await made(service, kerf="3.2 mm", openings=[opening("K1", "2' 6 5/8\"")])
    kept = answer.json()
    assert kept["house"]["kerf"] == "3.2 mm"
    assert kept["exact"]["/kerf"] == "16/127"
    casing = kept["house"]["trim_specs"]["painted"]["casing"]
    assert casing == TRIM["casing"] | {"face": "molded"}
    assert [one["profile"] for one in kept["house"]["stock"]] == [one["profile"] for one in STOCK]
    again = await service.get(answer.headers["location"])
    assert again.json() == kept
    assert again.headers["etag"] == answer.headers["etag"]
    (one,) = (await service.get(f"{answer.headers['location']}/openings")).json()["items"]
    assert one["readings"]["jamb_width"] == "2' 6 5/8\""
    assert one["exact"]["/readings/jamb_width"] == "245/8"


async def test_every_fault_is_told_at_once_and_nothing_is_kept(service: httpx.AsyncClient) -> None:
    body = house(
        openings=[opening("A", "x"), opening("B", trim="none"), opening("B", height="")],
        lengths=[{"profile": "casing", "length": "nought"}, {"profile": "casing", "length": "10"}],
        kerf="1/0",
    )
    answer = await service.post("/v1/schedules", json=body)
    assert answer.status_code == 422
    assert {one["pointer"] for one in answer.json()["errors"]} >= {"/openings/2/readings/jamb_height"}
    body["openings"][2]["readings"]["jamb_height"] = "46"
    answer = await service.post("/v1/schedules", json=body)
    assert {(one["pointer"], one["code"]) for one in answer.json()["errors"]} >= {
        ("/openings/0/readings/jamb_width", "not-a-length"),
        ("/openings/1/trim", "unknown-trim"),
        ("/openings/2/mark", "duplicate-mark"),
        ("/lengths/0/length", "not-a-length"),
    }
    assert any(one["pointer"] == "/kerf" for one in answer.json()["errors"])
    assert (await service.get("/v1/schedules")).json()["items"] == []


async def test_a_changed_trim_spec_must_suit_the_openings_it_is_on(service: httpx.AsyncClient) -> None:
    answer = await made(service, openings=[opening("K1"), opening("K2")])
    where, tag = answer.headers["location"], {"if-match": answer.headers["etag"]}
    huge = {**TRIM, "reveal": "11 in"}
    refused = await service.put(where, json=house(trim_specs={"painted": huge}), headers=tag)
    assert refused.status_code == 422
    assert {one["pointer"] for one in refused.json()["errors"]} == {"/trim_specs/painted/reveal"}
    gone = await service.put(where, json=house(trim_specs={"oak": TRIM}), headers=tag)
    assert [one["code"] for one in gone.json()["errors"]] == ["unknown-trim"] * 2
    assert "'K1'" in gone.text
    assert "'K2'" in gone.text
    unit = await service.put(where, json=house(unit="mm"), headers=tag)
    assert [one["code"] for one in unit.json()["errors"]] == ["unit-in-use"]
    assert (await service.get(where)).json()["revision"] == 1
    wider = {**TRIM, "reveal": "1/4 in"}
    done = await service.put(where, json=house(trim_specs={"painted": wider}), headers=tag)
    assert done.status_code == 200
    assert done.json()["revision"] == 2
    assert done.json()["house"]["trim_specs"]["painted"]["reveal"] == "1/4 in"


async def test_pages_hold_still_while_schedules_come_and_go(service: httpx.AsyncClient) -> None:
    ids = [(await made(service, name=f"House {number}")).json()["id"] for number in range(7)]
    ids.sort(reverse=True)
    first = await service.get("/v1/schedules", params={"limit": 3})
    assert [one["id"] for one in first.json()["items"]] == ids[:3]
    await made(service, name="A new one")
    for id in (ids[1], ids[3]):
        where = f"/v1/schedules/{id}"
        tag = (await service.get(where)).headers["etag"]
        put_away = await service.post(f"{where}/archive", headers={"if-match": tag})
        gone = await service.delete(where, headers={"if-match": put_away.headers["etag"]})
        assert gone.status_code == 204
    second = await service.get(first.links["next"]["url"])
    assert [one["id"] for one in second.json()["items"]] == [ids[4], ids[5], ids[6]]
    assert second.json()["next"] is None
    assert "link" not in second.headers


async def test_lists_are_filtered_by_name_and_archive(service: httpx.AsyncClient) -> None:
    for name in ("Heron Cottage", "heron barn", "100% House", "Mill_Lane"):
        answer = await made(service, name=name)
    await service.post(f"{answer.headers['location']}/archive", headers={"if-match": answer.headers["etag"]})

    async def names(**params: str) -> set[str]:
        items = (await service.get("/v1/schedules", params=params)).json()["items"]
        return {one["name"] for one in items}

    assert await names(name="HERON") == {"Heron Cottage", "heron barn"}
    assert await names(name="%") == {"100% House"}
    assert await names(archived="true") == {"Mill_Lane"}
    assert "Mill_Lane" not in await names(archived="false")
    assert len(await names()) == 4


async def test_an_archived_schedule_is_read_but_not_changed(service: httpx.AsyncClient) -> None:
    answer = await made(service, openings=[opening("K1")])
    where = answer.headers["location"]
    early = await service.delete(where, headers={"if-match": answer.headers["etag"]})
    assert early.status_code == 409
    put_away = await service.post(f"{where}/archive", headers={"if-match": answer.headers["etag"]})
    assert put_away.json()["archived_at"]
    refused = await service.post(f"{where}/openings", json=opening("K2"))
    assert (refused.status_code, refused.json()["type"]) == (409, "/problems/schedule-archived")
    assert (await service.get(f"{where}/openings/K1")).status_code == 200
    back = await service.post(f"{where}/unarchive", headers={"if-match": put_away.headers["etag"]})
    assert back.json()["archived_at"] is None
    assert (await service.post(f"{where}/openings", json=opening("K2"))).status_code == 201
    actions = [one["action"] for one in (await service.get(f"{where}/revisions")).json()["items"]]
    assert actions == ["add", "unarchive", "archive", "create"]


async def test_cursors_that_are_none_are_refused(sqlite_service: httpx.AsyncClient) -> None:
    where = (await made(sqlite_service)).headers["location"]
    for address in ("/v1/schedules", f"{where}/openings", f"{where}/revisions"):
        for cursor in ("?", "YWJj", "YXQ6", "YXQ6JyBPUiAx", "%00", "YXQ6OTk5OTk5OTk5OTk5OTk5OTk5OTk5"):
            answer = await sqlite_service.get(f"{address}?cursor={cursor}")
            assert answer.status_code in (200, 422), (address, cursor, answer.text)
            if address != "/v1/schedules":
                assert answer.status_code == 422, (address, cursor)


async def test_ids_that_are_none_are_not_found(service: httpx.AsyncClient) -> None:
    where = (await made(service)).headers["location"]
    for id in ("nothing", "%00", "%FF", "%ED%A0%80", "a" * 200, "%F0%9F%AA%9F"):
        assert (await service.get(f"/v1/schedules/{id}")).status_code in (404, 422), id
        assert (await service.get(f"{where}/openings/{id}")).status_code in (404, 422), id
    assert (await service.get(f"{where}/revisions/99")).status_code == 404


async def test_every_write_is_in_the_history_by_its_name_with_its_reason(
    sqlite_service: httpx.AsyncClient,
) -> None:
    service, reason = sqlite_service, {"why": "as the owner wished"}
    first = await service.post("/v1/schedules", json=house(openings=[opening("K1")]), params=reason)
    where = first.headers["location"]

    async def wrote(method: str, path: str, body: object = None, of: str = "", status: int = 200) -> str:
        """Make a change from the state of something, and give where what came of it is."""
        tag = (await service.get(f"{where}{of}")).headers["etag"]
        headers = {"if-match": tag}
        answer = await service.request(method, f"{where}{path}", json=body, params=reason, headers=headers)
        assert answer.status_code == status, answer.text
        there = answer.headers.get("location", f"{where}{of}").removeprefix(where)
        if method != "DELETE":
            assert answer.headers["etag"] == (await service.get(f"{where}{there}")).headers["etag"]
        return there

    added = await wrote("POST", "/openings", opening("K2"), status=201)
    await wrote("PUT", added, opening("K2", "31"), of=added)
    await wrote("DELETE", added, of=added)
    length = await wrote("POST", "/lengths", {"profile": "casing", "length": "41"}, status=201)
    await wrote("DELETE", length, of=length)
    await wrote("PUT", "", house(name="Other"))
    await wrote("POST", "/archive")
    await wrote("POST", "/unarchive")
    await wrote("POST", "/restore", {"revision": 1})
    found = (await service.get(f"{where}/revisions")).json()["items"]
    assert [one["action"] for one in reversed(found)] == [
        *("create", "add", "remeasure", "remove", "add length", "remove length", "house"),
        *("archive", "unarchive", "restore 1"),
    ]
    assert {one["why"] for one in found} == {"as the owner wished"}
    assert (await service.get(where)).json()["house"]["name"] == "Heron Cottage"


async def test_a_page_holds_fifty_where_nothing_is_said(sqlite_service: httpx.AsyncClient) -> None:
    body = {
        "openings": [opening(f"K{number}") for number in range(51)],
        "lengths": [{"profile": "casing", "length": "41"}] * 51,
    }
    where = (await made(sqlite_service, **body)).headers["location"]
    for path in ("openings", "lengths"):
        first = await sqlite_service.get(f"{where}/{path}")
        rest = await sqlite_service.get(f"{where}/{path}", params={"cursor": first.json()["next"]})
        assert [len(one.json()["items"]) for one in (first, rest)] == [50, 1]
        assert rest.json()["next"] is None
        ids = [one["id"] for answer in (first, rest) for one in answer.json()["items"]]
        assert len(set(ids)) == 51


async def test_every_fault_of_an_opening_is_told_with_the_others(sqlite_service: httpx.AsyncClient) -> None:
    where = (await made(sqlite_service, openings=[opening("K1")])).headers["location"]
    for sent, told in (
        (opening("K1", "wide"), [("/mark", "duplicate-mark"), ("/readings/jamb_width", "not-a-length")]),
        (opening("K1", trim="oiled"), [("/mark", "duplicate-mark"), ("/trim", "unknown-trim")]),
        (opening("K2", "wide"), [("/readings/jamb_width", "not-a-length")]),
        (opening("K2", trim="oiled"), [("/trim", "unknown-trim")]),
    ):
        refused = await sqlite_service.post(f"{where}/openings", json=sent)
        assert sorted((one["pointer"], one["code"]) for one in refused.json()["errors"]) == told


async def test_a_schedule_is_deleted_only_from_the_state_that_was_read(
    sqlite_service: httpx.AsyncClient,
) -> None:
    first = await made(sqlite_service, openings=[opening("K1")])
    where, stale = first.headers["location"], {"if-match": first.headers["etag"]}
    archived = await sqlite_service.post(f"{where}/archive", headers=stale)
    assert (await sqlite_service.delete(where)).status_code == 428
    assert (await sqlite_service.delete(where, headers=stale)).status_code == 412
    assert (await sqlite_service.get(where)).status_code == 200
    now = {"if-match": archived.headers["etag"]}
    assert (await sqlite_service.delete(where, headers=now)).status_code == 204
