"""What is answered of a house: every opening's pieces, the sticks they come from, what to buy and what is left over."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator

from msgspec.structs import replace

from longpoint.geometry import Conditions, Finding, OpenJoint, Part, PieceKey, open_joints
from longpoint.lengths import Fraction, Gap
from longpoint.shop.build import BuiltOpening, CutList, HouseKey
from longpoint.shop.cautions import Caution
from longpoint.shop.operations import SawOrder
from longpoint.shop.takeoff import CostSheet, Hours, Materials
from longpoint.shop.work import ShopWork
from longpoint.stock import Layout, Placed, Plan
from longpoint.values import Cents, Value, nearest

UNPROVEN = (
    "Not all sticks are proven cheapest: the bound of each plan says how far off it can be, and more "
    "`planning_seconds` may close the gap."
)
UNSTOCKED = (
    "No stock was given for {}: its pieces are computed; its sticks, and their cost, are missing here."
)
UNUSED = "Nothing is cut from the stock of {}.{}"


class OpeningAnswer(Value, frozen=True):
    """One opening worked out: its pieces and what was assumed.

    Attributes:
        mark: What it is called in the house.
        room: Where it is.
        count: How many are alike.
        parts: Every piece of its trim; left and right are a mirrored pair, each a piece of its own.
        square_gap: The joint gap left by taking its corners as square: nought where they are, or where their own angles
            were cut.
        notes: What was assumed.
        findings: What is in the way, out of plane or out of level; none has changed a size.
        movement: The widest miter season by season; null where no conditions were given.
    """

    mark: str
    room: str
    count: int
    parts: tuple[Part, ...]
    square_gap: Gap
    notes: tuple[str, ...]
    findings: tuple[Finding, ...]
    movement: tuple[OpenJoint, ...] | None


class PlacedPiece(Value, frozen=True):
    """A piece's place on a stick.

    Attributes:
        opening: The mark of the piece's opening.
        part: The piece's key there.
        instance: Which of several alike, counted from 1.
        start: From the stick's left end to the piece's left-most point.
        length: What it takes of the stick.
        turned: Whether it lies turned over.
        reversed: Whether it lies end for end.
        shares_cut: Whether it shares its left cut with the piece before.
    """

    opening: str
    part: PieceKey
    instance: int
    start: Fraction
    length: Fraction
    turned: bool
    reversed: bool
    shares_cut: bool


class CutStick(Value, frozen=True):
    """One stick as it is cut.

    Attributes:
        number: Its number in the plan, counted from 1.
        length: From end to end.
        remnant: Whether it is a remnant on hand and not one to buy.
        price: What it costs.
        pieces: From its left end to its right.
        offcut: What remains.
        kept: Whether that goes back on the rack.
    """

    number: int
    length: Fraction
    remnant: bool
    price: Cents
    pieces: tuple[PlacedPiece, ...]
    offcut: Fraction
    kept: bool


class ProfilePlan(Value, frozen=True):
    """One profile's sticks.

    Attributes:
        profile: Its name.
        sticks: Each stick by itself, as they come to the saw.
        cost: Of them all.
        bound: No plan costs less than this.
        gap: How far `cost` may be from the cheapest, as a share of it; 0 is proven.
        proven: Whether none is cheaper than this one.
        method: What found it: first_fit, columns or branching.
        seconds: How long the search took.
        split_openings: Openings that were to come from one stick each and that no stick can hold.
    """

    profile: str
    sticks: tuple[CutStick, ...]
    cost: Cents
    bound: Cents
    gap: float
    proven: bool
    method: str
    seconds: float
    split_openings: tuple[str, ...]


class BuyLine(Value, frozen=True):
    """A line for the yard.

    Attributes:
        profile: What to ask for.
        length: Of each stick.
        quantity: How many of them.
        price: Of one.
        cost: Of them all.
    """

    profile: str
    length: Fraction
    quantity: int
    price: Cents
    cost: Cents


class LeftOver(Value, frozen=True):
    """What goes back on the rack.

    Attributes:
        profile: Its profile.
        length: Of each.
        quantity: How many.
    """

    profile: str
    length: Fraction
    quantity: int


class CutListAnswer(Value, frozen=True):
    """A cut list: every opening's pieces, the sticks they come from, what to buy and what is left over. The sections
    that were not asked for are null.

    Attributes:
        openings: Each opening's pieces.
        plans: The sticks of each profile and what is cut from each.
        buy: What to buy, a line for each profile and length.
        cost: What the sticks cost; of profiles in `unstocked` it holds nothing.
        currency: Of every amount.
        proven: Whether no plan of any profile can be cheaper; false while a profile is unstocked.
        unstocked: Profiles that pieces need and no stock was given for.
        unused_stock: Profiles with stock from which nothing is cut.
        offcuts: What goes back on the rack.
        notes: What was assumed or left out.
        cautions: What to know before starting.
        saw_order: The cuts in the order to make them.
        materials: What to buy beside the sticks.
        hours: Hands-on time, and drying waits.
        cost_sheet: The money by line, by opening and by room.
    """

    openings: tuple[OpeningAnswer, ...]
    plans: tuple[ProfilePlan, ...]
    buy: tuple[BuyLine, ...]
    cost: Cents
    currency: str
    proven: bool
    unstocked: tuple[str, ...]
    unused_stock: tuple[str, ...]
    offcuts: tuple[LeftOver, ...]
    notes: tuple[str, ...]
    cautions: tuple[Caution, ...]
    saw_order: SawOrder | None = None
    materials: Materials | None = None
    hours: Hours | None = None
    cost_sheet: CostSheet | None = None


def cut_list_answer(cut_list: CutList, work: ShopWork) -> CutListAnswer:
    """The whole answer."""
    plans, house = cut_list.plans, cut_list.house
    unstocked, unused = cut_list.unstocked, cut_list.unused_stock
    notes = [UNSTOCKED.format(repr(profile)) for profile in unstocked]
    notes += [UNUSED.format(repr(profile), nearest(profile, unstocked)) for profile in unused]
    if any(not plan.proven for plan in plans):
        notes.append(UNPROVEN)
    return CutListAnswer(
        openings=tuple(opening_answer(one, house.movement) for one in cut_list.openings),
        plans=tuple(_plan(plan, cut_list) for plan in plans),
        buy=tuple(line for plan in plans for line in _buy(plan)),
        cost=Cents(sum(plan.cost_cents for plan in plans)),
        currency=house.currency,
        proven=not unstocked and all(plan.proven for plan in plans),
        unstocked=unstocked,
        unused_stock=unused,
        offcuts=tuple(
            LeftOver(plan.profile, length, count) for plan in plans for length, count in plan.offcuts
        ),
        notes=tuple(notes),
        cautions=work.cautions,
        saw_order=work.saw_order,
        materials=work.materials,
        hours=work.hours,
        cost_sheet=work.cost,
    )


def opening_answer(one: BuiltOpening, movement: Conditions | None = None) -> OpeningAnswer:
    """One opening and its pieces."""
    built = one.built
    return OpeningAnswer(
        mark=built.opening.mark,
        room=one.room,
        count=one.count,
        parts=built.parts
        if one.count == 1
        else tuple(replace(part, quantity=one.count) for part in built.parts),
        square_gap=Gap(built.square_gap),
        notes=built.notes,
        findings=built.findings,
        movement=None if movement is None else open_joints(built, movement),
    )


def _plan(plan: Plan, cut_list: CutList) -> ProfilePlan:
    return ProfilePlan(
        profile=plan.profile,
        sticks=tuple(_sticks(plan, cut_list)),
        cost=Cents(plan.cost_cents),
        bound=Cents(plan.bound_cents),
        gap=plan.gap,
        proven=plan.proven,
        method=plan.method,
        seconds=round(plan.seconds, 3),
        split_openings=tuple(plan.split_openings),
    )


def _sticks(plan: Plan, cut_list: CutList) -> Iterator[CutStick]:
    """Every stick by itself, numbered as they come to the saw, each piece with its opening and instance."""
    instances: dict[HouseKey, Iterator[int]] = {}
    number = 0
    for layout in plan.layouts:
        for keys in layout.keys:
            pieces = []
            for placed, key in zip(layout.placed, keys, strict=True):
                if key not in instances:
                    count = cut_list.openings[key.opening].count
                    instances[key] = iter(cut_list.instances(key, count))
                pieces.append(_placed(placed, key, next(instances[key]), cut_list))
            number += 1
            yield _stick(number, layout, tuple(pieces))


def _stick(number: int, layout: Layout, pieces: tuple[PlacedPiece, ...]) -> CutStick:
    return CutStick(
        number=number,
        length=+layout.length,
        remnant=layout.remnant,
        price=Cents(layout.price_cents),
        pieces=pieces,
        offcut=layout.offcut,
        kept=layout.kept,
    )


def _placed(placed: Placed, key: HouseKey, instance: int, cut_list: CutList) -> PlacedPiece:
    return PlacedPiece(
        opening=cut_list.openings[key.opening].built.opening.mark,
        part=key.piece,
        instance=instance,
        start=+placed.start,
        length=+placed.length,
        turned=placed.turned,
        reversed=placed.reversed,
        shares_cut=placed.shares_cut,
    )


def _buy(plan: Plan) -> list[BuyLine]:
    bought: Counter[tuple[str, int]] = Counter()
    lengths = {}
    for layout in plan.layouts:
        if not layout.remnant:
            bought[layout.stick, layout.price_cents] += layout.times
            lengths[layout.stick] = layout.length
    return [
        BuyLine(plan.profile, +lengths[stick], count, Cents(price), Cents(price * count))
        for (stick, price), count in sorted(bought.items(), key=lambda item: lengths[item[0][0]])
    ]
