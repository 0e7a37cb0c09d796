"""Calls of the document's part "health". Generated; do not edit."""

from __future__ import annotations

from longpoint_sdk import types
from longpoint_sdk._call import Call


def check_live() -> Call[types.Health]:
    """`GET /health/live`: Is the process alive?"""
    return Call(operation="check_live", method="GET", path="/health/live", result=types.Health)


def check_ready() -> Call[types.Health]:
    """`GET /health/ready`: Is the service ready for work?"""
    return Call(operation="check_ready", method="GET", path="/health/ready", result=types.Health)
