"""How far an opening's mitres stand open over the seasons that a request names."""

from __future__ import annotations

from longpoint.api.read.build import raise_geometry
from longpoint.api.wire.movement import AirIn, ConditionsIn, OpenJointOut, Scale
from longpoint.api.wire.parts import gap_out
from longpoint.geometry import Air, Built, Conditions, GeometryError, open_joints
from longpoint.lengths import Unit


def read_air(wire: AirIn, scale: Scale) -> Air:
    """Conditions as the geometry room takes them, in Fahrenheit."""
    degrees = wire.temperature
    if degrees is not None and scale is Scale.CELSIUS:
        degrees = degrees * 9 / 5 + 32
    return Air(wire.name, degrees, wire.relative_humidity, wire.moisture_content)


def read_conditions(wire: ConditionsIn) -> Conditions:
    """The wood and its air as the geometry room takes them."""
    return Conditions(
        wire.species,
        wire.grain,
        read_air(wire.installed, wire.scale),
        tuple(read_air(air, wire.scale) for air in wire.seasons),
    )


def open_joints_out(built: Built, wire: ConditionsIn | None, unit: Unit) -> list[OpenJointOut] | None:
    """The widest joint season by season; None where no conditions were asked about.

    Raises:
        InvalidRequest: when the conditions say too little, or lie beyond the tables.
    """
    if wire is None:
        return None
    try:
        found = open_joints(built, read_conditions(wire))
    except GeometryError as error:
        raise_geometry(error, lambda path: ("movement", *path))
    return [
        OpenJointOut(
            name=one.air.name,
            moisture_content=round(one.moisture_content, 2),
            part=one.part,
            gap=gap_out(one.gap, unit),
            opens_at=one.opens_at,
            within_table=one.within_table,
        )
        for one in found
    ]
