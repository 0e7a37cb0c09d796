"""What is answered of a house: every opening's pieces, the sticks they come from, what to buy and what is left over."""

from __future__ import annotations

from msgspec.structs import replace

from longpoint.geometry import Closing, Conditions, Finding, OpenJoint, Piece, open_joints
from longpoint.lengths import Gap
from longpoint.shop.build import BuiltOpening, CutList
from longpoint.shop.cautions import Caution
from longpoint.shop.cut_sticks import BuyLine, LeftOver, ProfilePlan, bought, profile_plan
from longpoint.shop.operations import SawOrder
from longpoint.shop.takeoff import CostSheet, Hours, Materials
from longpoint.shop.work import ShopWork
from longpoint.texts import Sentence, say
from longpoint.values import Cents, Value, nearest


class OpeningAnswer(Value, frozen=True):
    """One opening worked out: its pieces and what was assumed.

    Attributes:
        mark: The name of the opening in the house.
        room: The room that the opening is in.
        count: The number of openings that are alike.
        pieces: Every piece of its trim; left and right are a mirrored pair, each a piece of its own.
        numbers: The number of each piece, by its key, as sheets print it: `K1-4` is number 4 of K1. Null for an opening
            by itself, whose pieces are numbered as they come.
        square_gap: The joint gap left by taking its corners as square: zero where they are, or where their own angles
            were cut.
        notes: They say what was assumed.
        findings: What is in the way, out of plane or out of level; none has changed a size.
        closings: How the pieces close that are rounded together: casing, and a back band, mitered round a curve or a
            polygon. Empty where each piece is rounded by itself.
        movement: The widest miter season by season; null where no conditions were given.
    """

    mark: str
    room: str
    count: int
    pieces: tuple[Piece, ...]
    numbers: dict[str, int] | None
    square_gap: Gap
    notes: tuple[Sentence, ...]
    findings: tuple[Finding, ...]
    closings: tuple[Closing, ...]
    movement: tuple[OpenJoint, ...] | None


class CutListAnswer(Value, frozen=True):
    """A cut list: every opening's pieces, the sticks they come from, what to buy and what is left over. The sections
    that were not asked for are null.

    Attributes:
        openings: The openings, each with its pieces.
        plans: The sticks of each profile and what is cut from each.
        buy: The sticks to buy, a line for each profile and length.
        cost: What the sticks cost; of profiles in `unstocked` it holds nothing.
        held: Marks of the openings, and groups, that are held back or only estimated: no stick is cut for them yet.
        cost_later: The estimated cost of the sticks for what is in `held`, planned first-fit after the others and
            from what those leave.
        later_unpriced: Profiles of what is in `held` that the stock cannot give, so that `cost_later` holds nothing
            of them.
        currency: The currency of every amount.
        proven: Whether no plan of any profile can be cheaper; false while a profile is unstocked.
        unstocked: Profiles that pieces need and no stock was given for.
        unused_stock: Profiles with stock from which nothing is cut.
        offcuts: The offcuts that go back on the rack.
        notes: They say what was assumed or left out.
        cautions: They say what to know before work starts.
        saw_order: The cuts in the order to make them.
        materials: The materials to buy beside the sticks.
        hours: The hands-on time, and the drying waits.
        cost_sheet: The money by line, by opening and by room.
    """

    openings: tuple[OpeningAnswer, ...]
    plans: tuple[ProfilePlan, ...]
    buy: tuple[BuyLine, ...]
    cost: Cents
    held: tuple[str, ...]
    cost_later: Cents
    later_unpriced: tuple[str, ...]
    currency: str
    proven: bool
    unstocked: tuple[str, ...]
    unused_stock: tuple[str, ...]
    offcuts: tuple[LeftOver, ...]
    notes: tuple[Sentence, ...]
    cautions: tuple[Caution, ...]
    saw_order: SawOrder | None = None
    materials: Materials | None = None
    hours: Hours | None = None
    cost_sheet: CostSheet | None = None


def cut_list_answer(cut_list: CutList, work: ShopWork) -> CutListAnswer:
    """The whole answer."""
    plans, house = cut_list.plans, cut_list.house
    unstocked, unused = cut_list.unstocked, cut_list.unused_stock
    notes = [say("note", "sticks.unstocked", profile=profile) for profile in unstocked]
    notes += [say("note", "sticks.later-missing", profile=profile) for profile in cut_list.later_missing]
    notes += [
        say("note", "sticks.stock-unused", profile=profile) + nearest(profile, unstocked)
        for profile in unused
    ]
    if any(not plan.proven for plan in plans):
        kept = cut_list.plan_number is not None
        notes.append(say("note", "sticks.unproven-kept") if kept else say("note", "sticks.unproven"))
    return CutListAnswer(
        openings=tuple(
            opening_answer(
                one, house.movement, {str(piece.key): number for number, piece in one.built.numbered}
            )
            for one in cut_list.openings
        ),
        plans=tuple(profile_plan(plan, cut_list) for plan in plans),
        buy=tuple(line for plan in plans for line in bought(plan)),
        cost=Cents(sum(plan.cost_cents for plan in plans)),
        held=cut_list.held,
        cost_later=Cents(sum(plan.cost_cents for plan in cut_list.later)),
        later_unpriced=cut_list.later_missing,
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


def opening_answer(
    one: BuiltOpening, movement: Conditions | None = None, numbers: dict[str, int] | None = None
) -> OpeningAnswer:
    """One opening and its pieces."""
    built = one.built
    return OpeningAnswer(
        mark=built.opening.mark,
        room=one.room,
        count=one.count,
        pieces=built.pieces
        if one.count == 1
        else tuple(replace(piece, quantity=one.count) for piece in built.pieces),
        numbers=numbers,
        square_gap=Gap(built.square_gap),
        notes=built.notes,
        findings=built.findings,
        closings=built.closings,
        movement=None if movement is None else open_joints(built, movement),
    )
