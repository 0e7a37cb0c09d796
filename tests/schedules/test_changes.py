"""What two revisions differ in: readings, and the pieces that follow from them."""

from typing import Any

import httpx

from stored import TRIM, house, made, opening


async def changes(service: httpx.AsyncClient, where: str, **params: int) -> dict[str, Any]:
    answer = await service.get(f"{where}/changes", params=params)
    assert answer.status_code == 200, answer.text
    return answer.json()


async def test_a_remeasure_changes_its_own_pieces_and_no_others(service: httpx.AsyncClient) -> None:
    where = (await made(service, openings=[opening("K1"), opening("K2")])).headers["location"]
    one = await service.get(f"{where}/openings/K1")
    tag = {"if-match": one.headers["etag"]}
    await service.put(one.url, json=opening("K1a", "31 1/8", count=2), headers=tag)
    found = await changes(service, where, **{"from": 1})
    assert (found["from_revision"], found["to_revision"], found["unchanged_openings"]) == (1, 2, 1)
    assert found["house"] == []
    (changed,) = found["openings"]
    assert (changed["mark"], changed["mark_before"], changed["became"]) == ("K1a", "K1", "changed")
    assert {one["pointer"]: (one["before"], one["after"]) for one in changed["readings"]} == {
        "/mark": ('"K1"', '"K1a"'),
        "/readings/jamb_width": ('"30 5/8"', '"31 1/8"'),
        "/count": ("1", "2"),
    }
    pieces = {one["piece"]: one for one in changed["pieces"]}
    assert {piece: one["became"] for piece, one in pieces.items()} == {
        "stool": "longer",
        "apron": "longer",
        "apron_return/left": "unchanged",
        "apron_return/right": "unchanged",
        "side_casing/left": "unchanged",
        "side_casing/right": "unchanged",
        "head_casing": "longer",
    }
    assert pieces["stool"]["longer_by"]["exact"] == "1/2"
    assert (pieces["stool"]["quantity_before"], pieces["stool"]["quantity_after"]) == (1, 2)
    back = await changes(service, where, **{"from": 2, "to": 1})
    assert {one["became"] for one in back["openings"][0]["pieces"]} == {"shorter", "unchanged"}


async def test_openings_that_come_and_go(service: httpx.AsyncClient) -> None:
    where = (await made(service, openings=[opening("K1"), opening("K2")])).headers["location"]
    one = await service.get(f"{where}/openings/K1")
    await service.delete(one.url, headers={"if-match": one.headers["etag"]})
    await service.post(f"{where}/openings", json=opening("K3", bottom="casing"))
    found = await changes(service, where, **{"from": 1, "to": 3})
    assert {one["mark"]: one["became"] for one in found["openings"]} == {"K1": "gone", "K3": "new"}
    assert {piece["became"] for one in found["openings"] for piece in one["pieces"]} == {"gone", "new"}
    assert found["unchanged_openings"] == 1
    nothing = await changes(service, where, **{"from": 3, "to": 3})
    assert (nothing["openings"], nothing["unchanged_openings"]) == ([], 2)


async def test_a_changed_trim_spec_changes_the_pieces_of_its_openings(service: httpx.AsyncClient) -> None:
    specs = {"painted": TRIM, "plain": TRIM}
    body = house(trim_specs=specs, openings=[opening("K1"), opening("K2", trim="plain")])
    answer = await made(service, **body)
    where = answer.headers["location"]
    wider = {**TRIM, "reveal": "1/4 in", "casing": {**TRIM["casing"], "profile": "oak casing"}}
    changed = house(trim_specs={"painted": wider, "plain": TRIM}, name="Renamed")
    await service.put(where, json=changed, headers={"if-match": answer.headers["etag"]})
    found = await changes(service, where, **{"from": 1})
    assert {one["pointer"] for one in found["house"]} == {
        "/name",
        "/trim_specs/painted/reveal",
        "/trim_specs/painted/casing/profile",
    }
    (one,) = found["openings"]
    assert (one["mark"], one["became"], one["readings"]) == ("K1", "trim_changed", [])
    assert {piece["piece"]: piece["became"] for piece in one["pieces"]}["side_casing/left"] == "longer"
    assert found["unchanged_openings"] == 1


async def test_revisions_that_are_none_are_told(sqlite_service: httpx.AsyncClient) -> None:
    where = (await made(sqlite_service)).headers["location"]
    bare = await sqlite_service.get(f"{where}/changes")
    assert bare.status_code == 422, bare.text
    assert (await sqlite_service.get(f"{where}/changes?from=0")).status_code == 422
    assert (await sqlite_service.get(f"{where}/changes?from=1&to=9")).status_code == 404
    first = await sqlite_service.get(f"{where}/changes?from=1")
    same = await sqlite_service.get(
        f"{where}/changes?from=1", headers={"if-none-match": first.headers["etag"]}
    )
    assert same.status_code == 304
