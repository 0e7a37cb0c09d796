"""Operations of the document's part "a_house" as methods. Generated; do not edit."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any, Literal, overload

from longpoint_sdk import calls, types
from longpoint_sdk._client import BaseClient


class AHouse(BaseClient):
    """Operations as methods."""

    @overload
    def compute_cut_list(
        self,
        request: types.CutListRequest | Mapping[str, Any],
        *,
        paper: Literal["letter", "a4"] | None = None,
        title: str | None = None,
        feet: bool | None = None,
        table: str | None = None,
    ) -> types.CutListOut: ...

    @overload
    def compute_cut_list(
        self,
        request: types.CutListRequest | Mapping[str, Any],
        *,
        accept: Literal["application/pdf", "image/svg+xml", "text/csv", "text/html"],
        paper: Literal["letter", "a4"] | None = None,
        title: str | None = None,
        feet: bool | None = None,
        table: str | None = None,
    ) -> bytes: ...

    @overload
    def compute_cut_list(
        self,
        request: types.CutListRequest | Mapping[str, Any],
        *,
        accept: str,
        paper: Literal["letter", "a4"] | None = None,
        title: str | None = None,
        feet: bool | None = None,
        table: str | None = None,
    ) -> Any: ...

    def compute_cut_list(
        self,
        request: types.CutListRequest | Mapping[str, Any],
        *,
        paper: Literal["letter", "a4"] | None = None,
        title: str | None = None,
        feet: bool | None = None,
        table: str | None = None,
        accept: str = "application/json",
    ) -> Any:
        """A house.

        Every part of every opening, the sticks they come from, what to buy and what is left over.

        Asked to, also the cuts in the order to make them, the materials, the hours and the money. The sticks
        are laid out first-fit at once; where that is not proven cheapest, a search of `planning_seconds`
        follows. Ask for `text/event-stream` to hear how it comes along: an event `progress` for each better
        plan or bound of a profile, then `answer` with what JSON would have been, or `problem`. As HTML or PDF
        it is a sheet to print, as CSV one of its tables, as SVG the sticks drawn to scale.

        Args:
            paper: What a sheet is printed on.
            title: Whose house it is: printed at the head and part of the file's name.
            feet: Lengths in drawings in feet and inches, where they are in inches.
            table: Which of the sheet's tables a CSV answer holds; the main one when left out.
            accept: The media type to have it in; its bytes are then given as they come.

        Raises:
            BodyTooSlow: The body did not come in time.
            ContentTooLarge: The body is too large.
            UnsupportedMediaType: The body is in a format this address does not read.
        """
        return self.send(
            calls.compute_cut_list(request, paper=paper, title=title, feet=feet, table=table, accept=accept)
        )

    def compute_materials(self, request: types.MaterialsRequest | Mapping[str, Any]) -> types.MaterialsAnswer:
        """Materials.

        Nails, glue, caulk, filler, paint and the rest, each with what it was computed from, in packages as
        sold.

        Raises:
            BodyTooSlow: The body did not come in time.
            ContentTooLarge: The body is too large.
            UnsupportedMediaType: The body is in a format this address does not read.
        """
        return self.send(calls.compute_materials(request))
