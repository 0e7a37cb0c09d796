"""A house worked out in steps: its openings and a first plan at once, better plans as long as there is time."""

from __future__ import annotations

from collections.abc import Sequence

from longpoint.api.computed.opening import opening_field
from longpoint.api.computed.planning_pool import PlanningPool, Tell
from longpoint.api.http.faults import Faults
from longpoint.api.read.build import raise_geometry
from longpoint.api.read.house import read_job
from longpoint.api.read.reader import Path
from longpoint.api.wire.cut_list import CutListOut, CutListRequest
from longpoint.api.write.cut_list import cut_list_out
from longpoint.geometry import GeometryError
from longpoint.shop import ShopWork, work
from longpoint.shop.house import BuiltOpening, CutList, House, build_openings, cutting_jobs
from longpoint.stock import Budget, Job, Plan, StockError, StockFault, plan

ROWS = 300
"""Plain openings that are as much work as the rows in which an opening's mitred pieces may lie on a stick."""
NO_PLAN = "no_plan_found"  # what a search may yet find where first-fit did not


def openings_of_work(data: CutListRequest) -> int:
    """About as many plain openings as a request is work: one of many pieces counts for more, and so does what a plan
    has to choose from."""
    size = 0
    for one in data.openings:
        read = one.readings
        pieces = read.head_pieces or (60 if read.departure else 0)
        size += one.count * (1 + (pieces + len(read.sides or ()) + len(read.lights or ())) // 6)
    for stock in data.stock:
        if stock.one_stick_each and stock.turnable:
            size += ROWS
        size += sum(len(one.defects) for one in stock.sticks) + sum(
            len(one.defects) for one in stock.remnants
        )
        size += len(stock.sticks) // 4 + sum(remnant.count for remnant in stock.remnants) // 4
    return size


class CutListWork:
    """A request being worked out.

    Attributes:
        jobs: a cutting job for each profile that has stock.

    Raises:
        InvalidRequest: with every fault of the readings, else of the geometry, else of the stock.
    """

    def __init__(self, data: CutListRequest) -> None:
        self._data = data
        self._house, self._settings = read_job(data)
        self._openings = built_openings(data, self._house)
        self.jobs = cutting_jobs(self._house, self._openings)
        self._plans: dict[int, Plan] = {}
        self._missing: dict[int, StockError] = {}
        refused = Faults()
        for index, job in enumerate(self.jobs):
            try:
                self._plans[index] = plan(job, Budget(seconds=0))
            except StockError as error:
                if data.planning_seconds and all(fault.code == NO_PLAN for fault in error.faults):
                    self._missing[index] = error
                else:
                    _tell(refused, self._house, self._openings, job, error)
        refused.raise_any()

    @property
    def cut_list(self) -> CutList:
        """The openings with the best plans there are so far."""
        return CutList(
            self._house, self._openings, tuple(self._plans[index] for index in range(len(self.jobs)))
        )

    @property
    def open(self) -> tuple[int, ...]:
        """Which jobs a search may better; none when no time is given."""
        if not self._data.planning_seconds:
            return ()
        unproven = (index for index, found in self._plans.items() if not found.proven)
        return tuple(sorted((*unproven, *self._missing)))

    async def better(self, pool: PlanningPool, tell: Tell) -> None:
        """Search for better plans in the time the request gives.

        Raises:
            InvalidRequest: when no plan gives every piece.
            PlanningBusy: when too many requests wait already.
        """
        searched = self.open
        if not searched:
            return
        jobs = tuple(self.jobs[index] for index in searched)
        found = await pool.plan(jobs, self._data.planning_seconds, lambda at, step: tell(searched[at], step))
        refused = Faults()
        for index, outcome in zip(searched, found, strict=True):
            if isinstance(outcome, Plan):
                self._plans[index] = outcome
            elif index in self._missing:
                error = outcome or self._missing[index]
                _tell(refused, self._house, self._openings, self.jobs[index], error)
        refused.raise_any()

    def done(self) -> tuple[CutList, ShopWork]:
        """The house worked out, and the sections of the shop's work that were asked for."""
        cut_list = self.cut_list
        return cut_list, work(cut_list, frozenset(self._data.include), self._settings)

    def answer(self) -> CutListOut:
        """The whole answer."""
        return cut_list_out(*self.done(), self._data.currency, self._data.movement)


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
    """The sticks for each cutting job of a house, first-fit.

    Raises:
        InvalidRequest: with every fault of the stock, at the fields as they were sent.
    """
    faults = Faults()
    plans = []
    for job in jobs:
        try:
            plans.append(plan(job, Budget(seconds=0)))
        except StockError as error:
            _tell(faults, house, openings, job, error)
    faults.raise_any()
    return tuple(plans)


def _tell(
    faults: Faults, house: House, openings: tuple[BuiltOpening, ...], job: Job, error: StockError
) -> None:
    for fault in error.faults:
        detail = _piece_named(openings, job, fault) + fault.detail
        faults.add(_stock_field(house, job, fault), fault.code.replace("_", "-"), detail)


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
