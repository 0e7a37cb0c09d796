"""Styles that do not go together, or not with this shape."""

from __future__ import annotations

from longpoint.geometry.checks.door import check_door
from longpoint.geometry.frame.kernel import Corner, Frame
from longpoint.geometry.readings.inputs import Bottom, Opening, WallAnswer
from longpoint.geometry.readings.readings import Door
from longpoint.geometry.readings.trim import ApronEnds, BoxCorners, Casing, CornerBlock, HeadStyle
from longpoint.lengths import Fraction
from longpoint.texts import say
from longpoint.values import Faults

SHARPEST_APRON = 60
# Common practice, no source: a leg that stands past its block by no more than this in all is not seen to.
LEAST_SEEN = 1 / 32


def check_style(opening: Opening, frame: Frame | None, faults: Faults) -> None:
    """Trim whose pieces do not go together."""
    trim = opening.trim
    four_sided = frame is None or len(frame.sides) == 4
    if trim.head_style is HeadStyle.BUTTED:
        _check_butted(opening, four_sided, faults)
    else:
        for name in ("fillet", "cap"):
            if getattr(trim, name) is not None:
                faults.add(
                    ("trim", name),
                    "butted-head-only",
                    say("problem", "head.butted-only", strip=name),
                )
    if trim.head_style is HeadStyle.CORNER_BLOCKS:
        _check_blocks(opening, frame if four_sided else None, four_sided, faults)
    if trim.back_band is not None and trim.head_style is not HeadStyle.MITERED:
        faults.add(
            ("trim", "back_band"),
            "mitered-head-only",
            say("problem", "band.mitered-head-only"),
        )
    if trim.back_band is not None and trim.back_band.lap >= trim.back_band.width:
        faults.add(("trim", "back_band", "lap"), "lap-too-wide", say("problem", "band.lap-too-wide"))
    elif trim.back_band is not None and trim.casing is not None:
        narrowest = _narrowest(opening, trim.casing)
        if trim.back_band.lap >= narrowest:
            detail = say("problem", "band.over-the-opening", lap=+trim.back_band.lap, narrowest=narrowest)
            faults.add(("trim", "back_band", "lap"), "lap-past-casing", detail)
    if (
        trim.apron is not None
        and trim.apron.ends is ApronEnds.ANGLED
        and not 0 < trim.apron.end_angle <= SHARPEST_APRON
    ):
        faults.add(
            ("trim", "apron", "end_angle"),
            "out-of-range",
            say("problem", "apron.end-angle", most=SHARPEST_APRON),
        )
    if isinstance(opening.outline.shape, Door):
        check_door(opening.outline.shape, faults)
    if opening.outline.mulls:
        _check_mulls(opening, four_sided, faults)
    if opening.outline.wall is not None or opening.wall_answer is not WallAnswer.FLAT:
        _check_wall(opening, frame, faults)


def _check_butted(opening: Opening, four_sided: bool, faults: Faults) -> None:
    if opening.bottom is Bottom.CASING:
        faults.add(
            ("trim", "head_style"),
            "butted-picture-frame",
            say("problem", "head.butted-picture-frame"),
        )
    if not four_sided:
        faults.add(
            ("trim", "head_style"),
            "butted-many-heads",
            say("problem", "head.butted-many-heads"),
        )


def _check_blocks(opening: Opening, frame: Frame | None, four_sided: bool, faults: Faults) -> None:
    trim, block = opening.trim, opening.trim.corner_block
    if block is None:
        faults.add(("trim", "corner_block"), "block-missing", say("problem", "blocks.missing"))
        return
    if not four_sided:
        faults.add(
            ("trim", "head_style"),
            "blocks-many-heads",
            say("problem", "blocks.many-heads"),
        )
    stock = {"left": trim.casing, "right": trim.casing, "head": trim.head_casing or trim.casing}
    if opening.bottom is Bottom.CASING:
        stock["sill"] = trim.bottom_casing or trim.casing
    for side, casing in stock.items():
        own: Fraction | None = getattr(opening.reveals, side)
        if casing is not None:
            width = getattr(opening.widths, side) or casing.width
            _check_block(block, width, trim.reveal if own is None else own, faults)
            if frame is not None and not frame.square and side in _LEG_CORNERS:
                _check_leg_below(block, width, _leg_corners(opening, frame, side), side, faults)


_LEG_CORNERS = {"right": (1, 0), "left": (2, 3)}
"""The corners of each leg: at the head, and at the sill of a picture frame."""


