"""Fuzz a live server with keys: every operation and the ways the document links them, every check, seed by seed.

    python tests/contract/fuzz_live.py --cases 100000

Each round starts a database (SQLite and PostgreSQL by turns) and a server of its own, makes a key for each of two
accounts with `python -m longpoint keys create`, lets schemathesis loose on it with one seed, and ends both. What the
document alone decides (the "coverage" phase) is the same for every seed, so it is sent once to each kind of database;
after that only what is drawn is. Prints the seed of each round, and at the end the cases of each operation and their
statuses. Ends with status 1 when anything was found. Schemathesis prints a finding with the request that showed it;
`--seed N --first DATABASE --rounds 1` goes through its round again, with --drawn if it was the third or later.
"""

import argparse
import json
import os
import subprocess
import sys
import tempfile
import time
from collections import Counter
from collections.abc import Iterator
from contextlib import ExitStack, contextmanager
from pathlib import Path
from typing import Any, NamedTuple

HERE = Path(__file__).parent
ROOT = HERE.parents[1]
sys.path[:0] = [str(ROOT / "service"), str(ROOT / "tests")]

import databases  # noqa: E402
from deployment import Replica, longpoint  # noqa: E402

ACCOUNTS = ("ann", "bob")


class Found(NamedTuple):
    """What one round came to.

    Attributes:
        sent: How many cases, by operation, phase and status.
        distinct: How many of them were unlike all others of the round.
        wrong: What was found; empty when nothing was.
    """

    sent: Counter[tuple[str, str, int]]
    distinct: int
    wrong: list[str]


def fuzz(database: str, folder: Path, seed: int, examples: int, phases: str) -> Found:
    """One round: a server over a fresh database, and everything schemathesis draws from a seed."""
    longpoint("migrate", "--database", database)
    keys = {
        name: longpoint("keys", "create", "--account", name, "--name", "fuzz", "--database", database)
        for name in ACCOUNTS
    }
    log = folder / "server.log"
    with serving(database, log) as address:
        tally = folder / "tally.json"
        command = [
            *(sys.executable, "-m", "schemathesis.cli", "--config-file", str(configuration(folder, keys))),
            *("run", f"{address}/openapi.json", "--checks", "all", "--phases", phases, "--seed", str(seed)),
            *("--max-examples", str(examples), "--continue-on-failure", "--no-color"),
        ]
        environment = {
            **os.environ,
            "PYTHONPATH": os.pathsep.join([str(ROOT / "service"), str(ROOT / "tests")]),
            "SCHEMATHESIS_HOOKS": "fuzzing_live",
            "FUZZING_TALLY": str(tally),
        }
        done = subprocess.run(
            command, cwd=folder, env=environment, text=True, capture_output=True, check=False
        )
    return judged(done.stdout + done.stderr, done.returncode, json.loads(tally.read_text()), log.read_text())


def judged(said: str, status: int, tally: dict[str, Any], log: str) -> Found:
    """What a round found: what schemathesis says, and what the server's answers and log say on their own."""
    sent = Counter({(name, phase, code): count for name, phase, code, count in tally["sent"]})
    wrong = []
    if status != 0:
        wrong.append(f"schemathesis ended with {status}\n{said}")
    if broken := {(name, code): count for (name, _, code), count in sent.items() if code >= 500}:
        wrong.append(f"answers of 500 and more: {broken}")
    if lines := [line for line in log.splitlines() if '"level":"error"' in line]:
        wrong.append("errors in the server's log:\n" + "\n".join(lines[:5]))
    if not sent:
        wrong.append(f"nothing was sent\n{said}")
    return Found(sent, tally["distinct"], wrong)


@contextmanager
def serving(database: str, log: Path) -> Iterator[str]:
    """A server over a database, as a process of its own; gives its address."""
    with log.open("w") as output:
        replica = Replica(database, output=output)
        replica.start()
        try:
            yield f"http://127.0.0.1:{replica.port}"
        finally:
            replica.stop()


