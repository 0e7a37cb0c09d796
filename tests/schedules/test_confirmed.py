"""A reading that is doubted in a kept house: the finding comes from the whole house, its confirmation is kept."""

import httpx

from stored import house, made, opening
from working import cut_list, measure

DOUBTS = ("reading-unusual", "reading-one-digit")


async def _doubts(service: httpx.AsyncClient, where: str) -> dict[str, list[str]]:
    answer = await cut_list(service, where)
    return {
        one["mark"]: [found["field"] for found in one["findings"] if found["code"] in DOUBTS]
        for one in answer["cut_list"]["openings"]
    }


async def test_a_doubt_is_confirmed_and_stays_so_until_it_is_measured_again(
    service: httpx.AsyncClient,
) -> None:
    where = (await made(service, openings=[opening("K1"), opening("K2", "36 5/8")])).headers["location"]
    assert await _doubts(service, where) == {"K1": [], "K2": ["/readings/jamb_width"]}
    await measure(service, where, "K2", "36 5/8", confirmed={"jamb_width": "36 5/8"})
    assert await _doubts(service, where) == {"K1": [], "K2": []}
    kept = (await service.get(f"{where}/openings/K2")).json()
    assert kept["confirmed"]["jamb_width"] == "36 5/8"
    # Measured again, it is another reading, which nobody confirmed.
    await measure(service, where, "K2", "37 5/8", confirmed={"jamb_width": "36 5/8"})
    assert await _doubts(service, where) == {"K1": [], "K2": ["/readings/jamb_width"]}


async def test_a_confirmation_goes_with_the_house_as_json_and_as_csv(service: httpx.AsyncClient) -> None:
    one = opening("K1", "305 5/8", confirmed={"jamb_width": "305 5/8"})
    where = (await made(service, openings=[one])).headers["location"]
    table = await service.get(f"{where}/export", headers={"accept": "text/csv"})
    assert "confirmed jamb width" in table.text.splitlines()[0]
    other = (await service.post("/v1/schedules", json=house(name="Gull Cottage"))).headers["location"]
    tag = (await service.get(other)).headers["etag"]
    sent = await service.post(
        f"{other}/import", content=table.content, headers={"content-type": "text/csv", "if-match": tag}
    )
    assert sent.status_code == 200, sent.text
    kept = (await service.get(f"{other}/openings/K1")).json()
    assert kept["confirmed"]["jamb_width"] == "305 5/8"
