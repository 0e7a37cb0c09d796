"""Work done: what is cut stays cut, what is wrong is told, what can be cut again is, and lengths on hand are used."""

import httpx

from longpoint.lengths import Fraction, Mode, Rounding, round_to, tape
from stored import STOCK, house, made, opening
from working import cut_list, measure, planned, record

LEG = {"opening": "K1", "piece": "side_casing/left"}


async def test_the_cut_list_covers_only_what_is_still_to_be_cut(service: httpx.AsyncClient) -> None:
    where = (await made(service, openings=[opening("K1", count=2), opening("K2")])).headers["location"]
    before = await cut_list(service, where)
    assert (before["needed"], before["right"], before["wrong"], before["cut_again"]) == (21, 0, [], [])
    assert len(planned(before)) == 21
    await record(
        service,
        where,
        {**LEG, "state": "cut"},
        {"opening": "K2", "piece": "stool", "state": "installed"},
    )
    after = await cut_list(service, where)
    assert after["right"] == 2
    gone = {("K1", "side_casing/left", 1), ("K2", "stool", 1)}
    assert set(planned(before)) - set(planned(after)) == gone
    assert ("K1", "side_casing/left", 2) in planned(after)
    pieces = {
        one["mark"]: {piece["key"]: piece["quantity"] for piece in one["pieces"]}
        for one in after["cut_list"]["openings"]
    }
    assert pieces["K1"]["side_casing/left"] == 1
    assert "stool" not in pieces["K2"]


async def test_a_spoiled_piece_is_cut_again(service: httpx.AsyncClient) -> None:
    where = (await made(service, openings=[opening("K1")])).headers["location"]
    first = await record(service, where, {**LEG, "state": "cut"})
    assert first["pieces"][0]["length"]["text"] == "48 15/16 in"
    assert await record(service, where, {**LEG, "state": "cut"}) == first, "the same fact changes nothing"
    spoiled = await record(service, where, {**LEG, "state": "spoiled", "note": "Split."})
    assert spoiled["pieces"][0]["id"] == first["pieces"][0]["id"]
    assert await record(service, where, {**LEG, "state": "spoiled", "note": "Split."}) == spoiled
    cuts = await cut_list(service, where)
    assert cuts["right"] == 0
    assert [(one["opening"], one["piece"]) for one in cuts["cut_again"]] == [("K1", "side_casing/left")]
    await record(service, where, {**LEG, "state": "cut"})
    cuts = await cut_list(service, where)
    assert (cuts["right"], cuts["cut_again"]) == (1, [])
    listed = (await service.get(f"{where}/work", params={"opening": "K1"})).json()["items"]
    assert sorted(one["state"] for one in listed) == ["cut", "spoiled"]
    only = (await service.get(f"{where}/work", params={"state": "spoiled"})).json()["items"]
    assert [one["note"] for one in only] == ["Split."]


