"""What goes out of the shop's sections: the computed records themselves, each field by its type."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal
from typing import Any

import msgspec
import pytest

from longpoint.lengths import EXACT, Length, PositiveLength, Rounding, length_writer
from longpoint.shop import Section, Shop, Wages, work
from longpoint.shop.operations import SawOrder
from longpoint.shop.shape import PieceShape, shape_of
from longpoint.shop.takeoff import CostSheet, Hours, Materials
from longpoint.shop.yard import Defect, Stick, Stock
from longpoint.values import Cents, decoder, encoder, schemas
from shop.builders import SAME_STOCK, Entry, F, extended, stock, window, worked_out

KNOT = Defect(Length.of("40 in"), PositiveLength.of("41 in"))
KNOTTY = Stock(profile="casing", sticks=(Stick(PositiveLength.of("12 ft"), Cents(1310), defects=(KNOT,)),))
HOUSE = worked_out(
    (
        Entry(window("W1", F(30), F(46), trim=SAME_STOCK), "Kitchen", 2),
        Entry(extended("W2", F(30), F(46), F(1, 2), F(1, 2), F(1), F(1)), "Hall"),
    ),
    stocks=(KNOTTY, stock("stool stock"), stock("strip")),
    end_trim=Length.of("1/2 in"),
)
WORK = work(HOUSE, frozenset(Section), Shop(wages=Wages(Cents(6137))))


def sent(value: Any) -> Any:
    return msgspec.json.decode(encoder(length_writer(Rounding())).encode(value))


def test_a_cut_names_its_piece_and_its_setup_and_lengths_are_marked() -> None:
    order = sent(WORK.saw_order)
    assert list(order) == [*("order", "why", "cuts", "orders", "apart", "setups", "operations", "rates")]
    assert [one["order"] for one in order["orders"]] == [
        *("stick_by_stick", "opening_by_opening", "setting_by_setting")
    ]
    assert order["cuts"] == len(order["operations"])
    setup = next(each for each in order["setups"] if each["setting"]["fence"])
    assert set(setup["setting"]) == {
        *(
            "tool",
            "miter_direction",
            "miter_degrees",
            "bevel_direction",
            "bevel_degrees",
            "stop",
            "fence",
            "taper",
        ),
        *("notch_depth", "notch_length", "notch_end_depth"),
    }
    assert set(setup["setting"]["fence"]) == {"exact", "real", "text", "unit", "residual"}
    left = next(
        each for each in order["operations"] if each["title"] == "left side casing" and each["mirror_of"]
    )
    assert left["mirror_of"] == "side_casing/right"
    assert left["pieces"][0] == {"opening": "W1", "piece": "side_casing/left", "instance": 1}
    squared = [each for each in order["operations"] if each["kind"] == "square_end" and each["mark"]]
    assert "1/2" in {each["mark"]["exact"] for each in squared}
    assert all(each["mark_from"] == "free_end" for each in squared)
    assert squared[0]["held"]["text"].endswith(" in")
    without_stock = {each["profile"] for each in order["operations"] if each["stick"] is None}
    assert without_stock == set(HOUSE.unstocked) == {"apron", "band"}


def test_money_goes_out_as_text_in_every_view_and_says_what_it_leaves_out() -> None:
    sheet = sent(WORK.cost)
    assert set(sheet) == {"currency", "total", "lines", "openings", "rooms", "unpriced"}
    assert sheet["currency"] == "USD"
    assert {"category": "stock", "name": "apron"} in sheet["unpriced"]
    assert not [line for line in sheet["lines"] if line["name"] == "apron"]
    for line in sheet["lines"]:
        assert sum(map(Decimal, line["by_opening"])) == Decimal(line["amount"])
    for views in ("openings", "rooms"):
        totals = (Decimal(one["amounts"]["total"]) for one in sheet[views])
        assert sum(totals) == Decimal(sheet["total"]["total"]) > 0


def test_quantities_are_numbers_to_four_places() -> None:
    assert WORK.materials is not None
    line, out = WORK.materials.lines[0], sent(WORK.materials)["lines"][0]
    assert out["quantity"] == round(float(line.quantity), 4)
    assert out["from"][0] == {
        "name": line.inputs[0].name,
        "value": float(line.inputs[0].value),
        "unit": "nail",
    }
    assert {"package", "size", "count", "price", "cost"} == set(out["bought"][0])
    hours = sent(WORK.hours)
    assert hours["hands_on_hours"] * 60 == pytest.approx(
        sum(task["minutes"] for task in hours["tasks"]), abs=0.01
    )
    assert hours["tasks"][0]["task"] == "measure"


def test_every_section_is_described_field_by_field() -> None:
    _, components = schemas(
        (SawOrder, Materials, Hours, CostSheet), "#/components/schemas/{name}", length_writer(Rounding())
    )
    assert components["Setting"]["properties"]["miter_degrees"]["format"] == "degrees"
    assert components["Share"]["properties"]["quantity"]["type"] == "number"
    assert "from" in components["Material"]["properties"]
    assert components["CostTotals"]["properties"]["total"]["format"] == "money"


def test_a_piece_is_read_back_as_it_was_kept() -> None:
    for one in HOUSE.openings:
        for piece in one.built.pieces:
            shape = shape_of(piece, Rounding())
            assert decoder(PieceShape).decode(encoder(EXACT).encode(shape)) == shape  # type: ignore[arg-type]


def fields(value: Any) -> Iterator[Any]:
    yield value
    if isinstance(value, msgspec.Struct):
        for name in value.__struct_fields__:
            yield from fields(getattr(value, name))
    elif isinstance(value, tuple):
        for one in value:
            yield from fields(one)


def test_no_computed_length_goes_out_as_somebody_wrote_one() -> None:
    assert WORK.saw_order is not None
    # A defect of the stock, whose lengths were sent, says where a piece begins.
    assert any(each.mark is not None and each.mark == 41 for each in WORK.saw_order.operations)
    assert not [one for one in fields(WORK) if isinstance(one, Length)]
