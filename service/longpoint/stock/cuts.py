"""What a cut eats along the stick: the blade's kerf, seen at the angle of the cut."""

from functools import lru_cache
from math import ceil, cos, radians

from longpoint.lengths import Fraction

__all__ = ["MARK", "eaten"]

MARK = 1_000_000  # parts of an inch that what an angled cut eats is rounded up to
NOISE = 1e-6  # of a mark: what floats may be off, so that a whole number of marks stays one


@lru_cache(maxsize=4096)
def eaten(kerf: Fraction, miter: float, bevel: float = 0.0) -> Fraction:
    """Inches along the stick that a cut at that setting of the saw eats, rounded up to a millionth.

    Args:
        kerf: inches that a square cut eats.
        miter: degrees off a square cut, across the face.
        bevel: degrees the blade is tilted.
    """
    if not (miter or bevel):
        return kerf
    along = float(kerf) / (cos(radians(miter)) * cos(radians(bevel)))
    return max(kerf, Fraction(ceil(along * MARK - NOISE), MARK))
