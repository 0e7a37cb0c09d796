"""Types of the document's part "trim". Generated; do not edit."""

from __future__ import annotations

from typing import TYPE_CHECKING, Literal

from longpoint_sdk.types._base import LengthText, Request

if TYPE_CHECKING:
    ApronEnds = Literal["angled", "mitred_return", "square"]
    """An apron's end: returned to the wall, cut square, or cut back at an angle below the stool."""
    BoxCorners = Literal["butted", "mitred"]
    """How the boards of a jamb extension meet: head over the legs, or mitred."""
    HeadStyle = Literal["butted", "corner_blocks", "mitred"]
    """How casing meets at the head: mitred, head over the legs, or both against a block."""
    StoolEnds = Literal["eased", "mitred_return", "square"]
    """A horn's end: cut square, square with its edges eased, or its nosing returned to the wall."""
    StripEnds = Literal["mitred_return", "square"]
    """The ends of a fillet or a cap over a butted head."""
else:
    ApronEnds = str
    BoxCorners = str
    HeadStyle = str
    StoolEnds = str
    StripEnds = str


class ApronIn(Request, frozen=True, kw_only=True):
    """An apron under the stool: its width down the wall, its thickness off the wall, how its ends are cut.

    `end_angle` is that of angled ends, cut back below the stool.

    Attributes:
        end_angle: Degrees off a square cut.
    """

    width: LengthText
    thickness: LengthText
    end_angle: float = 15.0
    ends: ApronEnds = "mitred_return"
    profile: str = "apron"


class BackBandIn(Request, frozen=True, kw_only=True):
    """A band round mitred casing: its width across its face, its thickness off the wall, and how far it laps
    over the casing.
    """

    width: LengthText
    thickness: LengthText
    lap: LengthText = "0 in"
    profile: str = "back band"


class CasingIn(Request, frozen=True, kw_only=True):
    """Casing stock: its profile's name, its width across the face and its thickness at the thick edge."""

    width: LengthText
    thickness: LengthText
    profile: str = "casing"


class CornerBlockIn(Request, frozen=True, kw_only=True):
    """A square block at each corner, at least as wide as the casing it ends."""

    width: LengthText
    thickness: LengthText
    profile: str = "corner block"


class ExtensionIn(Request, frozen=True, kw_only=True):
    """Boards on the jamb's edge that bring it out to the wall; `reveal` is the jamb left showing inside them."""

    thickness: LengthText
    corners: BoxCorners = "butted"
    profile: str = "jamb extension"
    reveal: LengthText = "0 in"


class HeadStripIn(Request, frozen=True, kw_only=True):
    """A fillet under a butted head, or a cap over it: its height as seen, its depth off the wall, and how far it
    runs past the legs' outside edges.
    """

    profile: str
    height: LengthText
    depth: LengthText
    ends: StripEnds = "square"
    overhang: LengthText = "0 in"


class PlinthIn(Request, frozen=True, kw_only=True):
    """Plinth blocks under a door's legs."""

    width: LengthText
    height: LengthText
    thickness: LengthText
    profile: str = "plinth"


class StoolIn(Request, frozen=True, kw_only=True):
    """A stool: the horn runs past the trim's outside edge, the nosing past the apron's face.

    `sash_clearance` is left open between its back edge and the sash; `stock_width` is the width before
    ripping. `ease` is the radius of eased ends; `scribe` is left on each horn's wall edge, to be scribed to
    the wall.
    """

    thickness: LengthText
    horn: LengthText
    nosing: LengthText
    ease: LengthText = "1/8 in"
    ends: StoolEnds = "square"
    profile: str = "stool"
    sash_clearance: LengthText = "0 in"
    scribe: LengthText = "0 in"
    stock_width: LengthText | None = None


class StopIn(Request, frozen=True, kw_only=True):
    """A door's stop: its width across its face, its thickness off the jamb."""

    width: LengthText
    thickness: LengthText
    corners: BoxCorners = "butted"
    profile: str = "door stop"


class TrimIn(Request, frozen=True, kw_only=True):
    """The trim chosen for one opening or for many.

    `casing` is that of the legs, and of head and sill unless they have their own; null leaves the opening
    uncased, the wall returning to the jamb. `reveal` is the jamb left showing; `overhang` is how far a butted
    head runs past the legs' outside edges; `floor_clearance` is left under a door's legs. A `fillet` and a
    `cap` go with a butted head, a `corner_block` with a head of corner blocks, a `back_band` with a mitred
    one. `mull_casing` covers the joints between units.

    Attributes:
        apron: Null for none.
        extension: Boards that bring the jamb out to the wall.
        head_casing: The head's own, where it is not that of the legs.
        plinth: Blocks under a door's legs.
        sill_casing: A picture frame's sill's own, where it is not that of the legs.
        stool: Null for none.
        stop: A door's stop, for a door to be hung.
    """

    casing: CasingIn | None
    reveal: LengthText
    apron: ApronIn | None = None
    back_band: BackBandIn | None = None
    cap: HeadStripIn | None = None
    corner_block: CornerBlockIn | None = None
    extension: ExtensionIn | None = None
    fillet: HeadStripIn | None = None
    floor_clearance: LengthText = "0 in"
    head_casing: CasingIn | None = None
    head_style: HeadStyle = "mitred"
    mull_casing: CasingIn | None = None
    overhang: LengthText = "0 in"
    plinth: PlinthIn | None = None
    sill_casing: CasingIn | None = None
    stool: StoolIn | None = None
    stop: StopIn | None = None
