"""The cut upright through stool, apron and wall at the center line; the sash lies to the left."""

from __future__ import annotations

from longpoint.geometry.opening import Built
from longpoint.geometry.piece import Piece
from longpoint.geometry.piece_names import PieceKind
from longpoint.lengths import Real
from longpoint.sheets.drawing.cuts import (
    DOWNWARD,
    RIGHTWARD,
    UPWARD,
    Box,
    CutThrough,
    Detail,
    Said,
    Sized,
    numbered,
)
from longpoint.sheets.drawing.shapes import Point
from longpoint.sheets.wording import Wording

ABOVE, BELOW = 2.5, 0.75
"""Inches of casing shown over the stool, and of wall under the apron."""


def stool_detail(built: Built, wording: Wording) -> Detail:
    """Its origin is the stool's upper face at the sash stop."""
    opening = built.opening
    stool = opening.trim.stool
    left, right = opening.outline.left_depth, opening.outline.right_depth
    found, under_it = numbered(built, PieceKind.STOOL), numbered(built, PieceKind.APRON)
    assert stool is not None
    assert left is not None
    assert right is not None
    assert found is not None
    number, piece = found
    apron = under_it[1] if under_it else None
    depth = max(left, right)
    clear, back, thick = float(stool.sash_clearance), float(depth), float(stool.thickness)
    edge = clear + float(piece.width)
    under = float(apron.width) if apron else 2.0
    foot = -thick - under - BELOW
    cuts = [CutThrough(number, piece, ((clear, 0.0), (edge, -thick)), UPWARD)]
    if under_it is not None and apron is not None:
        hangs = (back, -thick), (back + float(apron.thickness), -thick - under)
        cuts.append(CutThrough(under_it[0], apron, hangs, RIGHTWARD, rising=False))
    strip = numbered(built, PieceKind.TAPERED_SHIM)
    if strip is not None:
        # Half of what it is at its deep end, since the cut is at the middle.
        high = float(strip[1].width) / 2
        cuts.append(CutThrough(*strip, ((clear, -thick), (back, -thick - high)), DOWNWARD, rising=False))
    return Detail(
        "stool, apron and jamb",
        f"The sash lies to the left. Stool ripped to {wording.figure(piece.width)} from a jamb depth of "
        f"{wording.figure(depth)}, {wording.figure(stool.nosing)} past the apron's face.",
        across=edge,
        above=ABOVE,
        below=-foot,
        cuts=tuple(cuts),
        seen=_beyond(built, back),
        wall=(((0.0, -thick), (back, foot)),),
        lines=(
            ((0.0, ABOVE), (0.0, foot), "heavy"),
            ((back, -thick), (back, foot), "edge"),
        ),
        said=(
            Said("jamb", (_jamb_edge(built, back) / 2, ABOVE - 0.5)),
            Said("wall", (back / 2, foot - 0.35)),
            Said("sash", (0.0, ABOVE - 0.5), (-18.0, 0.0)),
        ),
        sized=tuple(_sizes(wording, piece, apron, (clear, back, edge, thick, under), depth)),
    )


def _jamb_edge(built: Built, back: float) -> float:
    """Where the side jamb ends: at the wall, or short of it where an extension makes up the rest."""
    board = numbered(built, PieceKind.JAMB_EXTENSION, "left") or numbered(
        built, PieceKind.JAMB_EXTENSION, "right"
    )
    return back - float(board[1].width) if board else back


def _beyond(built: Built, back: float) -> tuple[Box, ...]:
    """The jamb, its extension and the leg, seen beyond the cut."""
    edge = _jamb_edge(built, back)
    found: list[Box] = [((0.0, ABOVE), (edge, 0.0))]
    if edge < back:
        found.append(((edge, ABOVE), (back, 0.0)))
    casing = built.opening.trim.casing
    if casing is not None:
        found.append(((back, ABOVE), (back + float(casing.thickness), 0.0)))
    return tuple(found)


def _sizes(
    wording: Wording,
    piece: Piece,
    apron: Piece | None,
    spots: tuple[float, float, float, float, float],
    depth: Real,
) -> list[Sized]:
    clear, back, edge, thick, under = spots
    foot = -thick - under - BELOW

    def across(x1: float, x2: float, value: Real, level: float, away: Point, tier: int, base: float) -> Sized:
        feet = (x1, base), (x2, base)
        return Sized((x1, level), (x2, level), away, wording.figure(value), tier, feet)

    face = back + float(apron.thickness) if apron else back
    found = [
        across(0, back, depth, ABOVE, UPWARD, 0, ABOVE),
        across(face, edge, edge - face, foot, DOWNWARD, 0, -thick),
    ]
    if apron is not None:
        found.append(across(back, face, apron.thickness, foot, DOWNWARD, 0, -thick - under))
    if clear:
        found.append(across(0, clear, clear, foot, DOWNWARD, 1, -thick))
    found.append(across(clear, edge, piece.width, foot, DOWNWARD, 2, -thick))

    def upright(x: float, top: float, bottom: float, value: Real) -> Sized:
        return Sized(
            (edge, top), (edge, bottom), RIGHTWARD, wording.figure(value), 0, ((x, top), (x, bottom))
        )

    found.append(upright(edge, 0.0, -thick, piece.thickness))
    if apron is not None:
        found.append(upright(face, -thick, -thick - under, apron.width))
    return found
