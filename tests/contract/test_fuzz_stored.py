"""The stored operations by the document, one by one and as its links lead from one to the next, over a database."""

import asyncio
import contextlib
import json
from collections import Counter
from collections.abc import Iterator

import httpx
import pytest
import schemathesis
from hypothesis import HealthCheck, Phase, seed, settings
from hypothesis.errors import FlakyStrategyDefinition

import databases
import fuzzing
from longpoint.api.document.openapi import document_bytes
from longpoint.schedules.migrate import migrate
from longpoint.schedules.store import Store

# A stored house answers in some formats: its cut list stands for them, and the sheets have tests of their own.
_NOT_HERE = "^/v1/(?!schedules|jobs)|^/health|/(sheets|drawings?)/"
SCHEMA = schemathesis.openapi.from_dict(
    json.loads(document_bytes()),
    config=fuzzing.configuration(),
).exclude(path_regex=_NOT_HERE)


@pytest.fixture(scope="module")
def address(tmp_path_factory: pytest.TempPathFactory) -> Iterator[str]:
    database = databases.fresh_sqlite(tmp_path_factory.mktemp("fuzz"))

    async def make() -> None:
        store = Store(database, create=True)
        await migrate(store)
        await store.close()

    asyncio.run(make())
    with fuzzing.served(database) as served:
        yield served


_A_FEW = settings(
    max_examples=6,
    stateful_step_count=16,
    deadline=None,
    database=None,
    phases=[Phase.generate],
    suppress_health_check=list(HealthCheck),
)


@pytest.fixture
def statuses():
    """Those an operation was answered with: a run that tried nothing can look green."""
    seen: set[int] = set()
    yield seen
    assert max(seen, default=0) >= 400, "nothing was ever refused"


@SCHEMA.parametrize()
@fuzzing.GATHERING
def test_the_service_keeps_to_its_document(case, address, statuses):
    statuses.add(case.call_and_validate(base_url=address).status_code)


def test_no_operation_is_left_out():
    assert len(list(SCHEMA.get_all_operations())) >= 20


def test_what_one_answer_leads_to_is_as_the_document_says(address):
    followed: Counter[tuple[str, int]] = Counter()

    class Machine(SCHEMA.as_state_machine()):  # type: ignore[misc]
        def get_call_kwargs(self, case):  # noqa: ARG002
            return {"base_url": address}

        def step(self, input):
            answer = super().step(input)
            # Beside the document's links there are those that the fuzzer guesses.
            if input.transition is not None and not input.transition.is_inferred and input.is_applied:
                name = input.case.operation.definition.raw["operationId"]
                followed[name, answer.response.status_code] += 1
            return answer

    for number in range(8):
        # What is stored outlasts a run, so the same draws need not lead the same way: not what is looked for here.
        with contextlib.suppress(FlakyStrategyDefinition):
            seed(number)(Machine).run(settings=_A_FEW)
    done = Counter({key: count for key, count in followed.items() if key[1] < 300})
    assert done.total() >= 20, followed
    assert len({name for name, _ in done}) >= 8, followed


def test_the_links_of_a_new_schedule_lead_where_they_say(address):
    document = SCHEMA.raw_schema
    of_id = {
        entry["operationId"]: (path, method)
        for path, methods in document["paths"].items()
        for method, entry in methods.items()
    }
    said = document["paths"]["/v1/schedules"]["post"]
    body = said["requestBody"]["content"]["application/json"]["examples"]["measured"]["value"]
    made = httpx.post(f"{address}/v1/schedules", json=body)
    assert made.status_code == 201, made.text
    read = set()
    for link in said["responses"]["201"]["links"].values():
        path, method = of_id[link["operationId"]]
        assert link["parameters"]["schedule_id"] == "$response.body#/id"
        if method == "get" and path.count("{") == 1:
            answer = httpx.get(address + path.format(schedule_id=made.json()["id"]), timeout=30)
            assert answer.status_code == 200, (path, answer.text)
            read.add(link["operationId"])
    assert {"get_schedule", "compute_schedule_cut_list"} <= read
