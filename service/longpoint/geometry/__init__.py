"""Readings in, parts out. Pure: exact on square corners, real numbers where the shape demands them."""

from longpoint.geometry.corners import CornerReading, Corners, compound, corners
from longpoint.geometry.faults import Fault, GeometryError
from longpoint.geometry.inputs import (
    Apron,
    ApronEnds,
    Arch,
    Casing,
    Foot,
    HeadStyle,
    Opening,
    Plinth,
    PlumbSides,
    Polygon,
    Quadrilateral,
    Readings,
    Reveals,
    Shape,
    Stool,
    Trim,
)
from longpoint.geometry.kernel import Corner, Frame
from longpoint.geometry.opening import Built, Pieces, build_opening
from longpoint.geometry.parts import CutKind, End, Hand, Mark, Notch, Part, PartKind, Step

__all__ = [
    "Apron",
    "ApronEnds",
    "Arch",
    "Built",
    "Casing",
    "Corner",
    "CornerReading",
    "Corners",
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
    "Quadrilateral",
    "Readings",
    "Reveals",
    "Shape",
    "Step",
    "Stool",
    "Trim",
    "build_opening",
    "compound",
    "corners",
]
