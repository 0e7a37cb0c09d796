"""Lay a pattern's pieces in a row so that as many mitred ends share cuts as can."""

from collections.abc import Sequence
from itertools import combinations_with_replacement, pairwise, product

from .problem import Counts, Form, Problem

__all__ = ["in_a_row"]

Row = tuple[Form, ...]


def in_a_row(problem: Problem, counts: Counts, run: int) -> Row:
    """The shortest row of those items when all shared mitres have one run, or there is none."""
    wanted = [(problem.items[item].forms, count) for item, count in enumerate(counts) if count]
    choices = [combinations_with_replacement(_by_ends(forms, run), count) for forms, count in wanted]
    rows = (
        _joined([form for several in chosen for form in several], dict(_both_ways(wanted, run)), run)
        for chosen in product(*choices)
    )
    return min(rows, key=lambda row: _length(row, problem.kerf))


def _by_ends(forms: Sequence[Form], run: int) -> list[Form]:
    """For each number of mitred ends a form can show, the shortest such form."""
    best: dict[int, Form] = {}
    for form in forms:
        ends = (form.left > 0) + (form.right > 0) if run else 0
        if ends not in best or form.length < best[ends].length:
            best[ends] = form
    return list(best.values())


def _both_ways(wanted: Sequence[tuple[Sequence[Form], int]], run: int) -> list[tuple[tuple[int, bool], Form]]:
    """Forms with one mitred end, by item and whether that end is the left."""
    singles = [form for forms, _ in wanted for form in forms if run and bool(form.left) != bool(form.right)]
    return [((form.item, form.left > 0), form) for form in sorted(singles, key=lambda one: -one.length)]


def _joined(forms: Sequence[Form], single: dict[tuple[int, bool], Form], run: int) -> Row:
    """Pieces with one mitred end in pairs, mitre to mitre; those with two between the first pair."""
    singles = [form for form in forms if run and bool(form.left) != bool(form.right)]
    doubles = [form for form in forms if run and form.left and form.right]
    squares = [form for form in forms if not (run and (form.left or form.right))]
    facing = [single[form.item, place % 2 == 1] for place, form in enumerate(singles)]
    return (*facing[:1], *doubles, *facing[1:], *squares)


def _length(row: Row, kerf: int) -> int:
    length = sum(form.length for form in row) + kerf * (len(row) - 1)
    return length - sum(after.left for before, after in pairwise(row) if before.right == after.left)
