"""Whether a piece can be cut again into another: the needed solid, slid along the stick, must lie within the piece.

x runs along the piece from its left-most point, y from its outer edge, which lay against the fence, to its inner
edge, z from its back to its face. A piece is never turned over or end for end: its profile has a thick edge, and
its face is finished. What is ripped off comes off the outer edge.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator
from itertools import pairwise

from longpoint.geometry import CutKind
from longpoint.shop.shape import ANGLE_SLACK, EndCut, PieceShape

SLACK = 1e-6
"""Inches within which a float is taken to fit: far below a saw's kerf, far above a float's error."""

Stretch = tuple[float, float, float, float]
"""What is sawn out of the outer edge: from and to along the piece, and how deep at each."""


def can_be_recut(piece: PieceShape, need: PieceShape) -> bool:
    """Whether a piece can be cut again into what is needed, lying as it lay."""
    if (piece.profile, piece.thickness) != (need.profile, need.thickness):
        return False
    if piece.width != need.width and not (piece.ripped and need.ripped and piece.width > need.width):
        return False
    # A taper is planed to the wall, from the edge away from the fence.
    tapered = piece.taper is not None or need.taper is not None
    off = 0.0 if tapered else float(piece.width - need.width)
    least, most = _between_ends(piece, need, off)
    if piece.taper is not None:
        least, most = _within_taper(piece, need, least, most)
    if least > most + SLACK:
        return False
    has, wants = list(_sawn_out(piece)), list(_sawn_out(need))
    if not has:
        return True
    length = float(need.length)
    places = (place for place in _places(has, wants, off, length) if least - SLACK <= place <= most + SLACK)
    return any(_is_covered(has, wants, off, place, length) for place in (least, most, *places))


def _between_ends(piece: PieceShape, need: PieceShape, off: float) -> tuple[float, float]:
    """How far the needed piece can lie to the right of the piece's left-most point, by both pieces' ends alone."""
    thickness = float(need.thickness)
    least, most = -math.inf, math.inf
    for has, wants, left in ((piece.left, need.left, True), (piece.right, need.right, False)):
        for y, notched in _heights(need, has, wants, off):
            for z in (0.0, thickness):
                own = notched or _inset(wants, wants, need, y, z, left)
                spare = _inset(has, wants, piece, y + off, z, left) - own
                if left:
                    least = max(least, spare)
                else:
                    most = min(most, float(piece.length - need.length) - spare)
    return least, most


def _heights(need: PieceShape, has: EndCut, wants: EndCut, off: float) -> Iterator[tuple[float, float]]:
    """Where an end is looked at, across the needed piece, each with how far its notch keeps it from there.

    Between these places both ends run straight.
    """
    length, width = float(wants.notch_length), float(need.width)
    stands = min(float(wants.notch_depth), float(_far(wants))) if length else 0.0
    yield from ((width, 0.0), (stands, 0.0))
    if stands > 0:
        yield from ((0.0, length), (stands, length))
    stops = float(has.notch_depth) - off
    if has.long_edge == "front" and 0 <= stops < width:
        yield stops, length if stops < stands else 0.0


def _inset(end: EndCut, wanted: EndCut, piece: PieceShape, y: float, z: float, left: bool) -> float:
    """How far inside the piece's farthest point an end lies, notches left aside.

    An angle that the saw's scale cannot tell from the wanted one is taken for it.
    """
    miter = wanted.miter if abs(end.miter - wanted.miter) <= ANGLE_SLACK else end.miter
    bevel = wanted.bevel if abs(end.bevel - wanted.bevel) <= ANGLE_SLACK else end.bevel
    width, thickness = float(piece.width), float(piece.thickness)
    inset = 0.0
    if miter:
        inner_long = end.long_edge in ("inner", "front")
        # A horn's miter stops at its notch.
        if end.long_edge != "front" or y > float(end.notch_depth) - SLACK:
            inset += (width - y if inner_long else y) * math.tan(math.radians(miter))
    if bevel:
        run = math.tan(math.radians(bevel)) / math.cos(math.radians(miter))
        inset += run * (thickness - z if _face_is_long(end, z, left) else z)
    return inset


def _face_is_long(end: EndCut, z: float, left: bool) -> bool:
    if end.cut is CutKind.BEVEL:
        return end.long_edge == "face"
    if end.bevel_direction is None:
        return z == 0.0  # not kept: what may be missing of back and face alike counts as missing
    return end.bevel_direction == ("left" if left else "right")


def _within_taper(piece: PieceShape, need: PieceShape, least: float, most: float) -> tuple[float, float]:
    """The same, kept to where the tapered piece is wide enough at both of the needed one's ends."""
    assert piece.taper is not None
    at_left, at_right = (float(width) for width in piece.taper)
    slope = (at_right - at_left) / float(piece.length)
    wanted = need.taper or (need.width, need.width)
    for x, width in zip((0.0, float(need.length)), wanted, strict=True):
        room = float(width) - at_left - slope * x
        if slope > 0:
            least = max(least, room / slope)
        elif slope < 0:
            most = min(most, room / slope)
        elif room > SLACK:
            return math.inf, -math.inf
    return least, most


