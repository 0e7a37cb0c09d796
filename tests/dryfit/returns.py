"""Ends returned to the wall, seen from above: what is mitered off an end, the return fills again."""

from typing import Any

from shapely import Polygon, box, symmetric_difference, union_all
from shapely.affinity import affine_transform, translate

from dryfit.misfits import GRID, Misfits
from dryfit.piece import Measure, SolidPiece


def flat(piece: dict[str, Any], measure: Measure) -> Polygon:
    """A piece lying flat, its wall edge along y = 0 against the fence, its front edge towards the carpenter."""
    return SolidPiece.cut(piece, measure).polygon.buffer(0)


def turned(piece: Polygon, side: str, length: float) -> Polygon:
    """A return with its face turned to the side it closes, its wall end against the wall, at its body's end."""
    # Seen from the left end the wall is on the left hand, seen from the right end on the right.
    quarter = [0, 1, -1, 0, 0, 0] if side == "left" else [0, -1, 1, 0, 0, 0]
    piece = affine_transform(piece, quarter)
    x = 0 if side == "left" else length - (piece.bounds[2] - piece.bounds[0])
    return translate(piece, x - piece.bounds[0], -piece.bounds[3])


def close(
    name: str, body: Polygon, returns: dict[str, Polygon], length: float, depth: float, misfits: Misfits
) -> None:
    """The body and its returns must fill the rectangle that it would be uncut."""
    placed = {side: turned(piece, side, length) for side, piece in returns.items()}
    for side, piece in placed.items():
        misfits.apart(f"the {name} and its {side} return", body, piece)
    together = union_all([body, *placed.values()], grid_size=GRID)
    missing = symmetric_difference(box(0, -depth, length, 0), together, grid_size=GRID)
    if missing.area > misfits.slack * (2 * length + 4 * depth):
        misfits.found.append(f"the {name} and its returns leave {missing.area:.5f} sq in open or over")
