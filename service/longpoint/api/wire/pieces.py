"""Requests for one kind of piece alone: flat, for a caller with a few readings and no schedule."""

from __future__ import annotations

import msgspec

from longpoint.api.wire.base import LengthText, Name, Wire
from longpoint.api.wire.lengths import RoundingIn
from longpoint.api.wire.parts import PartOut
from longpoint.geometry import ApronEnds, Foot, HeadStyle
from longpoint.lengths import Unit


class StoolRequest(Wire, kw_only=True):
    """A stool's readings and choices. Give `jamb_depth`, or `left_depth` and `right_depth` where they differ.

    Attributes:
        unit: The unit of lengths that are written without one; without it each must carry its own.
    """

    jamb_width: LengthText
    jamb_depth: LengthText | None = None
    left_depth: LengthText | None = None
    right_depth: LengthText | None = None
    reveal: LengthText
    casing_width: LengthText
    horn: LengthText
    nosing: LengthText
    apron_thickness: LengthText
    sash_clearance: LengthText = "0 in"
    thickness: LengthText = "3/4 in"
    profile: Name = "stool"
    unit: Unit | None = None
    rounding: RoundingIn = RoundingIn()


class ApronRequest(Wire, kw_only=True):
    """An apron's readings and choices: it ends flush with the casing's outside edges.

    Attributes:
        unit: The unit of lengths that are written without one; without it each must carry its own.
    """

    jamb_width: LengthText
    reveal: LengthText
    casing_width: LengthText
    thickness: LengthText
    width: LengthText = "2 1/2 in"
    ends: ApronEnds = ApronEnds.MITRED_RETURN
    profile: Name = "apron"
    unit: Unit | None = None
    rounding: RoundingIn = RoundingIn()


class CasingRequest(Wire, kw_only=True):
    """Casing's readings and choices, for plumb sides. Give `leg_height`, or `left_height` and `right_height`.

    Attributes:
        unit: The unit of lengths that are written without one; without it each must carry its own.
    """

    jamb_width: LengthText
    leg_height: LengthText | None = None
    left_height: LengthText | None = None
    right_height: LengthText | None = None
    reveal: LengthText
    casing_width: LengthText
    casing_thickness: LengthText = "5/8 in"
    foot_style: Foot = Foot.STOOL
    head_style: HeadStyle = HeadStyle.MITRED
    overhang: LengthText = "0 in"
    floor_clearance: LengthText = "0 in"
    plinth_height: LengthText | None = None
    profile: Name = "casing"
    unit: Unit | None = None
    rounding: RoundingIn = RoundingIn()


class PartsOut(msgspec.Struct, frozen=True):
    """The parts asked for, and what was assumed."""

    parts: list[PartOut]
    notes: list[str]
