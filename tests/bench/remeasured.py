"""Kept houses beside the same houses sent, and what remeasures change of what was printed. Run from the top:

    PYTHONPATH=service:tests python tests/bench/remeasured.py --houses 200 --remeasures 200

Random houses of at most twelve openings: cost, bound and proof of the plan that is kept and of /v1/cut-list with the
same budget. Then remeasures of one opening after some sticks were cut: every name printed before is looked up, and
the sticks that changed are held against the least that any plan of that cost changes, where trying all of them is
possible. It ends with 1 where anything differs.
"""

import argparse
import asyncio
import sys
import tempfile
from collections import Counter
from dataclasses import replace
from itertools import combinations
from pathlib import Path
from random import Random
from typing import Any

import httpx
from sqlalchemy import select
from sqlalchemy.ext.asyncio import AsyncConnection

import databases
from longpoint.api.stored.plan_making import plan_job
from longpoint.schedules import houses
from longpoint.schedules.migrate import migrate
from longpoint.schedules.models import Account
from longpoint.schedules.store import Store
from longpoint.stock import Budget, Cutting, Standing, StockError, plan, replan
from stored import house, made, opening, serving

MOST_TRIED = 3000


def windows(random: Random, most: int) -> list[dict[str, Any]]:
    """Windows of an invented house."""
    return [
        opening(
            f"W{number}", f"{random.randint(20, 52)} {random.randrange(16)}/16", str(random.randint(30, 66))
        )
        for number in range(1, random.randint(2, most) + 1)
    ]


async def planned(service: httpx.AsyncClient, where: str, seconds: float) -> dict[str, Any]:
    """The plan that stands after a search."""
    answer = await service.post(f"{where}/plans", json={"planning_seconds": seconds}, timeout=120)
    assert answer.status_code == 201, answer.text
    plan: dict[str, Any] = answer.json()
    return plan


async def compare(service: httpx.AsyncClient, random: Random, seconds: float) -> str:
    """What differs between a house that is kept and the same house sent; "" for nothing."""
    openings = windows(random, 12)
    where = (await made(service, openings=openings)).headers["location"]
    kept = await planned(service, where, seconds)
    body = house(openings=openings, planning_seconds=seconds)
    del body["name"]
    sent = (await service.post("/v1/cut-list", json=body, timeout=120)).json()
    of_kept = sorted((one["profile"], one["cost"], one["bound"]) for one in kept["profiles"])
    of_sent = sorted((one["profile"], one["cost"], one["bound"]) for one in sent["plans"])
    return "" if (of_kept, kept["proven"]) == (of_sent, sent["proven"]) else f"{of_kept} and {of_sent}"


async def remeasure(service: httpx.AsyncClient, store: Store, random: Random, count: Counter[str]) -> str:
    """What is wrong after a remeasure of a house of which some sticks were cut; "" for nothing."""
    where = (await made(service, openings=windows(random, 6))).headers["location"]
    before = await planned(service, where, 2.0)
    names = [stick["name"] for stick in before["sticks"]]
    done = random.sample(names, random.randint(0, min(2, len(names) - 1)))
    if done:
        assert (await service.post(f"{where}/cut-sticks", json={"sticks": done})).status_code == 201
    marks = {piece["opening"] for stick in before["sticks"] for piece in stick["pieces"]}
    mark = random.choice(sorted(marks))
    one = await service.get(f"{where}/openings/{mark}")
    changed = opening(mark, str(random.randint(20, 52)), str(random.randint(30, 66)))
    answer = await service.put(one.url, json=changed, headers={"if-match": one.headers["etag"]})
    assert answer.status_code == 200, answer.text
    cuttings = await cuttings_of(store, where)
    after = await planned(service, where, 2.0)
    layouts = {stick["name"]: stick["pieces"] for stick in before["sticks"]}
    for stick in after["sticks"]:
        if stick["name"] in layouts and layouts[stick["name"]] != stick["pieces"]:
            return f"{stick['name']} stands for two layouts"
        if stick["name"] in done:
            return f"{stick['name']} was cut and is planned again"
    for profile, (cutting, standing) in cuttings.items():
        found = next(item for item in after["profiles"] if item["profile"] == profile)
        possible = replan(cutting, standing, Budget(0)).kept
        kept = [name for name in possible if name in found["sticks"]]
        cost = round(float(found["cost"]) * 100)
        least = least_changed(cutting, [item for item in standing if item.name in possible], cost)
        count["profiles"] += 1
        count["changed"] += len(possible) - len(kept)
        if least is None:
            count["too many to try"] += 1
        elif len(possible) - len(kept) > least:
            count["more than the least"] += 1
            count["sticks more than the least"] += len(possible) - len(kept) - least
    return ""


