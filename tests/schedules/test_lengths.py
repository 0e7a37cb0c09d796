"""Lengths on hand, by lot: what is ordered, delivered and used up, what is planned with and what was paid."""

from decimal import Decimal
from typing import Any

import httpx
import pytest

from stored import house, made, opening
from working import cut_list, measure, record

FOURTEEN = {"profile": "casing", "length": "14 ft", "paid": "16.10"}


async def put(
    service: httpx.AsyncClient, where: str, lot: str, body: dict[str, Any], **headers: str
) -> httpx.Response:
    """What there is of a lot."""
    address = f"{where}/lengths/{lot}"
    if not headers:
        there = await service.get(address)
        headers = {"if-match": there.headers["etag"]} if there.status_code == 200 else {}
    return await service.put(address, json=body, headers=headers)


async def planned(service: httpx.AsyncClient, where: str) -> dict[str, Any]:
    """The plan that stands."""
    answer = await service.post(f"{where}/plans", json={}, timeout=60)
    assert answer.status_code == 201, answer.text
    plan: dict[str, Any] = answer.json()
    return plan


async def cost(service: httpx.AsyncClient, where: str, profile: str = "casing") -> Decimal:
    """What the sticks of a profile cost, all told."""
    answer = await service.get(f"{where}/cut-list", params={"include": "cost"})
    assert answer.status_code == 200, answer.text
    lines = answer.json()["cut_list"]["cost_sheet"]["lines"]
    for line in lines:
        assert sum(map(Decimal, line["by_opening"])) == Decimal(line["amount"])
    return sum((Decimal(line["amount"]) for line in lines if line["name"] == profile), Decimal())


async def test_a_lot_goes_from_ordered_to_used_up(service: httpx.AsyncClient) -> None:
    where = (await made(service)).headers["location"]
    first = await put(service, where, "yard 1", {**FOURTEEN, "ordered": 5})
    assert first.status_code == 201
    assert (await service.get(first.headers["location"])).json() == first.json()
    told = first.json()
    assert (told["lot"], told["ordered"], told["delivered"], told["used_up"]) == ("yard 1", 5, 0, 0)
    assert (told["available"], told["states"], told["notes"]) == (5, ["ordered"], [])
    assert told["exact"] == {"/length": "168"}
    again = await put(service, where, "yard 1", {**FOURTEEN, "ordered": 5}, accept="application/json")
    assert (again.status_code, again.json()) == (200, told), "the same fact changes nothing"
    assert again.headers["etag"] == first.headers["etag"]
    blind = await put(
        service, where, "yard 1", {**FOURTEEN, "ordered": 5, "delivered": 3}, accept="application/json"
    )
    assert blind.status_code == 428
    stale = await put(service, where, "yard 1", {**FOURTEEN, "delivered": 3}, **{"if-match": '"0-0"'})
    assert stale.status_code == 412
    some = (await put(service, where, "yard 1", {**FOURTEEN, "ordered": 5, "delivered": 3})).json()
    assert (some["available"], some["states"]) == (5, ["ordered", "delivered", "on_hand"])
    more = (await put(service, where, "yard 1", {**FOURTEEN, "ordered": 5, "delivered": 6})).json()
    assert (more["available"], more["notes"]) == (6, ["6 came of 5 that were ordered."])
    gone = {**FOURTEEN, "ordered": 5, "delivered": 6, "used_up": 6}
    left = (await put(service, where, "yard 1", gone)).json()
    assert (left["available"], left["states"]) == (0, ["delivered", "used_up"])
    for state, number in (("ordered", 0), ("delivered", 1), ("on_hand", 0), ("used_up", 1)):
        listed = (await service.get(f"{where}/lengths", params={"state": state})).json()["items"]
        assert len(listed) == number, state
    cancelled = (await put(service, where, "yard 1", {**FOURTEEN, "ordered": 0, "used_up": 0})).json()
    assert (cancelled["available"], cancelled["delivered"]) == (0, 0)
    assert (await service.get(where)).json()["revision"] == 6


