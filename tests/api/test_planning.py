"""Sticks planned behind the API: searched for, told of as it goes, bounded, killable."""

import asyncio
import json
import re
from typing import Any

import httpx
import pytest

from longpoint.api.document.examples import HOUSE_TRIM, KITCHEN_WINDOW
from longpoint.app import create_app
from longpoint.jobs.planning_pool import PlannersBusy, PlanningPool
from longpoint.settings import Settings
from longpoint.stock import Cutting, Plan, Replanned, StockError
from stock.checker import complaints
from stock.cuttings import house

HARD = house(300, 25, 3)


def request_for(windows: int, **more: Any) -> dict[str, Any]:
    """A house whose first-fit is dearer than need be."""
    openings = [
        {
            "mark": f"W{number}",
            "trim": "house",
            "readings": {
                **KITCHEN_WINDOW,
                "jamb_width": f"{20 + 7 * number % 31} {number % 16}/16 in",
                "jamb_height": f"{40 + 5 * number % 23} {3 * number % 16}/16 in",
            },
        }
        for number in range(1, windows + 1)
    ]
    prices = {"8 ft": "8.00", "10 ft": "9.90", "12 ft": "11.76", "14 ft": "13.58", "16 ft": "15.36"}
    sticks = [{"length": length, "price": price} for length, price in prices.items()]
    return {
        "openings": openings,
        "trim_specs": {"house": HOUSE_TRIM},
        "stock": [{"profile": "casing 2 1/2", "sticks": sticks}],
        **more,
    }


def events(text: str) -> list[tuple[str, Any]]:
    found = []
    for block in text.strip().split("\n\n"):
        name, data = block.split("\n")
        found.append((name.removeprefix("event: "), json.loads(data.removeprefix("data: "))))
    return found


async def ask(
    client: httpx.AsyncClient, body: dict[str, Any], accept: str = "application/json"
) -> httpx.Response:
    answer = await client.post("/v1/cut-list", json=body, headers={"accept": accept}, timeout=60)
    assert answer.status_code == 200, answer.text
    return answer


async def test_a_search_is_cheaper_than_first_fit_and_proven(client):
    first = (await ask(client, request_for(20, planning_seconds=0))).json()["plans"][0]
    found = (await ask(client, request_for(20, planning_seconds=20))).json()["plans"][0]
    assert (first["method"], first["proven"]) == ("first_fit", False)
    assert found["proven"] is True
    assert float(found["cost"]) < float(first["cost"])


async def test_events_tell_of_each_step_and_end_in_the_answer(client):
    body = request_for(20, planning_seconds=20)
    answer = await ask(client, body, "text/event-stream")
    assert answer.headers["content-type"].startswith("text/event-stream")
    *steps, (last, cut_list) = events(answer.text)
    assert steps
    assert {name for name, _ in steps} == {"progress"}
    assert {step["profile"] for _, step in steps} == {"casing 2 1/2"}
    gaps = [step["gap"] for _, step in steps]
    assert gaps == sorted(gaps, reverse=True)
    plain = (await ask(client, body)).json()
    for one in (cut_list, plain):
        for plan in one["plans"]:
            plan["seconds"] = 0
    assert (last, cut_list) == ("answer", plain)


async def test_events_without_a_search_are_the_answer_alone(client):
    answer = await ask(client, request_for(3, planning_seconds=0), "text/event-stream")
    assert [name for name, _ in events(answer.text)] == ["answer"]


async def test_a_refusal_is_told_before_any_event(client):
    body = request_for(3)
    body["openings"][0]["readings"]["jamb_width"] = "-3 in"
    answer = await client.post("/v1/cut-list", json=body, headers={"accept": "text/event-stream"})
    assert answer.status_code == 422
    assert answer.headers["content-type"] == "application/problem+json"


async def test_stock_that_cannot_give_every_piece_is_refused(client):
    body = request_for(3)
    body["stock"][0]["sticks"] = [{"length": "16 ft", "price": "15.36", "available": 2}]
    answer = await client.post("/v1/cut-list", json=body)
    assert answer.status_code == 422
    (fault,) = answer.json()["errors"]
    assert fault["code"] == "not-enough-stock"
    assert "falls 56 1/8 in short of" in fault["detail"]


def too_short() -> dict[str, Any]:
    """Sticks whose length together is enough, and of which none holds what a leg leaves."""
    body = request_for(1)
    body["openings"][0] |= {"mark": "W1"}
    body["openings"][0]["readings"] |= {"jamb_width": "36 in", "jamb_height": "40 in"}
    body["stock"][0]["sticks"] = [{"length": "85 in", "price": "15.36", "available": 2}]
    return body


async def test_the_piece_that_finds_no_place_is_named_as_its_opening_has_it(client):
    answer = await client.post("/v1/cut-list", json=too_short())
    assert answer.status_code == 422
    (fault,) = answer.json()["errors"]
    assert "cannot give every piece, proven." in fault["detail"]
    assert re.search(r"leaves out 1 of [\w/]*casing[\w/]* of W1, 4\d [\d/]+ in long\.", fault["detail"]), (
        fault
    )


async def test_what_only_the_search_can_refuse_is_the_last_event(client):
    refused = await client.post("/v1/cut-list", json=too_short())
    answer = await ask(client, too_short(), "text/event-stream")
    *steps, (last, problem) = events(answer.text)
    assert {name for name, _ in steps} <= {"progress"}
    assert last == "problem"
    assert (problem["status"], problem["errors"]) == (422, refused.json()["errors"])


