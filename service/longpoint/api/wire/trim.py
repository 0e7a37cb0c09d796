"""The wire's view of trim: stock, styles and the lengths that go with them, as other programs send them."""

from __future__ import annotations

from typing import Annotated

from msgspec import Meta

from longpoint.api.wire.base import LengthText, Name, Wire
from longpoint.geometry import ApronEnds, BoxCorners, HeadStyle, StoolEnds, StripEnds

CutAngle = Annotated[float, Meta(gt=0, le=60, description="Degrees off a square cut.")]


class CasingIn(Wire):
    """Casing stock: its profile's name, its width across the face and its thickness at the thick edge."""

    width: LengthText
    thickness: LengthText
    profile: Name = "casing"


class BackBandIn(Wire):
    """A band round mitred casing: its width across its face, its thickness off the wall, and how far it laps over
    the casing."""

    width: LengthText
    thickness: LengthText
    lap: LengthText = "0 in"
    profile: Name = "back band"


class CornerBlockIn(Wire):
    """A square block at each corner, at least as wide as the casing it ends."""

    width: LengthText
    thickness: LengthText
    profile: Name = "corner block"


class HeadStripIn(Wire):
    """A fillet under a butted head, or a cap over it: its height as seen, its depth off the wall, and how far it
    runs past the legs' outside edges."""

    profile: Name
    height: LengthText
    depth: LengthText
    overhang: LengthText = "0 in"
    ends: StripEnds = StripEnds.SQUARE


class StoolIn(Wire):
    """A stool: the horn runs past the trim's outside edge, the nosing past the apron's face.

    `sash_clearance` is left open between its back edge and the sash; `stock_width` is the width before ripping.
    `ease` is the radius of eased ends; `scribe` is left on each horn's wall edge, to be scribed to the wall.
    """

    thickness: LengthText
    horn: LengthText
    nosing: LengthText
    sash_clearance: LengthText = "0 in"
    stock_width: LengthText | None = None
    ends: StoolEnds = StoolEnds.SQUARE
    ease: LengthText = "1/8 in"
    scribe: LengthText = "0 in"
    profile: Name = "stool"


class ApronIn(Wire):
    """An apron under the stool: its width down the wall, its thickness off the wall, how its ends are cut.

    `end_angle` is that of angled ends, cut back below the stool.
    """

    width: LengthText
    thickness: LengthText
    ends: ApronEnds = ApronEnds.MITRED_RETURN
    end_angle: CutAngle = 15.0
    profile: Name = "apron"


class PlinthIn(Wire):
    """Plinth blocks under a door's legs."""

    width: LengthText
    height: LengthText
    thickness: LengthText
    profile: Name = "plinth"


class ExtensionIn(Wire):
    """Boards on the jamb's edge that bring it out to the wall; `reveal` is the jamb left showing inside them."""

    thickness: LengthText
    reveal: LengthText = "0 in"
    corners: BoxCorners = BoxCorners.BUTTED
    profile: Name = "jamb extension"


class StopIn(Wire):
    """A door's stop: its width across its face, its thickness off the jamb."""

    width: LengthText
    thickness: LengthText
    corners: BoxCorners = BoxCorners.BUTTED
    profile: Name = "door stop"


class TrimIn(Wire):
    """The trim chosen for one opening or for many.

    `casing` is that of the legs, and of head and sill unless they have their own; null leaves the opening uncased,
    the wall returning to the jamb. `reveal` is the jamb left showing; `overhang` is how far a butted head runs past
    the legs' outside edges; `floor_clearance` is left under a door's legs. A `fillet` and a `cap` go with a butted
    head, a `corner_block` with a head of corner blocks, a `back_band` with a mitred one. `mull_casing` covers the
    joints between units.

    Attributes:
        apron: Null for none.
        stool: Null for none.
        extension: Boards that bring the jamb out to the wall.
        head_casing: The head's own, where it is not that of the legs.
        sill_casing: A picture frame's sill's own, where it is not that of the legs.
        plinth: Blocks under a door's legs.
        stop: A door's stop, for a door to be hung.
    """

    casing: CasingIn | None
    reveal: LengthText
    head_style: HeadStyle = HeadStyle.MITRED
    head_casing: CasingIn | None = None
    sill_casing: CasingIn | None = None
    overhang: LengthText = "0 in"
    stool: StoolIn | None = None
    apron: ApronIn | None = None
    plinth: PlinthIn | None = None
    floor_clearance: LengthText = "0 in"
    back_band: BackBandIn | None = None
    corner_block: CornerBlockIn | None = None
    fillet: HeadStripIn | None = None
    cap: HeadStripIn | None = None
    extension: ExtensionIn | None = None
    mull_casing: CasingIn | None = None
    stop: StopIn | None = None
