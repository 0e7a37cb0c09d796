"""What was paid for the sticks of a house, and what became of it: pieces, waste, or lengths that are left."""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Iterable, Sequence

from longpoint.lengths import Fraction
from longpoint.shop.named_sticks import NamedStick
from longpoint.shop.paid import Paid, PaidLot


class _Sum:
    def __init__(self) -> None:
        self.whole = 0
        self.pieces = self.kept = Fraction(0)

    def share(self, stick: NamedStick, price: int) -> None:
        """Share out what was paid for a stick."""
        if price:
            self.pieces += (
                price * sum((piece.placed.length for piece in stick.pieces), Fraction(0)) / stick.length
            )
            if stick.kept:
                self.kept += price * stick.offcut / stick.length


def paid_for(
    lots: Sequence[PaidLot], cut: Iterable[NamedStick], planned: Iterable[NamedStick]
) -> dict[str, Paid]:
    """What was paid, by profile.

    A stick that was cut before anybody said of what lot it was is taken for one of those that were used up of a lot of
    its length; where there are none, it was bought at its planned price.

    Args:
        lots: Lengths on hand, those used up too.
        cut: The sticks that were cut as planned.
        planned: Those still to be cut.
    """
    by_name = {one.lot: one for one in lots}
    sums: dict[str, _Sum] = defaultdict(_Sum)
    used = Counter({one.lot: one.counted - one.available for one in lots})
    for one in lots:
        sums[one.profile].whole += one.paid * one.counted
        sums[one.profile].kept += one.paid * one.available
    for stick in planned:
        lot = by_name.get(stick.lot or "")
        if lot is not None:
            sums[stick.profile].kept -= lot.paid
            sums[stick.profile].share(stick, lot.paid)
    of_no_lot = []
    for stick in cut:
        lot = by_name.get(stick.lot or "")
        if lot is not None and used[lot.lot] > 0:
            used[lot.lot] -= 1
            sums[stick.profile].share(stick, lot.paid)
        elif stick.lot is None:
            of_no_lot.append(stick)
    so_long: dict[tuple[str, Fraction], list[PaidLot]] = defaultdict(list)
    for one in lots:
        so_long[one.profile, one.length].append(one)
    for stick in of_no_lot:
        lot = next((one for one in so_long[stick.profile, stick.length] if used[one.lot] > 0), None)
        if lot is None:
            sums[stick.profile].whole += stick.price
        else:
            used[lot.lot] -= 1
        sums[stick.profile].share(stick, stick.price if lot is None else lot.paid)
    for one in lots:
        sums[one.profile].pieces += one.paid * used[one.lot]
    return {profile: Paid(one.whole, one.pieces, one.kept) for profile, one in sums.items()}
