"""A plan's progress as it comes, from the real service."""

import json
from pathlib import Path

import msgspec
import pytest

from longpoint.api.answers.events import PlanProgress
from longpoint_sdk import AsyncClient, Client, Progress, calls, problems, types

HOUSE = msgspec.convert(
    json.loads((Path(__file__).parents[2] / "deploy/demo/house.json").read_text()), types.CutListRequest
)


def test_a_step_says_all_that_the_services_does() -> None:
    assert Progress.__struct_fields__ == PlanProgress.__struct_fields__


def test_the_answer_comes_at_the_end_and_steps_before(client: Client) -> None:
    told: list[Progress] = []
    cut_list = client.follow(calls.compute_cut_list(HOUSE), told.append)
    assert cut_list.buy
    assert {step.profile for step in told} <= {plan.profile for plan in cut_list.plans}
    assert told, "the demo house takes some search"
    for plan in cut_list.plans:
        costs = [float(step.cost) for step in told if step.profile == plan.profile]
        assert costs == sorted(costs, reverse=True)
        assert all(float(plan.cost) <= cost for cost in costs)


async def test_the_async_twin(address: str) -> None:
    told: list[Progress] = []
    async with AsyncClient(address) as client:
        cut_list = await client.follow(calls.compute_cut_list(HOUSE), told.append)
    assert cut_list.buy
    assert told


def test_a_stream_left_early_gives_its_connection_back(client: Client) -> None:
    events = client.stream(calls.compute_cut_list(HOUSE))
    assert next(events).name in ("progress", "answer")
    events.close()
    assert client.check_live().status == "ok"


def test_a_wrong_house_is_refused_before_it_streams(client: Client) -> None:
    with pytest.raises(problems.InvalidRequest) as caught:
        client.follow(calls.compute_cut_list({"openings": [], "trim_specs": {}}), print)
    assert "/openings" in caught.value.pointers
