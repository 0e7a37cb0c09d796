"""A cut list's sticks, purchases and notes, all of each, against lengths and prices worked out by hand."""

from typing import Any

import httpx

from stored import TRIM, opening


def house(**more: Any) -> dict[str, Any]:
    """Two openings alike; a stool is 37 1/2 inches long, and only stools have stock."""
    stock = {
        "profile": "stool stock",
        "sticks": [{"length": "8 ft", "price": "21.00"}, {"length": "4 ft", "price": "12.00"}],
    }
    return {
        "unit": "in",
        "trim_specs": {"painted": TRIM},
        "openings": [opening("K1", count=2, room="Kitchen")],
        "stock": [stock],
        "end_trim": "1/2",
        "kerf": "1/8",
        "keep_length": "19",
        "currency": "CAD",
        **more,
    }


async def answer(client: httpx.AsyncClient, body: dict[str, Any]) -> dict[str, Any]:
    found = await client.post("/v1/cut-list", json=body)
    assert found.status_code == 200, found.text
    return dict(found.json())


def stick(one: dict[str, Any]) -> tuple[Any, ...]:
    """A stick with its lengths as text."""
    pieces = [
        (piece["opening"], piece["piece"], piece["instance"], piece["start"]["text"], piece["length"]["text"])
        for piece in one["pieces"]
    ]
    return (
        *(one["name"], one["length"]["text"], one["on_hand"], one["price"], pieces),
        *(one["offcut"]["text"], one["kept"]),
    )


async def test_pieces_alike_lie_one_after_the_other_on_a_stick(client: httpx.AsyncClient) -> None:
    found = await answer(client, house())
    (plan,) = found["plans"]
    assert plan["profile"] == "stool stock"
    # Behind the end trim of 1/2; the second after the first and a kerf; of the 20 3/8 left a kerf goes too.
    assert [stick(one) for one in plan["sticks"]] == [
        (
            "S1",
            "96 in",
            False,
            "21.00",
            [("K1", "stool", 1, "1/2 in", "37 1/2 in"), ("K1", "stool", 2, "38 1/8 in", "37 1/2 in")],
            "20 1/4 in",
            True,
        )
    ]
    assert (plan["cost"], plan["bound"], plan["gap"], plan["proven"]) == ("21.00", "21.00", 0.0, True)
    assert [(one["profile"], one["length"]["text"], one["quantity"]) for one in found["offcuts"]] == [
        ("stool stock", "20 1/4 in", 1)
    ]
    assert (found["cost"], found["currency"]) == ("21.00", "CAD")
    assert found["unstocked"] == ["apron", "casing"]
    assert found["proven"] is False, "a profile without stock is not proven"
    (one,) = found["openings"]
    assert (one["mark"], one["room"], one["count"], one["movement"]) == ("K1", "Kitchen", 2, None)
    assert {piece["quantity"] for piece in one["pieces"]} == {2}


async def test_what_is_bought_is_listed_by_length_and_what_is_on_hand_is_not(
    client: httpx.AsyncClient,
) -> None:
    body = house(openings=[opening("K1", count=4)])
    (stock,) = body["stock"]
    stock["sticks"][0]["available"] = 1
    stock["lengths_on_hand"] = [{"length": "40", "price": "0.50"}]
    body["stock"].append({"profile": "stool stok", "sticks": []})
    found = await answer(client, body)
    (plan,) = found["plans"]
    buy = [(one["length"]["text"], one["quantity"], one["price"], one["cost"]) for one in found["buy"]]
    assert buy == [("48 in", 1, "12.00", "12.00"), ("96 in", 1, "21.00", "21.00")]
    assert {one["profile"] for one in found["buy"]} == {"stool stock"}
    assert found["cost"] == plan["cost"] == "33.50"
    assert [one["name"] for one in plan["sticks"]] == ["S1", "S2", "S3"]
    assert sorted((one["on_hand"], one["price"]) for one in plan["sticks"]) == [
        (False, "12.00"),
        (False, "21.00"),
        (True, "0.50"),
    ]
    instances = [piece["instance"] for one in plan["sticks"] for piece in one["pieces"]]
    assert sorted(instances) == [1, 2, 3, 4]
    assert found["unused_stock"] == ["stool stok"]
    told = [note for note in found["notes"] if "stool stok" in note]
    assert len(told) == 1
    assert len([note for note in found["notes"] if "No stock was given" in note]) == 2


async def test_what_belongs_to_a_shared_stool_is_refused_where_a_group_shares_none(
    client: httpx.AsyncClient,
) -> None:
    pair = [opening("A"), opening("B")]
    group = {"mark": "pair", "openings": ["A", "B"], "stock_length": "96", "solid": ["16"]}
    told = await client.post("/v1/cut-list", json=house(openings=pair, groups=[group]))
    assert told.status_code == 422
    assert {(one["pointer"], one["code"]) for one in told.json()["errors"]} == {
        ("/groups/0/stock_length", "gaps-missing"),
        ("/groups/0/solid", "gaps-missing"),
    }
    assert await answer(client, house(openings=pair, groups=[{"mark": "pair", "openings": ["A", "B"]}]))
