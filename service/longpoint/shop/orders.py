"""Three orders to cut a house in, each a sequence of steps that can be sawn."""

from __future__ import annotations

from collections import deque
from collections.abc import Iterable, Iterator, Sequence
from itertools import groupby, zip_longest

from msgspec.structs import replace

from longpoint.geometry import Hand
from longpoint.lengths import Fraction, Real
from longpoint.shop.operations import MarkFrom, OperationKind, Setting, Tool
from longpoint.shop.rates import Rates
from longpoint.shop.saw_settings import SQUARE
from longpoint.shop.saw_step import SawStep, Work
from longpoint.shop.steps import Bench, Rest
from longpoint.shop.sticks import Blank, StickSection, WorkStick

Steps = list[SawStep]
Row = tuple[WorkStick, StickSection, Blank]
ZERO = Fraction(0)


def stick_by_stick(sticks: Sequence[WorkStick], bench: Bench) -> Steps:
    """Each stick picked up, cut up from its free end and finished, with whatever its pieces still need."""
    steps: Steps = []
    for stick in finishing_early(sticks):
        work: Work = (stick.profile, stick.name)
        steps += bench.rip_stick(stick, work)
        rest = Rest(work, ZERO)
        for section in stick.sections:
            rest.waste = section.waste
            for blank in section.blanks:
                steps += bench.along(stick, section, blank, rest)
        steps += _afterwards(
            [(stick, section, blank) for section in stick.sections for blank in section.blanks], bench
        )
    return steps


def opening_by_opening(sticks: Sequence[WorkStick], openings: Iterable[str], bench: Bench) -> Steps:
    """Each opening's pieces finished before the next one's are begun, from whatever sticks they come."""
    shares: dict[str, list[Row]] = {mark: [] for mark in openings}
    for row in _rows(sticks):
        _, section, blank = row
        # What must keep its order along the stick is cut at once.
        whose = section.blanks[0] if section.tight else blank
        shares[whose.pieces[0].name.opening].append(row)
    steps: Steps = []
    rests: dict[Work, Rest] = {}
    for share in shares.values():
        for stick, section, blank in share:
            if piece(stick, section) not in rests:
                steps += bench.rip_stick(stick, (stick.profile, stick.name))
                steps += _apart(stick, bench)
                rests |= _rests(stick)
            steps += bench.along(stick, section, blank, rests[piece(stick, section)])
        steps += _afterwards(share, bench)
    return steps


def setting_by_setting(sticks: Sequence[WorkStick], bench: Bench) -> Steps:
    """All cuts of one setting together, as far as none waits for another.

    Short pieces and rows of shared cuts are cut at the free ends of the sticks, a cut of every stick at a time; the
    others are cut off square, then mitered.
    """
    rests = {name: rest for stick in sticks for name, rest in _rests(stick).items()}
    first: list[Steps] = []
    square: list[tuple[WorkStick, Blank, Rest]] = []
    for stick in sticks:
        for section in stick.sections:
            rest = rests[piece(stick, section)]
            steps: Steps = []
            others: list[Blank] = []
            for blank in section.blanks:
                if _at_free_end(blank, section, bench):
                    steps += bench.along(stick, section, blank, rest)
                else:
                    others.append(blank)
            if others:
                steps += bench.squared(stick, section, others[0], rest)
            first.append(steps)
            square += [(stick, blank, rest) for blank in others]
    cut_square = {blank.pieces[0].name for _, blank, _ in square}
    rows = list(_rows(sticks))
    return in_order(
        (
            [step for stick in sticks for step in bench.rip_stick(stick, (stick.profile, stick.name))],
            [step for stick in sticks for step in _apart(stick, bench)],
            *([step for step in together if step] for together in zip_longest(*first)),
            [bench.crosscut(stick, blank, rest) for stick, blank, rest in square],
            *_later(rows, bench, cut_square),
        )
    )


def _at_free_end(blank: Blank, section: StickSection, bench: Bench) -> bool:
    """Whether a blank is cut while it is part of the stick, since it is short, or a row, or in a section of short ones
    that leaves no room for another order."""
    if len(blank.pieces) > 1 or bench.is_short(blank):
        return True
    return section.tight and any(len(one.pieces) > 1 or bench.is_short(one) for one in section.blanks)


def piece(stick: WorkStick, section: StickSection) -> Work:
    """The name of a part of a stick that was cut apart."""
    return stick.profile, stick.name, section.place


def _rows(sticks: Sequence[WorkStick]) -> Iterator[Row]:
    return (
        (stick, section, blank) for stick in sticks for section in stick.sections for blank in section.blanks
    )


