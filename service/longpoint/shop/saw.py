"""The shop's limits at the saw."""

from __future__ import annotations

from typing import Annotated

from msgspec import Meta

from longpoint.lengths import Length
from longpoint.values import Given


class Saw(Given, frozen=True):
    """The shop's own limits at the saw. Common practice, no source.

    Attributes:
        smallest_held: The shortest workpiece held by hand.
        smallest_ripped: The shortest pushed through the table saw by hand.
        sharpest_mitre: The most that the saw's table turns off a square cut, degrees.
        angle_step: How finely the saw's scale can be set, degrees.
    """

    smallest_held: Length = Length.of("6 in")
    smallest_ripped: Length = Length.of("12 in")
    sharpest_mitre: Annotated[float, Meta(ge=0, le=90)] = 50.0
    angle_step: Annotated[float, Meta(ge=0.001, le=5)] = 0.1
