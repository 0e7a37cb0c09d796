"""First-fit decreasing: quick, usually a few percent dear, and the plan to fall back on."""

from collections.abc import Sequence

from .problem import Form, Item, Pattern, Problem, Stock

__all__ = ["Cut", "first_fit", "trimmed"]

Cut = tuple[Pattern, int]  # a way to cut a stick, and how many sticks


def first_fit(problem: Problem) -> list[Cut] | None:
    """The cheapest of several first-fits, or None when none of them places every piece.

    Each leads with one kind of bought stick and passes to the others when it runs out, with remnants first or
    last; every stick is then exchanged for the cheapest that holds what is on it.
    """
    by_ratio = sorted(range(len(problem.stocks)), key=lambda index: (_ratio(problem.stocks[index]), index))
    remnants = [index for index in by_ratio if problem.stocks[index].remnant]
    bought = [index for index in by_ratio if not problem.stocks[index].remnant]
    leads = [[lead, *(index for index in bought if index != lead)] for lead in bought] or [[]]
    best: list[Cut] | None = None
    for lead in leads:
        for order in ([*remnants, *lead], [*lead, *remnants]):
            cuts = _run(problem, order)
            if cuts is not None:
                cuts = trimmed(problem, cuts)
                if best is None or cost(problem, cuts) < cost(problem, best):
                    best = cuts
    return best


def _ratio(stock: Stock) -> float:
    return stock.price / max(1, stock.clear)


def cost(problem: Problem, cuts: Sequence[Cut]) -> int:
    """Cents of all the sticks."""
    return sum(problem.stocks[pattern.stock].price * times for pattern, times in cuts)


def _run(problem: Problem, order: Sequence[int]) -> list[Cut] | None:
    remaining = [item.demand for item in problem.items]
    left = {index: problem.stocks[index].most for index in order}
    cuts: list[Cut] = []
    todo = sum(remaining)
    for index in order:
        while todo and left[index] != 0:
            forms = fill(problem, problem.stocks[index], remaining)
            if not forms:
                break
            counts = count(forms)
            times = min(remaining[item] // number for item, number in counts.items())
            if (most := left[index]) is not None:
                times = min(times, most)
                left[index] = most - times
            for item, number in counts.items():
                remaining[item] -= number * times
                todo -= number * times
            cuts.append((Pattern(index, forms), times))
    return None if todo else cuts


def count(forms: Sequence[Form]) -> dict[int, int]:
    """How many of each item."""
    counts: dict[int, int] = {}
    for form in forms:
        counts[form.item] = counts.get(form.item, 0) + 1
    return counts


def fill(problem: Problem, stock: Stock, remaining: Sequence[int]) -> tuple[Form, ...]:
    """The longest item that fits, again and again; what first-fit decreasing would put on this stick."""
    forms: list[Form] = []
    before: Form | None = None
    end = 0
    for item, wanted in zip(problem.items, remaining, strict=True):
        for _ in range(wanted):
            found = _soonest(problem, stock, before, end, item)
            if found is None:
                break
            end, before = found
            forms.append(before)
    return tuple(forms)


def _soonest(
    problem: Problem, stock: Stock, before: Form | None, end: int, item: Item
) -> tuple[int, Form] | None:
    best: tuple[int, Form] | None = None
    for form in item.forms:
        start = problem.start_after(stock, before, end, form)
        if start is not None and (best is None or start + form.length < best[0]):
            best = start + form.length, form
    return best


def trimmed(problem: Problem, cuts: Sequence[Cut]) -> list[Cut]:
    """Every stick exchanged for the cheapest one that holds the same pieces, as far as there are any."""
    used: dict[int, int] = {}
    for pattern, times in cuts:
        used[pattern.stock] = used.get(pattern.stock, 0) + times
    by_price = sorted(range(len(problem.stocks)), key=lambda index: (problem.stocks[index].price, index))
    done: list[Cut] = []
    for pattern, times in cuts:
        todo = times
        for index in by_price:
            if problem.stocks[index].price >= problem.stocks[pattern.stock].price or not todo:
                break
            other = Pattern(index, pattern.forms)
            if problem.places(other) is None:
                continue
            most = problem.stocks[index].most
            moved = todo if most is None else min(todo, most - used.get(index, 0))
            if moved:
                done.append((other, moved))
                used[index] = used.get(index, 0) + moved
                used[pattern.stock] -= moved
                todo -= moved
        if todo:
            done.append((pattern, todo))
    return done
