"""What the geometry room hands on: parts, their ends, their marks, and how each was computed.

Every length is in inches and exact (`Fraction`) unless the shape makes it irrational, when it is a `float`.
Angles are degrees, `Fraction` when exact. Nothing here is rounded.
"""

from __future__ import annotations

from enum import StrEnum

from longpoint.geometry.value import Value
from longpoint.lengths import Fraction, Real


class PartKind(StrEnum):
    """What a part is. Legs stand at the sides; a return takes an end back to the wall."""

    STOOL = "stool"
    APRON = "apron"
    APRON_RETURN = "apron_return"
    CASING_LEG = "casing_leg"
    CASING_HEAD = "casing_head"
    CASING_SILL = "casing_sill"
    PLINTH_BLOCK = "plinth_block"
    STOOL_RETURN = "stool_return"
    BACK_BAND = "back_band"
    CORNER_BLOCK = "corner_block"
    FILLET = "fillet"
    FILLET_RETURN = "fillet_return"
    CAP = "cap"
    CAP_RETURN = "cap_return"
    MULL_CASING = "mull_casing"
    JAMB_EXTENSION = "jamb_extension"
    LEVELLING_STRIP = "levelling_strip"
    JAMB_LEG = "jamb_leg"
    HEAD_JAMB = "head_jamb"
    DOOR_STOP = "door_stop"


class Hand(StrEnum):
    """A side, as seen from the room or, at the saw, by whoever stands at it."""

    LEFT = "left"
    RIGHT = "right"


class CutKind(StrEnum):
    """An end's cut: square; a mitre, the table turned; a bevel, the blade tilted; compound, both."""

    SQUARE = "square"
    MITRE = "mitre"
    BEVEL = "bevel"
    COMPOUND = "compound"


class Notch(Value, frozen=True):
    """A horn's notch: what is sawn out of a stool's back corner so that the horn lies on the wall.

    Attributes:
        depth: from the stool's back edge towards its nosing, at the jamb.
        length: from the stool's end towards its middle; the horn's own length.
        end_depth: the depth at the horn's end where the wall is out of plane; None where it is the same.
    """

    depth: Real
    length: Real
    end_depth: Real | None = None


class Cutout(Value, frozen=True):
    """What is sawn out of a stool's back edge between its ends, where it passes a mull or a stretch of wall.

    Attributes:
        at: from the part's left end as it lies on the saw.
        length: along the part.
        depth: from the back edge at its left.
        end_depth: from the back edge at its right; None where it is the same.
    """

    at: Real
    length: Real
    depth: Real
    end_depth: Real | None = None


class End(Value, frozen=True):
    """One end of a part as the saw makes it.

    The part lies face up with its outer edge (the long-point edge of a mitred piece) against the fence.

    Attributes:
        at: the end as installed: a leg's foot or head, else the side it meets (left, right, head 2).
        on_saw: which end of the part that is as it lies on the saw.
        cut: square, mitre, bevel or compound.
        mitre: degrees off a square cut, never negative.
        swing: the side to which the front of the saw's table turns; None for a square table.
        bevel: degrees the blade tilts from upright, never negative.
        tilt: the side to which the top of the blade leans; None for an upright blade.
        long_edge: "outer" where the long point is on the outer edge, "inner" where it is on the inner edge,
            "back" or "face" for a bevel, None for a square cut.
        notch: the notch at this end, None without one.
    """

    at: str
    on_saw: Hand
    cut: CutKind = CutKind.SQUARE
    mitre: Real = Fraction(0)
    swing: Hand | None = None
    bevel: Real = Fraction(0)
    tilt: Hand | None = None
    long_edge: str | None = None
    notch: Notch | None = None


class Mark(Value, frozen=True):
    """A layout mark on a part.

    Attributes:
        name: what to mark, in the trade's words.
        at: distance along the part from its left end as it lies on the saw (from that end's farthest point).
        across: distance from the outer edge, None for a mark right across.
    """

    name: str
    at: Real
    across: Real | None = None


class Step(Value, frozen=True):
    """How one figure was computed.

    Attributes:
        figure: the part's field it gives.
        rule: the rule in words, naming its inputs.
        inputs: each input's name and value.
    """

    figure: str
    rule: str
    inputs: tuple[tuple[str, Real], ...]


class Part(Value, frozen=True):
    """One piece of trim.

    Attributes:
        kind: what it is.
        side: left, right, head, sill; "" for a piece that has none.
        profile: the stock it is cut from.
        short_point: length along the inner edge (short point to short point on a mitred head).
        long_point: length along the outer edge.
        overall: the length it takes from a stick: its farthest extent.
        width: finished width across the face.
        thickness: finished thickness.
        rip_width: width to rip it to, the wider end's where it tapers; None where the stock's own width is kept.
        ends: left and right end as it lies on the saw.
        cutouts: what is sawn out of its back edge between its ends.
        taper: rip widths at its left and right end as it lies on the saw; None where it is parallel.
        marks: layout marks.
        how: how each figure was computed.
        notes: what the person should know of this piece.
        called: its name in words, where its kind and its side do not make it: a side of an octagon is no leg.
    """

    kind: PartKind
    side: str
    profile: str
    short_point: Real
    long_point: Real
    overall: Real
    width: Real
    thickness: Fraction
    ends: tuple[End, End]
    rip_width: Real | None = None
    marks: tuple[Mark, ...] = ()
    how: tuple[Step, ...] = ()
    notes: tuple[str, ...] = ()
    taper: tuple[Real, Real] | None = None
    cutouts: tuple[Cutout, ...] = ()
    called: str = ""

    @property
    def key(self) -> str:
        """Names the part within its opening: "casing_leg/left", "stool"."""
        return self.kind + "/" + self.side if self.side else str(self.kind)

    @property
    def title(self) -> str:
        """The part's name in words: "left casing leg", "casing head 2", "casing side 3", "stool"."""
        if self.called:
            return self.called
        kind = self.kind.replace("_", " ")
        if self.kind is PartKind.CASING_HEAD and self.side.startswith("head "):
            return f"casing {self.side}"
        if self.side in ("", kind.rpartition(" ")[2]):
            return kind
        return f"{kind} {self.side}" if self.side[0].isdigit() else f"{self.side} {kind}"
