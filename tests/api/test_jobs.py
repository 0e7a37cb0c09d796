"""Long work answered later: 202 with a job, its state, events and result; as it comes for whoever waits."""

import asyncio
import json
from collections.abc import AsyncIterator
from typing import Any

import httpx
import msgpack
import pytest

from longpoint.api.document.examples import CUT_LIST
from longpoint.app import create_app
from longpoint.settings import Settings
from stored import house, opening, serving

LATER = {"prefer": "respond-async"}
WINDOW: dict[str, Any] = {**next(iter(CUT_LIST.values())).request, "planning_seconds": 0}


def unfinished(count: int = 30) -> dict[str, Any]:
    """A house whose search takes all the time it is given."""
    return house(openings=[opening(f"W{at}", f"{20 + at} {at % 7 + 1}/8") for at in range(count)])


@pytest.fixture
async def service(database: str) -> AsyncIterator[httpx.AsyncClient]:
    async with serving(database, {}) as client:
        yield client


def timeless(answer: httpx.Response) -> dict[str, Any]:
    """A cut list without how long its sticks were planned."""
    found = dict(answer.json())
    return {**found, "plans": [{**plan, "seconds": None} for plan in found["plans"]]}


async def ended(client: httpx.AsyncClient, address: str) -> dict[str, Any]:
    async with asyncio.timeout(30):
        while (job := (await client.get(address)).json())["state"] in ("waiting", "working"):
            await asyncio.sleep(0.02)
    return dict(job)


async def events(client: httpx.AsyncClient, address: str, **headers: str) -> list[tuple[str, str, Any]]:
    answer = await client.get(f"{address}/events", headers={"accept": "text/event-stream", **headers})
    assert answer.headers["content-type"].startswith("text/event-stream")
    found = []
    for block in answer.text.strip().split("\n\n"):
        fields = dict(line.split(": ", 1) for line in block.split("\n"))
        found.append((fields["id"], fields["event"], json.loads(fields["data"])))
    return found


async def test_a_cut_list_is_answered_later_and_then_as_it_would_have_been(
    service: httpx.AsyncClient,
) -> None:
    at_once = await service.post("/v1/cut-list", json=WINDOW)
    accepted = await service.post("/v1/cut-list", json=WINDOW, headers=LATER)
    assert accepted.status_code == 202
    assert accepted.headers["preference-applied"] == "respond-async"
    job = await ended(service, accepted.headers["location"])
    assert (job["state"], job["operation"], job["tries"]) == ("done", "compute_cut_list", 1)
    assert job["problem"] is None
    fetched = await service.get(job["result"])
    assert (fetched.status_code, timeless(fetched)) == (200, timeless(at_once))
    assert fetched.headers["content-type"] == at_once.headers["content-type"]


async def test_who_waits_long_enough_gets_the_answer(service: httpx.AsyncClient) -> None:
    answer = await service.post("/v1/cut-list", json=WINDOW, headers={"prefer": "wait=3600"})
    assert answer.status_code == 200
    assert answer.headers["preference-applied"] == "wait=50"  # as long as anybody is kept waiting
    assert timeless(answer) == timeless(await service.post("/v1/cut-list", json=WINDOW))


@pytest.mark.parametrize("prefer", ["return=minimal", "wait=soon", "wait=-1", "", "respond-asyncx"])
async def test_what_is_no_preference_for_later_is_passed_over(
    service: httpx.AsyncClient, prefer: str
) -> None:
    answer = await service.post("/v1/cut-list", json=WINDOW, headers={"prefer": prefer})
    assert answer.status_code == 200
    assert "preference-applied" not in answer.headers


async def test_the_same_work_is_one_job_and_other_work_another(service: httpx.AsyncClient) -> None:
    first = await service.post("/v1/cut-list", json=WINDOW, headers=LATER)
    where = first.headers["location"]
    await ended(service, where)
    again = await service.post("/v1/cut-list", json=WINDOW, headers={"prefer": "respond-async, wait=0"})
    assert again.status_code in (200, 202)
    other = await service.post(
        "/v1/cut-list", json=WINDOW, headers={**LATER, "accept": "application/vnd.msgpack"}
    )
    assert other.headers.get("location") != where


async def test_what_is_wrong_is_refused_at_once_or_is_the_jobs_problem(service: httpx.AsyncClient) -> None:
    unread = await service.post("/v1/cut-list", json={**WINDOW, "nonsense": 1}, headers=LATER)
    assert unread.status_code == 422
    wrong = {**WINDOW, "stock": [{**WINDOW["stock"][0], "sticks": []}]}
    at_once = await service.post("/v1/cut-list", json=wrong)
    assert at_once.status_code == 422
    accepted = await service.post("/v1/cut-list", json=wrong, headers=LATER)
    assert accepted.status_code == 202
    where = accepted.headers["location"]
    job = await ended(service, where)
    assert job["state"] == "failed"
    assert job["problem"]["errors"] == at_once.json()["errors"]
    result = await service.get(f"{where}/result")
    assert (result.status_code, result.json()) == (422, job["problem"])
    packed = await service.get(where, headers={"accept": "application/msgpack"})
    assert msgpack.unpackb(packed.content)["problem"] == job["problem"]
    nothing = await service.post("/v1/schedules/none/plans", json={"planning_seconds": 0}, headers=LATER)
    assert nothing.status_code == 404


