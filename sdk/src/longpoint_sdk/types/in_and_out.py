"""Types of the document's part "in_and_out". Generated; do not edit."""

from __future__ import annotations

from longpoint_sdk.types._base import Request, Result
from longpoint_sdk.types.common import HouseOpening


class Imported(Result, frozen=True, kw_only=True):
    """It lists what was brought in, or would be.

    Attributes:
        dry_run: Whether it was only tried: nothing was kept then.
        revision: The revision it made; the one that stands, when it made none.
        added: The marks that are new.
        updated: The marks whose opening changed.
        unchanged: The number of openings that were there already, just so.
        removed: Marks that went, since the import replaces the whole.
    """

    dry_run: bool
    revision: int
    added: list[str]
    updated: list[str]
    unchanged: int
    removed: list[str]


class Openings(Request, frozen=True, kw_only=True):
    """Openings to bring in.

    Attributes:
        openings: The openings, in the order in which they are to be listed.
    """

    openings: list[HouseOpening]
