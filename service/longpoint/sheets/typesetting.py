"""A process that sets one sheet: data as JSON on its input, the PDF on its output. `pdf.py` starts it.

Its arguments are the memory it may take, in bytes, and the seconds: when they are over an alarm ends it, however busy
whoever waits for it is. Where Python itself has none left it ends with status 3; where Typst
has, the system kills it.

Typst remembers what it set, ten documents back, and gives none of it away: a server that set sheets itself would hold
two gigabytes after a few long ones. This process ends with its sheet, and takes no more memory than it is allowed.
"""

import resource
import signal
import sys
from contextlib import suppress
from ctypes import CDLL
from pathlib import Path
from typing import Literal

import typst

_PARENT_DEATH_SIGNAL = 1  # PR_SET_PDEATHSIG


def _set(sheet: str, *, tagged: Literal["ua-1"] | None) -> bytes:
    template = Path(__file__).parent / "pages" / "sheet.typ"
    made = typst.compile(
        template.read_bytes(), sys_inputs={"sheet": sheet}, timestamp=0, pdf_standards=tagged
    )
    assert isinstance(made, bytes)
    return made


def _end_with_parent() -> None:
    """Have the system end this process when the one that waits for it is killed; elsewhere the alarm does."""
    if sys.platform == "linux":
        CDLL(None).prctl(_PARENT_DEATH_SIGNAL, signal.SIGKILL)


def main() -> None:
    """Set the sheet."""
    _end_with_parent()
    most = int(sys.argv[1])
    with suppress(ValueError, OSError):  # where the system keeps its own bounds
        resource.setrlimit(resource.RLIMIT_DATA, (most, most))
    sheet = sys.stdin.buffer.read().decode()
    signal.setitimer(signal.ITIMER_REAL, float(sys.argv[2]))
    try:
        made = _set(sheet, tagged="ua-1")
    except typst.TypstError:
        # A text with a character that no font here has cannot be read aloud by rule: a box stands for it then.
        made = _set(sheet, tagged=None)
    sys.stdout.buffer.write(made)


if __name__ == "__main__":
    try:
        main()
    except MemoryError:
        sys.exit(3)
