"""A curved head whose straight pieces cover daylight."""

from __future__ import annotations

import math

from longpoint.geometry.checks.findings import Finding, Offer
from longpoint.geometry.frame.arch import MOST_PIECES, curve
from longpoint.geometry.frame.sides import CasedSide
from longpoint.geometry.readings.outline import Arch
from longpoint.lengths import Fraction
from longpoint.texts import say
from longpoint.values import Faults

# Common practice, no source: what stands past the jamb by less is not seen.
LEAST_SEEN = 1 / 32


def arch_findings(shape: Arch, sides: tuple[CasedSide, ...]) -> tuple[Finding, ...]:
    """Where the middle of each straight piece stands past the jamb's curve, over the glass."""
    head = sides[2]
    found = curve(shape, Faults())
    if found is None or head.casing is None:
        return ()
    over = found.departure - float(head.reveal)
    if over <= LEAST_SEEN:
        return ()
    field = ("readings", "head_pieces" if shape.departure is None else "departure")
    detail = say("finding", "arch.covers-daylight", over=over, departure=found.departure, reveal=head.reveal)
    blank = found.blank_width(head.reveal, head.outer)
    sawn = Offer("saw_curve", say("offer", "arch.saw-curve"), (), None, (("stock width", blank),))
    offers = (*_more_pieces(shape, head.reveal, float(found.radius), found.half_angle), sawn)
    return (Finding("arch-covers-daylight", "head", detail, over, offers, "", field),)


def _more_pieces(shape: Arch, reveal: Fraction, radius: float, half_angle: float) -> tuple[Offer, ...]:
    """As many pieces as leave the jamb in sight all along, where so many can be cut."""
    if reveal <= 0:
        return ()
    turn = math.degrees(math.acos(max(-1.0, 1 - float(reveal) / radius)))
    pieces = math.ceil(half_angle / turn - 1e-9)
    if pieces > MOST_PIECES:
        return ()
    detail = say("offer", "arch.more-pieces", pieces=pieces)
    if shape.departure is not None:
        return (Offer("more_pieces", detail, ("readings", "departure"), reveal),)
    return (Offer("more_pieces", detail, ("readings", "head_pieces"), pieces),)
