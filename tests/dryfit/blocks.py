"""Square corner blocks, their edges along the head or the sill, and the casing that ends at them."""

from typing import Any

from shapely import Polygon

from dryfit.misfits import Misfits
from dryfit.outline import Line
from dryfit.piece import Measure, SolidPiece

UNSEEN = 1 / 32
"""Inches by which a leg may stand past its block, both sides together, along a head a little out of level."""


def fit_blocks(
    cut: dict[str, SolidPiece],
    inner: dict[str, Line],
    blocks: dict[str, dict[str, Any]],
    floor: Line,
    jamb: Polygon,
    measure: Measure,
    misfits: Misfits,
) -> dict[str, SolidPiece]:
    """Stand the legs up, set a block on each end, and lay head and sill between: every end must meet its block.

    Args:
        cut: the casing by side.
        inner: the line each side's inner edge belongs on.
        blocks: corner blocks' pieces by side.
        floor: the line the legs stand on, where there is no sill.
        jamb: its inside.
    """
    levels = ("head", "sill") if "sill" in cut else ("head",)
    wanted = [_place(level, side) for level in levels for side in ("left", "right")]
    misfits.says("the corner blocks", sorted(blocks), sorted(wanted))
    size = {place: float(measure(piece["overall"])) for place, piece in blocks.items()}
    told = {place: float(measure(piece["width"])) for place, piece in blocks.items()}
    misfits.says("the corner blocks are square", size, told)
    # Blocks are centered across the head and the sill; on these lines the legs end.
    under = {
        level: inner[level].outside(-(size[_place(level, "left")] - _width(cut[level])) / 2)
        for level in levels
    }
    placed = {
        side: _stood(cut[side], side, inner[side], under.get("sill", floor)) for side in ("left", "right")
    }
    for side, leg in placed.items() if "sill" not in cut else ():
        foot = leg.right if side == "right" else leg.left
        misfits.near(f"the {side} leg's foot, outer edge", floor.off(foot.outer), 0)
    set_: dict[str, Polygon] = {}
    ends: dict[str, complex] = {}
    for level in levels:
        for side in ("left", "right"):
            place, line, leg = _place(level, side), under[level], placed[side]
            at_top = (side == "right") == (level == "head")
            face = leg.left if at_top else leg.right
            misfits.near(f"the {side} leg at its {level} block, inner edge", line.off(face.inner), 0)
            misfits.near(f"the {side} leg at its {level} block, outer edge", line.off(face.outer), 0)
            middle = (line.ahead(face.inner) + line.ahead(face.outer)) / 2
            covers = size[place] - abs(line.ahead(face.outer) - line.ahead(face.inner))
            misfits.says(f"the {place} block covers its leg", covers >= -misfits.slack - UNSEEN, True)
            corners = [
                line.outside(off).at + line.along * (middle + along) for off, along in _square(size[place])
            ]
            set_[place] = Polygon([(z.real, z.imag) for z in corners])
            # Going counterclockwise the head runs from the right to the left, the sill the other way.
            inwards = 1 if (side == "right") == (level == "head") else -1
            ends[place] = line.at + line.along * (middle + inwards * size[place] / 2)
    for level in levels:
        piece, line = cut[level], inner[level]
        first, last = (
            _place(level, side) for side in (("right", "left") if level == "head" else ("left", "right"))
        )
        start, finish = line.ahead(ends[first]), line.ahead(ends[last])
        misfits.near(
            f"the {level} between its blocks", float(measure(piece.answered["overall"])), finish - start
        )
        placed[level] = piece.laid(piece.right.inner, -line.along, line.at + line.along * start)
        for end in piece.answered["ends"]:
            misfits.says(f"{piece.name}'s end at {end['at']}", end["cut"], "square")
    for place, block in set_.items():
        misfits.apart(f"the {place} block and the jamb's inside", block, jamb)
        for piece in placed.values():
            misfits.apart(f"the {place} block and {piece.name}", block, piece.polygon)
    return placed


def _place(level: str, side: str) -> str:
    return side if level == "head" else f"sill {side}"


def _square(size: float) -> tuple[tuple[float, float], ...]:
    return (0, -size / 2), (0, size / 2), (size, size / 2), (size, -size / 2)


def _stood(leg: SolidPiece, side: str, line: Line, base: Line) -> SolidPiece:
    """A leg along its jamb, its foot's inner corner on the line it stands on."""
    foot = leg.right if side == "right" else leg.left
    return leg.laid(foot.inner, -line.along, line.crosses(base))


def _width(piece: SolidPiece) -> float:
    return abs(piece.left.outer - piece.left.inner)
