"""Groups and the wood's movement, stored with the house: what they share, and what they keep from going."""

from typing import Any

import httpx

from stored import TRIM, house, made, opening
from working import cut_list, measure, planned, record

BAY = {
    "mark": "bay",
    "openings": ["W1", "W2", "W3"],
    "gaps": ["6", "5 1/2"],
    "heads": ["80", "80", "79 7/8"],
}
WOOD = {
    "species": "red_oak",
    "installed": {"moisture_content": 7},
    "seasons": [{"name": "winter", "moisture_content": 6}, {"name": "summer", "moisture_content": 11}],
}
WINDOWS = [opening("W1"), opening("W2"), opening("W3")]
LONG = [
    {"profile": profile, "sticks": [{"length": "16 ft", "price": "40.00"}]}
    for profile in ("casing", "stool stock", "apron")
]


def bay(**changed: Any) -> dict[str, Any]:
    """A house with three windows over one stool, and another window."""
    body = {"stock": LONG, "groups": [BAY], "openings": [*WINDOWS, opening("K1")]}
    return {**body, **changed}


def codes(answer: httpx.Response) -> list[tuple[str, str]]:
    assert answer.status_code == 422, answer.text
    return [(error["pointer"], error["code"]) for error in answer.json()["errors"]]


async def tagged(service: httpx.AsyncClient, where: str) -> dict[str, str]:
    return {"if-match": (await service.get(where)).headers["etag"]}


async def test_a_stored_house_answers_as_the_same_cut_list_does(service: httpx.AsyncClient) -> None:
    where = (await made(service, **bay(movement=WOOD))).headers["location"]
    stored = (await cut_list(service, where))["cut_list"]
    asked = house(**bay(movement=WOOD))
    direct = (
        await service.post(
            "/v1/cut-list", json={key: asked[key] for key in asked if key not in ("name",)} | {}
        )
    ).json()
    assert [one["mark"] for one in stored["openings"]] == ["W1", "W2", "W3", "K1", "bay"]
    assert stored["openings"] == direct["openings"]
    assert stored["openings"][0]["movement"][0]["name"] == "winter"
    shared = {piece["key"]: piece for piece in stored["openings"][-1]["pieces"]}
    # 3 × 30 5/8 + 6 + 5 1/2, and a horn of 3 7/16 at each end.
    assert shared["stool"]["overall"]["exact"] == "441/4"
    assert not any(piece["kind"] == "stool" for one in stored["openings"][:3] for piece in one["pieces"])
    (finding,) = [f for one in stored["openings"] for f in one["findings"]]
    assert finding["code"] == "heads-out-of-line"
    assert finding["offers"][0]["field"] == "/openings/2/reveals/head"
    export = (await service.get(f"{where}/export")).json()
    assert (export["groups"][0]["mark"], export["movement"]["species"]) == ("bay", "red_oak")
    again = await service.post("/v1/schedules", json=export)
    assert again.status_code == 201
    assert (await cut_list(service, again.headers["location"]))["cut_list"]["openings"] == stored["openings"]
    one = (await service.get(where)).json()
    assert one["exact"]["/groups/0/gaps/1"] == "11/2"


async def test_an_opening_that_a_group_names_neither_goes_nor_is_renamed(service: httpx.AsyncClient) -> None:
    where = (await made(service, **bay())).headers["location"]
    one = await service.get(f"{where}/openings/W2")
    tag = {"if-match": one.headers["etag"]}
    gone = await service.delete(one.url, headers=tag)
    assert codes(gone) == [("", "in-group")]
    assert "'bay'" in gone.json()["detail"]
    renamed = await service.put(one.url, json=opening("W9"), headers=tag)
    assert codes(renamed) == [("/mark", "in-group")]
    several = await service.put(one.url, json=opening("W2", count=2), headers=tag)
    assert codes(several) == [("/count", "count-not-one")]
    framed = await service.put(one.url, json=opening("W2", bottom="casing"), headers=tag)
    assert codes(framed) == [("/bottom", "stool-missing")]
    taken = await service.post(f"{where}/openings", json=opening("bay"))
    assert codes(taken) == [("/mark", "duplicate-mark")]
    assert (await service.get(where)).json()["revision"] == 1
    left = house(stock=LONG, groups=[])
    assert (await service.put(where, json=left, headers=await tagged(service, where))).status_code == 200
    assert (await service.delete(one.url, headers=tag)).status_code == 200


