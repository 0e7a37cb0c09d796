"""Operations of the document's part "a_house" as methods. Generated; do not edit."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from longpoint_sdk import calls, types
from longpoint_sdk._client import BaseClient


class AHouse(BaseClient):
    """Operations as methods."""

    def compute_cut_list(self, request: types.CutListRequest | Mapping[str, Any]) -> types.CutListOut:
        """A house.

        Every part of every opening, the sticks they come from, what to buy and what is left over.

        Asked to, also the cuts in the order to make them, the materials, the hours and the money. The sticks
        are laid out first-fit at once; where that is not proven cheapest, a search of `planning_seconds`
        follows. Ask for `text/event-stream` to hear how it comes along: an event `progress` for each better
        plan or bound of a profile, then `answer` with what JSON would have been, or `problem`.

        Raises:
            BodyTooSlow: The body did not come in time.
            ContentTooLarge: The body is too large.
            UnsupportedMediaType: The body is in a format this address does not read.
        """
        return self.send(calls.compute_cut_list(request))

    def compute_materials(self, request: types.MaterialsRequest | Mapping[str, Any]) -> types.MaterialsAnswer:
        """Materials.

        Nails, glue, caulk, filler, paint and the rest, each with what it was computed from, in packages as
        sold.

        Raises:
            BodyTooSlow: The body did not come in time.
            ContentTooLarge: The body is too large.
            UnsupportedMediaType: The body is in a format this address does not read.
        """
        return self.send(calls.compute_materials(request))
