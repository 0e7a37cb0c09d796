"""Requests made to take long: how much work each comes to is counted, and what would be too much is refused."""

import difflib
from collections.abc import Iterator
from threading import current_thread
from typing import Any

import httpx
import msgspec
import pytest

from amounts import PIECES, asked, counted, fault_of
from longpoint.api.computed import cut_list, materials
from longpoint.api.computed.cut_list_work import CutListWork
from longpoint.api.computed.request import CutListRequest
from longpoint.api.http.answer import encode, in_pieces
from longpoint.api.http.negotiate import JSON, MSGPACK
from longpoint.api.http.problems import InvalidRequest
from longpoint.api.stored.csv_openings import read_csv
from longpoint.lengths import Unit
from longpoint.shop.house import MOST_SEASONS
from longpoint.shop.too_much import MOST_NAMING
from longpoint.values import Faults, converted
from longpoint.values.fault import MOST_FAULTS
from stored import STOCK, TRIM, opening


class TestOthersWait:
    """What takes longer is worked on in a thread, so that other callers are answered meanwhile."""

    @pytest.mark.parametrize(
        "body",
        [
            asked(stock=[{**STOCK[0], "lengths_on_hand": [{"length": "20 in", "count": 200}]}]),
            asked(
                stock=[
                    {**STOCK[0], "sticks": [{**STOCK[0]["sticks"][0], "price": str(n)} for n in range(50)]}
                ]
            ),
            asked(stock=[{**STOCK[0], "one_stick_each": True, "turnable": True}]),
            asked(
                opening(
                    "A",
                    readings={
                        "jamb_width": "60",
                        "jamb_height": "30",
                        "rise": "20",
                        "head_pieces": 60,
                        "jamb_depth": "3",
                    },
                    count=2,
                )
            ),
            asked(opening("K", count=13)),
        ],
        ids=["lengths_on_hand", "sticks", "one stick each", "pieces", "openings"],
    )
    async def test_a_cut_list_is_much_work(
        self, client: httpx.AsyncClient, monkeypatch: pytest.MonkeyPatch, body: dict[str, Any]
    ) -> None:
        threads = threads_of(monkeypatch, cut_list)
        answer = await client.post("/v1/cut-list", json=body)
        assert answer.status_code == 200, answer.text[:500]
        assert threads == [False]

    async def test_a_small_one_is_not(
        self, client: httpx.AsyncClient, monkeypatch: pytest.MonkeyPatch
    ) -> None:
        threads = threads_of(monkeypatch, cut_list)
        assert (await client.post("/v1/cut-list", json=asked())).status_code == 200
        assert threads == [True]

    async def test_materials_of_many_openings(
        self, client: httpx.AsyncClient, monkeypatch: pytest.MonkeyPatch
    ) -> None:
        """Of 5,000 they held everybody up for 1.2 s."""
        threads = threads_of(monkeypatch, materials, "build_openings")
        for count in (13, 1):
            body = {"unit": "in", "trim_specs": {"painted": TRIM}, "openings": [opening("K1", count=count)]}
            assert (await client.post("/v1/materials", json=body)).status_code == 200
        assert threads == [False, True]


def threads_of(monkeypatch: pytest.MonkeyPatch, module: Any, name: str = "CutListWork") -> list[bool]:
    """Whether each house from now on is worked out in the thread that answers everybody."""
    answering, found, works = current_thread(), [], getattr(module, name)

    def noted(data: Any) -> Any:
        found.append(current_thread() is answering)
        return works(data)

    monkeypatch.setattr(module, name, noted)
    return found


