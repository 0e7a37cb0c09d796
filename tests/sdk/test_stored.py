"""Schedules in a caller's hands: kept, read, changed from what was read, and listed page by page."""

from collections.abc import Iterator
from fractions import Fraction

import httpx
import pytest

from longpoint_sdk import (
    AsyncClient,
    Client,
    Length,
    Retry,
    VersionConflict,
    Versioned,
    calls,
    problems,
    types,
)

TRIM = types.Trim(
    casing=types.Casing(width="2 1/2 in", thickness="5/8 in"),
    reveal="3/16 in",
    stool=types.Stool(thickness="3/4 in", horn="3/4 in", nosing="7/8 in"),
    apron=types.Apron(width="2 1/2 in", thickness="5/8 in"),
)


def window(mark: str, width: str | Length = "30 5/8 in") -> types.HouseOpening:
    readings = types.Readings(jamb_width=width, jamb_height="46 1/4 in", jamb_depth="3 1/8 in")
    return types.HouseOpening(mark=mark, room="Kitchen", trim="painted", readings=readings)


def house(name: str, *openings: types.HouseOpening) -> types.NewSchedule:
    return types.NewSchedule(name=name, trim_specs={"painted": TRIM}, openings=[*openings])


@pytest.fixture
def kept(client: Client) -> Versioned[types.StoredSchedule]:
    """A schedule with two openings."""
    return client.create_schedule(house("Heron Cottage", window("K1"), window("K2")))


def test_what_was_kept_is_read_back(client: Client, kept: Versioned[types.StoredSchedule]) -> None:
    again = client.get_schedule(kept.value.id)
    assert again.etag == kept.etag
    assert again.value.house.trim_specs == {"painted": TRIM}
    k1 = client.get_opening(kept.value.id, "K1").value
    assert k1.changed() == window("K1")
    assert Length(Fraction(k1.exact["/readings/jamb_width"]), "in") == Length("30 5/8 in")


def test_read_change_write(client: Client, kept: Versioned[types.StoredSchedule]) -> None:
    k1 = client.get_opening(kept.value.id, "K1")
    wider = k1.value.changed(
        readings=k1.value.readings.changed(jamb_width=Length("30 5/8 in") + Length("1/8 in"))
    )
    done = client.replace_opening(kept.value.id, "K1", wider, if_match=k1, why="remeasured")
    assert done.value.readings.jamb_width == "30 3/4 in"
    assert done.etag != k1.etag
    latest = next(iter(client.list_revisions(kept.value.id)))
    assert (latest.number, latest.why) == (done.value.revision, "remeasured")


def test_a_conflict_carries_both_versions(client: Client, kept: Versioned[types.StoredSchedule]) -> None:
    k1 = client.get_opening(kept.value.id, "K1")
    client.replace_opening(kept.value.id, "K1", window("K1", "31 in"), if_match=k1)
    mine = window("K1", "32 in")
    with pytest.raises(VersionConflict) as caught:
        client.replace_opening(kept.value.id, "K1", mine, if_match=k1)
    conflict = caught.value
    assert isinstance(conflict, problems.PreconditionFailed)
    assert conflict.mine is mine
    assert conflict.current.value.readings.jamb_width == "31 in"
    mended = client.replace_opening(kept.value.id, "K1", conflict.mine, if_match=conflict.current)
    assert mended.value.readings.jamb_width == "32 in"


def test_the_house_changes_in_the_same_way(client: Client, kept: Versioned[types.StoredSchedule]) -> None:
    renamed = kept.value.house.changed(name="Wren Cottage", kerf="3/32 in")
    done = client.replace_schedule(kept.value.id, renamed, if_match=kept)
    assert (done.value.house.name, done.value.house.kerf) == ("Wren Cottage", "3/32 in")
    with pytest.raises(VersionConflict) as caught:
        client.archive_schedule(kept.value.id, if_match=kept)
    assert caught.value.current.etag == done.etag
    assert client.archive_schedule(kept.value.id, if_match=done).value.archived_at


