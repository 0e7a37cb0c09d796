"""Earlier plans and what became of their cuttings; and the most sticks that can be kept, by trying every set of
them."""

from collections import Counter
from collections.abc import Callable
from dataclasses import replace
from fractions import Fraction
from itertools import combinations
from random import Random

from longpoint.stock import Budget, Cutting, Layout, Plan, Standing, StickKind, StickOnHand, Wanted, plan
from stock.brute import cheapest
from stock.checker import misfits

WIDTH = Fraction(5, 2)


def standing(found: Plan) -> list[Standing]:
    """Every stick of a plan under a name of its own."""
    rows = [replace(layout, keys=(keys,)) for layout in found.layouts for keys in layout.keys]
    return [Standing(f"S{number}", row) for number, row in enumerate(rows, 1)]


def small_house(seed: int) -> Cutting:
    """Up to twelve openings with one to three pieces each, two or three lengths of stick, some lengths on hand."""
    random = Random(f"small house {seed}")
    common = [Fraction(random.randint(20 * 16, 60 * 16), 16) for _ in range(4)]
    pieces: list[Wanted] = []
    for number in range(random.randint(2, 12 if seed % 8 == 0 else 5)):
        opening = f"W{number}"
        head, leg = random.choice(common), random.choice(common)
        pieces.append(Wanted(f"{opening}.head", head, 1, opening, WIDTH, WIDTH))
        if random.random() < 0.4:
            pieces.append(Wanted(f"{opening}.legs", leg, random.randint(1, 2), opening, right=WIDTH))
    lengths = random.sample([(96, 899), (120, 1149), (144, 1399), (192, 1899)], random.randint(2, 3))
    sticks = tuple(StickKind(f"{length} in", Fraction(length), price) for length, price in lengths)
    lengths_on_hand = tuple(
        StickOnHand(f"R{number}", Fraction(random.randint(30, 90)), random.choice([0, 100]))
        for number in range(random.randint(0, 2))
    )
    turnable, together = random.random() < 0.25, random.random() < 0.25
    return Cutting("casing", tuple(pieces), sticks, lengths_on_hand, turnable=turnable, together=together)


def remeasured(cutting: Cutting, seed: int) -> Cutting:
    """One opening's pieces longer or shorter by up to half an inch."""
    random = Random(f"remeasured {seed}")
    opening = random.choice(sorted({piece.opening for piece in cutting.pieces if piece.opening}))
    off = Fraction(random.choice([-8, -5, -1, 1, 3, 8]), 16)
    return replace(
        cutting,
        pieces=tuple(
            replace(one, length=one.length + off) if one.opening == opening else one for one in cutting.pieces
        ),
    )


def most_kept(
    cutting: Cutting, before: list[Standing], cost: int, within: Callable[[Cutting, int], bool]
) -> int:
    """The most of the sticks that a plan of no more cost can hold, every set tried, the largest first.

    Args:
        cutting: what is to be cut now.
        before: the sticks.
        cost: cents.
        within: whether a cutting can be cut for no more than so many cents.
    """
    split = set(plan(cutting, Budget(0)).split_openings)
    possible = [one.layout for one in before if not misfits(cutting, one.layout)]
    for number in range(len(possible), 0, -1):
        for some in combinations(possible, number):
            left = cost - sum(layout.price_cents for layout in some)
            rest = None if left < 0 else _without(cutting, some, split)
            if rest is not None and (not rest.pieces or within(rest, left)):
                return number
    return 0


def within_by_brute(cutting: Cutting, most: int) -> bool:
    """Everything tried."""
    least = cheapest(cutting)
    return least is not None and least <= most


def within_by_plan(cutting: Cutting, most: int) -> bool:
    """What ``plan`` proves, first-fit first."""
    for budget in (Budget(0), Budget(20.0)):
        found = plan(cutting, budget)
        if found.cost_cents <= most or found.bound_cents > most:
            return found.cost_cents <= most
    raise AssertionError("not proven")


def _without(cutting: Cutting, some: tuple[Layout, ...], split: set[str]) -> Cutting | None:
    """The cutting less what those sticks take, or None when it does not hold them all, or not each opening whole."""
    cut = Counter(key for layout in some for key in layout.keys[0])
    sticks = Counter(layout.stick for layout in some)
    pieces = [replace(one, quantity=one.quantity - cut[one.key]) for one in cutting.pieces]
    if any(one.quantity < 0 for one in pieces):
        return None
    if cutting.together:
        here = {one.opening for one in cutting.pieces if cut[one.key]}
        if any(one.quantity and one.opening in here - split for one in pieces):
            return None
        pieces = [replace(one, opening=None) if one.opening in split else one for one in pieces]
    kinds = [
        one if one.available is None else replace(one, available=one.available - sticks[one.key])
        for one in cutting.sticks
    ]
    if any(one.available is not None and one.available < 0 for one in kinds):
        return None
    lengths_on_hand = tuple(one for one in cutting.lengths_on_hand if not sticks[one.key])
    if len(lengths_on_hand) + sum(sticks[one.key] for one in cutting.lengths_on_hand) != len(
        cutting.lengths_on_hand
    ):
        return None
    left = tuple(one for one in pieces if one.quantity)
    return replace(cutting, pieces=left, sticks=tuple(kinds), lengths_on_hand=lengths_on_hand)
