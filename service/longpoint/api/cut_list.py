"""`/v1/cut-list`: a house's openings in; parts, sticks, a buy list and what is left over out."""

from __future__ import annotations

from collections.abc import Sequence

from litestar import post
from litestar.params import JSONBody

from longpoint.api.build import raise_geometry
from longpoint.api.cut_list_out import cut_list_out
from longpoint.api.examples import CUT_LIST
from longpoint.api.examples_shapes import GROUPED
from longpoint.api.faults import Faults
from longpoint.api.opening import opening_field
from longpoint.api.operation import operation
from longpoint.api.read import Path
from longpoint.api.read_house import read_job
from longpoint.api.wire_cut_list import CutListOut, CutListRequest
from longpoint.geometry import GeometryError
from longpoint.shop import ShopWork, work
from longpoint.shop.house import BuiltOpening, CutList, House, build_openings, cutting_jobs
from longpoint.stock import Budget, Job, Plan, StockError, StockFault, plan


@post(
    "/v1/cut-list",
    **operation("compute_cut_list", summary="A house", tag="A house", examples={**CUT_LIST, **GROUPED}),
)
async def compute_cut_list(data: JSONBody[CutListRequest]) -> CutListOut:
    """Every part of every opening, the sticks they come from, what to buy and what is left over.

    Asked to, also the cuts in the order to make them, the materials, the hours and the money.
    """
    cut_list, shop_work = work_out(data)
    return cut_list_out(cut_list, shop_work, data.currency, data.movement)


def work_out(data: CutListRequest) -> tuple[CutList, ShopWork]:
    """The house worked out, and the sections of the shop's work that were asked for.

    Raises:
        InvalidRequest: with every fault of the readings, else of the geometry, else of the stock.
    """
    house, settings = read_job(data)
    cut_list = _cut_list(data, house)
    return cut_list, work(cut_list, frozenset(data.include), settings)


def _cut_list(data: CutListRequest, house: House) -> CutList:
    openings = built_openings(data, house)
    return CutList(house, openings, planned(house, openings, cutting_jobs(house, openings)))


def built_openings(data: CutListRequest, house: House) -> tuple[BuiltOpening, ...]:
    """Every opening of a house, built.

    Raises:
        InvalidRequest: with every fault of the geometry, at the fields as they were sent.
    """
    try:
        return build_openings(house)
    except GeometryError as error:
        raise_geometry(error, lambda path: house_field(data, path))


def planned(house: House, openings: tuple[BuiltOpening, ...], jobs: Sequence[Job]) -> tuple[Plan, ...]:
    """The sticks for each cutting job of a house.

    Raises:
        InvalidRequest: with every fault of the stock, at the fields as they were sent.
    """
    faults = Faults()
    plans = []
    for job in jobs:
        try:
            plans.append(plan(job, Budget(seconds=0)))
        except StockError as error:
            for fault in error.faults:
                detail = _piece_named(openings, job, fault) + fault.detail
                faults.add(_stock_field(house, job, fault), fault.code.replace("_", "-"), detail)
    faults.raise_any()
    return tuple(plans)


def house_field(data: CutListRequest, path: Path) -> Path:
    """A field of an opening in a house: its trim stands among the trim specs."""
    name, index, *rest = path
    if name == "groups":
        return path
    one = data.openings[int(index)]
    if rest[0] == "trim":
        return ("trim_specs", one.trim, *rest[1:])
    return ("openings", index, *opening_field(one, tuple(rest)))


def _stock_field(house: House, job: Job, fault: StockFault) -> Path:
    """The field of the request behind a field of a cutting job."""
    number = next(index for index, stock in enumerate(house.stock) if stock.profile == job.profile)
    match fault.field:
        case ("pieces", int(index), *_):
            return _opening_or_group(house, int(job.pieces[index].key.partition(":")[0]))
        case ("sticks", int(index), *rest):
            return ("stock", number, "sticks", index, *_SENT.get(tuple(rest), rest))
        case ("remnants", int(index), *rest):
            kind = int(job.remnants[index].key.split("/")[1])
            return ("stock", number, "remnants", kind, *_SENT.get(tuple(rest), rest))
        case ("kerf" | "end_trim" | "keep_length" as name, *_):
            return (name,)
    return ("stock", number)


def _opening_or_group(house: House, index: int) -> Path:
    """What groups share follows the openings, in the order of the groups that share anything."""
    if index < len(house.openings):
        return ("openings", index)
    sharing = [number for number, one in enumerate(house.groups) if one.group.stool is not None]
    return ("groups", sharing[index - len(house.openings)])


def _piece_named(openings: tuple[BuiltOpening, ...], job: Job, fault: StockFault) -> str:
    """Which piece of which opening a fault speaks of; nothing where it speaks of the stock."""
    match fault.field:
        case ("pieces", int(index), *_):
            number, _, key = job.pieces[index].key.partition(":")
            built = openings[int(number)].built
            title = next(part.title for part in built.parts if part.key == key)
            return f"Opening {built.opening.mark!r}, {title}: "
    return ""


_SENT: dict[Path, Path] = {("price_cents",): ("price",)}
