"""The explanation of a refused body agrees with the decoder that refused it, and points at the right places."""

import enum
from typing import Annotated, Any, Literal, Union

import msgspec
import pytest
from hypothesis import given
from hypothesis import strategies as st
from msgspec import Meta

from longpoint.api.http.body import BodyReader
from longpoint.api.http.explain import stand_ins
from longpoint.lengths import Length
from longpoint.texts import say
from longpoint.values import Faults, Given, Name, Refusal, decoder, whole


def explain(type_: Any, value: Any, faults: Faults) -> None:
    stand_ins(type_, whole(type_, value), faults, None)


class Shape(enum.StrEnum):
    SQUARE = "square"
    ROUND = "round"


class Cut(Given, frozen=True, kw_only=True, tag_field="kind", tag="cut"):
    angle: Annotated[float, Meta(ge=0, le=90)]


class Notch(Given, frozen=True, kw_only=True, tag_field="kind", tag="notch"):
    depth: Length
    name: Name = "notch"


class Piece(Given, frozen=True, kw_only=True):
    name: Name
    length: Length
    count: Annotated[int, Meta(ge=1, le=99)] = 1
    shape: Shape = Shape.SQUARE
    ends: Annotated[list[Cut | Notch], Meta(max_length=2)] = msgspec.field(default_factory=list)
    sizes: Annotated[dict[Annotated[str, Meta(max_length=3)], int], Meta(max_length=2)] = msgspec.field(
        default_factory=dict
    )
    grade: Literal["paint", "stain"] | None = None
    piece: "Piece | None" = None


class Saw(Given, frozen=True, kw_only=True):
    kerf: Length | None = None


class OtherSaw(Given, frozen=True, kw_only=True):
    kerf: Length | None = None


class Rack(Given, frozen=True, kw_only=True):
    pieces: dict[str, Annotated[list[Piece], Meta(max_length=9)]] | None = None
    saw: Saw | None = None
    other: OtherSaw | None = None


class Long(Given, frozen=True, kw_only=True):
    length: Length | None = None


class Longer(Long, frozen=True, kw_only=True):
    pass


class Longest(Long, frozen=True, kw_only=True):
    pass


class Crowd(Given, frozen=True, kw_only=True):
    one: Piece | None = None
    two: Long | None = None
    three: Longer | None = None
    four: Longest | None = None


def faults_of(type_: Any, value: Any) -> dict[str, str]:
    """Code by pointer."""
    faults = Faults()
    explain(type_, value, faults)
    return {str(fault.place): fault.code for fault in faults.found}


GOOD = {"name": "Stool", "length": "30 5/8 in"}


@pytest.mark.parametrize(
    ("changed", "expected"),
    [
        ({}, {}),
        ({"name": ""}, {"/name": "too-short"}),
        ({"name": " x"}, {"/name": "wrong-form"}),
        ({"name": "x\n"}, {"/name": "wrong-form"}),
        ({"length": 30.625}, {"/length": "wrong-type"}),
        ({"length": "30 5/8"}, {"/length": "missing-unit"}),
        ({"length": "9" * 65}, {"/length": "too-long"}),
        ({"count": 0}, {"/count": "out-of-range"}),
        ({"count": 1.5}, {"/count": "wrong-type"}),
        ({"count": 3.0}, {}),
        ({"count": 100.0}, {"/count": "out-of-range"}),
        ({"count": 1e300}, {"/count": "wrong-type"}),
        ({"count": True}, {"/count": "wrong-type"}),
        ({"shape": "squar"}, {"/shape": "not-an-option"}),
        ({"shape": 3}, {"/shape": "not-an-option"}),
        ({"grade": "stian"}, {"/grade": "not-an-option"}),
        ({"grade": None}, {}),
        ({"lenght": 1}, {"/lenght": "unknown-field"}),
        ({"a/b~c": 1}, {"/a~1b~0c": "unknown-field"}),
        ({"ends": [{"kind": "cut", "angle": 91}]}, {"/ends/0/angle": "out-of-range"}),
        ({"ends": [{"kind": "notch"}]}, {"/ends/0/depth": "missing"}),
        ({"ends": [{"kind": "saw"}]}, {"/ends/0/kind": "not-an-option"}),
        ({"ends": [{"angle": 1}]}, {"/ends/0/kind": "missing"}),
        ({"ends": [5]}, {"/ends/0": "wrong-type"}),
        ({"ends": [{"kind": "cut", "angle": 1}] * 3}, {"/ends": "too-many"}),
        ({"sizes": {"long": 1}}, {"/sizes/long": "too-long"}),
        ({"sizes": {"a": "b"}}, {"/sizes/a": "wrong-type"}),
        ({"sizes": {"a": 1, "b": 2, "c": 3}}, {"/sizes": "too-many"}),
        ({"piece": {"name": "Horn", "length": 3}}, {"/piece/length": "wrong-type"}),
    ],
)
def test_each_fault_is_named_at_its_place(changed, expected):
    assert faults_of(Piece, {**GOOD, **changed}) == expected


