"""The audit of dependencies: it never passes for done where it was not."""

import os
import subprocess
from pathlib import Path

import pytest

AUDIT = Path(__file__).parents[2] / "deploy/audit"


def audit(folder: Path, *arguments: str) -> subprocess.CompletedProcess[str]:
    path = f"{folder}:/usr/bin:/bin"
    return subprocess.run(
        [str(AUDIT), *arguments], env={"PATH": path}, capture_output=True, text=True, timeout=60
    )


@pytest.mark.parametrize(("arguments", "status"), [((), 0), (("--strict",), 3)])
def test_without_its_tool_it_says_that_nothing_was_audited(tmp_path, arguments, status):
    if (AUDIT.parents[1] / ".venv/bin/pip-audit").exists():
        pytest.skip("pip-audit is in .venv")
    done = audit(tmp_path, *arguments)
    assert done.returncode == status
    assert "Not audited: pip-audit is not installed" in done.stderr


def test_without_the_network_it_says_that_nothing_was_audited(tmp_path):
    for name, text in (("pip-audit", "exit 9"), ("python3", "exit 1")):
        stand_in = tmp_path / name
        stand_in.write_text(f"#!/bin/sh\n{text}\n")
        stand_in.chmod(0o755)
    if (AUDIT.parents[1] / ".venv/bin/python").exists():
        pytest.skip("the interpreter of .venv is asked, which no test can unplug")
    done = audit(tmp_path, "--strict")
    assert done.returncode == 3
    assert "cannot be reached" in done.stderr


def test_it_audits_every_lock_by_hash(tmp_path):
    said = tmp_path / "said"
    for name, text in (("pip-audit", f'echo "$@" >> {said}'), ("python3", "exit 0")):
        stand_in = tmp_path / name
        stand_in.write_text(f"#!/bin/sh\n{text}\n")
        stand_in.chmod(0o755)
    if (AUDIT.parents[1] / ".venv/bin/python").exists():
        pytest.skip("the interpreter of .venv is asked, which no test can unplug")
    assert audit(tmp_path).returncode == 0
    lines = said.read_text().splitlines()
    assert len(lines) == len([name for name in os.listdir(AUDIT.parent) if name in LOCKS])
    assert all("--require-hashes" in line and "--disable-pip" in line for line in lines)


LOCKS = ("requirements.lock", "requirements-traces.lock")
