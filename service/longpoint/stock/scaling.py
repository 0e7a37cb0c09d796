"""From the job's inches to the problem's whole units."""

from collections import Counter
from collections.abc import Callable, Iterable, Iterator
from fractions import Fraction
from functools import reduce
from math import ceil, gcd, lcm

from .forms import Blocks, piece_forms
from .model import Defect, Job, Remnant, StickKind
from .problem import Form, Item, Kind, Problem, Span, Stock

__all__ = ["scale"]

FINE = Fraction(1, 64)  # inches; the marks a run is taken down to are no coarser

Units = Callable[[Fraction], int]


def scale(job: Job) -> Problem:
    """Gather what is alike and turn lengths into whole numbers of the largest unit that divides them all."""
    runs = _runs(job)
    unit = _unit((*_lengths(job), *runs.values()))

    def units(length: Fraction) -> int:
        return int(length / unit)

    kinds = _kinds(job, units, runs)
    stocks = _stocks(job, units)
    kerf = units(job.kerf)
    items, split = _items(job, kinds, stocks, kerf)
    return Problem(unit, kerf, kinds, items, stocks, split)


def _runs(job: Job) -> dict[Fraction, Fraction]:
    """What a shared cut is taken to save for each run: the run itself, or a little less.

    A run that is not on the marks of the other lengths, most often an irrational one, is taken down to a mark
    no coarser than ``FINE``, each to its own, so that unequal runs stay unequal.
    """
    if not job.turnable:
        return {}
    mark = _unit(_lengths(job))
    mark /= ceil(mark / FINE)
    taken: dict[Fraction, Fraction] = {}
    below: Fraction | None = None  # all marks from here up to the last run's own are taken
    for run in sorted({run for piece in job.pieces for run in (piece.left, piece.right)}, reverse=True):
        saved = run // mark * mark
        if below is not None:
            saved = min(saved, below)
        taken[run] = max(saved, Fraction(0))
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
    for stock in job.stock:
        yield stock.length
        for defect in stock.defects:
            yield defect.start
            yield defect.end
    for remnant in job.remnants:
        if remnant.end_trim is not None:
            yield remnant.end_trim


def _kinds(job: Job, units: Units, runs: dict[Fraction, Fraction]) -> tuple[Kind, ...]:
    lines: dict[tuple[int, Fraction, Fraction], list[tuple[int, bool]]] = {}
    for index, piece in enumerate(job.pieces):
        left, right = (piece.left, piece.right) if job.turnable else (Fraction(0), Fraction(0))
        shape = units(piece.length), min(left, right), max(left, right)
        lines.setdefault(shape, []).append((index, left > right))
    return tuple(
        Kind(length, units(runs.get(left, left)), units(runs.get(right, right)), (left, right), tuple(alike))
        for (length, left, right), alike in sorted(lines.items(), reverse=True)
    )


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
    longest = max((_longest_clear(stock) for stock in stocks), default=0)
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
    return tuple(_item(index, *draft) for index, draft in enumerate(drafts)), split


def _item(index: int, forms: tuple[Form, ...], demand: int, openings: tuple[str, ...]) -> Item:
    weight = min(form.length - Fraction(form.left + form.right, 2) for form in forms)
    named = tuple(Form(index, form.length, form.left, form.right, form.parts) for form in forms)
    return Item(demand, named, weight, openings)


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


def _longest_clear(stock: Stock) -> int:
    edges = [stock.start, *(edge for span in stock.blocked for edge in span), stock.end]
    return max(
        (
            min(to, stock.end) - max(from_, stock.start)
            for from_, to in zip(edges[::2], edges[1::2], strict=True)
        ),
        default=0,
    )
