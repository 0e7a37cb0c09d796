"""Operations of the document's part "one_opening" as methods. Generated; do not edit."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any, Literal, overload

from longpoint_sdk import calls, types
from longpoint_sdk._client import BaseClient


class OneOpening(BaseClient):
    """Operations as methods."""

    def compute_apron(self, request: types.ApronRequest | Mapping[str, Any]) -> types.PartsOut:
        """An apron.

        Its length, flush with the casing's outside edges, and its returns where its ends are returned.

        Raises:
            BodyTooSlow: The body did not come in time.
            ContentTooLarge: The body is too large.
            UnsupportedMediaType: The body is in a format this address does not read.
        """
        return self.send(calls.compute_apron(request))

    def compute_casing(self, request: types.CasingRequest | Mapping[str, Any]) -> types.PartsOut:
        """Casing.

        Legs and head, and in a picture frame the sill piece, each with its mitres and its short and long
        points.

        Raises:
            BodyTooSlow: The body did not come in time.
            ContentTooLarge: The body is too large.
            UnsupportedMediaType: The body is in a format this address does not read.
        """
        return self.send(calls.compute_casing(request))

    def compute_corners(self, request: types.CornersRequest | Mapping[str, Any]) -> types.CornersOut:
        """Corners out of square.

        Each corner's angle and the casing cut to it, as read: never squared up, and answered even where the
        readings disagree, with what the tape most likely got wrong.

        Raises:
            BodyTooSlow: The body did not come in time.
            ContentTooLarge: The body is too large.
            UnsupportedMediaType: The body is in a format this address does not read.
        """
        return self.send(calls.compute_corners(request))

    def compute_movement(self, request: types.MovementRequest | Mapping[str, Any]) -> types.MovementOut:
        """How wood moves.

        Moisture content from the air, change across the grain, and how far a mitre opens, season by season.

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
    ) -> types.OpeningOut: ...

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
        """One opening.

        Every part of one opening: stool, apron, returns and casing, each with its cuts and how it was
        computed.

        As SVG it is drawn to scale: the elevation, the section, or one piece as it lies on the saw.

        Args:
            drawing: Which drawing an SVG answer is.
            piece: The part to draw, for `drawing=piece`: its `key` in the JSON answer.
            feet: Lengths in drawings in feet and inches, where they are in inches.
            accept: The media type to have it in; its bytes are then given as they come.

        Raises:
            BodyTooSlow: The body did not come in time.
            ContentTooLarge: The body is too large.
            UnsupportedMediaType: The body is in a format this address does not read.
        """
        return self.send(
            calls.compute_opening(request, drawing=drawing, piece=piece, feet=feet, accept=accept)
        )

    def compute_stool(self, request: types.StoolRequest | Mapping[str, Any]) -> types.PartsOut:
        """A stool.

        Its length with both horns, its ripped width and its notches, from the jamb and the casing.

        Raises:
            BodyTooSlow: The body did not come in time.
            ContentTooLarge: The body is too large.
            UnsupportedMediaType: The body is in a format this address does not read.
        """
        return self.send(calls.compute_stool(request))
