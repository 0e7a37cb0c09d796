"""Square corner blocks, and the casing cut square between them, round a rectangular opening."""

from typing import Any

from dryfit.misfits import Misfits
from dryfit.outline import Line
from dryfit.piece import Measure, Piece


def fit_blocks(
    cut: dict[str, Piece],
    inner: dict[str, Line],
    blocks: dict[str, dict[str, Any]],
    base: float,
    measure: Measure,
    misfits: Misfits,
) -> dict[str, Piece]:
    """Set a block in each corner, centred on both casings, and the casing between: every end must meet its block.

    Args:
        cut: the casing by side.
        inner: the line each side's inner edge belongs on.
        blocks: corner blocks' parts by side.
        base: height of the line the legs stand on, where there is no sill.
    """
    framed = "sill" in cut
    corners = [("left", "head"), ("right", "head")] + (
        [("left", "sill"), ("right", "sill")] if framed else []
    )
    wanted = [side if level == "head" else f"sill {side}" for side, level in corners]
    misfits.says("the corner blocks", sorted(blocks), sorted(wanted))
    placed: dict[str, Piece] = {}
    middles = {name: inner[name].outside(_width(piece) / 2) for name, piece in cut.items()}
    size = {place: float(measure(part["overall"])) for place, part in blocks.items()}
    for side in ("left", "right"):
        leg = cut[side]
        top = middles[side].crosses(middles["head"]) - 1j * size[side] / 2
        foot = middles[side].crosses(middles["sill"]) + 1j * size[f"sill {side}"] / 2 if framed else None
        low = base if foot is None else foot.imag
        misfits.near(f"the {side} leg up to its block", float(measure(leg.part["overall"])), top.imag - low)
        start = leg.right if side == "right" else leg.left
        stands = inner[side].crosses(Line(complex(0, low), 1 + 0j))
        placed[side] = leg.laid(start.inner, -inner[side].along, stands)
    for level in ("head", "sill") if framed else ("head",):
        left, right = (
            middles[side].crosses(middles[level]).real + way * size[place] / 2
            for side, way, place in zip(
                ("left", "right"), (1, -1), wanted[:2] if level == "head" else wanted[2:], strict=True
            )
        )
        piece = cut[level]
        misfits.near(f"the {level} between its blocks", float(measure(piece.part["overall"])), right - left)
        # A sill lies turned about: its right-hand end is the left one on the saw.
        at_right = piece.right if level == "head" else piece.left
        corner = inner[level].crosses(Line(complex(right, 0), 1j))
        placed[level] = piece.laid(at_right.inner, -inner[level].along, corner)
    for piece in placed.values():
        for end in piece.part["ends"]:
            misfits.says(f"{piece.name}'s end at {end['at']}", end["cut"], "square")
    return placed


def _width(piece: Piece) -> float:
    return abs(piece.left.outer - piece.left.inner)
