"""Operations of the document's part "health" as methods. Generated; do not edit."""

from __future__ import annotations

from longpoint_sdk import calls, types
from longpoint_sdk._client import BaseClient


class Health(BaseClient):
    """Operations as methods."""

    def check_live(self) -> types.Health:
        """Is the process alive?

        Answers as long as the process runs. Restart it when this does not answer.

        Raises:
            BadRequest: The request could not be read.
            MalformedBody: The body could not be read.
            NotAcceptable: None of the formats asked for can be given.
            IdempotencyKeyReused: The Idempotency-Key was used for another request.
            InvalidRequest: The request was read, but cannot be done as it stands.
            InternalError: The service failed.
        """
        return self.send(calls.check_live())

    def check_ready(self) -> types.Health:
        """Is the service ready for work?

        Answers once the service can do its work: its database, if it has one, is there and of the right
        revision.

        Raises:
            BadRequest: The request could not be read.
            MalformedBody: The body could not be read.
            NotAcceptable: None of the formats asked for can be given.
            IdempotencyKeyReused: The Idempotency-Key was used for another request.
            InvalidRequest: The request was read, but cannot be done as it stands.
            InternalError: The service failed.
            NoStorage: This service keeps no schedules.
            StorageUnavailable: Schedules cannot be reached at the moment.
        """
        return self.send(calls.check_ready())
