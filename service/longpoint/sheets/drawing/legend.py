"""The list of numbered pieces under a drawing that no table stands beside."""

from __future__ import annotations

from collections.abc import Sequence

from longpoint.geometry.piece import Piece
from longpoint.sheets.drawing.canvas import SMALL_SIZE, Canvas
from longpoint.sheets.drawing.lettering import width
from longpoint.sheets.wording import Wording

ROW, COLUMN_GAP, OFF = 13.0, 22.0, 12.0


def list_pieces(canvas: Canvas, pieces: Sequence[tuple[int, Piece]], wording: Wording) -> None:
    """Each piece's number, name and length, in as many columns as the drawing above is wide."""
    lines = [
        f"{number:>2}  {piece.title}, {wording.figure(piece.long_point)}{_times(piece, wording)}"
        for number, piece in pieces
    ]
    if not lines:
        return
    left, _, right, bottom = canvas.bounds
    broad = max(width(line, SMALL_SIZE) for line in lines) + COLUMN_GAP
    columns = min(len(lines), max(1, int((right - left + COLUMN_GAP) // broad)))
    rows = -(-len(lines) // columns)
    for index, line in enumerate(lines):
        column, row = divmod(index, rows)
        canvas.words(line, left + column * broad, bottom + OFF + row * ROW, size=SMALL_SIZE)


def _times(piece: Piece, wording: Wording) -> str:
    return f" × {wording.figure(piece.width)}"
