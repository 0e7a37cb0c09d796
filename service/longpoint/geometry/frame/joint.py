"""How far a piece runs past the jamb's corner, and by which rule: onto its foot, to a miter, a head or a block."""

from __future__ import annotations

from functools import lru_cache

from longpoint.geometry.frame.kernel import SQUARE, ZERO, Corner, meet
from longpoint.geometry.frame.lean import leaning_reach, leaning_stand
from longpoint.geometry.frame.sides import CasedSide, one_molding
from longpoint.geometry.readings.inputs import Bottom
from longpoint.geometry.readings.trim import HeadStyle, Trim
from longpoint.geometry.value import KEPT
from longpoint.lengths import Fraction, Real
from longpoint.values import Value

# An enumeration's member costs more to fetch than to compare.
_BUTTED, _CORNER_BLOCKS = HeadStyle.BUTTED, HeadStyle.CORNER_BLOCKS


class CornerReach(Value, frozen=True):
    """How far a piece runs past the jamb's corner, at its inner and at its outer edge, and by which rule.

    Attributes:
        bevel: degrees the cut leans through the thickness, positive where its face is the longer; zero upright.
        mitered: how far the outer edge runs past the corner as it is mitered, where what lies beyond the neighbor's
            outside edge is trimmed off afterwards; None where nothing is.
        trimmed: how wide the neighbor is that much narrower; zero where nothing is trimmed.
    """

    inner: Real
    outer: Real
    rule: str
    inputs: tuple[tuple[str, Real], ...]
    bevel: float = 0.0
    mitered: Real | None = None
    trimmed: Fraction = ZERO

    def at_width(self, width: Fraction, sold: Fraction) -> Real:
        """How far the outer edge of the stock, `sold` wide, runs past the corner before it is ripped to `width`."""
        edge = self.outer if self.mitered is None else self.mitered
        return edge if sold == width else self.inner + (edge - self.inner) / width * sold


_STANDS = {
    Bottom.STOOL: "square on the stool: nothing added",
    Bottom.FLOOR: "to the floor, less the clearance",
    Bottom.PLINTH: "onto the plinth block, less its height",
    Bottom.CASING: "",
}
_BASE_INPUT = {
    Bottom.STOOL: "stool top",
    Bottom.FLOOR: "floor clearance",
    Bottom.PLINTH: "plinth height",
    Bottom.CASING: "",
}


def stand(foot: Bottom, at: Corner, mine: CasedSide, base: CasedSide) -> CornerReach:
    """Down to the line the trim stands on."""
    inner, outer = meet(at, mine.reveal, base.reveal), meet(at, mine.outer, base.reveal)
    return CornerReach(inner, outer, _STANDS[foot], _stand_inputs(foot, base))


@lru_cache(KEPT)
def _stand_inputs(foot: Bottom, base: CasedSide) -> tuple[tuple[str, Real], ...]:
    return ((_BASE_INPUT[foot], -base.reveal),)


def miter(at: Corner, mine: CasedSide, theirs: CasedSide) -> CornerReach:
    """To where the two inner and the two outer lines cross."""
    # Only then can two pieces of one molding be of two widths; it is quicker to see.
    if (mine.ripped_last or theirs.ripped_last) and mine.width != theirs.width and one_molding(mine, theirs):
        return _on_bisector(at, mine, theirs)
    rule, inputs = _miter_with(theirs)
    return CornerReach(meet(at, mine.reveal, theirs.reveal), meet(at, mine.outer, theirs.outer), rule, inputs)


def _on_bisector(at: Corner, mine: CasedSide, theirs: CasedSide) -> CornerReach:
    """Molded pieces of one stock, one of them narrower: the members of the profile meet on the corner's bisector. What
    of the wider one lies beyond the narrower one's outside edge is trimmed in line with that."""
    inner = meet(at, mine.reveal, theirs.reveal)
    along: Real = mine.width if at is SQUARE else mine.width * (1 + at.cos) / at.sin
    name = theirs.name
    rule = f"to the miter with the {name} on the corner's bisector: short point its reveal, long point + own width"
    inputs = ((f"{name} reveal", theirs.reveal), ("own width", mine.width))
    if mine.width < theirs.width:
        return CornerReach(inner, inner + along, rule, inputs)
    return CornerReach(
        inner,
        meet(at, mine.outer, theirs.outer),
        f"{rule}; its tip trimmed in line with the {name} casing's outside edge",
        (*inputs, (f"{name} casing width", theirs.width)),
        mitered=inner + along,
        trimmed=mine.width - theirs.width,
    )


