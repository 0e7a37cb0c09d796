"""A sheet as PDF, set by Typst from the same view as the HTML.

Chosen by measurement against WeasyPrint, which would have printed the HTML itself. Thirty pages, each a table of
12 rows and a drawing of 60 shapes, on one core of the machine this was built on: Typst 0.15 took 0.09 s, WeasyPrint
70 took 4.8 s. Typst is one wheel of 81 MB unpacked that needs nothing from the system and brings its own fonts;
WeasyPrint and what it needs are 65 MB, and Pango besides, which pip cannot install. Each sheet is set in a process of
its own, which is started in about 15 ms and can be stopped.

The page is a fixed template; the document goes in as JSON data and never as markup, so no text can be taken for
a command. The files it makes are tagged for readers that speak them aloud.
"""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path
from signal import SIGALRM
from tempfile import TemporaryFile

import msgspec

from longpoint.processes import environment
from longpoint.sheets.document import Document
from longpoint.sheets.drawing.lettering import unturned
from longpoint.sheets.drawing.style import Styling, stylesheet
from longpoint.sheets.view import view
from longpoint.sheets.wording import Wording

_MOST_SECONDS = 60.0
_MOST_BYTES = 1024**3
_NO_MEMORY = 3


class UnsetError(Exception):
    """A sheet was not set in the time and the memory that one may take."""


def pdf(document: Document, wording: Wording) -> bytes:
    """The sheet as a PDF file; the same document always gives the same bytes.

    Raises:
        UnsetError: when it takes too much time or memory.
        RuntimeError: when it fails otherwise, which is a fault of this service.
    """
    shown = view(document, wording)
    plain = stylesheet(Styling.PLAIN)
    for block in shown["blocks"]:
        if block["kind"] == "pictures":
            for picture in block["pictures"]:
                picture["svg"] = _styled(picture["svg"], plain)
    sheet = unturned(msgspec.json.encode(shown).decode()).encode()
    return _set(sheet)


def _set(sheet: bytes) -> bytes:
    # -P: the folder of the script has modules by the names of some in the standard library.
    script = str(Path(__file__).with_name("typesetting.py"))
    command = [sys.executable, "-P", script, str(_MOST_BYTES), str(_MOST_SECONDS)]
    # Files, not pipes: those pass megabytes on in small pieces, each of which waits for a busy server's threads.
    with TemporaryFile() as made, TemporaryFile() as said:
        ended = subprocess.run(
            command, input=sheet, stdout=made, stderr=said, env=environment(), check=False
        ).returncode
        made.seek(0)
        said.seek(0)
        if ended == 0:
            return made.read()
        reason = said.read().decode(errors="replace")[-2000:]
    if ended == -SIGALRM:
        raise UnsetError(f"It took longer than {_MOST_SECONDS:.0f} s.")
    if ended < 0 or ended == _NO_MEMORY:
        raise UnsetError(f"It took too much memory. {reason}")
    raise RuntimeError(f"A sheet could not be set. {reason}")


def _styled(svg: str, sheet: str) -> str:
    """A drawing with the default values in its own style sheet: Typst's reader knows no CSS variables."""
    head, mark, rest = svg.partition("</desc>")
    return f"{head}{mark}{sheet}{rest}"