def test_reading_again_only_for_news(client: Client, kept: Versioned[types.StoredSchedule]) -> None:
    assert client.get_schedule(kept.value.id, if_none_match=kept) is kept
    reply = client.send_raw(calls.get_schedule(kept.value.id, if_none_match=kept))
    assert (reply.status, reply.content) == (304, b"")
    client.replace_schedule(kept.value.id, kept.value.house.changed(site_note="Dog."), if_match=kept)
    assert client.get_schedule(kept.value.id, if_none_match=kept).value.house.site_note == "Dog."


def test_a_list_is_read_page_by_page(client: Client) -> None:
    made = client.create_schedule(house("Many Windows", *[window(f"W{number}") for number in range(7)]))
    pages = client.list_openings(made.value.id, limit=3)
    assert [len(page.items) for page in pages.pages()] == [3, 3, 1]
    assert [one.mark for one in pages] == [f"W{number}" for number in range(7)]
    first = client.send(calls.list_openings(made.value.id, limit=2))
    assert [one.mark for one in first.items] == ["W0", "W1"]
    assert first.next


def test_a_list_can_be_left_early(client: Client, kept: Versioned[types.StoredSchedule]) -> None:
    asked: list[httpx.Request] = []
    with httpx.Client(event_hooks={"request": [asked.append]}) as http:
        through = Client(client.url, http_client=http)
        for one in through.list_openings(kept.value.id, limit=1):
            assert one.mark == "K1"
            break
    assert len(asked) == 1


def test_a_boolean_filter(client: Client) -> None:
    one = client.create_schedule(house("Filter Lodge"))
    client.archive_schedule(one.value.id, if_match=one)
    archived = [line.name for line in client.list_schedules(name="Filter Lodge", archived=True)]
    assert archived == ["Filter Lodge"]
    assert list(client.list_schedules(name="Filter Lodge", archived=False)) == []


def test_what_is_not_there(client: Client) -> None:
    with pytest.raises(problems.NotFound):
        client.get_schedule("no/such/../schedule?")
    with pytest.raises(ValueError, match="empty"):
        client.get_schedule("")


class Loses(httpx.HTTPTransport):
    """A real connection that loses the first answer after the service has given it."""

    lost = False

    def handle_request(self, request: httpx.Request) -> httpx.Response:
        response = super().handle_request(request)
        if not self.lost:
            self.lost = True
            response.read()
            raise httpx.ReadError("the answer was lost")
        return response


@pytest.fixture
def losing(address: str) -> Iterator[Client]:
    """A client whose first answer is lost on the way."""
    with Client(address, transport=Loses(), retry=Retry(first=0.0)) as one:
        yield one


def test_a_lost_answer_does_not_make_a_second_house(losing: Client, client: Client) -> None:
    reply = losing.send_raw(calls.create_schedule(house("Only Once")))
    assert reply.attempts == 2
    assert reply.headers["idempotency-replayed"] == "true"
    assert [line.id for line in client.list_schedules(name="Only Once")] == [reply.value.value.id]


def test_a_key_of_ones_own(client: Client) -> None:
    first = client.create_schedule(house("Mine"), idempotency_key="order-17")
    again = client.create_schedule(house("Mine"), idempotency_key="order-17")
    assert again.value == first.value
    with pytest.raises(problems.IdempotencyKeyReused):
        client.create_schedule(house("Other"), idempotency_key="order-17")


def test_a_change_whose_answer_was_lost(losing: Client, client: Client) -> None:
    """The repeat is refused, since its own first sending was done: the conflict shows it."""
    kept = client.create_schedule(house("Lost Change", window("K1")))
    k1 = client.get_opening(kept.value.id, "K1")
    with pytest.raises(VersionConflict) as caught:
        losing.replace_opening(kept.value.id, "K1", window("K1", "33 in"), if_match=k1)
    assert caught.value.attempts == 2
    assert caught.value.current.value.changed() == caught.value.mine


async def test_all_of_it_in_async(async_client: AsyncClient) -> None:
    kept = await async_client.create_schedule(house("Async Hall", *[window(f"W{n}") for n in range(5)]))
    marks = [one.mark async for one in async_client.list_openings(kept.value.id, limit=2)]
    assert marks == ["W0", "W1", "W2", "W3", "W4"]
    assert [len(page.items) async for page in async_client.list_openings(kept.value.id, limit=4).pages()] == [
        4,
        1,
    ]
    assert await async_client.get_schedule(kept.value.id, if_none_match=kept) is kept
    w0 = await async_client.get_opening(kept.value.id, "W0")
    await async_client.replace_opening(kept.value.id, "W0", w0.value.changed(room="Hall"), if_match=w0)
    with pytest.raises(VersionConflict) as caught:
        await async_client.replace_opening(kept.value.id, "W0", w0.value.changed(room="Attic"), if_match=w0)
    assert caught.value.current.value.room == "Hall"
    assert caught.value.mine.room == "Attic"


