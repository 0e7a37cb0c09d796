"""Where labels lie on a sheet of them."""

from __future__ import annotations

from typing import Annotated

from msgspec import Meta

from longpoint.lengths import Length, PositiveLength
from longpoint.values import Given


class LabelGrid(Given, frozen=True):
    """A grid by which labels lie on their sheet.

    Attributes:
        across: The number of labels side by side.
        down: The number of labels under one another.
        width: The width of one label, measured from its left to its right edge.
        height: The height of one label, measured from its top to its bottom edge.
        left: The distance from the sheet's left edge to the first label.
        top: The distance from the sheet's top edge to the first label.
        gap_across: The gap between labels side by side, measured from one's right edge to the next one's left.
        gap_down: The gap between labels under one another, measured from one's bottom edge to the next one's
            top.
    """

    across: Annotated[int, Meta(ge=1, le=20)]
    down: Annotated[int, Meta(ge=1, le=50)]
    width: PositiveLength
    height: PositiveLength
    left: Length
    top: Length
    gap_across: Length = Length.of("0 in")
    gap_down: Length = Length.of("0 in")
