"""How wood moves with the air around it: moisture content, change across the grain, and a miter's opening.

Source of equations and coefficients: USDA Forest Products Laboratory, Wood Handbook (FPL-GTR-190): Eq. 4-5
for moisture content, Eq. 13-2 and Table 13-5 for change across the grain. They are averages of clear wood;
one board may move half as much again. How far a miter opens follows with its length along the grain kept
(`geometry/fit/miter_gap.py`).
"""

from __future__ import annotations

from enum import StrEnum
from typing import Annotated

from msgspec import Meta

from longpoint.geometry.faults import GeometryError
from longpoint.geometry.fit.miter_gap import miter_gap
from longpoint.lengths import Fraction, Gap
from longpoint.texts import Sentence, say
from longpoint.values import Amount, Angle, Faults, Given, Name, Path, Value

SOURCE = "USDA Forest Products Laboratory, Wood Handbook (FPL-GTR-190): Eq. 4-5, Eq. 13-2, Table 13-5."
FIBREBOARD = say("note", "wood.fiberboard")
OUTSIDE = say("note", "wood.outside-table")
COLDER = say("note", "wood.colder-than-table")
# Table 4-2 begins at 30 degrees; the colder the air, the less its temperature matters there (2.6 percent at 30 and 50).
COLDEST_TABLED, GREATEST_FAHRENHEIT = 30.0, 140.0
MOST_MITER = 85
# Table 13-5 holds between these moisture contents, percent.
DRIEST, WETTEST = 6.0, 14.0


class Species(StrEnum):
    """The wood, by its common name."""

    BASSWOOD = "basswood"
    BEECH = "beech"
    BLACK_CHERRY = "black_cherry"
    BLACK_WALNUT = "black_walnut"
    DOUGLAS_FIR = "douglas_fir"
    EASTERN_WHITE_PINE = "eastern_white_pine"
    MDF = "mdf"
    PONDEROSA_PINE = "ponderosa_pine"
    RED_ALDER = "red_alder"
    RED_MAPLE = "red_maple"
    RED_OAK = "red_oak"
    SUGAR_MAPLE = "sugar_maple"
    WHITE_ASH = "white_ash"
    WHITE_OAK = "white_oak"
    YELLOW_BIRCH = "yellow_birch"
    YELLOW_POPLAR = "yellow_poplar"


class Grain(StrEnum):
    """The way a board was sawn from the log. Look at its end: in a flat-sawn board the growth rings lie nearly along
    the wide face, in a quarter-sawn one they stand nearly square to it."""

    FLAT_SAWN = "flat_sawn"
    QUARTER_SAWN = "quarter_sawn"


# Change per inch of width and per percent of moisture content: quarter-sawn (radial), flat-sawn (tangential).
# Fibreboard has no grain: about 0.05 percent in its plane for each percent of moisture content.
COEFFICIENTS = {
    Species.BASSWOOD: (0.00230, 0.00330),
    Species.BEECH: (0.00190, 0.00431),
    Species.BLACK_CHERRY: (0.00126, 0.00248),
    Species.BLACK_WALNUT: (0.00190, 0.00274),
    Species.DOUGLAS_FIR: (0.00165, 0.00267),
    Species.EASTERN_WHITE_PINE: (0.00071, 0.00212),
    Species.MDF: (0.0005, 0.0005),
    Species.PONDEROSA_PINE: (0.00133, 0.00216),
    Species.RED_ALDER: (0.00151, 0.00256),
    Species.RED_MAPLE: (0.00137, 0.00289),
    Species.RED_OAK: (0.00158, 0.00369),
    Species.SUGAR_MAPLE: (0.00165, 0.00353),
    Species.WHITE_ASH: (0.00169, 0.00274),
    Species.WHITE_OAK: (0.00180, 0.00365),
    Species.YELLOW_BIRCH: (0.00256, 0.00338),
    Species.YELLOW_POPLAR: (0.00158, 0.00289),
}


class Scale(StrEnum):
    """The thermometer's scale: what temperatures are in."""

    FAHRENHEIT = "fahrenheit"
    CELSIUS = "celsius"