class TestLongAnswers:
    async def test_names_are_repeated_so_often_only(self, client: httpx.AsyncClient) -> None:
        """Marks of 120 emojis made an answer of 200 MB from a quarter of a megabyte."""
        openings = [opening("\U0001f600" * 119 + f"{n}", count=500) for n in range(3)]
        for some, status in ((openings[:2], 200), (openings, 422)):
            answer = await client.post("/v1/cut-list", json=asked(*some, stock=[]))
            assert answer.status_code == status
        assert 2 * 500 * PIECES * 480 < MOST_NAMING < 3 * 500 * PIECES * 480
        fault = fault_of(answer)
        assert fault["code"] == "too-much-naming"
        assert fault["pointer"] == "/openings/2/mark"

    async def test_names_of_profiles_count(self, client: httpx.AsyncClient) -> None:
        trim = {**TRIM, "casing": {**TRIM["casing"], "profile": "\U0001f600" * 120}}
        openings = [opening(f"K{n}", count=500) for n in range(6)]
        body = asked(*openings, trim_specs={"painted": trim}, stock=[])
        fault = fault_of(await client.post("/v1/cut-list", json=body))
        assert fault["code"] == "too-much-naming"

    async def test_seasons_are_told_so_often_only(self, client: httpx.AsyncClient) -> None:
        air = {"moisture_content": 8}
        for seasons, status in ((4, 200), (5, 422)):
            movement = {"species": "red_oak", "installed": air, "seasons": [air] * seasons}
            openings = [opening(f"K{n}", count=1, without_apron=True) for n in range(MOST_SEASONS // 4)]
            answer = await client.post("/v1/cut-list", json=asked(*openings, stock=[], movement=movement))
            assert answer.status_code == status
        fault = fault_of(answer)
        assert fault["code"] == "too-many-seasons"
        assert fault["pointer"] == "/movement/seasons"

    @pytest.mark.parametrize("media_type", [JSON, MSGPACK])
    @pytest.mark.parametrize("openings", [3, 150])
    def test_in_pieces_they_are_the_same(self, media_type: str, openings: int) -> None:
        body = asked(*(opening(f"K{n}") for n in range(openings)))
        body |= {"include": ["saw_order", "materials", "hours", "cost"], "shop": {"wages": {"hour": "30"}}}
        answer = CutListWork(converted(body, CutListRequest, Unit.IN)).answer()
        whole = encode(answer, media_type)
        pieces: Any = in_pieces(answer, media_type)
        assert isinstance(pieces.openings[0], msgspec.Raw) == (openings > 100)
        assert encode(pieces, media_type) == whole

    def test_no_item_is_much_of_the_whole(self) -> None:
        """No other thread runs while one is encoded."""
        body = asked(*(opening(f"K{n}", count=3) for n in range(200)), include=["saw_order"])
        sizes = [
            len(raw)
            for raw in raws(in_pieces(CutListWork(converted(body, CutListRequest, Unit.IN)).answer(), JSON))
        ]
        assert sum(sizes) > 3_000_000
        assert max(sizes) < sum(sizes) / 200


class TestRefusals:
    @pytest.mark.parametrize("content", ["application/json", "application/msgpack"])
    async def test_a_long_name_is_not_said_again_with_each_fault(
        self, client: httpx.AsyncClient, content: str
    ) -> None:
        """A name of 1.9 MB over 500 faults made an answer of 948 MB."""
        body = {
            **asked(),
            "trim_specs": {"k" * 1_000_000: {f"z{n}": 1 for n in range(500)}},
            "x" * 1_000_000: 1,
        }
        encode = msgspec.json.encode if "json" in content else msgspec.msgpack.encode
        answer = await client.post("/v1/cut-list", content=encode(body), headers={"content-type": content})
        assert answer.status_code == 422
        assert len(answer.content) < 10_000
        told = [(fault["code"], fault["pointer"]) for fault in answer.json()["errors"]]
        assert told == [("too-long", "/trim_specs"), ("unknown-field", "")]

    async def test_names_that_fit_stand_in_pointers(self, client: httpx.AsyncClient) -> None:
        body = {**asked(), "trim_specs": {"k" * 120: {**TRIM, "x" * 200: 1}}}
        fault = fault_of(await client.post("/v1/cut-list", json=body))
        assert fault["pointer"] == f"/trim_specs/{'k' * 120}/{'x' * 200}"

    @pytest.mark.parametrize(
        "sent",
        [
            {f"jamb_widht{n}": 1 for n in range(2000)},
            {"openings": [{**opening("K"), "bottom": f"floor{n}"} for n in range(2000)]},
        ],
        ids=["fields", "options"],
    )
    async def test_what_is_only_counted_is_not_compared(
        self, client: httpx.AsyncClient, monkeypatch: pytest.MonkeyPatch, sent: dict[str, Any]
    ) -> None:
        """170,000 unknown fields held everybody up for 4.5 s."""
        compared = counted(monkeypatch, difflib, "get_close_matches")
        answer = await client.post("/v1/cut-list", json={**asked(), **sent})
        assert answer.status_code == 422
        assert answer.json()["detail"].startswith("2000 things")
        assert len(answer.json()["errors"]) == compared[0] == MOST_FAULTS


class TestFiles:
    def test_faults_of_a_file_are_counted_and_not_kept(self, monkeypatch: pytest.MonkeyPatch) -> None:
        """Five million surplus cells came to 0.6 GB."""
        noted = counted(monkeypatch, Faults, "note")
        rows = ("K1,painted,30 in" + ",x" * 90 + "\n") * 50
        with pytest.raises(InvalidRequest) as refused:
            read_csv(f"mark,trim,jamb width\n{rows}".encode(), Unit.IN)
        assert noted[0] == 50 * 90
        assert len(refused.value.errors) == MOST_FAULTS
        assert "4500 things" in str(refused.value.detail)

    def test_a_column_given_twice_is_read_once(self) -> None:
        with pytest.raises(InvalidRequest) as refused:
            read_csv(b"mark,trim,count,count,count\nK1,painted,x,x,x\nK2,painted,y,y,y\n", Unit.IN)
        told = [(fault.code, fault.row) for fault in refused.value.errors]
        assert told == [("given-twice", 1), ("given-twice", 1), ("wrong-type", 2), ("wrong-type", 3)]


def raws(value: Any) -> Iterator[bytes]:
    """What was encoded by itself."""
    if isinstance(value, msgspec.Raw):
        yield bytes(value)
    elif isinstance(value, (msgspec.Struct, list)):
        names = value if isinstance(value, list) else map(value.__getattribute__, value.__struct_fields__)
        for inner in names:
            yield from raws(inner)
