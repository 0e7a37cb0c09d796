"""Puts steps in the order that sets each tool least.

Work goes in phases, since a step may need an earlier one. Within a phase steps are free, so those of one setting
are made together: the phase then takes no more setups than it has settings.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from itertools import zip_longest

from msgspec.structs import replace

from longpoint.geometry import Hand
from longpoint.lengths import Fraction, Real, Rounding
from longpoint.shop.operations import Setting, Tool
from longpoint.shop.saw import Saw
from longpoint.shop.steps import (
    Step,
    angled_ends,
    crosscut,
    is_short,
    notches,
    part_offs,
    piece_rips,
    shared_cuts,
    squarings,
    stick_rip,
)
from longpoint.shop.sticks import Blank, Section, WorkStick

Sequence = list[Step]
NONE = Fraction(0)


def arrange(sticks: list[WorkStick], rounding: Rounding, saw: Saw) -> Sequence:
    """Every step of these sticks: squared, ripped, short pieces off, the rest cut square, angled, notched."""
    return in_order(phases(sticks, rounding, saw))


def phases(sticks: list[WorkStick], rounding: Rounding, saw: Saw) -> Iterator[Sequence]:
    """The phases, first to last."""
    every = [
        (blank, stick, section) for stick in sticks for section in stick.sections for blank in section.blanks
    ]
    long = [(blank, section) for blank, _, section in every if not is_short(blank, saw)]
    pieces = [(piece, stick, section) for blank, stick, section in every for piece in blank.pieces]
    fresh = [stick for stick in sticks if not stick.begun]
    yield [step for stick in fresh for step in squarings(stick)]
    yield [step for stick in fresh for step in stick_rip(stick)]
    yield from _short_rounds([section for stick in sticks for section in stick.sections], saw)
    yield [crosscut(blank, section) for blank, section in long]
    yield [step for blank, section in long for step in shared_cuts(blank, section, rounding, saw)]
    yield [step for blank, _, section in every for step in angled_ends(blank, section, saw)]
    yield [
        step for piece, stick, section in pieces if stick.rip is None for step in piece_rips(piece, section)
    ]
    yield [step for piece, _, section in pieces for step in notches(piece, section, rounding)]


def _short_rounds(sections: Iterable[Section], saw: Saw) -> Iterator[Sequence]:
    """Short pieces, one from each free end of each stick at a time: its angled end, then its square cut."""
    square: Sequence = []
    waiting: dict[tuple[tuple[str, int, int], Hand], list[tuple[Step, Step]]] = {}
    for section in sections:
        for blank in section.blanks:
            if is_short(blank, saw):
                first, parting = part_offs(blank, section, saw)
                if first is None or first.end is None:
                    square.append(parting)
                else:
                    waiting.setdefault((section.name, first.end.on_saw), []).append((first, parting))
    yield square
    for taken in zip_longest(*waiting.values()):
        yield [pair[0] for pair in taken if pair]
        yield [pair[1] for pair in taken if pair]


def in_order(phases: Iterable[Sequence]) -> Sequence:
    """Steps of one setting together, each phase beginning with the setting its tool already has."""
    ordered: Sequence = []
    now: dict[Tool, Setting] = {}
    for phase in phases:
        groups: dict[Setting, Sequence] = {}
        for step in phase:
            groups.setdefault(step.setting, []).append(step)
        first_profile = _first_profiles(groups)
        for setting in sorted(
            groups, key=lambda each: (now.get(each.tool) != each, first_profile[each], *_turned(each))
        ):
            ordered.extend(sorted(groups[setting], key=lambda step: (step.profile, step.stick)))
            now[setting.tool] = setting
    return ordered


def _first_profiles(groups: dict[Setting, Sequence]) -> dict[Setting, str]:
    """Keeps a profile's settings together, since handling one profile at a time saves walking."""
    return {
        setting: "" if setting.stop is None else min(step.profile for step in steps)
        for setting, steps in groups.items()
    }


def _turned(setting: Setting) -> tuple[Real, ...]:
    """Blade and table from left to right by degrees, then the longest stop and the widest rip first."""
    return (
        -setting.bevel if setting.tilt is Hand.LEFT else setting.bevel,
        -setting.mitre if setting.swing is Hand.LEFT else setting.mitre,
        -(setting.stop or setting.fence or NONE),
        *(setting.taper or (NONE, NONE)),
        setting.notch_depth or NONE,
        setting.notch_length or NONE,
    )


def setups(steps: Iterable[Step], now: dict[Tool, Setting] | None = None) -> int:
    """How many times a tool is set, from what it was set to before; `now` is kept up to date."""
    now = {} if now is None else now
    count = 0
    for step in steps:
        if now.get(step.setting.tool) != step.setting:
            now[step.setting.tool] = step.setting
            count += 1
    return count


def opening_by_opening(
    sticks: list[WorkStick], openings: Iterable[str], rounding: Rounding, saw: Saw
) -> Iterator[Sequence]:
    """The same steps as they come when each opening, in this order, is finished before the next is begun."""
    shares: dict[str, dict[int, dict[int, list[Blank]]]] = {mark: {} for mark in openings}
    for number, stick in enumerate(sticks):
        for section in stick.sections:
            for blank in section.blanks:
                theirs = shares[blank.pieces[0].name.opening].setdefault(number, {})
                theirs.setdefault(section.place, []).append(blank)
    begun: set[int] = set()
    for share in shares.values():
        yield arrange(
            [_partly(sticks[number], blanks, number in begun) for number, blanks in share.items()],
            rounding,
            saw,
        )
        begun.update(share)


def _partly(stick: WorkStick, blanks: dict[int, list[Blank]], begun: bool) -> WorkStick:
    """A stick with only these blanks, by the place of their section."""
    sections = tuple(
        replace(section, blanks=tuple(blanks[section.place]))
        for section in stick.sections
        if section.place in blanks
    )
    return replace(stick, sections=sections, begun=begun)
