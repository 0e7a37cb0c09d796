"""A fillet under a butted head and a cap over it, held against the legs' outside edges."""

from typing import Any

from dryfit.misfits import Misfits
from dryfit.outline import Line
from dryfit.piece import Measure, SolidPiece
from dryfit.returns import close, flat
from dryfit.tape import unrounded


def fit_strip(
    kind: str,
    pieces: list[dict[str, Any]],
    measure: Measure,
    misfits: Misfits,
    *,
    under: Line,
    legs: tuple[SolidPiece, SolidPiece],
    overhang: float,
    middle: complex,
) -> None:
    """One strip, `under` being the line its lower edge lies on and `legs` the left and the right one as they stand.

    Args:
        kind: fillet or cap.
        overhang: as asked, past the legs' outside edges at that line.
        middle: of the opening's head, whose center line the strip's mark must meet.
    """
    cut = {piece["key"]: piece for piece in pieces if str(piece["kind"]).startswith(kind)}
    strip = cut.get(kind)
    if strip is None:
        misfits.found.append(f"the {kind} is not there")
        return
    left, right = (under.crosses(outside(leg)) for leg in legs)
    length = float(measure(strip["overall"]))
    misfits.near(f"the {kind} past both legs", length - abs(right - left), 2 * overhang)
    mark = strip["marks"][0]["at"]
    own = abs(float(measure(mark)) - float(unrounded(mark)))
    along = abs(under.ahead(middle) - under.ahead(left)) + overhang
    misfits.near(f"the {kind}'s center line", float(measure(mark)), along, own)
    if len(cut) > 1:
        returns = {side: flat(cut[f"{kind}_return/{side}"], measure) for side in ("left", "right")}
        depth = float(unrounded(strip["width"]))
        close(kind, flat(strip, measure), returns, length, depth, misfits)


def outside(leg: SolidPiece) -> Line:
    """The line of a leg's outside edge."""
    way = leg.left.outer - leg.right.outer
    return Line(leg.right.outer, way / abs(way))
