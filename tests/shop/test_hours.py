"""Hours: hands-on minutes by operation, drying waits apart from them."""

from __future__ import annotations

from longpoint.shop import Hours, OrderKind, Rates, SawOrder, Shop, amounts, hours, saw_order
from longpoint.shop.build import CutList
from shop.builders import Entry, F, window, worked_out


def house(count: int = 1) -> CutList:
    return worked_out((Entry(window("W1", F(30), F(46)), count=count), Entry(window("W2", F(24), F(40)))))


def shop_of(**rates: object) -> Shop:
    return Shop(rates=Rates(**{name: F(value) for name, value in rates.items()}))


def taken(count: int = 1, **rates: object) -> Hours:
    one, shop = house(count), shop_of(**rates)
    return hours(amounts(one, shop.rates), saw_order(one, shop), shop.rates)


def test_each_operation_is_its_quantity_times_the_callers_minutes() -> None:
    found = {each.task: each for each in taken(measure_minutes="7", install_minutes="4").tasks}
    assert (found["measure"].quantity, found["measure"].minutes) == (2, 14)
    # Stool, apron, two returns, head and two legs.
    assert (found["install"].quantity, found["install"].minutes) == (14, 56)
    assert all(sum(share.quantity for share in each.by_opening) == each.minutes for each in found.values())


def test_cuts_and_settings_are_those_of_the_saw_order_and_take_its_minutes() -> None:
    for kind in OrderKind:
        one = house(3)
        order: SawOrder = saw_order(one, Shop(order=kind))
        found = {each.task: each for each in hours(amounts(one, Rates()), order, Rates()).tasks}
        cut, set_up = found["cut"], found["set_up"]
        assert (cut.quantity, set_up.quantity) == (len(order.operations), order.sum.settings)
        assert cut.minutes + set_up.minutes == order.sum.minutes
        assert set_up.minutes == order.sum.setting_minutes
        # An opening's share is its cuts'.
        assert [share.quantity / cut.minutes for share in cut.by_opening] == [
            order.cuts_by_opening[mark] / order.cuts for mark in ("W1", "W2")
        ]


def test_a_slower_hand_takes_longer_at_the_saw_and_nowhere_else() -> None:
    plain, slow = taken(), taken(cut_seconds="65", detent_seconds="64")
    minutes = [{each.task: each.minutes for each in one.tasks} for one in (plain, slow)]
    assert minutes[1]["cut"] > minutes[0]["cut"]
    assert minutes[1]["set_up"] > minutes[0]["set_up"]
    rest = [{task: most for task, most in one.items() if task not in ("cut", "set_up")} for one in minutes]
    assert rest[0] == rest[1]


def test_the_whole_is_the_sum_of_the_operations() -> None:
    found = taken()
    assert found.minutes == sum(each.minutes for each in found.tasks)
    assert found.wait_hours == sum(wait.hours for wait in found.waits)


def test_waits_are_the_cuttings_and_not_each_openings() -> None:
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
