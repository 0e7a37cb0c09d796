"""Rebuild a plan from its answer alone and complain of anything that could not be cut or does not add up."""

from collections import Counter
from fractions import Fraction

from longpoint.stock import Cutting, Layout, Placed, Plan, StickKind, Wanted


def complaints(cutting: Cutting, plan: Plan) -> list[str]:
    """Everything wrong with the plan, nothing when it is right."""
    found: list[str] = []
    cut: Counter[str] = Counter()
    used: Counter[str] = Counter()
    cost = 0
    pieces = {piece.key: piece for piece in cutting.pieces}
    for layout in plan.layouts:
        found += _stick(cutting, layout, pieces)
        cut.update(key for keys in layout.keys for key in keys)
        used[layout.stick] += len(layout.keys)
        cost += layout.price_cents * len(layout.keys)
    wanted = Counter({piece.key: piece.quantity for piece in cutting.pieces})
    if cut != wanted:
        found.append(f"cut {cut - wanted} too many and {wanted - cut} too few")
    if cost != plan.cost_cents:
        found.append(f"sticks cost {cost}, not {plan.cost_cents}")
    if plan.bound_cents > plan.cost_cents:
        found.append("the bound is above the cost")
    for stock in cutting.stock:
        most = stock.available if isinstance(stock, StickKind) else 1
        if most is not None and used[stock.key] > most:
            found.append(f"{used[stock.key]} of {stock.key}, {most} available")
    if cutting.together:
        found += _apart(cutting, plan)
    return found


def misfits(cutting: Cutting, layout: Layout) -> list[str]:
    """What keeps a stick of another plan from being cut under this cutting."""
    pieces = {piece.key: piece for piece in cutting.pieces}
    if all(stock.key != layout.stick for stock in cutting.stock) or any(
        key not in pieces for keys in layout.keys for key in keys
    ):
        return ["the stock or a piece is gone"]
    return _stick(cutting, layout, pieces)


def _stick(cutting: Cutting, layout: Layout, pieces: dict[str, Wanted]) -> list[str]:
    stock = next(one for one in cutting.stock if one.key == layout.stick)
    found: list[str] = []
    if (stock.length, stock.price_cents, not isinstance(stock, StickKind)) != (
        layout.length,
        layout.price_cents,
        layout.on_hand,
    ):
        found.append(f"{layout.stick} is misdescribed")
    trim = cutting.end_trim
    if not isinstance(stock, StickKind) and stock.end_trim is not None:
        trim = stock.end_trim
    if any(len(keys) != len(layout.placed) for keys in layout.keys):
        return [*found, "a stick lacks names"]
    for keys in layout.keys:
        for key, placed in zip(keys, layout.placed, strict=True):
            piece = pieces[key]
            ends = (piece.left, piece.right) if cutting.turnable else (placed.left, placed.right)
            if placed.reversed:
                ends = ends[1], ends[0]
            if piece.length != placed.length or ends != (placed.left, placed.right):
                found.append(f"{key} is cut as another piece")
    for keys in layout.keys:
        found += _cuts(cutting, layout, [pieces[key] for key in keys])
    if layout.placed[0].shares_cut:
        found.append("the first piece shares a cut with nothing")
    for placed in layout.placed:
        end = placed.start + placed.length
        if placed.start < trim or end > layout.length - trim:
            found.append("a piece runs into the end trim")
        if any(placed.start < defect.end and end > defect.start for defect in stock.defects):
            found.append("a piece lies over a defect")
    last = layout.placed[-1]
    left = max(Fraction(0), layout.length - last.start - last.length - last.eats)
    if left != layout.offcut:
        found.append(f"the offcut is {left}, not {layout.offcut}")
    if layout.kept != (cutting.keep_length is not None and left > 0 and left >= cutting.keep_length):
        found.append("the offcut's keeping is wrong")
    return found


def _cuts(cutting: Cutting, layout: Layout, row: list[Wanted]) -> list[str]:
    """What lies between the pieces of one stick."""
    found: list[str] = []
    ends = [_eats(cutting, piece, placed) for piece, placed in zip(row, layout.placed, strict=True)]
    for at, placed in enumerate(layout.placed):
        cutting_off = ends[at][1] if cutting.turnable else max(ends[at])
        if cutting.square_first:
            cutting_off = cutting.kerf
        shared = at + 1 < len(row) and layout.placed[at + 1].shares_cut
        if placed.eats < (ends[at][1] if shared else cutting_off):
            found.append("a cut is said to eat less than it does")
        if at + 1 == len(row):
            break
        after = layout.placed[at + 1]
        gap = after.start - placed.start - placed.length
        if not shared:
            if gap < cutting_off:
                found.append("two pieces without what the cut between them eats")
            continue
        if not cutting.turnable:
            found.append("molded stock shares a miter")
        if not after.left or after.left != placed.right or ends[at][1] != ends[at + 1][0]:
            found.append("two unlike ends share a cut")
        if placed.turned == after.turned:
            found.append("a shared miter without turning the piece over")
        if gap < ends[at][1] - after.left:
            found.append("a shared cut without what it eats")
    return found


def _eats(cutting: Cutting, piece: Wanted, placed: Placed) -> tuple[Fraction, Fraction]:
    """What the cuts eat at the piece's left and right end, as it lies."""
    left = cutting.kerf if piece.left_eats is None else piece.left_eats
    right = cutting.kerf if piece.right_eats is None else piece.right_eats
    return (right, left) if placed.reversed else (left, right)


def _apart(cutting: Cutting, plan: Plan) -> list[str]:
    opening = {piece.key: piece.opening for piece in cutting.pieces}
    whole = {name for name in opening.values() if name is not None} - set(plan.split_openings)
    rows: Counter[str] = Counter()
    for layout in plan.layouts:
        for keys in layout.keys:
            before = None
            for key in keys:
                here = opening[key]
                if here in whole and here != before:
                    rows[here] += 1
                before = here
    return [f"{name} is cut in {number} places" for name, number in rows.items() if number > 1]
