"""What is answered of a plan that is kept."""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from typing import Literal, cast

from longpoint.schedules.answers import Moment
from longpoint.schedules.kept import read_stick
from longpoint.schedules.rows import PlanRow, StickRow
from longpoint.shop.cut_sticks import BuyLine, CutStick, Stopped, placed_piece
from longpoint.shop.named_sticks import NamedStick, PlannedProfile
from longpoint.texts import Sentence
from longpoint.values import Cents, Value, fields_of

StickState = Literal["planned", "cut", "changed"]


class PlanLine(Value, frozen=True):
    """A plan in a list.

    Attributes:
        number: The number of the plan; the schedule's plans are counted from 1.
        stands: Whether it is the plan of what the schedule is now.
        made_at: The time at which the plan was made.
        used_at: When something was first printed or cut from it; null while nothing was. Such a plan is kept; of the
            others the oldest go.
        planning_seconds: How long was allowed for the search; 0 took the first plan that was found.
        cost: The cost of the sticks that were left to cut when it was made; of profiles in `unstocked` it holds
            nothing.
        bound: A lower bound: no plan of those sticks costs less.
        above: How far the cost may be above the cheapest: zero is proven, where nothing is in `unstocked`.
        unstocked: Profiles that pieces needed and no stock was given for when it was made.
        proven: True where it is proven that no plan is cheaper; false where a profile was unstocked.
    """

    number: int
    stands: bool
    made_at: Moment
    used_at: Moment | None
    planning_seconds: float
    cost: Cents
    bound: Cents
    above: Cents
    unstocked: tuple[str, ...]
    proven: bool

    @classmethod
    def of(cls, row: PlanRow, profiles: Sequence[PlannedProfile], stands: bool) -> PlanLine:
        """As its row has it."""
        unstocked = tuple(one.profile for one in profiles if not one.stocked)
        cost, bound = sum(one.cost for one in profiles), sum(one.bound for one in profiles)
        return cls(
            number=row.number,
            stands=stands,
            made_at=row.created_at,
            used_at=row.used_at,
            planning_seconds=row.budget / 1000,
            cost=Cents(cost),
            bound=Cents(bound),
            above=Cents(cost - bound),
            unstocked=unstocked,
            proven=cost == bound and not unstocked,
        )


class PlannedSticks(Value, frozen=True):
    """It says how good the sticks of one profile are.

    Attributes:
        profile: The profile whose sticks these are.
        sticks: The names of the sticks, in the order they come to the saw.
        cost: The cost of all of them.
        bound: A lower bound: no plan costs less than this.
        method: The method that found the plan: `first_fit` lays each piece on the first stick that has room, `columns`
            combines patterns of cuts, `branching` tries one choice after the other. It changes nothing at the saw.
        stopped: Why the search ended: it was proven, the effort that the budget allows was spent, the clock ran out
            first, or there was not the memory for it.
        seconds: The time that the search took, in seconds.
        split_openings: Openings that were to come from one stick each and that no stick can hold.
    """

    profile: str
    sticks: tuple[str, ...]
    cost: Cents
    bound: Cents
    method: str
    stopped: Stopped
    seconds: float
    split_openings: tuple[str, ...]

    @classmethod
    def of(cls, one: PlannedProfile) -> PlannedSticks:
        """As it is kept."""
        return cls(
            one.profile,
            one.sticks,
            Cents(one.cost),
            Cents(one.bound),
            one.method,
            cast(Stopped, one.stopped),
            one.seconds,
            one.split_openings,
        )


class StoredStick(CutStick, frozen=True, kw_only=True):
    """A stick of a plan that is kept.

    Attributes:
        profile: The profile that the stick is of.
        lot: The name of the lot, the lengths on hand entered together, that it comes from; null for one to buy.
        state: Planned to be cut, cut already, or changed: laid out otherwise under other names by now.
    """

    profile: str
    lot: str | None
    state: StickState

    @classmethod
    def of(cls, name: str, stick: NamedStick, marks: Mapping[str, str], cut: Collection[str]) -> StoredStick:
        """A stick under its name; openings that are gone go by their id."""
        return cls(
            name=name,
            profile=stick.profile,
            length=stick.length,
            on_hand=stick.lot is not None,
            price=Cents(stick.price),
            pieces=tuple(
                placed_piece(
                    piece.placed, marks.get(piece.opening_id, piece.opening_id), piece.piece, piece.instance
                )
                for piece in stick.pieces
            ),
            offcut=stick.offcut,
            kept=stick.kept,
            lot=stick.lot,
            state="cut" if name in cut else "planned",
        )


class StickDetail(StoredStick, frozen=True, kw_only=True):
    """A stick by its name, and who is about to cut it.

    Attributes:
        plan: The number of the plan that first had it.
        claimed_by: The name of who claimed it last; null where nobody has it claimed.
        claimed_until: When that claim is over; it may be by now.
        notes: What else is to be known: a claim that was over when it was taken over.
    """

    plan: int
    claimed_by: str | None
    claimed_until: Moment | None
    notes: tuple[Sentence, ...]

    @classmethod
    def of_row(
        cls,
        row: StickRow,
        marks: Mapping[str, str],
        cut: Collection[str],
        *,
        changed: bool,
        notes: Sequence[Sentence],
    ) -> StickDetail:
        """As its row has it; `changed` where the plan that stands has it no more."""
        stick = StoredStick.of(row.name, read_stick(row.document), marks, cut)
        said = fields_of(StoredStick, stick)
        if changed and stick.state == "planned":
            said["state"] = "changed"
        return cls(
            **said,
            plan=row.plan,
            claimed_by=row.claimed_by,
            claimed_until=row.claimed_until,
            notes=tuple(notes),
        )


class StoredPlan(PlanLine, frozen=True, kw_only=True):
    """A plan of a schedule's sticks.

    Attributes:
        profiles: It says how good the plan is, profile by profile.
        sticks: The sticks of the plan.
        changed: Sticks of the plan before it that it has no more: their names are never used again.
        buy: The sticks that are still to be bought for it, a line for each profile and length.
    """

    profiles: tuple[PlannedSticks, ...]
    sticks: tuple[StoredStick, ...]
    changed: tuple[str, ...]
    buy: tuple[BuyLine, ...]
