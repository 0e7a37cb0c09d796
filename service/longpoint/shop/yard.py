"""What a house can be cut from: the sticks the yard sells and the lengths on hand, by profile."""

from __future__ import annotations

from typing import Annotated

from msgspec import Meta

from longpoint.lengths import Length, PositiveLength
from longpoint.stock import StickKind, StickOnHand, Stretch
from longpoint.values import Given, Name, Price


class Defect(Given, frozen=True):
    """A stretch of a stick that no piece may touch.

    Attributes:
        start: The start of the defect, measured from the left end of the stick as it lies, its face up.
        end: The end of the defect, measured from the left end of the stick as it lies, its face up.
    """

    start: Length
    end: PositiveLength


Defects = Annotated[tuple[Defect, ...], Meta(max_length=20)]


def stretches(defects: tuple[Defect, ...]) -> tuple[Stretch, ...]:
    """Defects as the stock room takes them."""
    return tuple(Stretch(one.start, one.end) for one in defects)


class Stick(Given, frozen=True):
    """A length the yard sells.

    Attributes:
        length: The length of the stick, measured from factory end to factory end.
        price: The price of one stick.
        available: How many the yard has; as many as are needed when left out.
        defects: Stretches no piece may touch, on each of them.
    """

    length: PositiveLength
    price: Price
    available: Annotated[int, Meta(ge=0, le=1_000_000)] | None = None
    defects: Defects = ()


class OnHand(Given, frozen=True):
    """A length of stock on hand.

    Attributes:
        length: The length of each length on hand, measured from end to end.
        price: The amount that using it is taken to cost.
        defects: The stretches that no piece may touch.
    """

    length: PositiveLength
    price: Price = Price(0)
    defects: Defects = ()


class LengthsOnHand(OnHand, frozen=True, kw_only=True):
    """Lengths on hand that are alike in length, price and defects: used first where that is cheaper.

    Attributes:
        count: The number of lengths that are just so.
        defects: The stretches that no piece may touch, on each of them.
    """

    count: Annotated[int, Meta(ge=1, le=200)] = 1


class StockForSale(Given, frozen=True, kw_only=True):
    """It says what the yard sells of one profile, and how its sticks may be laid out.

    Attributes:
        profile: The name of the profile, as the trim's pieces name theirs.
        sticks: The lengths that the yard sells.
        turnable: Flat and square-edged, its back as good as its face: a piece may be cut turned over, so that two
            mitered ends share a cut.
        one_stick_each: Asks that each opening's pieces come side by side from one stick, so that their grain and color
            agree; those no stick can hold are named in the plan's `split_openings`. Openings alike under one mark count
            as one: give each its own mark where each is to have its own stick.
        square_first: Pieces are cut off square and mitered afterwards: one more cut each, and what cuts a piece off
            from its stick eats the kerf alone. Otherwise a miter cuts the piece off, and eats more than a square cut.
    """

    profile: Name
    sticks: Annotated[tuple[Stick, ...], Meta(max_length=50)]
    turnable: bool = False
    one_stick_each: bool = False
    square_first: bool = False


class Stock(StockForSale, frozen=True, kw_only=True):
    """One profile's stock: what the yard sells of it, and what is on hand.

    Attributes:
        lengths_on_hand: The lengths that are on hand already.
    """

    lengths_on_hand: Annotated[tuple[LengthsOnHand, ...], Meta(max_length=200)] = ()

    @property
    def kinds(self) -> tuple[StickKind, ...]:
        """Its sticks as the stock room takes them."""
        return tuple(
            StickKind(f"sticks/{index}", one.length, int(one.price), one.available, stretches(one.defects))
            for index, one in enumerate(self.sticks)
        )

    @property
    def each_on_hand(self) -> tuple[StickOnHand, ...]:
        """Each of its lengths on hand by itself, as the stock room takes them."""
        return tuple(
            StickOnHand(
                f"lengths_on_hand/{index}/{number}", one.length, int(one.price), stretches(one.defects)
            )
            for index, one in enumerate(self.lengths_on_hand)
            for number in range(one.count)
        )

    def on_hand_at(self, key: str) -> int:
        """Which of its lengths on hand a board of this key is one of."""
        return int(key.split("/")[1])

    def on_hand_of(self, board: int) -> int:
        """Which of its lengths on hand a board is one of."""
        for index, one in enumerate(self.lengths_on_hand):
            board -= one.count
            if board < 0:
                return index
        raise IndexError(board)
