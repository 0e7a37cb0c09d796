"""The house that the first command trims."""

import json
from pathlib import Path
from typing import Any

import httpx

HOUSE: dict[str, Any] = json.loads((Path(__file__).parents[2] / "deploy/demo/house.json").read_text())


def test_the_house_has_the_variety_it_promises() -> None:
    openings = HOUSE["openings"]
    assert sum(one.get("count", 1) for one in openings) >= 16
    assert len({one["room"] for one in openings}) >= 6
    assert any(one.get("bottom") == "casing" for one in openings)
    assert any("left_jamb_height" in one["readings"] for one in openings)
    assert any("mm" in one["readings"].get("jamb_width", "") for one in openings)
    assert any(HOUSE["trim_specs"][one["trim"]].get("plinth") for one in openings)


async def test_the_service_trims_the_house(client: httpx.AsyncClient) -> None:
    answer = await client.post("/v1/cut-list", json=HOUSE)
    assert answer.status_code == 200, answer.text
    cut_list = answer.json()
    asked = {
        (one["mark"], piece["key"]): piece["quantity"]
        for one in cut_list["openings"]
        for piece in one["pieces"]
    }
    cut: dict[tuple[str, str], int] = {}
    for plan in cut_list["plans"]:
        for stick in plan["sticks"]:
            for one in stick["pieces"]:
                key = one["opening"], one["piece"]
                cut[key] = cut.get(key, 0) + 1
    assert cut == asked
    assert {plan["profile"] for plan in cut_list["plans"]} == {stock["profile"] for stock in HOUSE["stock"]}