async def test_after_a_remeasure_wrong_pieces_are_told_and_cut_again_where_they_do(
    service: httpx.AsyncClient,
) -> None:
    where = (await made(service, openings=[opening("K1"), opening("K2")])).headers["location"]
    legs = [
        {"opening": mark, "piece": f"side_casing/{side}", "state": "cut"}
        for mark in ("K1", "K2")
        for side in ("left", "right")
    ]
    heads = [{"opening": mark, "piece": "head_casing", "state": "cut"} for mark in ("K1", "K2")]
    work = await record(service, where, *legs, *heads)
    ids = {(one["opening"], one["piece"]): one["id"] for one in work["pieces"]}
    # K1 was 1 1/4 in lower than read, K2 half an inch higher: K1's legs can be trimmed, K2's are too short.
    await measure(service, where, "K1", "30 5/8", "45")
    await measure(service, where, "K2", "30 5/8", "46 3/4")
    cuts = await cut_list(service, where)
    wrong = {one["piece"]["id"]: one for one in cuts["wrong"]}
    assert set(wrong) == {id for (_, piece), id in ids.items() if "side_casing" in piece}
    left = wrong[ids["K1", "side_casing/left"]]
    assert left["piece"]["length"]["text"] == "48 15/16 in"
    assert left["needed"]["length"]["text"] == "47 11/16 in"
    # The pair is mirrored: a left leg is cut again into a left leg only.
    for side in ("left", "right"):
        into = [
            one["recut_into"]
            for (mark, piece), id in ids.items()
            if piece == f"side_casing/{side}" and (one := wrong[id])["recut_into"]
        ]
        assert [(one["opening"], one["piece"]) for one in into] == [("K1", f"side_casing/{side}")]
    again = {(one["opening"], one["piece"]) for one in cuts["cut_again"]}
    assert again == {("K2", "side_casing/left"), ("K2", "side_casing/right")}
    assert ("K1", "side_casing/left", 1) not in planned(cuts)
    assert ("K2", "side_casing/left", 1) in planned(cuts)
    assert cuts["right"] == 2
    # The recut is made and recorded; what is left over is not wrong any more.
    source = next(id for id, one in wrong.items() if one["recut_into"] and "left" in one["piece"]["piece"])
    done = await record(service, where, {**LEG, "state": "cut", "recut_from": source})
    assert done["pieces"][-1]["length"]["text"] == "47 11/16 in"
    assert (await service.get(f"{where}/work/{source}")).status_code == 404
    cuts = await cut_list(service, where)
    assert cuts["right"] == 3
    assert source not in {one["piece"]["id"] for one in cuts["wrong"]}


async def test_a_new_piece_beside_a_wrong_one_makes_that_a_spare(service: httpx.AsyncClient) -> None:
    where = (await made(service, openings=[opening("K1")])).headers["location"]
    first = (await record(service, where, {**LEG, "state": "cut"}))["pieces"][0]["id"]
    await measure(service, where, "K1", "30 5/8", "47")
    await record(service, where, {**LEG, "state": "cut"})
    cuts = await cut_list(service, where)
    assert cuts["right"] == 1
    (spare,) = cuts["wrong"]
    assert (spare["piece"]["id"], spare["piece"]["state"], spare["needed"]) == (first, "spare", None)
    # Measured back to what it was: the spare's length is needed again, and it does for it.
    await measure(service, where, "K1")
    cuts = await cut_list(service, where)
    assert {one["piece"]["state"] for one in cuts["wrong"]} == {"cut", "spare"}
    into = {one["piece"]["state"]: one["recut_into"]["piece"] for one in cuts["wrong"]}
    assert into == {"spare": "side_casing/left", "cut": "head_casing"}


async def test_pieces_of_an_opening_that_went_are_told(service: httpx.AsyncClient) -> None:
    where = (await made(service, openings=[opening("K1"), opening("K2", "28")])).headers["location"]
    await record(service, where, {"opening": "K1", "piece": "head_casing", "state": "cut"})
    one = await service.get(f"{where}/openings/K1")
    await service.delete(one.url, headers={"if-match": one.headers["etag"]})
    (wrong,) = (await cut_list(service, where))["wrong"]
    assert wrong["piece"]["opening"] == "K1"
    assert wrong["needed"] is None
    assert (wrong["recut_into"]["opening"], wrong["recut_into"]["piece"]) == ("K2", "head_casing")


