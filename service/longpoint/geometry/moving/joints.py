"""How far an opening's mitres stand open as the seasons turn."""

from __future__ import annotations

from longpoint.geometry.moving.wood import MOST_MITRE, Conditions, movement
from longpoint.geometry.opening import Built
from longpoint.geometry.parts import CutKind, Part
from longpoint.geometry.piece_names import PartKind, PieceKey
from longpoint.geometry.readings.trim import HeadStyle
from longpoint.lengths import Fraction, Gap
from longpoint.values import Amount, Value

ROUND_THE_OPENING = (
    PartKind.CASING_LEG,
    PartKind.CASING_HEAD,
    PartKind.CASING_SILL,
    PartKind.BACK_BAND,
)
MITRED = (CutKind.MITRE, CutKind.COMPOUND)
# A foot a hair off square is no mitre: nothing meets it that moves alike.
LEAST_MITRE = 5


class OpenJoint(Value, frozen=True):
    """The joint of an opening that stands open the widest in one set of conditions.

    Attributes:
        name: The conditions, as they were named.
        moisture_content: What the wood comes to in them, percent.
        part: Key of the piece on one side of it; null where no joint is mitred.
        gap: At the joint's open end.
        opens_at: Which end that is, "short point" or "long point"; empty where nothing moved.
        within_table: Whether the moisture contents lie where the coefficients hold.
    """

    name: str
    moisture_content: Amount
    part: PieceKey | None
    gap: Gap
    opens_at: str
    within_table: bool


def open_joints(built: Built, conditions: Conditions) -> tuple[OpenJoint, ...]:
    """The widest mitre of an opening, season by season.

    Raises:
        GeometryError: with every fault of the conditions; paths start with "installed" or "seasons".
    """
    widest: list[OpenJoint] = []
    # Under a butted head or a block nothing is mitred with its like, though a leg may be cut at an angle there.
    mitred = built.opening.trim.head_style is HeadStyle.MITRED
    joints: dict[tuple[Fraction, float], PieceKey | None] = {
        (Fraction(part.width), _mitre(part)): part.key for part in built.parts if mitred and _mitre(part) > 0
    }
    for (width, degrees), key in (joints or {(Fraction(1), 45.0): None}).items():
        for number, moved in enumerate(movement(width, degrees, conditions).seasons):
            gap = moved.gap if key else Gap(0)
            if number == len(widest) or gap > widest[number].gap:
                opens_at = moved.opens_at if key else ""
                one = OpenJoint(moved.name, moved.moisture_content, key, gap, opens_at, moved.within_table)
                widest[number : number + 1] = [one]
    return tuple(widest)


def _mitre(part: Part) -> float:
    """The sharper of its mitres with its like; nought where it has none, or one too sharp to say how it moves."""
    if part.kind not in ROUND_THE_OPENING:
        return 0.0
    mitres = (float(end.mitre) for end in part.ends if end.cut in MITRED)
    return max((mitre for mitre in mitres if LEAST_MITRE < mitre < MOST_MITRE), default=0.0)
