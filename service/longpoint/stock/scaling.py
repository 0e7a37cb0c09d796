"""From the job's inches to the problem's whole units."""

from collections import Counter
from collections.abc import Callable, Iterable, Iterator
from dataclasses import replace
from functools import reduce
from math import gcd, lcm

from longpoint.lengths import Fraction

from .cuts import MARK
from .forms import Blocks, piece_forms
from .model import Defect, Job, Piece, Remnant, StickKind
from .problem import Form, Item, Kind, Problem, Span, Stock

__all__ = ["scale"]

Units = Callable[[Fraction], int]
End = tuple[Fraction, Fraction]  # inches that its miter runs, and that its cut eats


def scale(job: Job) -> Problem:
    """Gather what is alike and turn lengths into whole numbers of the largest unit that divides them all."""
    savings = _savings(job)
    unit = _unit((*_lengths(job), *savings.values()))

    def units(length: Fraction) -> int:
        return int(length / unit)

    kinds = _kinds(job, units, savings)
    stocks = _stocks(job, units)
    kerf = units(job.kerf)
    items, split = _items(job, kinds, stocks, kerf)
    return Problem(unit, kerf, kinds, items, stocks, split)


def _ends(job: Job, piece: Piece) -> tuple[End, End]:
    """The piece's left and right end."""
    left = job.kerf if piece.left_eats is None else piece.left_eats
    right = job.kerf if piece.right_eats is None else piece.right_eats
    return (piece.left, left), (piece.right, right)


def _savings(job: Job) -> dict[End, Fraction]:
    """What a shared cut saves against a kerf for each mitered end: its run, less what it eats more than the kerf.

    An end that no other is like shares with none. What is irrational is taken down to a millionth, each to its own, so
    that unlike ends stay unlike.
    """
    if not job.turnable:
        return {}
    there = Counter[End]()
    for piece in job.pieces:
        for end in _ends(job, piece):
            there[end] += piece.quantity
    ends = {end for end, number in there.items() if end[0] and number > 1}
    exact = {(run, eats): run + job.kerf - eats for run, eats in ends}
    mark = _unit(_lengths(job))
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


def _lengths(job: Job) -> Iterator[Fraction]:
    yield job.kerf
    yield job.end_trim
    for piece in job.pieces:
        yield piece.length
        yield from (eats for eats in (piece.left_eats, piece.right_eats) if eats is not None)
    for stock in job.stock:
        yield stock.length
        for defect in stock.defects:
            yield defect.start
            yield defect.end
    for remnant in job.remnants:
        if remnant.end_trim is not None:
            yield remnant.end_trim


def _kinds(job: Job, units: Units, savings: dict[End, Fraction]) -> tuple[Kind, ...]:
    lines: dict[tuple[int, End, End], list[tuple[int, bool]]] = {}
    for index, piece in enumerate(job.pieces):
        left, right = _ends(job, piece)
        if not job.turnable:  # it lies one way, and either cut may be the one that parts it
            left = right = (Fraction(0), max(left[1], right[1]))
        shape = units(piece.length), min(left, right), max(left, right)
        lines.setdefault(shape, []).append((index, left > right))
    kinds = []
    for (length, left, right), alike in sorted(lines.items(), reverse=True):
        saved = units(savings.get(left, Fraction(0))), units(savings.get(right, Fraction(0)))
        cuts = [units(job.kerf if job.square_first else eats) for _, eats in (left, right)]
        kinds.append(Kind(length, *saved, (cuts[0], cuts[1]), (left[0], right[0]), tuple(alike)))
    return tuple(kinds)


def _stocks(job: Job, units: Units) -> tuple[Stock, ...]:
    stocks = [_stock(stick, False, job.end_trim, units) for stick in job.sticks if stick.available != 0]
    alike: dict[Stock, list[str]] = {}
    for remnant in job.remnants:
        trim = job.end_trim if remnant.end_trim is None else remnant.end_trim
        stock = _stock(remnant, True, trim, units, key="")
        alike.setdefault(stock, []).append(remnant.key)
    for stock, keys in alike.items():
        stocks.append(
            Stock(
                tuple(keys), True, stock.length, stock.start, stock.end, stock.blocked, stock.price, len(keys)
            )
        )
    return tuple(stock for stock in stocks if stock.end > stock.start)


def _stock(
    stock: StickKind | Remnant, remnant: bool, trim: Fraction, units: Units, key: str | None = None
) -> Stock:
    length = units(stock.length)
    start, end = units(trim), length - units(trim)
    most = stock.available if isinstance(stock, StickKind) else 1
    keys = (stock.key if key is None else key,)
    return Stock(keys, remnant, length, start, end, _spans(stock.defects, units), stock.price_cents, most)


def _spans(defects: tuple[Defect, ...], units: Units) -> tuple[Span, ...]:
    spans: list[Span] = []
    for start, end in sorted((units(defect.start), units(defect.end)) for defect in defects):
        if spans and start <= spans[-1][1]:
            spans[-1] = (spans[-1][0], max(spans[-1][1], end))
        else:
            spans.append((start, end))
    return tuple(spans)


def _items(
    job: Job, kinds: tuple[Kind, ...], stocks: tuple[Stock, ...], kerf: int
) -> tuple[tuple[Item, ...], tuple[str, ...]]:
    longest = max((length for stock in stocks for length in stock.stretches), default=0)
    blocks = Blocks(kinds, kerf)
    gathered, split = _gather(job, kinds, blocks, longest) if job.together else ({}, ())
    loose: Counter[int] = Counter()
    held = {name for names in gathered.values() for name in names}
    for kind, shape in enumerate(kinds):
        for line, _ in shape.lines:
            piece = job.pieces[line]
            if piece.opening is None or piece.opening not in held:
                loose[kind] += piece.quantity
    drafts: list[tuple[tuple[Form, ...], int, tuple[str, ...]]] = [
        (piece_forms(kind, kinds[kind]), demand, ()) for kind, demand in loose.items()
    ]
    drafts += [(blocks.forms(parts), len(names), tuple(names)) for parts, names in gathered.items()]
    drafts.sort(
        key=lambda draft: (-min(form.length for form in draft[0]), draft[0][0].parts[0].kind, draft[2])
    )
    return tuple(_item(kerf, index, *draft) for index, draft in enumerate(drafts)), split


def _item(kerf: int, index: int, forms: tuple[Form, ...], demand: int, openings: tuple[str, ...]) -> Item:
    weight = min(form.length - Fraction(form.left + form.right, 2) for form in forms)
    cut = min(kerf if form.right else form.eats for form in forms)
    return Item(demand, tuple(replace(form, item=index) for form in forms), weight, cut, openings)


def _gather(
    job: Job, kinds: tuple[Kind, ...], blocks: Blocks, longest: int
) -> tuple[dict[tuple[tuple[int, int], ...], list[str]], tuple[str, ...]]:
    wanted: dict[str, Counter[int]] = {}
    for kind, shape in enumerate(kinds):
        for line, _ in shape.lines:
            piece = job.pieces[line]
            if piece.opening is not None:
                wanted.setdefault(piece.opening, Counter())[kind] += piece.quantity
    gathered: dict[tuple[tuple[int, int], ...], list[str]] = {}
    split: list[str] = []
    for opening in sorted(wanted):
        parts = tuple(sorted(wanted[opening].items()))
        if sum(count for _, count in parts) == 1:
            continue
        if min(form.length for form in blocks.forms(parts)) > longest:
            split.append(opening)
        else:
            gathered.setdefault(parts, []).append(opening)
    return gathered, tuple(split)
