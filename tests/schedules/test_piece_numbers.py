"""Numbers of pieces: what is printed is accepted where a piece is named, and a number stays with its piece."""

import httpx

from stored import TRIM, made, opening
from working import cut_list, record


async def numbers(service: httpx.AsyncClient, where: str, mark: str) -> dict[str, int]:
    openings = (await cut_list(service, where))["cut_list"]["openings"]
    found: dict[str, int] = next(one["numbers"] for one in openings if one["mark"] == mark)
    return found


async def test_a_piece_is_named_as_it_is_printed(service: httpx.AsyncClient) -> None:
    where = (await made(service, openings=[opening("K1"), opening("L1-2", count=3)])).headers["location"]
    given = await numbers(service, where, "K1")
    assert sorted(given.values()) == list(range(1, 8))
    labels = await service.get(f"{where}/sheets/labels", params={"format": "html"})
    assert f"K1-{given['apron']}" in labels.text
    assert f"L1-2-{given['apron']}.3" in labels.text
    done = await record(service, where, {"piece": f"K1-{given['apron']}", "state": "cut"})
    assert [(one["opening"], one["piece"]) for one in done["pieces"]] == [("K1", "apron")]
    third = await record(service, where, {"piece": f"L1-2-{given['stool']}.3", "state": "cut"})
    assert [(one["piece"], one["instance"]) for one in third["pieces"]] == [("stool", 3)]
    wrong = {
        "pieces": [
            {"piece": "K1-40", "state": "cut"},
            {"piece": "K7-1", "state": "cut"},
            {"piece": "stool", "state": "cut"},
            {"piece": "L1-2-1.9", "state": "cut"},
            {"opening": "K1", "piece": "L1-2-1", "state": "cut"},
        ]
    }
    refused = await service.post(f"{where}/work", json=wrong)
    assert [(one["pointer"], one["code"]) for one in refused.json()["errors"]] == [
        ("/pieces/0/piece", "unknown-piece"),
        ("/pieces/1/opening", "unknown-opening"),
        ("/pieces/2/opening", "unknown-opening"),
        ("/pieces/3/instance", "too-many"),
        ("/pieces/4/piece", "unknown-piece"),
    ]
    drawn = await service.get(
        f"{where}/openings/K1/drawing", params={"drawing": "piece", "piece": f"K1-{given['stool']}"}
    )
    assert drawn.status_code == 200
    assert "stool" in drawn.text


async def test_a_number_stays_with_its_piece_and_is_never_used_again(service: httpx.AsyncClient) -> None:
    framed = {**TRIM, "stool": None, "apron": None}
    where = (
        await made(service, trim_specs={"painted": TRIM, "framed": framed}, openings=[opening("K1")])
    ).headers["location"]
    first = await numbers(service, where, "K1")

    async def change(**more: str) -> None:
        one = await service.get(f"{where}/openings/K1")
        tag = {"if-match": one.headers["etag"]}
        answer = await service.put(one.url, json=opening("K1", **more), headers=tag)
        assert answer.status_code == 200, answer.text

    await change(trim="framed", bottom="casing")
    second = await numbers(service, where, "K1")
    new = second.keys() - first.keys()
    assert new
    assert all(second[key] == first[key] for key in second.keys() & first.keys())
    assert min(second[key] for key in new) > max(first.values())
    # The elevation has the same numbers, and so has the opening when it is what it was.
    elevation = await service.get(f"{where}/openings/K1/drawing")
    assert all(f">{second[key]}<" in elevation.text for key in new)
    await change()
    assert await numbers(service, where, "K1") == first
