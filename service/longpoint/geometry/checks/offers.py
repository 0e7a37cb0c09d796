"""Every answer offered is tried: one whose field cannot be sent as things are, or would not settle it, says so."""

from __future__ import annotations

from collections.abc import Callable

from msgspec.structs import replace

from longpoint.geometry.checks.doubted import with_confirmed
from longpoint.geometry.checks.findings import Finding, Offer
from longpoint.geometry.faults import GeometryError
from longpoint.geometry.readings.inputs import Opening, SillAnswer, WallAnswer
from longpoint.lengths import Fraction, PositiveLength
from longpoint.texts import Sentence, say

# A length in a field is cut down to what a tape reads, so that it clears what is in the way.
FINEST = 64

Look = Callable[[Opening], tuple[Finding, ...]]
"""Works an opening out anew and gives what is found of it."""


def tried(opening: Opening, findings: tuple[Finding, ...], look: Look) -> tuple[Finding, ...]:
    """The same findings, each offer's field kept only where sending it gives an answer without that finding.

    Args:
        opening: as it was given.
        findings: what was found of it.
        look: raises GeometryError when an opening cannot be built.
    """
    return tuple(
        replace(finding, offers=tuple(_tried(opening, finding, offer, look) for offer in finding.offers))
        for finding in findings
    )


def _tried(opening: Opening, finding: Finding, offer: Offer, look: Look) -> Offer:
    if offer.field is None:
        return offer
    if isinstance(offer.worth, float):
        offer = replace(offer, value=Fraction(int(offer.worth * FINEST), FINEST))
    try:
        after = look(with_offer(opening, offer))
    except GeometryError as error:
        return refused(offer, error)
    if any((one.code, one.side, one.by) == (finding.code, finding.side, finding.by) for one in after):
        return _without_field(offer, say("offer", "tried.not-alone"))
    return offer


def refused(offer: Offer, error: GeometryError) -> Offer:
    """An offer that its opening cannot be built with, without its field."""
    return _without_field(offer, say("offer", "tried.refused", why=error.faults[0].detail))


def _without_field(offer: Offer, why: Sentence) -> Offer:
    return replace(offer, detail=offer.detail + why, field=None, value=None)


def with_offer(opening: Opening, offer: Offer) -> Opening:
    """The opening with an offer taken up."""
    match offer.path:
        case (("widths" | "horns" | "reveals") as group, str(side)):
            return replace(opening, **{group: replace(getattr(opening, group), **{side: offer.worth})})
        case ("wall_answer",):
            return replace(opening, wall_answer=WallAnswer(str(offer.worth)))
        case ("sill_answer",):
            return replace(opening, sill_answer=SillAnswer(str(offer.worth)))
        case ("readings", "head_pieces"):
            return replace(opening, readings=replace(opening.readings, head_pieces=int(offer.worth or 0)))
        case ("readings", "departure"):
            departure = PositiveLength(Fraction(offer.worth or 0))
            return replace(opening, readings=replace(opening.readings, departure=departure))
        case ("confirmed", str(name)):
            return with_confirmed(opening, name)
        case ("without_apron",):
            return replace(opening, without_apron=True)
    raise ValueError(f"no opening takes up {offer.path}")
