"""Slack over HTTP: what stays free on the sticks, spare sticks with their price, and what is refused."""

from typing import Any

import httpx

from stored import TRIM, opening

SOLD = [{"length": "8 ft", "price": "21.00"}, {"length": "4 ft", "price": "12.00"}]


def house(slack: dict[str, Any], **more: Any) -> dict[str, Any]:
    """Two openings alike; a stool is 37 1/2 inches long, and only stools have stock."""
    return {
        "unit": "in",
        "trim_specs": {"painted": TRIM},
        "openings": [opening("K1", count=2, room="Kitchen")],
        "stock": [{"profile": "stool stock", "sticks": SOLD, "slack": slack}],
        "end_trim": "1/2",
        "kerf": "1/8",
        **more,
    }


async def answer(client: httpx.AsyncClient, slack: dict[str, Any], **more: Any) -> dict[str, Any]:
    found = await client.post("/v1/cut-list", json={**house(slack, **more), "include": ["cost"]})
    assert found.status_code == 200, found.text
    return dict(found.json())


def starts(found: dict[str, Any]) -> list[list[str]]:
    return [
        [piece["start"]["text"] for piece in stick["pieces"]]
        for plan in found["plans"]
        for stick in plan["sticks"]
    ]


async def test_what_stays_free_beside_a_piece_is_laid_out_and_said(client: httpx.AsyncClient) -> None:
    found = await answer(client, {"per_piece": "1/4", "per_miter": "1/8"})
    # A stool's ends are square: 1/2 trim, 37 1/2, 1/8 kerf and 1/4 free.
    assert starts(found) == [["1/2 in", "38 3/8 in"]]
    assert found["plans"][0]["proven"]
    (note,) = (one for one in found["notes"] if "free for each piece" in one)
    assert note.startswith(
        "stool stock: each stick keeps 1/4 in free for each piece on it and 1/8 in for each"
    )
    # With 10 free beside each, and at the stick's end, one stick of 8 ft no longer holds both.
    found = await answer(client, {"per_piece": "10"})
    assert starts(found) == [["1/2 in"], ["1/2 in"]]
    assert found["cost"] == "42.00"


async def test_spare_sticks_are_bought_and_priced_and_no_part_of_what_is_proven(
    client: httpx.AsyncClient,
) -> None:
    plain = await answer(client, {})
    assert plain["plans"][0]["spare"] is None
    found = await answer(client, {"spare_sticks": 2})
    (plan,) = found["plans"]
    assert (plan["cost"], plan["bound"], plan["proven"]) == ("21.00", "21.00", True)
    spare = plan["spare"]
    assert (spare["length"]["text"], spare["quantity"], spare["cost"]) == ("48 in", 2, "24.00")
    assert found["cost"] == "45.00"
    assert sorted((line["length"]["text"], line["quantity"]) for line in found["buy"]) == [
        ("48 in", 2),
        ("96 in", 1),
    ]
    before, after = plain["cost_sheet"]["total"], found["cost_sheet"]["total"]
    assert float(after["kept_offcut"]) - float(before["kept_offcut"]) == 24
    assert float(after["total"]) - float(before["total"]) == 24
    assert (
        "2 spare sticks of stool stock, 48 in each, are bought besides those that are cut." in found["notes"]
    )


async def test_a_percentage_is_of_the_pieces_and_what_lies_on_the_rack_counts(
    client: httpx.AsyncClient,
) -> None:
    # 75 in of pieces: 60 % is 45 in, one stick of 4 ft; 100 % is 75 in, two of 4 ft at 24.00 or one of 8 ft at 21.00.
    found = await answer(client, {"spare_percent": 60})
    assert found["plans"][0]["spare"]["cost"] == "12.00"
    found = await answer(client, {"spare_percent": 100})
    assert found["plans"][0]["spare"]["cost"] == "21.00"
    on_hand = [{"length": "50 in", "price": "90.00"}]
    stock = [
        {"profile": "stool stock", "sticks": SOLD, "lengths_on_hand": on_hand, "slack": {"spare_sticks": 1}}
    ]
    found = await answer(client, {}, stock=stock)
    assert found["plans"][0]["spare"] is None


async def test_spare_sticks_that_the_yard_does_not_have_are_named(client: httpx.AsyncClient) -> None:
    stock = [
        {
            "profile": "stool stock",
            "sticks": [{"length": "8 ft", "price": "21.00", "available": 2}],
            "slack": {"spare_sticks": 3},
        }
    ]
    found = await answer(client, {}, stock=stock)
    assert found["plans"][0]["spare"]["quantity"] == 1
    assert any(one.startswith("2 spare sticks of stool stock are asked for") for one in found["notes"])


async def test_returns_take_no_allowance(client: httpx.AsyncClient) -> None:
    # Each is 5/8 long, which an allowance of an inch would be more than.
    stock = [{"profile": "apron", "sticks": SOLD, "slack": {"per_piece": "1"}}]
    found = await answer(client, {}, stock=stock)
    rows = [piece for stick in found["plans"][0]["sticks"] for piece in stick["pieces"]]
    assert {piece["piece"] for piece in rows} == {"apron", "apron_return/left", "apron_return/right"}


async def test_a_stick_is_used_down_to_the_clamp_length_with_its_caution(client: httpx.AsyncClient) -> None:
    found = await answer(client, {}, clamp_length="20")
    assert starts(found) == [["1/2 in", "38 1/8 in"]]
    assert found["plans"][0]["sticks"][0]["offcut"]["text"] == "20 1/4 in"
    assert "clamp_length" in {one["code"] for one in found["cautions"]}
    found = await answer(client, {}, clamp_length="20 1/2")
    assert len(found["plans"][0]["sticks"]) == 2
    assert all(len(row) == 1 for row in starts(found))
    assert "clamp_length" not in {one["code"] for one in (await answer(client, {}))["cautions"]}


async def test_what_cannot_be_names_its_field_and_what_to_do(client: httpx.AsyncClient) -> None:
    refused = await client.post("/v1/cut-list", json=house({"per_piece": "38"}))
    assert refused.status_code == 422
    (error,) = refused.json()["errors"]
    assert error["pointer"] == "/stock/0/slack"
    assert error["code"] == "allowance-exceeds-piece"
    assert "K1" in error["detail"]
    assert "38 in in all, is more than the piece is long, 37 1/2 in" in error["detail"]
    refused = await client.post("/v1/cut-list", json=house({}, clamp_length="9 ft"))
    (error,) = refused.json()["errors"]
    assert (error["pointer"], error["code"]) == ("/clamp_length", "clamp-length-exceeds-stock")
    refused = await client.post("/v1/cut-list", json=house({}, clamp_length="70"))
    (error,) = refused.json()["errors"]
    assert error["code"] == "piece-too-long"
    assert "At the end of each stick 70 1/8 in stays free" in error["detail"]
