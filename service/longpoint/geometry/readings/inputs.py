"""What is told of an opening: what the tape read there, and what was decided for it. Inches, exact."""

from __future__ import annotations

from enum import StrEnum
from functools import cached_property

from longpoint.geometry.faults import GeometryError
from longpoint.geometry.readings.outline import Outline
from longpoint.geometry.readings.readings import Readings
from longpoint.geometry.readings.taken import outline_of
from longpoint.geometry.readings.trim import Trim
from longpoint.lengths import Length, PositiveLength
from longpoint.values import Faults, Given, Name, Path


class Bottom(StrEnum):
    """What the trim stands on."""

    STOOL = "stool"
    CASING = "casing"
    FLOOR = "floor"
    PLINTH = "plinth"


class Reveals(Given, frozen=True):
    """Each side's own reveal, where it is not the trim's: the jamb left showing from its inside face to the casing.

    Attributes:
        left: On the left jamb.
        right: On the right jamb.
        head: Under the head casing.
        sill: Above a picture frame's bottom casing.
    """

    left: Length | None = None
    right: Length | None = None
    head: Length | None = None
    sill: Length | None = None


NO_REVEALS = Reveals()


class WallAnswer(StrEnum):
    """What is done where the wall does not lie flush: nothing that changes a size, casing that leans on it, or a
    jamb extension."""

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
        caulk: Up to here the joint is caulked.
        plane: Up to here the wall is planed back or the casing back-beveled.
    """

    caulk: Length = Length.of("1/16 in")
    plane: Length = Length.of("3/16 in")


USUAL_LIMITS = Limits()


class Horns(Given, frozen=True):
    """A stool's own horns at this opening, where they are not the trim's: past the trim's outside edge.

    Attributes:
        left: The left one.
        right: The right one.
    """

    left: Length | None = None
    right: Length | None = None


NO_HORNS = Horns()


class Widths(Given, frozen=True):
    """Widths that pieces are ripped to at this opening; without one the stock's own is kept.

    Attributes:
        left: The left casing's.
        right: The right casing's.
        head: The head casing's.
        sill: A picture frame's bottom casing's.
        apron: The apron's.
    """

    left: PositiveLength | None = None
    right: PositiveLength | None = None
    head: PositiveLength | None = None
    sill: PositiveLength | None = None
    apron: PositiveLength | None = None


NO_WIDTHS = Widths()


class AnyOpening(Given, frozen=True, dict=True):
    """An opening and what was decided for it, its trim apart.

    Attributes:
        mark: What it is called in the house; part of each piece's name.
        readings: What the tape read.
        bottom: What the trim stands on.
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

    @cached_property
    def outline(self) -> Outline:
        """What its readings come to.

        Raises:
            GeometryError: where they describe no one shape.
        """
        return outline_of(self.readings)

    def tell(self, faults: Faults, at: Path = ()) -> None:
        """Note what its readings lack or say twice, and limits that are out of order."""
        if self.wall_limits.caulk > self.wall_limits.plane:
            detail = "Planing begins where caulk ends: make this the larger."
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
        trim: What it is trimmed with.
    """

    trim: Trim
