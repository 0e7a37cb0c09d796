"""Saw order, materials, hours and money over the wire: asked for by name, with the shop's own settings."""

from decimal import Decimal

import pytest

TRIM = {
    "casing": {"profile": "casing", "width": "2 1/2 in", "thickness": "5/8 in"},
    "reveal": "3/16 in",
    "stool": {"profile": "stool stock", "thickness": "3/4 in", "horn": "3/4 in", "nosing": "7/8 in"},
    "apron": {"profile": "apron", "width": "2 1/2 in", "thickness": "5/8 in"},
}
SECTIONS = ["saw_order", "materials", "hours", "cost"]


def opening(mark, room, width="30 5/8 in", **more):
    readings = {"jamb_width": width, "jamb_height": "46 1/4 in", "jamb_depth": "3 1/8 in"}
    return {"mark": mark, "room": room, "trim": "house", "readings": readings, **more}


def house(include=(), **shop):
    return {
        "trim_specs": {"house": TRIM},
        "openings": [
            opening("K1", "Kitchen", count=2),
            opening("K2", "Kitchen", "24 in"),
            opening("H1", "Hall"),
        ],
        "stock": [
            {
                "profile": profile,
                "sticks": [{"length": "8 ft", "price": "9.20"}, {"length": "14 ft", "price": "15.90"}],
            }
            for profile in ("casing", "stool stock", "apron")
        ],
        "include": list(include),
        "shop": shop,
    }


async def answer(client, body, path="/v1/cut-list"):
    response = await client.post(path, json=body)
    assert response.status_code == 200, response.text
    return response.json()


async def problems(client, body, path="/v1/cut-list"):
    response = await client.post(path, json=body)
    assert response.status_code == 422, response.text
    return {error["pointer"]: (error["code"], error["detail"]) for error in response.json()["errors"]}


async def test_a_section_is_worked_out_only_when_asked_for(client):
    plain = await answer(client, house())
    assert [plain[name] for name in ("saw_order", "materials", "hours", "cost_sheet")] == [None] * 4
    some = await answer(client, house(["hours"]))
    assert some["hours"] is not None
    assert some["cost_sheet"] is None
    assert some["materials"] is None


async def test_a_saw_order_names_setups_sticks_pieces_and_mirrored_pairs(client):
    found = await answer(client, house(["saw_order"]))
    order = found["saw_order"]
    assert order["cuts"] == len(order["operations"]) == sum(each["operations"] for each in order["setups"])
    assert {each["setup"] for each in order["operations"]} == {each["number"] for each in order["setups"]}
    miters = [
        each
        for each in order["operations"]
        if each["kind"] == "angled_cut_off" and "side casing" in each["title"]
    ]
    settings = {each["number"]: each["setting"] for each in order["setups"]}
    left = next(each for each in miters if each["title"] == "left side casing")
    assert left["mirror_of"] == "side_casing/right"
    assert (
        settings[left["setup"]] | {"miter_direction": "left", "miter_degrees": 45.0}
        == settings[left["setup"]]
    )
    # A stick and a piece of it go by the same numbers and names as in the plans.
    sticks = {
        (plan["profile"], stick["name"]): {(p["opening"], p["piece"], p["instance"]) for p in stick["pieces"]}
        for plan in found["plans"]
        for stick in plan["sticks"]
    }
    for each in order["operations"]:
        assert {tuple(piece.values()) for piece in each["pieces"]} <= sticks[each["profile"], each["stick"]]
    assert (left["mark"]["text"], left["mark_from"], left["mark_edge"]) == (
        "48 15/16 in",
        "square_end",
        "outer",
    )
    assert left["holds"] in ("stick", "piece")


