"""Casing: legs, head and, in a picture frame, the sill piece."""

from __future__ import annotations

from longpoint.geometry.inputs import Casing, Foot, HeadStyle, Opening
from longpoint.geometry.kernel import ZERO, Frame, meet, saw_angle
from longpoint.geometry.parts import CutKind, End, Hand, Mark, Part, PartKind, Step
from longpoint.geometry.value import Value
from longpoint.lengths import Fraction, Real

JIG_ANGLE = 50


class CasedSide(Value, frozen=True):
    """One side of the frame as it is cased.

    Attributes:
        name: left, right, head, sill, or "head 1", "head 2" ... along a head of several pieces.
        reveal: jamb left showing.
        casing: the stock; None on the line the trim stands on.
        outer: how far the casing's outside edge lies outside the jamb: reveal + width.
    """

    name: str
    reveal: Fraction
    casing: Casing | None
    outer: Fraction


def _cased(name: str, reveal: Fraction, casing: Casing) -> CasedSide:
    return CasedSide(name, reveal, casing, reveal + casing.width)


class Reach(Value, frozen=True):
    """How far a piece runs past the jamb's corner, at its inner and at its outer edge, and by which rule."""

    inner: Real
    outer: Real
    rule: str
    inputs: tuple[tuple[str, Real], ...]


def base_line(opening: Opening) -> Fraction:
    """How far below the base reading the legs end (negative: above it)."""
    if opening.foot is Foot.FLOOR:
        return -opening.trim.floor_clearance
    if opening.foot is Foot.PLINTH and opening.trim.plinth is not None:
        return -opening.trim.plinth.height
    return ZERO


def cased_sides(opening: Opening, frame: Frame) -> tuple[CasedSide, ...]:
    """Each side of the frame with its own reveal and casing."""
    trim, own = opening.trim, opening.reveals

    def reveal(value: Fraction | None) -> Fraction:
        return trim.reveal if value is None else value

    last = len(frame.sides) - 1
    heads = last - 2
    head_casing = trim.head_casing or trim.casing
    if opening.foot is Foot.PICTURE_FRAME:
        sides = [_cased("sill", reveal(own.sill), trim.casing)]
    else:
        base = base_line(opening)
        sides = [CasedSide("base", base, None, base)]
    sides.append(_cased("right", reveal(own.right), trim.casing))
    for number in range(1, heads + 1):
        name = "head" if heads == 1 else f"head {number}"
        sides.append(_cased(name, reveal(own.head), head_casing))
    sides.append(_cased("left", reveal(own.left), trim.casing))
    return tuple(sides)


def casing_parts(opening: Opening, frame: Frame, sides: tuple[CasedSide, ...]) -> tuple[Part, ...]:
    """Every cased side's piece, in the order right, head, left (and sill last in a picture frame)."""
    order = [*range(1, len(sides)), 0]
    return tuple(_piece(opening, frame, sides, index) for index in order if sides[index].casing)


def _reach(opening: Opening, frame: Frame, sides: tuple[CasedSide, ...], own: int, other: int) -> Reach:
    at = frame.corners[min(own, other)] if abs(own - other) == 1 else frame.corners[-1]
    mine, theirs = sides[own], sides[other]
    if theirs.casing is None:
        inner, outer = meet(at, mine.reveal, theirs.reveal), meet(at, mine.outer, theirs.reveal)
        return Reach(inner, outer, _STANDS[opening.foot], ((_BASE_INPUT[opening.foot], -theirs.reveal),))
    if opening.trim.head_style is HeadStyle.BUTTED and "head" in (mine.name, theirs.name):
        if theirs.name == "head":
            inner, outer = meet(at, mine.reveal, theirs.reveal), meet(at, mine.outer, theirs.reveal)
            return Reach(
                inner, outer, "up to the underside of the head: its reveal", (("head reveal", theirs.reveal),)
            )
        end = meet(at, mine.reveal, theirs.outer) + opening.trim.overhang
        inputs = (
            (f"{theirs.name} reveal", theirs.reveal),
            (f"{theirs.name} casing width", theirs.casing.width),
            ("overhang", opening.trim.overhang),
        )
        return Reach(end, end, f"over the {theirs.name} leg: its reveal + casing width + overhang", inputs)
    return Reach(
        meet(at, mine.reveal, theirs.reveal),
        meet(at, mine.outer, theirs.outer),
        f"to the mitre with the {theirs.name}: short point its reveal, long point its reveal + casing width",
        ((f"{theirs.name} reveal", theirs.reveal), (f"{theirs.name} casing width", theirs.casing.width)),
    )


