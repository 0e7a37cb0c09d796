"""`/v1/movement`: how a mitre opens as the wood dries or takes up moisture."""

from __future__ import annotations

from litestar import post
from litestar.params import JSONBody

from longpoint.api.document.examples_shapes import MOVEMENT
from longpoint.api.http.operation import operation
from longpoint.api.read.build import raise_geometry
from longpoint.api.read.reader import Path, Reader
from longpoint.api.wire.movement import MovementOut, MovementRequest, SeasonOut
from longpoint.api.wire.parts import gap_out
from longpoint.api.write.open_joints import read_air
from longpoint.geometry import GeometryError, Moved, Movement, Species, Wood, movement
from longpoint.lengths import Unit

SOURCE = "USDA Forest Products Laboratory, Wood Handbook (FPL-GTR-190): Eq. 4-5, Eq. 13-2, Table 13-5."
FIBREBOARD = (
    "Fibreboard follows no wood table: about 0.05 percent in its plane for each percent of moisture content, its own "
    "moisture content taken as wood's."
)
OUTSIDE = "Some moisture contents lie outside 6 to 14 percent, where the coefficients hold: only a rough guide there."


@post(
    "/v1/movement",
    **operation("compute_movement", summary="Work out how wood moves", tag="One opening", examples=MOVEMENT),
)
async def compute_movement(data: JSONBody[MovementRequest]) -> MovementOut:
    """Moisture content from the air, change across the grain, and how far a mitre opens, season by season."""
    read = Reader(data.unit)
    width = read.positive(data.width, (), "width")
    read.faults.raise_any()
    try:
        found = movement(
            Wood(data.species, data.grain, width, data.mitre_degrees),
            read_air(data.installed, data.scale),
            tuple(read_air(air, data.scale) for air in data.seasons),
        )
    except GeometryError as error:
        raise_geometry(error, _as_sent)
    return _out(found, data, data.unit or Unit.IN)


def _as_sent(path: Path) -> Path:
    return path[1:] if path[0] == "wood" else path


def _out(found: Movement, data: MovementRequest, unit: Unit) -> MovementOut:
    notes = [FIBREBOARD] if data.species is Species.MDF else []
    if not all(season.within_table for season in found.seasons):
        notes.append(OUTSIDE)
    return MovementOut(
        installed_moisture_content=round(found.installed, 2),
        coefficient=found.coefficient,
        seasons=[_season(season, unit) for season in found.seasons],
        widest_gap=gap_out(found.widest_gap, unit),
        source=SOURCE,
        notes=notes,
    )


def _season(one: Moved, unit: Unit) -> SeasonOut:
    return SeasonOut(
        name=one.air.name,
        moisture_content=round(one.moisture_content, 2),
        change=gap_out(one.change, unit),
        opens_degrees=round(one.opens_degrees, 4),
        gap=gap_out(one.gap, unit),
        opens_at=one.opens_at,
        within_table=one.within_table,
    )
