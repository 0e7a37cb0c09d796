"""From patterns to layouts a person can cut: places in inches, every piece by its name."""

from collections.abc import Iterator, Sequence
from dataclasses import replace
from itertools import islice

from longpoint.lengths import Fraction

from .firstfit import Cut
from .laid import Layout, Placed
from .model import Cutting
from .problem import Form, Pattern, ScaledCutting

__all__ = ["lay_out"]


def lay_out(cutting: Cutting, problem: ScaledCutting, cuts: Sequence[Cut]) -> tuple[Layout, ...]:
    """Name every piece and stick of the plan, like layouts together, longest pieces first."""
    names = _Names(cutting, problem)
    merged: dict[Pattern, int] = {}
    for pattern, times in cuts:
        merged[pattern] = merged.get(pattern, 0) + times
    order = sorted(merged, key=lambda one: ([-form.length for form in one.forms], one.stock))
    layouts: list[Layout] = []
    for pattern in order:
        layouts.extend(_layouts(cutting, problem, pattern, merged[pattern], names))
    return tuple(layouts)


class _Names:
    """Hands out the names of pieces, openings and lengths on hand, each once, in the cutting's order."""

    def __init__(self, cutting: Cutting, problem: ScaledCutting) -> None:
        self._stocks = [iter(stock.keys) for stock in problem.stocks]
        self._openings = [iter(item.openings) for item in problem.items]
        held = {name for item in problem.items for name in item.openings}
        self._loose: list[Iterator[tuple[str, bool]]] = []
        self._inside: list[dict[str, Iterator[tuple[str, bool]]]] = []
        for kind in problem.kinds:
            loose: list[tuple[str, int, bool]] = []
            inside: dict[str, list[tuple[str, int, bool]]] = {}
            for line, mirrored in kind.lines:
                piece = cutting.pieces[line]
                entry = piece.key, piece.quantity, mirrored
                if piece.opening in held and piece.opening is not None:
                    inside.setdefault(piece.opening, []).append(entry)
                else:
                    loose.append(entry)
            self._loose.append(_each(loose))
            self._inside.append({opening: _each(entries) for opening, entries in inside.items()})

    def lengths_on_hand(self, stock: int, times: int) -> tuple[str, ...]:
        """The next lengths on hand of that stock."""
        return tuple(islice(self._stocks[stock], times))

    def sticks(
        self, problem: ScaledCutting, pattern: Pattern, times: int
    ) -> Iterator[tuple[tuple[str, bool], ...]]:
        """Names for so many sticks, and whether each line has its ends the other way about."""
        if any(problem.items[form.item].openings for form in pattern.forms):
            return (
                tuple(pair for form in pattern.forms for pair in self.pieces(problem, form))
                for _ in range(times)
            )
        kinds = [piece.kind for form in pattern.forms for piece in form.pieces]
        sources = [
            self._loose[kind] for kind in kinds
        ]  # a kind twice is one source twice, and gives two names
        return islice(zip(*sources, strict=False), times)

    def pieces(self, problem: ScaledCutting, form: Form) -> Iterator[tuple[str, bool]]:
        """Names of the form's pieces, and whether each line has its ends the other way about."""
        openings = problem.items[form.item].openings
        opening = next(self._openings[form.item]) if openings else None
        for piece in form.pieces:
            source = self._loose[piece.kind] if opening is None else self._inside[piece.kind][opening]
            yield next(source)


def _each(entries: Sequence[tuple[str, int, bool]]) -> Iterator[tuple[str, bool]]:
    return ((key, mirrored) for key, quantity, mirrored in entries for _ in range(quantity))


def _layouts(
    cutting: Cutting, problem: ScaledCutting, pattern: Pattern, times: int, names: _Names
) -> Iterator[Layout]:
    """One layout; when lines differ in which end is which, or lengths on hand in name, as many as are needed."""
    stock = problem.stocks[pattern.stock]
    rows: dict[tuple[str, tuple[bool, ...]], list[tuple[str, ...]]] = {}
    sticks = names.lengths_on_hand(pattern.stock, times) if stock.on_hand else stock.keys * times
    for stick, named in zip(sticks, names.sticks(problem, pattern, times), strict=True):
        row = stick, tuple(mirrored for _, mirrored in named)
        rows.setdefault(row, []).append(tuple(key for key, _ in named))
    for (stick, mirrored), keys in rows.items():
        placed = _placed(problem, pattern, mirrored)
        offcut = max(Fraction(0), stock.length * problem.unit - placed[-1].end - placed[-1].eats)
        kept = cutting.keep_length is not None and offcut > 0 and offcut >= cutting.keep_length
        yield Layout(
            stick,
            stock.on_hand,
            stock.length * problem.unit,
            stock.price,
            placed,
            tuple(keys),
            offcut,
            kept,
        )


def _placed(problem: ScaledCutting, pattern: Pattern, mirrored: tuple[bool, ...]) -> tuple[Placed, ...]:
    starts = problem.places(pattern)
    assert starts is not None
    stock = problem.stocks[pattern.stock]
    unit = problem.unit
    placed: list[Placed] = []
    before: Form | None = None
    end = eats = 0
    turned = False
    for start, form in zip(starts, pattern.forms, strict=True):
        at = start
        for place, piece in enumerate(form.pieces):
            kind = problem.kinds[piece.kind]
            left = kind.right if piece.reversed else kind.left
            runs = kind.runs[::-1] if piece.reversed else kind.runs
            shares = piece.shares if place else problem.shares(before, end, start)
            if place:
                at = end + (problem.kerf - left if shares else eats)
            turned = shares and not turned
            eats = kind.cuts[0] if piece.reversed else kind.cuts[1]
            if (
                shares
            ):  # the piece before is cut off by this cut, and what it eats is between the two and the run
                placed[-1] = replace(placed[-1], eats=at * unit - placed[-1].end + runs[0])
            placed.append(
                Placed(
                    at * unit,
                    kind.length * unit,
                    *runs,
                    piece.reversed != mirrored[len(placed)],
                    turned,
                    shares,
                    eats * unit,
                )
            )
            end = at + kind.length
        before, end = form, start + form.length
    assert end <= stock.end
    return tuple(placed)
