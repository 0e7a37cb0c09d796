"""The shop's limits at the saw."""

from __future__ import annotations

from typing import Annotated

from msgspec import Meta

from longpoint.lengths import Length
from longpoint.values import Given

Detents = Annotated[tuple[Annotated[float, Meta(ge=0, le=90)], ...], Meta(max_length=30)]
DETENTS = (0.0, 15.0, 22.5, 31.6, 45.0)
"""Of most saws. Common practice, no source."""


class Saw(Given, frozen=True):
    """The shop's own limits at the saw. Common practice, no source.

    Attributes:
        smallest_held: The shortest workpiece that is held by hand at the saw, measured from end to end.
        smallest_ripped: The shortest workpiece that is pushed through the table saw by hand, measured from end
            to end.
        sharpest_miter: The most that the saw's table turns off a square cut, degrees.
        angle_step: It says how finely the saw's scale can be set, in degrees.
        detents: The miters at which its table clicks in, degrees; 0, 15, 22.5, 31.6 and 45 when left out.
    """

    smallest_held: Length = Length.of("6 in")
    smallest_ripped: Length = Length.of("12 in")
    sharpest_miter: Annotated[float, Meta(ge=0, le=90)] = 50.0
    angle_step: Annotated[float, Meta(ge=0.001, le=5)] = 0.1
    detents: Detents | None = None
