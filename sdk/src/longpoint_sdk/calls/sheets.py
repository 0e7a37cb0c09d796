"""Calls of the document's part "sheets". Generated; do not edit."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any, Literal, overload

from longpoint_sdk import types
from longpoint_sdk._call import Call, header_fields, query_fields
from longpoint_sdk._versioned import Versioned


@overload
def get_blank_measure_sheet(
    *,
    paper: Literal["letter", "a4"] | None = None,
    title: str | None = None,
    feet: bool | None = None,
    table: str | None = None,
    if_none_match: Versioned[types.SheetContents] | None = None,
) -> Call[Versioned[types.SheetContents]]: ...


@overload
def get_blank_measure_sheet(
    *,
    accept: Literal["application/pdf", "text/csv", "text/html"],
    paper: Literal["letter", "a4"] | None = None,
    title: str | None = None,
    feet: bool | None = None,
    table: str | None = None,
    if_none_match: Versioned[types.SheetContents] | None = None,
) -> Call[Versioned[bytes]]: ...


@overload
def get_blank_measure_sheet(
    *,
    accept: str,
    paper: Literal["letter", "a4"] | None = None,
    title: str | None = None,
    feet: bool | None = None,
    table: str | None = None,
    if_none_match: Versioned[types.SheetContents] | None = None,
) -> Call[Any]: ...


def get_blank_measure_sheet(
    *,
    paper: Literal["letter", "a4"] | None = None,
    title: str | None = None,
    feet: bool | None = None,
    table: str | None = None,
    if_none_match: Versioned[types.SheetContents] | None = None,
    accept: str = "application/json",
) -> Call[Any]:
    """`GET /v1/sheets/blank-measure-sheet`: Get a blank measure sheet."""
    return Call(
        operation="get_blank_measure_sheet",
        method="GET",
        path="/v1/sheets/blank-measure-sheet",
        result=types.SheetContents if accept == "application/json" else bytes,
        query=query_fields(paper=paper, title=title, feet=feet, table=table),
        headers=header_fields(**{"If-None-Match": if_none_match}),
        accept=accept,
        versioned=True,
        held=if_none_match,
    )


@overload
def make_cost_sheet(
    request: types.CutListRequest | Mapping[str, Any],
    *,
    paper: Literal["letter", "a4"] | None = None,
    title: str | None = None,
    feet: bool | None = None,
    table: str | None = None,
) -> Call[types.SheetContents]: ...


@overload
def make_cost_sheet(
    request: types.CutListRequest | Mapping[str, Any],
    *,
    accept: Literal["application/pdf", "text/csv", "text/html"],
    paper: Literal["letter", "a4"] | None = None,
    title: str | None = None,
    feet: bool | None = None,
    table: str | None = None,
) -> Call[bytes]: ...


@overload
def make_cost_sheet(
    request: types.CutListRequest | Mapping[str, Any],
    *,
    accept: str,
    paper: Literal["letter", "a4"] | None = None,
    title: str | None = None,
    feet: bool | None = None,
    table: str | None = None,
) -> Call[Any]: ...


def make_cost_sheet(
    request: types.CutListRequest | Mapping[str, Any],
    *,
    paper: Literal["letter", "a4"] | None = None,
    title: str | None = None,
    feet: bool | None = None,
    table: str | None = None,
    accept: str = "application/json",
) -> Call[Any]:
    """`POST /v1/sheets/cost-sheet`: Make the cost sheet."""
    return Call(
        operation="make_cost_sheet",
        method="POST",
        path="/v1/sheets/cost-sheet",
        result=types.SheetContents if accept == "application/json" else bytes,
        query=query_fields(paper=paper, title=title, feet=feet, table=table),
        body=request,
        accept=accept,
    )


@overload
def make_labels(
    request: types.LabelsRequest | Mapping[str, Any],
    *,
    paper: Literal["letter", "a4"] | None = None,
    title: str | None = None,
    feet: bool | None = None,
    table: str | None = None,
) -> Call[types.SheetContents]: ...


@overload
def make_labels(
    request: types.LabelsRequest | Mapping[str, Any],
    *,
    accept: Literal["application/pdf", "text/csv", "text/html"],
    paper: Literal["letter", "a4"] | None = None,
    title: str | None = None,
    feet: bool | None = None,
    table: str | None = None,
) -> Call[bytes]: ...


@overload
def make_labels(
    request: types.LabelsRequest | Mapping[str, Any],
    *,
    accept: str,
    paper: Literal["letter", "a4"] | None = None,
    title: str | None = None,
    feet: bool | None = None,
    table: str | None = None,
) -> Call[Any]: ...


def make_labels(
    request: types.LabelsRequest | Mapping[str, Any],
    *,
    paper: Literal["letter", "a4"] | None = None,
    title: str | None = None,
    feet: bool | None = None,
    table: str | None = None,
    accept: str = "application/json",
) -> Call[Any]:
    """`POST /v1/sheets/labels`: Make the labels."""
    return Call(
        operation="make_labels",
        method="POST",
        path="/v1/sheets/labels",
        result=types.SheetContents if accept == "application/json" else bytes,
        query=query_fields(paper=paper, title=title, feet=feet, table=table),
        body=request,
        accept=accept,
    )


@overload
def make_material_list(
    request: types.CutListRequest | Mapping[str, Any],
    *,
    paper: Literal["letter", "a4"] | None = None,
    title: str | None = None,
    feet: bool | None = None,
    table: str | None = None,
) -> Call[types.SheetContents]: ...


@overload
def make_material_list(
    request: types.CutListRequest | Mapping[str, Any],
    *,
    accept: Literal["application/pdf", "text/csv", "text/html"],
    paper: Literal["letter", "a4"] | None = None,
    title: str | None = None,
    feet: bool | None = None,
    table: str | None = None,
) -> Call[bytes]: ...


@overload
def make_material_list(
    request: types.CutListRequest | Mapping[str, Any],
    *,
    accept: str,
    paper: Literal["letter", "a4"] | None = None,
    title: str | None = None,
    feet: bool | None = None,
    table: str | None = None,
) -> Call[Any]: ...


def make_material_list(
    request: types.CutListRequest | Mapping[str, Any],
    *,
    paper: Literal["letter", "a4"] | None = None,
    title: str | None = None,
    feet: bool | None = None,
    table: str | None = None,
    accept: str = "application/json",
) -> Call[Any]:
    """`POST /v1/sheets/material-list`: Make the material list."""
    return Call(
        operation="make_material_list",
        method="POST",
        path="/v1/sheets/material-list",
        result=types.SheetContents if accept == "application/json" else bytes,
        query=query_fields(paper=paper, title=title, feet=feet, table=table),
        body=request,
        accept=accept,
    )


@overload
def make_measure_sheet(
    request: types.CutListRequest | Mapping[str, Any],
    *,
    paper: Literal["letter", "a4"] | None = None,
    title: str | None = None,
    feet: bool | None = None,
    table: str | None = None,
) -> Call[types.SheetContents]: ...


@overload
def make_measure_sheet(
    request: types.CutListRequest | Mapping[str, Any],
    *,
    accept: Literal["application/pdf", "text/csv", "text/html"],
    paper: Literal["letter", "a4"] | None = None,
    title: str | None = None,
    feet: bool | None = None,
    table: str | None = None,
) -> Call[bytes]: ...


@overload
def make_measure_sheet(
    request: types.CutListRequest | Mapping[str, Any],
    *,
    accept: str,
    paper: Literal["letter", "a4"] | None = None,
    title: str | None = None,
    feet: bool | None = None,
    table: str | None = None,
) -> Call[Any]: ...


def make_measure_sheet(
    request: types.CutListRequest | Mapping[str, Any],
    *,
    paper: Literal["letter", "a4"] | None = None,
    title: str | None = None,
    feet: bool | None = None,
    table: str | None = None,
    accept: str = "application/json",
) -> Call[Any]:
    """`POST /v1/sheets/measure-sheet`: Make the measure sheet."""
    return Call(
        operation="make_measure_sheet",
        method="POST",
        path="/v1/sheets/measure-sheet",
        result=types.SheetContents if accept == "application/json" else bytes,
        query=query_fields(paper=paper, title=title, feet=feet, table=table),
        body=request,
        accept=accept,
    )


@overload
def make_opening_sheet(
    request: types.CutListRequest | Mapping[str, Any],
    *,
    paper: Literal["letter", "a4"] | None = None,
    title: str | None = None,
    feet: bool | None = None,
    table: str | None = None,
) -> Call[types.SheetContents]: ...


@overload
def make_opening_sheet(
    request: types.CutListRequest | Mapping[str, Any],
    *,
    accept: Literal["application/pdf", "text/csv", "text/html"],
    paper: Literal["letter", "a4"] | None = None,
    title: str | None = None,
    feet: bool | None = None,
    table: str | None = None,
) -> Call[bytes]: ...


@overload
def make_opening_sheet(
    request: types.CutListRequest | Mapping[str, Any],
    *,
    accept: str,
    paper: Literal["letter", "a4"] | None = None,
    title: str | None = None,
    feet: bool | None = None,
    table: str | None = None,
) -> Call[Any]: ...


def make_opening_sheet(
    request: types.CutListRequest | Mapping[str, Any],
    *,
    paper: Literal["letter", "a4"] | None = None,
    title: str | None = None,
    feet: bool | None = None,
    table: str | None = None,
    accept: str = "application/json",
) -> Call[Any]:
    """`POST /v1/sheets/opening-sheet`: Make the opening sheet."""
    return Call(
        operation="make_opening_sheet",
        method="POST",
        path="/v1/sheets/opening-sheet",
        result=types.SheetContents if accept == "application/json" else bytes,
        query=query_fields(paper=paper, title=title, feet=feet, table=table),
        body=request,
        accept=accept,
    )


@overload
def make_stick_sheet(
    request: types.CutListRequest | Mapping[str, Any],
    *,
    paper: Literal["letter", "a4"] | None = None,
    title: str | None = None,
    feet: bool | None = None,
    table: str | None = None,
) -> Call[types.SheetContents]: ...


@overload
def make_stick_sheet(
    request: types.CutListRequest | Mapping[str, Any],
    *,
    accept: Literal["application/pdf", "text/csv", "text/html"],
    paper: Literal["letter", "a4"] | None = None,
    title: str | None = None,
    feet: bool | None = None,
    table: str | None = None,
) -> Call[bytes]: ...


@overload
def make_stick_sheet(
    request: types.CutListRequest | Mapping[str, Any],
    *,
    accept: str,
    paper: Literal["letter", "a4"] | None = None,
    title: str | None = None,
    feet: bool | None = None,
    table: str | None = None,
) -> Call[Any]: ...


def make_stick_sheet(
    request: types.CutListRequest | Mapping[str, Any],
    *,
    paper: Literal["letter", "a4"] | None = None,
    title: str | None = None,
    feet: bool | None = None,
    table: str | None = None,
    accept: str = "application/json",
) -> Call[Any]:
    """`POST /v1/sheets/stick-sheet`: Make the stick sheet."""
    return Call(
        operation="make_stick_sheet",
        method="POST",
        path="/v1/sheets/stick-sheet",
        result=types.SheetContents if accept == "application/json" else bytes,
        query=query_fields(paper=paper, title=title, feet=feet, table=table),
        body=request,
        accept=accept,
    )