def test_work_done_and_lengths_on_hand(client: Client) -> None:
    id = client.create_schedule(house("Work House", window("K1"))).value.id
    made = client.record_work(
        id, types.Work(pieces=[types.PieceDone(opening="K1", piece="stool", state="cut", note="oak")])
    )
    [piece] = client.list_pieces(id, state="cut")
    assert (piece.id, piece.length) == (made.pieces[0].id, Length("37 1/2 in"))
    assert list(client.list_pieces(id, state="installed")) == []
    found = client.add_length(id, types.LengthOnHand(profile="stool", length=Length("30 in"), price="2.00"))
    assert [(one.lot, one.length) for one in client.list_lengths(id)] == [("length", "30 in")]
    held = client.get_length(id, found.value.lot)
    assert client.remove_length(id, "length", if_match=held).revision == held.value.revision + 1
    bought = types.LengthOnHand(profile="stool", length=Length("8 ft"), ordered=3, delivered=4, paid="21.00")
    first = client.put_length(id, "yard 1", bought)
    assert first.value.notes == ["4 came of 3 that were ordered."]
    assert client.put_length(id, "yard 1", bought).value.revision == first.value.revision
    assert [one.lot for one in client.list_lengths(id, state="on_hand")] == ["yard 1"]


def test_a_parameter_that_is_a_list(client: Client) -> None:
    id = client.create_schedule(house("Listed Lodge", window("K1"))).value.id
    plain = client.compute_schedule_cut_list(id).value
    asked = client.compute_schedule_cut_list(id, include=["hours", "materials"]).value
    assert plain.cut_list.hours is None
    assert asked.cut_list.hours is not None
    assert asked.cut_list.materials is not None
    assert asked.cut_list.cost_sheet is None


def test_a_house_in_by_csv_and_out_again(client: Client) -> None:
    id = client.create_schedule(house("CSV Grange")).value.id
    rows = "mark,trim,jamb width,jamb height,jamb depth\nK1,painted,30 5/8 in,46 1/4 in,3 1/8 in\n"
    tried = client.import_openings(id, rows, dry_run=True)
    assert (tried.value.dry_run, tried.value.added) == (True, ["K1"])
    assert list(client.list_openings(id)) == []
    client.import_openings(id, rows.encode())
    out = client.export_schedule(id, accept="text/csv")
    assert b"30 5/8 in" in out.value
    assert out.etag
    again = client.create_schedule(client.export_schedule(id).value.changed(name="CSV Grange again"))
    client.import_openings(again.value.id, out.value, existing="replace", if_match=again)
    assert [one.mark for one in client.list_openings(again.value.id)] == ["K1"]


def test_every_wrong_cell_of_a_csv_is_told(client: Client) -> None:
    id = client.create_schedule(house("Wrong Cells")).value.id
    rows = "mark,trim,jamb width,jamb height\nK1,painted,30 5/8,46 1/4 in\nK2,gilded,30 in,tall\n"
    with pytest.raises(problems.InvalidRequest) as caught:
        client.import_openings(id, rows)
    cells = {(fault.row, fault.column) for fault in caught.value.errors}
    assert {(2, "jamb width"), (3, "trim"), (3, "jamb height")} <= cells
    assert "row 2, jamb width" in str(caught.value)
    assert list(client.list_openings(id)) == []


def test_a_shops_own_rates_come_back_as_they_were_sent(client: Client) -> None:
    rates = types.Rates(outer_nail=8, caulk_bead="1/4 in", glue_waste=12.5)
    kept = client.create_schedule(types.NewSchedule(name="Nails", shop=types.Shop(rates=rates)))
    shop = client.get_schedule(kept.value.id).value.house.shop
    assert shop is not None
    assert shop.rates == rates


def test_a_list_says_what_it_lists(client: Client) -> None:
    assert repr(client.list_schedules()) == "<Pages of list_schedules>"
