"""The published document is the one the code makes."""

import subprocess
import sys
from pathlib import Path

from longpoint.api.document.openapi import document_bytes

PUBLISHED = Path(__file__).parents[2] / "openapi" / "longpoint.json"
COMMAND = "python -m longpoint openapi > openapi/longpoint.json"


def test_the_published_document_is_current():
    assert PUBLISHED.read_bytes() == document_bytes(), (
        f"openapi/longpoint.json is not what the code says any more. Run: {COMMAND}"
    )


def test_the_command_writes_the_same_bytes_every_time():
    """In a fresh process with another hash seed: nothing in the document hangs on the order of a set."""
    for seed in ("1", "2"):
        written = subprocess.run(
            [sys.executable, "-m", "longpoint", "openapi"],
            capture_output=True,
            check=True,
            env={"PYTHONHASHSEED": seed, "PYTHONPATH": ":".join(sys.path)},
        ).stdout
        assert written == document_bytes()


async def test_the_service_serves_it(client):
    answer = await client.get("/openapi.json")
    assert answer.headers["content-type"] == "application/json"
    assert answer.content == document_bytes()