def configuration(folder: Path, keys: dict[str, str]) -> Path:
    """What schemathesis goes by: the suite's checks, and keys of two accounts that may see nothing of each other."""
    who = folder / "who.json"
    users = [
        {"name": name, "fixedHeaders": [{"name": "Authorization", "value": f"Bearer {key}"}]}
        for name, key in keys.items()
    ]
    who.write_text(json.dumps({"auth": users}))
    who.chmod(0o600)
    file = folder / "schemathesis.toml"
    auth = f'[auth.wfc]\npath = "{who}"\nuser = "{ACCOUNTS[0]}"\npeers = {json.dumps(ACCOUNTS)}\n'
    file.write_text((HERE / "shared.toml").read_text() + auth)
    return file


def report(sent: Counter[tuple[str, str, int]]) -> Iterator[str]:
    """Lines that give the cases of each operation and their statuses."""
    for name in sorted({name for name, _, _ in sent}):
        statuses: Counter[int] = Counter()
        for (each, _, status), count in sent.items():
            if each == name:
                statuses[status] += count
        said = "  ".join(f"{status}: {count}" for status, count in sorted(statuses.items()))
        yield f"{name:<28}{statuses.total():>8}   {said}"
    phases: Counter[str] = Counter()
    for (_, phase, _), count in sent.items():
        phases[phase] += count
    yield f"{'all':<28}{sent.total():>8}   " + "  ".join(f"{name}: {count}" for name, count in phases.items())


def main() -> int:
    parser = argparse.ArgumentParser(
        description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter
    )
    parser.add_argument("--cases", type=int, default=100_000, help="end after the round that reaches them")
    parser.add_argument("--minutes", type=float, default=60, help="start no round after them")
    parser.add_argument("--rounds", type=int, default=1000, help="end after them at the latest")
    parser.add_argument("--examples", type=int, default=100, help="drawn for each operation in a round")
    parser.add_argument(
        "--seed", type=int, default=1, help="of the first round; each further one takes the next"
    )
    parser.add_argument("--first", choices=("sqlite", "postgresql"), default="sqlite", help="database")
    parser.add_argument("--drawn", action="store_true", help="leave out what is the same for every seed")
    chosen = parser.parse_args()
    ends = time.monotonic() + 60 * chosen.minutes
    kinds = ["sqlite", "postgresql"] if chosen.first == "sqlite" else ["postgresql", "sqlite"]
    sent: Counter[tuple[str, str, int]] = Counter()
    wrong: list[str] = []
    with ExitStack() as stack:
        server: Any = None
        for number in range(chosen.rounds):
            kind, seed, started = kinds[number % 2], chosen.seed + number, time.monotonic()
            folder = Path(stack.enter_context(tempfile.TemporaryDirectory(prefix="longpoint-fuzz-")))
            if kind == "postgresql":
                server = server or stack.enter_context(databases.postgres_server())
                database = databases.fresh_postgres(server)
            else:
                database = databases.fresh_sqlite(folder)
            whole = number < 2 and not chosen.drawn
            phases = "examples,coverage,fuzzing,stateful" if whole else "fuzzing,stateful"
            found = fuzz(database, folder, seed, chosen.examples, phases)
            sent += found.sent
            wrong += found.wrong
            print(
                f"seed {seed} on {kind} ({phases}): {found.sent.total()} cases, {found.distinct} of them distinct, in "
                f"{time.monotonic() - started:.0f} s: {'FOUND SOMETHING' if found.wrong else 'nothing found'}",
                *found.wrong,
                sep="\n",
                flush=True,
            )
            if sent.total() >= chosen.cases or time.monotonic() > ends:
                break
    print(*report(sent), sep="\n")
    print(f"{len(wrong)} findings" if wrong else "nothing was found")
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main())
