"""A wall that does not lie flush with the jamb's edge: caulk, plane, lean or extend, side by side."""

from __future__ import annotations

from longpoint.geometry.checks.findings import Finding, Offer
from longpoint.geometry.frame.kernel import ZERO, Frame
from longpoint.geometry.frame.lean import lean_degrees
from longpoint.geometry.frame.saw import compound
from longpoint.geometry.frame.sides import CasedSide
from longpoint.geometry.piece import End, Hand, Piece, Step, Taper
from longpoint.geometry.piece_names import PieceKind
from longpoint.geometry.readings.inputs import Bottom, Opening, SillAnswer, WallAnswer
from longpoint.lengths import Fraction, Real
from longpoint.texts import say


def wall_findings(opening: Opening, frame: Frame, sides: tuple[CasedSide, ...]) -> tuple[Finding, ...]:
    """What each trimmed side needs at the wall, by the opening's limits."""
    wall = opening.outline.wall
    if wall is None:
        return ()
    found: list[Finding] = []
    for index, side in enumerate(sides):
        if side.name == "base":
            continue
        ends = wall.proud[index - 1], wall.proud[index]
        proud, shy = max(*ends, ZERO), max(-ends[0], -ends[1], ZERO)
        # An answer that was taken up has settled where the wall stands proud.
        if proud and opening.wall_answer is WallAnswer.FLAT:
            corner = frame.corners[index if wall.proud[index] == proud else index - 1].degrees
            found.append(_proud(opening, side, ends, proud, corner))
        if shy:
            found.append(_shy(opening, side, shy))
    return tuple(found)


def _proud(
    opening: Opening, side: CasedSide, ends: tuple[Fraction, Fraction], proud: Fraction, corner: Real
) -> Finding:
    limits = opening.wall_limits
    caulk = Offer("caulk", say("offer", "wall.caulk"))
    plane = Offer(
        "plane_wall",
        say("offer", "wall.plane", proud=proud),
        (),
        None,
        _depth(proud),
    )
    extend = Offer(
        "extend_jamb",
        say("offer", "wall.extend"),
        ("wall_answer",),
        WallAnswer.EXTEND.value,
        (
            ("rip width where it starts", max(ends[0], ZERO)),
            ("rip width where it finishes", max(ends[1], ZERO)),
        ),
    )
    if proud <= limits.caulk:
        offers: tuple[Offer, ...] = (caulk,)
    elif proud <= limits.plane:
        offers = (plane, *_leaning(side, proud, corner), extend)
    else:
        offers = (extend, *_leaning(side, proud, corner))
    return Finding(
        "wall-proud",
        side.name,
        say("finding", "wall.proud", proud=proud, side=side.name),
        proud,
        offers,
    )


def _leaning(side: CasedSide, proud: Fraction, corner: Real) -> tuple[Offer, ...]:
    """Back-beveled casing that leans on the wall, with the saw's compound setting for equal widths."""
    width = side.outer - side.reveal
    if side.casing is None or proud >= width:
        return ()
    lean = lean_degrees(width, proud)
    miter, bevel = compound(corner, 90 - lean)
    figures = (("lean, degrees", lean), ("saw miter, degrees", miter), ("blade bevel, degrees", bevel))
    detail = say("offer", "wall.lean")
    return (Offer("lean_casing", detail, ("wall_answer",), WallAnswer.LEAN.value, figures),)


def _shy(opening: Opening, side: CasedSide, shy: Fraction) -> Finding:
    limits = opening.wall_limits
    if shy <= limits.caulk:
        offers: tuple[Offer, ...] = (Offer("caulk", say("offer", "wall.caulk")),)
    else:
        plane = Offer("plane_jamb", say("offer", "wall.plane-jamb", shy=shy), (), None, _depth(shy))
        fur = Offer("fur_wall", say("offer", "wall.fur", shy=shy))
        offers = (plane, fur) if shy <= limits.plane else (fur, plane)
    return Finding(
        "jamb-proud",
        side.name,
        say("finding", "wall.jamb-proud", shy=shy, side=side.name),
        shy,
        offers,
    )


def _depth(amount: Fraction) -> tuple[tuple[str, Real], ...]:
    return (("depth", amount),)


def sill_findings(opening: Opening) -> tuple[Finding, ...]:
    """Shims or a tapered strip for a stool on a sill out of level."""
    sill = opening.readings.sill
    if sill is None or sill.by == 0 or opening.bottom is not Bottom.STOOL:
        return ()
    if opening.sill_answer is SillAnswer.TAPERED_SHIM:
        return ()  # an answer that was taken up
    shim = Offer(
        "shim",
        say("offer", "sill.shim", by=sill.by, end=sill.low),
        (),
        None,
        (("shim at the low end", sill.by), ("shim at the middle", sill.by / 2)),
    )
    strip = Offer(
        "tapered_shim",
        say("offer", "sill.tapered-shim", by=sill.by, end=sill.low),
        ("sill_answer",),
        "tapered_shim",
        (("rip width at the low end", sill.by),),
    )
    detail = say("finding", "sill.out-of-level", by=sill.by, end=sill.low)
    return (Finding("sill-out-of-level", "sill", detail, sill.by, (shim, strip)),)


def tapered_shim(opening: Opening, frame: Frame) -> Piece:
    """The tapered strip under a stool."""
    sill, stool = opening.readings.sill, opening.trim.stool
    assert sill is not None
    assert stool is not None
    length = frame.sides[0]
    taper = Taper(sill.by, ZERO) if sill.low is Hand.LEFT else Taper(ZERO, sill.by)
    return Piece(
        kind=PieceKind.TAPERED_SHIM,
        side="",
        profile=stool.profile,
        short_point=length,
        long_point=length,
        overall=length,
        width=sill.by,
        thickness=stool.thickness,
        rip_width=sill.by,
        ends=(End("left", Hand.LEFT), End("right", Hand.RIGHT)),
        how=(
            Step("length", "jamb width", (("jamb width", length),)),
            Step(
                "rip_width",
                "how far the sill lies low, to nothing at its other end",
                (("sill low by", sill.by),),
            ),
        ),
        notes=(say("note", "shim.tapers"),),
        taper=taper,
    )
