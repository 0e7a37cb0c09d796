"""What is left to cut of a house when pieces have been cut already, some of them to readings that no longer hold."""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping, Sequence

from longpoint.geometry import CutKind, End, Part
from longpoint.geometry.value import Value
from longpoint.lengths import Fraction, Rounding, round_to
from longpoint.shop.house import BuiltOpening, piece_key

SLACK = 1e-6
"""Inches within which a float is taken to fit: far below a saw's kerf, far above a float's error."""
ANGLE_SLACK = 0.05
"""Degrees within which a cut end is the end that is needed: finer than a saw's scale can be set."""


class EndCut(Value, frozen=True):
    """One end of a piece as it was cut. Attributes as in `longpoint.geometry.End`; the notch in inches or nought."""

    cut: CutKind
    mitre: float
    bevel: float
    long_edge: str | None
    notch_depth: Fraction
    notch_length: Fraction


class PieceShape(Value, frozen=True):
    """A piece as it lies on the saw, its lengths rounded as they were marked.

    Attributes:
        length: its farthest extent along the stick.
        width: across the face.
        ripped: whether its width was ripped, so that it can be ripped again.
        taper: the width at each end, where it was ripped to a taper.
    """

    profile: str
    length: Fraction
    width: Fraction
    thickness: Fraction
    ripped: bool
    left: EndCut
    right: EndCut
    taper: tuple[Fraction, Fraction] | None = None


class CutPiece(Value, frozen=True):
    """A piece that lies in the shop or hangs on the wall.

    Attributes:
        slot: which part it was cut for: the opening's id, the part's key, which of several alike.
        rounding: how its lengths were rounded.
    """

    id: str
    slot: tuple[str, str, int]
    shape: PieceShape
    rounding: Rounding


class Need(Value, frozen=True):
    """One piece the house needs. Attributes: its slot, the opening's index, the part, its shape as now needed."""

    slot: tuple[str, str, int]
    index: int
    part: Part
    shape: PieceShape


class Wrong(Value, frozen=True):
    """A piece that is not what the house needs any more.

    Attributes:
        piece: as it was cut.
        need: what its place needs now; None when that place is gone.
        recut: what it can be cut again into; None when it is too short for anything needed.
    """

    piece: CutPiece
    need: Need | None
    recut: Need | None


class Remaining(Value, frozen=True):
    """What is left to do.

    Attributes:
        right: pieces that are what they should be.
        wrong: those that are not.
        left: for each piece of the plans, by its key, which of those alike must be cut from stock.
        again: needs to cut from stock whose place had a piece already, spoiled or wrong.
    """

    right: tuple[CutPiece, ...]
    wrong: tuple[Wrong, ...]
    left: Mapping[str, tuple[int, ...]]
    again: tuple[Need, ...]


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
    )


def remaining(
    openings: Sequence[BuiltOpening],
    ids: Sequence[str],
    rounding: Rounding,
    pieces: Iterable[CutPiece],
    spoiled: Iterable[tuple[str, str, int]] = (),
) -> Remaining:
    """What is left to cut.

    Args:
        openings: The house as it is now.
        ids: Each opening's id.
        rounding: How lengths are rounded now.
        pieces: What was cut and is not spoiled, at most one for each slot.
        spoiled: Slots whose piece was spoiled.
    """
    needs = {need.slot: need for need in _needs(openings, ids, rounding)}
    right, misfits = [], []
    met: set[tuple[str, str, int]] = set()
    for piece in pieces:
        need = needs.get(piece.slot)
        if need is not None and alike(shape_of(need.part, piece.rounding), piece.shape):
            right.append(piece)
            met.add(piece.slot)
        else:
            misfits.append(piece)
    taken = _recut([need for slot, need in needs.items() if slot not in met], misfits)
    wrong = tuple(Wrong(piece, needs.get(piece.slot), taken.get(piece.id)) for piece in misfits)
    met |= {need.slot for need in taken.values()}
    had = {piece.slot for piece in misfits} | set(spoiled)
    return Remaining(
        tuple(right),
        wrong,
        _left(needs.values(), met),
        tuple(need for slot, need in needs.items() if slot in had and slot not in met),
    )


def alike(one: PieceShape, other: PieceShape) -> bool:
    """Whether one piece does for the other."""
    return (
        (one.profile, one.length, one.width, one.thickness, one.taper)
        == (other.profile, other.length, other.width, other.thickness, other.taper)
        and same_end(one.left, other.left)
        and same_end(one.right, other.right)
    )