async def test_sticks_cut_as_planned_leave_offcuts_and_later_plans_use_them(
    service: httpx.AsyncClient,
) -> None:
    where = (await made(service, openings=[opening("K1")], stock=STOCK)).headers["location"]
    now = await service.get(f"{where}/cut-list")
    plan = next(one for one in now.json()["cut_list"]["plans"] if one["profile"] == "casing")
    names = [stick["name"] for stick in plan["sticks"]]
    done = await service.post(f"{where}/cut-sticks", json={"sticks": names})
    assert done.status_code == 201, done.text
    assert {one["stick"] for one in done.json()["pieces"]} == set(names)
    assert len(done.json()["pieces"]) == 3
    stale = {"if-match": '"0-0"'}
    assert (
        await service.post(f"{where}/cut-sticks", json={"sticks": names}, headers=stale)
    ).status_code == 412
    kept = [stick["offcut"]["text"] for stick in plan["sticks"] if stick["kept"]]
    assert kept
    offcuts = (await service.get(f"{where}/lengths")).json()["items"]
    # What is left over is kept to the mark below, so that no more is counted on than there is.
    down = Rounding(mode=Mode.DOWN)
    exact = [Fraction(stick["offcut"]["exact"]) for stick in plan["sticks"] if stick["kept"]]
    assert sorted(one["length"] for one in offcuts) == sorted(tape(round_to(one, down)) for one in exact)
    assert {(one["lot"], one["stick"]) for one in offcuts} == {
        (f"{stick['name']} offcut", stick["name"]) for stick in plan["sticks"] if stick["kept"]
    }
    assert set(done.json()["lengths"]) == {one["lot"] for one in offcuts}
    after = await cut_list(service, where)
    assert after["right"] == 3
    assert "casing" not in {one["profile"] for one in after["cut_list"]["plans"]}
    # A small window that what is on hand can do alone.
    small = opening("B1", "2", "2", bottom="casing")
    assert (await service.post(f"{where}/openings", json=small)).status_code == 201
    later = await cut_list(service, where)
    plan = next(one for one in later["cut_list"]["plans"] if one["profile"] == "casing")
    assert {stick["on_hand"] for stick in plan["sticks"]} == {True}
    assert plan["cost"] == "0.00"
    used = await service.post(
        f"{where}/cut-sticks", json={"sticks": [stick["name"] for stick in plan["sticks"]]}
    )
    assert used.status_code == 201
    gone = (await service.get(f"{where}/lengths", params={"state": "used_up"})).json()["items"]
    assert {one["lot"] for one in gone} <= {one["lot"] for one in offcuts}
    assert gone, "the offcut that was cut stays listed"
    twice = await service.post(f"{where}/cut-sticks", json={"sticks": ["C1", "C1"]})
    assert twice.status_code == 422


async def test_work_tells_of_lengths_too(service: httpx.AsyncClient) -> None:
    lots = [{"lot": "bench", "profile": "casing", "length": "39 1/2", "delivered": 2}]
    where = (await made(service, lengths=lots)).headers["location"]
    work = await record(
        service, where, lengths=[{"profile": "casing", "length": "30"}], used_lengths=["bench", "bench"]
    )
    assert work["lengths"] == ["length"]
    left = (await service.get(f"{where}/lengths")).json()["items"]
    assert {one["lot"]: one["available"] for one in left} == {"bench": 0, "length": 1}
    more = await service.post(f"{where}/work", json={"used_lengths": ["length", "bench"]})
    assert [(one["pointer"], one["code"]) for one in more.json()["errors"]] == [
        ("/used_lengths/1", "no-such-length")
    ]
    assert (await service.get(f"{where}/lengths/length")).json()["available"] == 1