def test_every_fault_is_told_at_once():
    value = {"lenght": "1 in", "count": 0, "ends": [{"kind": "cut", "angle": "x"}, None], "piece": []}
    assert faults_of(Piece, value) == {
        "/lenght": "unknown-field",
        "/count": "out-of-range",
        "/name": "missing",
        "/length": "missing",
        "/ends/0/angle": "wrong-type",
        "/ends/1": "wrong-type",
        "/piece": "wrong-type",
    }


def test_a_bare_number_for_a_length_is_told_how_to_write_it():
    faults = Faults()
    explain(Piece, {"name": "Stool", "length": 30.625}, faults)
    assert 'Write it with its unit, for example "30 5/8 in"' in str(faults.found[0].detail)


def test_a_misspelt_field_is_told_what_was_meant():
    faults = Faults()
    explain(Piece, {**GOOD, "lenght": "1 in"}, faults)
    assert 'Was "length" meant?' in str(faults.found[0].detail)


@pytest.mark.parametrize(
    ("type_", "value", "where"),
    [
        (Piece, {**GOOD, "angle": 45}, "`ends`"),
        (Piece, {**GOOD, "depth": "1 in"}, "`ends`"),
        (Rack, {"name": "Stool"}, "`pieces`"),
        (Rack, {"angle": 45}, "`pieces.ends`"),
        (Rack, {"kerf": "1/8 in"}, "`saw` or `other`"),
    ],
)
def test_a_field_that_is_known_further_in_is_told_where_it_belongs(type_, value, where):
    faults = Faults()
    explain(type_, value, faults)
    name = list(value)[-1]
    assert str(faults.found[0].detail) == f"This is not a field here: `{name}` belongs under {where}."


@pytest.mark.parametrize("name", ["size", "pieces", "length"])
def test_a_field_that_is_known_nowhere_or_everywhere_belongs_nowhere(name):
    faults = Faults()
    explain(Crowd, {name: 1}, faults)
    assert "belongs" not in str(faults.found[0].detail)


class Whole(Given, frozen=True, kw_only=True):
    given: Length
    other: Length

    def report(self, faults: Faults) -> None:
        if self.other > 2:
            faults.add(("other",), "too-much", say("problem", "lengths.zero"))


@pytest.mark.parametrize(("other", "code"), [("3 in", "too-much"), (3, "wrong-type")])
def test_the_whole_is_looked_at_where_only_a_text_cannot_be_read(other, code):
    body = msgspec.json.encode({"given": "x in", "other": other})
    with pytest.raises(Refusal) as refused:
        BodyReader(Whole).read(body, "json")
    found = {str(fault.place): fault.code for fault in refused.value.faults}
    assert found == {"/given": "not-a-length", "/other": code}


# Random types, and values that mostly fit them: the explanation must find a fault exactly when msgspec does.

_texts = st.text("abc é\n\"'/~", max_size=6)
_anything = st.recursive(
    st.none() | st.booleans() | st.integers(-5, 5) | st.floats(-5, 5).filter(lambda x: x % 1) | _texts,
    lambda inner: st.lists(inner, max_size=3) | st.dictionaries(_texts, inner, max_size=3),
    max_leaves=6,
)

Pair = tuple[Any, st.SearchStrategy[Any]]


