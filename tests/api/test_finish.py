"""What a trim is finished with, over the wire: what is bought, done and waited for follows from it."""

import pytest

from api.test_shop_sections import SECTIONS, TRIM, answer, house, opening, problems

PAINTED = {"filler", "caulk", "primer", "paint", "tape"}
SOLD = ("materials", "hours", "cost_sheet")
STAINED = {"putty", "stain", "clear_finish"}


def of_finish(finish, **more):
    body = house(SECTIONS)
    body["trim_specs"]["house"] = {**TRIM, "finish": finish, **more}
    return body


def codes(found):
    return {line["code"] for line in found["materials"]["lines"]}


def tasks(found):
    return {task["task"] for task in found["hours"]["tasks"]}


async def test_paint_grade_is_what_a_trim_is_unless_it_says_otherwise(client):
    said, unsaid = await answer(client, of_finish("paint_grade")), await answer(client, house(SECTIONS))
    assert [said[name] for name in SOLD] == [unsaid[name] for name in SOLD]
    assert codes(said) >= PAINTED
    assert not codes(said) & STAINED
    assert tasks(said) >= {"paint", "fill", "caulk", "final_coat"}
    assert not tasks(said) & {"stain", "clear_finish", "putty"}


async def test_stain_grade_is_not_primed_painted_filled_or_caulked(client):
    found = await answer(client, of_finish("stain_grade", species="white oak"))
    assert codes(found) >= {*STAINED, "abrasive"}
    assert not codes(found) & PAINTED
    assert tasks(found) >= {"stain", "clear_finish", "putty"}
    assert not tasks(found) & {"paint", "fill", "caulk", "final_coat"}
    waits = [wait["after"] for wait in found["hours"]["waits"]]
    assert waits == ["stain, coat 1", *(f"clear finish, coat {coat}" for coat in (1, 2, 3))]
    (putty,) = [line for line in found["materials"]["lines"] if line["code"] == "putty"]
    assert putty["notes"] == ["Choose the putty by the finished wood, after its last coat: white oak."]


async def test_prefinished_trim_has_only_its_nail_holes_closed(client):
    found = await answer(client, of_finish("prefinished"))
    assert codes(found) & {*PAINTED, *STAINED, "abrasive"} == {"putty"}
    assert not tasks(found) & {"paint", "stain", "clear_finish", "fill", "caulk", "final_coat"}
    assert found["hours"]["waits"] == []


async def test_each_opening_pays_for_its_own_finish(client):
    body = house(SECTIONS)
    body["trim_specs"]["oak"] = {**TRIM, "finish": "stain_grade", "species": "red oak"}
    body["openings"] = [opening("K1", "Kitchen"), {**opening("H1", "Hall"), "trim": "oak"}]
    found = await answer(client, body)
    for line in found["materials"]["lines"]:
        shares = {share["opening"]: share["quantity"] for share in line["by_opening"]}
        if line["code"] in PAINTED:
            assert (shares["K1"] > 0, shares["H1"]) == (True, 0), line["code"]
        if line["code"] in STAINED:
            assert (shares["K1"], shares["H1"] > 0) == (0, True), line["code"]
    (rags,) = [caution for caution in found["cautions"] if caution["code"] == "oily_rags"]
    assert rags["applies_to"] == ["H1"]
    assert rags["source"] == "29 CFR 1926.252(e)"


async def test_stain_is_bought_by_what_a_gallon_covers(client):
    body = of_finish("stain_grade")
    body["shop"] = {"rates": {"stain_coats": 2, "stain_covers": 200, "paint_waste": 0}}
    (stain,) = [
        line for line in (await answer(client, body))["materials"]["lines"] if line["code"] == "stain"
    ]
    (faces,) = [one["value"] for one in stain["from"] if one["name"] == "faces and edges"]
    assert stain["quantity"] == pytest.approx(faces * 2 / 200 * 128, abs=0.01)


async def test_no_stained_trim_raises_no_caution_for_rags(client):
    found = await answer(client, house(SECTIONS))
    assert "oily_rags" not in {caution["code"] for caution in found["cautions"]}


async def test_another_finish_is_refused_with_those_there_are(client):
    ((pointer, (_, detail)),) = (await problems(client, of_finish("walnut"))).items()
    assert pointer == "/trim_specs/house/finish"
    assert "stain_grade" in detail


async def test_the_opening_sheet_says_finish_and_wood(client):
    body = of_finish("stain_grade", species="white oak")
    sheet = await client.post("/v1/sheets/opening-sheet", json=body, headers={"accept": "text/html"})
    assert sheet.status_code == 200, sheet.text
    assert "stain grade, white oak" in sheet.text
    assert "catch fire by themselves" in sheet.text
