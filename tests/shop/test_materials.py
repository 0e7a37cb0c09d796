"""Materials: counted from pieces, rounded up to packages, every figure with its origin."""

from __future__ import annotations

from itertools import product
from random import Random

import pytest
from hypothesis import given
from hypothesis import strategies as st
from msgspec.structs import replace

from geometry.builders import read
from longpoint.geometry import Bottom, Casing, Finish, Opening, PlumbSides, Trim
from longpoint.shop import (
    DEFAULTS,
    Amounts,
    Material,
    MaterialCode,
    Materials,
    Package,
    Rates,
    amounts,
    hours,
    materials,
    saw_order,
)
from longpoint.shop.nails import in_a_row, nail_length, shortest
from longpoint.shop.packages import buy
from longpoint.values import Cents
from shop.builders import BUTTED, FLAT, TRIM, Entry, F, random_house, window, worked_out

seeds = st.integers(0, 10**9)


def taken(*openings: Opening, count: int = 1, **rates: object) -> tuple[tuple[Amounts, ...], Materials]:
    own = Rates(**{name: F(value) for name, value in rates.items()})
    counted = amounts(worked_out(tuple(Entry(one, count=count) for one in openings)), own)
    return counted, materials(counted, own)


def line(found: Materials, code: str) -> Material:
    (one,) = [each for each in found.lines if each.code == code]
    return one


def test_a_windows_nails_are_counted_piece_by_piece() -> None:
    # Legs 48 11/16 and head 35 3/8: 4 and 3 pairs at 16 in apart, 3 in from the ends. Stool 36 7/8: 4 at 12 in.
    # Apron 35 3/8: two rows of 3. Two mitered corners, 2 nails in each.
    (counted,), found = taken(window("W1", F(30), F(46)), nail_waste="0")
    uses = {each.use: (each.penny, each.count) for each in counted.nailing}
    assert uses == {
        "stool to sill": (4, 4),
        "stool to apron": (4, 4),
        "apron to stud": (6, 6),
        "casing to stud": (6, 11),
        "casing to jamb": (4, 11),
        "mitered corners": (4, 4),
    }
    assert line(found, "nails_4d").quantity == 23
    assert line(found, "nails_6d").quantity == 17


def test_nails_grow_with_the_count_and_with_waste() -> None:
    _, one = taken(window("W1", F(30), F(46)), nail_waste="0")
    _, three = taken(window("W1", F(30), F(46)), count=3, nail_waste="10")
    assert line(three, "nails_6d").quantity == line(one, "nails_6d").quantity * 3 * F(11, 10)


@pytest.mark.parametrize(
    ("length", "nails"), [("4", 2), ("6", 2), ("22", 2), ("22 1/16", 3), ("38", 3), ("70", 5)]
)
def test_nails_in_a_row_are_never_farther_apart_than_the_spacing(length: str, nails: int) -> None:
    whole, _, piece = length.partition(" ")
    assert in_a_row(F(whole) + F(piece or 0), F(16), F(3)) == nails


def test_the_size_is_the_shortest_that_reaches() -> None:
    assert [shortest(F(need)) for need in ("1", "17/16", "3/2", "2", "33/16", "5/2", "3")] == [
        2,
        3,
        4,
        6,
        8,
        8,
        10,
    ]
    assert shortest(F(4)) == 10
    assert nail_length(8) == F(5, 2)


def test_a_nail_that_does_not_reach_is_said_with_what_is_missing() -> None:
    _, found = taken(window("W1", F(30), F(46)), outer_nail="4")
    (note,) = [note for note in line(found, "nails_4d").notes if str(note).startswith("casing to stud")]
    assert "a 4d nail is 1 1/2 in long and 1 7/8 in is needed, so it is 3/8 in short" in str(note)
    thick = Trim(Casing(F(4), F(2), "beam"), F(1, 4))
    _, found = taken(
        Opening(mark="D1", readings=read(PlumbSides(F(30), F(80), F(80))), trim=thick, bottom=Bottom.FLOOR)
    )
    assert "3 1/4 in is needed" in str(line(found, "nails_10d").notes[0])


def test_blocks_and_butted_heads_are_nailed_too() -> None:
    (counted,), _ = taken(
        Opening(mark="D1", readings=read(PlumbSides(F(30), F(80), F(80))), trim=BUTTED, bottom=Bottom.PLINTH)
    )
    uses = {each.use: each.count for each in counted.nailing}
    assert uses["blocks to stud"] == 8
    assert "mitered corners" not in uses


