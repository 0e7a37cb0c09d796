"""How far an opening's mitres stand open as the seasons turn."""

from __future__ import annotations

from longpoint.geometry.moving.wood import Air, Grain, Species, Wood, movement
from longpoint.geometry.opening import Built
from longpoint.geometry.parts import CutKind, Part, PartKind
from longpoint.geometry.readings.trim import HeadStyle
from longpoint.geometry.value import Value
from longpoint.lengths import Fraction

ROUND_THE_OPENING = (
    PartKind.CASING_LEG,
    PartKind.CASING_HEAD,
    PartKind.CASING_SILL,
    PartKind.BACK_BAND,
)
MITRED = (CutKind.MITRE, CutKind.COMPOUND)
# A foot a hair off square is no mitre: nothing meets it that moves alike.
LEAST_MITRE = 5


class Conditions(Value, frozen=True):
    """Attributes: the wood, how it was sawn, the air its joints were made in, and what they will live through."""

    species: Species
    grain: Grain
    installed: Air
    seasons: tuple[Air, ...]


class OpenJoint(Value, frozen=True):
    """The joint of an opening that stands open the widest in one set of conditions.

    Attributes:
        air: the conditions.
        moisture_content: percent.
        part: key of the piece; "" where no joint is mitred.
        gap: at the joint's open end, inches.
        opens_at: "short point", "long point" or "".
        within_table: whether the coefficients hold for it.
    """

    air: Air
    moisture_content: float
    part: str
    gap: float
    opens_at: str
    within_table: bool


def open_joints(built: Built, conditions: Conditions) -> tuple[OpenJoint, ...]:
    """The widest mitre of an opening, season by season.

    Raises:
        GeometryError: with every fault of the conditions; paths start with "installed" or "seasons".
    """
    species, grain = conditions.species, conditions.grain
    widest: list[OpenJoint] = []
    # Under a butted head or a block nothing is mitred with its like, though a leg may be cut at an angle there.
    mitred = built.opening.trim.head_style is HeadStyle.MITRED
    woods = {_wood(part, species, grain): part.key for part in built.parts if mitred and _mitre(part) > 0}
    woods = woods or {Wood(species, grain, Fraction(1)): ""}
    for wood, key in woods.items():
        for number, moved in enumerate(movement(wood, conditions.installed, conditions.seasons).seasons):
            gap = moved.gap if key else 0.0
            if number == len(widest) or gap > widest[number].gap:
                opens_at = moved.opens_at if key else ""
                one = OpenJoint(moved.air, moved.moisture_content, key, gap, opens_at, moved.within_table)
                widest[number : number + 1] = [one]
    return tuple(widest)


def check_conditions(conditions: Conditions) -> None:
    """Make sure that the conditions say enough, and lie within the tables.

    Raises:
        GeometryError: as `open_joints` does.
    """
    wood = Wood(conditions.species, conditions.grain, Fraction(1))
    movement(wood, conditions.installed, conditions.seasons)


def _mitre(part: Part) -> float:
    """The sharper of its mitres with its like; nought where it has none."""
    if part.kind not in ROUND_THE_OPENING:
        return 0.0
    mitres = [float(end.mitre) for end in part.ends if end.cut in MITRED and end.mitre > LEAST_MITRE]
    return max(mitres, default=0.0)


def _wood(part: Part, species: Species, grain: Grain) -> Wood:
    return Wood(species, grain, Fraction(part.width), _mitre(part))
