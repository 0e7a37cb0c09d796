"""Houses made to be planned for long: how much work each comes to is counted, and what would be too much is refused."""

import random
from fractions import Fraction
from time import perf_counter

import httpx
import pytest

from amounts import asked, counted, fault_of
from calls import DOCUMENT
from longpoint.api.computed.cut_list_work import CutListWork
from longpoint.api.computed.request import CutListRequest
from longpoint.lengths import Unit, parse
from longpoint.shop.apportion import apportion
from longpoint.shop.build import CutList
from longpoint.shop.exact import exactly
from longpoint.shop.house import MOST_LENGTHS_ON_HAND
from longpoint.stock import Budget, Cutting, StickKind, Stretch, Wanted, firstfit, forms, plan
from longpoint.stock.forms import Blocks
from longpoint.stock.scaling import scale
from longpoint.values import converted
from stored import STOCK, TRIM, opening


def pieces(count: int, first: int = 60, run: Fraction = Fraction(0)) -> tuple[Wanted, ...]:
    """So many pieces, each a sixteenth longer than the last."""
    return tuple(Wanted(f"{n}:leg", first + Fraction(n, 16), 1, f"K{n}", run) for n in range(count))


class TestPlans:
    def test_runs_a_hair_apart_each_get_their_own_mark_in_one_pass(self) -> None:
        """Of 3,000 in one 64th each was compared with all before it: 23 seconds."""
        legs = tuple(Wanted(f"{n}:leg", Fraction(40), 2, None, 5 + Fraction(n, 10**6)) for n in range(3000))
        began = perf_counter()
        problem = scale(Cutting("casing", legs, (StickKind("s", Fraction(192), 1000),), turnable=True))
        assert perf_counter() - began < 8, "it takes a fifth of a second"
        saved = [kind.right * problem.unit for kind in problem.kinds]
        assert sorted(saved) == [leg.left for leg in legs], "each its own, and not a hair of it lost"

    def test_runs_that_no_other_is_like_share_with_none(self) -> None:
        """So that 3,000 of them are one house like any other, and not one with 3,000 kinds of shared cuts."""
        legs = tuple(Wanted(f"{n}:leg", Fraction(40), 1, None, 5 + Fraction(n, 10**6)) for n in range(3000))
        problem = scale(Cutting("casing", legs, (StickKind("s", Fraction(192), 1000),), turnable=True))
        assert not any(kind.left or kind.right for kind in problem.kinds)

    def test_a_piece_is_only_tried_where_a_clear_stretch_holds_it(
        self, monkeypatch: pytest.MonkeyPatch
    ) -> None:
        """With room told by the whole stick, defects and all, every stick tried every piece: 19 seconds."""
        tried = counted(monkeypatch, firstfit, "_soonest")
        behind = Stretch(Fraction(200), Fraction(5000))
        stick = StickKind("s", Fraction(5000), 1000, None, (behind,))
        found = plan(Cutting("casing", pieces(1000), (stick,)), Budget(0))
        assert sum(layout.times * len(layout.placed) for layout in found.layouts) == 1000
        assert tried[0] <= 2 * 1000, "twice, since lengths on hand are taken first and last"

    def test_a_place_in_vain_is_looked_for_so_often_only(self, monkeypatch: pytest.MonkeyPatch) -> None:
        """A shared cut may save a run; that it never does is only seen by trying."""
        monkeypatch.setattr(firstfit, "MOST_VAIN", 500)
        tried = counted(monkeypatch, firstfit, "_soonest")
        sides = tuple(
            Wanted(f"{n}:side", 60 + Fraction(n, 16), 1, None, Fraction(20 + n, 64), Fraction(20))
            for n in range(300)
        )
        stick = StickKind("s", Fraction(110), 1000)
        found = plan(Cutting("casing", sides, (stick,), turnable=True), Budget(0))
        assert sum(layout.times * len(layout.placed) for layout in found.layouts) == 300
        assert tried[0] <= 2 * (300 + 500)

    def test_sticks_are_exchanged_so_often_only(self, monkeypatch: pytest.MonkeyPatch) -> None:
        """Every stick was tried on every cheaper one: 1,500 openings and 250 kinds of stick took 21 seconds."""
        monkeypatch.setattr(firstfit, "MOST_EXCHANGED", 400)
        tried = counted(monkeypatch, firstfit.ScaledCutting, "places")
        middle = Stretch(Fraction(50), Fraction(60))
        sticks = (
            StickKind("whole", Fraction(200), 9000),
            *(StickKind(f"s{n}", Fraction(110), 10 + n, None, (middle,)) for n in range(49)),
        )
        found = plan(Cutting("casing", pieces(450), sticks), Budget(0))
        assert sum(layout.times * len(layout.placed) for layout in found.layouts) == 450
        assert tried[0] <= 400 + 1 + len(found.layouts), "and each layout's places once"

    def test_a_used_up_stick_is_not_tried(self, monkeypatch: pytest.MonkeyPatch) -> None:
        tried = counted(monkeypatch, firstfit.ScaledCutting, "places")
        sticks = (
            StickKind("whole", Fraction(200), 9000),
            *(StickKind(f"s{n}", Fraction(200), 9000 - 10 * n, 0 if n % 2 else 1) for n in range(1, 40)),
        )
        problem = scale(Cutting("casing", pieces(100), sticks))
        cuts, _ = firstfit.first_fit(problem)
        assert cuts is not None
        tried[0] = 0
        firstfit.trimmed(problem, cuts)
        assert tried[0] <= len(cuts), "those that are left are no cheaper and the cheaper are used"

    def test_first_fits_end_when_they_were_much_work(self, monkeypatch: pytest.MonkeyPatch) -> None:
        monkeypatch.setattr(firstfit, "MOST_TRIED", 1000)
        runs = counted(monkeypatch, firstfit, "_run")
        sticks = tuple(StickKind(f"s{n}", Fraction(200 + n), 9000 + n) for n in range(50))
        plan(Cutting("casing", pieces(300), sticks), Budget(0))
        assert runs[0] == 1, "300 pieces by 50 kinds is more than that already"

    def test_rows_of_an_opening_are_joined_so_often_only(self, monkeypatch: pytest.MonkeyPatch) -> None:
        """An opening of eleven sides, no two miters alike, has 2,048 sets of them: 20 such took 13 seconds."""
        monkeypatch.setattr(forms, "MOST_JOINED", 1000)
        rnd = random.Random(4)
        runs = [Fraction(run, 10**6) for run in rnd.sample(range(1, 10**6), 14)]
        sides = tuple(
            Wanted(
                f"{opening}:{n}",
                Fraction(rnd.randrange(2000, 4000), 64),
                1,
                f"K{opening}",
                runs[2 * n],
                runs[2 * n + 1],
            )
            for opening in range(8)
            for n in range(7)
        )
        stick = StickKind("s", Fraction(12000), 9000)
        problem = scale(Cutting("casing", sides, (stick,), turnable=True, together=True))
        assert len(problem.items) == 8
        rows = sorted(len(item.forms) for item in problem.items)
        assert rows[0] == 1, "the last of them are laid longest first"
        assert rows[-1] > 1, "the first are laid the best way"

    def test_a_row_is_made_once(self) -> None:
        problem = scale(
            Cutting("c", pieces(4, run=Fraction(5, 2)), (StickKind("s", Fraction(192), 1),), turnable=True)
        )
        blocks = Blocks(problem.kinds, problem.kerf)
        rows = ((0, 1), (1, 2))
        assert blocks.forms(rows) is blocks.forms(rows)


