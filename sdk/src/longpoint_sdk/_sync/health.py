"""Operations of the document's part "health" as methods. Generated; do not edit."""

from __future__ import annotations

from longpoint_sdk import calls, types
from longpoint_sdk._client import BaseClient


class Health(BaseClient):
    """Operations as methods."""

    def check_live(self) -> types.Health:
        """Is the process alive?

        Answers as long as the process runs. Restart it when this does not answer.
        """
        return self.send(calls.check_live())

    def check_ready(self) -> types.Health:
        """Is the service ready for work?

        Answers once the service can do its work: its database, if it has one, is there and of the right
        revision.

        Once the service was asked to stop it is not ready any more, though it still answers for a while.
        """
        return self.send(calls.check_ready())
