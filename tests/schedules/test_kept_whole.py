"""What is said of a house stays said: nothing of it falls back to its default on the way through storage."""

from typing import Any

import httpx

from stored import STOCK, house, made, opening

SILL = {"low": "left", "by": "1/4 in"}


async def cut_list(service: httpx.AsyncClient, where: str) -> dict[str, Any]:
    found = await service.get(f"{where}/cut-list")
    assert found.status_code == 200, found.text
    return dict(found.json()["cut_list"])


async def test_the_answer_to_a_sill_out_of_level_is_kept_and_worked_by(
    sqlite_service: httpx.AsyncClient,
) -> None:
    service = sqlite_service
    where = (await made(service)).headers["location"]
    one = opening("K1", sill_answer="tapered_shim")
    one["readings"]["sill"] = SILL
    added = await service.post(f"{where}/openings", json=one)
    assert added.status_code == 201, added.text
    listed = (await service.get(f"{where}/openings")).json()["items"][0]
    alone = (await service.get(f"{where}/openings/K1")).json()
    exported = (await service.get(f"{where}/export")).json()["openings"][0]
    for found in (added.json(), listed, alone, exported):
        assert found["sill_answer"] == "tapered_shim"
    pieces = (await cut_list(service, where))["openings"][0]["pieces"]
    assert "tapered_shim" in {piece["kind"] for piece in pieces}
    # Sent back as it was read, it is the same opening still.
    again = await service.put(
        f"{where}/openings/K1",
        json={**one, "sill_answer": alone["sill_answer"]},
        headers={"if-match": added.headers["etag"]},
    )
    assert again.json()["sill_answer"] == "tapered_shim"
    shimmed = await service.put(
        f"{where}/openings/K1",
        json={**one, "sill_answer": "shim"},
        headers={"if-match": again.headers["etag"]},
    )
    assert shimmed.json()["sill_answer"] == "shim"


async def test_turnable_stock_is_kept_so_and_its_mitered_ends_share_a_cut(
    sqlite_service: httpx.AsyncClient,
) -> None:
    # A leg is 46 1/4 + 3/16 + 2 1/2 = 48 15/16: two of them go into 96 inches only where their miters share a cut.
    # Then four legs take two sticks and two heads a third; else each leg takes a stick of its own.
    service = sqlite_service
    bought = {}
    for turnable in (False, True):
        casing = {
            "profile": "casing",
            "sticks": [{"length": "8 ft", "price": "9.60"}],
            "turnable": turnable,
        }
        stock = [casing, *STOCK[1:]]
        answer = await made(service, stock=stock, end_trim="0 in", openings=[opening("K1", count=2)])
        assert answer.json()["house"]["stock"][0]["turnable"] is turnable
        kept = await cut_list(service, answer.headers["location"])
        sent = house(stock=stock, end_trim="0 in", openings=[opening("K1", count=2)])
        del sent["name"]
        computed = (await service.post("/v1/cut-list", json=sent)).json()
        costs = [
            next(plan["cost"] for plan in found["plans"] if plan["profile"] == "casing")
            for found in (kept, computed)
        ]
        assert costs[0] == costs[1]
        bought[turnable] = costs[0]
    assert bought == {False: "38.40", True: "28.80"}


async def test_any_state_is_no_news_and_is_not_written_over(sqlite_service: httpx.AsyncClient) -> None:
    service = sqlite_service
    lengths = [{"profile": "casing", "length": "39 1/2"}]
    where = (await made(service, openings=[opening("K1")], lengths=lengths)).headers["location"]
    length = (await service.get(f"{where}/lengths")).json()["items"][0]["id"]
    paths = ("", "/openings", "/openings/K1", "/revisions/1", f"/lengths/{length}", "/cut-list")
    for path in paths:
        fresh = await service.get(f"{where}{path}")
        assert fresh.status_code == 200
        same = await service.get(f"{where}{path}", headers={"if-none-match": "*"})
        assert (same.status_code, same.content) == (304, b""), path
        assert same.headers["etag"] == fresh.headers["etag"]
        gone = await service.get(f"{where}{path}".replace(where, f"{where}0"), headers={"if-none-match": "*"})
        assert gone.status_code == 404, "what is not there has no state to be had already"
    for path, body in (("", house(name="Other")), ("/openings/K1", opening("K1", "31"))):
        before = await service.get(f"{where}{path}")
        refused = await service.put(f"{where}{path}", json=body, headers={"if-none-match": "*"})
        assert refused.status_code == 428, "it does not say what the change was made from"
        assert (await service.get(f"{where}{path}")).json() == before.json()
        # Beside the state it was made from, too: it says that nothing may stand there, and something does.
        tag = before.headers["etag"]
        for unless in ("*", tag, f'"another", W/{tag}'):
            headers = {"if-none-match": unless, "if-match": tag}
            refused = await service.put(f"{where}{path}", json=body, headers=headers)
            assert (refused.status_code, refused.headers["etag"]) == (412, tag)
            assert [one["header"] for one in refused.json()["errors"]] == ["If-None-Match"]
        assert (await service.get(f"{where}{path}")).json() == before.json()
        headers = {"if-none-match": '"another"', "if-match": tag}
        done = await service.put(f"{where}{path}", json=body, headers=headers)
        assert done.status_code == 200
    # What is added changes the schedule, so it is held to the same.
    for path, body in (("/openings", opening("K2")), ("/lengths", lengths[0])):
        refused = await service.post(f"{where}{path}", json=body, headers={"if-none-match": "*"})
        assert refused.status_code == 412
    assert [one["mark"] for one in (await service.get(f"{where}/openings")).json()["items"]] == ["K1"]
