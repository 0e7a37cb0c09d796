"""The TypeScript types compile, are what they should be, and refuse what the service would refuse."""

import re
import shutil
import subprocess
from pathlib import Path

import pytest

TYPESCRIPT = Path(__file__).parents[2] / "sdk/typescript"
COMPILER = "typescript@5.9.3"
OPTIONS = [
    "--noEmit",
    "--strict",
    "--noUncheckedIndexedAccess",
    "--target",
    "es2022",
    "--lib",
    "es2022,dom",
    "--module",
    "es2022",
    "--moduleResolution",
    "bundler",
]


WRONG = """
import type { Casing, MarkedLength, Operations, Stick } from "./longpoint";
const missing: Casing = { width: "2 1/2 in" };
const invented: Stick = { length: "8 ft", price: "9.20", color: "red" };
const nowhere: Operations["compute_stool"]["path"] = "/v1/stools";
const missed = (one: MarkedLength): string => one.exact;
"""


@pytest.mark.skipif(shutil.which("npm") is None, reason="npm is not here, so no TypeScript can be compiled")
def test_the_example_compiles_and_what_is_wrong_does_not(tmp_path: Path) -> None:
    for name in ("longpoint.d.ts", "example.ts"):
        shutil.copy(TYPESCRIPT / name, tmp_path)
    (tmp_path / "wrong.ts").write_text(WRONG.lstrip())
    done = subprocess.run(
        ["npm", "exec", "--yes", "--package", COMPILER, "--", "tsc", *OPTIONS, "example.ts", "wrong.ts"],
        cwd=tmp_path,
        capture_output=True,
        text=True,
        check=False,
        timeout=120,
    )
    if "npm error" in done.stderr:
        pytest.skip(f"npm is here but cannot fetch {COMPILER}")
    found = re.findall(r"^(\w+\.ts)\((\d+),", done.stdout, re.MULTILINE)
    assert set(found) == {("wrong.ts", line) for line in "2345"}, done.stdout
