"""The exact number, made without harm to the process it is in."""

import io
import subprocess
import sys

import pytest
from hypothesis import given
from hypothesis import strategies as st

from longpoint.lengths import Fraction


@given(st.fractions())
def test_text_of_a_number_reads_back(number: Fraction) -> None:
    assert Fraction(str(number)) == number


@pytest.mark.parametrize("text", ["", "x", "1/0x", "1 1/2", "--1"])
def test_text_that_is_no_number_is_refused(text: str) -> None:
    with pytest.raises(ValueError):
        Fraction(text)


def test_one_character_leaves_the_interpreter_alone() -> None:
    assert Fraction("4") == 4
    assert io.BytesIO(b"\0").read(1)[0] == 0


def test_the_whole_service_leaves_the_interpreter_alone() -> None:
    """In a process of its own, since the harm would be done once, where the module is first read."""
    script = "import io, longpoint.app, longpoint.__main__; raise SystemExit(io.BytesIO(bytes(1)).read(1)[0])"
    done = subprocess.run([sys.executable, "-c", script], env={"PYTHONPATH": ":".join(sys.path)}, check=False)
    assert done.returncode == 0