async def cuttings_of(store: Store, where: str) -> dict[str, tuple[Cutting, tuple[Standing, ...]]]:
    """What is to be planned anew, by profile."""
    async with store.reading() as connection:
        row = await houses.find(connection, await account_of(connection), where.rsplit("/", 1)[1])
        assert row is not None
        job = await plan_job(connection, row, None, searched=True)
    planning = job.prepare().planning
    return {
        cutting.profile: (cutting, standing)
        for cutting, standing in zip(planning.cuttings, planning.standing, strict=True)
    }


async def account_of(connection: AsyncConnection) -> str:
    """The only account there is."""
    return str((await connection.execute(select(Account.id))).scalar_one())


def least_changed(cutting: Cutting, standing: list[Standing], cost: int) -> int | None:
    """The fewest sticks that change in any plan of that cost, by trying; None where there are too many to try."""
    tried = 0
    for size in range(len(standing) + 1):
        for gone in combinations(range(len(standing)), size):
            tried += 1
            if tried > MOST_TRIED:
                return None
            kept = [one for at, one in enumerate(standing) if at not in gone]
            if cost_with(cutting, kept) <= cost:
                return size
    return len(standing)


def cost_with(cutting: Cutting, kept: list[Standing]) -> float:
    """What the cheapest plan costs that has these sticks, in cents."""
    taken = Counter(key for one in kept for key in one.layout.keys[0])
    used = {one.layout.stick for one in kept if one.layout.on_hand}
    pieces = tuple(
        replace(piece, quantity=piece.quantity - taken[piece.key])
        for piece in cutting.pieces
        if piece.quantity > taken[piece.key]
    )
    spent = sum(one.layout.price_cents for one in kept)
    rest = replace(
        cutting,
        pieces=pieces,
        lengths_on_hand=tuple(one for one in cutting.lengths_on_hand if one.key not in used),
    )
    if not pieces:
        return spent
    try:
        return spent + plan(rest, Budget(1.0)).cost_cents
    except StockError:
        return float("inf")


async def run(chosen: argparse.Namespace) -> int:
    """Both comparisons."""
    random, wrong = Random(chosen.seed), []
    with tempfile.TemporaryDirectory() as folder:
        address = databases.fresh_sqlite(Path(folder))
        store = Store(address, create=True)
        await migrate(store)
        async with serving(address) as service:
            for number in range(chosen.houses):
                found = await compare(service, random, chosen.seconds)
                if found:
                    wrong.append(f"house {number}: {found}")
            print(f"{chosen.houses} houses kept and sent: {len(wrong)} differ")
            count: Counter[str] = Counter()
            for number in range(chosen.remeasures):
                found = await remeasure(service, store, random, count)
                if found:
                    wrong.append(f"remeasure {number}: {found}")
        await store.close()
    print(f"{chosen.remeasures} remeasures: {dict(count)}")
    print(*wrong, sep="\n")
    return 1 if wrong or count["more than the least"] else 0


if __name__ == "__main__":
    parser = argparse.ArgumentParser(
        description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter
    )
    parser.add_argument("--houses", type=int, default=200)
    parser.add_argument("--remeasures", type=int, default=200)
    parser.add_argument("--seconds", type=float, default=2.0)
    parser.add_argument("--seed", type=int, default=1)
    sys.exit(asyncio.run(run(parser.parse_args())))
