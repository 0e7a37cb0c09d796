"""Two saws: a stick that is claimed is cut by one alone, and a claim that is over is said to both."""

import asyncio
from typing import Any

import httpx
import pytest

from longpoint.schedules import claims
from longpoint.schedules.basics import moment
from stored import made, opening, serving
from working import cut_list, measure

SHOP, YARD = {"by": "shop saw"}, {"by": "yard saw", "seconds": 600}


async def started(service: httpx.AsyncClient) -> str:
    """A house whose sticks are planned; where it is."""
    openings = [opening("K1"), opening("K2", "33"), opening("K3", "41")]
    where = str((await made(service, openings=openings)).headers["location"])
    await service.post(f"{where}/plans", json={}, timeout=60)
    return where


async def claim(service: httpx.AsyncClient, where: str, name: str, body: dict[str, Any]) -> httpx.Response:
    """A stick claimed."""
    return await service.put(f"{where}/sticks/{name}/claim", json=body)


async def cut(service: httpx.AsyncClient, where: str, *names: str, **by: str) -> httpx.Response:
    """Sticks recorded as cut."""
    return await service.post(f"{where}/cut-sticks", json={"sticks": names, **by})


def later(monkeypatch: pytest.MonkeyPatch, seconds: float) -> None:
    """Let claims see a time to come."""
    monkeypatch.setattr(claims, "moment", lambda more=0: moment(seconds + more))


async def test_a_claimed_stick_is_kept_for_who_claimed_it(service: httpx.AsyncClient) -> None:
    where = await started(service)
    free = (await service.get(f"{where}/sticks/C1")).json()
    assert (free["name"], free["state"], free["claimed_by"], free["claimed_until"]) == (
        "C1",
        "planned",
        None,
        None,
    )
    assert free["plan"] == 1
    revision = (await service.get(where)).json()["revision"]
    first = await claim(service, where, "C1", SHOP)
    assert (first.status_code, first.json()["claimed_by"], first.json()["notes"]) == (200, "shop saw", [])
    assert moment(1700) < first.json()["claimed_until"] < moment(1801)
    assert {**first.json(), "claimed_by": None, "claimed_until": None} == free
    other = await claim(service, where, "C1", YARD)
    assert (other.status_code, other.json()["type"]) == (409, "/problems/stick-claimed")
    assert "'shop saw'" in other.json()["detail"]
    assert first.json()["claimed_until"] in other.json()["detail"]
    longer = await claim(service, where, "C1", {**SHOP, "seconds": 7200})
    assert longer.json()["claimed_until"] > first.json()["claimed_until"]
    for by in ({}, {"by": "yard saw"}):
        refused = await cut(service, where, "C1", "A1", **by)
        assert (refused.status_code, refused.json()["type"]) == (409, "/problems/stick-claimed")
        assert [one["pointer"] for one in refused.json()["errors"]] == ["/sticks/0"]
    assert (await cut_list(service, where))["right"] == 0, "nothing was recorded"
    done = await cut(service, where, "C1", "A1", by="shop saw")
    assert (done.status_code, done.json()["notes"]) == (201, [])
    gone = (await service.get(f"{where}/sticks/C1")).json()
    assert (gone["state"], gone["claimed_by"], gone["claimed_until"]) == ("cut", None, None)
    too_late = await claim(service, where, "C1", YARD)
    assert (too_late.status_code, too_late.json()["type"]) == (409, "/problems/stick-cut")
    again = await cut(service, where, "C1", by="yard saw")
    assert (again.status_code, again.json()["notes"]) == (201, ["C1 was recorded before."])
    assert (await service.get(where)).json()["revision"] == revision + 1, "claims are no part of the history"


async def test_a_claim_that_is_over_is_said_to_both(
    service: httpx.AsyncClient, monkeypatch: pytest.MonkeyPatch
) -> None:
    where = await started(service)
    until = (await claim(service, where, "C1", YARD)).json()["claimed_until"]
    await claim(service, where, "A1", YARD)
    later(monkeypatch, 700)
    own = await cut(service, where, "A1", by="yard saw")
    assert own.status_code == 201
    assert len(own.json()["notes"]) == 1
    assert own.json()["notes"][0].startswith("A1: Your claim of it was over at ")
    taken = await claim(service, where, "C1", SHOP)
    assert taken.status_code == 200
    assert taken.json()["notes"] == [f"C1: 'yard saw' had claimed it; that claim was over at {until}."]
    late = await cut(service, where, "C1", by="yard saw")
    assert late.status_code == 409
    assert "'shop saw'" in late.json()["detail"]
    assert f"Your own claim of it was over at {until}." in late.json()["detail"]
    stranger = await cut(service, where, "C1", by="third saw")
    assert "Your own claim" not in stranger.json()["detail"]
    later(monkeypatch, 5000)
    seen = (await service.get(f"{where}/sticks/C1")).json()["notes"]
    assert seen[0].startswith("C1: 'shop saw' had claimed it; that claim was over at ")
    renewed = await claim(service, where, "C1", SHOP)
    assert renewed.json()["notes"][0].startswith("C1: Your claim of it was over at ")
    later(monkeypatch, 50_000)
    done = await cut(service, where, "C1")
    assert done.json()["notes"][0].startswith("C1: 'shop saw' had claimed it; that claim was over at ")


