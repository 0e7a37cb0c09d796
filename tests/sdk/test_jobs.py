"""Long work begun with the client, followed, awaited and cancelled, against the real service."""

import json
from pathlib import Path

import msgspec
import pytest

from longpoint_sdk import AsyncClient, Client, calls, problems, types

HOUSE = msgspec.convert(
    json.loads((Path(__file__).parents[2] / "deploy/demo/house.json").read_text()), types.CutListRequest
)
LONG = msgspec.structs.replace(HOUSE, planning_seconds=20)


def test_a_job_is_followed_to_its_answer(client: Client) -> None:
    told: list[types.JobAnswer] = []
    job = client.begin(calls.compute_cut_list(HOUSE))
    cut_list = job.result(told.append)
    assert isinstance(cut_list, types.CutListAnswer)
    assert [plan.cost for plan in cut_list.plans] == [
        plan.cost for plan in client.compute_cut_list(HOUSE).plans
    ]
    assert told[-1].state == "done"
    assert told[-1].operation == "compute_cut_list"
    # What is kept already is answered at once.
    again = client.begin(calls.compute_cut_list(HOUSE))
    assert again.result().plans == cut_list.plans


async def test_a_job_is_awaited(address: str) -> None:
    async with AsyncClient(address) as client:
        job = await client.begin(calls.make_material_list(HOUSE, accept="application/pdf"))
        assert (await job).startswith(b"%PDF")


def test_a_cancelled_job_has_no_answer(client: Client) -> None:
    job = client.begin(calls.make_cost_sheet(LONG))
    if job.read().state in ("waiting", "working"):
        assert job.cancel().state == "cancelled"
        with pytest.raises(problems.NotFound):
            job.result()


def test_what_fails_is_raised_as_if_it_had_been_waited_for(client: Client) -> None:
    wrong = msgspec.structs.replace(HOUSE, stock=[msgspec.structs.replace(HOUSE.stock[0], sticks=[])])
    with pytest.raises(problems.InvalidRequest) as at_once:
        client.compute_cut_list(wrong)
    with pytest.raises(problems.InvalidRequest) as later:
        client.begin(calls.compute_cut_list(wrong)).result()
    assert later.value.pointers == at_once.value.pointers
