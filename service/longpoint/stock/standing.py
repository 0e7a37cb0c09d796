"""Sticks of an earlier plan: which of them can still be cut just as they were laid out."""

from collections import Counter
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from itertools import groupby

from longpoint.lengths import Fraction

from .laid import Layout, Placed
from .model import Cutting, StickKind, StickOnHand, Wanted
from .problem import Counts, ScaledCutting

__all__ = ["Standing", "StickHeld", "still_cut"]

End = tuple[Fraction, Fraction]  # inches that its miter runs, and that its cut eats
Block = tuple[int, int, str | None]  # what is placed as one: the item, how many pieces, and the opening


@dataclass(frozen=True, slots=True)
class Standing:
    """A stick of an earlier plan that could be cut as it was laid out.

    Attributes:
        name: what the caller knows the stick by.
        layout: of that one stick: ``keys`` has one row.
    """

    name: str
    layout: Layout


@dataclass(frozen=True, slots=True)
class StickHeld:
    """A standing stick that the cutting still allows.

    Attributes:
        name: of the standing stick.
        layout: as it was, but for whether the offcut goes back on the rack.
        stock: index of its stock in the problem.
        counts: how many of each item it takes.
        openings: those that are to stay together and are on it.
    """

    name: str
    layout: Layout
    stock: int
    counts: Counts
    openings: tuple[str, ...]


def still_cut(cutting: Cutting, problem: ScaledCutting, standing: Sequence[Standing]) -> list[StickHeld]:
    """Those of the sticks that can all be cut together under the cutting; of two that want the same, the first
    given."""
    pieces = {piece.key: piece for piece in cutting.pieces}
    stocks = {stock.key: stock for stock in cutting.stock}
    places = {key: at for at, stock in enumerate(problem.stocks) for key in stock.keys}
    rows = _Rows(cutting, problem)
    left = Counter({piece.key: piece.quantity for piece in cutting.pieces})
    sticks = {
        stock.key: stock.available if isinstance(stock, StickKind) else 1
        for stock in cutting.stock
        if stock.key in places
    }
    held: list[StickHeld] = []
    for one in standing:
        layout = one.layout
        stock = stocks.get(layout.stick)
        if layout.times != 1 or not layout.placed or stock is None or sticks.get(stock.key, 0) == 0:
            continue
        wanted = Counter(layout.keys[0])
        if any(left[key] < number for key, number in wanted.items()):
            continue
        row = [pieces[key] for key in layout.keys[0]]
        blocks = rows.blocks(row)
        if blocks is None or not _as_laid(cutting, stock, row, blocks, layout):
            continue
        left.subtract(wanted)
        most = sticks[stock.key]
        sticks[stock.key] = None if most is None else most - 1
        held.append(StickHeld(one.name, _racked(cutting, layout), places[stock.key], *rows.counted(blocks)))
    return held


class _Rows:
    """Tells the items of a row of pieces."""

    def __init__(self, cutting: Cutting, problem: ScaledCutting) -> None:
        self._kinds = {
            cutting.pieces[line].key: at for at, kind in enumerate(problem.kinds) for line, _ in kind.lines
        }
        self._loose = {
            item.forms[0].pieces[0].kind: at for at, item in enumerate(problem.items) if not item.openings
        }
        self._whole = {name: at for at, item in enumerate(problem.items) for name in item.openings}
        self._sizes = Counter[str]()
        for piece in cutting.pieces:
            if piece.opening is not None:
                self._sizes[piece.opening] += piece.quantity

    def blocks(self, row: Sequence[Wanted]) -> list[Block] | None:
        """The row as what is placed as one; None where an opening that stays together is not all there."""
        blocks: list[Block] = []
        for opening, some in groupby(row, lambda piece: piece.opening):
            together = list(some)
            if opening is None or opening not in self._whole:
                blocks += [(self._loose[self._kinds[piece.key]], 1, None) for piece in together]
            elif len(together) != self._sizes[opening]:
                return None
            else:
                blocks.append((self._whole[opening], len(together), opening))
        return blocks

    def counted(self, blocks: Sequence[Block]) -> tuple[Counts, tuple[str, ...]]:
        """How many of each item, and the openings."""
        counts = Counter(item for item, _, _ in blocks)
        return tuple(sorted(counts.items())), tuple(name for _, _, name in blocks if name is not None)


