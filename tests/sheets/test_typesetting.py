"""Setting a sheet as PDF, in a process that can be stopped and keeps nothing."""

import importlib
import subprocess
import sys

import httpx
import pytest

from longpoint.api.document.examples import CUT_LIST
from longpoint.sheets import RECIPES, Sheet, UnsetError, Wording, pdf
from sheets.houses import sheet_house

# By its name: in its package the function goes by the same one.
room = importlib.import_module("longpoint.sheets.pdf")
DOCUMENT = RECIPES[Sheet.MATERIAL_LIST].make(sheet_house(2))


@pytest.fixture
def hurried(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(room, "_MOST_SECONDS", 0.001)


@pytest.mark.usefixtures("hurried")
def test_one_that_takes_too_long_is_stopped() -> None:
    with pytest.raises(UnsetError, match="longer"):
        pdf(DOCUMENT, Wording())


@pytest.mark.usefixtures("hurried")
async def test_its_caller_hears_what_to_ask_for(client: httpx.AsyncClient) -> None:
    answer = await client.post(
        "/v1/sheets/material-list", json=CUT_LIST["two_rooms"].request, headers={"accept": "application/pdf"}
    )
    assert answer.status_code == 422
    (fault,) = answer.json()["errors"]
    assert (fault["code"], fault["header"]) == ("too-long", "accept")
    assert "HTML" in fault["detail"]


def test_one_that_takes_too_much_memory_is_stopped(monkeypatch: pytest.MonkeyPatch) -> None:
    house = RECIPES[Sheet.OPENING_SHEET].make(sheet_house(30))
    assert pdf(house, Wording())
    monkeypatch.setattr(room, "_MOST_BYTES", 40 * 1024**2)
    monkeypatch.setattr(room, "_MOST_SECONDS", 20)
    with pytest.raises(UnsetError, match="memory"):
        pdf(house, Wording())


def test_a_fault_of_our_own_is_not_laid_to_the_sheet(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(room, "_MOST_BYTES", "as much as it likes")
    with pytest.raises(RuntimeError, match=r"(?s)could not be set.*ValueError"):
        pdf(DOCUMENT, Wording())


def test_what_it_needs_stays_out_of_the_server() -> None:
    code = "import sys, longpoint.app; print(sorted({'typst'} & set(sys.modules)))"
    assert subprocess.run([sys.executable, "-c", code], capture_output=True, check=True).stdout == b"[]\n"


def test_the_same_sheet_is_the_same_bytes() -> None:
    assert pdf(DOCUMENT, Wording()) == pdf(DOCUMENT, Wording())