@lru_cache(KEPT)
def _miter_with(side: CasedSide) -> tuple[str, tuple[tuple[str, Real], ...]]:
    """The rule of a miter with a side, and its figures: the sides of a trim come again in opening after opening."""
    name = side.name
    return (
        f"to the miter with the {name}: short point its reveal, long point its reveal + casing width",
        ((f"{name} reveal", side.reveal), (f"{name} casing width", side.outer - side.reveal)),
    )


def under_head(at: Corner, mine: CasedSide, theirs: CasedSide) -> CornerReach:
    """A leg up to the underside of what lies over it."""
    return CornerReach(
        meet(at, mine.reveal, theirs.reveal),
        meet(at, mine.outer, theirs.reveal),
        f"up to the underside of the {theirs.name}: its reveal",
        ((f"{theirs.name} reveal", theirs.reveal),),
    )


def over_leg(at: Corner, theirs: CasedSide, offset: Real, overhang: Fraction) -> CornerReach:
    """Over a leg and past its outside edge, cut square; `offset` is where the lower edge lies."""
    end = meet(at, offset, theirs.outer) + overhang
    return CornerReach(
        end,
        end,
        f"over the {theirs.name} leg: its reveal + casing width + overhang",
        (
            (f"{theirs.name} reveal", theirs.reveal),
            (f"{theirs.name} casing width", theirs.outer - theirs.reveal),
            ("overhang", overhang),
        ),
    )


def to_block(at: Corner, mine: CasedSide, theirs: CasedSide, block: Fraction) -> CornerReach:
    """To the edge of a block whose edges lie along the head or the sill: centered across it, and on the leg where that
    ends below it."""
    proud = (block - (theirs.outer - theirs.reveal)) / 2
    inputs = ((f"{theirs.name} reveal", theirs.reveal), ("block past the casing's edge", proud))
    rule = f"to the corner block: the {theirs.name} reveal less what the block stands past the casing's edge"
    if mine.name in LEVEL:
        line = block_line(mine, block)
        end = -block / 2 + meet(at, line, (theirs.reveal + theirs.outer) / 2)
        return CornerReach(end, end, rule, inputs)
    line = block_line(theirs, block)
    return CornerReach(meet(at, mine.reveal, line), meet(at, mine.outer, line), rule, inputs)


LEVEL = ("head", "sill")


def block_line(level: CasedSide, block: Fraction) -> Fraction:
    """How far outside the head's or the sill's jamb the edge of its blocks lies on which a leg ends."""
    return level.reveal - (block - (level.outer - level.reveal)) / 2


def casing_reach(
    trim: Trim, foot: Bottom, at: Corner, mine: CasedSide, theirs: CasedSide, rise: Fraction
) -> CornerReach:
    """Where a piece of casing ends at a corner; `rise` is how far its outside edge stands off the jamb's plane."""
    if theirs.casing is None:
        stands = stand(foot, at, mine, theirs)
        if not rise or at is SQUARE:
            return stands
        inner, outer, bevel = leaning_stand(at, mine, theirs.reveal, rise)
        return CornerReach(inner, outer, f"{stands.rule}, leaning on the wall", stands.inputs, bevel)
    if trim.head_style is _BUTTED and "head" in (mine.name, theirs.name):
        if theirs.name == "head":
            return under_head(at, mine, theirs)
        fillet = trim.fillet.height if trim.fillet else 0
        return over_leg(at, theirs, mine.reveal + fillet, trim.overhang)
    if trim.head_style is _CORNER_BLOCKS and trim.corner_block is not None:
        return to_block(at, mine, theirs, trim.corner_block.width)
    if rise:
        inner, outer, bevel = leaning_reach(at, mine, theirs, rise)
        plain = miter(at, mine, theirs)
        return CornerReach(
            inner, outer, f"{plain.rule}, leaning on the wall", (*plain.inputs, ("wall proud", rise)), bevel
        )
    return miter(at, mine, theirs)
