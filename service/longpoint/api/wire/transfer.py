"""The wire's view of bringing many openings in at once."""

from __future__ import annotations

from typing import Annotated, ClassVar, Literal

from msgspec import Meta

from longpoint.api.wire.base import Wire, WireOut
from longpoint.api.wire.opening import OpeningIn
from longpoint.api.wire.schedule import MOST_OPENINGS

Existing = Literal["refuse", "update", "replace"]
"""What to do about marks the schedule has already: refuse them all, update them, or replace the whole."""


class ImportIn(Wire):
    """Openings to bring in.

    Attributes:
        openings: In the order they are to be listed.
    """

    unit_is_stored: ClassVar[bool] = True

    openings: Annotated[list[OpeningIn], Meta(min_length=1, max_length=MOST_OPENINGS)]


class ImportOut(WireOut):
    """What was brought in, or would be.

    Attributes:
        dry_run: Whether it was only tried: nothing was kept then.
        revision: The revision it made; the one that stands, when it made none.
        added: Marks that are new.
        updated: Marks whose opening changed.
        unchanged: How many were there already, just so.
        removed: Marks that went, since the import replaces the whole.
    """

    dry_run: bool
    revision: int
    added: list[str]
    updated: list[str]
    unchanged: int
    removed: list[str]