async def test_the_quickest_order_is_given_and_another_on_request(client):
    found = (await answer(client, house(["saw_order"])))["saw_order"]
    minutes = {each["order"]: each["minutes"] for each in found["orders"]}
    assert list(minutes) == ["stick_by_stick", "opening_by_opening", "setting_by_setting"]
    assert minutes[found["order"]] == min(minutes.values())
    assert "quickest of the three" in found["why"]
    for order in minutes:
        asked = (await answer(client, house(["saw_order"], order=order)))["saw_order"]
        assert (asked["order"], asked["orders"]) == (order, found["orders"])
    rates = {each["name"]: each["value"] for each in found["rates"]}
    assert (rates["pick_up_seconds"], rates["notch_seconds"]) == (20, 90)
    slow = (await answer(client, house(["saw_order"], rates={"notch_seconds": 150})))["saw_order"]
    notches = sum(each["kind"] == "notch" for each in found["operations"])
    assert slow["orders"][0]["minutes"] == pytest.approx(minutes["stick_by_stick"] + notches, abs=1e-3)


@pytest.mark.parametrize("order", ["stick_by_stick", "opening_by_opening", "setting_by_setting"])
async def test_cuts_are_one_number_in_the_saw_order_the_hours_the_cost_sheet_and_the_steps(client, order):
    body = house(SECTIONS, order=order, wages={"hour": "40.00"})
    found = await answer(client, body)
    cuts = found["saw_order"]["cuts"]
    assert cuts == len(found["saw_order"]["operations"])
    assert cuts == next(each["cuts"] for each in found["saw_order"]["orders"] if each["order"] == order)
    (work,) = [each for each in found["hours"]["tasks"] if each["task"] == "cut"]
    assert (work["quantity"], work["unit"]) == (cuts, "cut")
    body.pop("include")
    steps, tasks = [
        await client.post(
            f"/v1/sheets/{name}", json=body, params={"table": table}, headers={"accept": "text/csv"}
        )
        for name, table in (("stick-sheet", "cuts"), ("cost-sheet", "work"))
    ]
    assert len([line for line in steps.text.splitlines()[1:] if line]) == cuts
    (line,) = [line for line in tasks.text.splitlines() if line.startswith("cut,")]
    assert line.split(",")[1] == str(cuts)


async def test_the_cautions_are_those_of_the_cutting(client):
    old = await answer(client, house(["saw_order"]))
    new = await answer(client, house(["saw_order"], build_year=1998))
    codes = [{each["code"] for each in found["cautions"]} for found in (old, new)]
    assert codes[0] - codes[1] == {"lead_paint"}
    assert {"short_piece", "saw_guards", "wood_dust", "escape_opening", "local_codes"} <= codes[1]
    raised = {code for each in old["saw_order"]["operations"] for code in each["cautions"]}
    assert raised <= codes[0]


async def test_the_money_adds_up_to_the_cent_in_every_view(client):
    packages = [
        {"material": "caulk", "name": "tube", "size": 10.1, "price": "4.19"},
        {"material": "nails_6d", "name": "box", "size": 100, "price": "3.33"},
    ]
    found = await answer(client, house(SECTIONS, packages=packages, wages={"hour": "61.37"}))
    sheet = found["cost_sheet"]

    def total(views, name):
        return sum(Decimal(view["amounts"][name]) for view in views)

    for name in ("stock", "waste", "kept_offcut", "consumable", "labor", "total"):
        whole = Decimal(sheet["total"][name])
        assert total(sheet["openings"], name) == whole
        assert total(sheet["rooms"], name) == whole
    for line in sheet["lines"]:
        assert sum(map(Decimal, line["by_opening"])) == Decimal(line["amount"])
    sticks = sum(Decimal(sheet["total"][name]) for name in ("stock", "waste", "kept_offcut"))
    assert sticks == Decimal(found["cost"])
    assert {"category": "consumable", "name": "paint"} in sheet["unpriced"]
    assert not any(each["category"] == "labor" for each in sheet["unpriced"])
    assert [(room["room"], room["openings"]) for room in sheet["rooms"]] == [("Kitchen", 3), ("Hall", 1)]


