"""One kind of piece, or the corners, from a few readings and no schedule: flat, as somebody asks who holds a tape."""

from __future__ import annotations

from typing import Annotated

from msgspec import Meta

from longpoint.geometry.corners import Corners, corners
from longpoint.geometry.faults import GeometryError
from longpoint.geometry.opening import Built, Pieces, build_opening
from longpoint.geometry.readings.inputs import Bottom, Opening
from longpoint.geometry.readings.readings import Readings
from longpoint.geometry.readings.taken import as_read
from longpoint.geometry.readings.trim import NOUGHT, Apron, Casing, HeadStyle, Plinth, Stool, Trim
from longpoint.lengths import Length, PositiveLength
from longpoint.values import Fault, Given, Name

# What a piece does not depend on is still part of an opening: any height serves a stool, any thickness a leg.
ANY = PositiveLength.of("1 in")

_ALONE: dict[tuple[str | int, ...], str] = {
    ("trim", "casing", "width"): "casing_width",
    ("trim", "casing", "thickness"): "casing_thickness",
    ("trim", "head_casing", "width"): "head_casing_width",
    ("trim", "apron", "thickness"): "apron_thickness",
    ("trim", "plinth", "height"): "plinth_height",
}
"""Fields of a trim that go by another name where one piece is asked for."""


def _sent(asked: Given, fault: Fault) -> Fault:
    """A fault of the opening that was made up for a piece, at the field that was sent."""
    named = _ALONE.get(fault.path)
    if named is not None and hasattr(asked, named):
        return fault.moved(named)
    last = fault.path[-1] if fault.path else ""
    return fault.moved(
        last if hasattr(asked, str(last)) else str(fault.path[1]) if len(fault.path) > 1 else last
    )


def _built(asked: Given, opening: Opening, wanted: Pieces) -> Built:
    try:
        return build_opening(opening, wanted)
    except GeometryError as error:
        raise GeometryError(dict.fromkeys(_sent(asked, fault) for fault in error.faults)) from None


class StoolAlone(Stool, frozen=True, kw_only=True):
    """A stool's readings and choices. Give `jamb_depth`, or `left_depth` and `right_depth` where they differ.

    Attributes:
        jamb_width: The clear width, measured from the left jamb's inside face to the right jamb's.
        jamb_depth: The depth, measured from the wall's face back to the sash stop, where the stool's back edge
            lands.
        left_depth: The depth at the left jamb, measured as `jamb_depth` is.
        right_depth: The depth at the right jamb, measured as `jamb_depth` is.
        reveal: The jamb's edge that stays in sight, measured from the jamb's inside face to the casing's inner
            edge.
        casing_width: The width of the side casing, measured across its face from inner to outer edge.
        apron_thickness: The apron's thickness, measured from the wall to its face; the nosing stands past its
            face.
    """

    thickness: PositiveLength = PositiveLength.of("3/4 in")
    jamb_width: PositiveLength
    jamb_depth: PositiveLength | None = None
    left_depth: PositiveLength | None = None
    right_depth: PositiveLength | None = None
    reveal: Length
    casing_width: PositiveLength
    apron_thickness: PositiveLength

    def built(self) -> Built:
        """The stool worked out.

        Raises:
            GeometryError: with every fault found, at the fields of this.
        """
        trim = Trim(
            casing=Casing(self.casing_width, ANY),
            reveal=self.reveal,
            stool=Stool(*(getattr(self, name) for name in Stool.__struct_fields__)),
            apron=Apron(width=ANY, thickness=self.apron_thickness),
        )
        readings = Readings(
            jamb_width=self.jamb_width,
            jamb_height=ANY,
            jamb_depth=self.jamb_depth,
            left_depth=self.left_depth,
            right_depth=self.right_depth,
        )
        return _built(self, Opening("", readings, trim=trim), Pieces.STOOL)


class ApronAlone(Apron, frozen=True, kw_only=True):
    """An apron's readings and choices: it ends flush with the casing's outside edges.

    Attributes:
        jamb_width: The clear width, measured from the left jamb's inside face to the right jamb's.
        reveal: The jamb's edge that stays in sight, measured from the jamb's inside face to the casing's inner
            edge.
        casing_width: The width of the side casing, measured across its face from inner to outer edge.
    """

    width: PositiveLength = PositiveLength.of("2 1/2 in")
    jamb_width: PositiveLength
    reveal: Length
    casing_width: PositiveLength

    def built(self) -> Built:
        """The apron and its returns worked out.

        Raises:
            GeometryError: with every fault found, at the fields of this.
        """
        apron = Apron(*(getattr(self, name) for name in Apron.__struct_fields__))
        trim = Trim(casing=Casing(self.casing_width, ANY), reveal=self.reveal, apron=apron)
        readings = Readings(jamb_width=self.jamb_width, jamb_height=ANY)
        return _built(self, Opening("", readings, trim=trim), Pieces.APRON)


