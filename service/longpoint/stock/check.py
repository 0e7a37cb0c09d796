"""Refuse a cutting that makes no sense, naming every fault at once."""

from collections.abc import Iterator
from math import lcm

from longpoint.lengths import Fraction
from longpoint.texts import say

from .faults import StockError, StockFault
from .model import Budget, Cutting, StickKind, StickOnHand, Stretch, Wanted

__all__ = ["check"]

MOST_PIECES = 2_000_000
MOST_SECONDS = 30
FINEST = 10**30
"""Pieces of an inch that all lengths of a cutting are whole numbers of: far finer than inches and millimeters to six
places together, and still quick to reckon with."""


def check(cutting: Cutting, budget: Budget) -> None:
    """Raise ``StockError`` with everything wrong that can be seen without planning."""
    faults = tuple(_faults(cutting))
    if not 0 <= budget.seconds <= MOST_SECONDS:
        faults += (
            StockFault(
                ("budget", "seconds"),
                "out_of_range",
                say("problem", "cutting.seconds-out-of-range", most=MOST_SECONDS),
            ),
        )
    if not faults:
        faults = tuple(_too_long(cutting))
    if faults:
        raise StockError(faults)


def _faults(cutting: Cutting) -> Iterator[StockFault]:
    if cutting.kerf < 0:
        yield StockFault(("kerf",), "negative", say("problem", "cutting.kerf-negative"))
    if cutting.end_trim < 0:
        yield StockFault(("end_trim",), "negative", say("problem", "cutting.end-trim-negative"))
    if cutting.keep_length is not None and cutting.keep_length < 0:
        yield StockFault(("keep_length",), "negative", say("problem", "cutting.keep-length-negative"))
    yield from _piece_faults(cutting.pieces, cutting.kerf)
    if cutting.pieces and not cutting.sticks and not cutting.lengths_on_hand:
        yield StockFault(("sticks",), "no_stock", say("problem", "cutting.no-stock"))
    seen: set[str] = set()
    for index, stick in enumerate(cutting.sticks):
        yield from _stock_faults(("sticks", index), stick, seen)
        if stick.available is not None and stick.available < 0:
            yield StockFault(
                ("sticks", index, "available"), "negative", say("problem", "stick.available-negative")
            )
    for index, on_hand in enumerate(cutting.lengths_on_hand):
        yield from _stock_faults(("lengths_on_hand", index), on_hand, seen)
        if on_hand.end_trim is not None and on_hand.end_trim < 0:
            yield StockFault(
                ("lengths_on_hand", index, "end_trim"), "negative", say("problem", "stick.end-trim-negative")
            )
    lengths = [stock.length for stock in cutting.stock]
    if lengths and cutting.kerf >= max(lengths):
        yield StockFault(
            ("kerf",),
            "kerf_exceeds_stock",
            say("problem", "cutting.kerf-exceeds-stock", kerf=cutting.kerf, longest=max(lengths)),
        )
    yield from _too_fine_together(cutting)


def _too_fine_together(cutting: Cutting) -> Iterator[StockFault]:
    """At the first length that has no mark in common with those before it that can still be reckoned with."""
    pieces = 1
    for field, length in _fields(cutting):
        if pieces % length.denominator:
            pieces = lcm(pieces, length.denominator)
            if pieces > FINEST:
                yield StockFault(
                    field,
                    "too_fine_together",
                    say("problem", "cutting.too-fine-together", length=length),
                )
                return


def _fields(cutting: Cutting) -> Iterator[tuple[tuple[str | int, ...], Fraction]]:
    """Every length that is laid out, and its field."""
    yield ("kerf",), cutting.kerf
    yield ("end_trim",), cutting.end_trim
    for index, piece in enumerate(cutting.pieces):
        yield ("pieces", index, "length"), piece.length
        for field, eats in (("left_eats", piece.left_eats), ("right_eats", piece.right_eats)):
            if eats is not None:
                yield ("pieces", index, field), eats
    for place, stock in enumerate(cutting.stock):
        bought = place < len(cutting.sticks)
        at = ("sticks", place) if bought else ("lengths_on_hand", place - len(cutting.sticks))
        yield (*at, "length"), stock.length
        for number, defect in enumerate(stock.defects):
            yield (*at, "defects", number, "start"), defect.start
            yield (*at, "defects", number, "end"), defect.end
    for index, on_hand in enumerate(cutting.lengths_on_hand):
        if on_hand.end_trim is not None:
            yield ("lengths_on_hand", index, "end_trim"), on_hand.end_trim