@pytest.mark.parametrize(
    ("keep", "amounts"),
    [("24 in", ("8.20", "0.03", "12.77")), ("60 in", ("8.20", "12.80", "0.00"))],
)
async def test_what_is_long_enough_to_keep_is_no_waste(client, keep, amounts):
    # The stool is 37 1/2 of 96 inches, the kerf 1/8, and what is left over 58 3/8: of 21.00, to the cent.
    body = house(["cost"])
    body |= {
        "openings": [opening("K1", "Kitchen")],
        "stock": [{"profile": "stool stock", "sticks": [{"length": "8 ft", "price": "21.00"}]}],
        "kerf": "1/8 in",
        "end_trim": "0 in",
        "keep_length": keep,
    }
    sheet = (await answer(client, body))["cost_sheet"]
    said = dict(zip(("stock", "waste", "kept_offcut"), amounts, strict=True))
    assert {line["category"]: line["amount"] for line in sheet["lines"]} == said
    for view in (sheet["total"], sheet["openings"][0]["amounts"], sheet["rooms"][0]["amounts"]):
        assert {name: view[name] for name in said} == said


async def test_the_shops_own_rates_are_used_and_named(client):
    rates = {"nail_spacing": "12 in", "paint_coats": 3, "install_minutes": 6.1, "outer_nail": 8}
    own = await answer(client, house(["materials", "hours"], rates=rates))
    usual = await answer(client, house(["materials", "hours"]))
    lines = {line["code"]: line for line in own["materials"]["lines"]}
    before = {line["code"]: line for line in usual["materials"]["lines"]}
    assert lines["paint"]["quantity"] == pytest.approx(1.5 * before["paint"]["quantity"], abs=1e-3)
    assert "nails_8d" in lines
    assert "nails_8d" not in before
    named = {rate["name"]: rate for rate in own["materials"]["rates"]}
    assert (named["nail_spacing"]["value"], named["nail_spacing"]["source"]) == (12.0, "set by the caller")
    (fit,) = [each for each in own["hours"]["tasks"] if each["task"] == "install"]
    assert fit["minutes"] == pytest.approx(fit["quantity"] * 6.1, abs=1e-3)


async def test_materials_alone_are_those_of_the_cut_list(client):
    body = house(["materials"], build_year=2001)
    alone = {name: body[name] for name in ("openings", "trim_specs", "shop")}
    found = await answer(client, alone, "/v1/materials")
    whole = await answer(client, body)
    assert found["materials"] == whole["materials"]
    for line in found["materials"]["lines"]:
        assert line["from"]
        assert line["rule"]
        assert sum(share["quantity"] for share in line["by_opening"]) == pytest.approx(
            line["quantity"], abs=1e-3
        )
    assert "lead_paint" not in {each["code"] for each in found["cautions"]}


async def test_every_fault_of_the_shop_is_told_with_those_of_the_house(client):
    body = house(
        rates={"nail_spacing": "0 in", "drywall": "1/2 of an inch", "stool_nail_spacing": "12"},
        saw={"smallest_held": "six inches"},
    )
    body["openings"][0]["readings"]["jamb_width"] = "30 5/0 in"
    found = await problems(client, body)
    assert set(found) == {
        "/shop/rates/nail_spacing",
        "/shop/rates/drywall",
        "/shop/rates/stool_nail_spacing",
        "/shop/saw/smallest_held",
        "/openings/0/readings/jamb_width",
    }
    assert found["/shop/rates/nail_spacing"][0] == "zero"


