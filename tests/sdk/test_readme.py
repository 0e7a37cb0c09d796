"""The READMEs' programs run as they stand, and print what they say they print."""

import os
import re
import subprocess
import sys
from pathlib import Path

import pytest

SDK = Path(__file__).parents[2] / "sdk"
README = (SDK / "README.md").read_text()
PROGRAMS = [
    program
    for text in (README, (SDK.parent / "README.md").read_text())
    for program in re.findall(r"```python\n(.*?)```", text, re.DOTALL)
]
SAID = {
    0: ["short 24 3/8 in, long 29 3/8 in", "buy 2 x 96 in casing 18.40"],
    1: re.findall(r"print\(.*\)  # (.*)", PROGRAMS[1]),
    2: ["Material list"],
    3: ["mine: Hall theirs: 30 3/4 in", "Heron Cottage 1"],
    4: ["/lengths/0 missing-unit", "/lengths/2 improper-fraction", "422 "],
    5: ["ok"],
    6: ["casing: ", "none below "],
    7: ["1 stool 37 1/2 in", "1 side_casing/left 48 15/16 in", "buy 1 x 168 in casing 16.10"],
}


@pytest.mark.parametrize("number", range(len(PROGRAMS)))
def test_a_program_of_the_readmes_runs(number: int, address: str, tmp_path: Path) -> None:
    kept = {name: value for name, value in os.environ.items() if not name.startswith("LONGPOINT_")}
    done = subprocess.run(
        [sys.executable, "-W", "error", "-c", PROGRAMS[number]],
        env={**kept, "PYTHONPATH": str(SDK / "src"), "LONGPOINT_URL": address},
        cwd=tmp_path,
        capture_output=True,
        text=True,
        check=False,
        timeout=60,
    )
    assert done.returncode == 0, done.stderr
    for said in SAID[number]:
        assert said in done.stdout, done.stdout


def test_every_file_the_readme_names_is_there() -> None:
    for link in re.findall(r"\]\(([^)]+)\)", README):
        assert (SDK / link).exists(), link