async def test_an_offcut_is_found_and_named(service: httpx.AsyncClient) -> None:
    where = (await made(service, lengths=[{"profile": "casing", "length": "39 1/2"}])).headers["location"]
    key = {"idempotency-key": "found"}
    body = {"profile": "apron", "length": "1.2 m", "note": "Behind the bench."}
    added = await service.post(f"{where}/lengths", json=body, headers=key)
    assert (added.status_code, added.json()["lot"], added.json()["delivered"]) == (201, "length 2", 1)
    assert (await service.post(f"{where}/lengths", json=body, headers=key)).json() == added.json()
    assert added.json()["exact"]["/length"] == "6000/127"
    only = (await service.get(f"{where}/lengths", params={"profile": "apron"})).json()["items"]
    assert [one["lot"] for one in only] == ["length 2"]
    revision = (await service.get(where)).json()["revision"]
    same = await service.post(f"{where}/lengths", json={**body, "lot": "length 2"})
    assert (same.status_code, same.json()) == (201, added.json()), "the same fact changes nothing"
    assert (await service.get(where)).json()["revision"] == revision
    taken = await service.post(f"{where}/lengths", json={**body, "lot": "length 2", "length": "1.1 m"})
    assert [(one["pointer"], one["code"]) for one in taken.json()["errors"]] == [("/lot", "duplicate-lot")]
    twice = {"lengths": [{**body, "lot": "bench"}, {**body, "lot": "bench"}]}
    for path, sent in ((f"{where}/work", {"pieces": [], **twice}), ("/v1/schedules", house(**twice))):
        refused = (await service.post(path, json=sent)).json()["errors"]
        assert [(one["pointer"], one["code"]) for one in refused] == [("/lengths/1/lot", "duplicate-lot")]
    assert (await service.delete(added.headers["location"])).status_code == 428
    gone = await service.delete(added.headers["location"], headers={"if-match": added.headers["etag"]})
    assert gone.status_code == 200
    assert (await service.get(f"{where}/lengths/length 2")).status_code == 404
    wrote = (await service.get(f"{where}/revisions/{gone.json()['revision']}")).json()["wrote"]
    assert [(one["kind"], one["gone"]) for one in wrote] == [("length", True)]


@pytest.mark.parametrize(
    ("body", "pointer", "code", "said"),
    [
        ({"profile": "casng", "length": "40"}, "/profile", "unknown-profile", 'Was "casing" meant?'),
        ({"profile": "casing", "length": "20 ft"}, "/length", "longer-than-any", "168 in"),
        ({"profile": "casing", "length": "40", "used_up": 2}, "/used_up", "more-than-there-were", "of 1"),
        (
            {"profile": "casing", "length": "40", "ordered": 3, "delivered": 1, "used_up": 4},
            "/used_up",
            "more-than-there-were",
            "4 cannot be used up of 3",
        ),
        ({"profile": "casing", "length": "40", "lot": ".."}, "/lot", "lot-is-a-path", "another name"),
        ({"profile": "casing", "length": "40", "ordered": -1}, "/ordered", "out-of-range", ""),
        ({"profile": "casing", "length": "40", "stick": "seven"}, "/stick", "wrong-form", ""),
    ],
)
async def test_what_cannot_be_on_hand_is_refused_with_what_was_meant(
    sqlite_service: httpx.AsyncClient, body: dict[str, Any], pointer: str, code: str, said: str
) -> None:
    where = (await made(sqlite_service)).headers["location"]
    answers = [
        (await sqlite_service.post(f"{where}/lengths", json=body), ""),
        (await sqlite_service.post(f"{where}/work", json={"lengths": [body]}), "/lengths/0"),
        (await sqlite_service.post("/v1/schedules", json=made_with(body)), "/lengths/0"),
    ]
    if pointer != "/lot":
        answers.append((await sqlite_service.put(f"{where}/lengths/a", json=body), ""))
    for answer, at in answers:
        assert answer.status_code == 422, answer.text
        told = [(one["pointer"], one["code"]) for one in answer.json()["errors"]]
        assert told == [(at + pointer, code)]
        assert said in answer.json()["errors"][0]["detail"]
    assert (await sqlite_service.get(where)).json()["revision"] == 1