class Air(Given, frozen=True):
    """Conditions that wood has come to rest in: the air's, or what a meter showed in the wood.

    Attributes:
        name: The name to call these conditions by.
        temperature: The temperature of the air, in degrees of the scale. Below 30 degrees Fahrenheit (-1 Celsius),
            where the table begins, wood is taken to hold what it holds at 30.
        relative_humidity: The relative humidity of the air, in percent.
        moisture_content: The moisture content of the wood as a meter showed it, in percent.
    """

    name: Name = "air"
    temperature: Annotated[float, Meta(ge=-60, le=200)] | None = None
    relative_humidity: Annotated[float, Meta(gt=0, le=100)] | None = None
    moisture_content: Annotated[float, Meta(gt=0, le=30)] | None = None


class Conditions(Given, frozen=True, kw_only=True):
    """The wood, the air its joints are made in, and what they will live through.

    Attributes:
        species: The species of the wood.
        grain: The way the boards were sawn from the log: flat-sawn or quarter-sawn. A flat-sawn board shrinks and
            swells more across its width.
        installed: The conditions in which the joint is made.
        seasons: Each set of conditions it will live through.
        scale: The scale of the thermometer: Celsius or Fahrenheit.
    """

    species: Species
    grain: Grain = Grain.FLAT_SAWN
    installed: Air
    seasons: Annotated[tuple[Air, ...], Meta(min_length=1, max_length=24)]
    scale: Scale = Scale.FAHRENHEIT

    def report(self, faults: Faults, at: Path = ()) -> None:
        """Note where the air says too little, too much, or lies beyond the tables."""
        for path, air in self.airs:
            _moisture(air, self.scale, (*at, *path), faults)

    @property
    def airs(self) -> list[tuple[tuple[str | int, ...], Air]]:
        """The air the joint is made in, then that of every season, each with its place."""
        return [
            (("installed",), self.installed),
            *((("seasons", number), air) for number, air in enumerate(self.seasons)),
        ]


class Moved(Value, frozen=True):
    """A mitered piece in one set of conditions, against how it was when the joint was made.

    Attributes:
        name: The conditions, as they were named.
        moisture_content: The moisture content that the wood comes to in them, in percent.
        change: The change of the piece's width; negative where it shrank.
        opens_degrees: The angle by which the miter stands open.
        gap: The width of the gap that opens, measured at its open end.
        opens_at: "short point" when the wood dried, "long point" when it took up moisture, empty when neither.
        within_table: Whether both moisture contents lie where the coefficients hold.
    """

    name: str
    moisture_content: Amount
    change: Gap
    opens_degrees: Angle
    gap: Gap
    opens_at: str
    within_table: bool


class Movement(Value, frozen=True):
    """It says how a mitered piece moves. Coefficients are averages of clear wood: a board may move half as much again.

    Attributes:
        installed_moisture_content: The wood's moisture content when the joint was made, in percent.
        coefficient: The change per unit of width and per percent of moisture content.
        seasons: The piece in each set of conditions.
        widest_gap: The widest gap that the joint opens to in any season.
        source: The source of the formulas and coefficients.
        notes: They say what else there is to know.
    """

    installed_moisture_content: Amount
    coefficient: float
    seasons: tuple[Moved, ...]
    widest_gap: Gap
    source: str = SOURCE
    notes: tuple[Sentence, ...] = ()


def movement(width: Fraction, miter_degrees: float, conditions: Conditions) -> Movement:
    """How a mitered piece moves from the conditions it was installed in to others.

    Args:
        width: of the piece across its face.
        miter_degrees: its miter off a square cut.
        conditions: the wood and its air.

    Raises:
        GeometryError: with every fault found; paths start with "width", "miter_degrees", "installed" or "seasons".
    """
    faults = Faults()
    _check_piece(width, miter_degrees, faults)
    start, *contents = [_moisture(air, conditions.scale, path, faults) for path, air in conditions.airs]
    faults.raise_any(GeometryError)
    coefficient = COEFFICIENTS[conditions.species][conditions.grain is Grain.FLAT_SAWN]
    moved = tuple(
        _moved(float(width), miter_degrees, coefficient, air.name, start, content)
        for air, content in zip(conditions.seasons, contents, strict=True)
    )
    notes = [FIBREBOARD] if conditions.species is Species.MDF else []
    if not all(season.within_table for season in moved):
        notes.append(OUTSIDE)
    if any(_colder(air, conditions.scale) for _, air in conditions.airs):
        notes.append(COLDER)
    widest = max((each.gap for each in moved), default=0.0)
    return Movement(Amount(start), coefficient, moved, Gap(widest), notes=tuple(notes))


