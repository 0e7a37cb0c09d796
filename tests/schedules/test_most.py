"""How much a schedule holds: the last that goes in is kept, and the next refused."""

import httpx
import pytest

from longpoint.api.stored import openings
from stored import house, made, opening

ON_HAND = [{"profile": "casing", "length": "39 1/2"}] * 199


async def test_the_last_opening_that_goes_in_is_kept_and_the_next_refused(
    sqlite_service: httpx.AsyncClient, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(openings, "MOST_OPENINGS", 2)  # 5,000 of them take their time
    where = (await made(sqlite_service, openings=[opening("K1")])).headers["location"]
    last = await sqlite_service.post(f"{where}/openings", json=opening("K2"))
    assert last.status_code == 201
    refused = await sqlite_service.post(f"{where}/openings", json=opening("K3"))
    assert refused.status_code == 422
    assert [one["code"] for one in refused.json()["errors"]] == ["too-many"]
    marks = [one["mark"] for one in (await sqlite_service.get(f"{where}/openings")).json()["items"]]
    assert marks == ["K1", "K2"]


async def test_the_last_lot_that_is_planned_with_is_kept_and_the_next_refused(
    sqlite_service: httpx.AsyncClient,
) -> None:
    more = await sqlite_service.post("/v1/schedules", json=house(lengths=[*ON_HAND, *ON_HAND[:2]]))
    assert [(one["pointer"], one["code"]) for one in more.json()["errors"]] == [
        ("/lengths", "too-many-lengths")
    ]
    where = (await made(sqlite_service, lengths=ON_HAND)).headers["location"]
    casing, apron = ({"profile": name, "length": "40"} for name in ("casing", "apron"))
    last = await sqlite_service.post(f"{where}/lengths", json=casing)
    assert last.status_code == 201
    refused = await sqlite_service.post(f"{where}/lengths", json=casing)
    assert refused.status_code == 422
    assert [one["code"] for one in refused.json()["errors"]] == ["too-many-lengths"]
    assert (await sqlite_service.post(f"{where}/lengths", json=apron)).status_code == 201
    gone = await sqlite_service.delete(last.headers["location"], headers={"if-match": last.headers["etag"]})
    assert gone.status_code == 200
    assert (await sqlite_service.post(f"{where}/lengths", json=casing)).status_code == 201