async def test_a_claim_is_released(service: httpx.AsyncClient) -> None:
    where = await started(service)
    await claim(service, where, "C1", SHOP)
    address = f"{where}/sticks/C1/claim"
    not_mine = await service.delete(address, params={"by": "yard saw"})
    assert (not_mine.status_code, not_mine.json()["type"]) == (409, "/problems/stick-claimed")
    for _ in range(2):
        freed = await service.delete(address, params={"by": "shop saw"})
        assert (freed.status_code, freed.json()["claimed_by"]) == (200, None)
    assert (await claim(service, where, "C1", YARD)).status_code == 200
    assert (await service.delete(address)).status_code == 200
    assert (await cut(service, where, "C1")).status_code == 201


async def test_a_stick_that_the_plan_has_no_more_is_not_claimed(service: httpx.AsyncClient) -> None:
    where = await started(service)
    before = (await service.get(f"{where}/plans/1")).json()
    tag = (await service.get(f"{where}/sticks/C1")).headers["etag"]
    assert (await service.get(f"{where}/sticks/C1", headers={"if-none-match": tag})).status_code == 304
    for mark in ("K1", "K2", "K3"):
        await measure(service, where, mark, "24 1/8", "39")
    gone = next(one["name"] for one in before["sticks"] if one["profile"] == "casing")
    read = (await service.get(f"{where}/sticks/{gone}")).json()
    assert (read["state"], read["plan"]) == ("changed", 1)
    assert read["pieces"] == next(one["pieces"] for one in before["sticks"] if one["name"] == gone)
    refused = await claim(service, where, gone, SHOP)
    assert (refused.status_code, refused.json()["type"]) == (409, "/problems/stick-changed")
    assert "Today these pieces are on" in refused.json()["detail"]
    for name in ("C999", "c1", "%00"):
        assert (await service.get(f"{where}/sticks/{name}")).status_code == 404
        assert (await claim(service, where, name, SHOP)).status_code == 404


@pytest.mark.parametrize(
    ("body", "pointer"),
    [
        ({}, "/by"),
        ({"by": ""}, "/by"),
        ({"by": "me", "seconds": 0}, "/seconds"),
        ({"by": "me", "seconds": 86_401}, "/seconds"),
        ({"by": "me", "until": "noon"}, "/until"),
    ],
)
async def test_what_cannot_be_claimed(
    sqlite_service: httpx.AsyncClient, body: dict[str, Any], pointer: str
) -> None:
    where = await started(sqlite_service)
    refused = await claim(sqlite_service, where, "C1", body)
    assert refused.status_code == 422
    assert [one["pointer"] for one in refused.json()["errors"]] == [pointer]


async def test_of_two_saws_at_once_one_has_the_stick(database: str) -> None:
    async with serving(database) as one, serving(database) as two:
        where = await started(one)
        asked = [claim([one, two][n % 2], where, "C1", {"by": f"saw {n}"}) for n in range(8)]
        answers = await asyncio.gather(*asked)
        assert sorted(answer.status_code for answer in answers) == [200, *[409] * 7]
        (has,) = (answer.json()["claimed_by"] for answer in answers if answer.status_code == 200)
        held = (await two.get(f"{where}/sticks/C1")).json()["claimed_by"]
        assert held == has
        records = [cut([one, two][n % 2], where, "C1", by=f"saw {n}") for n in range(8)]
        done = await asyncio.gather(*records)
        assert {answer.status_code for answer in done} <= {201, 409}
        names = [
            piece["stick"]
            for answer in done
            if answer.status_code == 201
            for piece in answer.json()["pieces"]
        ]
        pieces = (await one.get(f"{where}/work")).json()["items"]
        assert len(names) == len(pieces), "cut once"
