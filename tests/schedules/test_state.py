"""The API driven at random beside a plain model in memory: they must always agree."""

import asyncio
from typing import Any

import httpx
from hypothesis import settings
from hypothesis import strategies as st
from hypothesis.stateful import RuleBasedStateMachine, initialize, invariant, precondition, rule

from databases import fresh_sqlite
from longpoint.schedules.check import check_store
from longpoint.schedules.migrate import migrate
from longpoint.schedules.store import Store
from stored import house, opening, serving

MARKS = st.sampled_from(["A", "B", "C", "D é", "E/1"])
WIDTHS = st.integers(20, 40).map(str)


class ScheduleMachine(RuleBasedStateMachine):
    """Holds what the schedule should be: openings by mark, the history of all of it, and the tags seen."""

    def __init__(self) -> None:
        super().__init__()
        self.loop = asyncio.new_event_loop()
        self.openings: dict[str, tuple[str, str]] = {}
        self.history: list[dict[str, tuple[str, str]]] = []
        self.stale: list[str] = []
        self.cut: set[str] = set()
        self.keys = 0

    def wait(self, work: Any) -> Any:
        return self.loop.run_until_complete(work)

    def send(self, method: str, path: str, **given: Any) -> httpx.Response:
        return self.wait(self.service.request(method, path, **given))

    @initialize()
    def start(self) -> None:
        self.address = fresh_sqlite(FOLDER)
        self.wait(_migrate(self.address))
        self.context = serving(self.address)
        self.service = self.wait(self.context.__aenter__())
        self.where = self.send("POST", "/v1/schedules", json=house()).headers["location"]
        self.history.append({})

    def teardown(self) -> None:
        if hasattr(self, "context"):
            self.wait(self.context.__aexit__(None, None, None))
            assert self.wait(_check(self.address)) == []
        self.loop.close()

    def changed(self) -> None:
        self.history.append(dict(self.openings))

    def by_id(self, mark: str) -> str:
        return f"{self.where}/openings/{self.openings[mark][0]}"

    @rule(mark=MARKS, width=WIDTHS, twice=st.booleans())
    def add(self, mark: str, width: str, twice: bool) -> None:
        self.keys += 1
        headers = {"idempotency-key": f"key{self.keys}"}
        answer = self.send("POST", f"{self.where}/openings", json=opening(mark, width), headers=headers)
        if mark in self.openings:
            assert answer.status_code == 422
            return
        assert answer.status_code == 201
        if twice:
            again = self.send("POST", f"{self.where}/openings", json=opening(mark, width), headers=headers)
            assert again.content == answer.content
        self.stale.append(answer.headers["etag"])
        self.openings[mark] = (answer.json()["id"], width)
        self.changed()

    @precondition(lambda self: self.openings)
    @rule(data=st.data(), width=WIDTHS, new=MARKS)
    def remeasure(self, data: st.DataObject, width: str, new: str) -> None:
        mark = data.draw(st.sampled_from(sorted(self.openings)))
        tag = self.send("GET", self.by_id(mark)).headers["etag"]
        body = opening(new, width)
        answer = self.send("PUT", self.by_id(mark), json=body, headers={"if-match": tag})
        if new in self.openings and new != mark:
            assert answer.status_code == 422
            return
        assert answer.status_code == 200
        self.stale.append(tag)
        id, _ = self.openings.pop(mark)
        self.openings[new] = (id, width)
        self.changed()

    @precondition(lambda self: self.openings)
    @rule(data=st.data())
    def remove(self, data: st.DataObject) -> None:
        mark = data.draw(st.sampled_from(sorted(self.openings)))
        tag = self.send("GET", self.by_id(mark)).headers["etag"]
        assert self.send("DELETE", self.by_id(mark), headers={"if-match": tag}).status_code == 200
        self.stale.append(tag)
        del self.openings[mark]
        self.changed()

    @precondition(lambda self: self.openings and self.stale)
    @rule(data=st.data())
    def change_from_a_stale_state(self, data: st.DataObject) -> None:
        mark = data.draw(st.sampled_from(sorted(self.openings)))
        now = self.send("GET", self.by_id(mark)).headers["etag"]
        tag = data.draw(st.sampled_from(self.stale))
        if tag != now:
            answer = self.send("PUT", self.by_id(mark), json=opening(mark, "99"), headers={"if-match": tag})
            assert answer.status_code == 412

    @rule(data=st.data())
    def restore(self, data: st.DataObject) -> None:
        number = data.draw(st.integers(1, len(self.history)))
        tag = self.send("GET", self.where).headers["etag"]
        body = {"revision": number}
        assert (
            self.send("POST", f"{self.where}/restore", json=body, headers={"if-match": tag}).status_code
            == 200
        )
        self.openings = dict(self.history[number - 1])
        self.changed()

    @rule(
        openings=st.dictionaries(MARKS, WIDTHS, min_size=1), existing=st.sampled_from(["refuse", "replace"])
    )
    def bring_in(self, openings: dict[str, str], existing: str) -> None:
        tag = self.send("GET", self.where).headers["etag"]
        answer = self.send(
            "POST",
            f"{self.where}/import?existing={existing}",
            json={"openings": [opening(mark, width) for mark, width in openings.items()]},
            headers={"if-match": tag},
        )
        if existing == "refuse" and openings.keys() & self.openings.keys():
            assert answer.status_code == 422
            return
        assert answer.status_code == 200
        before = {mark: width for mark, (_, width) in self.openings.items()}
        after = openings if existing == "replace" else {**before, **openings}
        if after == before:
            return
        listed = self.send("GET", f"{self.where}/openings").json()["items"]
        ids = {one["mark"]: one["id"] for one in listed}
        for mark in before.keys() & after.keys():
            assert ids[mark] == self.openings[mark][0]
        self.openings = {mark: (ids[mark], width) for mark, width in after.items()}
        self.changed()

    @precondition(lambda self: self.openings)
    @rule(data=st.data())
    def cut_a_head(self, data: st.DataObject) -> None:
        mark = data.draw(st.sampled_from(sorted(self.openings)))
        id = self.openings[mark][0]
        piece = {"opening": id, "piece": "head_casing", "state": "cut"}
        answer = self.send("POST", f"{self.where}/work", json={"pieces": [piece]})
        assert answer.status_code == 201
        assert id in self.cut or answer.json()["revision"] == len(self.history) + 1
        self.cut.add(id)
        # Of a head that is cut as it should be already, the same fact changes nothing.
        if answer.json()["revision"] > len(self.history):
            self.changed()

    @invariant()
    def it_is_what_it_should_be(self) -> None:
        if not self.history:
            return
        schedule = self.send("GET", self.where).json()
        assert schedule["revision"] == len(self.history)
        assert schedule["opening_count"] == len(self.openings)
        listed = self.send("GET", f"{self.where}/openings").json()["items"]
        assert {one["mark"]: (one["id"], one["readings"]["jamb_width"]) for one in listed} == self.openings

    @precondition(lambda self: self.history)
    @rule(data=st.data())
    def read_back(self, data: st.DataObject) -> None:
        number = data.draw(st.integers(1, len(self.history)))
        out = self.send("GET", f"{self.where}/export?revision={number}").json()
        kept = {one["mark"]: one["readings"]["jamb_width"] for one in out["openings"]}
        assert kept == {mark: width for mark, (_, width) in self.history[number - 1].items()}


async def _migrate(address: str) -> None:
    store = Store(address, create=True)
    await migrate(store)
    await store.close()


async def _check(address: str) -> list[str]:
    store = Store(address)
    try:
        return await check_store(store)
    finally:
        await store.close()


FOLDER: Any = None


def test_the_service_agrees_with_a_model(tmp_path: Any) -> None:
    from hypothesis.stateful import run_state_machine_as_test

    global FOLDER
    FOLDER = tmp_path
    run_state_machine_as_test(
        ScheduleMachine, settings=settings(max_examples=8, stateful_step_count=20, deadline=None)
    )
