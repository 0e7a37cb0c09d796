"""What is answered of some rooms or openings of a house of which some are held."""

import httpx
import pytest

from stored import STOCK, house, made, opening

OPENINGS = [
    opening("A1", room="hall"),
    opening("A2", room="hall", held=True),
    opening("A3", room="loft"),
    opening("A4", width="41 3/8", room="loft", held=True),
]


@pytest.fixture
async def schedule(sqlite_service: httpx.AsyncClient) -> str:
    answer = await made(sqlite_service, openings=OPENINGS)
    return f"/v1/schedules/{answer.json()['id']}"


async def cut_list(service: httpx.AsyncClient, schedule: str, **asked: str) -> dict:
    answer = await service.get(f"{schedule}/cut-list", params=asked)
    assert answer.status_code == 200, answer.text
    return answer.json()["cut_list"]


@pytest.mark.parametrize(
    ("asked", "held"),
    [
        ({"room": "hall"}, ["A2"]),
        ({"room": "loft"}, ["A4"]),
        ({"opening": "A2"}, ["A2"]),
        ({"opening": "A3"}, []),
        ({}, ["A2", "A4"]),
    ],
)
async def test_what_is_held_and_costs_later_is_of_what_is_asked_for(sqlite_service, schedule, asked, held):
    found = await cut_list(sqlite_service, schedule, **asked)
    assert found["held"] == held
    assert (float(found["cost_later"]) > 0) == bool(held)


async def test_a_stick_of_both_rooms_counts_whole_in_each(sqlite_service, schedule):
    whole = float((await cut_list(sqlite_service, schedule))["cost_later"])
    rooms = [
        float((await cut_list(sqlite_service, schedule, room=one))["cost_later"]) for one in ("hall", "loft")
    ]
    assert max(rooms) <= whole <= sum(rooms)


async def test_a_profile_that_cannot_be_had_later_is_named_where_it_is_needed(sqlite_service):
    long = opening("A4", width="110", room="loft", held=True)
    answer = await made(sqlite_service, openings=[opening("A1", room="hall"), long])
    schedule = f"/v1/schedules/{answer.json()['id']}"
    assert (await cut_list(sqlite_service, schedule, room="loft"))["later_unpriced"] != []
    assert (await cut_list(sqlite_service, schedule, room="hall"))["later_unpriced"] == []


async def test_a_plan_shows_the_sticks_of_what_is_asked_for(sqlite_service):
    far = opening("A2", width="80", height="90", room="loft")
    answer = await made(sqlite_service, openings=[opening("A1", room="hall"), far])
    schedule = f"/v1/schedules/{answer.json()['id']}"
    assert (await sqlite_service.post(f"{schedule}/plans", json={"planning_seconds": 0})).status_code == 201
    whole = (await sqlite_service.get(f"{schedule}/plans/1")).json()
    for asked, mark in (({"room": "loft"}, "A2"), ({"opening": "A1"}, "A1")):
        some = (await sqlite_service.get(f"{schedule}/plans/1", params=asked)).json()
        expected = [
            stick for stick in whole["sticks"] if any(piece["opening"] == mark for piece in stick["pieces"])
        ]
        assert some["sticks"] == expected
        assert 0 < len(expected) < len(whole["sticks"])
        assert sum(line["quantity"] for line in some["buy"]) == len(expected)
        assert {**some, "sticks": 0, "buy": 0} == {**whole, "sticks": 0, "buy": 0}
        names = {stick["name"] for stick in expected}
        listed = await cut_list(sqlite_service, schedule, **asked)
        assert {row["name"] for plan in listed["plans"] for row in plan["sticks"]} == names


async def test_a_plan_is_asked_for_rooms_and_openings_there_are(sqlite_service, schedule):
    await cut_list(sqlite_service, schedule)
    answer = await sqlite_service.get(f"{schedule}/plans/1", params={"room": "haul"})
    assert answer.status_code == 422
    assert answer.json()["errors"][0]["parameter"] == "room"


