"""The wire's view of an opening: its readings, its trim, and what was decided for it alone."""

from __future__ import annotations

from typing import Annotated, ClassVar

from msgspec import Meta

from longpoint.api.wire.base import LengthText, Name, Wire
from longpoint.api.wire.lengths import RoundingIn
from longpoint.api.wire.movement import ConditionsIn
from longpoint.api.wire.readings import ReadingsIn
from longpoint.api.wire.trim import TrimIn
from longpoint.geometry import Foot, SillAnswer, WallAnswer
from longpoint.lengths import Unit

Count = Annotated[int, Meta(ge=1, le=500)]


class RevealsIn(Wire):
    """A side's own reveal, where it is not the trim's."""

    left: LengthText | None = None
    right: LengthText | None = None
    head: LengthText | None = None
    sill: LengthText | None = None


class HornsIn(Wire):
    """A stool's own horns at this opening, past the trim's outside edge."""

    left: LengthText | None = None
    right: LengthText | None = None


class WidthsIn(Wire):
    """Widths that pieces are ripped to at this opening."""

    left: LengthText | None = None
    right: LengthText | None = None
    head: LengthText | None = None
    sill: LengthText | None = None
    apron: LengthText | None = None


class WallLimitsIn(Wire):
    """How far the wall may lie off the jamb's edge: up to `caulk` it is caulked, up to `plane` planed or the casing
    back-bevelled; beyond, the jamb is extended. The defaults are common practice."""

    caulk: LengthText = "1/16 in"
    plane: LengthText = "3/16 in"


class OpeningFields(Wire):
    """What every opening says of itself.

    Attributes:
        mark: What it is called in the house; part of each piece's name.
        foot_style: What the trim stands on.
        reveals: Its own, where they are not the trim's.
        square_gap: The joint gap below which an opening that is out of square is treated as square.
        horns: Its own, where they are not the trim's.
        widths: Its own, where pieces are ripped.
        without_apron: Leaves the trim's apron out.
        wall_answer: Takes up what was found of a wall out of plane; until one is chosen no size changes for it.
        wall_limits: How far the wall may lie off the jamb's edge before the casing is planed or the jamb extended.
        sill_answer: What is done under a stool on a sill out of level.
    """

    mark: Name
    readings: ReadingsIn
    foot_style: Foot = Foot.STOOL
    reveals: RevealsIn = RevealsIn()
    square_gap: LengthText = "1/64 in"
    horns: HornsIn = HornsIn()
    widths: WidthsIn = WidthsIn()
    without_apron: bool = False
    wall_answer: WallAnswer = WallAnswer.FLAT
    wall_limits: WallLimitsIn = WallLimitsIn()
    sill_answer: SillAnswer = SillAnswer.SHIM


class OpeningIn(OpeningFields, kw_only=True):
    """One opening of a house. `trim` names one of the request's trim specs; `count` is how many are alike.

    Attributes:
        room: Where it is; money is told by room, too.
    """

    unit_is_stored: ClassVar[bool] = True

    trim: Name
    room: Annotated[str, Meta(max_length=80, pattern=r"^[^\x00]*$")] = ""
    count: Count = 1


class OpeningRequest(OpeningFields, kw_only=True):
    """One opening with its trim; answered with all of its parts.

    With `movement`, the answer also says how far its mitres will open as the wood moves.

    Attributes:
        unit: The unit of lengths that are written without one; without it each must carry its own.
    """

    trim: TrimIn
    movement: ConditionsIn | None = None
    unit: Unit | None = None
    rounding: RoundingIn = RoundingIn()