def _leaf_pairs() -> st.SearchStrategy[Pair]:
    return st.sampled_from(
        [
            (str, _texts),
            (Annotated[str, Meta(min_length=2, max_length=4)], _texts),
            (Annotated[str, Meta(pattern="^a+$")], st.sampled_from(["a", "aa", "b", "a\n"])),
            (int, st.integers(-9, 9)),
            (Annotated[int, Meta(gt=1, lt=5, multiple_of=2)], st.integers(-9, 9)),
            (Annotated[float, Meta(ge=0, le=3)], st.floats(-9, 9) | st.integers(-9, 9)),
            (bool, st.booleans()),
            (None, st.none()),
            (Shape, st.sampled_from(["square", "round", "flat"])),
            (Literal["x", "y", 3], st.sampled_from(["x", "z", 3, 4])),
        ]
    )


def _struct(pairs: list[Pair], optional: list[bool], forbid: bool) -> Pair:
    names = [f"f{index}" for index in range(len(pairs))]
    fields = [
        (name, pair[0], msgspec.field(default=None)) if free else (name, pair[0])
        for name, pair, free in zip(names, pairs, optional, strict=False)
    ]
    made = msgspec.defstruct("Made", fields, kw_only=True, forbid_unknown_fields=forbid)
    values = st.fixed_dictionaries(
        {}, optional={**{n: p[1] for n, p in zip(names, pairs, strict=True)}, "other": st.none()}
    )
    return made, values


def _wider(inner: st.SearchStrategy[Pair]) -> st.SearchStrategy[Pair]:
    return st.one_of(
        inner.map(lambda p: (list[p[0]], st.lists(p[1], max_size=3))),
        inner.map(
            lambda p: (Annotated[list[p[0]], Meta(min_length=1, max_length=2)], st.lists(p[1], max_size=4))
        ),
        inner.map(
            lambda p: (
                Annotated[dict[str, p[0]], Meta(max_length=2)],
                st.dictionaries(_texts, p[1], max_size=3),
            )
        ),
        inner.map(lambda p: (Union[p[0], None], p[1] | st.none())),  # noqa: UP007 - None | None is no type
        st.builds(
            _struct,
            st.lists(inner, min_size=1, max_size=3),
            st.lists(st.booleans(), min_size=3, max_size=3),
            st.booleans(),
        ),
        st.just(
            (
                Cut | Notch,
                st.fixed_dictionaries(
                    {"kind": st.sampled_from(["cut", "notch", "no"])},
                    optional={
                        "angle": st.integers(-1, 99),
                        "depth": st.sampled_from(["1 in", "", 5]),
                        "name": _texts,
                    },
                ),
            )
        ),
    )


_pairs = st.recursive(_leaf_pairs(), _wider, max_leaves=4)


@given(st.data())
def test_it_finds_a_fault_exactly_when_the_decoder_does(data):
    type_, values = data.draw(_pairs)
    value = data.draw(values | _anything)
    faults = Faults()
    explain(type_, value, faults)
    refused = _refusal(type_, value)
    assert bool(faults) == bool(refused), (type_, value, faults.found, refused)


@given(st.data())
def test_its_first_fault_is_among_those_msgspec_would_point_at(data):
    """msgspec names one fault with a path; the explanation has a fault there or below it."""
    type_, values = data.draw(_pairs)
    value = data.draw(values)
    faults = Faults()
    explain(type_, value, faults)
    path = _refusal(type_, value).partition(" - at `")[2].rstrip("`").lstrip("$")
    if not path or "..." in path:
        return
    steps = path.replace("[", ".").replace("]", "").strip(".").split(".")
    start = "".join(f"/{step}" for step in steps)
    assert any(
        # What is past a list's limit is not looked at.
        str(fault.place).startswith(start)
        or (fault.code == "too-many" and start.startswith(str(fault.place)))
        for fault in faults.found
    ), (faults.found, path)


def _refusal(type_: Any, value: Any) -> str:
    """What msgspec says is wrong with a value; "" when it takes it."""
    try:
        decoder(type_).decode(msgspec.json.encode(value))
    except msgspec.ValidationError as refusal:
        return str(refusal)
    return ""
