"""How far a piece runs past the jamb's corner, and by which rule: onto its foot, to a mitre, a head or a block."""

from __future__ import annotations

from functools import lru_cache

from longpoint.geometry.frame.kernel import SQUARE, Corner, meet
from longpoint.geometry.frame.lean import leaning_reach, leaning_stand
from longpoint.geometry.frame.sides import CasedSide
from longpoint.geometry.readings.inputs import Foot
from longpoint.geometry.readings.trim import HeadStyle, Trim
from longpoint.geometry.value import KEPT
from longpoint.lengths import Fraction, Real
from longpoint.values import Value

# An enumeration's member costs more to fetch than to compare.
_BUTTED, _CORNER_BLOCKS = HeadStyle.BUTTED, HeadStyle.CORNER_BLOCKS


class Reach(Value, frozen=True):
    """How far a piece runs past the jamb's corner, at its inner and at its outer edge, and by which rule.

    Attributes:
        bevel: degrees the cut leans through the thickness, positive where its face is the longer; nought upright.
    """

    inner: Real
    outer: Real
    rule: str
    inputs: tuple[tuple[str, Real], ...]
    bevel: float = 0.0


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


def stand(foot: Foot, at: Corner, mine: CasedSide, base: CasedSide) -> Reach:
    """Down to the line the trim stands on."""
    inner, outer = meet(at, mine.reveal, base.reveal), meet(at, mine.outer, base.reveal)
    return Reach(inner, outer, _STANDS[foot], _stand_inputs(foot, base))


@lru_cache(KEPT)
def _stand_inputs(foot: Foot, base: CasedSide) -> tuple[tuple[str, Real], ...]:
    return ((_BASE_INPUT[foot], -base.reveal),)


def mitre(at: Corner, mine: CasedSide, theirs: CasedSide) -> Reach:
    """To where the two inner and the two outer lines cross."""
    rule, inputs = _mitre_with(theirs)
    return Reach(meet(at, mine.reveal, theirs.reveal), meet(at, mine.outer, theirs.outer), rule, inputs)


@lru_cache(KEPT)
def _mitre_with(side: CasedSide) -> tuple[str, tuple[tuple[str, Real], ...]]:
    """The rule of a mitre with a side, and its figures: the sides of a trim come again in opening after opening."""
    name = side.name
    return (
        f"to the mitre with the {name}: short point its reveal, long point its reveal + casing width",
        ((f"{name} reveal", side.reveal), (f"{name} casing width", side.outer - side.reveal)),
    )


def under_head(at: Corner, mine: CasedSide, theirs: CasedSide) -> Reach:
    """A leg up to the underside of what lies over it."""
    return Reach(
        meet(at, mine.reveal, theirs.reveal),
        meet(at, mine.outer, theirs.reveal),
        f"up to the underside of the {theirs.name}: its reveal",
        ((f"{theirs.name} reveal", theirs.reveal),),
    )


def over_leg(at: Corner, theirs: CasedSide, offset: Real, overhang: Fraction) -> Reach:
    """Over a leg and past its outside edge, cut square; `offset` is where the lower edge lies."""
    end = meet(at, offset, theirs.outer) + overhang
    return Reach(
        end,
        end,
        f"over the {theirs.name} leg: its reveal + casing width + overhang",
        (
            (f"{theirs.name} reveal", theirs.reveal),
            (f"{theirs.name} casing width", theirs.outer - theirs.reveal),
            ("overhang", overhang),
        ),
    )


def to_block(at: Corner, mine: CasedSide, theirs: CasedSide, block: Fraction) -> Reach:
    """To the edge of a block whose edges lie along the head or the sill: centred across it, and on the leg where that
    ends below it."""
    proud = (block - (theirs.outer - theirs.reveal)) / 2
    inputs = ((f"{theirs.name} reveal", theirs.reveal), ("block past the casing's edge", proud))
    rule = f"to the corner block: the {theirs.name} reveal less what the block stands past the casing's edge"
    if mine.name in LEVEL:
        line = block_line(mine, block)
        end = -block / 2 + meet(at, line, (theirs.reveal + theirs.outer) / 2)
        return Reach(end, end, rule, inputs)
    line = block_line(theirs, block)
    return Reach(meet(at, mine.reveal, line), meet(at, mine.outer, line), rule, inputs)


LEVEL = ("head", "sill")


def block_line(level: CasedSide, block: Fraction) -> Fraction:
    """How far outside the head's or the sill's jamb the edge of its blocks lies on which a leg ends."""
    return level.reveal - (block - (level.outer - level.reveal)) / 2


def casing_reach(
    trim: Trim, foot: Foot, at: Corner, mine: CasedSide, theirs: CasedSide, rise: Fraction
) -> Reach:
    """Where a piece of casing ends at a corner; `rise` is how far its outside edge stands off the jamb's plane."""
    if theirs.casing is None:
        stands = stand(foot, at, mine, theirs)
        if not rise or at is SQUARE:
            return stands
        inner, outer, bevel = leaning_stand(at, mine, theirs.reveal, rise)
        return Reach(inner, outer, f"{stands.rule}, leaning on the wall", stands.inputs, bevel)
    if trim.head_style is _BUTTED and "head" in (mine.name, theirs.name):
        if theirs.name == "head":
            return under_head(at, mine, theirs)
        fillet = trim.fillet.height if trim.fillet else 0
        return over_leg(at, theirs, mine.reveal + fillet, trim.overhang)
    if trim.head_style is _CORNER_BLOCKS and trim.corner_block is not None:
        return to_block(at, mine, theirs, trim.corner_block.width)
    if rise:
        inner, outer, bevel = leaning_reach(at, mine, theirs, rise)
        plain = mitre(at, mine, theirs)
        return Reach(
            inner, outer, f"{plain.rule}, leaning on the wall", (*plain.inputs, ("wall proud", rise)), bevel
        )
    return mitre(at, mine, theirs)
