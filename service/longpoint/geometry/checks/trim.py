"""What cannot be built, reported with the field to change."""

from __future__ import annotations

from longpoint.geometry.checks.style import check_style
from longpoint.geometry.checks.unused import check_unused
from longpoint.geometry.frame.kernel import ZERO, Frame
from longpoint.geometry.piece import Piece
from longpoint.geometry.piece_names import PieceKind
from longpoint.geometry.pieces.stool import stool_width
from longpoint.geometry.readings.inputs import NO_REVEALS, NO_WIDTHS, Bottom, Opening, SillAnswer, WallAnswer
from longpoint.geometry.readings.outline import Arch, Polygon, Shape
from longpoint.geometry.readings.readings import Door
from longpoint.geometry.readings.taken import as_read
from longpoint.geometry.readings.trim import Stool
from longpoint.lengths import Fraction
from longpoint.texts import say
from longpoint.values import Fault, Faults, Path

SIDES = ("left_depth", "right_depth")
HORNS = ("left_horn_depth", "right_horn_depth")


def check_trim(opening: Opening, frame: Frame | None, faults: Faults, *, stands_on_stool: bool) -> None:
    """Trim that does not fit the opening it was chosen for; the stool is judged only where it is asked for."""
    _check_reveals(opening, faults)
    if opening.widths is not NO_WIDTHS:
        _check_widths(opening, faults)
    if opening.bottom is Bottom.STOOL and stands_on_stool:
        check_stool(opening, faults)
    if opening.bottom is Bottom.PLINTH and opening.trim.plinth is None:
        faults.add(
            ("trim", "plinth"),
            "plinth-missing",
            say("problem", "plinth.missing"),
        )
    check_style(opening, frame, faults)
    check_unused(opening, faults)


def _check_reveals(opening: Opening, faults: Faults) -> None:
    own, edge = opening.reveals, opening.readings.jamb_thickness
    extension = opening.trim.extension
    if opening.wall_answer is WallAnswer.EXTEND and extension is not None:
        if extension.reveal >= edge:
            faults.add(
                ("trim", "extension", "reveal"),
                "reveal-too-wide",
                say("problem", "extension.reveal-too-wide", edge=edge),
            )
        edge = extension.thickness
    _check_reveal(("trim", "reveal"), opening.trim.reveal, edge, faults)
    if own is not NO_REVEALS:
        for side in ("left", "right", "head", "sill"):
            _check_reveal(("reveals", side), getattr(own, side), edge, faults)


def _check_reveal(path: tuple[str, ...], reveal: Fraction | None, edge: Fraction, faults: Faults) -> None:
    if reveal is not None and reveal >= edge:
        faults.add(
            path,
            "reveal-too-wide",
            say("problem", "reveal.too-wide", reveal=reveal, edge=edge),
        )


def _check_widths(opening: Opening, faults: Faults) -> None:
    """What is ripped comes out no wider than its stock."""
    trim = opening.trim
    stock = {
        "left": trim.casing,
        "right": trim.casing,
        "head": trim.head_casing or trim.casing,
        "sill": trim.bottom_casing or trim.casing,
        "apron": trim.apron,
    }
    for side, sold in stock.items():
        width: Fraction | None = getattr(opening.widths, side)
        if width is not None and sold is not None and width > sold.width:
            detail = say("problem", "widths.wider-than-stock", width=+width, stock=+sold.width)
            faults.add(("widths", side), "wider-than-stock", detail)


def check_stool(opening: Opening, faults: Faults, least_depth: Fraction = ZERO) -> None:
    """A stool that its trim does not name, or that its readings or its stock do not allow."""
    stool, readings = opening.trim.stool, opening.readings
    if stool is None:
        faults.add(
            ("trim", "stool"),
            "stool-missing",
            say("problem", "stool.missing"),
        )
        return
    if readings.sill is not None and opening.sill_answer is SillAnswer.TAPERED_SHIM and readings.sill.by == 0:
        faults.add(
            ("readings", "sill"),
            "sill-level",
            say("problem", "sill.level"),
        )
    check_depths(opening, stool, (*SIDES, *HORNS), faults)
    _check_stool_stock(opening, faults, least_depth)


def check_depths(
    opening: Opening, stool: Stool, names: tuple[str, ...], faults: Faults, at: Path = ()
) -> None:
    """Depths that were not read or that leave no notch, one reading for both sides reported once."""
    less = stool.sash_clearance + stool.scribe
    found: dict[Fault, None] = {}
    for name in names:
        depth: Fraction | None = getattr(opening.outline, name)
        if depth > less if depth is not None else name not in SIDES:
            continue
        path = (*at, "readings", *as_read(opening.readings, (name,)))
        if depth is None:
            detail = say("problem", "stool.depth-missing")
            found[Fault.at(path, "depth-missing", detail)] = None
        else:
            detail = say("problem", "stool.depth-too-small", less=less)
            found[Fault.at(path, "depth-too-small", detail)] = None
    for fault in found:
        faults.note(fault)


def _check_stool_stock(opening: Opening, faults: Faults, least_depth: Fraction) -> None:
    stool = opening.trim.stool
    if stool is None or stool.stock_width is None:
        return
    if opening.outline.left_depth is None or opening.outline.right_depth is None:
        return
    needed = stool_width(opening.trim, opening.outline, least_depth)
    if needed > stool.stock_width:
        faults.add(
            ("trim", "stool", "stock_width"),
            "stock-too-narrow",
            say("problem", "stool.stock-too-narrow", needed=needed, stock=stool.stock_width),
        )


RETURNS = (PieceKind.APRON_RETURN, PieceKind.STOOL_RETURN, PieceKind.FILLET_RETURN, PieceKind.CAP_RETURN)


def check_lengths(opening: Opening, pieces: list[Piece], faults: Faults) -> None:
    """Pieces whose edges would have no length left."""
    for piece in pieces:
        if (piece.short_point > 0 and piece.long_point > 0) or piece.kind in RETURNS:
            continue
        short = -min(piece.short_point, piece.long_point)
        faults.add(
            ("readings", *_reading(opening.outline.shape, piece.side)),
            "piece-vanishes",
            say("problem", "piece.too-short", piece=piece.title, short=short)
            if short > 0
            else say("problem", "piece.vanishes", piece=piece.title),
        )


_READINGS = {"left": "left_jamb_height", "right": "right_jamb_height"}


def _reading(shape: Shape, side: str) -> tuple[str | int, ...]:
    """The reading behind a side's piece; the base's for a stool or an apron."""
    if isinstance(shape, Polygon):
        last = len(shape.sides) - 1
        at = {"sill": 0, "right": 1, "head": 2, "left": last}
        if side.startswith("head "):
            return ("sides", last - int(side.removeprefix("head ")))
        return ("sides", at.get(side, 0))
    if isinstance(shape, Arch):
        curved = side.startswith("head") or (side in _READINGS and shape.spring_height == 0)
        return ("rise" if curved else "spring_height" if side in _READINGS else "jamb_width",)
    if isinstance(shape, Door):
        return ("door", "height" if side in _READINGS else "width")
    return (_READINGS.get(side, "jamb_width"),)
