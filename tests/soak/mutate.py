"""Small faults put into the middle of the service, one at a time; each must make some test fail.

    python tests/soak/mutate.py --count 150 --seed 1    a sample over every room
    python tests/soak/mutate.py --only geometry/        of the files whose path has that in it

It works on a copy of the tree. One process imports the libraries and forks for each fault, to run the tests that reach
its line until the first fails, those of its room first. PostgreSQL, the slowest tests and those that are timed are left
out. Prose, types and declarations stay as they are. It prints what survived and the share killed, and ends with status
1 when that is less than nine in ten.
"""

import argparse
import ast
import contextlib
import importlib
import os
import pickle
import random
import shutil
import signal
import subprocess
import sys
import tempfile
import time
from collections import Counter
from collections.abc import Iterator
from pathlib import Path
from typing import NamedTuple

import pytest

ROOT = Path(__file__).parents[2]
sys.path.insert(0, str(ROOT / "tests"))

from soak.faults import changes, walked  # noqa: E402
from soak.reach import Reach  # noqa: E402

Lines = dict[str, set[tuple[str, int]]]

HEAVY = "litestar.openapi sqlalchemy.ext.asyncio alembic.command aiosqlite pint numpy highspy httpx hypothesis typst"
SLOW = (
    "postgresql ten_thousand kill dies ended_are_not went_and_came two_replicas eight_writers hangs cancelled"
    " lies_within_it backup at_their_ends agrees_with_a_model test_migrations test_outages test_commands eight"
    " 100_000 taken_at_once"
)
TESTS = (
    "texts values shop geometry/test_group.py geometry/test_dry_fit_of_groups.py geometry/test_movement.py schedules"
    " contract/test_drift.py contract/test_rates.py contract/test_same_faults.py contract/test_same_house.py"
    " contract/test_amounts.py api/test_bad_input.py api/test_shop_sections.py api/test_sheets.py"
    " api/test_cut_list.py api/test_read_lengths.py api/test_offers.py api/test_planning.py"
    " api/test_alone.py api/test_leaving.py api/test_kept_pieces.py"
)
HOMES = {"api/stored": "tests/schedules/"}
"""Where the tests of a room are that do not stand under its name."""
EVERY = ("tests/contract/test_drift.py", "tests/texts/test_catalog.py")
"""Tests that look at the source or at what is published, and so reach every line."""
ROOMS = (
    ("texts", "*"),
    ("values", "*"),
    ("shop", "house build planning answer yard saw wages rates"),
    ("schedules", "kept rows sent answers states house_rows making"),
    ("api/answers", "*"),
    ("api/computed", "*"),
    ("api/stored", "changing house openings groups lengths held_lots schedules built"),
    ("geometry", "group"),
)
FLAKY = 5
"""How many tests may fail without a fault, as those that wait for something do on a busy machine: they are left out."""
LONGEST = 120
"""How many seconds of tests are asked of one fault, the quickest first."""


class Mutant(NamedTuple):
    """A fault: where its text starts and ends in the file, in bytes, and what stands there instead."""

    file: str
    lines: range
    start: int
    end: int
    text: str
    kind: str


def mutants(only: str) -> Iterator[Mutant]:
    """Every fault that can be made in the files whose path has this in it."""
    for room, names in ROOMS:
        for path in sorted(
            p for name in names.split() for p in (ROOT / "service/longpoint" / room).glob(f"{name}.py")
        ):
            file, source = str(path.relative_to(ROOT)), path.read_bytes()
            starts = [0]
            for line in source.splitlines(keepends=True):
                starts.append(starts[-1] + len(line))
            for node in walked(ast.parse(source)) if only in file else ():
                for kind, at, text in changes(node):
                    start = starts[at.lineno - 1] + at.col_offset
                    end = starts[at.end_lineno - 1] + at.end_col_offset
                    text = text if text == "pass" else f"({text})"
                    yield Mutant(file, range(at.lineno, at.end_lineno + 1), start, end, text, kind)


def run_tests(tree: Path, tests: list[str], reach: Reach | None) -> int:
    """What pytest ends with, in this process, once it is one of its own group."""
    os.setsid()
    os.chdir(tree)
    for stream in (1, 2):
        os.dup2(os.open("said.txt", os.O_WRONLY | os.O_CREAT | os.O_APPEND), stream)
    sys.path[:0] = [str(tree / part) for part in ("service", "tests", "sdk/src")]
    os.environ["PYTHONPATH"] = os.pathsep.join(sys.path[:3])
    asked = [*([] if reach else ["-x"]), "--tb=short", "-Wignore::pytest.PytestAssertRewriteWarning"]
    asked += [f"-pno:{plugin}" for plugin in ("cacheprovider", "schemathesis", "xdist")]
    left_out = " and ".join(f"not {name}" for name in SLOW.split())
    ended = int(pytest.main([*asked, "-k", left_out, *tests], plugins=[reach] if reach else []))
    if reach:
        sound = {test: lines for test, lines in reach.lines.items() if test not in reach.failed}
        (tree / "reach.pickle").write_bytes(pickle.dumps((reach.took, sound, reach.failed)))
    sys.stdout.flush()
    return ended


