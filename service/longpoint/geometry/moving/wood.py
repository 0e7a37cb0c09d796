"""How wood moves with the air around it: moisture content, change across the grain, and a mitre's opening.

Source of equations and coefficients: USDA Forest Products Laboratory, Wood Handbook (FPL-GTR-190): Eq. 4-5
for moisture content, Eq. 13-2 and Table 13-5 for change across the grain. They are averages of clear wood;
one board may move half as much again.
"""

from __future__ import annotations

import math
from enum import StrEnum

from longpoint.geometry.faults import Faults
from longpoint.geometry.value import Value
from longpoint.lengths import Fraction

LEAST_FAHRENHEIT, GREATEST_FAHRENHEIT = 30.0, 140.0
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
    """How the board was sawn: its face shows flat (tangential) or quartered (radial) grain."""

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


class Air(Value, frozen=True):
    """Conditions that wood has come to rest in.

    Attributes:
        name: what to call them.
        fahrenheit, humidity: of the air, humidity in percent; None where the moisture content was measured.
        moisture_content: measured, percent; None where it follows from the air.
    """

    name: str
    fahrenheit: float | None = None
    humidity: float | None = None
    moisture_content: float | None = None


class Wood(Value, frozen=True):
    """A mitred piece. Attributes: species, grain, width across its face, the mitre off a square cut."""

    species: Species
    grain: Grain
    width: Fraction
    mitre_degrees: float = 45.0


class Moved(Value, frozen=True):
    """The piece in one set of conditions, against how it was when the joint was made.

    Attributes:
        air: the conditions.
        moisture_content: percent.
        change: of its width, inches; negative when it shrank.
        opens_degrees: the angle by which the mitre stands open.
        gap: width of that opening at its open end, inches.
        opens_at: "short point" when the wood dried, "long point" when it took up moisture, "" when neither.
        within_table: whether both moisture contents lie where the coefficients hold.
    """

    air: Air
    moisture_content: float
    change: float
    opens_degrees: float
    gap: float
    opens_at: str
    within_table: bool


class Movement(Value, frozen=True):
    """Attributes: moisture content when the joint was made, the piece in each set of conditions, widest gap."""

    installed: float
    coefficient: float
    seasons: tuple[Moved, ...]
    widest_gap: float


def movement(wood: Wood, installed: Air, seasons: tuple[Air, ...]) -> Movement:
    """How a mitred piece moves from the conditions it was fitted in to others.

    Raises:
        GeometryError: with every fault found; paths start with "wood", "installed" or "seasons".
    """
    faults = Faults()
    _check_wood(wood, faults)
    start = _moisture(installed, ("installed",), faults)
    contents = [_moisture(air, ("seasons", number), faults) for number, air in enumerate(seasons)]
    faults.raise_any()
    coefficient = COEFFICIENTS[wood.species][wood.grain is Grain.FLAT_SAWN]
    moved = tuple(
        _moved(wood, coefficient, air, start, content) for air, content in zip(seasons, contents, strict=True)
    )
    return Movement(start, coefficient, moved, max((each.gap for each in moved), default=0.0))


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


def mitre_opening(mitre_degrees: float, shrinkage: float) -> float:
    """The whole angle, degrees, by which two alike mitred pieces stand open after shrinking across.

    Length along the grain stays, so a piece cut M off square ends in an angle of atan((1 - s)/tan M) between
    joint and edge where it had 90 - M. Positive opens the short point, negative the long point.
    """
    run = math.tan(math.radians(mitre_degrees))
    return 2 * (90 - mitre_degrees - math.degrees(math.atan2(1 - shrinkage, run)))


def _moved(wood: Wood, coefficient: float, air: Air, start: float, end: float) -> Moved:
    width = float(wood.width)
    change = change_of_width(width, coefficient, start, end)
    opens = mitre_opening(wood.mitre_degrees, -change / width)
    joint = (width + change) / math.cos(math.radians(wood.mitre_degrees))
    return Moved(
        air=air,
        moisture_content=end,
        change=change,
        opens_degrees=abs(opens),
        gap=2 * joint * math.sin(math.radians(abs(opens) / 2)),
        opens_at="" if change == 0 else "short point" if change < 0 else "long point",
        within_table=min(start, end) >= DRIEST and max(start, end) <= WETTEST,
    )


def _moisture(air: Air, path: tuple[str | int, ...], faults: Faults) -> float:
    if air.moisture_content is not None:
        if air.fahrenheit is not None or air.humidity is not None:
            faults.add(
                (*path, "moisture_content"),
                "given-twice",
                "A measured moisture content already stands for the air: leave temperature and humidity out.",
            )
        if not 0 < air.moisture_content <= 30:
            faults.add(
                (*path, "moisture_content"),
                "out-of-range",
                "Wood in a house holds more than 0 and at most 30 percent of moisture. Measure again.",
            )
        return air.moisture_content
    if air.fahrenheit is None or air.humidity is None:
        faults.add(
            (*path, "moisture_content"),
            "missing",
            "Give the air's temperature and relative humidity, or the moisture content as the meter shows it.",
        )
        return DRIEST
    if not LEAST_FAHRENHEIT <= air.fahrenheit <= GREATEST_FAHRENHEIT:
        faults.add(
            (*path, "temperature"),
            "out-of-range",
            f"The table behind this holds from {LEAST_FAHRENHEIT:g} to {GREATEST_FAHRENHEIT:g} degrees Fahrenheit "
            "(-1 to 60 Celsius).",
        )
        return DRIEST
    if not 0 < air.humidity <= 95:
        faults.add(
            (*path, "relative_humidity"),
            "out-of-range",
            "Relative humidity is more than 0 and, where trim hangs, at most 95 percent.",
        )
        return DRIEST
    return equilibrium_moisture(air.fahrenheit, air.humidity)


def _check_wood(wood: Wood, faults: Faults) -> None:
    if wood.width <= 0:
        faults.add(("wood", "width"), "not-positive", "The width must be more than nothing.")
    if not 0 < wood.mitre_degrees < 85:
        faults.add(
            ("wood", "mitre_degrees"), "out-of-range", "A mitre lies between 0 and 85 degrees off square."
        )
