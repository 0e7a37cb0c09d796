"""Names for the sticks of a plan that keeps some of an earlier one: each piece and remnant given once."""

from collections import Counter
from collections.abc import Sequence
from dataclasses import replace

from .firstfit import Cut
from .layouts import lay_out
from .model import Job, Layout
from .problem import Problem
from .standing import Held

__all__ = ["named"]


def named(job: Job, problem: Problem, held: Sequence[Held], cuts: Sequence[Cut]) -> tuple[Layout, ...]:
    """Layouts of the cuts, from the pieces and remnants that the sticks held do not take."""
    taken = Counter(key for one in held for key in one.layout.keys[0])
    gone = {one.layout.stick for one in held if one.layout.remnant}
    whole = {name for one in held for name in one.openings}
    pieces = tuple(replace(piece, quantity=piece.quantity - taken[piece.key]) for piece in job.pieces)
    items = tuple(
        replace(item, openings=tuple(name for name in item.openings if name not in whole))
        for item in problem.items
    )
    stocks = tuple(
        replace(stock, keys=tuple(key for key in stock.keys if key not in gone)) for stock in problem.stocks
    )
    return lay_out(replace(job, pieces=pieces), replace(problem, items=items, stocks=stocks), cuts)
