"""The cheapest cost by trying everything: slow, plain, and sharing no code with what it checks."""

from fractions import Fraction
from functools import cache

from longpoint.stock import Cutting, StickOnHand

State = tuple[int, ...]
End = tuple[Fraction, Fraction]  # what a miter runs along the stick, and what its cut eats


def cheapest(cutting: Cutting) -> int | None:
    """Cents of the cheapest plan for a cutting with a few pieces, or None when there is no plan."""
    pieces = cutting.pieces
    stock = cutting.stock
    most = tuple(
        1
        if isinstance(one, StickOnHand)
        else sum(p.quantity for p in pieces)
        if one.available is None
        else one.available
        for one in stock
    )

    @cache
    def fills(index: int) -> frozenset[State]:
        """Every multiset of pieces that can be cut from one stick of that stock."""
        one = stock[index]
        trim = one.end_trim if isinstance(one, StickOnHand) and one.end_trim is not None else cutting.end_trim
        found: set[State] = set()
        seen: set[tuple[State, Fraction, End, Fraction]] = set()

        def lay(counts: State, end: Fraction | None, right: End, cutting_off: Fraction) -> None:
            if (counts, end or Fraction(0), right, cutting_off) in seen:
                return
            seen.add((counts, end or Fraction(0), right, cutting_off))
            found.add(counts)
            for at, piece in enumerate(pieces):
                if counts[at] == piece.quantity:
                    continue
                more = (*counts[:at], counts[at] + 1, *counts[at + 1 :])
                one_end = piece.left, cutting.kerf if piece.left_eats is None else piece.left_eats
                other = piece.right, cutting.kerf if piece.right_eats is None else piece.right_eats
                for left, next_right in {(one_end, other), (other, one_end)}:
                    starts = [trim if end is None else end + cutting_off]
                    if end is not None and cutting.turnable and right[0] and right == left:
                        starts.append(end + right[1] - right[0])
                    takes = next_right[1] if cutting.turnable else max(one_end[1], other[1])
                    if cutting.square_first:
                        takes = cutting.kerf
                    starts += [defect.end for defect in one.defects if defect.end > starts[0]]
                    for start in starts:
                        stop = start + piece.length
                        if stop <= one.length - trim and all(
                            stop <= d.start or start >= d.end for d in one.defects
                        ):
                            lay(more, stop, next_right, takes)

        lay((0,) * len(pieces), None, (Fraction(0), Fraction(0)), Fraction(0))
        return frozenset(found)

    @cache
    def cost(index: int, left: State, sticks: int) -> int | None:
        """Cheapest way to cut what is left from ``sticks`` of this stock and all those after it."""
        if not any(left):
            return 0
        if index == len(stock):
            return None
        best = cost(index + 1, left, most[index + 1]) if index + 1 < len(stock) else None
        if sticks:
            for fill in fills(index):
                if not any(fill) or any(a > b for a, b in zip(fill, left, strict=True)):
                    continue
                rest = tuple(b - a for a, b in zip(fill, left, strict=True))
                tail = cost(index, rest, sticks - 1)
                if tail is not None and (best is None or tail + stock[index].price_cents < best):
                    best = tail + stock[index].price_cents
        return best

    return cost(0, tuple(piece.quantity for piece in pieces), most[0]) if stock else None
