"""Sticks cut just as they were planned, as the work they are."""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence

import msgspec

from longpoint.api.http.problems import NotFound
from longpoint.api.http.problems_stored import StickChanged, StickClaimed
from longpoint.lengths import Mode, PositiveLength, Rounding, round_to, spoken, tape
from longpoint.schedules.claims import claim_of
from longpoint.schedules.house_rows import Left
from longpoint.schedules.lots import MOST_LENGTHS, LengthOnHand
from longpoint.schedules.making import KeptPlan
from longpoint.schedules.rows import StickRow
from longpoint.schedules.sent import CutSticks, PieceDone
from longpoint.schedules.states import Done
from longpoint.shop.named_sticks import NamedStick, Sited, StickPiece
from longpoint.values import Fault, Faults

_MOST_TOLD = 12


class SticksCut(msgspec.Struct, frozen=True):
    """What was done with sticks that were cut as planned.

    Attributes:
        pieces: Each with the name of the stick it came from.
        offcuts: What they left that is long enough to keep.
        used: The lot of each length on hand that they were.
        again: Names of those that were recorded before.
    """

    pieces: list[tuple[PieceDone, str]]
    offcuts: list[LengthOnHand]
    used: list[str]
    again: list[str]


def sticks_cut(
    data: CutSticks,
    sited: Sited,
    plan: KeptPlan,
    left: Left,
    elsewhere: Mapping[str, NamedStick],
    marks: Mapping[str, str],
) -> SticksCut:
    """The pieces on the sticks that were cut, the lengths on hand they used up and the offcuts they left.

    Args:
        data: Their names.
        sited: The house.
        plan: That stands.
        left: What is left to do.
        elsewhere: Those of the sticks that the plan has not, as they were planned once.
        marks: The mark of each opening and group, by what it is kept under.

    Raises:
        Refusal: when a stick is named twice.
        NotFound: when no stick ever had such a name.
        StickChanged: when a stick is laid out otherwise by now.
    """
    faults = Faults()
    for index, name in enumerate(data.sticks):
        if name in data.sticks[:index]:
            faults.add(("sticks", index), "given-twice", "This stick is in the list already.")
    faults.raise_any()
    unknown = [
        name
        for name in data.sticks
        if name not in plan.sticks and name not in elsewhere and name not in left.cut
    ]
    if unknown:
        raise NotFound(never_had(unknown))
    changed = [
        Fault.at(("sticks", index), "stick-changed", otherwise_by_now(name, elsewhere[name], plan, marks))
        for index, name in enumerate(data.sticks)
        if name not in plan.sticks and name not in left.cut
    ]
    if changed:
        raise StickChanged(
            "Sticks are laid out otherwise by now, since what they were planned from was changed. Nothing was "
            "recorded. Where the stick was cut as it was before, record its pieces one by one with "
            "POST /v1/schedules/{id}/work.",
            changed,
        )
    return _work(data, sited, plan, left)


def _work(data: CutSticks, sited: Sited, plan: KeptPlan, left: Left) -> SticksCut:
    down = Rounding(sited.house.rounding.to, Mode.DOWN)
    done = SticksCut([], [], [], [])
    places = sited.places
    marks = [one.built.opening.mark for one in left.openings]
    for name in data.sticks:
        if name in left.cut:
            done.again.append(name)
            continue
        stick = plan.sticks[name]
        for piece in stick.pieces:
            done.pieces.append((_cut(piece, marks[places[piece.opening_id]]), name))
        if stick.lot is not None:
            done.used.append(stick.lot)
        room = MOST_LENGTHS - len(sited.lots.get(stick.profile, ()))
        if stick.kept and sum(one.profile == stick.profile for one in done.offcuts) < room:
            length = round_to(stick.offcut, down)
            text = tape(length, down.to.unit)
            done.offcuts.append(
                LengthOnHand(profile=stick.profile, length=PositiveLength(length, text), stick=name)
            )
    return done


def _cut(piece: StickPiece, mark: str) -> PieceDone:
    return PieceDone(opening=mark, piece=piece.piece, instance=piece.instance, state=Done.CUT)


def refuse_claimed(data: CutSticks, rows: Mapping[str, StickRow], cut: Collection[str]) -> tuple[str, ...]:
    """Refuse sticks that somebody else is about to cut; what is to be said of claims that were over.

    Raises:
        StickClaimed: with every one.
    """
    held, notes = [], []
    for index, name in enumerate(data.sticks):
        claim = claim_of(rows[name]) if name in rows and name not in cut else None
        if claim is None:
            continue
        if claim.holds_off(data.by):
            said = f"{claim.by!r} has claimed {name} until {claim.until}."
            held.append(Fault.at(("sticks", index), "claimed", said))
        elif (note := claim.note(name, data.by)) is not None:
            notes.append(note)
    if held:
        raise StickClaimed(f"{held[0].detail} Nothing was recorded.", held)
    return (*notes, *(f"{name} was recorded before." for name in data.sticks if name in cut))


def never_had(names: Sequence[str]) -> str:
    """What is told of names that no stick ever had."""
    return f"The schedule never had a stick called {', '.join(names[:_MOST_TOLD])}."


def otherwise_by_now(name: str, was: NamedStick, plan: KeptPlan, marks: Mapping[str, str]) -> str:
    """What a stick was that the plan has no more, and where its pieces are today."""
    slots = {piece.slot for piece in was.pieces}
    now = [
        f"{other}: {_pieces(stick.pieces, marks)}"
        for other, stick in plan.sticks.items()
        if any(piece.slot in slots for piece in stick.pieces)
    ]
    today = "; ".join(now[:_MOST_TOLD]) if now else "none of them is left to cut"
    return f"{name} was {_pieces(was.pieces, marks)}. Today these pieces are on {today}."


def _pieces(pieces: Sequence[StickPiece], marks: Mapping[str, str]) -> str:
    told = [
        f"{marks.get(piece.opening_id, 'an opening that is gone')} {piece.piece} {spoken(piece.placed.length)}"
        for piece in pieces[:_MOST_TOLD]
    ]
    more = len(pieces) - len(told)
    return ", ".join(told) + (f" and {more} more" if more else "")