@pytest.mark.parametrize(
    ("shop", "pointer"),
    [
        ({"rates": {"nail_spacings": "16 in"}}, "/shop/rates/nail_spacings"),
        ({"rates": {"outer_nail": 1}}, "/shop/rates/outer_nail"),
        ({"rates": {"paint_solids": 0}}, "/shop/rates/paint_solids"),
        ({"rates": {"paint_film": 5e-324}}, "/shop/rates/paint_film"),
        ({"rates": {"nail_spacing": "0.0000001 in"}}, "/shop/rates/nail_spacing"),
        ({"rates": {"caulk_bead": "50 ft"}}, "/shop/rates/caulk_bead"),
        ({"rates": {"paint_coats": 1.5}}, "/shop/rates/paint_coats"),
        ({"rates": {"cut_seconds": -1}}, "/shop/rates/cut_seconds"),
        ({"order": "as_it_comes"}, "/shop/order"),
        ({"saw": {"detents": [91]}}, "/shop/saw/detents/0"),
        ({"rates": {"nail_spacing": 16}}, "/shop/rates/nail_spacing"),
        ({"packages": [{"material": "plaster", "name": "tub", "size": 8}]}, "/shop/packages/0/material"),
        ({"packages": [{"material": "glue", "name": "tub", "size": 0}]}, "/shop/packages/0/size"),
        (
            {"packages": [{"material": "glue", "name": "tub", "size": 8, "price": 4}]},
            "/shop/packages/0/price",
        ),
        ({"wages": {"hour": "-1.00"}}, "/shop/wages/hour"),
        ({"wages": {"tasks": {"sweep": "1.00"}}}, "/shop/wages/tasks/sweep"),
        ({"saw": {"angle_step": 0}}, "/shop/saw/angle_step"),
        ({"build_year": "old"}, "/shop/build_year"),
    ],
)
async def test_what_the_shop_cannot_be_is_refused_at_its_field(client, shop, pointer):
    assert list(await problems(client, house(**shop))) == [pointer]


async def test_more_sizes_of_a_material_than_can_be_weighed_are_refused(client):
    packages = [
        {"material": "glue", "name": f"bottle {size}", "size": size, "price": "1.00"} for size in range(1, 7)
    ]
    found = await problems(client, house(["materials"], packages=packages))
    assert {pointer: code for pointer, (code, _) in found.items()} == {
        "/shop/packages/4": "too-many-packages",
        "/shop/packages/5": "too-many-packages",
    }


async def test_a_section_that_is_none_is_refused(client):
    assert list(await problems(client, house(["sawing"]))) == ["/include/0"]


@pytest.mark.parametrize("value", [0.01, 1e6])
async def test_rates_at_their_ends_are_answered_at_once(client, value):
    packages = [{"material": "caulk", "name": "drop", "size": value, "price": "0.01"}]
    found = await answer(client, house(SECTIONS, packages=packages))
    assert found["cost_sheet"]["total"]["total"]


async def test_what_a_group_shares_is_costed_by_itself_and_is_no_opening(client):
    pair = [opening("A1", "Hall"), opening("A2", "Hall")]
    body = house(SECTIONS, wages={"hour": "60.00"}) | {"openings": pair}
    body["groups"] = [{"mark": "A1-A2", "openings": ["A1", "A2"], "gaps": ["12 in"]}]
    found = await answer(client, body)
    by_mark = {each["opening"]: each["amounts"] for each in found["cost_sheet"]["openings"]}
    assert list(by_mark) == ["A1", "A2", "A1-A2"]
    assert Decimal(by_mark["A1-A2"]["stock"]) > 0
    (measure,) = [each for each in found["hours"]["tasks"] if each["task"] == "measure"]
    assert measure["quantity"] == 2
    assert [room["openings"] for room in found["cost_sheet"]["rooms"]] == [2]
    assert "A1-A2" in {
        piece["opening"] for each in found["saw_order"]["operations"] for piece in each["pieces"]
    }


@pytest.mark.parametrize(
    ("name", "least", "too_little", "most", "too_much"),
    [
        ("nail_spacing", "1/16 in", "1/32 in", "120 in", "120 1/16 in"),
        ("stud_penetration", "0 in", None, "120 in", "120 1/16 in"),
    ],
)
async def test_a_rate_that_is_a_length_may_be_as_far_as_its_ends(
    client, name, least, too_little, most, too_much
):
    for given in (least, most):
        found = await client.post("/v1/cut-list", json=house(rates={name: given}))
        assert found.status_code == 200, found.text
    for given in filter(None, (too_little, too_much)):
        told = await problems(client, house(rates={name: given}))
        assert told.keys() == {f"/shop/rates/{name}"}
        assert told[f"/shop/rates/{name}"][0] == "out-of-range"
