"""Miters whose two pieces do not meet: of two profiles, of two thicknesses, or leaning and of two widths."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from longpoint.geometry.checks.findings import Finding, Offer
from longpoint.geometry.frame.sides import CasedSide, one_molding
from longpoint.geometry.readings.trim import Casing, Face, HeadStyle, Trim
from longpoint.texts import say

CODE = "miter-does-not-meet"
_BLOCKS = Offer("corner_blocks", say("offer", "miter.corner-blocks"))


def miter_findings(trim: Trim, sides: Sequence[CasedSide]) -> Iterator[Finding]:
    """What does not meet at a miter: one finding for the head, one for the sill of a picture frame."""
    if trim.head_style is not HeadStyle.MITERED:
        return
    told: set[str] = set()
    for one, other in zip(sides, (*sides[1:], sides[0]), strict=True):
        where = "sill" if "sill" in (one.name, other.name) else "head"
        # The head or the sill is named first, a leg beside it.
        first, second = (other, one) if one.name in ("left", "right") else (one, other)
        if where not in told and (found := _found(first, second, where)) is not None:
            told.add(where)
            yield found


def _found(one: CasedSide, other: CasedSide, where: str) -> Finding | None:
    mine, theirs = one.casing, other.casing
    if mine is None or theirs is None:
        return None
    thicker = abs(mine.thickness - theirs.thickness)
    if one_molding(one, other):
        if one.width == other.width or one.ripped_last or other.ripped_last:
            return None
        detail = say("finding", "miter.leaning", one=one.name, other=other.name)
        ripped = next(side.name for side in (one, other) if side.ripped).split()[0]
        offers = (_BLOCKS, Offer("same_widths", say("offer", "miter.same-widths")))
        by = abs(one.width - other.width)
        return Finding(CODE, where, detail, by, offers, "", ("widths", ripped))
    if mine.face is theirs.face is Face.FLAT:
        if not thicker:
            return None
        detail = say(
            "finding",
            "miter.thicknesses",
            one=one.name,
            other=other.name,
            mine=+mine.thickness,
            theirs=+theirs.thickness,
        )
    else:
        what = tuple(_differ(one, other, mine, theirs))
        detail = say("finding", "miter.profiles", one=one.name, other=other.name, what=what)
    butted = () if where == "sill" else (Offer("butt_head", say("offer", "miter.butt-head")),)
    band = (Offer("back_band", say("offer", "miter.back-band")),) if thicker else ()
    flat = (
        () if mine.face is theirs.face is Face.FLAT else (Offer("say_flat", say("offer", "miter.say-flat")),)
    )
    offers = (*flat, Offer("one_stock", say("offer", "miter.one-stock")), _BLOCKS, *butted, *band)
    by = max(thicker, abs((one.sold or one.width) - (other.sold or other.width)))
    field = ("trim", "bottom_casing" if where == "sill" else "head_casing")
    return Finding(CODE, where, detail, by, offers, "", field)


def _differ(one: CasedSide, other: CasedSide, mine: Casing, theirs: Casing) -> Iterator[str]:
    if mine.profile != theirs.profile:
        yield "profile"
    if mine.face is not theirs.face:
        yield "face"
    if one.sold != other.sold:
        yield "width"
    if mine.thickness != theirs.thickness:
        yield "thickness"
