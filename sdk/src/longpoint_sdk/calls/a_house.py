"""Calls of the document's part "a_house". Generated; do not edit."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any, Literal, overload

from longpoint_sdk import types
from longpoint_sdk._call import Call, query_fields


@overload
def compute_cut_list(
    request: types.CutListRequest | Mapping[str, Any],
    *,
    paper: Literal["letter", "a4"] | None = None,
    title: str | None = None,
    feet: bool | None = None,
    table: str | None = None,
) -> Call[types.CutListAnswer]: ...


@overload
def compute_cut_list(
    request: types.CutListRequest | Mapping[str, Any],
    *,
    accept: Literal["application/pdf", "image/svg+xml", "text/csv", "text/html"],
    paper: Literal["letter", "a4"] | None = None,
    title: str | None = None,
    feet: bool | None = None,
    table: str | None = None,
) -> Call[bytes]: ...


@overload
def compute_cut_list(
    request: types.CutListRequest | Mapping[str, Any],
    *,
    accept: str,
    paper: Literal["letter", "a4"] | None = None,
    title: str | None = None,
    feet: bool | None = None,
    table: str | None = None,
) -> Call[Any]: ...


def compute_cut_list(
    request: types.CutListRequest | Mapping[str, Any],
    *,
    paper: Literal["letter", "a4"] | None = None,
    title: str | None = None,
    feet: bool | None = None,
    table: str | None = None,
    accept: str = "application/json",
) -> Call[Any]:
    """`POST /v1/cut-list`: Work out a house's cut list."""
    return Call(
        operation="compute_cut_list",
        method="POST",
        path="/v1/cut-list",
        result=types.CutListAnswer if accept == "application/json" else bytes,
        query=query_fields(paper=paper, title=title, feet=feet, table=table),
        body=request,
        accept=accept,
    )


def compute_materials(request: types.House | Mapping[str, Any]) -> Call[types.MaterialsAnswer]:
    """`POST /v1/materials`: Work out a house's materials."""
    return Call(
        operation="compute_materials",
        method="POST",
        path="/v1/materials",
        result=types.MaterialsAnswer,
        body=request,
    )