def equilibrium_moisture(fahrenheit: float, humidity: float) -> float:
    """The moisture content, percent, that wood comes to in air of this temperature and relative humidity.

    Wood Handbook, Eq. 4-5, in its Fahrenheit form.
    """
    t, h = fahrenheit, humidity / 100
    w = 330 + 0.452 * t + 0.00415 * t * t
    k = 0.791 + 0.000463 * t - 8.44e-7 * t * t
    k1 = 6.34 + 0.000775 * t - 9.35e-5 * t * t
    k2 = 1.09 + 0.0284 * t - 9.04e-5 * t * t
    kh = k * h
    first, second = k1 * kh, k1 * k2 * kh * kh
    return 1800 / w * (kh / (1 - kh) + (first + 2 * second) / (1 + first + second))


def change_of_width(width: float, coefficient: float, start: float, end: float) -> float:
    """By how much a width changes from one moisture content to another, percent. Wood Handbook, Eq. 13-2."""
    return width * coefficient * (end - start)


def _moved(
    width: float, miter_degrees: float, coefficient: float, name: str, start: float, end: float
) -> Moved:
    change = change_of_width(width, coefficient, start, end)
    joint = miter_gap(width, change, miter_degrees)
    return Moved(
        name=name,
        moisture_content=Amount(end),
        change=Gap(change),
        opens_degrees=Angle(joint.opens_degrees),
        gap=Gap(joint.gap),
        opens_at=joint.opens_at,
        within_table=min(start, end) >= DRIEST and max(start, end) <= WETTEST,
    )


def _fahrenheit(degrees: float, scale: Scale) -> float:
    return degrees * 9 / 5 + 32 if scale is Scale.CELSIUS else degrees


def _colder(air: Air, scale: Scale) -> bool:
    return air.temperature is not None and _fahrenheit(air.temperature, scale) < COLDEST_TABLED


def _moisture(air: Air, scale: Scale, path: tuple[str | int, ...], faults: Faults) -> float:
    if air.moisture_content is not None:
        if air.temperature is not None or air.relative_humidity is not None:
            detail = say("problem", "air.given-twice")
            faults.add((*path, "moisture_content"), "given-twice", detail)
        if not 0 < air.moisture_content <= 30:
            faults.add(
                (*path, "moisture_content"),
                "out-of-range",
                say("problem", "air.moisture-out-of-range"),
            )
        return air.moisture_content
    if air.temperature is None or air.relative_humidity is None:
        faults.add(
            (*path, "moisture_content"),
            "missing",
            say("problem", "air.missing"),
        )
        return DRIEST
    fahrenheit = _fahrenheit(air.temperature, scale)
    if fahrenheit > GREATEST_FAHRENHEIT:
        faults.add(
            (*path, "temperature"),
            "out-of-range",
            say("problem", "air.temperature-out-of-range", most=GREATEST_FAHRENHEIT),
        )
        return DRIEST
    if not 0 < air.relative_humidity <= 95:
        faults.add(
            (*path, "relative_humidity"),
            "out-of-range",
            say("problem", "air.humidity-out-of-range"),
        )
        return DRIEST
    return equilibrium_moisture(max(fahrenheit, COLDEST_TABLED), air.relative_humidity)


def _check_piece(width: Fraction, miter_degrees: float, faults: Faults) -> None:
    if width <= 0:
        faults.add(("width",), "not-positive", say("problem", "wood.width-not-positive"))
    if not 0 < miter_degrees < MOST_MITER:
        faults.add(("miter_degrees",), "out-of-range", say("problem", "wood.miter-out-of-range"))
