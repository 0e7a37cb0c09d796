"""What is in the way of the trim, and the trade's answers to it."""

from __future__ import annotations

from longpoint.geometry.checks.findings import Finding, Offer
from longpoint.geometry.frame.kernel import ZERO, Frame
from longpoint.geometry.frame.sides import CasedSide, spread
from longpoint.geometry.readings.inputs import Bottom, Opening
from longpoint.geometry.readings.trim import HeadStyle
from longpoint.lengths import Fraction, Real
from longpoint.texts import Sentence, say

# Common practice, no source: casing ripped below half its width looks like a mistake; it is still offered last.
LEAST_SHARE = Fraction(1, 2)


def obstruction_findings(opening: Opening, frame: Frame, sides: tuple[CasedSide, ...]) -> tuple[Finding, ...]:
    """Every collision of the trim with what was measured around it, each with its answers."""
    clear = opening.readings.clearances
    found: list[Finding] = []
    left_spread, right_spread = spread(opening, frame, sides)
    for name, side, room, at_base in (
        ("left", sides[-1], clear.left, left_spread),
        ("right", sides[1], clear.right, right_spread),
    ):
        if room is not None:
            found += _beside(opening, name, side, room, at_base)
            found += _head_beside(opening, name, side, room)
            found += _block_beside(opening, name, side, room)
    for name, side, gap in (
        ("left", sides[-1], clear.left_neighbor),
        ("right", sides[1], clear.right_neighbor),
    ):
        if gap is not None:
            found += _neighbor(name, side, gap)
            found += _blocks_meet(opening, name, side, gap)
    if clear.above is not None and len(sides) == 4:
        found += _above(opening, sides[2], clear.above)
    if clear.below is not None:
        found += _below(opening, sides[0], clear.below)
    return tuple(found)


def _beside(opening: Opening, name: str, side: CasedSide, room: Fraction, at_base: Real) -> list[Finding]:
    found: list[Finding] = []
    past_casing = room - side.edge
    if past_casing < 0 and side.casing is not None:
        offers = _rip(name, side, room)
        detail = say("finding", "casing.collides", side=name, over=-past_casing, room=room)
        found.append(Finding("casing-collides", name, detail, -past_casing, offers))
    if opening.bottom is not Bottom.STOOL or opening.trim.stool is None:
        return found
    own = opening.horns.left if name == "left" else opening.horns.right
    horn = opening.trim.stool.horn if own is None else own
    over = at_base + horn - room
    if over <= 0:
        return found
    left_over = horn - over
    offers = ()
    if left_over >= 0:
        offers = (
            Offer(
                "shorten_horn",
                say("offer", "stool.shorten-horn", side=name),
                ("horns", name),
                left_over,
                (("horn", left_over),),
            ),
        )
    else:
        offers = (
            Offer(
                "butt_stool",
                say("offer", "stool.butt", side=name),
                ("horns", name),
                ZERO,
            ),
        )
    detail = say("finding", "stool.horn-collides", side=name, over=over, room=room)
    return [*found, Finding("horn-collides", name, detail, over, offers)]


def _block_edge(opening: Opening, side: CasedSide) -> Fraction:
    """Where a corner block ends that is centered on a side's casing; zero without one."""
    trim = opening.trim
    if trim.head_style is not HeadStyle.CORNER_BLOCKS or trim.corner_block is None:
        return ZERO
    return (side.reveal + side.outer + trim.corner_block.width) / 2


def _head_beside(opening: Opening, name: str, side: CasedSide, room: Fraction) -> list[Finding]:
    """What runs past the leg at its head: corner blocks, a butted head, a fillet, a cap."""
    trim = opening.trim
    if side.casing is None:
        return []
    past = [_block_edge(opening, side)]
    if trim.head_style is HeadStyle.BUTTED:
        strips = (strip.overhang for strip in (trim.fillet, trim.cap) if strip is not None)
        past += [side.outer + overhang for overhang in (trim.overhang, *strips)]
    over = max(past) - room
    if over <= 0 or max(past) <= side.edge:
        return []
    detail = say("finding", "head.overhang-collides", side=name, over=over, room=room)
    stop = Offer(
        "stop_head_short",
        say("offer", "head.stop-short", room=room),
    )
    return [Finding("head-overhang-collides", name, detail, over, (stop,))]


def _block_beside(opening: Opening, name: str, side: CasedSide, room: Fraction) -> list[Finding]:
    over = _plinth_edge(opening, side) - room
    if over <= 0:
        return []
    detail = say("finding", "plinth.collides", side=name, over=over, room=room)
    to_do = say("offer", "plinth.rip", side=name)
    return [Finding("plinth-collides", name, detail, over, _rip_block(opening, over, to_do))]


def _blocks_meet(opening: Opening, name: str, side: CasedSide, gap: Fraction) -> list[Finding]:
    over = 2 * _plinth_edge(opening, side) - gap
    if over <= 0:
        return []
    detail = say("finding", "plinth.overlaps-neighbor", side=name, over=over)
    to_do = say("offer", "plinth.rip-both", side=name)
    return [
        Finding("plinth-collides", name, detail, over, _rip_block(opening, over / 2, to_do), by="neighbor")
    ]


