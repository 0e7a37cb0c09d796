"""Of plans that cost the same, the one a person would rather cut: one long offcut rather than several short.

Pieces move from the stick with the longest offcut to sticks of which there is one alike, singly or against a
shorter piece, as long as every piece still fits. Sticks and their number stay as they are.
"""

from collections.abc import Iterator, Sequence
from dataclasses import replace

from .firstfit import Cut
from .problem import Form, Pattern, ScaledCutting

__all__ = ["tidy"]

MOST = 24  # sticks of a kind of their own; past it there is too little to gain for the time


def tidy(problem: ScaledCutting, cuts: Sequence[Cut]) -> list[Cut]:
    """The same sticks with their waste gathered, and no more different layouts than before."""
    alone = [pattern for pattern, times in cuts if times == 1 and not problem.stocks[pattern.stock].blocked]
    rest = [(pattern, times) for pattern, times in cuts if times > 1 or problem.stocks[pattern.stock].blocked]
    if not 1 < len(alone) <= MOST:
        return list(cuts)
    giver = max(range(len(alone)), key=lambda at: _left(problem, alone[at]))
    moved = True
    while moved:
        moved = False
        for taker in range(len(alone)):
            found = None if taker == giver else _exchanged(problem, alone[giver], alone[taker])
            if found is not None:
                alone[giver], alone[taker] = found
                moved = True
    merged: dict[Pattern, int] = {}
    for pattern, times in [*rest, *((pattern, 1) for pattern in alone)]:
        merged[pattern] = merged.get(pattern, 0) + times
    return list(merged.items())


def _left(problem: ScaledCutting, pattern: Pattern) -> int:
    places = problem.places(pattern)
    assert places is not None
    return problem.stocks[pattern.stock].length - places[-1] - pattern.forms[-1].length


def _exchanged(problem: ScaledCutting, giver: Pattern, taker: Pattern) -> tuple[Pattern, Pattern] | None:
    """Both sticks after the exchange that empties the giver most, or None when none empties it."""
    left, other = _left(problem, giver), _left(problem, taker)
    best: tuple[Pattern, Pattern] | None = None
    for less, more in _exchanges(giver.forms, taker.forms):
        if not less:
            continue
        one, two = replace(giver, forms=less), replace(taker, forms=more)
        if problem.places(one) is None or problem.places(two) is None:
            continue
        if _left(problem, one) > max(left, other):
            left, best = _left(problem, one), (one, two)
    return best


def _exchanges(giver: tuple[Form, ...], taker: tuple[Form, ...]) -> Iterator[tuple[tuple[Form, ...], ...]]:
    for at, form in enumerate(giver):
        kept = (*giver[:at], *giver[at + 1 :])
        yield kept, (*taker, form)
        for place, back in enumerate(taker):
            if back.length < form.length:
                yield (*kept, back), (*taker[:place], form, *taker[place + 1 :])
