"""A cut is a fact: what was sawn by an old sheet, twice said, or recorded by mistake is neither lost nor doubled."""

from decimal import Decimal
from typing import Any

import httpx

from stored import STOCK, made, opening
from working import cut_list, measure, record

ROOMS = [opening("K1"), opening("K2", "33 1/8", "51 3/8")]


async def started(service: httpx.AsyncClient, **changed: Any) -> str:
    where = str((await made(service, openings=ROOMS, **changed)).headers["location"])
    await service.post(f"{where}/plans", json={}, timeout=60)
    return where


async def total(service: httpx.AsyncClient, where: str) -> Decimal:
    answer = (await service.get(f"{where}/cut-list", params={"include": "cost"})).json()
    lines = answer["cut_list"]["cost_sheet"]["lines"]
    return sum((Decimal(line["amount"]) for line in lines if line["name"] == "casing"), Decimal())


async def cut(service: httpx.AsyncClient, where: str, *names: str, **more: Any) -> httpx.Response:
    return await service.post(f"{where}/cut-sticks", json={"sticks": names, **more})


async def stick_with(service: httpx.AsyncClient, where: str, mark: str, piece: str) -> dict[str, Any]:
    plan = (await service.get(f"{where}/plans")).json()["items"][0]["number"]
    sticks = (await service.get(f"{where}/plans/{plan}")).json()["sticks"]
    return next(
        stick
        for stick in sticks
        if any((one["opening"], one["piece"]) == (mark, piece) for one in stick["pieces"])
    )


async def lots(service: httpx.AsyncClient, where: str) -> list[dict[str, Any]]:
    found: list[dict[str, Any]] = (await service.get(f"{where}/lengths")).json()["items"]
    return found


async def pieces(service: httpx.AsyncClient, where: str) -> list[dict[str, Any]]:
    found: list[dict[str, Any]] = (await service.get(f"{where}/work", params={"limit": 200})).json()["items"]
    return found


async def test_a_stick_cut_by_an_old_sheet_is_recorded_as_it_was_cut(service: httpx.AsyncClient) -> None:
    where = await started(service)
    before = await total(service, where)
    stick = await stick_with(service, where, "K1", "side_casing/left")
    was = {
        (one["opening"], str(one["piece"]), one["instance"]): one["length"]["text"] for one in stick["pieces"]
    }
    await measure(service, where, "K1", "30 5/8", "48 1/4")
    refused = await cut(service, where, stick["name"])
    assert (refused.status_code, refused.json()["type"]) == (409, "/problems/stick-changed")
    assert "`as_printed`" in refused.json()["detail"]
    done = await cut(service, where, stick["name"], as_printed=True)
    assert done.status_code == 201, done.text
    found = {
        (one["opening"], one["piece"], one["instance"]): one["length"]["text"]
        for one in done.json()["pieces"]
    }
    assert found == was, "each as long as it was printed, not as the opening is today"
    now = await cut_list(service, where)
    assert {(one["piece"]["opening"], one["piece"]["piece"]) for one in now["wrong"]} >= {
        ("K1", "side_casing/left")
    }
    assert await total(service, where) >= before, "what it cost is not forgotten"
    again = await cut(service, where, stick["name"], as_printed=True)
    assert (again.status_code, again.json()["revision"]) == (201, done.json()["revision"])


async def test_a_stick_of_an_opening_that_is_gone_is_recorded_too(service: httpx.AsyncClient) -> None:
    where = await started(service)
    stick = await stick_with(service, where, "K1", "side_casing/left")
    tag = (await service.get(f"{where}/openings/K1")).headers["etag"]
    assert (await service.delete(f"{where}/openings/K1", headers={"if-match": tag})).status_code == 200
    assert (await cut(service, where, stick["name"])).status_code == 409
    done = await cut(service, where, stick["name"], as_printed=True)
    assert done.status_code == 201, done.text
    assert {one["opening"] for one in done.json()["pieces"]} >= {"K1"}
    assert (await cut_list(service, where))["wrong"]


async def test_a_claim_holds_by_whatever_name_the_stick_is_sent(service: httpx.AsyncClient) -> None:
    where = await started(service)
    was = (await stick_with(service, where, "K1", "side_casing/left"))["name"]
    for width, height in (
        ("30 5/8", "48 1/4"),
        (ROOMS[0]["readings"]["jamb_width"], ROOMS[0]["readings"]["jamb_height"]),
    ):
        await measure(service, where, "K1", width, height)
        await cut_list(service, where)
    today = (await stick_with(service, where, "K1", "side_casing/left"))["name"]
    assert today != was
    claimed = await service.put(f"{where}/sticks/{today}/claim", json={"by": "shop saw"})
    assert claimed.status_code == 200, claimed.text
    refused = await cut(service, where, was)
    assert (refused.status_code, refused.json()["type"]) == (409, "/problems/stick-claimed"), refused.text
    assert today in refused.json()["detail"]
    done = await cut(service, where, was, by="shop saw")
    assert done.status_code == 201, done.text
    assert (await service.get(f"{where}/sticks/{today}")).json()["claimed_by"] is None, (
        "it is cut: no claim is left"
    )


