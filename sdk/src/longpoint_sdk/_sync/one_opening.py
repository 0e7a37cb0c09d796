"""Operations of the document's part "one_opening" as methods. Generated; do not edit."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any, Literal, overload

from longpoint_sdk import calls, types
from longpoint_sdk._client import BaseClient


class OneOpening(BaseClient):
    """Operations as methods."""

    def compute_apron(self, request: types.ApronRequest | Mapping[str, Any]) -> types.PiecesAnswer:
        """Work out an apron.

        Its length, flush with the casing's outside edges, and its returns where its ends are returned.

        Args:
            request: A `types.ApronRequest`, or a mapping of its shape.

        Raises:
            BodyTooSlow: The body did not come in time.
            ContentTooLarge: The body is too large.
            UnsupportedMediaType: The body is in a format this address does not read.
        """
        return self.send(calls.compute_apron(request))

    def compute_casing(self, request: types.CasingRequest | Mapping[str, Any]) -> types.PiecesAnswer:
        """Work out casing.

        Legs and head, and in a picture frame the sill piece, each with its miters and its short and long
        points.

        Args:
            request: A `types.CasingRequest`, or a mapping of its shape.

        Raises:
            BodyTooSlow: The body did not come in time.
            ContentTooLarge: The body is too large.
            UnsupportedMediaType: The body is in a format this address does not read.
        """
        return self.send(calls.compute_casing(request))

    def compute_corners(self, request: types.CornersRequest | Mapping[str, Any]) -> types.Corners:
        """Work out corners out of square.

        Each corner's angle and the casing cut to it, as read: never squared up, and answered even where the
        readings disagree, with what the tape most likely got wrong.

        Args:
            request: A `types.CornersRequest`, or a mapping of its shape.

        Raises:
            BodyTooSlow: The body did not come in time.
            ContentTooLarge: The body is too large.
            UnsupportedMediaType: The body is in a format this address does not read.
        """
        return self.send(calls.compute_corners(request))

    def compute_movement(self, request: types.MovementRequest | Mapping[str, Any]) -> types.Movement:
        """Work out how wood moves.

        Moisture content from the air, change across the grain, and how far a miter opens, season by season.

        Args:
            request: A `types.MovementRequest`, or a mapping of its shape.

        Raises:
            BodyTooSlow: The body did not come in time.
            ContentTooLarge: The body is too large.
            UnsupportedMediaType: The body is in a format this address does not read.
        """
        return self.send(calls.compute_movement(request))

    @overload
    def compute_opening(
        self,
        request: types.OpeningRequest | Mapping[str, Any],
        *,
        drawing: Literal["elevation", "section", "piece"] | None = None,
        piece: str | None = None,
        feet: bool | None = None,
    ) -> types.OpeningAnswer: ...

    @overload
    def compute_opening(
        self,
        request: types.OpeningRequest | Mapping[str, Any],
        *,
        accept: Literal["image/svg+xml"],
        drawing: Literal["elevation", "section", "piece"] | None = None,
        piece: str | None = None,
        feet: bool | None = None,
    ) -> bytes: ...

    @overload
    def compute_opening(
        self,
        request: types.OpeningRequest | Mapping[str, Any],
        *,
        accept: str,
        drawing: Literal["elevation", "section", "piece"] | None = None,
        piece: str | None = None,
        feet: bool | None = None,
    ) -> Any: ...

    def compute_opening(
        self,
        request: types.OpeningRequest | Mapping[str, Any],
        *,
        drawing: Literal["elevation", "section", "piece"] | None = None,
        piece: str | None = None,
        feet: bool | None = None,
        accept: str = "application/json",
    ) -> Any:
        """Work out one opening.

        Every piece of one opening: stool, apron, returns and casing, each with its cuts and how it was
        computed.

        As SVG it is drawn to scale: the elevation, the section, or one piece as it lies on the saw.

        Args:
            request: A `types.OpeningRequest`, or a mapping of its shape.
            drawing: Which drawing an SVG answer is; the elevation when left out.
            piece: The piece to draw, for `drawing=piece`: its `key` in the JSON answer, or its number, as
                `K1-4`.
            feet: Write lengths in drawings that are in inches in feet and inches.
            accept: The media type of a file to have instead of data: image/svg+xml.

        Returns:
            `types.OpeningAnswer`, or the bytes of a file where `accept` asks for one.

        Raises:
            BodyTooSlow: The body did not come in time.
            ContentTooLarge: The body is too large.
            UnsupportedMediaType: The body is in a format this address does not read.

        Example:
            trim = types.Trim(casing=types.Casing(width="2 1/2 in", thickness="5/8 in"), reveal="3/16 in")
            readings = types.Readings(jamb_width="24 in", jamb_height="46 1/4 in")
            window = types.OpeningRequest(mark="P1", trim=trim, bottom="casing", readings=readings)
            worked_out = client.compute_opening(window)
            for piece in worked_out.pieces:
                print(piece.quantity, piece.key, piece.overall)
            svg = client.compute_opening(window, accept="image/svg+xml", drawing="elevation")
        """
        return self.send(
            calls.compute_opening(request, drawing=drawing, piece=piece, feet=feet, accept=accept)
        )

    def compute_stool(self, request: types.StoolRequest | Mapping[str, Any]) -> types.PiecesAnswer:
        """Work out a stool.

        Its length with both horns, its ripped width and its notches, from the jamb and the casing.

        Args:
            request: A `types.StoolRequest`, or a mapping of its shape.

        Raises:
            BodyTooSlow: The body did not come in time.
            ContentTooLarge: The body is too large.
            UnsupportedMediaType: The body is in a format this address does not read.
        """
        return self.send(calls.compute_stool(request))
