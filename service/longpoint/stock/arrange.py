"""Lay a pattern's pieces in a row so that as many mitered ends share cuts as can."""

from collections.abc import Sequence
from itertools import combinations_with_replacement, pairwise, product

from .problem import Form, ScaledCutting

__all__ = ["in_a_row", "row_length"]

Row = tuple[Form, ...]


def in_a_row(problem: ScaledCutting, counts: Sequence[tuple[int, int]], run: int) -> Row:
    """The shortest row of so many of those items when all shared miters save one length, or there are none."""
    wanted = [(problem.items[item].forms, count) for item, count in counts]
    if not run:
        forms = [min(forms, key=lambda form: form.length + form.eats) for forms, _ in wanted]
        row = [form for form, (_, count) in zip(forms, wanted, strict=True) for _ in range(count)]
        return tuple(sorted(row, key=lambda form: form.eats))
    choices = [combinations_with_replacement(_by_ends(forms), count) for forms, count in wanted]
    single = _one_ended(wanted)
    rows = (_joined([form for several in chosen for form in several], single) for chosen in product(*choices))
    return min(rows, key=lambda row: row_length(row, problem.kerf))


def _by_ends(forms: Sequence[Form]) -> list[Form]:
    """For each number of mitered ends a form can show, the shortest such form."""
    best: dict[int, Form] = {}
    for form in forms:
        ends = (form.left > 0) + (form.right > 0)
        if ends not in best or (form.length, form.eats) < (best[ends].length, best[ends].eats):
            best[ends] = form
    return list(best.values())


def _one_ended(wanted: Sequence[tuple[Sequence[Form], int]]) -> dict[tuple[int, bool], Form]:
    """Forms with one mitered end, by item and whether that end is the left."""
    singles = [form for forms, _ in wanted for form in forms if bool(form.left) != bool(form.right)]
    return {(form.item, form.left > 0): form for form in sorted(singles, key=lambda one: -one.length)}


def _joined(forms: Sequence[Form], single: dict[tuple[int, bool], Form]) -> Row:
    """Square pieces, then those with one mitered end in pairs, miter to miter; those with two between a pair.

    The one mitered end that is left over where there is no pair comes last: its cut may lie past the stick's end.
    """
    singles = [form for form in forms if bool(form.left) != bool(form.right)]
    doubles = [form for form in forms if form.left and form.right]
    squares = sorted((form for form in forms if not (form.left or form.right)), key=lambda form: form.eats)
    odd = len(singles) % 2
    facing = [single[form.item, place % 2 == 1] for place, form in enumerate(singles[odd:])]
    if odd:
        return (*squares, *facing, single[singles[0].item, False], *doubles)
    return (*squares, *facing[:1], *doubles, *facing[1:])


def row_length(row: Row, kerf: int) -> int:
    """Units from the left end of a row to its right end."""
    length = sum(form.length for form in row)
    return length + sum(
        kerf - after.left if before.right and before.right == after.left else before.eats
        for before, after in pairwise(row)
    )
