"""From pieces to sticks: the cheapest stock to cut them from, with a bound that proves how cheap.

Call ``plan(cutting)`` once for each profile::

    cutting = Cutting(
        profile="casing",
        pieces=(Wanted("w1.left", Fraction(783, 16), 2), Wanted("w1.head", Fraction(36))),
        sticks=(StickKind("8 ft", Fraction(96), 800), StickKind("12 ft", Fraction(144), 1176)),
    )
    result = plan(cutting, Budget(seconds=2.0))
    result.cost_cents, result.bound_cents, result.proven

Lengths are exact fractions of an inch and money whole cents. A mitered end says what its cut takes of the stick:
``Wanted("head", Fraction(36), right=Fraction(5, 2), right_eats=eaten(kerf, 45))``.

``replan(cutting, standing)`` plans anew and leaves sticks of an earlier plan alone as far as that costs nothing.

A cutting that makes no sense raises ``StockError`` with every fault. ``Budget(seconds=0)`` answers with first-fit at
once. The call is pure and holds the processor for its whole budget: a server runs it in another process.
"""

from .cuts import eaten
from .faults import StockError, StockFault
from .keeping import KEEPING, Replanned, Standing, replan
from .laid import Layout, Placed, Plan, Progress
from .model import VERSION, Budget, Cutting, StickKind, StickOnHand, Stretch, Wanted
from .planner import plan

__all__ = [
    "KEEPING",
    "VERSION",
    "Budget",
    "Cutting",
    "Layout",
    "Placed",
    "Plan",
    "Progress",
    "Replanned",
    "Standing",
    "StickKind",
    "StickOnHand",
    "StockError",
    "StockFault",
    "Stretch",
    "Wanted",
    "eaten",
    "plan",
    "replan",
]
