"""What schemathesis loads for the long command: the suite's formats and encodings, needed keys, a tally."""

import atexit
import hashlib
import json
import os
from collections import Counter
from pathlib import Path

import schemathesis

import fuzzing  # noqa: F401 - its formats and encodings

sent: Counter[tuple[str, str, int]] = Counter()
distinct: set[bytes] = set()


@schemathesis.hook
def before_load_schema(context, raw_schema):  # noqa: ARG001
    """Keys were made, so that none of the operations that ask for one does without."""
    for methods in raw_schema["paths"].values():
        for entry in methods.values():
            entry["security"] = [one for one in entry["security"] if one]


@schemathesis.hook
def after_call(context, case, response):  # noqa: ARG001
    phase = case.meta.phase.name.value if case.meta else "other"
    sent[case.operation.definition.raw["operationId"], phase, response.status_code] += 1
    request = response.request
    headers = sorted(item for item in request.headers.items() if not item[0].startswith("X-Schemathesis"))
    said = [request.method, request.url, headers, request.body]
    distinct.add(hashlib.blake2b(repr(said).encode(), digest_size=8).digest())


@atexit.register
def write() -> None:
    rows = [[*key, count] for key, count in sent.items()]
    Path(os.environ["FUZZING_TALLY"]).write_text(json.dumps({"sent": rows, "distinct": len(distinct)}))
