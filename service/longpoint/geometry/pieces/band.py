"""The back band: a second molding round the outside of mitered casing, with miters and lengths of its own."""

from __future__ import annotations

from longpoint.geometry.frame.joint import CornerReach, miter, stand
from longpoint.geometry.frame.kernel import Corner, Frame
from longpoint.geometry.frame.sides import CasedSide, called_by_number
from longpoint.geometry.piece import Piece
from longpoint.geometry.piece_names import PieceKind
from longpoint.geometry.pieces.piece import frame_piece
from longpoint.geometry.readings.inputs import Opening
from longpoint.geometry.readings.trim import Casing


def back_band_pieces(opening: Opening, frame: Frame, sides: tuple[CasedSide, ...]) -> tuple[Piece, ...]:
    """Every piece of the band."""
    band = opening.trim.back_band
    assert band is not None
    stock = Casing(band.width, band.thickness, band.profile)
    banded = tuple(_banded(side, stock) for side in sides)
    return tuple(
        _piece(opening, frame, banded, index, stock) for index, side in enumerate(banded) if side.casing
    )


def _banded(side: CasedSide, stock: Casing) -> CasedSide:
    """The side as the band sees it: its inner edge where the band's lap ends on the casing."""
    if side.casing is None:
        return side
    return CasedSide(side.name, side.edge - stock.width, stock, side.edge, side.edge)


def _piece(opening: Opening, frame: Frame, sides: tuple[CasedSide, ...], index: int, stock: Casing) -> Piece:
    me, before, after = sides[index], sides[index - 1], sides[(index + 1) % len(sides)]
    start = _reach(opening, frame.corners[index - 1], me, before)
    finish = _reach(opening, frame.corners[index], me, after)
    meets = before.name, after.name
    called = called_by_number(opening, len(sides), "back band", index)
    jamb = frame.sides[index]
    return frame_piece(PieceKind.BACK_BAND, me, stock, jamb, start, finish, meets, called)


def _reach(opening: Opening, at: Corner, mine: CasedSide, theirs: CasedSide) -> CornerReach:
    return stand(opening.bottom, at, mine, theirs) if theirs.casing is None else miter(at, mine, theirs)
