"""Operations of the document's part "sheets" as methods. Generated; do not edit."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any, Literal, overload

from longpoint_sdk import calls, types
from longpoint_sdk._async_client import BaseAsyncClient
from longpoint_sdk._versioned import Versioned


class Sheets(BaseAsyncClient):
    """Operations as methods."""

    @overload
    async def get_blank_measure_sheet(
        self,
        *,
        paper: Literal["letter", "a4"] | None = None,
        title: str | None = None,
        feet: bool | None = None,
        table: str | None = None,
        if_none_match: Versioned[types.SheetContents] | None = None,
    ) -> Versioned[types.SheetContents]: ...

    @overload
    async def get_blank_measure_sheet(
        self,
        *,
        accept: Literal["application/pdf", "text/csv", "text/html"],
        paper: Literal["letter", "a4"] | None = None,
        title: str | None = None,
        feet: bool | None = None,
        table: str | None = None,
        if_none_match: Versioned[types.SheetContents] | None = None,
    ) -> Versioned[bytes]: ...

    @overload
    async def get_blank_measure_sheet(
        self,
        *,
        accept: str,
        paper: Literal["letter", "a4"] | None = None,
        title: str | None = None,
        feet: bool | None = None,
        table: str | None = None,
        if_none_match: Versioned[types.SheetContents] | None = None,
    ) -> Any: ...

    async def get_blank_measure_sheet(
        self,
        *,
        paper: Literal["letter", "a4"] | None = None,
        title: str | None = None,
        feet: bool | None = None,
        table: str | None = None,
        if_none_match: Versioned[types.SheetContents] | None = None,
        accept: str = "application/json",
    ) -> Any:
        """Get a blank measure sheet.

        Rows to fill in by hand at the openings, with a key to where each reading is taken.

        Args:
            paper: What a sheet is printed on; letter when left out.
            title: Whose house it is: printed at the head and part of the file's name.
            feet: Write lengths in drawings that are in inches in feet and inches.
            table: Which of the sheet's tables a CSV answer holds; the main one when left out.
            if_none_match: What was read before: it comes back itself while it still stands, and is not sent
                again.
            accept: The media type of a file to have instead of data: application/pdf, text/csv, text/html.

        Returns:
            A `Versioned`: its `value` is `types.SheetContents`, or the bytes of a file where `accept` asks
            for one; its `etag` is the version.
        """
        return await self.send(
            calls.get_blank_measure_sheet(
                paper=paper, title=title, feet=feet, table=table, if_none_match=if_none_match, accept=accept
            )
        )

    @overload
    async def make_cost_sheet(
        self,
        request: types.CutListRequest | Mapping[str, Any],
        *,
        paper: Literal["letter", "a4"] | None = None,
        title: str | None = None,
        feet: bool | None = None,
        table: str | None = None,
    ) -> types.SheetContents: ...

    @overload
    async def make_cost_sheet(
        self,
        request: types.CutListRequest | Mapping[str, Any],
        *,
        accept: Literal["application/pdf", "text/csv", "text/html"],
        paper: Literal["letter", "a4"] | None = None,
        title: str | None = None,
        feet: bool | None = None,
        table: str | None = None,
    ) -> bytes: ...

    @overload
    async def make_cost_sheet(
        self,
        request: types.CutListRequest | Mapping[str, Any],
        *,
        accept: str,
        paper: Literal["letter", "a4"] | None = None,
        title: str | None = None,
        feet: bool | None = None,
        table: str | None = None,
    ) -> Any: ...

    async def make_cost_sheet(
        self,
        request: types.CutListRequest | Mapping[str, Any],
        *,
        paper: Literal["letter", "a4"] | None = None,
        title: str | None = None,
        feet: bool | None = None,
        table: str | None = None,
        accept: str = "application/json",
    ) -> Any:
        """Make the cost sheet.

        The money by line, by room and by opening, and the hours behind it.

        Args:
            request: A `types.CutListRequest`, or a mapping of its shape.
            paper: What a sheet is printed on; letter when left out.
            title: Whose house it is: printed at the head and part of the file's name.
            feet: Write lengths in drawings that are in inches in feet and inches.
            table: Which of the sheet's tables a CSV answer holds; the main one when left out.
            accept: The media type of a file to have instead of data: application/pdf, text/csv, text/html.

        Returns:
            `types.SheetContents`, or the bytes of a file where `accept` asks for one.

        Raises:
            BodyTooSlow: The body did not come in time.
            ContentTooLarge: The body is too large.
            UnsupportedMediaType: The body is in a format this address does not read.

        Example:
            # `house` is a types.CutListRequest.
            pdf = await client.make_cost_sheet(house, accept="application/pdf", paper="a4")
            Path("cost-sheet.pdf").write_bytes(pdf)
        """
        return await self.send(
            calls.make_cost_sheet(request, paper=paper, title=title, feet=feet, table=table, accept=accept)
        )

    @overload
    async def make_labels(
        self,
        request: types.LabelsRequest | Mapping[str, Any],
        *,
        paper: Literal["letter", "a4"] | None = None,
        title: str | None = None,
        feet: bool | None = None,
        table: str | None = None,
    ) -> types.SheetContents: ...

    @overload
    async def make_labels(
        self,
        request: types.LabelsRequest | Mapping[str, Any],
        *,
        accept: Literal["application/pdf", "text/csv", "text/html"],
        paper: Literal["letter", "a4"] | None = None,
        title: str | None = None,
        feet: bool | None = None,
        table: str | None = None,
    ) -> bytes: ...

    @overload
    async def make_labels(
        self,
        request: types.LabelsRequest | Mapping[str, Any],
        *,
        accept: str,
        paper: Literal["letter", "a4"] | None = None,
        title: str | None = None,
        feet: bool | None = None,
        table: str | None = None,
    ) -> Any: ...

    async def make_labels(
        self,
        request: types.LabelsRequest | Mapping[str, Any],
        *,
        paper: Literal["letter", "a4"] | None = None,
        title: str | None = None,
        feet: bool | None = None,
        table: str | None = None,
        accept: str = "application/json",
    ) -> Any:
        """Make the labels.

        A label for every single piece: its name, length, ends and the stick it comes from.

        Args:
            request: A `types.LabelsRequest`, or a mapping of its shape.
            paper: What a sheet is printed on; letter when left out.
            title: Whose house it is: printed at the head and part of the file's name.
            feet: Write lengths in drawings that are in inches in feet and inches.
            table: Which of the sheet's tables a CSV answer holds; the main one when left out.
            accept: The media type of a file to have instead of data: application/pdf, text/csv, text/html.

        Returns:
            `types.SheetContents`, or the bytes of a file where `accept` asks for one.

        Raises:
            BodyTooSlow: The body did not come in time.
            ContentTooLarge: The body is too large.
            UnsupportedMediaType: The body is in a format this address does not read.

        Example:
            # `labels` is a types.LabelsRequest: a house and, where the paper is not a common one, its grid.
            pdf = await client.make_labels(labels, accept="application/pdf")
            Path("labels.pdf").write_bytes(pdf)
        """
        return await self.send(
            calls.make_labels(request, paper=paper, title=title, feet=feet, table=table, accept=accept)
        )

    @overload
    async def make_material_list(
        self,
        request: types.CutListRequest | Mapping[str, Any],
        *,
        paper: Literal["letter", "a4"] | None = None,
        title: str | None = None,
        feet: bool | None = None,
        table: str | None = None,
    ) -> types.SheetContents: ...

    @overload
    async def make_material_list(
        self,
        request: types.CutListRequest | Mapping[str, Any],
        *,
        accept: Literal["application/pdf", "text/csv", "text/html"],
        paper: Literal["letter", "a4"] | None = None,
        title: str | None = None,
        feet: bool | None = None,
        table: str | None = None,
    ) -> bytes: ...

    @overload
    async def make_material_list(
        self,
        request: types.CutListRequest | Mapping[str, Any],
        *,
        accept: str,
        paper: Literal["letter", "a4"] | None = None,
        title: str | None = None,
        feet: bool | None = None,
        table: str | None = None,
    ) -> Any: ...

    async def make_material_list(
        self,
        request: types.CutListRequest | Mapping[str, Any],
        *,
        paper: Literal["letter", "a4"] | None = None,
        title: str | None = None,
        feet: bool | None = None,
        table: str | None = None,
        accept: str = "application/json",
    ) -> Any:
        """Make the material list.

        Sticks and packages to buy, and lengths to take from what is on hand.

        Args:
            request: A `types.CutListRequest`, or a mapping of its shape.
            paper: What a sheet is printed on; letter when left out.
            title: Whose house it is: printed at the head and part of the file's name.
            feet: Write lengths in drawings that are in inches in feet and inches.
            table: Which of the sheet's tables a CSV answer holds; the main one when left out.
            accept: The media type of a file to have instead of data: application/pdf, text/csv, text/html.

        Returns:
            `types.SheetContents`, or the bytes of a file where `accept` asks for one.

        Raises:
            BodyTooSlow: The body did not come in time.
            ContentTooLarge: The body is too large.
            UnsupportedMediaType: The body is in a format this address does not read.

        Example:
            # `house` is a types.CutListRequest.
            pdf = await client.make_material_list(house, accept="application/pdf", paper="a4")
            Path("material-list.pdf").write_bytes(pdf)
        """
        return await self.send(
            calls.make_material_list(request, paper=paper, title=title, feet=feet, table=table, accept=accept)
        )

    @overload
    async def make_measure_sheet(
        self,
        request: types.CutListRequest | Mapping[str, Any],
        *,
        paper: Literal["letter", "a4"] | None = None,
        title: str | None = None,
        feet: bool | None = None,
        table: str | None = None,
    ) -> types.SheetContents: ...

    @overload
    async def make_measure_sheet(
        self,
        request: types.CutListRequest | Mapping[str, Any],
        *,
        accept: Literal["application/pdf", "text/csv", "text/html"],
        paper: Literal["letter", "a4"] | None = None,
        title: str | None = None,
        feet: bool | None = None,
        table: str | None = None,
    ) -> bytes: ...

    @overload
    async def make_measure_sheet(
        self,
        request: types.CutListRequest | Mapping[str, Any],
        *,
        accept: str,
        paper: Literal["letter", "a4"] | None = None,
        title: str | None = None,
        feet: bool | None = None,
        table: str | None = None,
    ) -> Any: ...

    async def make_measure_sheet(
        self,
        request: types.CutListRequest | Mapping[str, Any],
        *,
        paper: Literal["letter", "a4"] | None = None,
        title: str | None = None,
        feet: bool | None = None,
        table: str | None = None,
        accept: str = "application/json",
    ) -> Any:
        """Make the measure sheet.

        The readings a house was worked out from, to check against the tape.

        Args:
            request: A `types.CutListRequest`, or a mapping of its shape.
            paper: What a sheet is printed on; letter when left out.
            title: Whose house it is: printed at the head and part of the file's name.
            feet: Write lengths in drawings that are in inches in feet and inches.
            table: Which of the sheet's tables a CSV answer holds; the main one when left out.
            accept: The media type of a file to have instead of data: application/pdf, text/csv, text/html.

        Returns:
            `types.SheetContents`, or the bytes of a file where `accept` asks for one.

        Raises:
            BodyTooSlow: The body did not come in time.
            ContentTooLarge: The body is too large.
            UnsupportedMediaType: The body is in a format this address does not read.

        Example:
            # `house` is a types.CutListRequest.
            pdf = await client.make_measure_sheet(house, accept="application/pdf", paper="a4")
            Path("measure-sheet.pdf").write_bytes(pdf)
        """
        return await self.send(
            calls.make_measure_sheet(request, paper=paper, title=title, feet=feet, table=table, accept=accept)
        )

    @overload
    async def make_opening_sheet(
        self,
        request: types.CutListRequest | Mapping[str, Any],
        *,
        paper: Literal["letter", "a4"] | None = None,
        title: str | None = None,
        feet: bool | None = None,
        table: str | None = None,
    ) -> types.SheetContents: ...

    @overload
    async def make_opening_sheet(
        self,
        request: types.CutListRequest | Mapping[str, Any],
        *,
        accept: Literal["application/pdf", "text/csv", "text/html"],
        paper: Literal["letter", "a4"] | None = None,
        title: str | None = None,
        feet: bool | None = None,
        table: str | None = None,
    ) -> bytes: ...

    @overload
    async def make_opening_sheet(
        self,
        request: types.CutListRequest | Mapping[str, Any],
        *,
        accept: str,
        paper: Literal["letter", "a4"] | None = None,
        title: str | None = None,
        feet: bool | None = None,
        table: str | None = None,
    ) -> Any: ...

    async def make_opening_sheet(
        self,
        request: types.CutListRequest | Mapping[str, Any],
        *,
        paper: Literal["letter", "a4"] | None = None,
        title: str | None = None,
        feet: bool | None = None,
        table: str | None = None,
        accept: str = "application/json",
    ) -> Any:
        """Make the opening sheet.

        A page for each opening: its elevation and section to scale, its pieces, their ends and marks.

        Args:
            request: A `types.CutListRequest`, or a mapping of its shape.
            paper: What a sheet is printed on; letter when left out.
            title: Whose house it is: printed at the head and part of the file's name.
            feet: Write lengths in drawings that are in inches in feet and inches.
            table: Which of the sheet's tables a CSV answer holds; the main one when left out.
            accept: The media type of a file to have instead of data: application/pdf, text/csv, text/html.

        Returns:
            `types.SheetContents`, or the bytes of a file where `accept` asks for one.

        Raises:
            BodyTooSlow: The body did not come in time.
            ContentTooLarge: The body is too large.
            UnsupportedMediaType: The body is in a format this address does not read.

        Example:
            # `house` is a types.CutListRequest.
            pdf = await client.make_opening_sheet(house, accept="application/pdf", paper="a4")
            Path("opening-sheet.pdf").write_bytes(pdf)
        """
        return await self.send(
            calls.make_opening_sheet(request, paper=paper, title=title, feet=feet, table=table, accept=accept)
        )

    @overload
    async def make_stick_sheet(
        self,
        request: types.CutListRequest | Mapping[str, Any],
        *,
        paper: Literal["letter", "a4"] | None = None,
        title: str | None = None,
        feet: bool | None = None,
        table: str | None = None,
    ) -> types.SheetContents: ...

    @overload
    async def make_stick_sheet(
        self,
        request: types.CutListRequest | Mapping[str, Any],
        *,
        accept: Literal["application/pdf", "text/csv", "text/html"],
        paper: Literal["letter", "a4"] | None = None,
        title: str | None = None,
        feet: bool | None = None,
        table: str | None = None,
    ) -> bytes: ...

    @overload
    async def make_stick_sheet(
        self,
        request: types.CutListRequest | Mapping[str, Any],
        *,
        accept: str,
        paper: Literal["letter", "a4"] | None = None,
        title: str | None = None,
        feet: bool | None = None,
        table: str | None = None,
    ) -> Any: ...

    async def make_stick_sheet(
        self,
        request: types.CutListRequest | Mapping[str, Any],
        *,
        paper: Literal["letter", "a4"] | None = None,
        title: str | None = None,
        feet: bool | None = None,
        table: str | None = None,
        accept: str = "application/json",
    ) -> Any:
        """Make the stick sheet.

        Each setting of the saw and the cuts made at it, in the order to make them, then the sticks to scale.

        Args:
            request: A `types.CutListRequest`, or a mapping of its shape.
            paper: What a sheet is printed on; letter when left out.
            title: Whose house it is: printed at the head and part of the file's name.
            feet: Write lengths in drawings that are in inches in feet and inches.
            table: Which of the sheet's tables a CSV answer holds; the main one when left out.
            accept: The media type of a file to have instead of data: application/pdf, text/csv, text/html.

        Returns:
            `types.SheetContents`, or the bytes of a file where `accept` asks for one.

        Raises:
            BodyTooSlow: The body did not come in time.
            ContentTooLarge: The body is too large.
            UnsupportedMediaType: The body is in a format this address does not read.

        Example:
            # `house` is a types.CutListRequest.
            pdf = await client.make_stick_sheet(house, accept="application/pdf", paper="a4")
            Path("stick-sheet.pdf").write_bytes(pdf)
        """
        return await self.send(
            calls.make_stick_sheet(request, paper=paper, title=title, feet=feet, table=table, accept=accept)
        )
