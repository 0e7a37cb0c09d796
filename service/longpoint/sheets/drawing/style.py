"""The look of the drawings: thin lines for what is there, thinner ones for what is said about it.

Every color and weight is a CSS variable with a default that prints well in one color, so a page may set
`--lp-ink` and the rest on the drawing or on anything around it. Each drawing brings its own paper, so that one shown as
an image can be read on a dark page, too. What tells things apart is line weight, dash
and hatching, never color.
"""

from __future__ import annotations

from enum import Enum
from functools import cache

from longpoint.sheets.drawing.lettering import FAMILY

VARIABLES = {
    "ink": "#1d1d1b",
    "text": "#1d1d1b",
    "dimension": "#4a4a46",
    "faint": "#8b8b85",
    "wood": "#f6f3ec",
    "waste": "#ffffff",
    "paper": "#ffffff",
    "line": "1.2",
    "fine": "0.6",
}
"""Name (after `--lp-`) and default of each variable: colors, then line weights in drawing units."""

_RULES = (
    (".paper", "fill:{paper}"),
    (".t", "fill:{text};font-family:{font};text-anchor:middle;white-space:pre"),
    (".s", "text-anchor:start"),
    (".piece", "fill:{wood};stroke:{ink};stroke-width:{line};stroke-linejoin:round"),
    (".thin", "stroke-width:{fine}"),
    (".cut", "fill:{wood};stroke:{ink};stroke-width:{line};stroke-linejoin:miter"),
    (".waste", "fill:{waste};stroke:{dimension};stroke-width:{fine}"),
    (".blank", "fill:{paper};stroke:none"),
    (".jamb", "fill:none;stroke:{ink};stroke-width:{fine}"),
    (".edge", "stroke:{ink};stroke-width:{line};fill:none"),
    (".heavy", "stroke:{ink};stroke-width:2;fill:none"),
    (".hidden", "stroke:{dimension};stroke-width:{fine};stroke-dasharray:3 2;fill:none"),
    (".center", "stroke:{dimension};stroke-width:{fine};stroke-dasharray:9 2.5 2 2.5;fill:none"),
    (".hatch", "stroke:{faint};stroke-width:{fine};fill:none"),
    (".dim", "stroke:{dimension};stroke-width:{fine};fill:none"),
    (".tick", "stroke:{ink};stroke-width:{line};fill:none"),
    (".ring", "fill:{paper};stroke:{ink};stroke-width:{fine}"),
    (".kerf", "stroke:{ink};stroke-width:{line};fill:none"),
)


class Styling(Enum):
    """Where a drawing's look comes from.

    Attributes:
        THEMED: its own style sheet, by CSS variables: for a drawing that stands alone.
        PLAIN: its own style sheet with the default values: for readers that know no CSS variables.
        NONE: the page around it carries `stylesheet(THEMED)` once.
    """

    THEMED = "themed"
    PLAIN = "plain"
    NONE = "none"


@cache
def rules(styling: Styling) -> str:
    """The style sheet's text, every selector under the class of the drawing."""
    if styling is Styling.PLAIN:
        values = dict(VARIABLES)
    else:
        values = {name: f"var(--lp-{name},{default})" for name, default in VARIABLES.items()}
    values["font"] = FAMILY
    return "".join(f".lp {selector}{{{text.format_map(values)}}}" for selector, text in _RULES)


@cache
def stylesheet(styling: Styling) -> str:
    """The `<style>` element of a drawing; nothing for `NONE`."""
    return "" if styling is Styling.NONE else f"<style>{rules(styling)}</style>"
