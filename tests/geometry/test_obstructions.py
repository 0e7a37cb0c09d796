"""What is in the way: each collision with the trade's answers, none of which is taken up by itself."""

from __future__ import annotations

from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from msgspec.structs import replace

from geometry.builders import CASING, TRIM, F, opening
from longpoint.geometry import (
    BackBand,
    Bottom,
    Clearances,
    Finding,
    HeadStrip,
    HeadStyle,
    Horns,
    Opening,
    Plinth,
    PlumbSides,
    Trim,
    Widths,
    build_opening,
)

WINDOW = PlumbSides(F("30.625"), F("46.25"), F("46.25"))


def among(trim: Trim = TRIM, fields: dict[str, Any] | None = None, **clear: str) -> Opening:
    base = opening(WINDOW, trim, **(fields or {}))
    clearances = Clearances(**{name: F(text) for name, text in clear.items()})
    return replace(base, readings=replace(base.readings, clearances=clearances))


def found(one: Opening) -> tuple[Finding, ...]:
    return build_opening(one).findings


def test_room_enough_is_no_finding() -> None:
    # The horn reaches 3/16 + 2 1/2 + 3/4 = 3 7/16, the head 2 11/16 up, the apron 3/4 + 2 1/2 down.
    assert found(among(left="3.4375", right="3.4375", above="2.6875", below="3.25")) == ()


def test_a_horn_in_the_way_is_shortened_to_what_is_left() -> None:
    (finding,) = found(among(left="3"))
    (offer,) = finding.offers
    assert (finding.code, finding.side, finding.amount) == ("horn-collides", "left", F("0.4375"))
    assert (offer.answer, offer.path, offer.worth) == ("shorten_horn", ("horns", "left"), F("0.3125"))


def test_casing_in_the_way_is_ripped() -> None:
    casing, horn = found(among(right="2.5"))
    assert (casing.code, casing.amount) == ("casing-collides", F("0.1875"))
    assert [(offer.answer, offer.worth) for offer in casing.offers] == [
        ("rip_casing", F("2.3125")),
        ("rip_and_return_casing", F("1.6875")),
    ]
    assert horn.code == "horn-collides"


def test_no_room_for_casing_offers_no_rip() -> None:
    casing, _ = found(among(right="0"))
    assert casing.offers == ()


def test_head_trim_counts_its_fillet_cap_and_band() -> None:
    strip = HeadStrip("strip", height=F(1), depth=F(2))
    dressed = replace(TRIM, head_style=HeadStyle.BUTTED, fillet=strip, cap=strip)
    (finding,) = found(among(dressed, above="4.5"))
    assert (finding.side, finding.amount, finding.offers[0].worth) == ("above", F("0.1875"), F("2.3125"))
    banded = replace(TRIM, back_band=BackBand(width=F(1), thickness=F(1), profile="band"))
    assert found(among(banded, above="3"))[0].amount == F("0.6875")


def test_an_apron_in_the_way_is_ripped_or_dropped() -> None:
    (finding,) = found(among(below="3"))
    assert [(offer.answer, offer.path, offer.worth) for offer in finding.offers] == [
        ("rip_apron", ("widths", "apron"), F("2.25")),
        ("drop_apron", ("without_apron",), True),
    ]
    assert [offer.answer for offer in found(among(below="1.5"))[0].offers] == ["drop_apron"]
    assert found(among(below="1/2"))[0].code == "stool-collides"
    assert found(among(below="1.5", fields={"without_apron": True})) == ()


def test_a_picture_frames_bottom_casing_is_ripped() -> None:
    (finding,) = found(among(Trim(CASING, F(3, 16)), {"bottom": Bottom.CASING}, below="2"))
    assert (finding.code, finding.offers[0].worth) == ("sill-collides", F("1.8125"))


def test_neighbors_share_one_mull_casing() -> None:
    (finding,) = found(among(left_neighbor="4"))
    assert finding.amount == F("1.375")
    shared = finding.offers[0]
    assert shared.answer == "share_mull_casing"
    assert dict(shared.figures)["mull casing width"] == F("3.625")
    assert finding.offers[1].value == F("1.8125")


