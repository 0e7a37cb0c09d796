"""The wire's view of an opening's corners as they really stand."""

from __future__ import annotations

from typing import Annotated

import msgspec
from msgspec import Meta

from longpoint.api.wire.base import LengthText, Name, Wire
from longpoint.api.wire.lengths import RoundingIn
from longpoint.api.wire.parts import PartOut
from longpoint.api.wire.readings import ReadingsIn
from longpoint.geometry import Foot
from longpoint.lengths import Unit


class CornersRequest(Wire, kw_only=True):
    """Readings of an opening that may be out of square, and the casing that is to go round it.

    `square_gap` is the joint gap below which the opening is called square. `spring_degrees` is the angle between a
    leaning casing's back and the upright of the wall's plane: 90 lies flat, and gives no bevel.

    Attributes:
        unit: The unit of lengths that are written without one; without it each must carry its own.
    """

    readings: ReadingsIn
    casing_width: LengthText
    head_casing_width: LengthText | None = None
    casing_thickness: LengthText = "5/8 in"
    reveal: LengthText
    foot_style: Foot = Foot.STOOL
    square_gap: LengthText = "1/64 in"
    spring_degrees: Annotated[float, Meta(gt=0, le=90)] | None = None
    profile: Name = "casing"
    unit: Unit | None = None
    rounding: RoundingIn = RoundingIn()


class PointOut(msgspec.Struct, frozen=True):
    """A place on the wall, from the base's left inside corner, x along the base, as decimal text."""

    x: str
    y: str


class CornerOut(msgspec.Struct, frozen=True):
    """One inside corner of the jamb.

    `sides` meet there. `gap_if_square` is the joint gap that cutting for a square corner would leave, null where
    the corner is far from square.
    `compound` is the saw's setting where `spring_degrees` was given.

    Attributes:
        degrees: The inside angle.
        off_square_degrees: How far that is from 90; positive where it is wider.
    """

    sides: tuple[str, str]
    degrees: float
    off_square_degrees: float
    gap_if_square: str | None
    at: PointOut
    compound: CompoundOut | None


class CompoundOut(msgspec.Struct, frozen=True):
    """A compound cut: the table's turn off a square cut, and the blade's tilt from upright."""

    mitre_degrees: float
    bevel_degrees: float


class TapeCheckOut(msgspec.Struct, frozen=True):
    """A reading that the shape did not need, against what the others make of it; `difference` is measured less
    computed."""

    reading: str
    measured: str
    computed: str
    difference: str
    agrees: bool


class SuspectOut(msgspec.Struct, frozen=True):
    """A reading that alone could explain the disagreement: what it would be, and by how much it would change."""

    reading: str
    measured: str
    would_be: str
    change: str
    why: str


class CornersOut(msgspec.Struct, frozen=True):
    """Every corner, the base's right-hand one first, and the casing cut to them.

    `square` says that no joint would open by more than `square_gap` were all corners taken as square.
    `computed_by` is the diagonal or angle that decided the shape. `suspects` are told where readings disagree, the
    likeliest wrong one first: one reading too many shows that something is wrong, not for certain which.

    Attributes:
        pieces: The casing.
        checks: Readings that the shape did not need, against it.
    """

    corners: list[CornerOut]
    pieces: list[PartOut]
    square: bool
    computed_by: str | None
    checks: list[TapeCheckOut]
    suspects: list[SuspectOut]
