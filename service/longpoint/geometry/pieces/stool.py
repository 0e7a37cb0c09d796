"""The stool: its length with horns, its ripped width, its notches and its ends."""

from __future__ import annotations

from functools import lru_cache
from typing import Protocol

from longpoint.geometry.frame.kernel import ZERO, Frame
from longpoint.geometry.frame.sides import CasedSide, spread
from longpoint.geometry.piece import Cutout, End, Hand, Mark, Notch, Piece, Step
from longpoint.geometry.piece_names import PieceKind
from longpoint.geometry.pieces.returns import flat_return, front_miter
from longpoint.geometry.readings.inputs import Horns, Opening
from longpoint.geometry.readings.outline import Mull
from longpoint.geometry.readings.trim import Stool, StoolEnds, Trim
from longpoint.geometry.value import KEPT
from longpoint.lengths import Fraction, Real
from longpoint.texts import Sentence, say
from longpoint.values import Value

SCRIBED = say("note", "stool.scribed")
RETURNED = say("note", "stool.returned")
OUT_OF_PLANE = say("note", "stool.out-of-plane")


class Depths(Protocol):
    """How deep the jamb is: at the jambs, and at the horns' ends where the wall is out of plane."""

    @property
    def left_depth(self) -> Fraction | None: ...
    @property
    def right_depth(self) -> Fraction | None: ...
    @property
    def left_horn_depth(self) -> Fraction | None: ...
    @property
    def right_horn_depth(self) -> Fraction | None: ...


class _Given(Value, frozen=True):
    """What a stool follows from, beside the width of its jamb and what stands on it."""

    trim: Trim
    horns: Horns
    left_depth: Fraction
    right_depth: Fraction
    left_horn_depth: Fraction | None
    right_horn_depth: Fraction | None
    mulls: tuple[Mull, ...]
    least_depth: Fraction


def nosing_to_wall(trim: Trim) -> Fraction:
    """How far the stool stands off the wall: over the apron (or what would be one) and past it by the nosing."""
    assert trim.stool is not None
    under = trim.apron or trim.casing
    return (under.thickness if under else Fraction(0)) + trim.stool.nosing


def deepest(depths: Depths) -> Fraction:
    """The deepest of the depths that were read."""
    left, right = depths.left_depth, depths.right_depth
    assert left is not None
    assert right is not None
    depth = left if left >= right else right
    for at_horn in (depths.left_horn_depth, depths.right_horn_depth):
        if at_horn is not None and at_horn > depth:
            depth = at_horn
    return depth


def stool_width(trim: Trim, depths: Depths, least_depth: Fraction = ZERO) -> Fraction:
    """The width that a stool is ripped to, for depths that were read.

    Args:
        trim: whose stool it is.
        depths: as they were read.
        least_depth: what it has to reach at least, where it goes on under deeper openings.
    """
    assert trim.stool is not None
    # Plain, since taking a length as it was sent from a fraction takes several times as long.
    return max(deepest(depths), least_depth) + nosing_to_wall(trim) - +trim.stool.sash_clearance


def stool_pieces(
    opening: Opening, frame: Frame, sides: tuple[CasedSide, ...], least_depth: Fraction = ZERO
) -> tuple[Piece, ...]:
    """The stool of an opening whose trim has one and whose jamb depths were read, then its returns.

    `least_depth` is as in `stool_width`.
    """
    readings, outline = opening.readings, opening.outline
    assert outline.left_depth is not None
    assert outline.right_depth is not None
    given = _Given(
        opening.trim,
        opening.horns,
        outline.left_depth,
        outline.right_depth,
        readings.left_horn_depth,
        readings.right_horn_depth,
        outline.mulls,
        least_depth,
    )
    left_spread, right_spread = spread(opening, frame, sides)
    make = _pieces if isinstance(left_spread, float) or isinstance(right_spread, float) else _kept
    return make(given, frame.sides[0], left_spread, right_spread)


