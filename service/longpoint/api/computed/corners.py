"""`/v1/corners`: an opening's corners as they really stand."""

from __future__ import annotations

from litestar import post
from litestar.params import JSONBody

from longpoint.api.document.examples_shapes import CORNERS
from longpoint.api.http.operation import operation
from longpoint.api.read.build import field_sent, raise_geometry
from longpoint.api.read.reader import Path, Reader
from longpoint.api.read.readings import read_readings
from longpoint.api.wire.corners import (
    CompoundOut,
    CornerOut,
    CornersOut,
    CornersRequest,
    PointOut,
    SuspectOut,
    TapeCheckOut,
)
from longpoint.api.wire.lengths import length_writer
from longpoint.api.wire.parts import gap_out, part_out
from longpoint.geometry import (
    Casing,
    CornerReading,
    Corners,
    GeometryError,
    Opening,
    Trim,
    compound,
    corners,
)
from longpoint.lengths import Real, Unit


@post(
    "/v1/corners",
    **operation(
        "compute_corners", summary="Work out corners out of square", tag="One opening", examples=CORNERS
    ),
)
async def compute_corners(data: JSONBody[CornersRequest]) -> CornersOut:
    """Each corner's angle and the casing cut to it, as read: never squared up, and answered even where the
    readings disagree, with what the tape most likely got wrong."""
    read = Reader(data.unit)
    opening = _opening(read, data)
    read.faults.raise_any()
    try:
        found = corners(opening)
    except GeometryError as error:
        raise_geometry(error, lambda path: _as_sent(data, path))
    return _out(found, data)


def _opening(read: Reader, data: CornersRequest) -> Opening:
    width = read.positive(data.casing_width, (), "casing_width")
    thickness = read.positive(data.casing_thickness, (), "casing_thickness")
    head = read.optional_positive(data.head_casing_width, (), "head_casing_width")
    trim = Trim(
        Casing(data.profile, width, thickness),
        read.length(data.reveal, (), "reveal"),
        head_casing=None if head is None else Casing(data.profile, head, thickness),
    )
    readings = read_readings(read, data.readings, ("readings",))
    gap = read.length(data.square_gap, (), "square_gap")
    return Opening("", readings, trim, foot=data.foot_style, square_gap=gap)


def _as_sent(data: CornersRequest, path: Path) -> Path:
    if path[0] == "readings":
        return ("readings", field_sent(data.readings, path[1]), *path[2:])
    return (path[-1],)


def _out(found: Corners, data: CornersRequest) -> CornersOut:
    rounding, tape = data.rounding.value(), found.tape
    unit, write = rounding.to.unit, length_writer(rounding)
    return CornersOut(
        corners=[_corner(one, data, unit) for one in found.corners],
        pieces=[part_out(part, "", write) for part in found.pieces],
        square=found.square,
        computed_by=found.computed_by,
        checks=[
            TapeCheckOut(
                check.reading,
                _amount(check.measured, check.reading, unit),
                _amount(check.computed, check.reading, unit),
                _amount(check.difference, check.reading, unit),
                check.agrees,
            )
            for check in (tape.checks if tape else ())
        ],
        suspects=[
            SuspectOut(
                suspect.reading,
                _amount(suspect.measured, suspect.reading, unit),
                _amount(suspect.would_be, suspect.reading, unit),
                _amount(suspect.change, suspect.reading, unit),
                suspect.why,
            )
            for suspect in (tape.suspects if tape else ())
        ],
    )


def _corner(one: CornerReading, data: CornersRequest, unit: Unit) -> CornerOut:
    setting = None if data.spring_degrees is None else compound(one.degrees, data.spring_degrees)
    x, y = one.vertex
    return CornerOut(
        sides=one.sides,
        degrees=round(float(one.degrees), 4),
        off_square_degrees=round(float(one.off_square), 4),
        gap_if_square=None if one.gap_if_square is None else gap_out(one.gap_if_square, unit),
        at=PointOut(gap_out(float(x), unit), gap_out(float(y), unit)),
        compound=None if setting is None else CompoundOut(round(setting[0], 4), round(setting[1], 4)),
    )


def _amount(value: Real, reading: str, unit: Unit) -> str:
    """A reading's own amount: an angle in degrees, else a length."""
    return f"{float(value):.3f} degrees" if reading.endswith("_angle") else gap_out(float(value), unit)
