"""Money in a caller's hands: exact decimals, in and out."""

from decimal import Decimal

from longpoint_sdk import Client, Progress, calls, types

TRIM = types.Trim(casing=types.Casing(width="2 1/2 in", thickness="5/8 in"), reveal="3/16 in")
READINGS = types.Readings(jamb_width="24 in", jamb_height="24 in")
FRAME = types.HouseOpening(mark="P1", trim="plain", bottom="casing", readings=READINGS)


def house(price: str | Decimal) -> types.CutListRequest:
    stock = [types.Stock(profile="casing", sticks=[types.Stick(length="8 ft", price=price)])]
    return types.CutListRequest(trim_specs={"plain": TRIM}, openings=[FRAME], stock=stock)


def test_it_adds_up_to_the_cent(client: Client) -> None:
    answer = client.compute_cut_list(house(Decimal("9.10")).changed(include=["cost"]))
    [line] = answer.buy
    assert line.quantity * line.price == line.cost == answer.cost == Decimal("18.20")
    assert answer.cost_sheet is not None
    total = answer.cost_sheet.total
    assert total.stock + total.waste + total.kept_offcut + total.consumable + total.labor == total.total
    assert sum(one.amount for one in answer.cost_sheet.lines) == total.total


def test_text_and_decimals_are_the_same_price(client: Client) -> None:
    assert client.compute_cut_list(house("9.1")).cost == client.compute_cut_list(house(Decimal("9.10"))).cost
    assert str(client.compute_cut_list(house("9.1")).cost) == "18.20"


def test_progress_has_it_too(client: Client) -> None:
    steps: list[Progress] = []
    answer = client.follow(calls.compute_cut_list(house("9.10")), steps.append)
    assert all(step.bound <= step.cost for step in steps)
    assert answer.cost == Decimal("18.20")


def test_a_price_of_a_length_on_hand_is_read_back(client: Client) -> None:
    made = client.create_schedule(types.NewSchedule(name="Heron Cottage", trim_specs={"plain": TRIM})).value
    kept = client.add_length(
        made.id, types.LengthOnHand(profile="casing", length="40 in", price=Decimal("1.05"))
    ).value
    assert client.get_length(made.id, kept.lot).value.price == Decimal("1.05")