async def test_work_that_cannot_have_been_done_is_refused_whole(service: httpx.AsyncClient) -> None:
    where = (await made(service, openings=[opening("K1")])).headers["location"]
    leg = (await record(service, where, {**LEG, "state": "cut"}))["pieces"][0]["id"]
    body = {
        "pieces": [
            {"opening": "K9", "piece": "stool", "state": "cut"},
            {"opening": "K1", "piece": "lintel", "state": "cut"},
            {"opening": "K1", "piece": "stool", "instance": 2, "state": "cut"},
            {"opening": "K1", "piece": "apron", "state": "cut"},
            {"opening": "K1", "piece": "apron", "state": "cut"},
            {"opening": "K1", "piece": "head_casing", "state": "cut", "recut_from": "0"},
            {"opening": "K1", "piece": "side_casing/right", "state": "cut", "recut_from": leg},
        ],
        "lengths": [{"profile": "casing", "length": "10 in"}, {"profile": "casting", "length": "10 in"}],
        "used_lengths": ["0"],
    }
    answer = await service.post(f"{where}/work", json=body)
    assert answer.status_code == 422
    assert {(one["pointer"], one["code"]) for one in answer.json()["errors"]} == {
        ("/pieces/0/opening", "unknown-opening"),
        ("/pieces/1/piece", "unknown-piece"),
        ("/pieces/2/instance", "too-many"),
        ("/pieces/4", "given-twice"),
        ("/pieces/5/recut_from", "unknown-piece"),
        ("/pieces/6/recut_from", "cannot-be-recut"),
        ("/used_lengths/0", "no-such-length"),
        ("/lengths/1/profile", "unknown-profile"),
    }
    body = {"lengths": [{"profile": "casing", "length": "x"}, {"profile": "apron", "length": "1"}]}
    answer = await service.post(f"{where}/work", json=body)
    assert [one["pointer"] for one in answer.json()["errors"]] == ["/lengths/0/length"]
    assert (await service.post(f"{where}/work", json={})).status_code == 422
    assert (await service.get(where)).json()["revision"] == 2
    assert (await service.get(f"{where}/lengths")).json()["items"] == []


async def test_a_piece_recorded_by_mistake_is_struck(service: httpx.AsyncClient) -> None:
    where = (await made(service, openings=[opening("K1")])).headers["location"]
    piece = (await record(service, where, {**LEG, "state": "cut"}))["pieces"][0]["id"]
    address = f"{where}/work/{piece}"
    tag = (await service.get(address)).headers["etag"]
    assert (await service.delete(address)).status_code == 428
    assert (await service.delete(address, headers={"if-match": tag})).json() == {"revision": 3}
    assert (await cut_list(service, where))["right"] == 0


async def test_going_back_leaves_pieces_cut_and_lengths_on_hand(service: httpx.AsyncClient) -> None:
    where = (await made(service, openings=[opening("K1")])).headers["location"]
    await measure(service, where, "K1", "31", "46 1/4")
    await record(service, where, {**LEG, "state": "cut"}, lengths=[{"profile": "casing", "length": "30"}])
    tag = (await service.get(where)).headers["etag"]
    await service.post(f"{where}/restore", json={"revision": 1}, headers={"if-match": tag})
    assert len((await service.get(f"{where}/work")).json()["items"]) == 1
    assert len((await service.get(f"{where}/lengths")).json()["items"]) == 1
    assert (await cut_list(service, where))["right"] == 1


async def test_the_cut_list_is_news_only_when_the_schedule_changed(service: httpx.AsyncClient) -> None:
    where = (await made(service, openings=[opening("K1")])).headers["location"]
    first = await service.get(f"{where}/cut-list")
    tag = {"if-none-match": first.headers["etag"]}
    assert (await service.get(f"{where}/cut-list", headers=tag)).status_code == 304
    same = await service.get(f"{where}/cut-list")
    assert same.content == first.content
    await measure(service, where, "K1", "31")
    fresh = await service.get(f"{where}/cut-list", headers=tag)
    assert fresh.status_code == 200
    head = next(
        piece for piece in fresh.json()["cut_list"]["openings"][0]["pieces"] if piece["key"] == "head_casing"
    )
    assert head["long_point"]["text"] == "36 3/8 in"
    more = await service.get(f"{where}/cut-list", params={"include": ["saw_order", "hours"]})
    assert more.json()["cut_list"]["saw_order"]
    assert more.json()["cut_list"]["hours"]


async def test_stock_that_cannot_do_is_told(service: httpx.AsyncClient) -> None:
    stock = [{"profile": "casing", "sticks": [{"length": "2 ft", "price": "1"}]}]
    where = (await made(service, openings=[opening("K1")], stock=stock)).headers["location"]
    answer = await service.get(f"{where}/cut-list")
    assert answer.status_code == 422
    assert "K1" in answer.text
    empty = (await made(service, **house(openings=[]))).headers["location"]
    assert (await cut_list(service, empty))["needed"] == 0
