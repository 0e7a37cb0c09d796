"""What lies under and over a butted head: the fillet and the cap."""

from __future__ import annotations

from longpoint.geometry.frame.kernel import ZERO, Frame, meet
from longpoint.geometry.frame.sides import CasedSide
from longpoint.geometry.piece import End, Hand, Mark, Piece, Step
from longpoint.geometry.piece_names import PieceKind
from longpoint.geometry.pieces.returns import flat_return, front_miter
from longpoint.geometry.readings.inputs import Opening
from longpoint.geometry.readings.trim import HeadStrip, StripEnds
from longpoint.lengths import Real


def headdress_pieces(opening: Opening, frame: Frame, sides: tuple[CasedSide, ...]) -> tuple[Piece, ...]:
    """The fillet and the cap of a butted head, each followed by its returns."""
    trim, head = opening.trim, sides[2]
    pieces: list[Piece] = []
    fillet_height = trim.fillet.height if trim.fillet else ZERO
    if trim.fillet is not None:
        pieces += _strip(frame, sides, trim.fillet, head.reveal, PieceKind.FILLET, PieceKind.FILLET_RETURN)
    if trim.cap is not None:
        over = head.outer + fillet_height
        pieces += _strip(frame, sides, trim.cap, over, PieceKind.CAP, PieceKind.CAP_RETURN)
    return tuple(pieces)


def _strip(
    frame: Frame,
    sides: tuple[CasedSide, ...],
    strip: HeadStrip,
    offset: Real,
    kind: PieceKind,
    return_kind: PieceKind,
) -> tuple[Piece, ...]:
    right = meet(frame.corners[1], offset, sides[1].outer) + strip.overhang
    left = meet(frame.corners[2], offset, sides[3].outer) + strip.overhang
    length = frame.sides[2] + left + right
    returned = strip.ends is StripEnds.MITERED_RETURN
    # It lies flat, top up, its front edge away from the fence.
    body = Piece(
        kind=kind,
        side="",
        profile=strip.profile,
        short_point=length - 2 * strip.depth if returned else length,
        long_point=length,
        overall=length,
        width=strip.depth,
        thickness=strip.height,
        ends=(
            (front_miter("left", Hand.LEFT), front_miter("right", Hand.RIGHT))
            if returned
            else (End("left", Hand.LEFT), End("right", Hand.RIGHT))
        ),
        marks=(Mark("center line of opening", left + frame.sides[2] / 2),),
        how=(
            Step(
                "length",
                "head width + at each end (reveal + casing width + overhang)",
                (
                    ("head width", frame.sides[2]),
                    ("left reveal + casing width", left - strip.overhang),
                    ("right reveal + casing width", right - strip.overhang),
                    ("overhang", strip.overhang),
                ),
            ),
        ),
    )
    if not returned:
        return (body,)
    depth, height = strip.depth, strip.height
    return (
        body,
        flat_return(return_kind, Hand.LEFT, strip.profile, depth, height),
        flat_return(return_kind, Hand.RIGHT, strip.profile, depth, height),
    )
