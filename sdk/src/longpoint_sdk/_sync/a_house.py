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
    ) -> types.CutListAnswer: ...

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
        """Work out a house's cut list.

        Every piece of every opening, the sticks they come from, what to buy and what is left over.

        Asked to, also the cuts in the order to make them, the materials, the hours and the money. The sticks
        are laid out first-fit at once; where that is not proven cheapest, a search of `planning_seconds`
        follows. Ask for `text/event-stream` to hear how it comes along: an event `progress` for each better
        plan or bound of a profile, then `answer` with what JSON would have been, or `problem`. As HTML or PDF
        it is a sheet to print, as CSV one of its tables, as SVG the sticks drawn to scale.

        Args:
            request: A `types.CutListRequest`, or a mapping of its shape.
            paper: What a sheet is printed on; letter when left out.
            title: Whose house it is: printed at the head and part of the file's name.
            feet: Write lengths in drawings that are in inches in feet and inches.
            table: Which of the sheet's tables a CSV answer holds; the main one when left out.
            accept: The media type of a file to have instead of data: application/pdf, image/svg+xml,
                text/csv, text/html.

        Returns:
            `types.CutListAnswer`, or the bytes of a file where `accept` asks for one.

        Raises:
            BodyTooSlow: The body did not come in time.
            ContentTooLarge: The body is too large.
            UnsupportedMediaType: The body is in a format this address does not read.

        Example:
            trim = types.Trim(casing=types.Casing(width="2 1/2 in", thickness="5/8 in"), reveal="3/16 in")
            readings = types.Readings(jamb_width="24 in", jamb_height="46 1/4 in")
            window = types.HouseOpening(mark="P1", trim="plain", bottom="casing", readings=readings)
            yard = types.Stock(profile="casing", sticks=[types.Stick(length="8 ft", price="9.20")])
            house = types.CutListRequest(openings=[window], trim_specs={"plain": trim}, stock=[yard])
            cut_list = client.compute_cut_list(house)
            pdf = client.compute_cut_list(house, accept="application/pdf")
            # `print` gets each better plan on the way.
            cut_list = client.follow(calls.compute_cut_list(house), print)
        """
        return self.send(
            calls.compute_cut_list(request, paper=paper, title=title, feet=feet, table=table, accept=accept)
        )

    def compute_materials(self, request: types.House | Mapping[str, Any]) -> types.MaterialsAnswer:
        """Work out a house's materials.

        Nails, glue, caulk, filler, paint and the rest, each with what it was computed from, in packages as
        sold.

        Args:
            request: A `types.House`, or a mapping of its shape.

        Raises:
            BodyTooSlow: The body did not come in time.
            ContentTooLarge: The body is too large.
            UnsupportedMediaType: The body is in a format this address does not read.
        """
        return self.send(calls.compute_materials(request))
