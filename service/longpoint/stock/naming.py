"""Names for the sticks of a plan that keeps some of an earlier one: each piece and length on hand given once."""

from collections import Counter
from collections.abc import Sequence
from dataclasses import replace

from .firstfit import Cut
from .laid import Layout
from .layouts import lay_out
from .model import Cutting
from .problem import ScaledCutting
from .standing import StickHeld

__all__ = ["named"]


def named(
    cutting: Cutting, problem: ScaledCutting, held: Sequence[StickHeld], cuts: Sequence[Cut]
) -> tuple[Layout, ...]:
    """Layouts of the cuts, from the pieces and lengths on hand that the sticks held do not take."""
    if not held:
        return lay_out(cutting, problem, cuts)
    taken = Counter(key for one in held for key in one.layout.keys[0])
    gone = {one.layout.stick for one in held if one.layout.on_hand}
    whole = {name for one in held for name in one.openings}
    pieces = tuple(replace(piece, quantity=piece.quantity - taken[piece.key]) for piece in cutting.pieces)
    items = tuple(
        replace(item, openings=tuple(name for name in item.openings if name not in whole))
        for item in problem.items
    )
    stocks = tuple(
        replace(stock, keys=tuple(key for key in stock.keys if key not in gone)) for stock in problem.stocks
    )
    return lay_out(replace(cutting, pieces=pieces), replace(problem, items=items, stocks=stocks), cuts)
