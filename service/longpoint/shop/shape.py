"""A piece as it lies on the saw: what was cut, to hold against what is needed."""

from __future__ import annotations

import math

from longpoint.geometry import CutKind, Cutout, End, Piece
from longpoint.lengths import Fraction, Real, Rounding, round_to
from longpoint.values import Value

ANGLE_SLACK = 0.05
"""Degrees within which a cut end is the end that is needed: finer than a saw's scale can be set."""


class EndCut(Value, frozen=True):
    """One end of a piece as it was cut.

    Attributes:
        cut: square, miter, bevel or compound.
        miter: degrees that the saw's table was turned off a square cut.
        bevel: degrees that the blade was tilted from upright.
        long_edge: as of an `End`.
        notch_depth: from the back edge in; zero where nothing is notched.
        notch_length: from the piece's end in; zero where nothing is notched.
        notch_end: the notch's depth at the piece's end, the same as `notch_depth` where the wall is in plane; None
            where it was not kept.
        tilt: the side to which the top of the blade leaned; None for an upright blade, or where it was not kept.
    """

    cut: CutKind
    miter: float
    bevel: float
    long_edge: str | None
    notch_depth: Fraction
    notch_length: Fraction
    notch_end: Fraction | None = None
    bevel_direction: str | None = None


class SawnOut(Value, frozen=True):
    """What is sawn out of the back edge.

    Attributes:
        start: from the piece's left end, as it lies on the saw, to where it begins.
        end: from the piece's left end to where it ceases.
        depth: from the back edge in, at its start.
        end_depth: from the back edge in, at its end.
    """

    start: Fraction
    end: Fraction
    depth: Fraction
    end_depth: Fraction


class PieceShape(Value, frozen=True):
    """A piece as it lies on the saw, its lengths rounded as they were marked.

    Attributes:
        profile: the stock it was cut from.
        length: its farthest extent along the stick.
        width: across the face.
        thickness: from back to face.
        ripped: whether its width was ripped, so that it can be ripped again.
        left: its left end as it lies on the saw.
        right: its right end.
        taper: the width at its left and at its right end, where it was ripped to a taper.
        cutouts: left to right; None where they were not kept.
    """

    profile: str
    length: Fraction
    width: Fraction
    thickness: Fraction
    ripped: bool
    left: EndCut
    right: EndCut
    taper: tuple[Fraction, Fraction] | None = None
    cutouts: tuple[SawnOut, ...] | None = None


def shape_of(piece: Piece, rounding: Rounding) -> PieceShape:
    """A piece as it will lie on the saw."""
    return PieceShape(
        piece.profile,
        round_to(_length(piece), rounding),
        round_to(piece.width, rounding),
        piece.thickness,
        piece.rip_width is not None,
        _end_of(piece.ends[0], rounding),
        _end_of(piece.ends[1], rounding),
        None
        if piece.taper is None
        else (round_to(piece.taper.left, rounding), round_to(piece.taper.right, rounding)),
        tuple(_sawn_out(cutout, rounding) for cutout in piece.cutouts),
    )


def _length(piece: Piece) -> Real:
    """From its one farthest point to the other, once it is ripped. A tip that is trimmed off is trimmed at the wall."""
    if piece.mitered_width is None:
        return piece.overall
    off = float(piece.mitered_width) - float(piece.width)
    runs = (math.tan(math.radians(float(end.miter))) for end in piece.ends if end.long_edge == "outer")
    return float(piece.overall) - off * sum(runs)


def alike(one: PieceShape, other: PieceShape) -> bool:
    """Whether one piece does for the other."""
    return (
        (one.profile, one.length, one.width, one.thickness, one.taper)
        == (other.profile, other.length, other.width, other.thickness, other.taper)
        and same_end(one.left, other.left)
        and same_end(one.right, other.right)
        and _same_where_kept(one.cutouts, other.cutouts)
    )


def same_end(one: EndCut, other: EndCut) -> bool:
    """Whether two ends are cut alike."""
    return (
        (one.cut, one.long_edge, one.notch_depth, one.notch_length)
        == (other.cut, other.long_edge, other.notch_depth, other.notch_length)
        and _same_where_kept(one.notch_end, other.notch_end)
        and _same_where_kept(one.bevel_direction, other.bevel_direction)
        and abs(one.miter - other.miter) <= ANGLE_SLACK
        and abs(one.bevel - other.bevel) <= ANGLE_SLACK
    )


def _same_where_kept(one: object, other: object) -> bool:
    """Pieces cut before a figure was kept beside them are taken to have it as it should be."""
    return one is None or other is None or one == other


def _end_of(end: End, rounding: Rounding) -> EndCut:
    depth = end_depth = length = Fraction(0)
    if end.notch is not None:
        depth, length = round_to(end.notch.depth, rounding), round_to(end.notch.length, rounding)
        end_depth = _other(end.notch.end_depth, depth, rounding)
    return EndCut(
        end.cut,
        float(end.miter),
        float(end.bevel),
        end.long_edge,
        depth,
        length,
        end_depth,
        end.bevel_direction,
    )


def _sawn_out(cutout: Cutout, rounding: Rounding) -> SawnOut:
    depth = round_to(cutout.depth, rounding)
    return SawnOut(
        round_to(cutout.at, rounding),
        round_to(cutout.at + cutout.length, rounding),
        depth,
        _other(cutout.end_depth, depth, rounding),
    )


def _other(depth: Real | None, same: Fraction, rounding: Rounding) -> Fraction:
    return same if depth is None else round_to(depth, rounding)
