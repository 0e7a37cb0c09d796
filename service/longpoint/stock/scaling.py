"""From the cutting's inches to the problem's whole units."""

from collections import Counter
from collections.abc import Callable, Iterable, Iterator
from dataclasses import replace
from functools import reduce
from math import gcd, lcm

from longpoint.lengths import Fraction

from .cuts import MARK
from .forms import Blocks, piece_forms
from .model import Cutting, StickKind, StickOnHand, Stretch, Wanted
from .problem import Form, Item, PieceGroup, ScaledCutting, Span, StockGroup

__all__ = ["scale"]

Units = Callable[[Fraction], int]
End = tuple[Fraction, Fraction]  # inches that its miter runs, and that its cut eats


def scale(cutting: Cutting) -> ScaledCutting:
    """Gather what is alike and turn lengths into whole numbers of the largest unit that divides them all."""
    savings = _savings(cutting)
    unit = _unit((*_lengths(cutting), *savings.values()))

    def units(length: Fraction) -> int:
        return int(length / unit)

    kinds = _kinds(cutting, units, savings)
    stocks = _stocks(cutting, units)
    kerf = units(cutting.kerf)
    items, split = _items(cutting, kinds, stocks, kerf)
    return ScaledCutting(unit, kerf, kinds, items, stocks, split)


def _ends(cutting: Cutting, piece: Wanted) -> tuple[End, End]:
    """The piece's left and right end."""
    left = cutting.kerf if piece.left_eats is None else piece.left_eats
    right = cutting.kerf if piece.right_eats is None else piece.right_eats
    return (piece.left, left), (piece.right, right)


def _savings(cutting: Cutting) -> dict[End, Fraction]:
    """What a shared cut saves against a kerf for each mitered end: its run, less what it eats more than the kerf.

    An end that no other is like shares with none. What is irrational is taken down to a millionth, each to its own, so
    that unlike ends stay unlike.
    """
    if not cutting.turnable:
        return {}
    there = Counter[End]()
    for piece in cutting.pieces:
        for end in _ends(cutting, piece):
            there[end] += piece.quantity
    ends = {end for end, number in there.items() if end[0] and number > 1}
    exact = {(run, eats): run + cutting.kerf - eats for run, eats in ends}
    mark = _unit(_lengths(cutting))
    if any(saved % mark for saved in exact.values()):
        mark = _unit((mark, Fraction(1, MARK)))
    taken: dict[End, Fraction] = {}
    below: Fraction | None = None  # all marks from here up to what the last end saves are taken
    for end in sorted(exact, key=lambda one: (-exact[one], one)):
        saved = exact[end] // mark * mark
        if below is not None:
            saved = min(saved, below)
        taken[end] = max(saved, Fraction(0))
        below = saved - mark
    return taken


def _unit(lengths: Iterable[Fraction]) -> Fraction:
    some = {length for length in lengths if length}
    below = reduce(lcm, (length.denominator for length in some), 1)
    above = reduce(gcd, (int(length * below) for length in some), 0)
    return Fraction(above or 1, below)


def _lengths(cutting: Cutting) -> Iterator[Fraction]:
    yield cutting.kerf
    yield cutting.end_trim
    for piece in cutting.pieces:
        yield piece.length
        yield from (eats for eats in (piece.left_eats, piece.right_eats) if eats is not None)
    for stock in cutting.stock:
        yield stock.length
        for defect in stock.defects:
            yield defect.start
            yield defect.end
    for on_hand in cutting.lengths_on_hand:
        if on_hand.end_trim is not None:
            yield on_hand.end_trim


def _kinds(cutting: Cutting, units: Units, savings: dict[End, Fraction]) -> tuple[PieceGroup, ...]:
    lines: dict[tuple[int, End, End], list[tuple[int, bool]]] = {}
    for index, piece in enumerate(cutting.pieces):
        left, right = _ends(cutting, piece)
        if not cutting.turnable:  # it lies one way, and either cut may be the one that cuts it off
            left = right = (Fraction(0), max(left[1], right[1]))
        shape = units(piece.length), min(left, right), max(left, right)
        lines.setdefault(shape, []).append((index, left > right))
    kinds = []
    for (length, left, right), alike in sorted(lines.items(), reverse=True):
        saved = units(savings.get(left, Fraction(0))), units(savings.get(right, Fraction(0)))
        cuts = [units(cutting.kerf if cutting.square_first else eats) for _, eats in (left, right)]
        kinds.append(PieceGroup(length, *saved, (cuts[0], cuts[1]), (left[0], right[0]), tuple(alike)))
    return tuple(kinds)


