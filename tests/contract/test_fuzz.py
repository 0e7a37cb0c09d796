"""Requests made from the document, good and bad: the service does what the document says."""

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
    # What is stored, and jobs, want something to be there: test_fuzz_stored.py. The sheets all take a cut list's
    # body: one of them stands for the rest, whose own tests try them in every format.
    path_regex="^/v1/schedules|^/v1/jobs|^/v1/sheets/(opening-sheet|stick-sheet|cost-sheet|measure-sheet|labels)$"
)


@pytest.fixture
def statuses():
    """Those an operation was answered with: a run that tried nothing, or had everything refused, can look green."""
    seen: set[int] = set()
    yield seen
    assert 200 in seen, "nothing was ever accepted"
    assert max(seen) >= 400, "nothing was ever refused"


@SCHEMA.parametrize()
@fuzzing.GATHERING
def test_the_service_keeps_to_its_document(case, statuses):
    statuses.add(case.call_and_validate().status_code)


def test_no_operation_is_left_out():
    assert len(list(SCHEMA.get_all_operations())) >= 13