def test_joints_and_faces_of_a_picture_frame() -> None:
    # 20 x 30 in jamb, reveal 1/4, casing 3 1/2 x 3/4: short points 20 1/2 and 30 1/2, long points 27 1/2 and 37 1/2.
    frame = Opening(
        mark="P1",
        readings=read(PlumbSides(F(20), F(30), F(30))),
        trim=FLAT,
        bottom=Bottom.CASING,
    )
    (counted,), _ = taken(frame, profile_girth="100")
    assert counted.caulked == 2 * (F("20.5") + F("30.5") + F("27.5") + F("37.5"))
    assert counted.faces == 2 * (F("27.5") + F("37.5")) * (F("3.5") + F("1.5"))
    # Four mitered faces, 3 1/2 x 3/4 over the cosine of 45 degrees.
    assert float(counted.glued) == pytest.approx(4 * 3.5 * 0.75 * 2**0.5, abs=1e-5)


@given(seeds)
def test_every_line_is_the_sum_of_its_openings_and_is_covered_by_what_is_bought(seed: int) -> None:
    house = random_house(Random(seed))
    found = materials(amounts(house, Rates()), Rates())
    assert [each.opening for each in found.lines[0].by_opening] == [
        one.built.opening.mark for one in house.openings
    ]
    for each in found.lines:
        assert each.quantity == sum(share.quantity for share in each.by_opening)
        assert each.quantity <= sum(package.size * package.count for package in each.bought)
        assert each.rule
        assert each.inputs
        assert set(each.rates) <= {rate.name for rate in found.rates}


def test_every_rate_says_where_it_comes_from_and_a_callers_own_says_so() -> None:
    assert all(rate.source and rate.says and rate.unit for rate in DEFAULTS.values())
    _, found = taken(window("W1", F(30), F(46)), caulk_bead="1/4")
    sources = {rate.name: rate.source for rate in found.rates}
    assert sources["caulk_bead"] == "set by the caller"
    assert "common practice, no source" in sources["caulk_gap"]
    with pytest.raises(TypeError):
        Rates(no_such_rate=F(1))


def test_every_rate_is_used_by_something() -> None:
    painted = window("W1", F(30), F(46))
    stained = replace(painted, mark="W2", trim=replace(TRIM, finish=Finish.STAIN_GRADE))
    house = worked_out((Entry(painted), Entry(stained)))
    own = Rates(painted_backs=1)
    counted = amounts(house, own)
    used = {
        rate.name for rate in (*materials(counted, own).rates, *hours(counted, saw_order(house), own).rates)
    }
    assert used == set(DEFAULTS)


package = st.builds(
    Package,
    st.just(MaterialCode.PAINT),
    st.text("ab", min_size=1, max_size=3),
    st.integers(1, 40),
    st.integers(1, 500).map(Cents),
)


@given(st.integers(1, 200).map(F), st.lists(package, min_size=1, max_size=3))
def test_priced_packages_are_the_cheapest_that_cover(need: object, packages: list[Package]) -> None:
    bought = buy(need, tuple(packages))
    cost = sum(each.cost for each in bought)
    assert sum(each.size * each.count for each in bought) >= need
    most = [int(-(-need // each.holds)) for each in packages]
    sizes_near = max(each.size for each in packages) <= 8 * min(each.size for each in packages)
    if sizes_near and max(most) <= 40:
        cheapest = min(
            sum(each.price * count for each, count in zip(packages, counts, strict=True))
            for counts in product(*(range(each + 1) for each in most))
            if sum(each.holds * count for each, count in zip(packages, counts, strict=True)) >= need
        )
        assert cost == cheapest


def test_unpriced_packages_leave_least_over() -> None:
    quart, gallon = Package(MaterialCode.PAINT, "quart", 32), Package(MaterialCode.PAINT, "gallon", 128)
    found = {
        need: [(each.package, each.count) for each in buy(F(need), (quart, gallon))]
        for need in (30, 97, 129, 256)
    }
    assert found == {
        30: [("quart", 1)],
        97: [("gallon", 1)],
        129: [("quart", 1), ("gallon", 1)],
        256: [("gallon", 2)],
    }
    assert buy(F(0), (quart,)) == ()
