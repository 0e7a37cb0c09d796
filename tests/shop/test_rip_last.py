"""A molded leg that is ripped: it takes its full length of a stick, is mitered first and ripped after, and is put up
beside a head whose tip is trimmed."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

import pytest
from shapely import Polygon

from asking import Service
from geometry.builders import opening
from longpoint.geometry import Built, PlumbSides, Widths, build_opening
from longpoint.lengths import Fraction, Rounding
from longpoint.sheets.place import placed_pieces
from longpoint.shop.recut import can_be_recut
from longpoint.shop.shape import shape_of

TRIM: dict[str, Any] = {
    "casing": {"width": "2 1/2 in", "thickness": "5/8 in"},
    "reveal": "3/16 in",
    "stool": {"thickness": "3/4 in", "horn": "3/4 in", "nosing": "7/8 in"},
}
READINGS = {"jamb_width": "30 5/8 in", "jamb_height": "46 1/4 in", "jamb_depth": "3 1/8 in"}
F = Fraction
LEG = "side_casing/left"


def asked(face: str, **house: Any) -> dict[str, Any]:
    trim = {**TRIM, "casing": {**TRIM["casing"], "face": face}}
    one = {"mark": "K1", "trim": "t", "readings": READINGS, "widths": {"left": "1 1/2 in"}}
    sticks = [{"length": "16 ft", "price": "20.00"}]
    stock = [{"profile": "casing", "sticks": sticks}, {"profile": "stool", "sticks": sticks}]
    return {"openings": [one], "trim_specs": {"t": trim}, "stock": stock, "include": ["saw_order"], **house}


@pytest.fixture(scope="module")
def service() -> Iterator[Service]:
    with Service() as service:
        yield service


def kinds(service: Service, face: str) -> tuple[list[str], str]:
    """What is done to the left leg, in the order of the saw, and how long it is on its stick."""
    answer = service.post("/v1/cut-list", asked(face))
    assert answer.status_code == 200, answer.text
    body = answer.json()
    done = [
        one["kind"]
        for one in body["saw_order"]["operations"]
        if any(piece["piece"] == LEG for piece in one["pieces"])
    ]
    (on_stick,) = [
        piece["length"]["text"]
        for plan in body["plans"]
        for stick in plan["sticks"]
        for piece in stick["pieces"]
        if piece["piece"] == LEG
    ]
    return done, on_stick


@pytest.mark.parametrize("face", ["molded", "flat"])
def test_it_takes_its_length_before_the_rip_and_a_molded_one_is_ripped_last(
    service: Service, face: str
) -> None:
    done, on_stick = kinds(service, face)
    # H + r + c, of molded stock because it is mitered at full width, of flat because its joint is as long.
    assert on_stick == "48 15/16 in"
    # A flat leg's miter is for the width it is ripped to: ripped after, it would lose its long point.
    assert done == (
        ["square_end", "angled_cut_off", "rip"]
        if face == "molded"
        else ["square_end", "cut_off", "rip", "angled_end"]
    )


def done_to_casing(service: Service, house: dict[str, Any]) -> list[str]:
    operations = service.post("/v1/cut-list", house).json()["saw_order"]["operations"]
    return [one["kind"] for one in operations if one["profile"] == "casing"]


def built(widths: Widths) -> Built:
    return build_opening(opening(PlumbSides(F("30.625"), F("46.25"), F("46.25")), widths=widths))


def test_a_stick_of_legs_ripped_alike_is_not_ripped_before_they_are_mitered(service: Service) -> None:
    house = asked("molded")
    head = {**TRIM["casing"], "profile": "head"}
    house["trim_specs"]["t"] = {**TRIM, "head_casing": head}
    house["openings"][0]["widths"] = {"left": "1 1/2 in", "right": "1 1/2 in"}
    # Beside a head of another profile no miter is kept, so the whole stick is ripped first, as it was.
    assert "rip_stick" in done_to_casing(service, house)
    house["trim_specs"]["t"] = TRIM
    assert "rip_stick" not in done_to_casing(service, house)


def test_the_pieces_on_the_wall_lie_side_by_side_and_leave_no_hole() -> None:
    outlines = {
        str(one.piece.key): Polygon(one.outline)
        for one in placed_pieces(built(Widths(left=F("1.5"))))
        if "casing" in str(one.piece.key)
    }
    leg, head = outlines[LEG], outlines["head_casing"]
    assert leg.intersection(head).area == pytest.approx(0, abs=1e-9)
    # One side of their outline is straight: it runs up the leg's outside edge and on past the trimmed tip.
    assert leg.union(head).bounds == pytest.approx((-0.1875 - 1.5, 0, 30.625 + 2.6875, 46.25 + 2.6875))
    assert leg.bounds[2] - leg.bounds[0] == pytest.approx(1.5)
    assert leg.bounds[3] == pytest.approx(46.25 + 0.1875 + 1.5)
    tip = Polygon([(-1.6875, 48.0), (-1.6875, 48.9375), (-0.75, 48.9375)])
    assert head.intersection(tip).area == pytest.approx(tip.area)


def test_a_piece_that_was_cut_is_kept_as_it_is_put_up() -> None:
    """The leg before its rip is the right-hand leg's mirror; ripped, it is an inch narrower and no shorter inside."""
    rounding = Rounding()
    one = shape_of(next(p for p in built(Widths(left=F("1.5"))).pieces if str(p.key) == LEG), rounding)
    other = shape_of(next(p for p in built(Widths(left=F("1.25"))).pieces if str(p.key) == LEG), rounding)
    assert (one.length, one.width) == (F("47.9375"), F("1.5"))
    assert (other.length, other.width) == (F("47.6875"), F("1.25"))
    assert can_be_recut(one, other)
    assert not can_be_recut(other, one)