PRIMES = (999_999_937, 999_999_929, 999_999_893, 999_999_883, 999_999_797)


class TestRacks:
    @pytest.mark.parametrize("more", [0, 1])
    async def test_so_many_lengths_on_hand_are_laid_out(self, client: httpx.AsyncClient, more: int) -> None:
        """A hundred profiles of 200 by 200 came to four million from half a megabyte: 11 s and 0.7 GB."""
        full = [{"length": f"{20 + n} in", "count": 200} for n in range(200)]
        rack = [{**STOCK[0], "lengths_on_hand": full}]
        rack += [{"profile": "other", "sticks": [], "lengths_on_hand": [{"length": "20 in"}]}] * more
        answer = await client.post("/v1/cut-list", json=asked(stock=rack))
        if not more:
            assert answer.status_code == 200
            return
        fault = fault_of(answer)
        assert fault["code"] == "too-many-lengths-on-hand"
        assert fault["pointer"] == "/stock/1/lengths_on_hand"
        assert str(MOST_LENGTHS_ON_HAND) in fault["detail"]

    def test_the_document_says_how_many(self) -> None:
        said = DOCUMENT["components"]["schemas"]["CutListRequest"]["description"]
        assert f"{MOST_LENGTHS_ON_HAND:,} lengths on hand" in said

    async def test_lengths_without_a_common_mark_are_not_read(self, client: httpx.AsyncClient) -> None:
        """That of 250 sticks with 20 defects each held everybody up for more than a minute, that of 100 for 13 s."""
        defects = [{"start": f"{20 + n} 1/{prime}", "end": f"{20 + n}.5"} for n, prime in enumerate(PRIMES)]
        stick = {"length": "96", "price": "9", "defects": defects}
        answer = await client.post(
            "/v1/cut-list", json=asked(stock=[{"profile": "casing", "sticks": [stick]}])
        )
        assert answer.status_code == 422
        faults = answer.json()["errors"]
        assert {fault["code"] for fault in faults} == {"not-on-a-tape"}
        assert [fault["pointer"] for fault in faults] == [
            f"/stock/0/sticks/0/defects/{n}/start" for n in range(len(PRIMES))
        ]

    async def test_the_finest_lengths_read_have_a_common_mark(self, client: httpx.AsyncClient) -> None:
        """Fractions to 128ths and decimals to nine places, of inches and of millimeters."""
        texts = ("20.000000001 in", "550.000000001 mm", "23 1/128 in", "2.333333333 ft", "0.813000001 m")
        defects = [{"start": text, "end": f"{20.5 + 3 * n}"} for n, text in enumerate(texts)]
        stick = {"length": "96", "price": "9", "defects": defects[:1]}
        sticks = [{**stick, "length": f"{96 + n}", "defects": [one]} for n, one in enumerate(defects)]
        answer = await client.post(
            "/v1/cut-list", json=asked(stock=[{"profile": "casing", "sticks": sticks}])
        )
        assert "too-fine-together" not in answer.text

    async def test_inches_and_millimeters_have_a_common_mark(self, client: httpx.AsyncClient) -> None:
        lengths = ("96 1/64 in", "2440.0125 mm", "8.000001 ft", "120.333333 in", "144 1/128 in", "11 1/64 ft")
        sticks = [{"length": length, "price": "9"} for length in lengths]
        body = asked(stock=[{"profile": "casing", "sticks": sticks}], kerf="3.2 mm", end_trim="0.333 in")
        assert (await client.post("/v1/cut-list", json=body)).status_code == 200