def _plinth_edge(opening: Opening, side: CasedSide) -> Fraction:
    """Where a plinth block ends, whose inner edge is flush with its leg's; zero without one."""
    plinth = opening.trim.plinth
    return side.reveal + plinth.width if opening.bottom is Bottom.PLINTH and plinth is not None else ZERO


def _rip_block(opening: Opening, over: Fraction, to_do: Sentence) -> tuple[Offer, ...]:
    plinth = opening.trim.plinth
    assert plinth is not None
    width = plinth.width - over
    return (Offer("rip_block", to_do, (), None, (("rip width", width),)),) if width > 0 else ()


def _rip(name: str, side: CasedSide, room: Fraction) -> tuple[Offer, ...]:
    casing = side.casing
    assert casing is not None
    band = side.edge - side.outer
    width = room - side.reveal - band
    if width <= 0:
        return ()
    fits = Offer(
        "rip_casing",
        say("offer", "casing.rip", side=name),
        ("widths", name),
        width,
        (("rip width", width),),
    )
    returned = Offer(
        "rip_and_return_casing",
        say("offer", "casing.rip-and-return", side=name),
        ("widths", name),
        width - casing.thickness,
        (("rip width", width - casing.thickness),),
    )
    if width - casing.thickness < casing.width * LEAST_SHARE:
        return (fits,)
    return (fits, returned)


def _neighbor(name: str, side: CasedSide, gap: Fraction) -> list[Finding]:
    over = 2 * side.edge - gap
    if over <= 0 or side.casing is None:
        return []
    shared = gap - 2 * side.reveal
    offers: tuple[Offer, ...] = ()
    if shared > 0:
        offers = (
            Offer(
                "share_mull_casing",
                say("offer", "casing.share-mull"),
                (),
                None,
                (("mull width", gap), ("mull casing width", shared), ("reveal at each edge", side.reveal)),
            ),
        )
    half = (gap - 2 * side.reveal) / 2 - (side.edge - side.outer)
    if half >= side.casing.width * LEAST_SHARE:
        rip = say("offer", "casing.rip-both", side=name)
        offers = (*offers, Offer("rip_casing", rip, ("widths", name), half, (("rip width", half),)))
    detail = say("finding", "casing.overlaps-neighbor", side=name, over=over)
    return [Finding("casing-collides", name, detail, over, offers, by="neighbor")]


def _above(opening: Opening, head: CasedSide, room: Fraction) -> list[Finding]:
    trim = opening.trim
    strips = ZERO
    if trim.head_style is HeadStyle.BUTTED:
        strips = (trim.fillet.height if trim.fillet else ZERO) + (trim.cap.height if trim.cap else ZERO)
    over = max(head.edge + strips, _block_edge(opening, head)) - room
    if over <= 0 or head.casing is None:
        return []
    width = head.outer - head.reveal - over
    offers: tuple[Offer, ...] = ()
    if width > 0:
        detail = say("offer", "head.rip")
        offers = (Offer("rip_casing", detail, ("widths", "head"), width, (("rip width", width),)),)
    detail = say("finding", "head.collides", over=over, room=room)
    return [Finding("head-collides", "above", detail, over, offers)]


def _below(opening: Opening, base: CasedSide, room: Fraction) -> list[Finding]:
    stool, apron = opening.trim.stool, opening.trim.apron
    if opening.bottom is Bottom.CASING:
        over = max(base.edge, _block_edge(opening, base)) - room
        if over <= 0:
            return []
        width = base.outer - base.reveal - over
        rip = Offer(
            "rip_casing",
            say("offer", "bottom-casing.rip"),
            ("widths", "sill"),
            width,
            (("rip width", width),),
        )
        detail = say("finding", "bottom-casing.collides", over=over, room=room)
        return [Finding("sill-collides", "below", detail, over, (rip,) if width > 0 else ())]
    if opening.bottom is not Bottom.STOOL or stool is None:
        return []
    if stool.thickness > room:
        detail = say("finding", "stool.collides", thickness=stool.thickness, room=room)
        thin = Offer("thin_stool", say("offer", "stool.thin"), (), None)
        return [Finding("stool-collides", "below", detail, stool.thickness - room, (thin,))]
    if apron is None or opening.without_apron:
        return []
    width = opening.widths.apron or apron.width
    over = stool.thickness + width - room
    if over <= 0:
        return []
    drop = Offer("drop_apron", say("offer", "apron.drop"), ("without_apron",), True)
    left_over = width - over
    offers: tuple[Offer, ...] = (drop,)
    if left_over >= apron.width * LEAST_SHARE:
        detail = say("offer", "apron.rip")
        offers = (
            Offer("rip_apron", detail, ("widths", "apron"), left_over, (("rip width", left_over),)),
            drop,
        )
    detail = say("finding", "apron.collides", over=over, room=room)
    return [Finding("apron-collides", "below", detail, over, offers)]