_STANDS = {
    Foot.STOOL: "square on the stool: nothing added",
    Foot.FLOOR: "to the floor, less the clearance",
    Foot.PLINTH: "onto the plinth block, less its height",
    Foot.PICTURE_FRAME: "",
}
_BASE_INPUT = {
    Foot.STOOL: "stool top",
    Foot.FLOOR: "floor clearance",
    Foot.PLINTH: "plinth height",
    Foot.PICTURE_FRAME: "",
}
_KINDS = {"right": PartKind.CASING_LEG, "left": PartKind.CASING_LEG, "sill": PartKind.CASING_SILL}
# The end a leg starts and finishes at, going anticlockwise round the frame as seen from the room.
_LEG_ENDS = {"right": ("foot", "head"), "left": ("head", "foot")}


def _piece(opening: Opening, frame: Frame, sides: tuple[CasedSide, ...], index: int) -> Part:
    me = sides[index]
    casing = me.casing
    assert casing is not None
    start = _reach(opening, frame, sides, index, index - 1 if index else len(sides) - 1)
    finish = _reach(opening, frame, sides, index, (index + 1) % len(sides))
    jamb = frame.sides[index]
    inner = jamb + start.inner + finish.inner
    outer = jamb + start.outer + finish.outer
    over_start = max(start.outer, start.inner)
    over_finish = max(finish.outer, finish.inner)
    # Other ends go by the side they meet: along a head of many pieces some stand upright or lean outwards.
    meets = sides[index - 1].name, sides[(index + 1) % len(sides)].name
    starts_at, finishes_at = _LEG_ENDS.get(me.name, meets)
    # Outer edge against the fence puts the end a side finishes at on the saw's left.
    ends = (
        _end(finishes_at, Hand.LEFT, finish, casing.width),
        _end(starts_at, Hand.RIGHT, start, casing.width),
    )
    kind = _KINDS.get(me.name, PartKind.CASING_HEAD)
    return Part(
        kind=kind,
        opening=opening.mark,
        side=me.name,
        profile=casing.profile,
        short_point=inner,
        long_point=outer,
        overall=outer
        if over_start is start.outer and over_finish is finish.outer
        else jamb + over_start + over_finish,
        width=casing.width,
        thickness=casing.thickness,
        ends=ends,
        marks=_marks(kind, me.name, jamb, over_finish),
        how=_how(me, jamb, start, finish),
        notes=_notes(ends),
    )


def _end(at: str, on_saw: Hand, reach: Reach, width: Fraction) -> End:
    degrees = saw_angle(reach.outer - reach.inner, width)
    if degrees == 0:
        return End(at, on_saw)
    outer_long = degrees > 0
    # The table swings so that the cut runs from the long point back into the piece.
    inward = Hand.RIGHT if on_saw is Hand.LEFT else Hand.LEFT
    return End(
        at,
        on_saw,
        CutKind.MITRE,
        mitre=degrees if outer_long else -degrees,
        swing=inward if outer_long else on_saw,
        long_edge="outer" if outer_long else "inner",
    )


def _marks(kind: PartKind, name: str, jamb: Real, over_finish: Real) -> tuple[Mark, ...]:
    if kind is PartKind.CASING_LEG:
        head_jamb = over_finish if name == "right" else jamb + over_finish
        return (Mark("underside of head jamb", head_jamb),)
    return (Mark("centre line of opening", over_finish + jamb / 2),)


_READINGS = {"left": "left height", "right": "right height", "sill": "jamb width", "head": "head width"}


def _how(me: CasedSide, jamb: Real, start: Reach, finish: Reach) -> tuple[Step, ...]:
    name = _READINGS.get(me.name) or f"{me.name} side"
    rule = f"{name}; {start.rule}; {finish.rule}"
    return (Step("length", rule, ((name, jamb), *start.inputs, *finish.inputs)),)


def _notes(ends: tuple[End, End]) -> tuple[str, ...]:
    return tuple(
        f"The {end.at} mitre is sharper than most saws turn; use a jig or a hand saw and a pattern."
        for end in ends
        if end.mitre > JIG_ANGLE
    )
