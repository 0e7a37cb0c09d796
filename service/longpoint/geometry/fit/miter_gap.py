"""How far a miter stands open when its pieces shrink or swell across, their length along the grain being kept.

A miter of m degrees runs width x tan m along the grain. That run stays when the width changes, so the cut comes to
stand at another angle, and its face, from short point to long point, is the new width over the cosine of that angle.
"""

from __future__ import annotations

import math

from longpoint.lengths import Real
from longpoint.values import Value


class MiterGap(Value, frozen=True):
    """A joint of two pieces alike, after both moved.

    Attributes:
        miter_after: of each cut, degrees off a square one.
        opens_degrees: the angle between the two faces.
        face: of each cut, from short point to long point, inches.
        gap: between the two faces at the open end, from tip to tip, inches.
        opens_at: "short point" when the wood shrank, "long point" when it swelled, "" when neither.
    """

    miter_after: float
    opens_degrees: float
    face: float
    gap: float
    opens_at: str


def miter_gap(width: Real, change: Real, miter: float) -> MiterGap:
    """The gap of a miter cut in two pieces of a width that then changed.

    Args:
        width: across the face when the joint was made, from edge to edge, inches.
        change: of that width, inches; negative when it shrank.
        miter: degrees off a square cut when the joint was made, from 0 up to but not 90.
    """
    now = float(width) + float(change)
    run = float(width) * math.tan(math.radians(miter))
    after = math.atan2(run, now)
    face = now / math.cos(after)
    # The difference of two angles near each other, from the tangents of both: the difference itself would lose digits.
    opens = 2 * abs(math.atan2(run * float(change), float(width) * now + run * run))
    shrank, moved = change < 0, change != 0 and run != 0
    return MiterGap(
        miter_after=math.degrees(after),
        opens_degrees=math.degrees(opens),
        face=face,
        gap=2 * face * math.sin(opens / 2),
        opens_at="" if not moved else "short point" if shrank else "long point",
    )
