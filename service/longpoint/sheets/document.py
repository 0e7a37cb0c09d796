"""What a sheet is made of, before it is HTML, PDF or CSV: headings, tables, pictures, notes, labels.

A sheet is built once as a `Document`; every format is written from that same one. Cells keep their values, so
that a page can write a length as a tape reads it and a CSV file can give the number too.
"""

from __future__ import annotations

from collections.abc import Callable
from enum import StrEnum

from longpoint.lengths import Fraction, Real
from longpoint.sheets.grid import LabelGrid
from longpoint.texts import Sentence, say
from longpoint.values import Value


class Paper(StrEnum):
    LETTER = "letter"
    A4 = "a4"

    @property
    def size(self) -> tuple[Fraction, Fraction]:
        """Width and height upright, inches."""
        return _SIZES[self]


_SIZES = {
    Paper.LETTER: (Fraction(17, 2), Fraction(11)),
    Paper.A4: (Fraction(2100, 254), Fraction(2970, 254)),
}


class PrintedLength(Value, frozen=True):
    """A cell with a length. Attributes: inches; stick, when it is stock, which the yard names in feet."""

    inches: Real
    stick: bool = False


class Money(Value, frozen=True):
    """A cell with an amount in whole cents."""

    cents: int


class Number(Value, frozen=True):
    """A cell with an amount, printed to two places at most."""

    value: Real


class Tick(Value, frozen=True):
    """A cell with a box to tick on paper."""


Cell = str | int | PrintedLength | Money | Number | Tick
"""What a table holds; "" is an empty cell, to be written in where the table says so."""


class TableColumn(Value, frozen=True):
    """One column.

    Attributes:
        heading: what stands over it; lengths get their unit beside it.
        key: its name in a CSV file.
        share: how much of the table's width it takes, against the others.
    """

    heading: str
    key: str
    share: int = 2


class Rows(Value, frozen=True):
    """Rows that belong together. Attributes: title, over them, "" for none; cells, row by row."""

    cells: tuple[tuple[Cell, ...], ...]
    title: str = ""


class Table(Value, frozen=True):
    """A table.

    Attributes:
        key: its name among the sheet's tables, for a CSV file.
        caption: its title.
        columns: from left to right; the first one names the row.
        groups: the rows, in groups.
        total: a last row that adds up, empty for none.
        roomy: rows high enough to write in.
        about: what its rows belong to, where a sheet has several tables of one key.
    """

    key: str
    caption: str
    columns: tuple[TableColumn, ...]
    groups: tuple[Rows, ...]
    total: tuple[Cell, ...] = ()
    roomy: bool = False
    about: str = ""


class Heading(Value, frozen=True):
    """A heading within a sheet. Attributes: text; beside, smaller, after it; new_page, on paper."""

    text: str
    beside: str = ""
    new_page: bool = False


class Picture(Value, frozen=True):
    """A drawing. Attributes: draw, gives it as SVG with no style sheet of its own; alt, what it shows, in words."""

    draw: Callable[[], str]
    alt: str


class Notes(Value, frozen=True):
    """Sentences under a title. Attributes: title; lines; caution, set apart so that nobody misses it."""

    title: str
    lines: tuple[Sentence, ...]
    caution: bool = False


class Pictures(Value, frozen=True):
    """Drawings side by side where there is room, and notes that explain them beside them."""

    pictures: tuple[Picture, ...]
    notes: Notes | None = None


class Facts(Value, frozen=True):
    """Names with their values; an empty value leaves a line to write on."""

    pairs: tuple[tuple[str, Cell], ...]


class Label(Value, frozen=True):
    """One label. Attributes: name, large; figure, what the tape reads; lines, small: the piece, its stock, its ends."""

    name: str
    figure: str
    lines: tuple[str, str, str]


class Labels(Value, frozen=True):
    """A run of labels on a grid. Attributes: grid; labels, row by row; skip, places already used up."""

    grid: LabelGrid
    labels: tuple[Label, ...]
    skip: int = 0

    @property
    def table(self) -> Table:
        """What the labels say, for those who print them by other means."""
        rows = Rows(tuple((label.name, label.figure, *label.lines) for label in self.labels))
        return Table("labels", "Labels", _LABEL_COLUMNS, (rows,))


_LABEL_COLUMNS = (
    TableColumn("Label", "label"),
    TableColumn("Length", "length"),
    TableColumn("Piece", "piece"),
    TableColumn("Stock", "stock"),
    TableColumn("Ends", "ends"),
)


Block = Heading | Table | Pictures | Facts | Notes | Labels


class Document(Value, frozen=True):
    """A sheet.

    Attributes:
        name: a plain name for a file, such as "stick-sheet".
        title: at its head.
        house: whose it is, "" when nobody said.
        blocks: from top to bottom.
        paper: what it is printed on.
        sideways: printed with the long edge across.
        plan: which plan its sticks are from and how good that is, "" where it shows none.
        main: key of the table a CSV file holds when no other is asked for; "" for the first.
        closing: printed at the foot of every page.
    """

    name: str
    title: str
    house: str
    blocks: tuple[Block, ...]
    paper: Paper = Paper.LETTER
    sideways: bool = False
    plan: str = ""
    main: str = ""
    closing: Sentence = say("caution", "sheet.closing")

    @property
    def tables(self) -> dict[str, Table]:
        """Its tables by key; those of one key become one, each with its rows under what it is about. Labels are one."""
        found: dict[str, Table] = {}
        for block in self.blocks:
            if isinstance(block, Table):
                groups = tuple(Rows(rows.cells, rows.title or block.about) for rows in block.groups)
                before = found[block.key].groups if block.key in found else ()
                found[block.key] = Table(block.key, block.caption, block.columns, (*before, *groups))
            elif isinstance(block, Labels):
                found[block.table.key] = block.table
        return found
