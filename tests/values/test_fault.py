"""Faults: where they are, how many are reported, and how they cross a process boundary."""

from __future__ import annotations

import pickle

import msgspec
import pytest

from longpoint.lengths import Rounding, length_writer
from longpoint.texts import say
from longpoint.values import Fault, Faults, Place, Refusal, Unreadable, encoder, nearest
from longpoint.values.fault import MOST_FAULTS

WRITE = length_writer(Rounding())
ONE, TWO = say("problem", "lengths.zero"), say("problem", "numbers.not-a-number")


@pytest.mark.parametrize(
    ("steps", "pointer"),
    [
        ((), ""),
        (("openings", 2, "reveal"), "/openings/2/reveal"),
        (("trim_specs", "a/b~c"), "/trim_specs/a~1b~0c"),
        (("trim_specs", "~1"), "/trim_specs/~01"),
        (("",), "/"),
    ],
)
def test_a_place_is_written_as_a_json_pointer(steps: tuple[str | int, ...], pointer: str) -> None:
    assert str(Place(steps)) == Place(steps).written(WRITE) == pointer


def test_places_are_equal_by_their_steps() -> None:
    assert Place(["a", 1]) == Place(("a", 1))
    assert hash(Place(["a", 1])) == hash(Place(("a", 1)))
    assert Place(("a",)) != Place(("b",))
    assert Place(("a",)) != ("a",)


def test_a_place_is_only_answered() -> None:
    with pytest.raises(Unreadable) as refused:
        Place.read("/a", None)
    assert refused.value.code == "wrong-type"


def test_a_fault_is_seen_from_further_up() -> None:
    fault = Fault.at(("readings", "rise"), "too-flat", ONE)
    assert fault.path == ("readings", "rise")
    assert fault.under("openings", 3).path == ("openings", 3, "readings", "rise")
    assert fault.moved("sides", 0).path == ("sides", 0)
    assert (fault.moved("x").code, fault.moved("x").detail) == (fault.code, fault.detail)


def test_a_fault_out_of_the_body_has_no_path() -> None:
    fault = Fault(code="unknown", detail=ONE, parameter="page")
    assert (fault.place, fault.path) == (None, ())


def test_a_fault_on_the_wire_leaves_out_what_it_has_not() -> None:
    write = encoder(WRITE)
    whole = Fault.at((), "empty", ONE)
    assert msgspec.json.decode(write.encode(whole)) == {
        "code": "empty",
        "detail": str(ONE),
        "pointer": "",
    }
    cell = Fault(code="wrong-form", detail=TWO, row=4, column="mark")
    assert msgspec.json.decode(write.encode(cell)) == {
        "code": "wrong-form",
        "detail": str(TWO),
        "row": 4,
        "column": "mark",
    }


def test_all_faults_are_raised_at_once_and_in_order() -> None:
    class Own(Refusal):
        pass

    faults = Faults()
    faults.raise_any(Own)
    faults.add(("a",), "one", ONE)
    faults.note(Fault(code="two", detail=TWO, header="If-Match"))
    with pytest.raises(Own) as refused:
        faults.raise_any(Own)
    assert [fault.code for fault in refused.value.faults] == ["one", "two"]
    assert str(refused.value) == f"{ONE}; {TWO}"


def test_nothing_noted_is_no_refusal() -> None:
    faults = Faults()
    assert not faults
    assert (faults.count, list(faults)) == (0, [])
    faults.raise_any()


def test_faults_past_the_most_are_counted() -> None:
    faults = Faults(Fault.at((number,), "x", ONE) for number in range(MOST_FAULTS - 1))
    assert not faults.full
    faults.add(("last",), "x", ONE)
    assert faults.full
    faults.add(("beyond",), "x", ONE)
    assert (len(faults.found), faults.omitted, faults.count) == (MOST_FAULTS, 1, MOST_FAULTS + 1)
    with pytest.raises(Refusal) as refused:
        faults.raise_any()
    assert (len(refused.value.faults), refused.value.omitted) == (MOST_FAULTS, 1)


def test_a_refusal_survives_a_trip_between_processes() -> None:
    again = pickle.loads(pickle.dumps(Refusal([Fault.at(("a", 0), "x", ONE)], omitted=7)))
    assert (again.faults, again.omitted) == ((Fault.at(("a", 0), "x", ONE),), 7)


def test_what_is_unreadable_survives_a_trip_between_processes() -> None:
    again = pickle.loads(pickle.dumps(Unreadable("wrong-form", ONE)))
    assert (again.code, again.detail, str(again)) == ("wrong-form", ONE, str(ONE))


def test_the_nearest_name_is_guessed() -> None:
    assert str(nearest("mitered", ["mitered", "butted"])) == 'Was "mitered" meant?'
    assert nearest("zzz", ["mitered", "butted"]) is None


def test_of_what_was_sent_the_first_hundred_characters_are_compared() -> None:
    # 43 of 100 alike are near enough to a name of 43, and would not be of 101.
    assert str(nearest("a" * 43 + "b" * 1000, ["a" * 43])) == f'Was "{"a" * 43}" meant?'
    assert nearest("a" * 42 + "b" * 1000, ["a" * 42]) is None
