"""Hands-on time by task, and the drying waits apart from it."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence

from longpoint.lengths import Fraction
from longpoint.shop.amounts import Amounts
from longpoint.shop.clock import CUTTING, SETTING
from longpoint.shop.operations import SawOrder
from longpoint.shop.quantity import Quantity
from longpoint.shop.rates import Rates
from longpoint.shop.takeoff import Hours, Labor, Share, Task, Wait

FEET = Fraction(1, 12)
SQUARE_FEET = Fraction(1, 144)
Names = tuple[str, ...]


def hours(amounts: Sequence[Amounts], order: SawOrder, rates: Rates) -> Hours:
    """The hours of a house.

    Args:
        amounts: of each opening.
        order: the cuts to make; its minutes are shared among openings by their cuts.
        rates: of the shop.
    """
    benched = rates["primer_coats"] + max(Fraction(0), rates["paint_coats"] - 1)
    last = min(Fraction(1), rates["paint_coats"])
    cuts = order.cuts_by_opening
    at_the_saw = order.sum

    def labor(
        task: Task, unit: str, quantity: Callable[[Amounts], Fraction], rate: str, rule: str, *more: str
    ) -> Labor:
        found = [(one.opening, quantity(one)) for one in amounts]
        minutes = [Share(opening, Quantity(amount * rates[rate])) for opening, amount in found]
        return Labor(
            task,
            _sum(amount for _, amount in found),
            unit,
            _sum(share.quantity for share in minutes),
            rule,
            (rate, *more),
            tuple(minutes),
        )

    def saw_work(task: Task, unit: str, quantity: int, minutes: Fraction, rates: Names, rule: str) -> Labor:
        """Work at the saw, shared by cuts."""
        share = {mark: theirs / order.cuts for mark, theirs in cuts.items()}
        return Labor(
            task,
            Quantity(quantity),
            unit,
            Quantity(minutes),
            rule,
            rates,
            tuple(Share(one.opening, Quantity(minutes * share.get(one.opening, 0))) for one in amounts),
        )

    all_of_it = (
        labor(Task.MEASURE, "opening", lambda one: Fraction(one.count), "measure_minutes", "openings"),
        labor(
            Task.PAINT,
            "ft2",
            lambda one: (one.painted * benched + one.backs * rates["painted_backs"]) * SQUARE_FEET,
            "paint_minutes",
            "faces and edges x every coat but the last, bundled on the bench",
            "primer_coats",
            "paint_coats",
            "painted_backs",
            "profile_girth",
        ),
        labor(
            Task.STAIN,
            "ft2",
            lambda one: one.stained * rates["stain_coats"] * SQUARE_FEET,
            "stain_minutes",
            "faces and edges x coats of stain, on the bench",
            "stain_coats",
            "profile_girth",
        ),
        labor(
            Task.CLEAR_FINISH,
            "ft2",
            lambda one: one.stained * rates["clear_coats"] * SQUARE_FEET,
            "clear_minutes",
            "faces and edges x coats of clear finish, on the bench",
            "clear_coats",
            "profile_girth",
        ),
        labor(Task.RIP, "ft", lambda one: one.ripped * FEET, "rip_minutes", "lengths ripped"),
        labor(Task.ROUT, "ft", lambda one: one.routed * FEET, "rout_minutes", "lengths of stools"),
        saw_work(
            Task.CUT,
            "cut",
            order.cuts,
            at_the_saw.minutes - at_the_saw.setting_minutes,
            CUTTING,
            "cuts of the saw order, with what is picked up, carried, marked and labeled for them",
        ),
        saw_work(
            Task.SET_UP,
            "setting",
            at_the_saw.settings,
            at_the_saw.setting_minutes,
            SETTING,
            "settings of the saw order, shared by cuts",
        ),
        labor(Task.INSTALL, "piece", lambda one: Fraction(one.pieces), "install_minutes", "pieces"),
        labor(Task.NAIL, "nail", lambda one: Fraction(one.nails), "nail_minutes", "nails, waste apart"),
        labor(Task.FILL, "hole", lambda one: Fraction(one.filled), "fill_minutes", "nail holes"),
        labor(Task.PUTTY, "hole", lambda one: Fraction(one.puttied), "putty_minutes", "nail holes"),
        labor(Task.CAULK, "ft", lambda one: one.caulked * FEET, "caulk_minutes", "joints with wall and jamb"),
        labor(
            Task.FINAL_COAT,
            "ft2",
            lambda one: one.painted * last * SQUARE_FEET,
            "final_coat_minutes",
            "faces and edges, one coat",
            "paint_coats",
            "profile_girth",
        ),
    )
    tasks = tuple(each for each in all_of_it if each.minutes > 0)
    waits = _waits(amounts, rates)
    used = {name for each in tasks for name in each.rates} | {wait.rate for wait in waits}
    return Hours(
        hands_on_hours=Quantity(_sum(each.minutes for each in tasks) / 60),
        tasks=tasks,
        wait_hours=_sum(wait.hours for wait in waits),
        waits=waits,
        rates=rates.used(used),
    )


def _sum(amounts: Iterable[Fraction]) -> Quantity:
    return Quantity(sum(amounts, Fraction(0)))


def _waits(amounts: Sequence[Amounts], rates: Rates) -> tuple[Wait, ...]:
    """One wait for the whole house each, since all of it dries together."""
    painted = any(one.painted for one in amounts)
    stained = any(one.stained for one in amounts)
    found: list[Wait] = []
    if stained:
        found += [_wait(f"stain, coat {n}", "stain_wait", rates) for n in _coats(rates["stain_coats"])]
        found += [_wait(f"clear finish, coat {n}", "clear_wait", rates) for n in _coats(rates["clear_coats"])]
    if painted:
        found += [_wait(f"primer, coat {n}", "primer_wait", rates) for n in _coats(rates["primer_coats"])]
    if any(one.filled for one in amounts):
        found.append(_wait("filler", "filler_wait", rates))
    if any(one.caulked for one in amounts):
        found.append(_wait("caulk", "caulk_wait", rates))
    if painted:
        found += [_wait(f"paint, coat {n}", "paint_wait", rates) for n in _coats(rates["paint_coats"])]
    return tuple(wait for wait in found if wait.hours > 0)


def _wait(after: str, rate: str, rates: Rates) -> Wait:
    return Wait(after, Quantity(rates[rate]), rate)


def _coats(coats: Fraction) -> range:
    return range(1, int(coats) + 1)
