"""Hands-on time by operation, and the drying waits apart from it."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from longpoint.lengths import Fraction
from longpoint.shop.amounts import Amounts
from longpoint.shop.rates import Rates
from longpoint.shop.takeoff import Hours, Labour, Share, Task, Wait

FEET = Fraction(1, 12)
SQUARE_FEET = Fraction(1, 144)


def hours(amounts: Sequence[Amounts], setups: int, rates: Rates) -> Hours:
    """The hours of a job.

    Args:
        amounts: of each opening.
        setups: how many times a saw is set, shared among openings by their cuts.
    """
    benched = rates["primer_coats"] + max(Fraction(0), rates["paint_coats"] - 1)
    last = min(Fraction(1), rates["paint_coats"])
    cuts = sum(one.cuts for one in amounts)
    each_cut = Fraction(setups, cuts) if cuts else Fraction(0)

    def labour(
        operation: Task, unit: str, quantity: Callable[[Amounts], Fraction], rate: str, rule: str, *more: str
    ) -> Labour:
        found = [(one.opening, quantity(one)) for one in amounts]
        minutes = [Share(opening, amount * rates[rate]) for opening, amount in found]
        return Labour(
            operation,
            sum((amount for _, amount in found), Fraction(0)),
            unit,
            sum((Fraction(share.quantity) for share in minutes), Fraction(0)),
            rule,
            (rate, *more),
            tuple(minutes),
        )

    all_of_it = (
        labour(Task.MEASURE, "opening", lambda one: Fraction(one.count), "measure_minutes", "openings"),
        labour(
            Task.PAINT,
            "ft2",
            lambda one: (one.faces * benched + one.backs * rates["painted_backs"]) * SQUARE_FEET,
            "paint_minutes",
            "faces and edges x every coat but the last, bundled on the bench",
            "primer_coats",
            "paint_coats",
            "painted_backs",
            "profile_girth",
        ),
        labour(Task.RIP, "ft", lambda one: one.ripped * FEET, "rip_minutes", "lengths ripped"),
        labour(Task.ROUT, "ft", lambda one: one.routed * FEET, "rout_minutes", "lengths of stools"),
        labour(
            Task.CUT,
            "cut",
            lambda one: Fraction(one.cuts),
            "cut_minutes",
            "one to length, one for each angled end, two for each notch",
        ),
        labour(
            Task.SET_UP,
            "setup",
            lambda one: one.cuts * each_cut,
            "setup_minutes",
            "setups of the saw order, shared by cuts",
        ),
        labour(Task.FIT, "piece", lambda one: Fraction(one.pieces), "fit_minutes", "pieces"),
        labour(Task.NAIL, "nail", lambda one: Fraction(one.nails), "nail_minutes", "nails, waste apart"),
        labour(Task.FILL, "hole", lambda one: Fraction(one.nails), "fill_minutes", "nail holes"),
        labour(
            Task.CAULK, "ft", lambda one: one.caulked * FEET, "caulk_minutes", "joints with wall and jamb"
        ),
        labour(
            Task.FINAL_COAT,
            "ft2",
            lambda one: one.faces * last * SQUARE_FEET,
            "final_coat_minutes",
            "faces and edges, one coat",
            "paint_coats",
            "profile_girth",
        ),
    )
    operations = tuple(each for each in all_of_it if each.minutes > 0)
    waits = _waits(amounts, rates)
    used = {name for each in operations for name in each.rates} | {wait.rate for wait in waits}
    return Hours(
        operations=operations,
        minutes=sum((each.minutes for each in operations), Fraction(0)),
        waits=waits,
        wait_hours=sum((wait.hours for wait in waits), Fraction(0)),
        rates=rates.used(used),
    )


def _waits(amounts: Sequence[Amounts], rates: Rates) -> tuple[Wait, ...]:
    """One wait for the whole job each, since all of it dries together."""
    nails = any(one.nails for one in amounts)
    caulked = any(one.caulked for one in amounts)
    found = [
        *(
            Wait(f"primer, coat {n}", rates["primer_wait"], "primer_wait")
            for n in _coats(rates["primer_coats"])
        ),
        *([Wait("filler", rates["filler_wait"], "filler_wait")] if nails else []),
        *([Wait("caulk", rates["caulk_wait"], "caulk_wait")] if caulked else []),
        *(Wait(f"paint, coat {n}", rates["paint_wait"], "paint_wait") for n in _coats(rates["paint_coats"])),
    ]
    return tuple(wait for wait in found if wait.hours > 0)


def _coats(coats: Fraction) -> range:
    return range(1, int(coats) + 1)
