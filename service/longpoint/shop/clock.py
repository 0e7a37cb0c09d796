"""What an order of steps takes by the clock, by the shop's rates at the saw."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from longpoint.lengths import Fraction
from longpoint.shop.operations import OperationKind, OrderKind, OrderSum, Setting, Tool
from longpoint.shop.quantity import Quantity
from longpoint.shop.rates import Rates
from longpoint.shop.saw import DETENTS, Saw
from longpoint.shop.saw_settings import SQUARE
from longpoint.shop.saw_step import SawStep, Work

CUTTING = (
    *("pick_up_seconds", "carry_seconds", "mark_seconds"),
    *("cut_seconds", "short_cut_seconds", "notch_seconds", "label_seconds"),
)
SETTING = ("detent_seconds", "angle_seconds", "bevel_seconds", "stop_seconds", "fence_seconds")
"""The rates that the minutes of cutting, and of setting the saws, follow from."""


class Clock:
    """Reckons by a shop's rates, each fetched once."""

    def __init__(self, rates: Rates, saw: Saw) -> None:
        self._rate = {name: rates[name] for name in (*CUTTING, *SETTING)}
        self._detents = frozenset(DETENTS if saw.detents is None else saw.detents)

    def sum(self, order: OrderKind, steps: Sequence[SawStep]) -> OrderSum:
        """What an order comes to."""
        rate = self._rate
        whole = setting = Fraction(0)
        pick_ups = settings = 0
        in_hand: tuple[Work, Tool] | None = None
        now: dict[Tool, Setting] = {}
        for step in steps:
            tool = step.setting.tool
            if (step.work, tool) != in_hand:
                in_hand = step.work, tool
                whole += rate["carry_seconds" if step.on_piece else "pick_up_seconds"]
                pick_ups += not step.on_piece
            if now.get(tool) != step.setting:
                settings += tool is not Tool.HAND_SAW
                setting += self.to_set(now.get(tool), step.setting)
                now[tool] = step.setting
            if step.mark is not None:
                whole += rate["mark_seconds"]
            whole += rate[_cut(step)]
        pieces = {piece.name for step in steps for piece in step.pieces}
        whole += setting + len(pieces) * rate["label_seconds"]
        return OrderSum(
            order,
            Quantity(whole / 60),
            Quantity(setting / 60),
            len(steps),
            pick_ups,
            settings,
            open_at_once(steps),
        )

    def at_the_saw(self, steps: Iterable[SawStep], now: Setting) -> Fraction:
        """Seconds to set the miter saw, to mark and to cut, from how it is set."""
        seconds = Fraction(0)
        for step in steps:
            seconds += self.to_set(now, step.setting) + self._rate[_cut(step)]
            if step.mark is not None:
                seconds += self._rate["mark_seconds"]
            now = step.setting
        return seconds

    def to_set(self, before: Setting | None, after: Setting) -> Fraction:
        """Seconds to set a tool anew."""
        if after.tool is Tool.HAND_SAW:
            return Fraction(0)
        if after.tool is Tool.TABLE_SAW:
            return self._rate["fence_seconds"]
        before = before or SQUARE
        seconds = Fraction(0)
        if (before.miter_direction, before.miter) != (after.miter_direction, after.miter):
            on_detent = after.miter in self._detents
            seconds += self._rate["detent_seconds" if on_detent else "angle_seconds"]
        if (before.bevel_direction, before.bevel) != (after.bevel_direction, after.bevel):
            seconds += self._rate["bevel_seconds"]
        if after.stop is not None and after.stop != before.stop:
            seconds += self._rate["stop_seconds"]
        return seconds


def _cut(step: SawStep) -> str:
    if step.kind is OperationKind.NOTCH:
        return "notch_seconds"
    return "short_cut_seconds" if step.careful else "cut_seconds"


def open_at_once(steps: Iterable[SawStep]) -> int:
    """The most openings that are begun and not finished after any one cut."""
    last: dict[tuple[str, int], int] = {}
    first: dict[tuple[str, int], int] = {}
    for number, step in enumerate(steps):
        if step.kind is OperationKind.RIP_STICK:
            continue
        for piece in step.pieces:
            opening = piece.name.opening, piece.name.instance
            first.setdefault(opening, number)
            last[opening] = number
    changes = sorted([(at, 1) for at in first.values()] + [(at + 1, -1) for at in last.values()])
    most = now = 0
    for _, change in changes:
        now += change
        most = max(most, now)
    return most
