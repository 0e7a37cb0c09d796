"""The wire's view of wood's movement."""

from __future__ import annotations

from enum import StrEnum
from typing import Annotated

import msgspec
from msgspec import Meta

from longpoint.api.wire.base import LengthText, Name, Wire
from longpoint.geometry import Grain, Species
from longpoint.lengths import Unit


class Scale(StrEnum):
    """The thermometer's scale: what temperatures are in."""

    FAHRENHEIT = "fahrenheit"
    CELSIUS = "celsius"


class AirIn(Wire):
    """Conditions that the wood has come to rest in: the air's `temperature` and `relative_humidity` in percent, or
    the `moisture_content` that a meter showed."""

    name: Name = "air"
    temperature: Annotated[float, Meta(ge=-60, le=200)] | None = None
    relative_humidity: Annotated[float, Meta(gt=0, le=100)] | None = None
    moisture_content: Annotated[float, Meta(gt=0, le=30)] | None = None


class ConditionsIn(Wire, kw_only=True):
    """The wood, the conditions its joints are made in, and those they will live through. `scale` is the
    thermometer's.

    Attributes:
        seasons: Each set of conditions they will live through.
    """

    species: Species
    grain: Grain = Grain.FLAT_SAWN
    installed: AirIn
    seasons: Annotated[list[AirIn], Meta(min_length=1, max_length=24)]
    scale: Scale = Scale.FAHRENHEIT


class MovementRequest(ConditionsIn, kw_only=True):
    """A mitred piece, the conditions its joint was made in, and those it will live through.

    `mitre_degrees` is off a square cut.

    Attributes:
        unit: The unit of lengths that are written without one; without it each must carry its own.
    """

    width: LengthText
    mitre_degrees: Annotated[float, Meta(gt=0, lt=85)] = 45.0
    unit: Unit | None = None


class OpenJointOut(msgspec.Struct, frozen=True):
    """The joint of an opening that stands open the widest in one set of conditions: the `part` on one side of it,
    empty where none is mitred; `gap` at its open end, the short or the long point.

    Attributes:
        name: The conditions, as they were named.
        moisture_content: What the wood comes to in them, in percent.
        within_table: Whether the moisture contents lie where the coefficients hold.
    """

    name: str
    moisture_content: float
    part: str
    gap: str
    opens_at: str
    within_table: bool


class SeasonOut(msgspec.Struct, frozen=True):
    """The piece in one set of conditions. `change` is of its width, negative where it shrank; `gap` is the mitre's
    opening at its open end, `opens_at` the short or the long point, empty where nothing moved.

    Attributes:
        name: The conditions, as they were named.
        moisture_content: What the wood comes to in them, in percent.
        opens_degrees: By how much the joint opens.
        within_table: Whether the moisture contents lie where the coefficients hold.
    """

    name: str
    moisture_content: float
    change: str
    opens_degrees: float
    gap: str
    opens_at: str
    within_table: bool


class MovementOut(msgspec.Struct, frozen=True):
    """How the piece moves. Coefficients are averages of clear wood: one board may move half as much again.

    `coefficient` is the change per unit of width and per percent of moisture content.

    Attributes:
        installed_moisture_content: When the joint was made, in percent.
        widest_gap: The widest of all seasons.
        source: Where formulas and coefficients come from.
    """

    installed_moisture_content: float
    coefficient: float
    seasons: list[SeasonOut]
    widest_gap: str
    source: str
    notes: list[str]
