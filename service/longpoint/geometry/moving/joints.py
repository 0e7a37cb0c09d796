"""How far an opening's miters stand open as the seasons turn."""

from __future__ import annotations

from longpoint.geometry.moving.wood import MOST_MITER, Conditions, movement
from longpoint.geometry.opening import Built
from longpoint.geometry.piece import CutKind, Piece
from longpoint.geometry.piece_names import PieceKey, PieceKind
from longpoint.geometry.readings.trim import HeadStyle
from longpoint.lengths import Fraction, Gap
from longpoint.values import Amount, Value

ROUND_THE_OPENING = (
    PieceKind.SIDE_CASING,
    PieceKind.HEAD_CASING,
    PieceKind.BOTTOM_CASING,
    PieceKind.BACK_BAND,
)
MITERED = (CutKind.MITER, CutKind.COMPOUND)
# A foot a hair off square is no miter: nothing meets it that moves alike.
LEAST_MITER = 5


class OpenJoint(Value, frozen=True):
    """The joint of an opening that stands open the widest in one set of conditions.

    Attributes:
        name: The conditions, as they were named.
        moisture_content: The moisture content that the wood comes to in them, in percent.
        piece: The key of the piece on one side of it; null where no joint is mitered.
        gap: The width of the gap at the joint's open end.
        opens_at: Which end that is, "short point" or "long point"; empty where nothing moved.
        within_table: Whether the moisture contents lie where the coefficients hold.
    """

    name: str
    moisture_content: Amount
    piece: PieceKey | None
    gap: Gap
    opens_at: str
    within_table: bool


def open_joints(built: Built, conditions: Conditions) -> tuple[OpenJoint, ...]:
    """The widest miter of an opening, season by season.

    Raises:
        GeometryError: with every fault of the conditions; paths start with "installed" or "seasons".
    """
    widest: list[OpenJoint] = []
    # Under a butted head or a block nothing is mitered with its like, though a leg may be cut at an angle there.
    mitered = built.opening.trim.head_style is HeadStyle.MITERED
    joints: dict[tuple[Fraction, float], PieceKey | None] = {
        (Fraction(piece.width), _miter(piece)): piece.key
        for piece in built.pieces
        if mitered and _miter(piece) > 0
    }
    for (width, degrees), key in (joints or {(Fraction(1), 45.0): None}).items():
        for number, moved in enumerate(movement(width, degrees, conditions).seasons):
            gap = moved.gap if key else Gap(0)
            if number == len(widest) or gap > widest[number].gap:
                opens_at = moved.opens_at if key else ""
                one = OpenJoint(moved.name, moved.moisture_content, key, gap, opens_at, moved.within_table)
                widest[number : number + 1] = [one]
    return tuple(widest)


def _miter(piece: Piece) -> float:
    """The sharper of its miters with its like; zero where it has none, or one too sharp to say how it moves."""
    if piece.kind not in ROUND_THE_OPENING:
        return 0.0
    miters = (float(end.miter) for end in piece.ends if end.cut in MITERED)
    return max((miter for miter in miters if LEAST_MITER < miter < MOST_MITER), default=0.0)