def made_with(*lengths: dict[str, Any]) -> dict[str, Any]:
    """A schedule with these lengths on hand."""
    return house(lengths=list(lengths))


async def test_a_stick_that_was_bought_may_be_longer_than_any_that_is_sold(
    sqlite_service: httpx.AsyncClient,
) -> None:
    where = (await made(sqlite_service)).headers["location"]
    bought = {"profile": "casing", "length": "16 ft", "ordered": 2, "paid": "18.00"}
    assert (await put(sqlite_service, where, "other yard", bought)).status_code == 201
    offcut = {"profile": "casing", "length": "15 ft", "stick": "C3"}
    assert (await sqlite_service.post(f"{where}/lengths", json=offcut)).json()["lot"] == "C3 offcut"
    again = await sqlite_service.post(
        "/v1/schedules",
        json=(await sqlite_service.get(f"{where}/export", headers={"accept": "application/json"})).json(),
    )
    assert again.status_code == 201, again.text
    here = f"{again.headers['location']}/lengths"
    copied = (await sqlite_service.get(here)).json()["items"]
    assert {(one["lot"], one["available"]) for one in copied} == {("other yard", 2), ("C3 offcut", 1)}


async def test_a_profile_with_lengths_on_hand_is_not_forgotten(sqlite_service: httpx.AsyncClient) -> None:
    stock = [{"profile": "door stop", "sticks": [{"length": "8 ft", "price": "4.00"}]}]
    answer = await made(sqlite_service, stock=stock, lengths=[{"profile": "door stop", "length": "60"}])
    where, tag = answer.headers["location"], {"if-match": answer.headers["etag"]}
    house = answer.json()["house"]
    refused = await sqlite_service.put(where, json={**house, "stock": []}, headers=tag)
    assert [(one["pointer"], one["code"]) for one in refused.json()["errors"]] == [
        ("/stock", "profile-in-use")
    ]
    kept = [{"profile": "door stop", "sticks": []}]
    assert (await sqlite_service.put(where, json={**house, "stock": kept}, headers=tag)).status_code == 200


async def test_the_address_names_the_lot(sqlite_service: httpx.AsyncClient) -> None:
    where = (await made(sqlite_service)).headers["location"]
    other = await put(sqlite_service, where, "a", {**FOURTEEN, "lot": "b"})
    assert [(one["pointer"], one["code"]) for one in other.json()["errors"]] == [("/lot", "not-the-address")]
    odd = await put(sqlite_service, where, "%20a", FOURTEEN)
    assert [(one["pointer"], one["code"]) for one in odd.json()["errors"]] == [("/lot", "not-a-name")]
    lost = await put(sqlite_service, where, "a", FOURTEEN, **{"if-match": "*"})
    assert lost.status_code == 412
    only_new = {"if-none-match": "*"}
    assert (await put(sqlite_service, where, "a", FOURTEEN, **only_new)).status_code == 201
    assert (await put(sqlite_service, where, "a", FOURTEEN, **only_new)).status_code == 412
    id = (await sqlite_service.get(f"{where}/lengths/a")).json()["id"]
    by_id = await put(sqlite_service, where, id, {**FOURTEEN, "lot": "a", "note": "By the door."})
    assert (by_id.status_code, by_id.json()["lot"]) == (200, "a")