def same_end(one: EndCut, other: EndCut) -> bool:
    """Whether two ends are cut alike."""
    return (
        (one.cut, one.long_edge, one.notch_depth, one.notch_length)
        == (other.cut, other.long_edge, other.notch_depth, other.notch_length)
        and abs(one.mitre - other.mitre) <= ANGLE_SLACK
        and abs(one.bevel - other.bevel) <= ANGLE_SLACK
    )


def can_be_recut(piece: PieceShape, need: PieceShape) -> bool:
    """Whether a piece can be cut again into what is needed, lying as it lay.

    A piece is never turned over or end for end: its profile has a thick edge, and its face is finished.
    """
    if (piece.profile, piece.thickness, piece.taper) != (need.profile, need.thickness, None):
        return (
            False  # a tapered piece does for nothing else, and a taper is ripped from stock of its full width
        )
    if piece.width != need.width and not (piece.ripped and need.ripped and piece.width > need.width):
        return False
    if _is_plain(piece) and _is_plain(need):
        return _lies_within(piece, need)
    length = float(need.length) - SLACK
    whole, left, right = float(piece.length), _waste(piece.left, piece), _waste(piece.right, piece)
    return (
        length <= whole - left - right
        or (same_end(piece.left, need.left) and length <= whole - right)
        or (same_end(piece.right, need.right) and length <= whole - left)
    )


def _needs(openings: Sequence[BuiltOpening], ids: Sequence[str], rounding: Rounding) -> Iterable[Need]:
    for index, (one, id) in enumerate(zip(openings, ids, strict=True)):
        for part in one.built.parts:
            shape = shape_of(part, rounding)
            for instance in range(1, one.count + 1):
                yield Need((id, part.key, instance), index, part, shape)


def _recut(needs: list[Need], pieces: list[CutPiece]) -> dict[str, Need]:
    """Which piece is cut again into what: the longest needs first, each from the shortest piece that does."""
    taken: dict[str, Need] = {}
    spare = sorted(pieces, key=lambda piece: piece.shape.length)
    for need in sorted(needs, key=lambda need: -need.shape.length):
        found = next((piece for piece in spare if can_be_recut(piece.shape, need.shape)), None)
        if found is not None:
            spare.remove(found)
            taken[found.id] = need
    return taken


def _left(needs: Iterable[Need], met: set[tuple[str, str, int]]) -> dict[str, tuple[int, ...]]:
    left: dict[str, list[int]] = {}
    for need in needs:
        instances = left.setdefault(piece_key(need.index, need.part), [])
        if need.slot not in met:
            instances.append(need.slot[2])
    return {key: tuple(instances) for key, instances in left.items()}


def _end_of(end: End, rounding: Rounding) -> EndCut:
    nought = Fraction(0)
    return EndCut(
        end.cut,
        float(end.mitre),
        float(end.bevel),
        end.long_edge,
        nought if end.notch is None else round_to(end.notch.depth, rounding),
        nought if end.notch is None else round_to(end.notch.length, rounding),
    )


def _is_plain(shape: PieceShape) -> bool:
    """Square or mitred across the face at both ends, so that it is a four-sided figure on the face."""
    return all(
        end.notch_length == 0
        and (end.cut is CutKind.SQUARE or (end.cut is CutKind.MITRE and end.long_edge in ("outer", "inner")))
        for end in (shape.left, shape.right)
    )


def _lies_within(piece: PieceShape, need: PieceShape) -> bool:
    """Whether the needed figure, slid along the stick, lies within the piece's, along both edges."""
    has, wants = _edges(piece), _edges(need)
    least = max(mine[0] - other[0] for mine, other in zip(has, wants, strict=True))
    most = min(mine[1] - other[1] for mine, other in zip(has, wants, strict=True))
    return least <= most + SLACK


def _edges(shape: PieceShape) -> tuple[tuple[float, float], tuple[float, float]]:
    """Where the outer and the inner edge begin and end along the stick."""
    length, left, right = float(shape.length), _run(shape.left, shape), _run(shape.right, shape)
    outer = [0.0, length]
    inner = [0.0, length]
    (inner if shape.left.long_edge == "outer" else outer)[0] += left
    (inner if shape.right.long_edge == "outer" else outer)[1] -= right
    return (outer[0], outer[1]), (inner[0], inner[1])


def _run(end: EndCut, shape: PieceShape) -> float:
    return float(shape.width) * math.tan(math.radians(end.mitre))


def _waste(end: EndCut, shape: PieceShape) -> float:
    """How much must come off an end until all of it is whole, square stock."""
    across = _run(end, shape) + float(shape.thickness) * math.tan(math.radians(end.bevel))
    return max(across, float(end.notch_length))