def _sawn_out(shape: PieceShape) -> Iterator[Stretch]:
    length = float(shape.length)
    for end, left in ((shape.left, True), (shape.right, False)):
        if end.notch_length:
            depth, far, along = float(end.notch_depth), float(_far(end)), float(end.notch_length)
            for start, stop, one, other in _horn(end, float(shape.width), depth, far, along):
                yield (start, stop, one, other) if left else (length - stop, length - start, other, one)
    for sawn in shape.cutouts or ():
        yield float(sawn.start), float(sawn.end), float(sawn.depth), float(sawn.end_depth)


def _horn(
    end: EndCut, width: float, depth: float, far: float, along: float
) -> Iterator[tuple[float, float, float, float]]:
    """What is sawn out of a horn, from its end inwards: its notch and, behind a return, what the miter takes."""
    run = min((width - depth) * math.tan(math.radians(end.miter)), along)
    if end.long_edge != "front" or run <= 0:
        yield 0.0, along, far, depth
        return
    yield 0.0, run, width, width - run / math.tan(math.radians(end.miter))
    if run < along:
        yield run, along, depth, depth


def _far(end: EndCut) -> float:
    return float(end.notch_depth if end.notch_end is None else end.notch_end)


def _places(has: list[Stretch], wants: list[Stretch], off: float, length: float) -> Iterator[float]:
    """Where what is missing of the piece and what is to be sawn out of the needed one come to touch."""
    for one in has:
        for other in wants:
            yield from (x - y for x in one[:2] for y in other[:2])
            for x, depth in (one[0::2], one[1::2]):
                yield from (x - y for y in _at_depth(other, depth - off))
            for y, depth in (other[0::2], other[1::2]):
                yield from (x - y for x in _at_depth(one, depth + off))
    # Past the needed piece's own ends nothing has to be there.
    for start, end, *_ in has:
        yield from (start, end, start - length, end - length)


def _at_depth(stretch: Stretch, depth: float) -> Iterable[float]:
    start, end, at_start, at_end = stretch
    if at_start == at_end or not min(at_start, at_end) <= depth <= max(at_start, at_end):
        return ()
    return (start + (end - start) * (depth - at_start) / (at_end - at_start),)


def _is_covered(has: list[Stretch], wants: list[Stretch], off: float, place: float, length: float) -> bool:
    """Whether nothing that the needed piece wants at its outer edge is missing of the piece, `place` to its left."""
    moved = [(start - place, end - place, one - off, other - off) for start, end, one, other in has]
    breaks = sorted({0.0, length, *(x for each in (*moved, *wants) for x in each[:2] if 0 < x < length)})
    for start, end in pairwise(breaks):
        if end - start <= SLACK:
            continue
        for x in (start, end):
            if _depth(moved, start, end, x) > _depth(wants, start, end, x) + SLACK:
                return False
    return True


def _depth(stretches: list[Stretch], start: float, end: float, x: float) -> float:
    """How deep it is sawn out at x, which lies at one end of a run on which nothing begins or ceases."""
    middle = (start + end) / 2
    return max(
        (
            one + (other - one) * (x - first) / (last - first)
            for first, last, one, other in stretches
            if first < middle < last
        ),
        default=0.0,
    )
