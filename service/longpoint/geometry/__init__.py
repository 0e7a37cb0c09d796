"""Readings in, parts out. Pure: exact on square corners, real numbers where the shape demands them."""

from longpoint.geometry.faults import Fault, GeometryError
from longpoint.geometry.inputs import (
    Apron,
    ApronEnds,
    Casing,
    Foot,
    HeadStyle,
    Opening,
    Plinth,
    PlumbSides,
    Polygon,
    Readings,
    Reveals,
    Stool,
    Trim,
)
from longpoint.geometry.kernel import Corner, Frame
from longpoint.geometry.opening import Built, Pieces, build_opening
from longpoint.geometry.parts import CutKind, End, Hand, Mark, Notch, Part, PartKind, Step

__all__ = [
    "Apron",
    "ApronEnds",
    "Built",
    "Casing",
    "Corner",
    "CutKind",
    "End",
    "Fault",
    "Foot",
    "Frame",
    "GeometryError",
    "Hand",
    "HeadStyle",
    "Mark",
    "Notch",
    "Opening",
    "Part",
    "PartKind",
    "Pieces",
    "Plinth",
    "PlumbSides",
    "Polygon",
    "Readings",
    "Reveals",
    "Step",
    "Stool",
    "Trim",
    "build_opening",
]
