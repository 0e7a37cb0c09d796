"""What a type checker must make of the SDK. Never run: mypy reads it, and refuses an ignore that is not needed."""

from fractions import Fraction
from typing import assert_type

from longpoint_sdk import AsyncClient, Client, Length, Pages, Reply, Versioned, calls, types


def what_operations_give(client: Client, stool: types.StoolRequest) -> None:
    assert_type(client.compute_stool(stool), types.PiecesAnswer)
    assert_type(client.compute_stool({"jamb_width": "30 5/8 in"}), types.PiecesAnswer)
    assert_type(client.send(calls.compute_stool(stool)), types.PiecesAnswer)
    assert_type(client.send_raw(calls.compute_stool(stool)), Reply[types.PiecesAnswer])
    assert_type(client.get_schedule("id"), Versioned[types.StoredSchedule])
    assert_type(client.list_schedules(), Pages[types.ScheduleLine])
    assert_type(client.send(calls.list_schedules()), types.Page[types.ScheduleLine])
    assert_type(client.get_opening("id", "K1").value.changed(room="Hall"), types.HouseOpening)
    assert_type(client.export_schedule("id"), Versioned[types.NewSchedule])
    assert_type(client.export_schedule("id", accept="text/csv"), Versioned[bytes])
    assert_type(client.follow(calls.compute_cut_list({}), print), types.CutListAnswer)
    client.import_openings("id", "mark,trim", existing="perhaps")  # type: ignore[arg-type]
    with client.with_options(timeout=None) as patient:
        assert_type(patient, Client)


async def what_they_give_in_async(client: AsyncClient, stool: types.StoolRequest) -> None:
    assert_type(await client.compute_stool(stool), types.PiecesAnswer)
    assert_type(await client.send_raw(calls.get_schedule("id")), Reply[Versioned[types.StoredSchedule]])
    async for line in client.list_schedules():
        assert_type(line, types.ScheduleLine)
    async with client as same:
        assert_type(same, AsyncClient)


def what_lengths_give(one: Length, answered: types.MarkedLength) -> None:
    assert_type(one + one, Length)
    assert_type(one + answered, Length)
    assert_type(answered - one, Length)
    assert_type(2 * one, Length)
    assert_type(answered * Fraction(1, 2), Length)
    assert_type(one / 3, Length)
    assert_type(one / answered, Fraction)
    assert_type(one // one, int)
    assert_type(one % answered, Length)
    assert_type(one < answered, bool)
    one + 1  # type: ignore[operator]
    one * 0.5  # type: ignore[operator]
    Length(0.5, "in")  # type: ignore[arg-type]
    Length("1", "yard")  # type: ignore[arg-type]


def what_requests_take(one: Length, answered: types.MarkedLength) -> None:
    types.Casing(width="2 1/2 in", thickness=one)
    types.Casing(width="2 1/2 in", thickness=answered.length)
    types.Casing(width=2.5, thickness=one)  # type: ignore[arg-type]
    types.Casing(width=one, thickness=answered)  # type: ignore[arg-type]
    types.Casing(width=one)  # type: ignore[call-arg]
    types.Casing(width=one, thickness=one, color="red")  # type: ignore[call-arg]
    types.Rounding(to="1/10 in")  # type: ignore[arg-type]
    types.Casing(width=one, thickness=one).width = one  # type: ignore[misc]
