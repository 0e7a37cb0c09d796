"""Every example, run as its reader would run it."""

import os
import shutil
import subprocess
import sys
from collections.abc import Iterator
from decimal import Decimal
from pathlib import Path
from urllib.parse import urlencode
from urllib.request import urlopen

import pytest

EXAMPLES = Path(__file__).parents[2] / "sdk/examples"


def environment(address: str, **more: str) -> dict[str, str]:
    """What an example's reader has: the SDK installed, and the address of a service."""
    paths = str(EXAMPLES.parent / "src")
    kept = {name: value for name, value in os.environ.items() if not name.startswith("LONGPOINT_")}
    return {**kept, "PYTHONPATH": paths, "LONGPOINT_URL": address, **more}


def run(name: str, address: str, *arguments: str) -> str:
    """What a Python example prints; none of it may warn."""
    done = subprocess.run(
        [sys.executable, "-W", "error", str(EXAMPLES / name), *arguments],
        env=environment(address),
        capture_output=True,
        text=True,
        check=False,
        timeout=60,
    )
    assert done.returncode == 0, done.stderr
    return done.stdout


def test_a_house_from_csv_to_the_material_list(address: str) -> None:
    *lines, total = run("material_list.py", address).splitlines()
    bought = [line.split() for line in lines]
    assert {words[4] for words in bought} == {"casing", "stool", "apron"}
    assert sum(Decimal(words[-1]) for words in bought) == Decimal(total.split()[0])
    assert all(words[3].endswith('"') for words in bought)  # a length, as the yard writes it


def test_a_remeasure_and_what_to_recut(address: str) -> None:
    said = run("remeasure.py", address)
    assert "11 of 14 pieces are as they should be" in said
    assert "wrong: K1 head_casing 36 in; cut again into K1 head_casing 35 7/8 in" in said
    assert "wrong: K1 stool 37 1/2 in; cut again into K1 stool 37 3/8 in" in said
    assert "cut from stock" not in said
    assert "buy" not in said


def test_sheets_that_are_set_later(address: str) -> None:
    *told, last = run("sheets_later.py", address).splitlines()
    assert told[-1].startswith("done")
    assert int(last.split()[0]) > 20


@pytest.mark.skipif(shutil.which("curl") is None, reason="curl is not here")
def test_a_window_by_curl(address: str) -> None:
    done = subprocess.run(
        [EXAMPLES / "a_window.sh"],
        env=environment(address),
        capture_output=True,
        text=True,
        check=False,
        timeout=60,
    )
    assert done.returncode == 0, done.stderr
    stool, refused, bought, kept, changed, stale = done.stdout.split(":\n")[1:]
    assert '"text":"37 1/2 in"' in stool
    assert '"pointer":"/jamb_width"' in refused
    assert '"cost":"18.40"' in bought
    assert '"name":"Curlew Cottage"' in kept
    assert '"kerf":"3/32"' in changed
    assert '"status":412' in stale


@pytest.fixture
def front_end(address: str) -> Iterator[str]:
    """The page, served by the documented command."""
    command = [sys.executable, str(EXAMPLES / "front_end/serve.py"), "--port", "0"]
    with subprocess.Popen(
        command, env=environment(address), stdout=subprocess.PIPE, stderr=subprocess.DEVNULL, text=True
    ) as server:
        assert server.stdout
        try:
            yield server.stdout.readline().split()[4]
        finally:
            server.terminate()


def shown(address: str, folder: Path, **fields: str) -> str:
    """The page in a browser, once it has its answer."""
    chromium = shutil.which("chromium")
    if chromium is None:
        pytest.skip("chromium is not here, so no page can be shown")
    done = subprocess.run(
        [
            chromium,
            "--headless=new",
            "--no-sandbox",
            "--disable-gpu",
            "--disable-dev-shm-usage",
            "--disable-background-networking",
            "--no-first-run",
            f"--user-data-dir={folder / 'profile'}",
            "--virtual-time-budget=10000",
            "--dump-dom",
            f"{address}?{urlencode(fields)}",
        ],
        capture_output=True,
        text=True,
        check=False,
        timeout=90,
    )
    assert done.returncode == 0, done.stderr
    return done.stdout.partition("<output")[2].partition("</output>")[0]


def test_the_page_shows_every_piece(front_end: str, tmp_path: Path) -> None:
    page = shown(front_end, tmp_path)
    assert page.count("<tr>") == 8  # the heads; stool, apron and its returns; two legs and the head
    for text in (
        "37 1/2 in",
        "4 5/8 in",
        "short 46 7/16 in, long 48 15/16 in",
        "miter right 45°",
        "right side casing",
    ):
        assert text in page


def test_the_page_points_at_what_is_wrong(front_end: str, tmp_path: Path) -> None:
    page = shown(front_end, tmp_path, **{"/readings/jamb_width": "30 5/8", "/trim/reveal": "3/0 in"})
    assert "Jamb to jamb: " in page
    assert "Reveal: " in page
    assert "<table" not in page


def test_the_front_end_passes_on_nothing_else(front_end: str) -> None:
    with pytest.raises(OSError, match="404"):
        urlopen(f"{front_end}v1/lengths", data=b"{}", timeout=10)
    with pytest.raises(OSError, match="404"):
        urlopen(f"{front_end}serve.py", timeout=10)
