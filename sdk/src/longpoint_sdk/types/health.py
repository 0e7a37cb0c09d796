"""Types of the document's part "health". Generated; do not edit."""

from __future__ import annotations

from longpoint_sdk.types._base import Result


class Health(Result, frozen=True, kw_only=True):
    """It says whether the service can answer.

    Attributes:
        status: "ok"; a service that is not answers with a problem instead.
    """

    status: str
