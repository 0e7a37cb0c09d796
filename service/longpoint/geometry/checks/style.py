"""Styles that do not go together, or not with this shape."""

from __future__ import annotations

from longpoint.geometry.checks.door import check_door
from longpoint.geometry.frame.kernel import Corner, Frame
from longpoint.geometry.readings.inputs import Bottom, Opening, WallAnswer
from longpoint.geometry.readings.readings import Door
from longpoint.geometry.readings.trim import ApronEnds, BoxCorners, CornerBlock, HeadStyle
from longpoint.lengths import Fraction, spoken
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
                    f"A {name} goes with a butted head: take head_style butted, or leave the {name} out.",
                )
    if trim.head_style is HeadStyle.CORNER_BLOCKS:
        _check_blocks(opening, frame if four_sided else None, four_sided, faults)
    if trim.back_band is not None and trim.head_style is not HeadStyle.MITERED:
        faults.add(
            ("trim", "back_band"),
            "mitered-head-only",
            "A back band goes round mitered casing: take head_style mitered, or leave the band out.",
        )
    if trim.back_band is not None and trim.back_band.lap >= trim.back_band.width:
        faults.add(("trim", "back_band", "lap"), "lap-too-wide", "The band would lie on the casing alone.")
    if (
        trim.apron is not None
        and trim.apron.ends is ApronEnds.ANGLED
        and not 0 < trim.apron.end_angle <= SHARPEST_APRON
    ):
        faults.add(
            ("trim", "apron", "end_angle"),
            "out-of-range",
            f"An apron's end is cut back by more than nothing and at most {SHARPEST_APRON} degrees.",
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
            "A picture frame is mitered at every corner: take head_style mitered, or another bottom.",
        )
    if not four_sided:
        faults.add(
            ("trim", "head_style"),
            "butted-many-heads",
            "A butted head needs one straight head across two legs: take head_style mitered for this shape.",
        )


def _check_blocks(opening: Opening, frame: Frame | None, four_sided: bool, faults: Faults) -> None:
    trim, block = opening.trim, opening.trim.corner_block
    if block is None:
        faults.add(
            ("trim", "corner_block"), "block-missing", "This head has corner blocks: give the corner_block."
        )
        return
    if not four_sided:
        faults.add(
            ("trim", "head_style"),
            "blocks-many-heads",
            "Corner blocks need one straight head across two legs: take head_style mitered for this shape.",
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
        detail = (
            f"Along the block's edge, which is out of square with it, the {side} leg is {spoken(needed)} wide: "
            "take a block as wide, or narrower casing."
        )
        faults.add(("trim", "corner_block", "width"), "block-too-narrow", detail)


def _check_block(block: CornerBlock, casing: Fraction, reveal: Fraction, faults: Faults) -> None:
    if block.width < casing:
        detail = f"The block must be at least as wide as the casing it ends: {spoken(casing)}."
        faults.add(("trim", "corner_block", "width"), "block-too-narrow", detail)
    elif (block.width - casing) / 2 > reveal:
        detail = f"The block would stand over the opening: beside {spoken(casing)} of casing show {spoken(reveal)}."
        faults.add(("trim", "corner_block", "width"), "block-too-wide", detail)


def _check_mulls(opening: Opening, four_sided: bool, faults: Faults) -> None:
    casing, width = opening.trim.mull_casing, getattr(opening.outline.shape, "jamb_width", None)
    if casing is None:
        faults.add(
            ("trim", "mull_casing"),
            "mull-casing-missing",
            "Joined units need casing between them: give mull_casing.",
        )
    if not four_sided or width is None:
        faults.add(
            ("readings", "mulls"), "mulls-many-heads", "Joined units need one straight head over all of them."
        )
        return
    reached = Fraction(0)
    for number, mull in enumerate(opening.outline.mulls):
        if mull.at <= reached or mull.width <= 0 or mull.at + mull.width >= width:
            faults.add(
                ("readings", "mulls", number),
                "mull-out-of-place",
                "Each mull lies between two units, left to right, inside the jambs. Measure again.",
            )
        elif casing is not None and casing.width > mull.width:
            faults.add(
                ("readings", "mulls", number),
                "mull-too-narrow",
                f"Mull casing of {spoken(casing.width)} would cover glass: the mull is {spoken(mull.width)} wide.",
            )
        reached = mull.at + mull.width


def _check_wall(opening: Opening, frame: Frame | None, faults: Faults) -> None:
    wall, trim, answer = opening.outline.wall, opening.trim, opening.wall_answer
    if wall is None:
        faults.add(
            ("readings", "wall"),
            "wall-missing",
            "This answer needs the wall: measure at every corner how far it stands proud or shy of the jamb.",
        )
        return
    if frame is not None and len(wall.proud) != len(frame.corners):
        faults.add(
            ("readings", "wall"),
            "corner-count",
            f"This opening has {len(frame.corners)} corners and {len(wall.proud)} were read: give one for each.",
        )
        return
    if answer is WallAnswer.LEAN:
        _check_leaning(opening, max(wall.proud), faults)
    if answer is WallAnswer.EXTEND and trim.extension is None:
        faults.add(
            ("trim", "extension"), "extension-missing", "This answer needs the extension's stock: give it."
        )
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
            "A butted box needs one straight head across two legs: take mitered corners for this shape.",
        )


def _check_leaning(opening: Opening, proud: Fraction, faults: Faults) -> None:
    trim = opening.trim
    if trim.head_style is not HeadStyle.MITERED or trim.back_band is not None or trim.casing is None:
        faults.add(
            ("wall_answer",),
            "mitered-head-only",
            "Only plain mitered casing can lean: take another answer or style.",
        )
        return
    own = opening.widths
    stock = {"left": trim.casing, "right": trim.casing, "head": trim.head_casing or trim.casing}
    if opening.bottom is Bottom.CASING:
        stock["sill"] = trim.bottom_casing or trim.casing
    ripped = {side: getattr(own, side) for side in stock}
    narrowest = min(ripped[side] or casing.width for side, casing in stock.items())
    # Beyond this the casing stands on edge rather than lies on the wall.
    if proud * 2 > narrowest:
        faults.add(
            ("wall_answer",),
            "leans-too-far",
            f"The wall stands {spoken(proud)} proud, more than half the width of the narrowest "
            f"casing, {spoken(narrowest)}: extend the jamb instead.",
        )
