"""Returns come from the stick of their own apron or stool where that costs nothing, and what does not is named."""

from __future__ import annotations

from collections import Counter
from random import Random

from hypothesis import given, settings
from hypothesis import strategies as st

from longpoint.shop import saw_order
from longpoint.shop.build import CutList, HouseKey, cuttings
from longpoint.stock import Budget, Plan, plan
from shop.builders import SAME_STOCK, Entry, F, random_house, solid_house, window, worked_out

OWNERS = {
    **{f"apron_return/{side}": "apron" for side in ("left", "right")},
    **{f"stool_return/{side}": "stool" for side in ("left", "right")},
}


def planned(house: CutList) -> tuple[Plan, ...]:
    """Its plans as they were found, before anything was laid otherwise."""
    return tuple(plan(cutting, Budget(0)) for cutting in cuttings(house.house, house.openings))


def apart(plans: tuple[Plan, ...]) -> int:
    """How many returns of aprons and stools are on sticks that have no owner for them."""
    found = 0
    for one in plans:
        for layout in one.layouts:
            for keys in layout.keys:
                here = Counter((key.opening, str(key.piece)) for key in keys)
                found += sum(
                    max(0, count - here[opening, OWNERS[piece]])
                    for (opening, piece), count in here.items()
                    if piece in OWNERS
                )
    return found


def cut(plans: tuple[Plan, ...]) -> Counter[HouseKey]:
    return Counter(key for one in plans for layout in one.layouts for keys in layout.keys for key in keys)


def bought(plans: tuple[Plan, ...]) -> list[tuple[str, int, dict[str, int], list[bool]]]:
    return [
        (
            one.profile,
            one.cost_cents,
            one.sticks,
            sorted(layout.kept for layout in one.layouts for _ in layout.keys),
        )
        for one in plans
    ]


@settings(deadline=None)
@given(st.integers(0, 10**9), st.booleans())
def test_the_same_sticks_are_bought_and_the_same_kept(seed: int, solid: bool) -> None:
    house = (solid_house if solid else random_house)(Random(seed))
    before = planned(house)
    assert cut(house.plans) == cut(before)
    assert bought(house.plans) == bought(before)
    assert apart(house.plans) <= apart(before)


@given(st.integers(0, 10**9))
def test_returns_that_are_not_beside_their_own_are_named(seed: int) -> None:
    house = random_house(Random(seed))
    named = [name for name in saw_order(house).apart if str(name.piece) in OWNERS]
    assert len(named) == len(set(named)) == apart(house.plans)


def test_eight_windows_have_every_return_beside_its_own_apron() -> None:
    windows = tuple(Entry(window(f"W{n}", F(28) + F(n, 2), F(46), trim=SAME_STOCK)) for n in range(8))
    house = worked_out(windows)
    assert apart(planned(house)) > 8
    order = saw_order(house)
    assert order.apart == ()
    # Cut one after the other: the returns, then the apron they go with.
    for n in range(8):
        own = [
            each.number
            for each in order.operations
            if each.pieces[0].opening == f"W{n}" and "apron" in str(each.pieces[0].piece)
        ]
        assert own[-1] - own[0] == len(own) - 1
