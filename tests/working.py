"""How tests record work on a stored house, and read what is left to do."""

from typing import Any

import httpx

from stored import opening


async def cut_list(service: httpx.AsyncClient, where: str) -> dict[str, Any]:
    answer = await service.get(f"{where}/cut-list")
    assert answer.status_code == 200, answer.text
    return answer.json()


async def record(
    service: httpx.AsyncClient, where: str, *pieces: dict[str, Any], **more: Any
) -> dict[str, Any]:
    answer = await service.post(f"{where}/work", json={"pieces": list(pieces), **more})
    assert answer.status_code == 201, answer.text
    return answer.json()


async def measure(service: httpx.AsyncClient, where: str, mark: str, *readings: str, **changed: Any) -> None:
    one = await service.get(f"{where}/openings/{mark}")
    tag = {"if-match": one.headers["etag"]}
    answer = await service.put(one.url, json=opening(mark, *readings, **changed), headers=tag)
    assert answer.status_code == 200, answer.text


def planned(cuts: dict[str, Any]) -> list[tuple[str, str, int]]:
    """Every piece the sticks hold, by opening, piece and instance."""
    return sorted(
        (piece["opening"], piece["piece"], piece["instance"])
        for plan in cuts["cut_list"]["plans"]
        for stick in plan["sticks"]
        for piece in stick["pieces"]
    )
