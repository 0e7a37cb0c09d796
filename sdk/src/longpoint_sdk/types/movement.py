"""Types of the document's part "movement". Generated; do not edit."""

from __future__ import annotations

from typing import TYPE_CHECKING, Literal

from longpoint_sdk.types._base import Request

if TYPE_CHECKING:
    Grain = Literal["flat_sawn", "quarter_sawn"]
    """The way a board was sawn from the log. Look at its end: in a flat-sawn board the growth rings lie nearly
    along the wide face, in a quarter-sawn one they stand nearly square to it.
    """
    Scale = Literal["celsius", "fahrenheit"]
    """The thermometer's scale: what temperatures are in."""
    Species = Literal[
        "basswood",
        "beech",
        "black_cherry",
        "black_walnut",
        "douglas_fir",
        "eastern_white_pine",
        "mdf",
        "ponderosa_pine",
        "red_alder",
        "red_maple",
        "red_oak",
        "sugar_maple",
        "white_ash",
        "white_oak",
        "yellow_birch",
        "yellow_poplar",
    ]
    """The wood, by its common name."""
else:
    Grain = str
    Scale = str
    Species = str


class Air(Request, frozen=True, kw_only=True):
    """Conditions that wood has come to rest in: the air's, or what a meter showed in the wood.

    Attributes:
        moisture_content: The moisture content of the wood as a meter showed it, in percent.
        name: The name to call these conditions by. A name on one line, not starting with a space.
        relative_humidity: The relative humidity of the air, in percent.
        temperature: The temperature of the air, in degrees of the scale. Below 30 degrees Fahrenheit (-1
            Celsius), where the table begins, wood is taken to hold what it holds at 30.
    """

    moisture_content: float | None = None
    name: str = "air"
    relative_humidity: float | None = None
    temperature: float | None = None


class Conditions(Request, frozen=True, kw_only=True):
    """The wood, the air its joints are made in, and what they will live through.

    Attributes:
        species: The species of the wood.
        installed: The conditions in which the joint is made.
        seasons: Each set of conditions it will live through.
        grain: The way the boards were sawn from the log: flat-sawn or quarter-sawn. A flat-sawn board shrinks
            and swells more across its width.
        scale: The scale of the thermometer: Celsius or Fahrenheit.
    """

    species: Species
    installed: Air
    seasons: list[Air]
    grain: Grain = "flat_sawn"
    scale: Scale = "fahrenheit"
