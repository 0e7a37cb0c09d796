"""What is known of an opening: what the tape read there, and what was decided for it. Inches, exact."""

from __future__ import annotations

from enum import StrEnum
from functools import cached_property
from typing import ClassVar

from longpoint.geometry.faults import GeometryError
from longpoint.geometry.readings.outline import Outline
from longpoint.geometry.readings.readings import Readings
from longpoint.geometry.readings.taken import outline_of
from longpoint.geometry.readings.trim import Trim
from longpoint.lengths import Length, PositiveLength
from longpoint.texts import say
from longpoint.values import Faults, Given, Name, Path


class Bottom(StrEnum):
    """What the side casings stand on: a window's `stool`, a bottom `casing` (a picture frame, without a stool), the
    `floor`, or a `plinth` block at each foot."""

    STOOL = "stool"
    CASING = "casing"
    FLOOR = "floor"
    PLINTH = "plinth"


ON_FLOOR = (Bottom.FLOOR, Bottom.PLINTH)


class Reveals(Given, frozen=True):
    """Each side's own reveal, where it is not the trim's: the jamb left showing from its inside face to the casing.

    Attributes:
        left: The reveal on the left jamb, measured from the jamb's inside face to the casing's inner edge.
        right: The reveal on the right jamb, measured from the jamb's inside face to the casing's inner edge.
        head: The reveal under the head casing, measured from the head jamb's underside up to the casing's lower
            edge.
        sill: The reveal above a picture frame's bottom casing, measured from the sill jamb's face down to the
            casing's upper edge.
    """

    left: Length | None = None
    right: Length | None = None
    head: Length | None = None
    sill: Length | None = None


NO_REVEALS = Reveals()


class WallAnswer(StrEnum):
    """What is done where the wall does not lie flush. `flat` changes no size: the casing is cut as on a flush wall;
    `lean` cuts it to lean from the jamb onto the wall; `extend` brings the jamb out to the wall by boards."""

    FLAT = "flat"
    LEAN = "lean"
    EXTEND = "extend"


class SillAnswer(StrEnum):
    """What is done under a stool on a sill out of level: shims, or one tapered strip."""

    SHIM = "shim"
    TAPERED_SHIM = "tapered_shim"


class Limits(Given, frozen=True):
    """How far the wall may lie off the jamb's edge; beyond `plane` the jamb is extended. Common practice, no source.

    Attributes:
        caulk: Caulk alone closes the joint of casing and wall where the wall's face stands no more than this proud or
            shy of the jamb's edge, measured square to the wall.
        plane: No extension is needed where the wall's face lies no farther than this proud or shy of the jamb's edge,
            measured square to the wall: the wall is cut back with a plane, or the casing's back beveled to lie on both.
    """

    caulk: Length = Length.of("1/16 in")
    plane: Length = Length.of("3/16 in")


USUAL_LIMITS = Limits()


class Horns(Given, frozen=True):
    """A stool's own horns at this opening, where they are not the trim's: past the trim's outside edge.

    Attributes:
        left: The left horn's length, measured from the trim's outside edge to the stool's left end.
        right: The right horn's length, measured from the trim's outside edge to the stool's right end.
    """

    left: Length | None = None
    right: Length | None = None


NO_HORNS = Horns()


class Widths(Given, frozen=True):
    """Widths that pieces are ripped to at this opening; without one the stock's own is kept.

    Attributes:
        left: The left side casing's width, measured across its face from edge to edge.
        right: The right side casing's width, measured across its face from edge to edge.
        head: The head casing's width, measured across its face from edge to edge.
        sill: The width of a picture frame's bottom casing, measured across its face from edge to edge.
        apron: The apron's width, measured down the wall from its upper to its lower edge.
    """

    left: PositiveLength | None = None
    right: PositiveLength | None = None
    head: PositiveLength | None = None
    sill: PositiveLength | None = None
    apron: PositiveLength | None = None


NO_WIDTHS = Widths()


