"""What every fuzzing of the document shares: how its formats are made, and how MessagePack is written and read."""

import csv
import io
import threading
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

import msgspec
import schemathesis
import uvicorn
from hypothesis import HealthCheck, settings
from hypothesis import strategies as st

from longpoint.api.http.negotiate import CSV, MSGPACK, MSGPACK_SHORT
from longpoint.app import create_app
from longpoint.server import Protocol
from longpoint.settings import Settings

_numbers = st.integers(0, 200)
_fractions = st.sampled_from(["", " 1/2", "-5/8", " 3/16", " 17/32"])
_units = st.sampled_from([" in", '"', "", " mm", "ft", "1 in", "'"])
schemathesis.openapi.format("length", st.builds("{}{}{}".format, _numbers, _fractions, _units))
# Made here, since a text as long as it may be is made without minding patterns such as theirs.
_tags = st.text("0123456789abcdef-+", max_size=20).map('"{}"'.format)
schemathesis.openapi.format(
    "entity-tags",
    st.one_of(
        st.just("*"), _tags, _tags.map("W/{}".format), st.lists(_tags, min_size=2, max_size=3).map(", ".join)
    ),
)
schemathesis.openapi.format("retry-key", st.one_of(st.uuids().map(str), st.uuids().map('"{}"'.format)))

_cells = st.one_of(
    st.sampled_from(["mark", "trim", "jamb width", "K1", "painted", "30 5/8", ""]), st.text(max_size=8)
)


def _csv(rows: list[list[str]]) -> str:
    out = io.StringIO()
    csv.writer(out).writerows(rows)
    return out.getvalue()


schemathesis.openapi.format(
    "csv", st.lists(st.lists(_cells, min_size=1, max_size=5), min_size=1, max_size=4).map(_csv)
)

# Made from the default and not from the suite's profile, whose own values would go before the configuration's.
GATHERING = settings(
    settings.get_profile("default"), suppress_health_check=[HealthCheck.function_scoped_fixture]
)
"""For a test that gathers in a fixture what all its cases were answered."""


def configuration() -> schemathesis.Config:
    """What the fuzzing of the suite goes by."""
    folder = Path(__file__).parent / "contract"
    return schemathesis.Config.from_str(
        (folder / "shared.toml").read_text() + (folder / "suite.toml").read_text()
    )


@schemathesis.hook
def before_load_schema(context, raw_schema):  # noqa: ARG001
    """Keep MessagePack where it is cheap, since all operations share its reading and writing; have CSV made as CSV."""
    for methods in raw_schema["paths"].values():
        for entry in methods.values():
            content = entry.get("requestBody", {}).get("content", {})
            content.pop(MSGPACK_SHORT, None)
            if CSV in content:
                # To a schema any text is CSV; what is none is told so, and the tests of files send enough of it.
                content[CSV]["schema"]["format"] = "csv"
            if entry["operationId"] not in ("read_lengths", "compute_stool"):
                content.pop(MSGPACK, None)


@schemathesis.serializer(MSGPACK)
def pack(ctx, value):  # noqa: ARG001
    return msgspec.msgpack.encode(_packable(value))


def _packable(value: Any) -> Any:
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


@contextmanager
def served(database: str) -> Iterator[str]:
    """The service over a database, on a port of its own in this process; gives its address.

    A database's connections belong to one event loop, so a loop for each request, as a test client has, will not do.
    """
    app: Any = create_app(Settings(access_log=False, database=database))
    config = uvicorn.Config(
        app, port=0, http=Protocol, ws="none", access_log=False, log_level="error", lifespan="on"
    )
    server = uvicorn.Server(config)
    started = threading.Event()
    startup = server.startup

    async def noted(**given: Any) -> None:
        await startup(**given)
        started.set()

    server.startup = noted  # type: ignore[method-assign]
    thread = threading.Thread(target=server.run, daemon=True)
    thread.start()
    assert started.wait(30)
    port = server.servers[0].sockets[0].getsockname()[1]
    try:
        yield f"http://127.0.0.1:{port}"
    finally:
        server.should_exit = True
        thread.join(30)
