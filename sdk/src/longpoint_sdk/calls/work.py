"""Calls of the document's part "work". Generated; do not edit."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any, Literal, overload

from longpoint_sdk import types
from longpoint_sdk._call import Call, header_fields, path_part, query_fields
from longpoint_sdk._versioned import Versioned
from longpoint_sdk.calls.schedules import get_schedule


def compute_schedule_cut_list(
    schedule_id: str,
    *,
    include: dict[str, Any] | None = None,
    room: dict[str, Any] | None = None,
    opening: dict[str, Any] | None = None,
    if_none_match: Versioned[types.StillToCut] | None = None,
) -> Call[Versioned[types.StillToCut]]:
    """`GET /v1/schedules/{schedule_id}/cut-list`: Work out what is still to be cut."""
    return Call(
        operation="compute_schedule_cut_list",
        method="GET",
        path=f"/v1/schedules/{path_part(schedule_id)}/cut-list",
        result=types.StillToCut,
        query=query_fields(include=include, room=room, opening=opening),
        headers=header_fields(**{"If-None-Match": if_none_match}),
        versioned=True,
        held=if_none_match,
    )


def cut_sticks(
    schedule_id: str,
    request: types.CutSticks | Mapping[str, Any],
    *,
    why: str | None = None,
    if_match: Versioned[Any] | str | None = None,
    idempotency_key: str | None = None,
) -> Call[types.WorkMade]:
    """`POST /v1/schedules/{schedule_id}/cut-sticks`: Record sticks cut as they were planned."""
    return Call(
        operation="cut_sticks",
        method="POST",
        path=f"/v1/schedules/{path_part(schedule_id)}/cut-sticks",
        result=types.WorkMade,
        query=query_fields(why=why),
        headers=header_fields(**{"If-Match": if_match, "Idempotency-Key": idempotency_key}),
        body=request,
        repeat="with_key",
        current=get_schedule(schedule_id),
    )


def get_sticks_drawing(
    schedule_id: str,
    *,
    feet: bool | None = None,
    room: dict[str, Any] | None = None,
    opening: dict[str, Any] | None = None,
    if_none_match: Versioned[bytes] | None = None,
    accept: Literal["image/svg+xml"] = "image/svg+xml",
) -> Call[Versioned[bytes]]:
    """`GET /v1/schedules/{schedule_id}/drawings/sticks`: Draw the sticks to scale."""
    return Call(
        operation="get_sticks_drawing",
        method="GET",
        path=f"/v1/schedules/{path_part(schedule_id)}/drawings/sticks",
        result=bytes,
        query=query_fields(feet=feet, room=room, opening=opening),
        headers=header_fields(**{"If-None-Match": if_none_match}),
        accept=accept,
        versioned=True,
        held=if_none_match,
    )


def get_opening_drawing(
    schedule_id: str,
    opening: str,
    *,
    drawing: Literal["elevation", "section", "piece"] | None = None,
    piece: str | None = None,
    feet: bool | None = None,
    if_none_match: Versioned[bytes] | None = None,
    accept: Literal["image/svg+xml"] = "image/svg+xml",
) -> Call[Versioned[bytes]]:
    """`GET /v1/schedules/{schedule_id}/openings/{opening}/drawing`: Draw an opening to scale."""
    return Call(
        operation="get_opening_drawing",
        method="GET",
        path=f"/v1/schedules/{path_part(schedule_id)}/openings/{path_part(opening)}/drawing",
        result=bytes,
        query=query_fields(drawing=drawing, piece=piece, feet=feet),
        headers=header_fields(**{"If-None-Match": if_none_match}),
        accept=accept,
        versioned=True,
        held=if_none_match,
    )


@overload
def get_schedule_sheet(
    schedule_id: str,
    sheet: Literal[
        "cut-list", "opening-sheet", "stick-sheet", "material-list", "cost-sheet", "measure-sheet", "labels"
    ],
    *,
    paper: Literal["letter", "a4"] | None = None,
    title: str | None = None,
    feet: bool | None = None,
    table: str | None = None,
    skip: int | None = None,
    room: dict[str, Any] | None = None,
    opening: dict[str, Any] | None = None,
    if_none_match: Versioned[types.SheetContents] | None = None,
) -> Call[Versioned[types.SheetContents]]: ...


@overload
def get_schedule_sheet(
    schedule_id: str,
    sheet: Literal[
        "cut-list", "opening-sheet", "stick-sheet", "material-list", "cost-sheet", "measure-sheet", "labels"
    ],
    *,
    accept: Literal["application/pdf", "text/csv", "text/html"],
    paper: Literal["letter", "a4"] | None = None,
    title: str | None = None,
    feet: bool | None = None,
    table: str | None = None,
    skip: int | None = None,
    room: dict[str, Any] | None = None,
    opening: dict[str, Any] | None = None,
    if_none_match: Versioned[types.SheetContents] | None = None,
) -> Call[Versioned[bytes]]: ...


@overload
def get_schedule_sheet(
    schedule_id: str,
    sheet: Literal[
        "cut-list", "opening-sheet", "stick-sheet", "material-list", "cost-sheet", "measure-sheet", "labels"
    ],
    *,
    accept: str,
    paper: Literal["letter", "a4"] | None = None,
    title: str | None = None,
    feet: bool | None = None,
    table: str | None = None,
    skip: int | None = None,
    room: dict[str, Any] | None = None,
    opening: dict[str, Any] | None = None,
    if_none_match: Versioned[types.SheetContents] | None = None,
) -> Call[Any]: ...


def get_schedule_sheet(
    schedule_id: str,
    sheet: Literal[
        "cut-list", "opening-sheet", "stick-sheet", "material-list", "cost-sheet", "measure-sheet", "labels"
    ],
    *,
    paper: Literal["letter", "a4"] | None = None,
    title: str | None = None,
    feet: bool | None = None,
    table: str | None = None,
    skip: int | None = None,
    room: dict[str, Any] | None = None,
    opening: dict[str, Any] | None = None,
    if_none_match: Versioned[types.SheetContents] | None = None,
    accept: str = "application/json",
) -> Call[Any]:
    """`GET /v1/schedules/{schedule_id}/sheets/{sheet}`: Make a sheet of a schedule."""
    return Call(
        operation="get_schedule_sheet",
        method="GET",
        path=f"/v1/schedules/{path_part(schedule_id)}/sheets/{path_part(sheet)}",
        result=types.SheetContents if accept == "application/json" else bytes,
        query=query_fields(
            paper=paper, title=title, feet=feet, table=table, skip=skip, room=room, opening=opening
        ),
        headers=header_fields(**{"If-None-Match": if_none_match}),
        accept=accept,
        versioned=True,
        held=if_none_match,
    )


def list_pieces(
    schedule_id: str,
    *,
    limit: int | None = None,
    opening: str | None = None,
    state: types.PieceState | None = None,
) -> Call[types.Page[types.StoredPiece]]:
    """`GET /v1/schedules/{schedule_id}/work`: List pieces that were cut."""
    return Call(
        operation="list_pieces",
        method="GET",
        path=f"/v1/schedules/{path_part(schedule_id)}/work",
        result=types.Page[types.StoredPiece],
        query=query_fields(limit=limit, opening=opening, state=state),
    )


def record_work(
    schedule_id: str,
    request: types.Work | Mapping[str, Any],
    *,
    why: str | None = None,
    if_match: Versioned[Any] | str | None = None,
    idempotency_key: str | None = None,
) -> Call[types.WorkMade]:
    """`POST /v1/schedules/{schedule_id}/work`: Record what was cut, installed or spoiled."""
    return Call(
        operation="record_work",
        method="POST",
        path=f"/v1/schedules/{path_part(schedule_id)}/work",
        result=types.WorkMade,
        query=query_fields(why=why),
        headers=header_fields(**{"If-Match": if_match, "Idempotency-Key": idempotency_key}),
        body=request,
        repeat="with_key",
        current=get_schedule(schedule_id),
    )


def remove_piece(
    schedule_id: str, piece_id: str, *, if_match: Versioned[Any] | str, why: str | None = None
) -> Call[types.Made]:
    """`DELETE /v1/schedules/{schedule_id}/work/{piece_id}`: Strike a piece that was recorded by mistake."""
    return Call(
        operation="remove_piece",
        method="DELETE",
        path=f"/v1/schedules/{path_part(schedule_id)}/work/{path_part(piece_id)}",
        result=types.Made,
        query=query_fields(why=why),
        headers=header_fields(**{"If-Match": if_match}),
        current=get_piece(schedule_id, piece_id),
    )


def get_piece(
    schedule_id: str, piece_id: str, *, if_none_match: Versioned[types.StoredPiece] | None = None
) -> Call[Versioned[types.StoredPiece]]:
    """`GET /v1/schedules/{schedule_id}/work/{piece_id}`: Read a piece."""
    return Call(
        operation="get_piece",
        method="GET",
        path=f"/v1/schedules/{path_part(schedule_id)}/work/{path_part(piece_id)}",
        result=types.StoredPiece,
        headers=header_fields(**{"If-None-Match": if_none_match}),
        versioned=True,
        held=if_none_match,
    )