WITHOUT_CASING = [one for one in STOCK if one["profile"] != "casing"]


@pytest.mark.parametrize(
    ("stock", "missing"),
    [(WITHOUT_CASING, ["casing"]), ([], ["apron", "casing", "stool stock"])],
)
async def test_a_plan_without_stock_is_not_proven_and_says_what_is_missing(sqlite_service, stock, missing):
    answer = await made(sqlite_service, openings=OPENINGS[:1], stock=stock)
    schedule = f"/v1/schedules/{answer.json()['id']}"
    planned = (await sqlite_service.post(f"{schedule}/plans", json={"planning_seconds": 1})).json()
    read = (await sqlite_service.get(f"{schedule}/plans/1")).json()
    listed = (await sqlite_service.get(f"{schedule}/plans")).json()["items"][0]
    cut = (await sqlite_service.get(f"{schedule}/cut-list")).json()
    for plan in (planned, read, listed, cut["plan"], cut["cut_list"]):
        assert plan["unstocked"] == missing
        assert plan["proven"] is False
    assert {one["profile"] for one in planned["profiles"]}.isdisjoint(missing)

    for sheet in ("cost-sheet", "stick-sheet", "material-list", "labels", "cut-list"):
        contents = (await sqlite_service.get(f"{schedule}/sheets/{sheet}?format=json")).json()
        assert contents["plan"].startswith("Plan 1, not proven: no stock was given for "), sheet
        assert all(profile in contents["plan"] for profile in missing)
    money = await sqlite_service.get(f"{schedule}/sheets/cost-sheet?format=csv")
    assert ", ".join(missing) in money.text

    body = house(stock=STOCK)
    tag = (await sqlite_service.get(schedule)).headers["etag"]
    put = await sqlite_service.put(schedule, json=body, headers={"if-match": tag})
    assert put.status_code == 200, put.text
    cut = (await sqlite_service.get(f"{schedule}/cut-list")).json()
    assert cut["plan"]["unstocked"] == cut["cut_list"]["unstocked"] == []
    plans = (await sqlite_service.get(f"{schedule}/plans")).json()["items"]
    assert [plan["unstocked"] for plan in plans] == [[], missing]


async def test_labels_say_which_plan_their_sticks_are_from(sqlite_service, schedule):
    answer = await sqlite_service.get(f"{schedule}/sheets/labels", headers={"accept": "text/html"})
    assert '<header class="seen"><p>Plan 1, ' in answer.text
    assert ".seen{display:none}" in answer.text


async def test_a_kept_plan_that_is_not_proven_says_where_to_search_on(sqlite_service):
    answer = await made(sqlite_service, openings=[opening("A1")])
    schedule = f"/v1/schedules/{answer.json()['id']}"
    await sqlite_service.post(f"{schedule}/plans", json={"planning_seconds": 0})
    kept = await cut_list(sqlite_service, schedule)
    assert kept["proven"] is False
    assert "POST a plan with more `planning_seconds` to the schedule's `/plans`." in kept["notes"][-1]

    body = {**house(), "openings": [opening("A1")], "planning_seconds": 0}
    del body["name"]
    sent = await sqlite_service.post("/v1/cut-list", json=body)
    assert sent.status_code == 200, sent.text
    assert sent.json()["proven"] is False
    assert "more `planning_seconds` may close the gap." in sent.json()["notes"][-1]


@pytest.mark.parametrize(
    ("count", "said"),
    [(1, "There is only 1 opening 'A1'."), (2, "There are only 2 openings 'A1'.")],
)
async def test_more_of_an_opening_than_there_are_are_counted(sqlite_service, count, said):
    answer = await made(sqlite_service, openings=[opening("A1", count=count)])
    piece = {"opening": "A1", "piece": "stool", "state": "cut", "instance": 3}
    refused = await sqlite_service.post(f"/v1/schedules/{answer.json()['id']}/work", json={"pieces": [piece]})
    assert refused.status_code == 422
    assert refused.json()["errors"][0]["detail"] == said
