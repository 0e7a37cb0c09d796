"""The cut upright through a dressed head: the jamb, the casing, and what lies under, over, round and behind it."""

from __future__ import annotations

from longpoint.geometry.frame.sides import cased_sides
from longpoint.geometry.opening import Built
from longpoint.geometry.piece_names import PieceKind
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
from longpoint.sheets.place_styles import over_fillet
from longpoint.sheets.wording import Wording

UNDER, OVER, DEEP = 0.75, 0.75, 2.5
"""Inches of the opening shown under the head, of wall over its trim, and of wall where no depth was read."""
DRESS = frozenset({PieceKind.FILLET, PieceKind.CAP})
ROUND = frozenset({PieceKind.BACK_BAND, PieceKind.JAMB_EXTENSION})


def head_detail(built: Built, wording: Wording) -> Detail | None:
    """Its origin is the head jamb's underside at the sash stop; None where the head is plain casing.

    A band and an extension that a cut through the leg shows as well are no reason for a cut of the head's own.
    """
    found = numbered(built, PieceKind.HEAD_CASING, "head")
    kinds = {piece.kind for piece in built.pieces if piece.side in ("head", "")}
    own = DRESS if PieceKind.STOOL not in {piece.kind for piece in built.pieces} else DRESS | ROUND
    if found is None or not kinds & own:
        return None
    opening = built.opening
    number, casing = found
    side = cased_sides(opening, built.frame)[2]
    depths = [deep for deep in (opening.outline.left_depth, opening.outline.right_depth) if deep]
    back = float(max(depths)) if depths else DEEP
    thick, low = float(casing.thickness), float(side.reveal)
    under = low + over_fillet(built)
    top = under + float(casing.width)
    cuts = [CutThrough(number, casing, ((back, top), (back + thick, under)), RIGHTWARD)]
    past = back + thick
    sized: list[Sized] = []
    levels = [(under, top, wording.figure(casing.width))]
    if low > 0:
        levels.append((0.0, low, wording.figure(side.reveal)))
    for kind, bottom in ((PieceKind.FILLET, low), (PieceKind.CAP, top)):
        strip = numbered(built, kind)
        if strip is not None:
            high, deep = float(strip[1].thickness), float(strip[1].width)
            cuts.append(
                CutThrough(*strip, ((back, bottom + high), (back + deep, bottom)), RIGHTWARD, rising=False)
            )
            levels.append((bottom, bottom + high, wording.figure(strip[1].thickness)))
            past = max(past, back + deep)
            way = UPWARD if kind is PieceKind.CAP else DOWNWARD
            level = bottom + high if kind is PieceKind.CAP else bottom
            sized.append(Sized((back, level), (back + deep, level), way, wording.figure(strip[1].width)))
    summit = max(top, *(level[1] for level in levels))
    band = numbered(built, PieceKind.BACK_BAND, "head")
    stock = opening.trim.back_band
    if band is not None and stock is not None:
        off, edge, lap = float(stock.thickness), float(side.edge), float(stock.lap)
        over: Box | None = ((back + thick, top), (back + off, top - lap)) if lap and off > thick else None
        cuts.append(CutThrough(*band, ((back, edge), (back + off, top)), RIGHTWARD, rising=False, lap=over))
        levels.append((edge - float(band[1].width), edge, wording.figure(band[1].width)))
        past, summit = max(past, back + off), max(summit, edge)
    proud = 0.0
    board = numbered(built, PieceKind.JAMB_EXTENSION, "head")
    extension = opening.trim.extension
    jamb = float(opening.readings.jamb_thickness)
    if board is not None and extension is not None:
        proud, start = float(board[1].width), float(extension.reveal)
        box = (back - proud, start + float(board[1].thickness)), (back, start)
        cuts.append(CutThrough(*board, box, DOWNWARD, rising=False))
        sized.append(Sized((back - proud, 0.0), (back, 0.0), DOWNWARD, wording.figure(board[1].width), 1))
    wall_top = summit + OVER
    # The longest first: a short one's text finds room past its ends.
    sized += [
        Sized(
            (past, bottom), (past, upper), RIGHTWARD, text, 0, ((back + thick, bottom), (back + thick, upper))
        )
        for bottom, upper, text in sorted(levels, key=lambda one: one[0] - one[1])
    ]
    return Detail(
        "head",
        f"The head: casing {wording.figure(casing.width)} by {wording.figure(casing.thickness)}, its underside "
        f"{wording.figure(side.reveal)} above the jamb's.",
        across=past,
        above=wall_top,
        below=UNDER,
        cuts=tuple(cuts),
        jamb=(((0.0, jamb), (back - proud, 0.0)),),
        wall=(((0.0, wall_top), (back, jamb)),),
        lines=(
            ((0.0, wall_top), (0.0, -UNDER), "heavy"),
            ((back, wall_top), (back, jamb), "edge"),
        ),
        said=(
            Said("wall", (0.0, (wall_top + jamb) / 2), (-20.0, 0.0)),
            Said("jamb", (0.0, jamb / 2), (-20.0, 0.0)),
        ),
        sized=tuple(sized),
    )