async def test_what_was_bought_as_planned_is_not_bought_again_and_sticks_keep_their_names(
    service: httpx.AsyncClient,
) -> None:
    openings = [opening(f"K{n}", f"{26 + n} 5/8", f"{44 + n}") for n in range(1, 7)]
    where = (await made(service, openings=openings)).headers["location"]
    before = await planned(service, where)
    to_pay = await cost(service, where)
    for number, line in enumerate(before["buy"]):
        bought = {name: line[name] for name in ("profile", "length")} | {"ordered": line["quantity"]}
        lot = {**bought, "length": line["length"]["text"], "paid": line["price"]}
        assert (await put(service, where, f"yard {number}", lot)).status_code == 201
    after = await planned(service, where)
    assert after["number"] == before["number"] + 1
    assert (after["buy"], after["changed"], after["cost"]) == ([], [], "0.00")
    assert [one["name"] for one in after["sticks"]] == [one["name"] for one in before["sticks"]]
    assert {one["lot"] for one in after["sticks"]} == {f"yard {n}" for n in range(len(before["buy"]))}
    assert await cost(service, where) == to_pay
    sheet = await service.get(f"{where}/sheets/material-list", params={"format": "csv"})
    assert sheet.status_code == 200
    # They come as they were ordered: nothing that is planned changes.
    lots = (await service.get(f"{where}/lengths")).json()["items"]
    for one in lots:
        came = {name: one[name] for name in ("profile", "length", "ordered", "paid")}
        await put(service, where, one["lot"], {**came, "delivered": one["ordered"]})
    assert (await planned(service, where))["number"] == after["number"]
    # Cut from the lot.
    stick = next(one for one in after["sticks"] if one["profile"] == "casing")
    done = await service.post(f"{where}/cut-sticks", json={"sticks": [stick["name"]]})
    assert done.status_code == 201, done.text
    lot = (await service.get(f"{where}/lengths/{stick['lot']}")).json()
    assert lot["used_up"] == 1
    same = await service.post(f"{where}/cut-sticks", json={"sticks": [stick["name"]]})
    assert same.json()["lengths"] == []
    assert (await service.get(f"{where}/lengths/{stick['lot']}")).json() == lot
    assert await cost(service, where) == to_pay
    # A remeasure: what is bought is used, and one more is asked for at most where it must be.
    await measure(service, where, "K6", "33", "51")
    third = await planned(service, where)
    assert all(one["quantity"] <= 1 for one in third["buy"])
    kept = {one["name"] for one in third["sticks"]} & {one["name"] for one in after["sticks"]}
    assert kept


async def test_cut_before_anybody_told_of_the_lot_it_is_paid_once(service: httpx.AsyncClient) -> None:
    where = (await made(service, openings=[opening("K1"), opening("K2")])).headers["location"]
    plan = await planned(service, where)
    whole = await cost(service, where)
    own = [one for one in plan["sticks"] if one["profile"] == "casing"]
    await service.post(f"{where}/cut-sticks", json={"sticks": [one["name"] for one in own]})
    assert await cost(service, where) == whole, "what is cut was paid"
    for length in {one["length"]["text"] for one in own}:
        alike = [one for one in own if one["length"]["text"] == length]
        number = len(alike)
        lot = {"profile": "casing", "length": length, "ordered": number, "used_up": number}
        await put(service, where, f"yard {alike[0]['name']}", {**lot, "paid": alike[0]["price"]})
    assert await cost(service, where) == whole
    # A stick more than is needed was paid for, too, and is left.
    await put(service, where, "spare", {**FOURTEEN, "delivered": 2})
    assert await cost(service, where) == whole + Decimal("32.20")


async def test_lengths_used_up_by_hand_are_not_planned_with(service: httpx.AsyncClient) -> None:
    where = (await made(service, openings=[opening("K1")])).headers["location"]
    await put(service, where, "yard", {**FOURTEEN, "delivered": 1})
    assert "casing" not in {one["profile"] for one in (await planned(service, where))["buy"]}
    await record(service, where, used_lengths=["yard"])
    assert "casing" in {one["profile"] for one in (await planned(service, where))["buy"]}
    assert {stick["lot"] for stick in (await planned(service, where))["sticks"]} == {None}
    assert (await cut_list(service, where))["cut_list"]["buy"]


async def test_lots_of_one_request_are_listed_as_they_were_sent(service: httpx.AsyncClient) -> None:
    lots = [{"profile": "casing", "length": f"{40 + at}"} for at in range(20)]
    where = (await made(service, lengths=lots)).headers["location"]
    listed = (await service.get(f"{where}/lengths")).json()["items"]
    assert [one["length"] for one in listed] == [one["length"] for one in lots]
