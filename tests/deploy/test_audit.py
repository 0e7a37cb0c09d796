"""The audit of dependencies: it fails for a known vulnerability and for nothing else, and never passes for done."""

import shutil
import subprocess
from pathlib import Path

import pytest

DEPLOY = Path(__file__).parents[2] / "deploy"
LOCKS = ("requirements.lock", "requirements-traces.lock")
QUIET = 'echo "$@" >> "$0.asked"; echo "No known vulnerabilities found" >&2'
FOUND = 'echo "somelib 1.0 CVE-0000-1 1.1"; echo "Found 1 known vulnerability in 1 package" >&2; exit 1'
OFFLINE = 'echo "Traceback" >&2; echo "ConnectionError: no such host" >&2; exit 1'


def audit(folder: Path, *arguments: str, stand_in: str | None = None) -> subprocess.CompletedProcess[str]:
    """Run it as it stands, in a copy of its folder, with something in the place of its tool."""
    (folder / "deploy").mkdir()
    for name in ("audit", *LOCKS):
        shutil.copy(DEPLOY / name, folder / "deploy" / name)
    if stand_in is not None:
        tool = folder / "pip-audit"
        tool.write_text(f"#!/bin/sh\n{stand_in}\n")
        tool.chmod(0o755)
    return subprocess.run(
        [str(folder / "deploy/audit"), *arguments],
        env={"PATH": f"{folder}:/usr/bin:/bin"},
        capture_output=True,
        text=True,
        timeout=60,
    )


@pytest.mark.parametrize(("arguments", "status"), [((), 0), (("--strict",), 3)])
def test_without_its_tool_it_says_that_nothing_was_audited(tmp_path, arguments, status):
    done = audit(tmp_path, *arguments)
    assert done.returncode == status
    assert "Not audited: pip-audit is not installed" in done.stderr


@pytest.mark.parametrize(("arguments", "status"), [((), 0), (("--strict",), 3)])
def test_without_the_network_it_says_that_nothing_was_audited(tmp_path, arguments, status):
    done = audit(tmp_path, *arguments, stand_in=OFFLINE)
    assert done.returncode == status
    assert done.stderr.strip() == "Not audited: requirements.lock: ConnectionError: no such host"
    assert "no known vulnerability" not in done.stdout


def test_a_known_vulnerability_fails_and_says_what_to_do(tmp_path):
    done = audit(tmp_path, stand_in=FOUND)
    assert done.returncode == 1
    assert "somelib 1.0 CVE-0000-1 1.1" in done.stderr
    assert "./deploy/lock --upgrade-package" in done.stderr


def test_what_was_found_counts_though_the_network_goes(tmp_path):
    done = audit(tmp_path, stand_in=f'case "$*" in *traces*) {OFFLINE};; *) {FOUND};; esac')
    assert done.returncode == 1
    assert "somelib" in done.stderr
    assert "Not audited: requirements-traces.lock" in done.stderr


def test_it_audits_every_lock_by_hash(tmp_path):
    done = audit(tmp_path, stand_in=QUIET)
    assert done.returncode == 0
    assert done.stdout.splitlines() == [f"Audited {name}: no known vulnerability." for name in LOCKS]
    asked = (tmp_path / "pip-audit.asked").read_text().splitlines()
    assert len(asked) == len(LOCKS)
    assert all("--require-hashes" in line and "--disable-pip" in line for line in asked)
