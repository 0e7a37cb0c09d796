"""Hours: hands-on minutes by operation, drying waits apart from them."""

from __future__ import annotations

from longpoint.shop import Hours, Rates, amounts, hours
from shop.builders import Entry, F, window, worked_out


def taken(count: int = 1, setups: int = 12, **rates: object) -> Hours:
    own = Rates(**{name: F(value) for name, value in rates.items()})
    house = worked_out((Entry(window("W1", F(30), F(46)), count=count), Entry(window("W2", F(24), F(40)))))
    return hours(amounts(house, own), setups, own)


def test_each_operation_is_its_quantity_times_the_callers_minutes() -> None:
    found = {each.task: each for each in taken(measure_minutes="7", cut_minutes="1/2", fit_minutes="4").tasks}
    assert (found["measure"].quantity, found["measure"].minutes) == (2, 14)
    # Stool, apron, two returns, head and two legs; two notches, and ten angled ends: 7 + 4 + 8 cuts a window.
    assert (found["fit"].quantity, found["fit"].minutes) == (14, 56)
    assert (found["cut"].quantity, found["cut"].minutes) == (38, 19)
    assert all(sum(share.quantity for share in each.by_opening) == each.minutes for each in found.values())


def test_setups_are_shared_by_cuts() -> None:
    (set_up,) = [each for each in taken(count=3, setups=12).tasks if each.task == "set_up"]
    assert set_up.minutes == 24
    assert [share.quantity for share in set_up.by_opening] == [18, 6]


def test_the_whole_is_the_sum_of_the_operations() -> None:
    found = taken()
    assert found.minutes == sum(each.minutes for each in found.tasks)
    assert found.wait_hours == sum(wait.hours for wait in found.waits)


def test_waits_are_the_jobs_and_not_each_openings() -> None:
    one, many = taken(count=1), taken(count=20)
    assert many.waits == one.waits
    assert many.minutes > 5 * one.minutes
    assert [wait.after for wait in one.waits] == [
        "primer, coat 1",
        "filler",
        "caulk",
        "paint, coat 1",
        "paint, coat 2",
    ]


def test_work_that_takes_no_time_is_left_out() -> None:
    found = taken(paint_coats="0", primer_coats="0", rout_minutes="0", caulk_wait="0")
    assert not {"paint", "final_coat", "rout"} & {each.task for each in found.tasks}
    assert [wait.after for wait in found.waits] == ["filler"]


def test_the_last_coat_is_counted_apart_from_those_on_the_bench() -> None:
    found = {each.task: each.quantity for each in taken(primer_coats="1", paint_coats="3").tasks}
    assert found["paint"] == 3 * found["final_coat"]
