"""Types of the document's part "stock". Generated; do not edit."""

from __future__ import annotations

from longpoint_sdk.types._base import LengthText, MoneyText, Request


class DefectIn(Request, frozen=True, kw_only=True):
    """A stretch of a stick that no piece may touch, measured from its left end."""

    start: LengthText
    end: LengthText


class RemnantIn(Request, frozen=True, kw_only=True):
    """A piece of stock on hand: used first where that is cheaper. Its price is what using it is taken to cost.

    Attributes:
        count: How many there are just so.
        defects: Stretches no piece may touch, on each of them.
        price: An amount of money as decimal text, at most two places.
    """

    length: LengthText
    count: int = 1
    defects: list[DefectIn] = []
    price: MoneyText = "0"


class StickIn(Request, frozen=True, kw_only=True):
    """A length the yard sells, its price, and how many there are where that is limited.

    Attributes:
        price: An amount of money as decimal text, at most two places.
        available: How many the yard has; as many as are needed when left out.
        defects: Stretches no piece may touch, on each of them.
    """

    length: LengthText
    price: MoneyText
    available: int | None = None
    defects: list[DefectIn] = []


class StockIn(Request, frozen=True, kw_only=True):
    """One profile's stock. `turnable` stock is flat and square-edged, so mitred ends may share a cut.

    `one_stick_each` asks that each opening's pieces come side by side from one stick, so that their grain and
    colour agree; those no stick can hold are named in the plan's `split_openings`. Openings alike under one
    mark count as one: give each its own mark where each is to have its own stick.

    Attributes:
        profile: Its name, as the trim's pieces name theirs.
        sticks: The lengths the yard sells.
        remnants: What is on hand already.
    """

    profile: str
    sticks: list[StickIn]
    one_stick_each: bool = False
    remnants: list[RemnantIn] = []
    turnable: bool = False
