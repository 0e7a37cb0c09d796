"""Materials against published figures. Each check names its source.

"found": read in the public text named. "computed": from the stated formula alone, worked here by hand.
"memory": recalled, not read again. What the trade does without a text to name is marked
"common practice, no source".
"""

from __future__ import annotations

import pytest

from longpoint.geometry import Bottom, Casing, Opening, Readings, Trim
from longpoint.lengths import Fraction
from longpoint.shop import MaterialCode, Package, Rates, amounts, materials
from longpoint.shop.build import CutList, build_openings
from longpoint.shop.cautions import ESCAPE, LEAD_PAINT, LEAD_YEAR, SAW_GUARDS, WOOD_DUST
from longpoint.shop.finishing import coverage
from longpoint.shop.materials import bead_area
from longpoint.shop.nails import in_a_row, nail_length
from longpoint.shop.packages import NAILS_A_POUND, buy
from longpoint.shop.rates import DEFAULTS
from longpoint.shop.saw import Saw
from shop.builders import Entry, house_of

F = Fraction
TUBE = F(101, 10) * F(231, 128)
"""Cubic inches in 10.1 US fluid ounces; 231 in3 to the gallon, 128 fl oz to the gallon (NIST Handbook 44, memory)."""


def casing_nails(thickness: Fraction) -> dict[str, int]:
    trim = Trim(Casing(F(5, 2), thickness), F(3, 16))
    read = Readings(jamb_width=F(30), jamb_height=F(80))
    door = Opening(mark="D1", readings=read, trim=trim, bottom=Bottom.FLOOR)
    house = house_of([Entry(door)])
    (counted,) = amounts(CutList(house, build_openings(house), ()), Rates())
    return {each.use: each.penny for each in counted.nailing}


# Finishing nails, penny to inches. Found: tables of finishing nails (sizes.com; woodtools.nov.ru, "About nails").
@pytest.mark.parametrize(
    ("penny", "inches"),
    [(2, "1"), (3, "5/4"), (4, "3/2"), (5, "7/4"), (6, "2"), (7, "9/4"), (8, "5/2"), (9, "11/4"), (10, "3")],
)
def test_finishing_nails_length_by_penny(penny: int, inches: str) -> None:
    assert nail_length(penny) == F(inches)


# Finishing nails to the pound. Found: table of finishing nails, sizes.com. Makers differ: another table
# (woodtools.nov.ru) gives 600, 300 and 200 for 4d, 6d and 8d.
@pytest.mark.parametrize(
    ("penny", "a_pound"),
    [(2, 1351), (3, 807), (4, 584), (5, 500), (6, 309), (7, 238), (8, 189), (9, 172), (10, 121)],
)
def test_finishing_nails_to_the_pound(penny: int, a_pound: int) -> None:
    assert NAILS_A_POUND[penny] == a_pound


# NAVEDTRA 14044, p. 6-17, found: casing takes 6d or 7d finishing nails into the stud, by its thickness, and 4d or
# 5d into the jamb, "in pairs and spaced about 16 inches apart".
@pytest.mark.parametrize("thickness", [F(5, 8), F(11, 16), F(3, 4)])
def test_nails_of_casing_are_those_of_the_builders_manual(thickness: Fraction) -> None:
    sizes = casing_nails(thickness)
    assert sizes["casing to stud"] in (6, 7)
    assert sizes["casing to jamb"] in (4, 5)
    assert DEFAULTS["nail_spacing"].value == 16


# Computed: an 80 in leg with its first and last pair 3 in from the ends (common practice, no source) leaves 74 in,
# which takes 5 spaces of at most 16 in, so 6 pairs.
def test_pairs_along_a_door_leg() -> None:
    assert in_a_row(F(80), F(16), F(3)) == 6


# Caulk, feet from a 10.1 fl oz tube = 10.1 x 231/128 / (12 x section). Computed, to the places shown.
@pytest.mark.parametrize(
    ("fillet", "feet"),
    [("1/4", 48.6), ("3/16", 86.4), ("1/8", 194.4)],
)
def test_feet_of_triangular_bead_from_a_tube(fillet: str, feet: float) -> None:
    assert float(TUBE / 12 / bead_area(F(fillet), F(0), F(0))) == pytest.approx(feet, abs=0.05)


