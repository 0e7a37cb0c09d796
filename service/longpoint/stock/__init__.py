"""From parts to sticks: the cheapest stock to cut them from, with a bound that proves how cheap.

Call ``plan(job)`` once for each profile::

    job = Job(
        profile="casing",
        pieces=(Piece("w1.left", Fraction(783, 16), 2), Piece("w1.head", Fraction(36))),
        sticks=(StickKind("8 ft", Fraction(96), 800), StickKind("12 ft", Fraction(144), 1176)),
    )
    result = plan(job, Budget(seconds=2.0))
    result.cost_cents, result.bound_cents, result.proven

Lengths are exact fractions of an inch and money whole cents. A mitered end says what its cut takes of the stick:
``Piece("head", Fraction(36), right=Fraction(5, 2), right_eats=eaten(kerf, 45))``.

``replan(job, standing)`` plans anew and leaves sticks of an earlier plan alone as far as that costs nothing.

A job that makes no sense raises ``StockError`` with every fault. ``Budget(seconds=0)`` answers with first-fit at
once. The call is pure and holds the processor for its whole budget: a server runs it in another process.
"""

from .cuts import eaten
from .faults import StockError, StockFault
from .keeping import KEEPING, Replanned, Standing, replan
from .model import VERSION, Budget, Defect, Job, Layout, Piece, Placed, Plan, Progress, Remnant, StickKind
from .planner import plan

__all__ = [
    "KEEPING",
    "VERSION",
    "Budget",
    "Defect",
    "Job",
    "Layout",
    "Piece",
    "Placed",
    "Plan",
    "Progress",
    "Remnant",
    "Replanned",
    "Standing",
    "StickKind",
    "StockError",
    "StockFault",
    "eaten",
    "plan",
    "replan",
]