BANDED = replace(TRIM, back_band=BackBand(width=F(1), thickness=F(1), profile="band"))


@pytest.mark.parametrize(
    ("clear", "worth"), [({"left_neighbor": "7"}, "2.3125"), ({"left": "3.5"}, "2.3125")]
)
def test_a_casing_ripped_for_what_is_beside_it_leaves_room_for_its_band(
    clear: dict[str, str], worth: str
) -> None:
    # Half of 7, or 3 1/2, less the reveal of 3/16 and the inch that the band stands past the casing.
    collision = found(among(BANDED, **clear))[0]
    assert collision.code == "casing-collides"
    rip = next(offer for offer in collision.offers if offer.answer == "rip_casing")
    assert (rip.path, rip.worth) == (("widths", "left"), F(worth))
    ripped = found(among(BANDED, {"widths": Widths(left=F(worth))}, **clear))
    assert "casing-collides" not in {finding.code for finding in ripped}
    too_wide = found(among(BANDED, {"widths": Widths(left=F(worth) + F(1, 16))}, **clear))
    assert "casing-collides" in {finding.code for finding in too_wide}


BLOCKS = Trim(CASING, F(3, 16), plinth=Plinth(width=F(3), height=F(6), thickness=F(1), profile="plinth"))


def test_a_plinth_block_is_wider_than_its_leg() -> None:
    # The leg reaches 3/16 + 2 1/2 = 2 11/16 past the jamb, the block 3 3/16.
    on_blocks = {"bottom": Bottom.PLINTH}
    assert found(among(BLOCKS, on_blocks, left="3.1875", right="3.1875")) == ()
    (finding,) = found(among(BLOCKS, on_blocks, left="3"))
    assert (finding.code, finding.side, finding.amount) == ("plinth-collides", "left", F(3, 16))
    assert finding.offers[0].figures == (("rip width", F(45, 16)),)
    assert found(among(BLOCKS, {"bottom": Bottom.FLOOR}, left="3")) == (), (
        "without blocks the leg stands clear"
    )


def test_plinth_blocks_of_neighbors_meet() -> None:
    on_blocks = {"bottom": Bottom.PLINTH}
    assert found(among(BLOCKS, on_blocks, right_neighbor="6.375")) == ()
    (finding,) = found(among(BLOCKS, on_blocks, right_neighbor="6"))
    assert (finding.code, finding.by, finding.amount) == ("plinth-collides", "neighbor", F(3, 8))
    assert finding.offers[0].figures == (("rip width", F(45, 16)),)


def test_nothing_is_taken_up_by_itself() -> None:
    crowded = among(left="1", right="1", above="1", below="1")
    assert build_opening(crowded).pieces == build_opening(opening(WINDOW)).pieces


room = st.integers(8, 16 * 6).map(lambda n: F(n, 16))


@given(room, room, room, room)
def test_taking_up_the_first_offers_leaves_nothing_in_the_way(left: F, right: F, above: F, below: F) -> None:
    one = among(left=str(left), right=str(right), above=str(above), below=str(below))
    for _ in range(4):
        # One that waits for another to be settled has no field yet.
        findings = [finding for finding in found(one) if finding.offers and finding.offers[0].path]
        if not findings:
            break
        for finding in findings:
            one = _taken_up(one, finding)
    left_over = [finding for finding in found(one) if finding.code != "stool-collides"]
    assert left_over == []


def _taken_up(one: Opening, finding: Finding) -> Opening:
    offer = finding.offers[0]
    match offer.path:
        case ("horns", side):
            return replace(one, horns=Horns(**{**_values(one.horns), str(side): offer.worth}))
        case ("widths", side):
            return replace(one, widths=Widths(**{**_values(one.widths), str(side): offer.worth}))
        case ("without_apron",):
            return replace(one, without_apron=True)
    pytest.fail(f"{offer.answer} has no field")


def _values(struct: Any) -> dict[str, Any]:
    return {name: getattr(struct, name) for name in struct.__struct_fields__}
