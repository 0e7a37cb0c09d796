"""What was found in the way, out of plane or out of level, as the wire carries it."""

from __future__ import annotations

import msgspec

from longpoint.api.wire.lengths import LengthOut, LengthWriter
from longpoint.geometry import Finding, Offer
from longpoint.lengths import Fraction, Real, Unit, tape


class OfferOut(msgspec.Struct, frozen=True):
    """One of the trade's answers.

    Attributes:
        answer: its name.
        detail: what it means.
        field: the field that takes it up, a JSON pointer into the opening or, for what a group's openings have
            together, into the cut list's body; null where no one field does, as for caulk: `detail` then says what
            does. It was tried: with that value the answer comes without the finding, a group's once every opening of
            it that is offered one has its own.
        value: what to write there.
        figures: the lengths, and the angles in degrees, that go with it.
    """

    answer: str
    detail: str
    field: str | None
    value: str | bool | None
    figures: dict[str, str]


class FindingOut(msgspec.Struct, frozen=True):
    """Something found. It has changed no size: an answer that is taken up is sent back in its field.

    Attributes:
        code: A stable name for the kind of finding.
        side: Where: left, right, head, sill, base, above or below; empty for a group's.
        detail: What was found, in words.
        amount: How much it is.
        offers: What can be done about it, the least work first.
    """

    code: str
    side: str
    detail: str
    amount: LengthOut
    offers: list[OfferOut]


def finding_out(finding: Finding, write: LengthWriter) -> FindingOut:
    """A finding with its offers, lengths in the answer's unit."""
    return FindingOut(
        finding.code,
        finding.side,
        finding.detail,
        write(finding.amount),
        [_offer_out(offer, write) for offer in finding.offers],
    )


def _offer_out(offer: Offer, write: LengthWriter) -> OfferOut:
    return OfferOut(
        offer.answer,
        offer.detail,
        "/" + "/".join(str(step) for step in offer.field) if offer.field else None,
        _value(offer.value, write.unit),
        {name: _figure(name, value, write) for name, value in offer.figures},
    )


def _value(value: Real | str | bool | None, unit: Unit) -> str | bool | None:
    """What the field takes: a length exactly."""
    if value is None or isinstance(value, str | bool):
        return value
    return tape(Fraction(value), unit)


def _figure(name: str, value: Real, write: LengthWriter) -> str:
    if name.endswith("degrees"):
        return f"{float(value):.2f}"
    return write(value).text