class TestSums:
    def test_an_odd_fraction_is_kept_to_a_millionth(self) -> None:
        for text in ("30 5/8 in", "1/64 in", "778.125 mm", "1.234567 in", "3 1/128 in"):
            assert exactly(parse(text)) == parse(text)
        odd = 30 + Fraction(1, PRIMES[0])
        assert exactly(odd) == 30
        assert exactly(30 + Fraction(12, 13)) == Fraction(30_923_077, 10**6)

    def test_sums_of_odd_fractions_stay_short(self) -> None:
        """Materials of 5,000 openings took 11 s, a single sum holding everybody up for most of one."""
        openings = [opening(f"K{n}", f"30.{1009 + 2 * n:09}", f"46.{3001 + 2 * n:09}") for n in range(40)]
        openings += [opening("T", "30", "46", count=40)]
        sections = ["materials", "hours", "cost"]
        work = CutListWork(converted(asked(*openings, include=sections), CutListRequest, Unit.IN))
        _, done = work.done()
        assert done.materials is not None
        assert done.hours is not None
        for line in done.materials.lines:
            assert Fraction(line.quantity).denominator < 10**60, line.code
        assert done.hours.minutes.denominator < 10**60

    def test_sticks_share_their_cost_by_length(self) -> None:
        """Prices by the inch of 250 lengths of stick were added stick by stick."""
        lengths = {"length": "96.142857 in", "price": "9"}, {"length": "50 in", "price": "5", "available": 3}
        body = asked(
            *(opening(f"K{n}") for n in range(9)), stock=[{"profile": "casing", "sticks": list(lengths)}]
        )
        work = CutListWork(converted({**body, "include": ["cost"]}, CutListRequest, Unit.IN))
        cut_list, done = work.done()
        assert done.cost is not None
        (plan,) = cut_list.plans
        used = sum(
            Fraction(layout.price_cents * layout.times)
            / layout.length
            * sum(one.length for one in layout.placed)
            for layout in plan.layouts
        )
        told = next(int(line.amount) for line in done.cost.lines if line.category == "stock")
        assert len(plan.layouts) > 2
        assert abs(told - used) <= 1

    def test_openings_without_a_profile_are_no_work_for_it(self, monkeypatch: pytest.MonkeyPatch) -> None:
        """Each of 100 profiles went through the pieces of 5,000 openings."""
        trims = {f"t{n}": {**TRIM, "casing": {**TRIM["casing"], "profile": f"c{n}"}} for n in range(20)}
        stock = [{**STOCK[0], "profile": f"c{n}"} for n in range(20)]
        openings = [opening(f"K{n}", trim=f"t{n}") for n in range(20)]
        work = CutListWork(
            converted(asked(*openings, stock=stock, trim_specs=trims), CutListRequest, Unit.IN)
        )
        looked = counted(monkeypatch, CutList, "instances")
        assert sum(len(one.sticks) for one in work.answer().plans) >= 20
        assert looked[0] == 20 * 3, "two legs and a head each, and not of every profile"

    def test_nothing_is_shared_out_to_who_takes_nothing(self) -> None:
        third = Fraction(1, 3)
        assert apportion(100, [Fraction(0), third, Fraction(0), third, third]) == (0, 34, 0, 33, 33)
        assert apportion(1, [Fraction(0)] * 3) == (1, 0, 0)
