"""The operations that compute and store nothing, by both clients."""

from decimal import Decimal
from fractions import Fraction

import pytest

from longpoint_sdk import AsyncClient, Client, Length, calls, problems, types

STOOL = types.StoolRequest(
    jamb_width=Length("30 5/8 in"),
    jamb_depth="3 1/8 in",
    reveal="3/16 in",
    casing_width="2 1/2 in",
    horn="3/4 in",
    nosing=Length("7/8", "in"),
    apron_thickness="5/8 in",
)


def test_a_stool_over_http(client: Client) -> None:
    [stool] = client.compute_stool(STOOL).pieces
    assert stool.kind == "stool"
    assert str(stool.overall) == "37 1/2 in"
    assert stool.overall == Length("30 5/8 in") + 2 * (
        Length("3/16 in") + Length("2 1/2 in") + Length("3/4 in")
    )
    assert stool.ends[0].notch is not None
    assert str(stool.ends[0].notch.depth) == "3 1/8 in"


async def test_a_stool_in_process(async_client: AsyncClient) -> None:
    [stool] = (await async_client.compute_stool(STOOL)).pieces
    assert stool.overall.inches == Fraction(75, 2)


def test_a_plain_mapping_will_do(client: Client) -> None:
    answer = client.read_lengths(
        {"lengths": ["30 5/8", "778 mm"], "unit": "in", "rounding": {"to": "1/32 in"}}
    )
    assert [one.text for one in answer.lengths] == ["30 5/8 in", "30 5/8 in"]
    assert sum(answer.lengths[1:], start=Length("0 mm")) == Length("778 mm")


def test_lengths_go_out_exactly(client: Client) -> None:
    sent = [Length("30 5/8 in"), Length("778 mm") / 4, Length("2' 6-5/8\""), Length("1 mm").to("in")]
    answer = client.read_lengths(types.LengthsRequest(lengths=[*sent]))
    assert [one.length for one in answer.lengths] == sent


def test_a_third_is_rounded_before_it_goes_out(client: Client) -> None:
    third = Length("30 5/8 in") / 3
    with pytest.raises(problems.InvalidRequest, match="nearest tape mark is 10 3/16 in"):
        client.read_lengths(types.LengthsRequest(lengths=[third]))
    assert client.read_lengths(types.LengthsRequest(lengths=[third.round("1/16 in")])).lengths[
        0
    ].length == Length("10 3/16 in")


def test_an_answered_length_goes_out_as_it_is(client: Client) -> None:
    first = client.read_lengths(types.LengthsRequest(lengths=["34 17/32 in"])).lengths[0]
    again = client.read_lengths(types.LengthsRequest(lengths=[first.length])).lengths[0]
    assert again.given == "34 17/32 in"


async def test_a_reply_as_it_came(async_client: AsyncClient) -> None:
    reply = await async_client.send_raw(calls.compute_stool(STOOL))
    assert reply.status == 200
    assert reply.headers["Content-Type"] == "application/json"
    assert reply.request_id == reply.headers["X-Request-Id"]
    assert reply.attempts == 1
    assert b'"37 1/2 in"' in reply.content
    assert reply.value.pieces[0].overall == Length("37 1/2 in")
    assert reply.value is reply.value


def test_a_short_house(client: Client) -> None:
    trim = types.Trim(casing=types.Casing(width="2 1/2 in", thickness="5/8 in"), reveal="3/16 in")
    house = types.CutListRequest(
        trim_specs={"plain": trim},
        openings=[
            types.HouseOpening(
                mark="P1",
                room="Pantry",
                trim="plain",
                bottom="casing",
                readings=types.Readings(jamb_width="24 in", jamb_height=Length("609.6 mm")),
            )
        ],
        stock=[types.Stock(profile="casing", sticks=[types.Stick(length="8 ft", price="9.20")])],
    )
    cut_list = client.compute_cut_list(house)
    assert {piece.overall for piece in cut_list.openings[0].pieces} == {Length("29 3/8 in")}
    assert cut_list.cost == Decimal("18.40")
    assert str(cut_list.cost) == "18.40"
    assert cut_list.buy[0].quantity == 2


def test_health(client: Client) -> None:
    assert client.check_live().status == client.check_ready().status == "ok"
