"""Types of the document's part "movement". Generated; do not edit."""

from __future__ import annotations

from typing import TYPE_CHECKING, Literal

from longpoint_sdk.types._base import Request

if TYPE_CHECKING:
    Grain = Literal["flat_sawn", "quarter_sawn"]
    """How the board was sawn: its face shows flat (tangential) or quartered (radial) grain."""
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


class AirIn(Request, frozen=True, kw_only=True):
    """Conditions that the wood has come to rest in: the air's `temperature` and `relative_humidity` in percent,
    or the `moisture_content` that a meter showed.
    """

    moisture_content: float | None = None
    name: str = "air"
    relative_humidity: float | None = None
    temperature: float | None = None


class ConditionsIn(Request, frozen=True, kw_only=True):
    """The wood, the conditions its joints are made in, and those they will live through. `scale` is the
    thermometer's.

    Attributes:
        seasons: Each set of conditions they will live through.
    """

    species: Species
    installed: AirIn
    seasons: list[AirIn]
    grain: Grain = "flat_sawn"
    scale: Scale = "fahrenheit"