def _leg_corners(opening: Opening, frame: Frame, side: str) -> list[Corner]:
    at = _LEG_CORNERS[side] if opening.bottom is Bottom.CASING else _LEG_CORNERS[side][:1]
    return [frame.corners[index] for index in at]


def _check_leg_below(
    block: CornerBlock, casing: Fraction, corners: list[Corner], side: str, faults: Faults
) -> None:
    """Where head and leg are out of square, the leg is the wider along the block's edge."""
    needed = max(float(casing) / float(corner.sin) for corner in corners)
    if block.width >= casing and needed - float(block.width) > LEAST_SEEN:
        detail = say("problem", "blocks.narrower-than-leg", side=side, needed=needed)
        faults.add(("trim", "corner_block", "width"), "block-too-narrow", detail)


def _check_block(block: CornerBlock, casing: Fraction, reveal: Fraction, faults: Faults) -> None:
    if block.width < casing:
        detail = say("problem", "blocks.too-narrow", casing=casing)
        faults.add(("trim", "corner_block", "width"), "block-too-narrow", detail)
    elif (block.width - casing) / 2 > reveal:
        detail = say("problem", "blocks.too-wide", casing=casing, reveal=reveal)
        faults.add(("trim", "corner_block", "width"), "block-too-wide", detail)


def _check_mulls(opening: Opening, four_sided: bool, faults: Faults) -> None:
    casing, width = opening.trim.mull_casing, getattr(opening.outline.shape, "jamb_width", None)
    if casing is None:
        faults.add(
            ("trim", "mull_casing"),
            "mull-casing-missing",
            say("problem", "mulls.casing-missing"),
        )
    if not four_sided or width is None:
        faults.add(("readings", "mulls"), "mulls-many-heads", say("problem", "mulls.many-heads"))
        return
    reached = Fraction(0)
    for number, mull in enumerate(opening.outline.mulls):
        if mull.at <= reached or mull.width <= 0 or mull.at + mull.width >= width:
            faults.add(
                ("readings", "mulls", number),
                "mull-out-of-place",
                say("problem", "mulls.out-of-place"),
            )
        elif casing is not None and casing.width > mull.width:
            faults.add(
                ("readings", "mulls", number),
                "mull-too-narrow",
                say("problem", "mulls.too-narrow", casing=casing.width, mull=mull.width),
            )
        reached = mull.at + mull.width


def _check_wall(opening: Opening, frame: Frame | None, faults: Faults) -> None:
    wall, trim, answer = opening.outline.wall, opening.trim, opening.wall_answer
    if wall is None:
        faults.add(
            ("readings", "wall"),
            "wall-missing",
            say("problem", "wall.missing"),
        )
        return
    if frame is not None and len(wall.proud) != len(frame.corners):
        faults.add(
            ("readings", "wall"),
            "corner-count",
            say("problem", "wall.corner-count", corners=len(frame.corners), read=len(wall.proud)),
        )
        return
    if answer is WallAnswer.LEAN:
        _check_leaning(opening, max(wall.proud), faults)
    if answer is WallAnswer.EXTEND and trim.extension is None:
        faults.add(("trim", "extension"), "extension-missing", say("problem", "wall.extension-missing"))
    many = frame is not None and len(frame.corners) != 4
    if (
        answer is WallAnswer.EXTEND
        and many
        and trim.extension
        and trim.extension.corners is BoxCorners.BUTTED
    ):
        faults.add(
            ("trim", "extension", "corners"),
            "butted-many-heads",
            say("problem", "extension.butted-many-heads"),
        )


def _narrowest(opening: Opening, sides: Casing) -> Fraction:
    """The width of the narrowest casing of an opening, `sides` being its side casings' stock."""
    trim = opening.trim
    stock = {"left": sides, "right": sides, "head": trim.head_casing or sides}
    if opening.bottom is Bottom.CASING:
        stock["sill"] = trim.bottom_casing or sides
    return min(getattr(opening.widths, side) or +casing.width for side, casing in stock.items())


def _check_leaning(opening: Opening, proud: Fraction, faults: Faults) -> None:
    trim = opening.trim
    if trim.head_style is not HeadStyle.MITERED or trim.back_band is not None or trim.casing is None:
        faults.add(
            ("wall_answer",),
            "mitered-head-only",
            say("problem", "wall.lean-mitered-only"),
        )
        return
    narrowest = _narrowest(opening, trim.casing)
    # Beyond this the casing stands on edge rather than lies on the wall.
    if proud * 2 > narrowest:
        faults.add(
            ("wall_answer",),
            "leans-too-far",
            say("problem", "wall.leans-too-far", proud=proud, narrowest=narrowest),
        )
