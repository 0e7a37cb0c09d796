"""Types of the document's part "stock". Generated; do not edit."""

from __future__ import annotations

from longpoint_sdk.types._base import LengthText, MoneyText, Request


class Defect(Request, frozen=True, kw_only=True):
    """A stretch of a stick that no piece may touch.

    Attributes:
        start: The start of the defect, measured from the left end of the stick as it lies, its face up. A
            length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m.
            Without a unit it is in the request's `unit`, when the request has one.
        end: The end of the defect, measured from the left end of the stick as it lies, its face up. A length
            as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a
            unit it is in the request's `unit`, when the request has one.
    """

    start: LengthText
    end: LengthText


class LengthsOnHand(Request, frozen=True, kw_only=True):
    """Lengths on hand that are alike in length, price and defects: used first where that is cheaper.

    Attributes:
        length: The length of each length on hand, measured from end to end. A length as a tape reads it, with
            its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's
            `unit`, when the request has one.
        count: The number of lengths that are just so.
        defects: The stretches that no piece may touch, on each of them.
        price: The amount that using it is taken to cost. An amount of money as decimal text, at most two
            places.
    """

    length: LengthText
    count: int = 1
    defects: list[Defect] = []
    price: MoneyText = "0.00"


class Stick(Request, frozen=True, kw_only=True):
    """A length the yard sells.

    Attributes:
        length: The length of the stick, measured from factory end to factory end. A length as a tape reads
            it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the
            request's `unit`, when the request has one.
        price: The price of one stick. An amount of money as decimal text, at most two places.
        available: How many the yard has; as many as are needed when left out.
        defects: Stretches no piece may touch, on each of them.
    """

    length: LengthText
    price: MoneyText
    available: int | None = None
    defects: list[Defect] = []


class Stock(Request, frozen=True, kw_only=True):
    """One profile's stock: what the yard sells of it, and what is on hand.

    Attributes:
        profile: The name of the profile, as the trim's pieces name theirs. A name on one line, not starting
            with a space.
        sticks: The lengths that the yard sells.
        lengths_on_hand: The lengths that are on hand already.
        one_stick_each: Asks that each opening's pieces come side by side from one stick, so that their grain
            and color agree; those no stick can hold are named in the plan's `split_openings`. Openings alike
            under one mark count as one: give each its own mark where each is to have its own stick.
        square_first: Pieces are cut off square and mitered afterwards: one more cut each, and what cuts a
            piece off from its stick eats the kerf alone. Otherwise a miter cuts the piece off, and eats more
            than a square cut.
        turnable: Flat and square-edged, its back as good as its face: a piece may be cut turned over, so that
            two mitered ends share a cut.
    """

    profile: str
    sticks: list[Stick]
    lengths_on_hand: list[LengthsOnHand] = []
    one_stick_each: bool = False
    square_first: bool = False
    turnable: bool = False
