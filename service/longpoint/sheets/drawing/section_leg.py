"""The cut level through the right leg, seen from above: the opening to the left, the room below."""

from __future__ import annotations

from longpoint.geometry.frame.sides import CasedSide, cased_sides
from longpoint.geometry.opening import Built
from longpoint.geometry.piece import Hand, Piece
from longpoint.geometry.piece_names import PieceKind
from longpoint.geometry.readings.inputs import Opening
from longpoint.geometry.readings.readings import Door
from longpoint.sheets.drawing.cuts import (
    DOWNWARD,
    LEFTWARD,
    RIGHTWARD,
    UPWARD,
    CutThrough,
    Detail,
    Said,
    Sized,
    numbered,
)
from longpoint.sheets.wording import Wording

DEEP, PAST, LEAF = 2.5, 1.25, 2.0
"""Inches of wall shown behind the casing and beside it, and of a door."""


def leg_detail(built: Built, wording: Wording) -> Detail:
    """Its origin is the jamb's inside face, in the wall's face."""
    found = numbered(built, PieceKind.SIDE_CASING, "right")
    assert found is not None
    piece = found[1]
    side = next(side for side in cased_sides(built.opening, built.frame) if side.name == piece.side)
    shape = built.opening.outline.shape
    plain = _door(built, shape, wording) if isinstance(shape, Door) else _jamb(built, piece, wording)
    gap, wide, thick = float(side.reveal), float(piece.width), float(piece.thickness)
    past, low = max(gap + wide, float(side.edge)), -thick
    reach, deep = max(past, plain.across) + PAST, plain.above
    sized = [
        Sized((gap, low), (gap + wide, low), DOWNWARD, wording.figure(piece.width)),
        Sized((0.0, low), (gap, low), DOWNWARD, wording.figure(side.reveal), 1, ((0.0, 0.0), (gap, low))),
    ]
    cuts = [CutThrough(*found, ((gap, 0.0), (gap + wide, low)), DOWNWARD)]
    band = numbered(built, PieceKind.BACK_BAND, "right")
    if band is not None:
        cuts.append(_band(built.opening, side, band, gap + wide, thick))
        sized.append(_beside(past, 0.0, -float(band[1].thickness), wording.figure(band[1].thickness)))
        sized.append(Sized((gap, 0.0), (gap, low), LEFTWARD, wording.figure(piece.thickness)))
        sized.append(
            Sized((past - float(band[1].width), low), (past, low), DOWNWARD, wording.figure(band[1].width), 1)
        )
    else:
        sized.append(_beside(past, 0.0, low, wording.figure(piece.thickness)))
    return Detail(
        "the right leg",
        f"Seen from above, the room below. Casing {wording.figure(piece.width)} by "
        f"{wording.figure(piece.thickness)}, {wording.figure(side.reveal)} of the jamb left showing.",
        across=reach + (LEAF if isinstance(shape, Door) else 0.0),
        above=deep,
        below=thick,
        cuts=(*plain.cuts, *cuts),
        jamb=plain.jamb,
        wall=(((plain.across, deep), (reach, 0.0)),),
        lines=(*plain.lines, ((plain.across, 0.0), (reach, 0.0), "edge")),
        said=(*plain.said, Said("wall", (reach, deep / 2), (22.0, 0.0))),
        sized=(*sized, *plain.sized),
    )


def _beside(x: float, top: float, bottom: float, text: str) -> Sized:
    return Sized((x, top), (x, bottom), RIGHTWARD, text)


def _band(
    opening: Opening, side: CasedSide, band: tuple[int, Piece], outer: float, thick: float
) -> CutThrough:
    """A back band beside the casing, and over its face by the lap."""
    stock = opening.trim.back_band
    assert stock is not None
    off, inner = float(stock.thickness), outer - float(stock.lap)
    edge = float(side.edge)
    lap = ((inner, -thick), (outer, -off)) if inner < outer and off > thick else None
    return CutThrough(*band, ((outer, 0.0), (edge, -off)), RIGHTWARD, rising=False, lap=lap)


def _jamb(built: Built, leg: Piece, wording: Wording) -> Detail:
    """The jamb as it stands, and the board that brings it out to a wall that stands proud of it."""
    readings = built.opening.readings
    thick = float(readings.jamb_thickness)
    board = numbered(built, PieceKind.JAMB_EXTENSION, leg.side)
    extension = built.opening.trim.extension
    proud = 0.0
    cuts: tuple[CutThrough, ...] = ()
    sized: tuple[Sized, ...] = ()
    if board is not None and extension is not None:
        proud, start = float(board[1].width), float(extension.reveal)
        box = (start, proud), (start + float(board[1].thickness), 0.0)
        cuts = (CutThrough(*board, box, LEFTWARD),)
        feet = (0.0, proud), (start, 0.0)
        sized = (Sized((0.0, proud), (0.0, 0.0), LEFTWARD, wording.figure(board[1].width), 1, feet),)
    deep = DEEP + proud
    return Detail(
        "the jamb",
        "",
        across=thick,
        above=deep,
        below=0.0,
        cuts=cuts,
        jamb=(((0.0, deep), (thick, proud)),),
        said=(Said("jamb", (0.0, (deep + proud) / 2), (-22.0, 0.0)),),
        sized=(
            *sized,
            Sized((0.0, deep), (thick, deep), UPWARD, wording.figure(readings.jamb_thickness)),
        ),
    )


def _door(built: Built, door: Door, wording: Wording) -> Detail:
    """The jamb made for a door, its stop, and the door's edge dashed."""
    hinged = door.hinge_side is Hand.RIGHT
    leg = numbered(built, PieceKind.JAMB_LEG, "hinge" if hinged else "strike")
    assert leg is not None
    deep, thick, leaf = float(door.jamb_depth), float(door.jamb_thickness), float(door.thickness)
    gap = -float(door.hinge_gap if hinged else door.strike_gap)
    cuts = [CutThrough(*leg, ((0.0, deep), (thick, 0.0)), LEFTWARD)]
    stop = numbered(built, PieceKind.DOOR_STOP, "right")
    if stop is not None:
        box = (-float(stop[1].thickness), leaf + float(stop[1].width)), (0.0, leaf)
        cuts.append(CutThrough(*stop, box, LEFTWARD, rising=False))
    return Detail(
        "the jamb",
        "",
        across=thick,
        above=deep,
        below=0.0,
        cuts=tuple(cuts),
        lines=(
            ((gap - LEAF, leaf), (gap, leaf), "hidden"),
            ((gap, leaf), (gap, 0.0), "hidden"),
            ((gap - LEAF, 0.0), (gap, 0.0), "hidden"),
        ),
        said=(Said("door", (gap - LEAF / 2, leaf / 2)),),
        sized=(
            Sized((0.0, deep), (thick, deep), UPWARD, wording.figure(door.jamb_thickness)),
            Sized((thick, deep), (thick, 0.0), RIGHTWARD, wording.figure(door.jamb_depth), 1),
        ),
    )
