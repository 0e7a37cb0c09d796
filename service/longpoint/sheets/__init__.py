"""Drawings and sheets of what the other rooms worked out, as SVG, HTML, PDF and CSV. Values in, text or bytes out."""

from longpoint.sheets.catalog import MOST_PRINTED, RECIPES, Recipe, Sheet, made
from longpoint.sheets.contents import SheetContents, contents
from longpoint.sheets.document import Document, Paper
from longpoint.sheets.drawing.elevation import elevation
from longpoint.sheets.drawing.piece import piece_drawing
from longpoint.sheets.drawing.section import section
from longpoint.sheets.drawing.style import Styling
from longpoint.sheets.grid import LabelGrid
from longpoint.sheets.house import SheetHouse
from longpoint.sheets.html import html
from longpoint.sheets.labels import grid_faults, label_sheet
from longpoint.sheets.measure import blank_measure_sheet
from longpoint.sheets.pdf import UnsetError, pdf
from longpoint.sheets.tables import csv_text
from longpoint.sheets.whole import house_sticks
from longpoint.sheets.wording import Wording

__all__ = [
    "MOST_PRINTED",
    "RECIPES",
    "Document",
    "LabelGrid",
    "Paper",
    "Recipe",
    "Sheet",
    "SheetContents",
    "SheetHouse",
    "Styling",
    "UnsetError",
    "Wording",
    "blank_measure_sheet",
    "contents",
    "csv_text",
    "elevation",
    "grid_faults",
    "house_sticks",
    "html",
    "label_sheet",
    "made",
    "pdf",
    "piece_drawing",
    "section",
]