def _pieces(given: _Given, jamb: Real, left_spread: Real, right_spread: Real) -> tuple[Piece, ...]:
    stool = given.trim.stool
    assert stool is not None
    left_past, right_past = _horn(given.horns.left, stool), _horn(given.horns.right, stool)
    # Exact lengths stand to the left of what may be real: that sum is ten times as quick as the other.
    left_horn, right_horn = left_past + left_spread, right_past + right_spread
    length = jamb + left_horn + right_horn
    width = stool_width(given.trim, given, given.least_depth)
    notches = (
        _notch(stool, given.left_depth, given.left_horn_depth, left_horn),
        _notch(stool, given.right_depth, given.right_horn_depth, right_horn),
    )
    returned = stool.ends is StoolEnds.MITERED_RETURN
    # The nosing lies away from the fence, so that the notches in the back edge are sawn against it.
    ends = (_end("left", Hand.LEFT, notches[0], returned), _end("right", Hand.RIGHT, notches[1], returned))
    body = Piece(
        kind=PieceKind.STOOL,
        side="",
        profile=stool.profile,
        short_point=length - sum(_off_wall(width, notch) for notch in notches) if returned else length,
        long_point=length,
        overall=length,
        width=width,
        thickness=stool.thickness,
        rip_width=width,
        ends=ends,
        marks=(
            Mark("left casing outside edge", left_past),
            Mark("left jamb face", left_horn),
            Mark("center line of opening", jamb / 2 + left_horn),
            Mark("right jamb face", jamb + left_horn),
            Mark("right casing outside edge", -right_past + length),
        ),
        how=_how(given, jamb, (left_spread, right_spread), (left_past, right_past)),
        notes=_notes(stool, given),
        cutouts=_cutouts(given.mulls, left_horn, notches) if given.mulls else (),
    )
    if not returned:
        return (body,)
    kind, thickness = PieceKind.STOOL_RETURN, stool.thickness
    return (
        body,
        flat_return(kind, Hand.LEFT, stool.profile, _off_wall(width, notches[0]), thickness),
        flat_return(kind, Hand.RIGHT, stool.profile, _off_wall(width, notches[1]), thickness),
    )


_kept = lru_cache(KEPT, typed=True)(_pieces)


def _cutouts(mulls: tuple[Mull, ...], left_horn: Real, notches: tuple[Notch, Notch]) -> tuple[Cutout, ...]:
    """Where the stool passes a mull, as deep as the notches at its ends."""
    left, right = notches[0].depth, notches[1].depth
    return tuple(
        Cutout(left_horn + mull.at, mull.width, left, None if left == right else right) for mull in mulls
    )


def _off_wall(width: Real, notch: Notch) -> Real:
    """How far a horn stands off the wall at its end."""
    return width - (notch.depth if notch.end_depth is None else notch.end_depth)


def _horn(own: Fraction | None, stool: Stool) -> Fraction:
    return stool.horn if own is None else own


def _notch(stool: Stool, depth: Fraction, at_end: Fraction | None, length: Real) -> Notch:
    less = stool.sash_clearance + stool.scribe
    return Notch(depth - less, length, None if at_end is None else at_end - less)


def _end(at: str, hand: Hand, notch: Notch, returned: bool) -> End:
    if not returned:
        return End(at, hand, notch=notch)
    mitered = front_miter(at, hand)
    return End(
        at,
        hand,
        mitered.cut,
        mitered.miter,
        mitered.miter_direction,
        long_edge=mitered.long_edge,
        notch=notch,
    )


def _how(
    given: _Given, jamb: Real, spreads: tuple[Real, Real], horns: tuple[Fraction, Fraction]
) -> tuple[Step, ...]:
    stool = given.trim.stool
    assert stool is not None
    under = given.trim.apron or given.trim.casing
    past: tuple[tuple[str, Real], ...] = (("horn", horns[0]),)
    if horns[0] != horns[1]:
        past = (("left horn", horns[0]), ("right horn", horns[1]))
    return (
        Step(
            "length",
            "jamb width + at each end (reveal + casing width + horn)",
            (
                ("jamb width", jamb),
                ("left reveal + casing width", spreads[0]),
                ("right reveal + casing width", spreads[1]),
                *past,
            ),
        ),
        Step(
            "rip_width",
            "jamb depth + apron thickness + nosing - sash clearance",
            (
                ("jamb depth", max(deepest(given), given.least_depth)),
                ("apron thickness", under.thickness if under else Fraction(0)),
                ("nosing", stool.nosing),
                ("sash clearance", stool.sash_clearance),
            ),
        ),
        Step(
            "notches",
            "depth: jamb depth at that end - sash clearance - scribe; length: reveal + casing width + horn",
            _notch_inputs(given, stool),
        ),
    )


def _notch_inputs(given: _Given, stool: Stool) -> tuple[tuple[str, Real], ...]:
    inputs: tuple[tuple[str, Real], ...] = (
        ("left depth", given.left_depth),
        ("right depth", given.right_depth),
    )
    if given.left_horn_depth is not None:
        inputs += (("left depth at horn", given.left_horn_depth),)
    if given.right_horn_depth is not None:
        inputs += (("right depth at horn", given.right_horn_depth),)
    return (*inputs, ("scribe", stool.scribe)) if stool.scribe else inputs


def _notes(stool: Stool, given: _Given) -> tuple[Sentence, ...]:
    notes: list[Sentence] = []
    left, right = given.left_depth, given.right_depth
    if left != right:
        shallow = "left" if left < right else "right"
        notes.append(say("note", "stool.two-depths", end=shallow, by=abs(left - right)))
    if given.left_horn_depth is not None or given.right_horn_depth is not None:
        notes.append(OUT_OF_PLANE)
    if stool.scribe:
        notes.append(SCRIBED)
    if stool.ends is StoolEnds.EASED:
        notes.append(say("note", "stool.eased", radius=stool.ease))
    if stool.ends is StoolEnds.MITERED_RETURN:
        notes.append(RETURNED)
    return tuple(notes)
