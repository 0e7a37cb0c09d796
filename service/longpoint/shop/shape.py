"""A piece as it lies on the saw: what was cut, to hold against what is needed."""

from __future__ import annotations

from longpoint.geometry import CutKind, Cutout, End, Part
from longpoint.geometry.value import Value
from longpoint.lengths import Fraction, Real, Rounding, round_to

ANGLE_SLACK = 0.05
"""Degrees within which a cut end is the end that is needed: finer than a saw's scale can be set."""


class EndCut(Value, frozen=True):
    """One end of a piece as it was cut. Attributes as in `longpoint.geometry.End`; the notch in inches or nought.

    Attributes:
        notch_end: the notch's depth at the piece's end, the same as `notch_depth` where the wall is in plane; None
            where it was not kept.
        tilt: None for an upright blade, or where it was not kept.
    """

    cut: CutKind
    mitre: float
    bevel: float
    long_edge: str | None
    notch_depth: Fraction
    notch_length: Fraction
    notch_end: Fraction | None = None
    tilt: str | None = None


class SawnOut(Value, frozen=True):
    """What is sawn out of the back edge. Attributes: start and end along the piece, and how deep at each."""

    start: Fraction
    end: Fraction
    depth: Fraction
    end_depth: Fraction


class PieceShape(Value, frozen=True):
    """A piece as it lies on the saw, its lengths rounded as they were marked.

    Attributes:
        length: its farthest extent along the stick.
        width: across the face.
        ripped: whether its width was ripped, so that it can be ripped again.
        taper: the width at each end, where it was ripped to a taper.
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


def shape_of(part: Part, rounding: Rounding) -> PieceShape:
    """A part as it will lie on the saw."""
    return PieceShape(
        part.profile,
        round_to(part.overall, rounding),
        round_to(part.width, rounding),
        part.thickness,
        part.rip_width is not None,
        _end_of(part.ends[0], rounding),
        _end_of(part.ends[1], rounding),
        part.taper and (round_to(part.taper[0], rounding), round_to(part.taper[1], rounding)),
        tuple(_sawn_out(cutout, rounding) for cutout in part.cutouts),
    )


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
        and _same_where_kept(one.tilt, other.tilt)
        and abs(one.mitre - other.mitre) <= ANGLE_SLACK
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
        end.cut, float(end.mitre), float(end.bevel), end.long_edge, depth, length, end_depth, end.tilt
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
