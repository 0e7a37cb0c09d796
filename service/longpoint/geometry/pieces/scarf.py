"""A board longer than its stock: where to joint it, and its pieces with scarfs over something solid."""

from __future__ import annotations

from msgspec.structs import replace

from longpoint.geometry.frame.kernel import HALF_RIGHT_ANGLE, ZERO
from longpoint.geometry.piece import CutKind, Cutout, End, Hand, Mark, Piece
from longpoint.lengths import Fraction, Real
from longpoint.texts import say

SCARFED = say("note", "stool.scarfed")


def joints(
    length: Real, solid: tuple[Real, ...], stock: Fraction | None, thickness: Fraction
) -> tuple[Real, ...] | None:
    """Where to joint a board so that every piece comes from one stick, in as few pieces as can be.

    Args:
        length: of the board.
        solid: places from its left end where a joint may fall, in any order.
        stock: the longest stick; None where any length is to be had.
        thickness: of the board: a scarf laps by as much.

    Returns:
        The joints from left to right; None where no choice of them does.
    """
    if stock is None or length <= stock:
        return ()
    places = sorted(place for place in solid if thickness < place < length - thickness)
    chosen: list[Real] = []
    start: Real = ZERO
    # Each piece as long as it can be: no other choice gets further with as many.
    while length - start + _lap(bool(chosen), thickness) > stock:
        reachable = [
            place
            for place in places
            if place > start and place - start + thickness / 2 + _lap(bool(chosen), thickness) <= stock
        ]
        if not reachable:
            return None
        start = reachable[-1]
        chosen.append(start)
    return tuple(chosen)


def _lap(jointed: bool, thickness: Fraction) -> Fraction:
    return thickness / 2 if jointed else ZERO


def scarfed(board: Piece, at: tuple[Real, ...]) -> tuple[Piece, ...]:
    """The pieces of a board jointed at these places, left to right.

    Each joint's middle lies at its place; the piece on its right laps over the one on its left.
    """
    if not at:
        return (board,)
    bounds = (ZERO, *at, board.overall)
    return tuple(
        _piece(board, number, bounds[number - 1], bounds[number], len(bounds) - 1)
        for number in range(1, len(bounds))
    )


def _piece(board: Piece, number: int, start: Real, end: Real, count: int) -> Piece:
    half = board.thickness / 2
    first, last = number == 1, number == count
    left, right = start - (ZERO if first else half), end + (ZERO if last else half)
    face = (end - (ZERO if last else half)) - left
    back = right - (start + (ZERO if first else half))
    # Both halves of a scarf lean the same way: the right-hand piece lies over the left-hand one.
    lapping = End(
        "joint", Hand.LEFT, CutKind.BEVEL, bevel=HALF_RIGHT_ANGLE, bevel_direction=Hand.LEFT, long_edge="face"
    )
    lapped = End(
        "joint",
        Hand.RIGHT,
        CutKind.BEVEL,
        bevel=HALF_RIGHT_ANGLE,
        bevel_direction=Hand.LEFT,
        long_edge="back",
    )
    return replace(
        board,
        side=f"{number} of {count}",
        title="",
        short_point=min(face, back),
        long_point=max(face, back),
        overall=right - left,
        ends=(board.ends[0] if first else lapping, board.ends[1] if last else lapped),
        marks=tuple(
            Mark(mark.name, mark.at - left, mark.across) for mark in board.marks if left <= mark.at <= right
        ),
        cutouts=_within(board.cutouts, left, right),
        notes=(*board.notes, SCARFED),
    )


def _within(cutouts: tuple[Cutout, ...], left: Real, right: Real) -> tuple[Cutout, ...]:
    """The cutouts that fall on a piece, each as far as it does."""
    found: list[Cutout] = []
    for cutout in cutouts:
        start, end = max(cutout.at, left), min(cutout.at + cutout.length, right)
        if start < end:
            depths = {}
            if cutout.end_depth is not None:
                depths = {"depth": _depth(cutout, start), "end_depth": _depth(cutout, end)}
            found.append(replace(cutout, at=start - left, length=end - start, **depths))
    return tuple(found)


def _depth(cutout: Cutout, at: Real) -> Real:
    """How deep a cutout is at a place along the board."""
    assert cutout.end_depth is not None
    return cutout.depth + (cutout.end_depth - cutout.depth) * (at - cutout.at) / cutout.length