def _piece_faults(pieces: tuple[Wanted, ...], kerf: Fraction) -> Iterator[StockFault]:
    seen: set[str] = set()
    total = 0
    for index, piece in enumerate(pieces):
        at = ("pieces", index)
        if piece.key in seen:
            yield StockFault(
                (*at, "key"), "duplicate", say("problem", "cutting.key-twice", key=str(piece.key))
            )
        seen.add(piece.key)
        if piece.length <= 0:
            yield StockFault((*at, "length"), "not_positive", say("problem", "wanted.length-not-positive"))
        if piece.quantity < 1:
            yield StockFault(
                (*at, "quantity"), "not_positive", say("problem", "wanted.quantity-not-positive")
            )
        if piece.left < 0 or piece.right < 0:
            yield StockFault((*at, "left"), "negative", say("problem", "wanted.miter-negative"))
        elif piece.left + piece.right > piece.length > 0:
            yield StockFault((*at, "length"), "miters_cross", say("problem", "wanted.miters-cross"))
        for field, eats in (("left_eats", piece.left_eats), ("right_eats", piece.right_eats)):
            if eats is not None and eats < kerf:
                yield StockFault(
                    (*at, field),
                    "below_kerf",
                    say("problem", "wanted.below-kerf"),
                )
        total += max(piece.quantity, 0)
    if total > MOST_PIECES:
        yield StockFault(
            ("pieces",),
            "too_many",
            say("problem", "cutting.too-many-pieces", pieces=total, most=MOST_PIECES),
        )


def _stock_faults(
    at: tuple[str | int, ...], stock: StickKind | StickOnHand, seen: set[str]
) -> Iterator[StockFault]:
    if stock.key in seen:
        yield StockFault((*at, "key"), "duplicate", say("problem", "cutting.key-twice", key=str(stock.key)))
    seen.add(stock.key)
    if stock.length <= 0:
        yield StockFault((*at, "length"), "not_positive", say("problem", "stick.length-not-positive"))
    if stock.price_cents < 0:
        yield StockFault((*at, "price_cents"), "negative", say("problem", "stick.price-negative"))
    for index, defect in enumerate(stock.defects):
        if not _inside(defect, stock.length):
            yield StockFault(
                (*at, "defects", index),
                "outside_stick",
                say("problem", "stick.defect-outside"),
            )


def _inside(defect: Stretch, length: Fraction) -> bool:
    return 0 <= defect.start <= defect.end <= length


def _too_long(cutting: Cutting) -> Iterator[StockFault]:
    longest = longest_clear(cutting)
    for index, piece in enumerate(cutting.pieces):
        if piece.length > longest:
            yield StockFault(
                ("pieces", index, "length"),
                "piece_too_long",
                say(
                    "problem",
                    "wanted.too-long",
                    length=piece.length,
                    longest=longest,
                    short=piece.length - longest,
                ),
            )


def longest_clear(cutting: Cutting) -> Fraction:
    """Inches of the longest stretch a single piece could take on any stock there is."""
    longest = Fraction(0)
    for stock in cutting.stock:
        if isinstance(stock, StickKind) and stock.available == 0:
            continue
        trim = (
            stock.end_trim
            if isinstance(stock, StickOnHand) and stock.end_trim is not None
            else cutting.end_trim
        )
        start = trim
        for defect in sorted(stock.defects, key=lambda one: one.start):
            longest = max(longest, min(defect.start, stock.length - trim) - start)
            start = max(start, defect.end)
        longest = max(longest, stock.length - trim - start)
    return longest
