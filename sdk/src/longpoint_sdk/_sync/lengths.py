"""Operations of the document's part "lengths" as methods. Generated; do not edit."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from longpoint_sdk import calls, types
from longpoint_sdk._client import BaseClient


class Lengths(BaseClient):
    """Operations as methods."""

    def read_lengths(self, request: types.LengthsIn | Mapping[str, Any]) -> types.LengthsOut:
        """Read lengths.

        Reads up to a thousand lengths as people write them and gives each back exact and rounded once.

        What cannot be read one way only is refused, never guessed: when any of them is wrong, all that are
        wrong are listed and none is answered.

        Raises:
            BadRequest: The request could not be read.
            MalformedBody: The body could not be read.
            KeyNeeded: A key is needed.
            KeyRefused: The key is not taken.
            ScopeMissing: The key may not do this.
            NotAcceptable: None of the formats asked for can be given.
            ContentTooLarge: The body is too large.
            UnsupportedMediaType: The body is in a format this address does not read.
            IdempotencyKeyReused: The Idempotency-Key was used for another request.
            InvalidRequest: The request was read, but cannot be done as it stands.
            InternalError: The service failed.
            NoStorage: This service keeps no schedules.
            StorageUnavailable: Schedules cannot be reached at the moment.
        """
        return self.send(calls.read_lengths(request))
