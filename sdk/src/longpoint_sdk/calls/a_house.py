"""Calls of the document's part "a_house". Generated; do not edit."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from longpoint_sdk import types
from longpoint_sdk._call import Call


def compute_cut_list(request: types.CutListRequest | Mapping[str, Any]) -> Call[types.CutListOut]:
    """`POST /v1/cut-list`: A house."""
    return Call(
        operation="compute_cut_list",
        method="POST",
        path="/v1/cut-list",
        result=types.CutListOut,
        body=request,
    )


def compute_materials(request: types.MaterialsRequest | Mapping[str, Any]) -> Call[types.MaterialsAnswer]:
    """`POST /v1/materials`: Materials."""
    return Call(
        operation="compute_materials",
        method="POST",
        path="/v1/materials",
        result=types.MaterialsAnswer,
        body=request,
    )
