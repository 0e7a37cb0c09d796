"""The yard list: sticks and packages to buy, for the counter."""

from __future__ import annotations

import math
from collections import Counter

from longpoint.lengths import Fraction, Real
from longpoint.sheets.cutting import UNPLANNED, buy_table, profiles_without_plan
from longpoint.sheets.document import (
    Block,
    Cell,
    Column,
    Document,
    Length,
    Money,
    Notes,
    Number,
    Rows,
    Table,
    Tick,
)
from longpoint.sheets.job import Job, caution_notes
from longpoint.sheets.pieces import pieces_by_key, to_cut
from longpoint.sheets.wording import unit_words
from longpoint.shop import Bought, Material

PACKAGES = (
    Column("What", "material", 4),
    Column("Needed", "needed", 1),
    Column("Unit", "unit", 2),
    Column("Buy", "buy", 6),
    Column("Together", "cost"),
    Column("Got", "got", 1),
)
RACK = (
    Column("Profile", "profile", 9),
    Column("Pieces", "quantity", 1),
    Column("Length", "length"),
    Column("Got", "got", 1),
)
RUNNING = (
    Column("Profile", "profile", 9),
    Column("Pieces", "quantity", 1),
    Column("Longest", "longest"),
    Column("In all", "running_length"),
)
COUNTED = ("nail", "shim")


def yard_list(job: Job) -> Document:
    """What to buy, and what there is already. Materials are listed when the job's were worked out."""
    cut_list = job.cut_list
    blocks: list[Block] = []
    if cut_list.plans:
        blocks.append(buy_table(cut_list))
        rack = _from_the_rack(job)
        if rack:
            blocks.append(rack)
    unplanned = profiles_without_plan(cut_list)
    if unplanned:
        blocks.append(_running(job, set(unplanned)))
        blocks.append(Notes("Not planned", tuple(UNPLANNED.format(name) for name in unplanned)))
    if job.work and job.work.materials:
        blocks.append(_packages(job.work.materials.lines))
        notes = dict.fromkeys(note for line in job.work.materials.lines for note in line.notes)
        if notes:
            blocks.append(Notes("Check", tuple(notes)))
    if any(not plan.proven for plan in cut_list.plans):
        blocks.append(Notes("About the sticks", ("A cheaper choice of sticks is not ruled out.",)))
    blocks.append(caution_notes(job, "lead_paint", "finishes", "local_codes"))
    return Document("yard-list", "Yard list", job.name, tuple(blocks), job.paper)


def _from_the_rack(job: Job) -> Table | None:
    used: Counter[tuple[str, Fraction]] = Counter()
    for plan in job.cut_list.plans:
        for layout in plan.layouts:
            if layout.remnant:
                used[plan.profile, layout.length] += layout.times
    rows: tuple[tuple[Cell, ...], ...] = tuple(
        (profile, count, Length(length), Tick()) for (profile, length), count in used.items()
    )
    return Table("rack", "On hand, or ordered already", RACK, (Rows(rows),)) if rows else None


def _running(job: Job, profiles: set[str]) -> Table:
    """What profiles without stock come to, end to end, before kerfs and waste."""
    count: Counter[str] = Counter()
    running: dict[str, Real] = {}
    longest: dict[str, Real] = {}
    for key, piece in pieces_by_key(job.cut_list).items():
        part, quantity = piece.part, to_cut(job.cut_list, key, piece)
        if part.profile in profiles and quantity:
            count[part.profile] += quantity
            running[part.profile] = running.get(part.profile, Fraction(0)) + part.overall * quantity
            longest[part.profile] = max(longest.get(part.profile, Fraction(0)), part.overall)
    rows: tuple[tuple[Cell, ...], ...] = tuple(
        (profile, count[profile], Length(longest[profile]), Length(running[profile], stick=True))
        for profile in sorted(count)
    )
    return Table("running", "Profiles with no stock given, without kerfs or waste", RUNNING, (Rows(rows),))


def _packages(lines: tuple[Material, ...]) -> Table:
    rows: list[tuple[Cell, ...]] = []
    cents = 0
    for line in lines:
        price = _price(line.bought)
        cents += price or 0
        rows.append(
            (
                line.name,
                _needed(line),
                unit_words(line.unit),
                "; ".join(f"{one.count} × {one.package}" for one in line.bought),
                "" if price is None else Money(price),
                Tick(),
            )
        )
    total: tuple[Cell, ...] = ("all with a price", "", "", "", Money(cents), "") if cents else ()
    return Table("packages", "Packages to buy", PACKAGES, (Rows(tuple(rows)),), total)


def _needed(line: Material) -> Cell:
    """How much of it; whole ones of what is counted, since waste is reckoned in shares."""
    return math.ceil(line.quantity) if line.unit in COUNTED else Number(line.quantity)


def _price(bought: tuple[Bought, ...]) -> int | None:
    costs = [one.cost for one in bought if one.cost is not None]
    return sum(costs) if costs and len(costs) == len(bought) else None
