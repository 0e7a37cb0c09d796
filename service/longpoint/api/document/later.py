"""What the document says of operations that may be answered later."""

from typing import Any

from longpoint.api.document.links import JOB_LINKS
from longpoint.api.http.negotiate import JSON

PREFER = {
    "name": "Prefer",
    "in": "header",
    "description": "`respond-async` has long work answered with 202 and a job at once, `wait=10` after 10 seconds.",
    "required": False,
    "schema": {"type": "string"},
}
ACCEPTED_FIELDS = {
    "Location": "Where the job is.",
    "Preference-Applied": "Which preferences were followed, of those in Prefer.",
}


def accepted(schema: Any) -> dict[str, Any]:
    """The answer of 202, with a job as its schema says."""
    return {
        "description": "It is done as a job, whose result is the answer.",
        "content": {JSON: {"schema": schema}},
        "links": JOB_LINKS,
    }
