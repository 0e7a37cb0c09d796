"""A lower bound from the stuff alone: every piece takes its length and a cut from some stick."""

from functools import reduce
from math import gcd

from longpoint.lengths import Fraction

from .problem import ScaledCutting, StockGroup

__all__ = ["material_bound", "material_short", "round_up"]


def material_bound(problem: ScaledCutting) -> int:
    """Cents no plan can go below: fill the stock cheapest for its length first, in parts of sticks."""
    wanted = _wanted(problem)
    cost = Fraction(0)
    for stock in sorted(problem.stocks, key=lambda one: Fraction(one.price, _room(problem, one))):
        if wanted <= 0:
            break
        room = Fraction(_room(problem, stock))
        share = wanted / room if stock.most is None else min(wanted / room, Fraction(stock.most))
        cost += share * stock.price
        wanted -= share * room
    return round_up(problem, cost)


def material_short(problem: ScaledCutting) -> Fraction:
    """Units by which all the stock there is falls short of the pieces and their kerfs, or zero."""
    if any(stock.most is None for stock in problem.stocks):
        return Fraction(0)
    there = sum(_room(problem, stock) * (stock.most or 0) for stock in problem.stocks)
    return max(Fraction(0), _wanted(problem) - there)


def round_up(problem: ScaledCutting, cost: Fraction) -> int:
    """The least sum of stick prices not below ``cost``, as far as their common divisor says."""
    step = reduce(gcd, (stock.price for stock in problem.stocks), 0)
    return 0 if step == 0 else -(-cost // step) * step


def _wanted(problem: ScaledCutting) -> Fraction:
    return sum((item.demand * (item.weight + item.cut) for item in problem.items), Fraction(0))


def _room(problem: ScaledCutting, stock: StockGroup) -> int:
    """A row of n pieces has n - 1 cuts: one more than the stick has room for."""
    return stock.end - stock.start + problem.spare