async def test_a_plan_is_made_later_and_stays_with_its_schedule(service: httpx.AsyncClient) -> None:
    where = (await service.post("/v1/schedules", json=unfinished())).headers["location"]
    asked = {"planning_seconds": 0.6}
    accepted = await service.post(f"{where}/plans", json=asked, headers=LATER)
    assert accepted.status_code == 202
    told = await events(service, accepted.headers["location"])
    states = [state for _, state, _ in told]
    assert states[-1] == "done"
    assert states == sorted(states, key=("waiting", "working", "done").index)
    steps = [int(id.rpartition(".")[2]) for id, _, _ in told]
    assert steps == sorted(set(steps))
    assert told[-1][2]["progress"], "nothing was heard of the search"
    fetched = await service.get(told[-1][2]["result"])
    assert fetched.status_code == 201
    plan = await service.get(fetched.headers["location"])
    assert plan.json()["number"] == fetched.json()["number"]
    # Read on after a break: only what came later.
    rest = await events(service, accepted.headers["location"], **{"last-event-id": told[0][0]})
    assert [id for id, _, _ in rest] == [told[-1][0]]
    assert rest[0][2] == told[-1][2]


async def test_a_sheet_is_set_later(service: httpx.AsyncClient) -> None:
    where = (await service.post("/v1/schedules", json=unfinished(2))).headers["location"]
    address = f"{where}/sheets/opening-sheet"
    accepted = await service.get(address, headers={**LATER, "accept": "application/pdf"})
    assert accepted.status_code == 202
    job = await ended(service, accepted.headers["location"])
    fetched = await service.get(job["result"], headers={"accept": "application/pdf"})
    assert fetched.content.startswith(b"%PDF")
    assert fetched.headers["content-disposition"].startswith("inline")
    same = await service.get(address, headers={"accept": "application/pdf"})
    assert same.content == fetched.content
    known = {"accept": "application/pdf", "prefer": "wait=20", "if-none-match": same.headers["etag"]}
    nothing_new = await service.get(address, headers=known)
    assert (nothing_new.status_code, nothing_new.content) == (304, b"")


async def test_cancelled_twice_it_is_cancelled_and_has_no_result(service: httpx.AsyncClient) -> None:
    where = (await service.post("/v1/schedules", json=unfinished(60))).headers["location"]
    accepted = await service.post(f"{where}/plans", json={"planning_seconds": 20}, headers=LATER)
    job = accepted.headers["location"]
    first = await service.delete(job)
    again = await service.delete(job)
    assert first.status_code == again.status_code == 200
    assert first.json()["state"] == again.json()["state"] == "cancelled"
    result = await service.get(f"{job}/result")
    assert (result.status_code, result.json()["type"]) == (404, "/problems/not-found")
    assert (await events(service, job))[-1][1] == "cancelled"


async def test_an_event_of_another_job_is_no_place_to_read_on(service: httpx.AsyncClient) -> None:
    accepted = await service.post("/v1/cut-list", json=WINDOW, headers=LATER)
    job = accepted.headers["location"]
    for seen in ("another.1", "1", "x", accepted.json()["id"], f"{accepted.json()['id']}.-1"):
        answer = await service.get(f"{job}/events", headers={"last-event-id": seen})
        assert answer.status_code == 400, seen
        assert answer.json()["errors"][0]["header"] == "Last-Event-ID"


async def test_there_is_no_job_of_that_id(service: httpx.AsyncClient) -> None:
    for address in ("/v1/jobs/none", "/v1/jobs/none/events", "/v1/jobs/none/result", "/v1/jobs/%00"):
        assert (await service.get(address)).status_code == 404
    assert (await service.delete("/v1/jobs/none")).status_code == 404


async def test_too_many_are_refused_early_with_when_to_come_back(database: str) -> None:
    async with serving(database, {"jobs_per_account": 2}) as service:
        where = (await service.post("/v1/schedules", json=unfinished(40))).headers["location"]
        for at in range(2):
            asked = {"planning_seconds": 10 + at}
            assert (await service.post(f"{where}/plans", json=asked, headers=LATER)).status_code == 202
        refused = await service.post(f"{where}/plans", json={"planning_seconds": 15}, headers=LATER)
        assert (refused.status_code, refused.json()["type"]) == (429, "/problems/too-many-jobs")
        assert int(refused.headers["retry-after"]) >= 1
        small = await service.get("/v1/schedules")
        assert small.status_code == 200


async def test_a_service_of_several_processes_that_only_computes_never_answers_later() -> None:
    for settings in (Settings(access_log=False, jobs="none"), Settings(access_log=False, workers=2)):
        app = create_app(settings)
        async with httpx.AsyncClient(
            transport=httpx.ASGITransport(app=app), base_url="http://longpoint"
        ) as client:
            answer = await client.post("/v1/cut-list", json=WINDOW, headers=LATER)
            assert answer.status_code == 200
            assert "preference-applied" not in answer.headers


async def test_a_result_that_was_not_kept_is_gone(database: str) -> None:
    async with serving(database, {"job_result_seconds": 1}) as service:
        accepted = await service.post("/v1/cut-list", json=WINDOW, headers=LATER)
        job = await ended(service, accepted.headers["location"])
        async with asyncio.timeout(15):
            while (answer := await service.get(job["result"])).status_code == 200:
                await asyncio.sleep(0.2)
        assert (answer.status_code, answer.json()["type"]) == (410, "/problems/job-gone")