async def test_a_full_queue_says_when_to_come_again():
    app = create_app(Settings(access_log=False, planning_queue=0))
    pool: PlanningPool = app.state.planning
    transport = httpx.ASGITransport(app=app)
    async with httpx.AsyncClient(transport=transport, base_url="http://longpoint") as client:
        first = asyncio.create_task(pool.plan(((HARD, ()),), 20.0, lambda _index, _step: None))
        await asyncio.sleep(0)
        for accept in ("application/json", "text/event-stream"):
            headers = {"accept": accept}
            refused = await client.post("/v1/cut-list", json=request_for(20), headers=headers)
            assert refused.status_code == 503
            assert refused.json()["type"] == "/problems/planning-busy"
            assert int(refused.headers["retry-after"]) >= 1
        answered = await client.post("/v1/cut-list", json=request_for(20, planning_seconds=0))
        assert answered.status_code == 200
        first.cancel()
        await asyncio.gather(first, return_exceptions=True)
    await pool.close()


@pytest.fixture
async def pool():
    made = PlanningPool(processes=1, waiting=1)
    yield made
    await made.close()


async def planned(pool: PlanningPool, cutting: Cutting, seconds: float) -> Plan:
    (outcome,) = await pool.plan(((cutting, ()),), seconds, lambda _index, _step: None)
    assert isinstance(outcome, Replanned)
    assert not complaints(cutting, outcome.plan)
    return outcome.plan


async def test_a_cancelled_plan_frees_its_place_at_once(pool):
    begun = asyncio.Event()
    task = asyncio.create_task(pool.plan(((HARD, ()),), 30.0, lambda _index, _step: begun.set()))
    await begun.wait()
    worker = pool.working[0]
    task.cancel()
    with pytest.raises(asyncio.CancelledError):
        await task
    assert not worker.alive
    assert (await planned(pool, house(12, 6, 1), 10.0)).proven


async def test_those_who_wait_are_served_in_turn_and_the_rest_refused(pool):
    first = asyncio.create_task(planned(pool, house(12, 6, 1), 10.0))
    await asyncio.sleep(0)
    second = asyncio.create_task(planned(pool, house(12, 6, 2), 10.0))
    await asyncio.sleep(0)
    with pytest.raises(PlannersBusy):
        await planned(pool, house(12, 6, 3), 10.0)
    assert (await first).proven
    assert (await second).proven


async def test_one_who_gives_up_waiting_leaves_the_queue(pool):
    first = asyncio.create_task(planned(pool, house(12, 6, 1), 10.0))
    await asyncio.sleep(0)
    second = asyncio.create_task(planned(pool, house(12, 6, 2), 10.0))
    await asyncio.sleep(0)
    second.cancel()
    await asyncio.gather(second, return_exceptions=True)
    third = asyncio.create_task(planned(pool, house(12, 6, 3), 10.0))
    assert (await first).proven
    assert (await third).proven


async def test_a_process_that_hangs_is_killed_and_its_best_plan_kept(pool, monkeypatch):
    monkeypatch.setattr("longpoint.jobs.planning_pool.GRACE", -28.0)  # a budget of 30 s and a patience of two
    outcome = await planned(pool, house(1000, 40, 1), 30.0)
    assert outcome.cost_cents > 0
    assert not pool.working


async def test_a_process_that_dies_is_replaced(pool):
    await planned(pool, house(12, 6, 1), 10.0)
    pool.idle[0].kill()
    assert (await planned(pool, house(12, 6, 2), 10.0)).proven


async def test_a_cutting_that_cannot_be_planned_comes_back_as_its_faults(pool):
    cutting = house(12, 6, 1)
    short = Cutting("casing", cutting.pieces, (), kerf=cutting.kerf)
    (outcome,) = await pool.plan(((short, ()),), 5.0, lambda _index, _step: None)
    assert isinstance(outcome, StockError)
    assert [fault.code for fault in outcome.faults] == ["no_stock"]


async def test_cuttings_of_one_request_are_each_planned(pool):
    cuttings = tuple(house(12, 6, seed) for seed in range(3))
    outcomes = await pool.plan(tuple((cutting, ()) for cutting in cuttings), 15.0, lambda _index, _step: None)
    for cutting, outcome in zip(cuttings, outcomes, strict=True):
        assert isinstance(outcome, Replanned)
        assert not complaints(cutting, outcome.plan)
        assert outcome.plan.proven


async def test_an_openings_pieces_come_from_one_stick_where_that_is_asked(client):
    body = request_for(3)
    body["stock"][0]["one_stick_each"] = True
    (plan,) = (await ask(client, body)).json()["plans"]
    held = [{piece["opening"] for piece in stick["pieces"]} for stick in plan["sticks"]]
    for mark in ("W1", "W2", "W3"):
        assert sum(mark in stick for stick in held) == 1 or mark in plan["split_openings"]
    assert plan["split_openings"] == []


async def test_an_opening_that_no_stick_holds_is_named(client):
    body = request_for(1)
    body["openings"][0]["readings"] |= {"jamb_width": "60 in", "jamb_height": "80 in"}
    body["stock"][0]["one_stick_each"] = True
    (plan,) = (await ask(client, body)).json()["plans"]
    assert plan["split_openings"] == ["W1"]
