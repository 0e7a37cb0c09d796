"""A sheet as one HTML page: print styles inside, no script, nothing fetched from anywhere.

Jinja2 writes it, save the rows of tables, of which a house has thousands: those are joined here, each cell escaped.
Autoescape is on; beside those rows the drawings alone pass as they are, having been escaped when they were drawn.
"""

from __future__ import annotations

from functools import cache

from jinja2 import Environment, PackageLoader, StrictUndefined, Template
from markupsafe import Markup, escape

from longpoint.sheets.document import Document
from longpoint.sheets.drawing.lettering import unturned
from longpoint.sheets.drawing.style import Styling, rules
from longpoint.sheets.view import View, view
from longpoint.sheets.wording import Wording


def html(document: Document, wording: Wording) -> str:
    """The sheet as a whole HTML document."""
    shown = view(document, wording)
    for block in shown["blocks"]:
        if block["kind"] == "pictures":
            for picture in block["pictures"]:
                picture["svg"] = Markup(picture["svg"])
        elif block["kind"] == "table":
            for group in block["groups"]:
                group["rows"] = _rows(group["rows"], block["columns"])
            block["total"] = _rows([block["total"]] if block["total"] else [], block["columns"])
    return unturned(_template().render(shown, drawing_rules=Markup(rules(Styling.THEMED))))


def _rows(rows: list[list[str]], columns: list[View]) -> Markup:
    """Rows of cells; the first of each names its row."""
    starts = [_start(column, index == 0) for index, column in enumerate(columns)]
    written = []
    for row in rows:
        written.append('<tr role="row">')
        for text, (start, empty, end) in zip(row, starts, strict=True):
            written.append(f"{start}{escape(text)}{end}" if text else f"{empty}{end}")
        written.append("</tr>\n")
    return Markup("".join(written))


def _start(column: View, first: bool) -> tuple[str, str, str]:
    """How a column's cells begin, those with something in them and those without, and how they end."""
    kinds = [
        name for name, is_so in (("n", column["figure"]), ("l", column["share"] > 3 and not first)) if is_so
    ]
    tag, role = ("th", 'role="rowheader" scope="row"') if first else ("td", 'role="cell"')

    def start(*more: str) -> str:
        classes = " ".join((*kinds, *more))
        of_class = f' class="{classes}"' if classes else ""
        return f'<{tag} {role} data-h="{escape(column["heading"])}"{of_class}>'

    return start(), start("e") if not first else start(), f"</{tag}>"


@cache
def _template() -> Template:
    environment = Environment(
        loader=PackageLoader("longpoint.sheets", "pages"),
        autoescape=True,
        undefined=StrictUndefined,
        trim_blocks=True,
        lstrip_blocks=True,
    )
    return environment.get_template("sheet.html.jinja")
