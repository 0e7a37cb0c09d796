"""A sheet as PDF, set by Typst from the same view as the HTML.

Chosen by measurement against WeasyPrint, which would have printed the HTML itself. Thirty pages, each a table of
12 rows and a drawing of 60 shapes, on one core of the machine this was built on: Typst 0.15 took 0.09 s, WeasyPrint
70 took 4.8 s. Typst is one wheel of 81 MB unpacked that needs nothing from the system and brings its own fonts;
WeasyPrint and what it needs are 65 MB, and Pango besides, which pip cannot install. Typst gives up the global lock
while it works, so a thread is enough to keep a server answering.

The page is a fixed template; the document goes in as JSON data and never as markup, so no text can be taken for
a command. The files it makes are tagged for readers that speak them aloud.
"""

from __future__ import annotations

from functools import cache
from importlib.resources import files
from typing import Literal

import msgspec
import typst

from longpoint.sheets.document import Document
from longpoint.sheets.drawing.lettering import unturned
from longpoint.sheets.drawing.style import Styling, stylesheet
from longpoint.sheets.view import view
from longpoint.sheets.wording import Wording


def pdf(document: Document, wording: Wording) -> bytes:
    """The sheet as a PDF file; the same document always gives the same bytes."""
    shown = view(document, wording)
    plain = stylesheet(Styling.PLAIN)
    for block in shown["blocks"]:
        if block["kind"] == "pictures":
            for picture in block["pictures"]:
                picture["svg"] = _styled(picture["svg"], plain)
    said = unturned(msgspec.json.encode(shown).decode())
    try:
        return _set(said, tagged="ua-1")
    except typst.TypstError:
        # A text with a character that no font here has cannot be read aloud by rule: a box stands for it then.
        return _set(said, tagged=None)


def _set(sheet: str, *, tagged: Literal["ua-1"] | None) -> bytes:
    made = typst.compile(_template(), sys_inputs={"sheet": sheet}, timestamp=0, pdf_standards=tagged)
    assert isinstance(made, bytes)
    return made


def _styled(svg: str, sheet: str) -> str:
    """A drawing with the default values in its own style sheet: Typst's reader knows no CSS variables."""
    head, mark, rest = svg.partition("</desc>")
    return f"{head}{mark}{sheet}{rest}"


@cache
def _template() -> bytes:
    return (files("longpoint.sheets") / "pages" / "sheet.typ").read_bytes()
