"""Calls of the document's part "lengths". Generated; do not edit."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from longpoint_sdk import types
from longpoint_sdk._call import Call


def read_lengths(request: types.LengthsRequest | Mapping[str, Any]) -> Call[types.LengthsAnswer]:
    """`POST /v1/lengths`: Read lengths."""
    return Call(
        operation="read_lengths", method="POST", path="/v1/lengths", result=types.LengthsAnswer, body=request
    )
