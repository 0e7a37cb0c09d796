"""What lies under and over a butted head: the fillet and the cap."""

from __future__ import annotations

from longpoint.geometry.frame.kernel import ZERO, Frame, meet
from longpoint.geometry.frame.sides import CasedSide
from longpoint.geometry.parts import End, Hand, Mark, Part, Step
from longpoint.geometry.piece_names import PartKind
from longpoint.geometry.pieces.returns import flat_return, front_mitre
from longpoint.geometry.readings.inputs import Opening
from longpoint.geometry.readings.trim import HeadStrip, StripEnds
from longpoint.lengths import Real


def headdress_parts(opening: Opening, frame: Frame, sides: tuple[CasedSide, ...]) -> tuple[Part, ...]:
    """The fillet and the cap of a butted head, each followed by its returns."""
    trim, head = opening.trim, sides[2]
    parts: list[Part] = []
    fillet_height = trim.fillet.height if trim.fillet else ZERO
    if trim.fillet is not None:
        parts += _strip(frame, sides, trim.fillet, head.reveal, PartKind.FILLET, PartKind.FILLET_RETURN)
    if trim.cap is not None:
        over = head.outer + fillet_height
        parts += _strip(frame, sides, trim.cap, over, PartKind.CAP, PartKind.CAP_RETURN)
    return tuple(parts)


def _strip(
    frame: Frame,
    sides: tuple[CasedSide, ...],
    strip: HeadStrip,
    offset: Real,
    kind: PartKind,
    return_kind: PartKind,
) -> tuple[Part, ...]:
    right = meet(frame.corners[1], offset, sides[1].outer) + strip.overhang
    left = meet(frame.corners[2], offset, sides[3].outer) + strip.overhang
    length = frame.sides[2] + left + right
    returned = strip.ends is StripEnds.MITRED_RETURN
    # It lies flat, top up, its front edge away from the fence.
    body = Part(
        kind=kind,
        side="",
        profile=strip.profile,
        short_point=length - 2 * strip.depth if returned else length,
        long_point=length,
        overall=length,
        width=strip.depth,
        thickness=strip.height,
        ends=(
            (front_mitre("left", Hand.LEFT), front_mitre("right", Hand.RIGHT))
            if returned
            else (End("left", Hand.LEFT), End("right", Hand.RIGHT))
        ),
        marks=(Mark("centre line of opening", left + frame.sides[2] / 2),),
        how=(
            Step(
                "length",
                "head width + at each end (reveal + casing width + overhang)",
                (
                    ("head width", frame.sides[2]),
                    ("left reveal + casing width", left - strip.overhang),
                    ("right reveal + casing width", right - strip.overhang),
                    ("overhang", strip.overhang),
                ),
            ),
        ),
    )
    if not returned:
        return (body,)
    depth, height = strip.depth, strip.height
    return (
        body,
        flat_return(return_kind, Hand.LEFT, strip.profile, depth, height),
        flat_return(return_kind, Hand.RIGHT, strip.profile, depth, height),
    )