class Confirmed(Given, frozen=True):
    """Readings that were doubted and stand as they are. Each is given as it was read: nothing more is said of it for
    as long as the opening has that very reading, and another is looked at anew.

    Attributes:
        jamb_width: The `jamb_width` that is confirmed.
        head_width: The `head_width` that is confirmed.
        jamb_height: The `jamb_height` that is confirmed.
        left_jamb_height: The `left_jamb_height` that is confirmed.
        right_jamb_height: The `right_jamb_height` that is confirmed.
        jamb_depth: The `jamb_depth` that is confirmed.
        left_depth: The `left_depth` that is confirmed.
        right_depth: The `right_depth` that is confirmed.
        door_width: The door's `width` that is confirmed.
        door_height: The door's `height` that is confirmed.
    """

    names_anothers: ClassVar[bool] = True

    jamb_width: PositiveLength | None = None
    head_width: PositiveLength | None = None
    jamb_height: PositiveLength | None = None
    left_jamb_height: PositiveLength | None = None
    right_jamb_height: PositiveLength | None = None
    jamb_depth: PositiveLength | None = None
    left_depth: PositiveLength | None = None
    right_depth: PositiveLength | None = None
    door_width: PositiveLength | None = None
    door_height: PositiveLength | None = None


NONE_CONFIRMED = Confirmed()


class AnyOpening(Given, frozen=True, dict=True):
    """An opening and what was decided for it, its trim apart.

    Attributes:
        mark: What it is called in the house; part of each piece's name.
        readings: The readings that the tape gave at this opening.
        bottom: It says what the casing stands on.
        reveals: The reveals of this opening, where they are not the trim's.
        square_gap: The widest gap, measured at the open end of a miter, that cuts for square corners may leave: up to
            it an opening that is out of square is treated as square.
        horns: The horns of this opening, where they are not the trim's.
        widths: The widths that pieces of this opening are ripped to.
        without_apron: True leaves out the apron that the trim has.
        wall_answer: The remedy chosen for a wall out of plane; until one is chosen no size changes for it.
        wall_limits: It says how far the wall may lie off the jamb's edge before the casing is planed or the jamb
            extended.
        sill_answer: It says what is done under a stool on a sill out of level.
        tape_spread: How far a reading of the tape is off as a rule, root mean square, measured between what was read
            and what is there; readings that check each other are weighed by it.
        confirmed: The readings that were doubted and stand as they are.
    """

    mark: Name
    readings: Readings
    bottom: Bottom = Bottom.STOOL
    reveals: Reveals = NO_REVEALS
    square_gap: Length = Length.of("1/64 in")
    horns: Horns = NO_HORNS
    widths: Widths = NO_WIDTHS
    without_apron: bool = False
    wall_answer: WallAnswer = WallAnswer.FLAT
    wall_limits: Limits = USUAL_LIMITS
    sill_answer: SillAnswer = SillAnswer.SHIM
    tape_spread: PositiveLength = PositiveLength.of("1/32 in")
    confirmed: Confirmed = NONE_CONFIRMED

    @cached_property
    def outline(self) -> Outline:
        """What its readings come to.

        Raises:
            GeometryError: where they describe no one shape.
        """
        return outline_of(self.readings)

    def report(self, faults: Faults, at: Path = ()) -> None:
        """Note what its readings lack or say twice, and limits that are out of order."""
        if self.wall_limits.caulk > self.wall_limits.plane:
            detail = say("problem", "wall.limits-out-of-order")
            faults.add((*at, "wall_limits", "plane"), "out-of-order", detail)
        try:
            self.outline  # noqa: B018 - kept for whoever builds it next
        except GeometryError as error:
            for fault in error.faults:
                faults.note(fault.under(*at))

    def with_trim(self, trim: Trim) -> Opening:
        """The opening with a trim that was chosen by name."""
        return Opening(*(getattr(self, name) for name in AnyOpening.__struct_fields__), trim=trim)


class Opening(AnyOpening, frozen=True, kw_only=True):
    """One opening with its trim.

    Attributes:
        trim: The trim that is put round the opening.
    """

    trim: Trim