def _stocks(cutting: Cutting, units: Units) -> tuple[StockGroup, ...]:
    stocks = [
        _stock(stick, False, cutting.end_trim, units) for stick in cutting.sticks if stick.available != 0
    ]
    alike: dict[StockGroup, list[str]] = {}
    for on_hand in cutting.lengths_on_hand:
        trim = cutting.end_trim if on_hand.end_trim is None else on_hand.end_trim
        stock = _stock(on_hand, True, trim, units, key="")
        alike.setdefault(stock, []).append(on_hand.key)
    for stock, keys in alike.items():
        stocks.append(
            StockGroup(
                tuple(keys), True, stock.length, stock.start, stock.end, stock.blocked, stock.price, len(keys)
            )
        )
    return tuple(stock for stock in stocks if stock.end > stock.start)


def _stock(
    stock: StickKind | StickOnHand, on_hand: bool, trim: Fraction, units: Units, key: str | None = None
) -> StockGroup:
    length = units(stock.length)
    start, end = units(trim), length - units(trim)
    most = stock.available if isinstance(stock, StickKind) else 1
    keys = (stock.key if key is None else key,)
    return StockGroup(
        keys, on_hand, length, start, end, _spans(stock.defects, units), stock.price_cents, most
    )


def _spans(defects: tuple[Stretch, ...], units: Units) -> tuple[Span, ...]:
    spans: list[Span] = []
    for start, end in sorted((units(defect.start), units(defect.end)) for defect in defects):
        if spans and start <= spans[-1][1]:
            spans[-1] = (spans[-1][0], max(spans[-1][1], end))
        else:
            spans.append((start, end))
    return tuple(spans)


def _items(
    cutting: Cutting, kinds: tuple[PieceGroup, ...], stocks: tuple[StockGroup, ...], kerf: int
) -> tuple[tuple[Item, ...], tuple[str, ...]]:
    longest = max((length for stock in stocks for length in stock.stretches), default=0)
    blocks = Blocks(kinds, kerf)
    gathered, split = _gather(cutting, kinds, blocks, longest) if cutting.together else ({}, ())
    loose: Counter[int] = Counter()
    held = {name for names in gathered.values() for name in names}
    for kind, shape in enumerate(kinds):
        for line, _ in shape.lines:
            piece = cutting.pieces[line]
            if piece.opening is None or piece.opening not in held:
                loose[kind] += piece.quantity
    drafts: list[tuple[tuple[Form, ...], int, tuple[str, ...]]] = [
        (piece_forms(kind, kinds[kind]), demand, ()) for kind, demand in loose.items()
    ]
    drafts += [(blocks.forms(pieces), len(names), tuple(names)) for pieces, names in gathered.items()]
    drafts.sort(
        key=lambda draft: (-min(form.length for form in draft[0]), draft[0][0].pieces[0].kind, draft[2])
    )
    return tuple(_item(kerf, index, *draft) for index, draft in enumerate(drafts)), split


def _item(kerf: int, index: int, forms: tuple[Form, ...], demand: int, openings: tuple[str, ...]) -> Item:
    weight = min(form.length - Fraction(form.left + form.right, 2) for form in forms)
    cut = min(kerf if form.right else form.eats for form in forms)
    return Item(demand, tuple(replace(form, item=index) for form in forms), weight, cut, openings)


def _gather(
    cutting: Cutting, kinds: tuple[PieceGroup, ...], blocks: Blocks, longest: int
) -> tuple[dict[tuple[tuple[int, int], ...], list[str]], tuple[str, ...]]:
    wanted: dict[str, Counter[int]] = {}
    for kind, shape in enumerate(kinds):
        for line, _ in shape.lines:
            piece = cutting.pieces[line]
            if piece.opening is not None:
                wanted.setdefault(piece.opening, Counter())[kind] += piece.quantity
    gathered: dict[tuple[tuple[int, int], ...], list[str]] = {}
    split: list[str] = []
    for opening in sorted(wanted):
        pieces = tuple(sorted(wanted[opening].items()))
        if sum(count for _, count in pieces) == 1:
            continue
        if min(form.length for form in blocks.forms(pieces)) > longest:
            split.append(opening)
        else:
            gathered.setdefault(pieces, []).append(opening)
    return gathered, tuple(split)