async def test_a_house_is_refused_whose_groups_cannot_be_made(service: httpx.AsyncClient) -> None:
    for groups, wanted in (
        ([{**BAY, "openings": ["W1", "W2", "W8"]}], ("/groups/0/openings/2", "unknown-opening")),
        ([{**BAY, "mark": "K1"}], ("/groups/0/mark", "duplicate-mark")),
        ([{**BAY, "gaps": ["6"]}], ("/groups/0/gaps", "gap-count")),
        ([{**BAY, "gaps": ["6", "wide"]}], ("/groups/0/gaps/1", "not-a-length")),
        ([{**BAY, "stock_length": "3 ft"}], ("/groups/0/solid", "no-joint-in-reach")),
    ):
        answer = await service.post("/v1/schedules", json=house(**bay(groups=groups)))
        assert wanted in codes(answer)
        where = (await made(service, **bay(groups=[]))).headers["location"]
        put = await service.put(
            where, json=house(stock=LONG, groups=groups), headers=await tagged(service, where)
        )
        assert wanted in codes(put)
        assert (await service.get(where)).json()["revision"] == 1
    answer = await service.post(
        "/v1/schedules", json=house(**bay(movement={**WOOD, "installed": {"temperature": 70}}))
    )
    assert codes(answer) == [("/movement/installed/moisture_content", "missing")]


async def test_a_change_that_breaks_a_group_is_refused_and_names_it(service: httpx.AsyncClient) -> None:
    groups = [{**BAY, "stock_length": "10 ft", "solid": ["50"]}]
    where = (await made(service, **bay(groups=groups))).headers["location"]
    one = await service.get(f"{where}/openings/W3")
    tag = {"if-match": one.headers["etag"]}
    wide = await service.put(one.url, json=opening("W3", "110"), headers=tag)
    assert codes(wide) == [("/readings", "no-joint-in-reach")]
    assert "'bay'" in wide.json()["detail"]
    # Another trim spec for one of them alone has another stool.
    other = {**TRIM, "stool": {**TRIM["stool"], "horn": "1 in"}}
    both = {"painted": TRIM, "oiled": other}
    tags = await tagged(service, where)
    put = await service.put(where, json=house(stock=LONG, groups=groups, trim_specs=both), headers=tags)
    assert put.status_code == 200
    differ = await service.put(one.url, json=opening("W3", trim="oiled"), headers=tag)
    assert codes(differ) == [("/trim", "stools-differ")]
    short = {"painted": {**TRIM, "stool": {**TRIM["stool"], "stock_width": "4"}}}
    tags = await tagged(service, where)
    put = await service.put(where, json=house(stock=LONG, groups=groups, trim_specs=short), headers=tags)
    assert {code for _, code in codes(put)} == {"stock-too-narrow"}


async def test_an_import_keeps_the_groups_whole(service: httpx.AsyncClient) -> None:
    where = (await made(service, **bay())).headers["location"]

    async def bring(existing: str, *openings: dict[str, Any]) -> httpx.Response:
        return await service.post(
            f"{where}/import",
            params={"existing": existing},
            json={"openings": list(openings)},
            headers=await tagged(service, where),
        )

    lost = await bring("replace", opening("W1"), opening("W3"))
    assert codes(lost) == [("/openings", "unknown-opening")]
    assert "'bay'" in lost.json()["detail"]
    several = await bring("update", opening("W1", count=2))
    assert codes(several) == [("/openings", "count-not-one")]
    assert codes(await bring("refuse", opening("bay"))) == [("/openings/0/mark", "duplicate-mark")]
    wider = await bring("update", opening("W1", "31 5/8"))
    assert wider.json()["updated"] == ["W1"]
    shared = (await cut_list(service, where))["cut_list"]["openings"][-1]["pieces"]
    assert shared[0]["overall"]["exact"] == "445/4"
    whole = await bring("replace", *WINDOWS)
    assert whole.json()["removed"] == ["K1"]


async def test_what_two_revisions_differ_in_tells_of_shared_pieces(service: httpx.AsyncClient) -> None:
    where = (await made(service, **bay())).headers["location"]
    await measure(service, where, "W2", "31 5/8")
    found = (await service.get(f"{where}/changes", params={"from": 1})).json()
    assert [one["mark"] for one in found["openings"]] == ["W2"]
    assert "stool" not in {piece["piece"] for piece in found["openings"][0]["pieces"]}
    (group,) = found["groups"]
    assert (group["mark"], group["became"]) == ("bay", "changed")
    pieces = {
        piece["piece"]: (piece["became"], piece["longer_by"] and piece["longer_by"]["exact"])
        for piece in group["pieces"]
    }
    assert pieces["stool"] == ("longer", "1")
    assert pieces["apron_return/left"] == ("unchanged", None)
    tags = await tagged(service, where)
    assert (await service.put(where, json=house(stock=LONG), headers=tags)).status_code == 200
    found = (await service.get(f"{where}/changes", params={"from": 2})).json()
    assert {one["mark"]: one["became"] for one in found["openings"]} == dict.fromkeys(
        ("W1", "W2", "W3"), "group_changed"
    )
    assert {piece["piece"]: piece["became"] for piece in found["openings"][0]["pieces"]}["stool"] == "new"
    assert [(one["mark"], one["became"]) for one in found["groups"]] == [("bay", "gone")]
    assert found["house"][0]["pointer"] == "/groups"
    assert found["unchanged_openings"] == 1
    tags = await tagged(service, where)
    back = await service.post(f"{where}/restore", json={"revision": 1}, headers=tags)
    assert back.json()["house"]["groups"][0]["mark"] == "bay"
    same = (await service.get(f"{where}/changes", params={"from": 1})).json()
    assert (same["openings"], same["groups"], same["house"]) == ([], [], [])


