"""Requests made from the document, good and bad: the service does what the document says."""

from collections import Counter

import pytest
import schemathesis

import fuzzing
from longpoint.app import create_app
from longpoint.settings import Settings

SCHEMA = schemathesis.openapi.from_asgi(
    "/openapi.json",
    create_app(Settings(access_log=False)),
    config=fuzzing.configuration(),
).exclude(
    # What is stored wants a database: test_fuzz_stored.py. The sheets all take a cut list's body: one of them stands
    # for the rest, whose own tests try them in every format.
    path_regex="^/v1/schedules|^/v1/sheets/(fitting-sheet|saw-sheet|cost-sheet|measure-sheet|piece-labels)$"
)

ran: Counter[tuple[str, int]] = Counter()


@SCHEMA.parametrize()
def test_the_service_keeps_to_its_document(case):
    response = case.call_and_validate()
    ran[case.operation.definition.raw["operationId"], response.status_code] += 1


@pytest.fixture(scope="module", autouse=True)
def something_was_tried():
    """A run that tried nothing, or had everything refused, can look green."""
    yield
    assert ran
    for name in {name for name, _ in ran}:
        statuses = {status for each, status in ran if each == name}
        assert 200 in statuses, f"{name} never accepted anything"
        assert max(statuses) >= 400, f"{name} never refused anything"
