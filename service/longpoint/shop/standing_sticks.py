"""Sticks of an earlier plan that can be laid out again, each from stock that there is today."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator, Mapping
from typing import Any

from msgspec.structs import replace

from longpoint.lengths import Fraction
from longpoint.shop.build import HouseKey
from longpoint.shop.named_sticks import NamedStick, Sited, laid_out
from longpoint.stock import Cutting, Standing, StickOnHand


def standing_in(sited: Sited, cutting: Cutting, sticks: Mapping[str, NamedStick]) -> Iterator[Standing]:
    """Sticks of an earlier plan, as the stock room can lay them out again: those whose stock there still is.

    A stick that was to be bought is still the same when it comes from a lot that was bought since, and one whose lot is
    gone when it is to be bought.
    """
    places = sited.places
    own = {name: stick for name, stick in sticks.items() if stick.profile == cutting.profile}
    stock = _Stock(sited, cutting)
    keys = {name: key for name, stick in own.items() if (key := stock.take_of_lot(stick)) is not None}
    for name, stick in own.items():
        source = keys.get(name) or stock.take(stick)
        if source is not None:
            at, said = source
            row = tuple(HouseKey(places[piece.opening_id], piece.piece) for piece in stick.pieces)
            same = all(getattr(stick, field) == value for field, value in said.items())
            yield Standing(name, laid_out(at, stick if same else replace(stick, **said), (row,)))


_Source = tuple[str, dict[str, Any]]
"""What the stock room calls a stick's stock, and what is said of the stick that comes from there."""


class _Stock:
    """What a cutting's sticks can come from; each length on hand once."""

    def __init__(self, sited: Sited, cutting: Cutting) -> None:
        self._sold = cutting.sticks
        self._of_lot: dict[str, list[StickOnHand]] = defaultdict(list)
        self._so_long: dict[Fraction, list[str]] = defaultdict(list)
        for board in reversed(cutting.lengths_on_hand):
            lot = sited.lot_of(cutting.profile, board.key)
            self._of_lot[lot].append(board)
            if not board.defects:
                self._so_long[board.length].append(lot)

    def take_of_lot(self, stick: NamedStick) -> _Source | None:
        """A length of the lot that the stick came from."""
        return None if stick.lot is None else self._take(stick.lot, stick.length)

    def take(self, stick: NamedStick) -> _Source | None:
        """Whatever else is as long: what is on hand first, then what costs what it did, then what is cheapest."""
        lots = self._so_long[stick.length]
        while lots:
            found = self._take(lots.pop(), stick.length)
            if found is not None:
                return found
        sold = [one for one in self._sold if one.length == stick.length]
        if not sold:
            return None
        kind = min(sold, key=lambda one: (one.price_cents != stick.price, one.price_cents))
        return kind.key, {"lot": None, "price": kind.price_cents}

    def _take(self, lot: str, length: Fraction) -> _Source | None:
        boards = self._of_lot.get(lot)
        if not boards or boards[-1].length != length:
            return None
        board = boards.pop()
        return board.key, {"lot": lot, "price": board.price_cents}
