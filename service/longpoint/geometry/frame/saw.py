"""The saw's setting for trim that leans."""

from __future__ import annotations

import math

from longpoint.lengths import Real


def compound(corner_degrees: Real, spring_degrees: Real) -> tuple[float, float]:
    """The saw's miter and bevel, degrees, for trim that leans.

    Args:
        corner_degrees: between the two pieces, in the plane that the trim goes round.
        spring_degrees: between the trim's back and the upright of that plane: 90 lies flat in it.

    Source: the published crown tables' own formula, miter = atan(sin S / tan(C/2)) and
    bevel = asin(cos S cos(C/2)).
    """
    half, spring = math.radians(corner_degrees) / 2, math.radians(spring_degrees)
    miter = math.atan2(math.sin(spring), math.tan(half))
    bevel = math.asin(math.cos(spring) * math.cos(half))
    return math.degrees(miter), math.degrees(bevel)