async def test_shared_pieces_are_cut_spoiled_and_cut_again(service: httpx.AsyncClient) -> None:
    where = (await made(service, **bay(openings=WINDOWS))).headers["location"]
    stool = {"opening": "bay", "piece": "stool"}
    work = await record(
        service, where, {**stool, "state": "cut"}, {**stool, "piece": "apron", "state": "cut"}
    )
    ids = {one["piece"]: one["id"] for one in work["pieces"]}
    assert {one["opening"] for one in work["pieces"]} == {"bay"}
    # What was recorded before is found under this: it stays what it is.
    assert {one["opening_id"] for one in work["pieces"]} == {"g6b9da310827df897c036b07a6"}
    mine = await service.get(f"{where}/work", params={"opening": "bay"})
    assert len(mine.json()["items"]) == 2
    cuts = await cut_list(service, where)
    assert cuts["right"] == 2
    assert not {("bay", "stool", 1), ("bay", "apron", 1)}.intersection(planned(cuts))
    # Its own stool is no part of a window that shares one.
    own = await service.post(
        f"{where}/work", json={"pieces": [{"opening": "W1", "piece": "stool", "state": "cut"}]}
    )
    assert codes(own) == [("/pieces/0/piece", "unknown-piece")]
    # Off the first window's side the stool is sawn shorter, and its notch as much longer.
    await measure(service, where, "W1", "30 1/8")
    found = (await cut_list(service, where))["wrong"]
    assert {one["recut_into"]["piece"] for one in found} == {"stool", "apron"}
    await measure(service, where, "W1", "30 5/8")
    await measure(service, where, "W2", "30 1/8")
    cuts = await cut_list(service, where)
    wrong = {one["piece"]["id"]: one for one in cuts["wrong"]}
    # The apron is cut off half an inch and beveled anew; the stool was sawn out for openings that lay elsewhere.
    assert wrong[ids["apron"]]["recut_into"]["piece"] == "apron"
    assert wrong[ids["stool"]]["recut_into"] is None
    assert [(one["opening"], one["piece"]) for one in cuts["cut_again"]] == [("bay", "stool")]
    await record(service, where, {**stool, "piece": "apron", "state": "cut", "recut_from": ids["apron"]})
    assert (await cut_list(service, where))["right"] == 1
    tags = await tagged(service, where)
    assert (await service.put(where, json=house(stock=LONG), headers=tags)).status_code == 200
    cuts = await cut_list(service, where)
    assert {one["piece"]["opening"]: one["needed"] for one in cuts["wrong"]} == {"bay": None}


async def test_a_stool_as_long_as_before_but_sawn_out_elsewhere_is_wrong(service: httpx.AsyncClient) -> None:
    where = (await made(service, **bay(openings=WINDOWS))).headers["location"]
    await record(service, where, {"opening": "bay", "piece": "stool", "state": "cut"})
    await measure(service, where, "W1", "31 5/8")
    await measure(service, where, "W2", "29 5/8")
    cuts = await cut_list(service, where)
    (wrong,) = cuts["wrong"]
    assert wrong["piece"]["length"] == wrong["needed"]["length"]
    assert wrong["recut_into"] is None


async def test_sticks_sheets_and_drawings_have_what_is_shared(service: httpx.AsyncClient) -> None:
    where = (await made(service, **bay())).headers["location"]
    cut = await service.post(f"{where}/cut-sticks", json={"sticks": ["S1"]})
    assert cut.status_code == 201, cut.text
    assert ("bay", "stool") in {(one["opening"], one["piece"]) for one in cut.json()["pieces"]}
    sheet = await service.get(f"{where}/sheets/opening-sheet", params={"format": "html"})
    assert ">bay<" in sheet.text or "bay" in sheet.text
    whole = await service.get(f"{where}/openings/bay/drawing", params={"drawing": "piece", "piece": "stool"})
    assert whole.status_code == 200, whole.text
    window = await service.get(f"{where}/openings/W1/drawing", params={"drawing": "piece", "piece": "stool"})
    assert window.status_code == 422
    assert (await service.get(f"{where}/openings/W1/drawing")).status_code == 200


async def test_a_change_made_on_a_stale_state_is_refused(service: httpx.AsyncClient) -> None:
    where = (await made(service, **bay())).headers["location"]
    stale = await tagged(service, where)
    await measure(service, where, "W1", "31")
    assert (await service.put(where, json=house(stock=LONG), headers=stale)).status_code == 412
    assert (await service.put(where, json=house(stock=LONG))).status_code == 428