def outcome(tree: Path, tests: list[str], limit: float, reach: Reach | None = None) -> int | None:
    """What pytest ends with in a fork of this process; None when it takes longer than the limit."""
    (tree / "said.txt").unlink(missing_ok=True)
    child = os.fork()
    if not child:
        try:
            os._exit(run_tests(tree, tests, reach))
        finally:
            os._exit(99)
    over, status, gone = time.monotonic() + limit, 0, 0
    while not gone and time.monotonic() < over:
        time.sleep(0.05)
        gone, status = os.waitpid(child, os.WNOHANG)
    with contextlib.suppress(ProcessLookupError):
        os.killpg(child, signal.SIGKILL)  # also what it started
    if not gone:
        os.waitpid(child, 0)
    return os.waitstatus_to_exitcode(status) if gone else None


def asked_of(tree: Path, mutant: Mutant, took: dict[str, float], lines: Lines) -> list[str]:
    """The tests that reach the line: those of its module, then the quickest of every file, its room's own before the
    others, then the next of every file; of a line that only an import runs, those that reach its file."""
    file = str(tree / mutant.file)
    places = {(file, number) for number in mutant.lines}
    found = [test for test, reached in lines.items() if reached & places]
    found = found or [test for test, reached in lines.items() if any(at == file for at, _ in reached)]
    room = str(Path(mutant.file).parent.relative_to("service/longpoint"))
    home = HOMES.get(room, f"tests/{room.partition('/')[0]}/")
    asked, total = list[str](), 0.0
    in_file: Counter[str] = Counter()
    ranks = {}
    for test in sorted(found, key=lambda one: took[one]):
        of = test.partition("::")[0]
        ranks[test] = in_file[of]
        in_file[of] += 1
    own = f"/test_{Path(mutant.file).stem}.py::"
    for test in sorted(
        found, key=lambda one: (own not in one, ranks[one], not one.startswith(home), took[one])
    ):
        total += took[test]
        if total < LONGEST:
            asked.append(test)
    return [*asked, *EVERY]


def tried(tree: Path, mutant: Mutant, tests: list[str]) -> bool:
    """Whether the tests told of a fault."""
    path = tree / mutant.file
    source = path.read_bytes()
    # Compiled files are known by their second and size, and both may be the same again.
    for compiled in (path.parent / "__pycache__").glob(f"{path.stem}.*"):
        compiled.unlink()
    try:
        path.write_bytes(source[: mutant.start] + mutant.text.encode() + source[mutant.end :])
        return outcome(tree, tests, 20 + 3 * LONGEST) != 0
    finally:
        path.write_bytes(source)


def main() -> int:
    """Run it."""
    parser = argparse.ArgumentParser(
        description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter
    )
    parser.add_argument("--count", type=int, default=150)
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--only", default="")
    parser.add_argument("--minutes", type=float, default=60, help="no fault is begun after these")
    asked = parser.parse_args()
    for name in HEAVY.split():
        importlib.import_module(name)
    every = list(mutants(asked.only))
    sample = random.Random(asked.seed).sample(every, min(asked.count, len(every)))
    counts: Counter[bool] = Counter()
    with tempfile.TemporaryDirectory() as made:
        tree = Path(made)
        for file in subprocess.check_output(("git", "ls-files"), cwd=ROOT, text=True).splitlines():
            (tree / file).parent.mkdir(parents=True, exist_ok=True)
            shutil.copy(ROOT / file, tree / file)
        reach = Reach({str(tree / one.file) for one in every})
        outcome(tree, [f"tests/{one}" for one in TESTS.split()], 1800, reach)
        took, lines, failed = pickle.loads((tree / "reach.pickle").read_bytes())
        if len(failed) > FLAKY:
            print(f"Without a fault, tests fail:\n{(tree / 'said.txt').read_text()[-2000:]}")
            return 2
        for test in failed:
            print(f"Left out, since it fails without a fault: {test}")
        sys.dont_write_bytecode = True
        os.environ["PYTHONDONTWRITEBYTECODE"] = "1"
        over = time.monotonic() + asked.minutes * 60
        for mutant in sample:
            if time.monotonic() > over:
                break
            counts[killed := tried(tree, mutant, asked_of(tree, mutant, took, lines))] += 1
            if not killed:
                was = (tree / mutant.file).read_bytes()[mutant.start : mutant.end].decode()
                print(f"{mutant.file}:{mutant.lines[0]}: {mutant.kind}: {was} -> {mutant.text}", flush=True)
    share = counts[True] / max(1, counts.total())
    print(f"{counts[True]} of {counts.total()} killed, {share:.1%}, of {len(every)} faults there could be.")
    return 0 if share >= 0.9 else 1


if __name__ == "__main__":
    sys.exit(main())