# Found: engineerfix.com, "How much caulk do I need": 10 ft of joint 1/4 in wide and 1/4 in deep takes 7.5 in3; and,
# "Standard caulk sizes", a 10 oz cartridge covers about 24 to 27 ft of it.
def test_a_filled_gap_takes_its_published_volume() -> None:
    section = bead_area(F(0), F(1, 4), F(1, 4))
    assert section * 120 == F(15, 2)
    assert 24 <= 10 * F(231, 128) / 12 / section <= 27


# Computed by hand: a frame of 20 x 30 in, reveal 1/4, casing 3 1/2, has 232 in of joints with wall and jamb. A
# fillet of 3/16 with a gap of 1/16 by 1/8 is 0.0253906 in2 across; 232 in of it are 5.890625 in3, 3.26407 fl oz,
# and with a tenth more 3.59048 fl oz: one tube.
def test_caulk_of_a_picture_frame() -> None:
    trim = Trim(Casing(F(7, 2), F(3, 4), "flat"), F(1, 4))
    read = Readings(jamb_width=F(20), jamb_height=F(30))
    frame = Opening(mark="P1", readings=read, trim=trim, bottom=Bottom.CASING)
    house = house_of([Entry(frame)])
    rates = Rates()
    found = materials(amounts(CutList(house, build_openings(house), ()), rates), rates)
    (caulk,) = [line for line in found.lines if line.code == "caulk"]
    assert float(caulk.quantity) == pytest.approx(3.59048, abs=1e-5)
    assert [(each.package, each.count) for each in caulk.bought] == [("10.1 fl oz tube", 1)]


# A gallon, all solids, at one mil. Found: paintcenter.org (R. Joseph, 2003 and 2009): 1604 ft2. Computed: 231000/144.
def test_a_gallon_at_one_mil() -> None:
    assert float(coverage(F(1), F(1))) == pytest.approx(1604.17, abs=0.005)


# Found: paintcenter.org, October 2003: 52 % solids at 1.5 mil dry, 30 % of it reaching the work: 167 ft2 a gallon.
# Found: a maker's sheet "Theoretical spreading rate": 65 % solids at 5.0 mil: 208.52 ft2 (with 1604 for 1604.17).
def test_published_spreading_rates() -> None:
    assert round(coverage(F(52, 100), F(3, 2)) * F(3, 10)) == 167
    assert float(coverage(F(65, 100), F(5))) == pytest.approx(208.52, abs=0.03)


# Found: nedmartin.org, painters' talk, with figures of two data sheets: 42 % solids at 1.6 mil gives 421 ft2 where
# the label says 350 to 400, and 35 % at 1.44 mil gives 389. So theory runs above labels: the label rules.
def test_spreading_rates_beside_labels() -> None:
    assert round(coverage(F(42, 100), F(16, 10))) == 421
    assert float(coverage(F(35, 100), F(144, 100))) == pytest.approx(389, abs=1)


# Computed: 300 ft2 of faces in two coats at 401 ft2 a gallon with 15 % more is 1.7205 gallons: a gallon and 3 quarts.
def test_paint_is_rounded_up_to_cans() -> None:
    covers = coverage(F(35, 100), F(14, 10))
    ounces = F(300) * 2 / covers * F(115, 100) * 128
    assert float(ounces / 128) == pytest.approx(1.7205, abs=1e-4)
    quart, gallon = Package(MaterialCode.PAINT, "quart", 32), Package(MaterialCode.PAINT, "gallon", 128)
    assert [(each.package, each.count) for each in buy(ounces, (quart, gallon))] == [
        ("quart", 3),
        ("gallon", 1),
    ]


# EPA renovation rule, 40 CFR 745 subpart E, found: housing built before 1978.
# 29 CFR 1910.213 and 1926.300(b)(1), found: guards. NIOSH, found: 1 mg/m3 of wood dust. IRC R310: escape openings.
def test_cautions_name_what_they_lean_on() -> None:
    assert LEAD_YEAR == 1978
    assert "40 CFR 745" in LEAD_PAINT.source
    assert "1910.213" in SAW_GUARDS.source
    assert "1926.300(b)(1)" in SAW_GUARDS.source
    assert "NIOSH" in WOOD_DUST.source
    assert "1 mg" in str(WOOD_DUST.text)
    assert "R310" in ESCAPE.source


# Smallest workpiece held by hand: 6 in is common practice, no source; shop rules of 12 in are found too, so it is a
# setting.
def test_the_smallest_hand_held_workpiece_is_a_setting() -> None:
    assert Saw().smallest_held == 6
    assert Saw(smallest_held=F(12)).smallest_held == 12
