"""Sticks cut just as they were planned, as the work they are."""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence

import msgspec

from longpoint.api.http.problems import NotFound
from longpoint.api.http.problems_stored import StickChanged, StickClaimed
from longpoint.lengths import Mode, PositiveLength, Rounding, round_to, tape
from longpoint.schedules.claims import Claimed, claim_of
from longpoint.schedules.house_rows import Left
from longpoint.schedules.lots import MOST_LENGTHS, LengthOnHand
from longpoint.schedules.making import KeptPlan
from longpoint.schedules.rows import StickRow
from longpoint.schedules.sent import CutSticks, PieceDone
from longpoint.schedules.states import Done
from longpoint.shop.named_sticks import NamedStick, Sited, StickPiece
from longpoint.texts import Sentence, say
from longpoint.values import Fault, Faults

_MOST_NAMED = 12


class SticksCut(msgspec.Struct, frozen=True):
    """What was done with sticks that were cut as planned.

    Attributes:
        pieces: Each with the name of the stick it came from.
        printed: The pieces of sticks that are laid out otherwise today and were cut as they were printed, likewise.
        offcuts: What they left that is long enough to keep.
        used: The lot of each length on hand that they were.
        again: Names of those that were recorded before.
        today: The name by which today's plan has a stick, by the earlier one that was sent.
        notes: What is to be known of them: names by which today's plan has the same stick.
    """

    pieces: list[tuple[PieceDone, str]]
    printed: list[tuple[StickPiece, str]]
    offcuts: list[LengthOnHand]
    used: list[str]
    again: list[str]
    today: Mapping[str, str]
    notes: list[Sentence]


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
            faults.add(("sticks", index), "given-twice", say("problem", "stick.twice"))
    faults.raise_any()
    unknown = {
        name: Fault.at(("sticks", index), "unknown-stick", never_had([name]))
        for index, name in enumerate(data.sticks)
        if name not in plan.sticks and name not in elsewhere and name not in left.cut
    }
    if unknown:
        raise NotFound(never_had(tuple(unknown)), tuple(unknown.values()))
    today = {
        name: same
        for name in data.sticks
        if name in elsewhere and name not in left.cut and (same := _same(elsewhere[name], plan, left))
    }
    changed = [
        Fault.at(("sticks", index), "stick-changed", otherwise_by_now(name, elsewhere[name], plan, marks))
        for index, name in enumerate(data.sticks)
        if name in elsewhere and name not in left.cut and name not in today
    ]
    if changed and not data.as_printed:
        raise StickChanged(
            say("problem", "stick.changed-all"),
            changed,
        )
    return _work(data, sited, plan, left, elsewhere, today)


def _same(was: NamedStick, plan: KeptPlan, left: Left) -> str | None:
    """The name by which today's plan has a stick just like it; None where it has none."""
    return next(
        (
            name
            for name, stick in plan.sticks.items()
            if name not in left.cut
            and (stick.profile, stick.length, stick.pieces) == (was.profile, was.length, was.pieces)
        ),
        None,
    )


def _work(
    data: CutSticks,
    sited: Sited,
    plan: KeptPlan,
    left: Left,
    elsewhere: Mapping[str, NamedStick],
    today: Mapping[str, str],
) -> SticksCut:
    down = Rounding(sited.house.rounding.to, Mode.DOWN)
    done = SticksCut([], [], [], [], [], today, [])
    places = sited.places
    marks = [one.built.opening.mark for one in left.openings]
    for named in dict.fromkeys(data.sticks):
        name = today.get(named, named)
        if name in left.cut:
            done.again.append(name)
            continue
        if name != named:
            if name in data.sticks:
                continue
            done.notes.append(say("note", "stick.same-by-now", stick=named, today=name))
        if name in plan.sticks:
            stick = plan.sticks[name]
            for piece in stick.pieces:
                done.pieces.append((_cut(piece, marks[places[piece.opening_id]]), name))
        else:
            stick = elsewhere[name]
            done.printed.extend((piece, name) for piece in stick.pieces)
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


def refuse_claimed(
    data: CutSticks, today: Mapping[str, str], rows: Mapping[str, StickRow], cut: Collection[str]
) -> tuple[Sentence, ...]:
    """Refuse sticks that somebody else is about to cut, by any of their names; what to say of claims that were over.

    Raises:
        StickClaimed: with every one.
    """
    held, notes = [], []
    names = [
        (index, name) for index, sent in enumerate(data.sticks) for name in {sent, today.get(sent, sent)}
    ]
    for index, name in names:
        claim = claim_of(rows[name]) if name in rows and name not in cut else None
        if claim is None:
            continue
        if claim.holds_off(data.by):
            held.append(Fault.at(("sticks", index), "claimed", claimed(claim, rows[name], data.by)))
        elif (note := claim.note(name, data.by)) is not None:
            notes.append(note)
    if held:
        raise StickClaimed(held[0].detail + say("hint", "stick.nothing-recorded"), held)
    return (
        *notes,
        *(say("note", "stick.recorded-before", stick=name) for name in data.sticks if name in cut),
    )


def claimed(claim: Claimed, row: StickRow, by: str | None) -> Sentence:
    """What is said of a stick that another has claimed, and to one whose own claim was over before that."""
    detail = say("problem", "stick.claimed", by=claim.by, stick=row.name, until=claim.until)
    if by is None or row.lost_by != by or row.lost_at is None:
        return detail
    return detail + say("hint", "claim.yours-was-over", until=row.lost_at)


def never_had(names: Sequence[str]) -> Sentence:
    """What is said of names that no stick ever had."""
    return say("problem", "stick.never-was", sticks=tuple(names[:_MOST_NAMED]))


def otherwise_by_now(name: str, was: NamedStick, plan: KeptPlan, marks: Mapping[str, str]) -> Sentence:
    """What a stick was that the plan has no more, and where its pieces are today."""
    slots = {piece.slot for piece in was.pieces}
    now = [
        say("problem", "stick.holds", stick=other, pieces=_pieces(stick.pieces, marks))
        for other, stick in plan.sticks.items()
        if any(piece.slot in slots for piece in stick.pieces)
    ]
    once = _pieces(was.pieces, marks)
    if not now:
        return say("problem", "stick.changed-and-gone", stick=name, pieces=once)
    return say("problem", "stick.changed", stick=name, pieces=once, sticks=tuple(now[:_MOST_NAMED]))


def _pieces(pieces: Sequence[StickPiece], marks: Mapping[str, str]) -> tuple[Sentence, ...]:
    gone = say("problem", "stick.opening-gone")
    named = tuple(
        say(
            "problem",
            "stick.piece",
            opening=marks.get(piece.opening_id, gone),
            piece=str(piece.piece),
            length=piece.placed.length,
        )
        for piece in pieces[:_MOST_NAMED]
    )
    more = len(pieces) - len(named)
    return (*named, say("problem", "stick.more-pieces", more=more)) if more else named
