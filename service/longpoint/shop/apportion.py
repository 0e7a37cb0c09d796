"""Sharing whole cents out so that nothing is lost and nothing is made."""

from __future__ import annotations

from collections.abc import Sequence

from longpoint.lengths import Fraction


def apportion(cents: int, weights: Sequence[Fraction]) -> tuple[int, ...]:
    """Share an amount by weight, by the largest remainder: each share is its exact piece rounded down or up.

    Args:
        cents: the amount, not negative.
        weights: not negative; equal shares are made when all are zero. Equal remainders go to the first.

    Returns:
        Shares that add up to `cents`; all zero when there is nobody to share among.
    """
    if not weights:
        return ()
    total = sum(weights, Fraction(0))
    if total == 0:
        return apportion(cents, [Fraction(1)] * len(weights))
    # Most openings have nothing of most profiles; they get nothing, and there are enough remainders without theirs.
    exact = {at: cents * weight / total for at, weight in enumerate(weights) if weight}
    shares = [0] * len(weights)
    for at, each in exact.items():
        shares[at] = int(each)
    missing = cents - sum(shares)
    by_remainder = sorted(exact, key=lambda at: shares[at] - exact[at])
    for at in by_remainder[:missing]:
        shares[at] += 1
    return tuple(shares)


def round_half_up(cents: Fraction) -> int:
    """To the nearest cent, halves up."""
    return int((2 * cents + 1) // 2)
