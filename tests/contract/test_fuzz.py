"""Requests made from the document, good and bad: the service does what the document says."""

from collections import Counter
from pathlib import Path

import msgspec
import pytest
import schemathesis
from hypothesis import strategies as st

from longpoint.api.negotiate import MSGPACK, MSGPACK_SHORT
from longpoint.app import create_app
from longpoint.settings import Settings


@schemathesis.hook
def before_load_schema(context, raw_schema):  # noqa: ARG001
    """Keep MessagePack where it is cheap: all operations share its reading and writing."""
    for methods in raw_schema["paths"].values():
        for entry in methods.values():
            content = entry.get("requestBody", {}).get("content", {})
            content.pop(MSGPACK_SHORT, None)
            if entry["operationId"] not in ("read_lengths", "compute_stool"):
                content.pop(MSGPACK, None)


SCHEMA = schemathesis.openapi.from_asgi(
    "/openapi.json",
    create_app(Settings(access_log=False)),
    config=schemathesis.Config.from_path(Path(__file__).with_name("schemathesis.toml")),
).exclude(
    # What is stored wants a database and links from one request to the next. The sheets all take a cut list's
    # body: one of them stands for the rest, whose own tests try them in every format.
    path_regex="^/v1/schedules|^/v1/sheets/(fitting-sheet|saw-sheet|cost-sheet|measure-sheet|piece-labels)$"
)

_numbers = st.integers(0, 200)
_fractions = st.sampled_from(["", " 1/2", "-5/8", " 3/16", " 17/32"])
_units = st.sampled_from([" in", '"', "", " mm", "ft", "1 in", "'"])
schemathesis.openapi.format("length", st.builds("{}{}{}".format, _numbers, _fractions, _units))

ran: Counter[tuple[str, int]] = Counter()


@schemathesis.serializer(MSGPACK)
def pack(ctx, value):  # noqa: ARG001
    return msgspec.msgpack.encode(_packable(value))


def _packable(value):
    """MessagePack carries whole numbers of 64 bits; a longer one goes as the float nearest to it."""
    if isinstance(value, dict):
        return {key: _packable(inner) for key, inner in value.items()}
    if isinstance(value, list):
        return [_packable(inner) for inner in value]
    if isinstance(value, int) and not -(2**63) <= value < 2**64:
        return float(value)
    return value


@schemathesis.deserializer(MSGPACK, MSGPACK_SHORT)
def unpack(ctx, response):  # noqa: ARG001
    return msgspec.msgpack.decode(response.content)


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
