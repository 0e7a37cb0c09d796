"""The operations of the service as methods. Generated; do not edit."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from longpoint_sdk import calls, types
from longpoint_sdk._client import BaseClient


class Client(BaseClient):
    """The service, for code that waits. Use it in a `with`, or close it. Each operation is a method."""

    def compute_cut_list(self, request: types.CutListRequest | Mapping[str, Any]) -> types.CutListOut:
        """A house.

        Every part of every opening, the sticks they come from, what to buy and what is left over.

        Raises:
            BadRequest: The request could not be read.
            MalformedBody: The body could not be read.
            NotAcceptable: None of the formats asked for can be given.
            ContentTooLarge: The body is too large.
            UnsupportedMediaType: The body is in a format this address does not read.
            InvalidRequest: The request was read, but cannot be done as it stands.
            InternalError: The service failed.
        """
        return self.send(calls.compute_cut_list(request))

    def check_live(self) -> types.Health:
        """Is the process alive?

        Answers as long as the process runs. Restart it when this does not answer.

        Raises:
            BadRequest: The request could not be read.
            MalformedBody: The body could not be read.
            NotAcceptable: None of the formats asked for can be given.
            InvalidRequest: The request was read, but cannot be done as it stands.
            InternalError: The service failed.
        """
        return self.send(calls.check_live())

    def check_ready(self) -> types.Health:
        """Is the service ready for work?

        Answers once the service can do its work. Send it requests only then.

        Raises:
            BadRequest: The request could not be read.
            MalformedBody: The body could not be read.
            NotAcceptable: None of the formats asked for can be given.
            InvalidRequest: The request was read, but cannot be done as it stands.
            InternalError: The service failed.
        """
        return self.send(calls.check_ready())

    def read_lengths(self, request: types.LengthsIn | Mapping[str, Any]) -> types.LengthsOut:
        """Read lengths.

        Reads up to a thousand lengths as people write them and gives each back exact and rounded once.

        What cannot be read one way only is refused, never guessed: when any of them is wrong, all that are
        wrong are listed and none is answered.

        Raises:
            BadRequest: The request could not be read.
            MalformedBody: The body could not be read.
            NotAcceptable: None of the formats asked for can be given.
            ContentTooLarge: The body is too large.
            UnsupportedMediaType: The body is in a format this address does not read.
            InvalidRequest: The request was read, but cannot be done as it stands.
            InternalError: The service failed.
        """
        return self.send(calls.read_lengths(request))

    def compute_apron(self, request: types.ApronRequest | Mapping[str, Any]) -> types.PartsOut:
        """An apron.

        Its length, flush with the casing's outside edges, and its returns where its ends are returned.

        Raises:
            BadRequest: The request could not be read.
            MalformedBody: The body could not be read.
            NotAcceptable: None of the formats asked for can be given.
            ContentTooLarge: The body is too large.
            UnsupportedMediaType: The body is in a format this address does not read.
            InvalidRequest: The request was read, but cannot be done as it stands.
            InternalError: The service failed.
        """
        return self.send(calls.compute_apron(request))

    def compute_casing(self, request: types.CasingRequest | Mapping[str, Any]) -> types.PartsOut:
        """Casing.

        Legs and head, and in a picture frame the sill piece, each with its mitres and its short and long
        points.

        Raises:
            BadRequest: The request could not be read.
            MalformedBody: The body could not be read.
            NotAcceptable: None of the formats asked for can be given.
            ContentTooLarge: The body is too large.
            UnsupportedMediaType: The body is in a format this address does not read.
            InvalidRequest: The request was read, but cannot be done as it stands.
            InternalError: The service failed.
        """
        return self.send(calls.compute_casing(request))

    def compute_corners(self, request: types.CornersRequest | Mapping[str, Any]) -> types.CornersOut:
        """Corners out of square.

        Each corner's angle and the casing cut to it, as read: never squared up, and answered even where the
        readings disagree, with what the tape most likely got wrong.

        Raises:
            BadRequest: The request could not be read.
            MalformedBody: The body could not be read.
            NotAcceptable: None of the formats asked for can be given.
            ContentTooLarge: The body is too large.
            UnsupportedMediaType: The body is in a format this address does not read.
            InvalidRequest: The request was read, but cannot be done as it stands.
            InternalError: The service failed.
        """
        return self.send(calls.compute_corners(request))

    def compute_movement(self, request: types.MovementRequest | Mapping[str, Any]) -> types.MovementOut:
        """How wood moves.

        Moisture content from the air, change across the grain, and how far a mitre opens, season by season.

        Raises:
            BadRequest: The request could not be read.
            MalformedBody: The body could not be read.
            NotAcceptable: None of the formats asked for can be given.
            ContentTooLarge: The body is too large.
            UnsupportedMediaType: The body is in a format this address does not read.
            InvalidRequest: The request was read, but cannot be done as it stands.
            InternalError: The service failed.
        """
        return self.send(calls.compute_movement(request))

    def compute_opening(self, request: types.OpeningRequest | Mapping[str, Any]) -> types.OpeningOut:
        """One opening.

        Every part of one opening: stool, apron, returns and casing, each with its cuts and how it was
        computed.

        Raises:
            BadRequest: The request could not be read.
            MalformedBody: The body could not be read.
            NotAcceptable: None of the formats asked for can be given.
            ContentTooLarge: The body is too large.
            UnsupportedMediaType: The body is in a format this address does not read.
            InvalidRequest: The request was read, but cannot be done as it stands.
            InternalError: The service failed.
        """
        return self.send(calls.compute_opening(request))

    def compute_stool(self, request: types.StoolRequest | Mapping[str, Any]) -> types.PartsOut:
        """A stool.

        Its length with both horns, its ripped width and its notches, from the jamb and the casing.

        Raises:
            BadRequest: The request could not be read.
            MalformedBody: The body could not be read.
            NotAcceptable: None of the formats asked for can be given.
            ContentTooLarge: The body is too large.
            UnsupportedMediaType: The body is in a format this address does not read.
            InvalidRequest: The request was read, but cannot be done as it stands.
            InternalError: The service failed.
        """
        return self.send(calls.compute_stool(request))
