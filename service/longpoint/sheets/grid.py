"""Where labels lie on a sheet of them."""

from __future__ import annotations

from typing import Annotated

from msgspec import Meta

from longpoint.lengths import Length, PositiveLength
from longpoint.values import Given


class LabelGrid(Given, frozen=True):
    """Where labels lie on their sheet.

    Attributes:
        across: Labels side by side.
        down: Labels under one another.
        width: Of one label.
        height: Of one label.
        left: From the sheet's left edge to the first label.
        top: From the sheet's top edge to the first label.
        gap_across: Between labels side by side.
        gap_down: Between labels under one another.
    """

    across: Annotated[int, Meta(ge=1, le=20)]
    down: Annotated[int, Meta(ge=1, le=50)]
    width: PositiveLength
    height: PositiveLength
    left: Length
    top: Length
    gap_across: Length = Length.of("0 in")
    gap_down: Length = Length.of("0 in")
