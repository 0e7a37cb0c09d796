"""Operations of the document's part "health" as methods. Generated; do not edit."""

from __future__ import annotations

from longpoint_sdk import calls, types
from longpoint_sdk._async_client import BaseAsyncClient


class Health(BaseAsyncClient):
    """Operations as methods."""

    async def check_live(self) -> types.Health:
        """Is the process alive?

        Answers as long as the process runs. Restart it when this does not answer.
        """
        return await self.send(calls.check_live())

    async def check_ready(self) -> types.Health:
        """Is the service ready for work?

        Answers once the service can do its work: its database, if it has one, is there and of the right
        revision.

        Once the service was asked to stop it is not ready any more, though it still answers for a while.
        """
        return await self.send(calls.check_ready())
