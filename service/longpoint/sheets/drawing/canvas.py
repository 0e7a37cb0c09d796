"""A drawing in the making: lines, outlines and texts, and the room each text takes."""

from __future__ import annotations

from collections.abc import Sequence
from xml.sax.saxutils import escape

from longpoint.sheets.drawing.lettering import ASCENT, DESCENT, unturned, width
from longpoint.sheets.drawing.shapes import Convex, Point, box, convex, segment, touches_any, turned_box
from longpoint.sheets.drawing.style import Styling, stylesheet

TEXT_SIZE = 11.0
SMALL_SIZE = 9.0
MARGIN = 8.0


class Canvas:
    """Collects shapes in the drawing's units, y downwards; the sheet's bounds follow from what is drawn.

    Coordinates are written to five figures, which is a hundredth of a unit.

    Attributes:
        texts: the room each text takes.
        lines: lines a text must not lie across.
        solids: outlines a text must not lie on.
    """

    def __init__(self) -> None:
        self.texts: list[Convex] = []
        self.lines: list[Convex] = []
        self.solids: list[Convex] = []
        self._back: list[str] = []
        self._front: list[str] = []
        self._bounds: list[Convex] = []

    def line(self, start: Point, end: Point, kind: str, *, keep_clear: bool = True) -> None:
        """A straight line; texts placed later keep clear of it unless asked otherwise."""
        shape = segment(start, end)
        self._bounds.append(shape)
        if keep_clear:
            self.lines.append(shape)
        (x1, y1), (x2, y2) = start, end
        self._back.append(f'<line class="{kind}" x1="{x1:.5g}" y1="{y1:.5g}" x2="{x2:.5g}" y2="{y2:.5g}"/>')

    def outline(self, points: Sequence[Point], kind: str, *, solid: bool = True, title: str = "") -> None:
        """A closed outline; a solid one must be convex, and no text will be placed on it."""
        shape = convex(*points)
        self._bounds.append(shape)
        if solid:
            self.solids.append(shape)
        spots = " ".join(f"{x:.5g},{y:.5g}" for x, y in points)
        if title:
            self._back.append(
                f'<polygon class="{kind}" points="{spots}"><title>{_safe(title)}</title></polygon>'
            )
        else:
            self._back.append(f'<polygon class="{kind}" points="{spots}"/>')

    def strokes(self, strokes: Sequence[tuple[Point, Point]], kind: str) -> None:
        """Many lines of one kind that texts may cross, as one path."""
        if strokes:
            runs = "".join(f"M{x1:.5g} {y1:.5g}L{x2:.5g} {y2:.5g}" for (x1, y1), (x2, y2) in strokes)
            self._back.append(f'<path class="{kind}" d="{runs}"/>')

    def text(
        self, text: str, center: Point, *, size: float = TEXT_SIZE, degrees: float = 0.0, kind: str = "t"
    ) -> None:
        """A text around a center, turned by `degrees`."""
        shape = text_box(text, center, size, degrees)
        self.texts.append(shape)
        self._bounds.append(shape)
        turn = f' transform="rotate({degrees:.5g} {center[0]:.5g} {center[1]:.5g})"' if degrees else ""
        self._front.append(_text(text, center, size, kind, turn))

    def words(
        self, text: str, left: float, middle: float, *, size: float = TEXT_SIZE, kind: str = "t"
    ) -> None:
        """A text that begins at `left`, its middle at height `middle`."""
        shape = text_box(text, (left + width(text, size) / 2, middle), size)
        self.texts.append(shape)
        self._bounds.append(shape)
        self._front.append(_text(text, (left, middle), size, f"{kind} s", ""))

    def balloon(self, text: str, center: Point, radius: float) -> None:
        """A piece's number in a ring."""
        x, y = center
        shape = box(x - radius, y - radius, x + radius, y + radius)
        self.texts.append(shape)
        self._bounds.append(shape)
        self._front.append(f'<circle class="ring" cx="{x:.5g}" cy="{y:.5g}" r="{radius:.5g}"/>')
        size = min(TEXT_SIZE, 1.5 * radius / max(1, len(text)) / 0.61)
        self._front.append(_text(text, center, size, "t", ""))

    def free(self, shape: Convex, *, solids: bool = True) -> bool:
        """Whether a text could lie there without touching a text, a line or (if asked) a piece."""
        return not (
            touches_any(shape, self.texts)
            or touches_any(shape, self.lines)
            or (solids and touches_any(shape, self.solids))
        )

    def crosses_text(self, start: Point, end: Point) -> bool:
        """Whether a line would run through a text."""
        return touches_any(segment(start, end), self.texts)

    @property
    def bounds(self) -> tuple[float, float, float, float]:
        """Left, top, right and bottom of all that is drawn."""
        return (
            min(b.left for b in self._bounds),
            min(b.top for b in self._bounds),
            max(b.right for b in self._bounds),
            max(b.bottom for b in self._bounds),
        )

    def svg(self, title: str, description: str, styling: Styling) -> str:
        """The drawing as SVG text: titled, described, with no script and every text escaped."""
        left, top, right, bottom = self.bounds
        x, y = left - MARGIN, top - MARGIN
        across, down = right - left + 2 * MARGIN, bottom - top + 2 * MARGIN
        return (
            f'<svg xmlns="http://www.w3.org/2000/svg" class="lp" role="img" width="{across:.5g}" '
            f'height="{down:.5g}" viewBox="{x:.5g} {y:.5g} {across:.5g} {down:.5g}">'
            f"<title>{_safe(title)}</title><desc>{_safe(description)}</desc>"
            f"{stylesheet(styling)}"
            f'<rect class="paper" x="{x:.5g}" y="{y:.5g}" width="{across:.5g}" height="{down:.5g}"/>'
            f"{''.join(self._back)}{''.join(self._front)}</svg>"
        )


def text_box(text: str, center: Point, size: float, degrees: float = 0.0) -> Convex:
    """The room a text takes around its center."""
    return turned_box(center, width(text, size), (ASCENT + DESCENT) * size, degrees)


def _text(text: str, at: Point, size: float, kind: str, turn: str) -> str:
    drop = (ASCENT - DESCENT) / 2 * size
    return (
        f'<text class="{kind}" x="{at[0]:.5g}" y="{at[1] + drop:.5g}" font-size="{size:.5g}"{turn}>'
        f"{_safe(text)}</text>"
    )


_FORBIDDEN = {n: None for n in range(32) if n not in (9, 10, 13)} | {0x7F: None, 0xFFFE: None, 0xFFFF: None}


def _safe(text: str) -> str:
    """Escaped, and free of the control characters that no XML document may hold."""
    if text.isalnum():
        return text
    return escape(unturned(text).translate(_FORBIDDEN), {'"': "&quot;"})
