"""Racks of very many different lengths: fewer of them to plan with, and groups of them for a bound."""

from collections.abc import Sequence
from dataclasses import replace

from longpoint.lengths import Fraction

from .firstfit import Cut
from .problem import Pattern, ScaledCutting, StockGroup

__all__ = ["fewer_stocks", "grouped_stocks", "with_stocks"]


def fewer_stocks(problem: ScaledCutting, most: int) -> tuple[ScaledCutting, list[int]]:
    """The cutting with no more than so many of the stocks of which there are few, those cheapest for their length.

    Returns:
        The cutting, and for each of its stocks the index in the whole one.
    """
    few = [at for at, stock in enumerate(problem.stocks) if stock.most is not None]
    few.sort(key=lambda at: (Fraction(problem.stocks[at].price, max(1, problem.stocks[at].clear)), at))
    dropped = set(few[most:])
    kept = [at for at in range(len(problem.stocks)) if at not in dropped]
    return replace(problem, stocks=tuple(problem.stocks[at] for at in kept)), kept


def with_stocks(cuts: Sequence[Cut], kept: Sequence[int]) -> list[Cut]:
    """Cuts of that cutting as cuts of the whole one."""
    return [(Pattern(kept[pattern.stock], pattern.forms), times) for pattern, times in cuts]


def grouped_stocks(problem: ScaledCutting, groups: int) -> ScaledCutting:
    """The cutting with stocks of about one length as one: clear, as long as the longest and as cheap as the cheapest.

    No plan costs less there than its bound, and every plan of the cutting can be cut there.
    """
    few = sorted(
        (stock for stock in problem.stocks if stock.most is not None),
        key=lambda stock: (stock.end - stock.start, stock.price),
    )
    stocks = [replace(stock, blocked=()) for stock in problem.stocks if stock.most is None]
    for number in range(groups):
        group = few[number * len(few) // groups : (number + 1) * len(few) // groups]
        if group:
            stocks.append(_one(group))
    return replace(problem, stocks=tuple(stocks))


def _one(group: Sequence[StockGroup]) -> StockGroup:
    room = max(stock.end - stock.start for stock in group)
    price = min(stock.price for stock in group)
    most = sum(stock.most or 0 for stock in group)
    return StockGroup((), True, room, 0, room, (), price, most)