class CasingAlone(Given, frozen=True, kw_only=True):
    """Casing's readings and choices, for plumb sides. Give `jamb_height`, or `left_jamb_height` and
    `right_jamb_height`.

    Attributes:
        jamb_width: The clear width, measured from the left jamb's inside face to the right jamb's.
        jamb_height: The height, measured from the stool's top, the sill jamb or the floor up to the underside
            of the head jamb.
        left_jamb_height: The height along the left jamb, measured as `jamb_height` is.
        right_jamb_height: The height along the right jamb, measured as `jamb_height` is.
        reveal: The jamb's edge that stays in sight, measured from the jamb's inside face to the casing's inner
            edge.
        casing_width: The width of the casing, measured across its face from inner to outer edge.
        casing_thickness: The casing's thickness, measured from the wall to its face at the thick (outer) edge.
        bottom: It says what the casing stands on.
        head_style: It says how the head casing meets the side casings: mitered, or butted on top of them.
        overhang: A butted head runs this far past the outside edge of each side casing.
        floor_clearance: The gap under a door's side casings, measured from the floor up to their ends.
        plinth_height: The height of plinth blocks under a door's side casings, measured from the floor up.
        profile: The casing's name at the yard.
    """

    jamb_width: PositiveLength
    jamb_height: PositiveLength | None = None
    left_jamb_height: PositiveLength | None = None
    right_jamb_height: PositiveLength | None = None
    reveal: Length
    casing_width: PositiveLength
    casing_thickness: PositiveLength = PositiveLength.of("5/8 in")
    bottom: Bottom = Bottom.STOOL
    head_style: HeadStyle = HeadStyle.MITERED
    overhang: Length = NOUGHT
    floor_clearance: Length = NOUGHT
    plinth_height: PositiveLength | None = None
    profile: Name = "casing"

    def built(self) -> Built:
        """Legs and head, and in a picture frame the sill piece, worked out.

        Raises:
            GeometryError: with every fault found, at the fields of this.
        """
        width, thickness, height = self.casing_width, self.casing_thickness, self.plinth_height
        trim = Trim(
            casing=Casing(width, thickness, self.profile),
            reveal=self.reveal,
            head_style=self.head_style,
            overhang=self.overhang,
            floor_clearance=self.floor_clearance,
            plinth=None if height is None else Plinth(width=width, height=height, thickness=thickness),
        )
        readings = Readings(
            jamb_width=self.jamb_width,
            jamb_height=self.jamb_height,
            left_jamb_height=self.left_jamb_height,
            right_jamb_height=self.right_jamb_height,
        )
        return _built(self, Opening("", readings, trim=trim, bottom=self.bottom), Pieces.CASING)


class CornersAlone(Given, frozen=True, kw_only=True):
    """Readings of an opening that may be out of square, and the casing that is to go round it.

    Attributes:
        readings: The readings that the tape gave.
        casing_width: The width of the casing, measured across its face from inner to outer edge.
        head_casing_width: The head casing's own width, measured as `casing_width` is, where the two differ: the stock
            is flat then, since two widths of molded casing do not meet at a miter.
        casing_thickness: The casing's thickness, measured from the wall to its face at the thick (outer) edge.
        reveal: The jamb's edge that stays in sight, measured from the jamb's inside face to the casing's inner
            edge.
        bottom: It says what the casing stands on.
        square_gap: The widest gap, measured at the open end of a miter, that cuts for square corners may leave: up to
            it an opening is treated as square.
        spring_degrees: The angle between a leaning casing's back and a line that stands square out of the wall: at 90
            the back lies flat on the wall, and there is no bevel.
        profile: The casing's name at the yard.
    """

    readings: Readings
    casing_width: PositiveLength
    head_casing_width: PositiveLength | None = None
    casing_thickness: PositiveLength = PositiveLength.of("5/8 in")
    reveal: Length
    bottom: Bottom = Bottom.STOOL
    square_gap: Length = Length.of("1/64 in")
    spring_degrees: Annotated[float, Meta(gt=0, le=90)] | None = None
    profile: Name = "casing"

    def corners(self) -> Corners:
        """Each corner as read, and the casing cut to it.

        Raises:
            GeometryError: with every fault found, at the fields of this.
        """
        head = self.head_casing_width
        trim = Trim(
            casing=Casing(self.casing_width, self.casing_thickness, self.profile),
            reveal=self.reveal,
            head_casing=None if head is None else Casing(head, self.casing_thickness, self.profile),
        )
        opening = Opening("", self.readings, trim=trim, bottom=self.bottom, square_gap=self.square_gap)
        try:
            return corners(opening, self.spring_degrees)
        except GeometryError as error:
            raise GeometryError(dict.fromkeys(self._sent(fault) for fault in error.faults)) from None

    def _sent(self, fault: Fault) -> Fault:
        if fault.path[0] == "readings":
            return fault.moved("readings", *as_read(self.readings, fault.path[1:]))
        return _sent(self, fault)
