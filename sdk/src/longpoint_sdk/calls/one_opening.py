"""Calls of the document's part "one_opening". Generated; do not edit."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any, Literal, overload

from longpoint_sdk import types
from longpoint_sdk._call import Call, query_fields


def compute_apron(request: types.ApronRequest | Mapping[str, Any]) -> Call[types.PiecesAnswer]:
    """`POST /v1/apron`: Work out an apron."""
    return Call(
        operation="compute_apron", method="POST", path="/v1/apron", result=types.PiecesAnswer, body=request
    )


def compute_casing(request: types.CasingRequest | Mapping[str, Any]) -> Call[types.PiecesAnswer]:
    """`POST /v1/casing`: Work out casing."""
    return Call(
        operation="compute_casing", method="POST", path="/v1/casing", result=types.PiecesAnswer, body=request
    )


def compute_corners(request: types.CornersRequest | Mapping[str, Any]) -> Call[types.Corners]:
    """`POST /v1/corners`: Work out corners out of square."""
    return Call(
        operation="compute_corners", method="POST", path="/v1/corners", result=types.Corners, body=request
    )


def compute_movement(request: types.MovementRequest | Mapping[str, Any]) -> Call[types.Movement]:
    """`POST /v1/movement`: Work out how wood moves."""
    return Call(
        operation="compute_movement", method="POST", path="/v1/movement", result=types.Movement, body=request
    )


@overload
def compute_opening(
    request: types.OpeningRequest | Mapping[str, Any],
    *,
    drawing: Literal["elevation", "section", "piece"] | None = None,
    piece: str | None = None,
    feet: bool | None = None,
) -> Call[types.OpeningAnswer]: ...


@overload
def compute_opening(
    request: types.OpeningRequest | Mapping[str, Any],
    *,
    accept: Literal["image/svg+xml"],
    drawing: Literal["elevation", "section", "piece"] | None = None,
    piece: str | None = None,
    feet: bool | None = None,
) -> Call[bytes]: ...


@overload
def compute_opening(
    request: types.OpeningRequest | Mapping[str, Any],
    *,
    accept: str,
    drawing: Literal["elevation", "section", "piece"] | None = None,
    piece: str | None = None,
    feet: bool | None = None,
) -> Call[Any]: ...


def compute_opening(
    request: types.OpeningRequest | Mapping[str, Any],
    *,
    drawing: Literal["elevation", "section", "piece"] | None = None,
    piece: str | None = None,
    feet: bool | None = None,
    accept: str = "application/json",
) -> Call[Any]:
    """`POST /v1/opening`: Work out one opening."""
    return Call(
        operation="compute_opening",
        method="POST",
        path="/v1/opening",
        result=types.OpeningAnswer if accept == "application/json" else bytes,
        query=query_fields(drawing=drawing, piece=piece, feet=feet),
        body=request,
        accept=accept,
    )


def compute_stool(request: types.StoolRequest | Mapping[str, Any]) -> Call[types.PiecesAnswer]:
    """`POST /v1/stool`: Work out a stool."""
    return Call(
        operation="compute_stool", method="POST", path="/v1/stool", result=types.PiecesAnswer, body=request
    )