def _rests(stick: WorkStick) -> dict[Work, Rest]:
    """Its pieces, cut apart where they begin."""
    return {
        piece(stick, section): Rest(piece(stick, section), ZERO if section.place else section.waste)
        for section in stick.sections
    }


def _apart(stick: WorkStick, bench: Bench) -> Iterator[SawStep]:
    """A stick with defects cut apart, from its right end."""
    for section in reversed(stick.sections[1:]):
        yield bench.divided(stick, section, (stick.profile, stick.name))


def _afterwards(rows: Sequence[Row], bench: Bench) -> Steps:
    return in_order(_later(rows, bench, frozenset()))


def _later(rows: Sequence[Row], bench: Bench, cut_square: Iterable[object]) -> Iterator[Steps]:
    """What is done to pieces once they are cut off: mitered, ripped, notched, then mitered as far as the notch. Those
    whose miters are for the width they are ripped to are ripped first."""
    whole = set(cut_square)
    every = [(stick, piece) for stick, _, blank in rows for piece in blank.pieces]
    yield [step for one in every if bench.ripped_first(*one) for step in bench.rips(*one)]
    yield [
        step
        for stick, section, blank in rows
        for step in bench.angled_later(stick, section, blank, blank.pieces[0].name in whole)
    ]
    yield [step for one in every if not bench.ripped_first(*one) for step in bench.rips(*one)]
    yield [step for stick, _, blank in rows for piece in blank.pieces for step in bench.notches(stick, piece)]
    yield [step for stick, _, blank in rows for step in bench.returned_ends(stick, blank)]


def in_order(phases: Iterable[Steps]) -> Steps:
    """Steps of one setting together, each phase beginning with the setting its tool already has."""
    ordered: Steps = []
    now: dict[Tool, Setting] = {}
    for phase in phases:
        groups: dict[tuple[Setting, Fraction], Steps] = {}
        for step in phase:
            alike = step.length if step.kind is OperationKind.CUT_OFF else ZERO
            groups.setdefault((step.setting, alike), []).append(step)
        for setting, alike in sorted(
            groups, key=lambda each: (now.get(each[0].tool) != each[0], *_turned(each[0]), -each[1])
        ):
            ordered += sorted(
                groups[setting, alike], key=lambda step: (step.profile, len(step.stick), step.stick)
            )
            now[setting.tool] = setting
    return ordered


def _turned(setting: Setting) -> tuple[Real, ...]:
    """Blade and table from left to right by degrees, then the widest rip first."""
    return (
        -setting.bevel if setting.bevel_direction is Hand.LEFT else setting.bevel,
        -setting.miter if setting.miter_direction is Hand.LEFT else setting.miter,
        -(setting.fence or ZERO),
        *(setting.taper or (ZERO, ZERO)),
        setting.notch_depth or ZERO,
        setting.notch_length or ZERO,
    )


def with_stops(steps: Steps, rates: Rates) -> Steps:
    """The same, with a stop block where so many pieces of one length are cut off square one after the other that
    setting it takes less time than marking each. A piece too short to hold is never cut against one."""
    found: Steps = []
    for key, run in groupby(steps, key=_against_a_stop):
        alike = list(run)
        if key is not None and len(alike) * rates["mark_seconds"] > rates["stop_seconds"]:
            stop = replace(SQUARE, stop=alike[0].length)
            alike = [replace(step, setting=stop, mark=None, mark_from=None) for step in alike]
        found += alike
    return found


def _against_a_stop(step: SawStep) -> Fraction | None:
    fits = step.kind is OperationKind.CUT_OFF and step.mark_from is MarkFrom.SQUARE_END and not step.careful
    return step.length if fits else None


def finishing_early(sticks: Sequence[WorkStick]) -> Iterator[WorkStick]:
    """Sticks so that few openings are begun at once: next comes a stick of the opening begun longest ago and not
    finished; of several, that which begins fewest others."""
    holds = [list(dict.fromkeys(_opening(piece) for piece in stick.pieces)) for stick in sticks]
    waiting: dict[object, dict[int, None]] = {}
    for number, openings in enumerate(holds):
        for opening in openings:
            waiting.setdefault(opening, {})[number] = None
    begun: dict[object, None] = {}
    unseen = deque(waiting)
    while unseen:
        oldest = next((opening for opening in begun if waiting[opening]), unseen[0])
        if not waiting[oldest]:
            unseen.popleft()
            continue
        number = min(waiting[oldest], key=lambda one: (sum(o not in begun for o in holds[one]), one))
        for opening in holds[number]:
            del waiting[opening][number]
            if waiting[opening]:
                begun[opening] = None
            else:
                begun.pop(opening, None)
        yield sticks[number]


def _opening(piece: object) -> tuple[str, int]:
    name = piece.name  # type: ignore[attr-defined]
    return name.opening, name.instance