async def test_a_stick_that_was_not_cut_after_all_leaves_nothing_behind(service: httpx.AsyncClient) -> None:
    stock = [{**one, "sticks": [{"length": "14 ft", "price": "16.10"}]} for one in STOCK]
    lot = {"lot": "yard 1", "profile": "casing", "length": "14 ft", "paid": "16.10", "delivered": 1}
    where = await started(service, stock=stock, lengths=[lot])
    before = await total(service, where)
    sticks = (await service.get(f"{where}/plans/1")).json()["sticks"]
    name = next(stick["name"] for stick in sticks if stick["lot"] == "yard 1")
    assert (await cut(service, where, name)).status_code == 201
    (used,) = [one for one in await lots(service, where) if one["lot"] == "yard 1"]
    assert used["used_up"] == 1
    for one in await pieces(service, where):
        tag = (await service.get(f"{where}/work/{one['id']}")).headers["etag"]
        struck = await service.delete(f"{where}/work/{one['id']}", headers={"if-match": tag})
        assert struck.status_code == 200, struck.text
    assert [(one["lot"], one["used_up"]) for one in await lots(service, where)] == [("yard 1", 0)]
    assert await total(service, where) == before
    assert (await cut(service, where, name)).status_code == 201, "the same stick, whatever it is called today"
    offcuts = [one["lot"] for one in await lots(service, where) if one["stick"]]
    assert len(offcuts) <= 1


async def test_the_same_work_said_twice_uses_no_second_length(service: httpx.AsyncClient) -> None:
    lot = {"lot": "yard 1", "profile": "casing", "length": "14 ft", "paid": "16.10", "delivered": 3}
    where = await started(service, lengths=[lot])
    said = {
        "used_lengths": ["yard 1"],
        "lengths": [{"profile": "casing", "length": "40 in", "note": "behind the bench"}],
    }
    piece = {"opening": "K1", "piece": "side_casing/left", "state": "cut"}
    first = await record(service, where, piece, **said)
    again = await record(service, where, piece, **said)
    assert again["revision"] == first["revision"]
    assert again["lengths"] == []
    assert "recorded before" in again["notes"][0]
    found = {one["lot"]: one["used_up"] for one in await lots(service, where)}
    assert found == {"yard 1": 1, first["lengths"][0]: 0}


async def test_a_lot_that_is_spent_is_not_offered_as_what_was_meant(service: httpx.AsyncClient) -> None:
    lot = {"lot": "yard 1", "profile": "casing", "length": "14 ft", "delivered": 1, "used_up": 1}
    where = await started(service, lengths=[lot])
    refused = await service.post(f"{where}/work", json={"used_lengths": ["yard 1"]})
    (error,) = refused.json()["errors"]
    assert error["pointer"] == "/used_lengths/0"
    assert "meant" not in error["detail"]


async def test_a_lot_does_not_come_back_that_was_cut(service: httpx.AsyncClient) -> None:
    lot = {"lot": "yard 1", "profile": "casing", "length": "14 ft", "paid": "16.10", "ordered": 1}
    where = await started(service, lengths=[lot])
    sticks = (await service.get(f"{where}/plans/1")).json()["sticks"]
    name = next(stick["name"] for stick in sticks if stick["lot"] == "yard 1")
    assert (await cut(service, where, name)).status_code == 201
    there = await service.get(f"{where}/lengths/yard 1")
    tag = {"if-match": there.headers["etag"]}
    body = {"profile": "casing", "length": "14 ft", "paid": "16.10", "ordered": 1, "delivered": 1}
    came = await service.put(f"{where}/lengths/yard 1", json=body, headers=tag)
    assert (came.status_code, came.json()["used_up"], came.json()["available"]) == (200, 1, 0)
    tag = {"if-match": came.headers["etag"]}
    fewer = await service.put(f"{where}/lengths/yard 1", json={**body, "used_up": 0}, headers=tag)
    assert [(one["pointer"], one["code"]) for one in fewer.json()["errors"]] == [
        ("/used_up", "fewer-than-were-cut")
    ]
    assert name in fewer.json()["errors"][0]["detail"]
    gone = await service.delete(f"{where}/lengths/yard 1", headers=tag)
    assert gone.status_code == 409
    assert name in gone.json()["detail"]


async def test_pieces_cut_from_a_claimed_stick_are_taken_and_said(service: httpx.AsyncClient) -> None:
    where = await started(service)
    stick = await stick_with(service, where, "K1", "side_casing/left")
    await service.put(f"{where}/sticks/{stick['name']}/claim", json={"by": "shop saw"})
    done = await record(service, where, {"opening": "K1", "piece": "side_casing/left", "state": "cut"})
    assert stick["name"] in done["notes"][0]
    assert "'shop saw'" in done["notes"][0]


async def test_what_is_printed_stands_when_the_search_that_it_began_is_over(
    service: httpx.AsyncClient,
) -> None:
    # First-fit buys these for 132.80, a search for less.
    sizes = [("40 1/8", "63 7/8"), ("40 1/8", "49 7/8"), ("37 5/8", "46 1/8"), ("38 7/8", "56 1/8")]
    rooms = [opening(f"K{number}", *size) for number, size in enumerate(sizes, 1)]
    where = str((await made(service, openings=rooms)).headers["location"])
    assert (await cut_list(service, where))["plan"]["number"] == 1
    sheet = await service.get(f"{where}/sheets/stick-sheet", headers={"accept": "text/html"}, timeout=60)
    assert "Plan 2" in sheet.text
    plans = (await service.get(f"{where}/plans")).json()["items"]
    assert [(one["number"], one["stands"]) for one in plans] == [(2, True), (1, False)]
    sticks = (await service.get(f"{where}/plans/2")).json()["sticks"]
    done = await cut(service, where, *(stick["name"] for stick in sticks))
    assert done.status_code == 201, done.text
