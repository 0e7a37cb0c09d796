"""Operations of the document's part "lengths" as methods. Generated; do not edit."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from longpoint_sdk import calls, types
from longpoint_sdk._async_client import BaseAsyncClient


class Lengths(BaseAsyncClient):
    """Operations as methods."""

    async def read_lengths(self, request: types.LengthsRequest | Mapping[str, Any]) -> types.LengthsAnswer:
        """Read lengths.

        Reads up to a thousand lengths as people write them and gives each back exact and rounded once.

        What cannot be read one way only is refused, never guessed: when any of them is wrong, all that are
        wrong are listed and none is answered.

        Args:
            request: A `types.LengthsRequest`, or a mapping of its shape.

        Raises:
            BodyTooSlow: The body did not come in time.
            ContentTooLarge: The body is too large.
            UnsupportedMediaType: The body is in a format this address does not read.

        Example:
            answer = await client.read_lengths(types.LengthsRequest(lengths=["30 5/8 in", "778 mm"]))
            print(answer.lengths[1], answer.lengths[1].to("mm"))
        """
        return await self.send(calls.read_lengths(request))
