"""Requests made to take long: how much work each comes to is counted, and what would be too much is refused."""

import random
from fractions import Fraction
from time import perf_counter
from typing import Any

import pytest

from longpoint.stock import Budget, Defect, Job, Piece, StickKind, firstfit, plan
from longpoint.stock.forms import Blocks
from longpoint.stock.scaling import scale


def counted(monkeypatch: pytest.MonkeyPatch, owner: Any, name: str) -> list[int]:
    """Counts the calls of a function from now on."""
    calls, real = [0], getattr(owner, name)

    def call(*given: Any, **named: Any) -> Any:
        calls[0] += 1
        return real(*given, **named)

    monkeypatch.setattr(owner, name, call)
    return calls


def pieces(count: int, first: int = 60, run: Fraction = Fraction(0)) -> tuple[Piece, ...]:
    """So many pieces, each a sixteenth longer than the last."""
    return tuple(Piece(f"{n}:leg", first + Fraction(n, 16), 1, f"K{n}", run) for n in range(count))


class TestPlans:
    def test_runs_a_hair_apart_each_get_their_own_mark_in_one_pass(self) -> None:
        """Of 3,000 in one 64th each was compared with all before it: 23 seconds."""
        legs = tuple(Piece(f"{n}:leg", Fraction(40), 1, None, 5 + Fraction(n, 10**6)) for n in range(3000))
        began = perf_counter()
        problem = scale(Job("casing", legs, (StickKind("s", Fraction(192), 1000),), turnable=True))
        assert perf_counter() - began < 8, "it takes a fifth of a second"
        saved = sorted(kind.right for kind in problem.kinds)
        mark = int(Fraction(1, 64) / problem.unit)
        assert len(saved) == 3000
        assert all(run == 0 or run % mark == 0 for run in saved)
        above = [run for run in saved if run]
        assert len(set(above)) == len(above) == 5 * 64, "every mark from 5 in down is given once"

    def test_a_piece_is_only_tried_where_a_clear_stretch_holds_it(
        self, monkeypatch: pytest.MonkeyPatch
    ) -> None:
        """With room told by the whole stick, defects and all, every stick tried every piece: 19 seconds."""
        tried = counted(monkeypatch, firstfit, "_soonest")
        behind = Defect(Fraction(200), Fraction(5000))
        stick = StickKind("s", Fraction(5000), 1000, None, (behind,))
        found = plan(Job("casing", pieces(1000), (stick,)), Budget(0))
        assert sum(layout.times * len(layout.placed) for layout in found.layouts) == 1000
        assert tried[0] <= 2 * 1000, "twice, since remnants are taken first and last"

    def test_a_place_in_vain_is_looked_for_so_often_only(self, monkeypatch: pytest.MonkeyPatch) -> None:
        """A shared cut may save a run; that it never does is only seen by trying."""
        monkeypatch.setattr(firstfit, "MOST_VAIN", 500)
        tried = counted(monkeypatch, firstfit, "_soonest")
        sides = tuple(
            Piece(f"{n}:side", 60 + Fraction(n, 16), 1, None, Fraction(20 + n, 64), Fraction(20))
            for n in range(300)
        )
        stick = StickKind("s", Fraction(110), 1000)
        found = plan(Job("casing", sides, (stick,), turnable=True), Budget(0))
        assert sum(layout.times * len(layout.placed) for layout in found.layouts) == 300
        assert tried[0] <= 2 * (300 + 500)

    def test_sticks_are_exchanged_so_often_only(self, monkeypatch: pytest.MonkeyPatch) -> None:
        """Every stick was tried on every cheaper one: 1,500 openings and 250 kinds of stick took 21 seconds."""
        monkeypatch.setattr(firstfit, "MOST_EXCHANGED", 400)
        tried = counted(monkeypatch, firstfit.Problem, "places")
        middle = Defect(Fraction(50), Fraction(60))
        sticks = (
            StickKind("whole", Fraction(200), 9000),
            *(StickKind(f"s{n}", Fraction(110), 10 + n, None, (middle,)) for n in range(49)),
        )
        found = plan(Job("casing", pieces(450), sticks), Budget(0))
        assert sum(layout.times * len(layout.placed) for layout in found.layouts) == 450
        assert tried[0] <= 400 + 1 + len(found.layouts), "and each layout's places once"

    def test_a_used_up_stick_is_not_tried(self, monkeypatch: pytest.MonkeyPatch) -> None:
        tried = counted(monkeypatch, firstfit.Problem, "places")
        sticks = (
            StickKind("whole", Fraction(200), 9000),
            *(StickKind(f"s{n}", Fraction(200), 9000 - 10 * n, 0 if n % 2 else 1) for n in range(1, 40)),
        )
        problem = scale(Job("casing", pieces(100), sticks))
        cuts, _ = firstfit.first_fit(problem)
        assert cuts is not None
        tried[0] = 0
        firstfit.trimmed(problem, cuts)
        assert tried[0] <= len(cuts), "those that are left are no cheaper and the cheaper are used"

    def test_first_fits_end_when_they_were_much_work(self, monkeypatch: pytest.MonkeyPatch) -> None:
        monkeypatch.setattr(firstfit, "MOST_TRIED", 1000)
        runs = counted(monkeypatch, firstfit, "_run")
        sticks = tuple(StickKind(f"s{n}", Fraction(200 + n), 9000 + n) for n in range(50))
        plan(Job("casing", pieces(300), sticks), Budget(0))
        assert runs[0] == 1, "300 pieces by 50 kinds is more than that already"

    def test_rows_of_an_opening_are_joined_so_often_only(self) -> None:
        """An opening of eleven sides, no two mitres alike, has 2,048 sets of them: 20 such took 13 seconds."""
        rnd = random.Random(4)
        sides = tuple(
            Piece(
                f"{opening}:{n}",
                Fraction(rnd.randrange(2000, 4000), 64),
                1,
                f"K{opening}",
                Fraction(rnd.randrange(1, 10**6), 10**6),
                Fraction(rnd.randrange(1, 10**6), 10**6),
            )
            for opening in range(8)
            for n in range(11)
        )
        stick = StickKind("s", Fraction(12000), 9000)
        problem = scale(Job("casing", sides, (stick,), turnable=True, together=True))
        assert len(problem.items) == 8
        forms = sorted(len(item.forms) for item in problem.items)
        assert forms[0] == 1, "the last of them are laid longest first"
        assert forms[-1] > 1, "the first are laid the best way"

    def test_a_row_is_made_once(self) -> None:
        problem = scale(
            Job("c", pieces(4, run=Fraction(5, 2)), (StickKind("s", Fraction(192), 1),), turnable=True)
        )
        blocks = Blocks(problem.kinds, problem.kerf)
        parts = ((0, 1), (1, 2))
        assert blocks.forms(parts) is blocks.forms(parts)