def _as_laid(
    cutting: Cutting,
    stock: StickKind | StickOnHand,
    row: Sequence[Wanted],
    blocks: Sequence[Block],
    layout: Layout,
) -> bool:
    """Whether the row, laid out again on that stock, comes to lie as it did."""
    described = stock.length, stock.price_cents, isinstance(stock, StickOnHand)
    if described != (layout.length, layout.price_cents, layout.on_hand) or len(row) != len(layout.placed):
        return False
    trim = (
        stock.end_trim if isinstance(stock, StickOnHand) and stock.end_trim is not None else cutting.end_trim
    )
    if layout.placed[-1].end > stock.length - trim:
        return False
    before: Placed | None = None
    last: End = Fraction(0), Fraction(0)
    pieces = Fraction(0)  # what the cut takes that cuts the piece off before, when it is not shared
    extents = list(_extents(layout.placed, blocks))
    for piece, placed, extent in zip(row, layout.placed, extents, strict=True):
        left, right = _ends(cutting, piece, placed.reversed)
        if (placed.length, placed.left, placed.right) != (piece.length, left[0], right[0]):
            return False
        start = trim if before is None else before.end + pieces
        eats = pieces
        if placed.shares_cut:
            if before is None or not left[0] or left != last:
                return False
            # What a shared cut saves may have been taken down a little, so that its place is not quite one.
            start = max(min(placed.start, before.end + pieces), before.end + left[1] - left[0])
            eats = start - before.end + left[0]
        if placed.start != _clear(stock, start, extent):
            return False
        if before is not None and before.eats != eats:
            return False
        if placed.turned != (placed.shares_cut and before is not None and not before.turned):
            return False
        before, last, pieces = placed, right, cutting.kerf if cutting.square_first else right[1]
    return before is not None and before.eats == pieces


def _extents(placed: Sequence[Placed], blocks: Sequence[Block]) -> Iterator[Fraction]:
    """What has to lie clear of defects from each piece's start: the first of a block goes where the block goes."""
    at = 0
    for _, size, _ in blocks:
        yield placed[at + size - 1].end - placed[at].start
        yield from (placed[place].length for place in range(at + 1, at + size))
        at += size


def _ends(cutting: Cutting, piece: Wanted, reversed_: bool) -> tuple[End, End]:
    """The left and the right end of the piece as it lies."""
    left = piece.left, cutting.kerf if piece.left_eats is None else piece.left_eats
    right = piece.right, cutting.kerf if piece.right_eats is None else piece.right_eats
    if not cutting.turnable:  # it lies one way, and either cut may be the one that cuts it off
        dearer = Fraction(0), max(left[1], right[1])
        return dearer, dearer
    return (right, left) if reversed_ else (left, right)


def _clear(stock: StickKind | StickOnHand, start: Fraction, length: Fraction) -> Fraction:
    """Where a piece starts that is pushed to the right past every defect it would lie over."""
    if not stock.defects:
        return start
    for defect in sorted(stock.defects, key=lambda one: (one.start, one.end)):
        if start < defect.end and start + length > defect.start:
            start = defect.end
    return start


def _racked(cutting: Cutting, layout: Layout) -> Layout:
    last = layout.placed[-1]
    offcut = max(Fraction(0), layout.length - last.end - last.eats)
    kept = cutting.keep_length is not None and offcut > 0 and offcut >= cutting.keep_length
    same = (layout.offcut, layout.kept) == (offcut, kept)
    return layout if same else replace(layout, offcut=offcut, kept=kept)
