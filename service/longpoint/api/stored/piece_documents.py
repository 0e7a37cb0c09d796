"""Pieces that were cut, as they are kept: their shape in exact fractions of an inch, their rounding beside it."""

from __future__ import annotations

from typing import Any

import msgspec

from longpoint.api.wire.lengths import LengthWriter
from longpoint.api.wire.schedule_work import PieceState, PieceStored
from longpoint.geometry import CutKind
from longpoint.lengths import Fraction, Mode, Rounding, RoundTo
from longpoint.schedules.values import Change, Kind
from longpoint.shop.remaining import CutPiece
from longpoint.shop.shape import EndCut, PieceShape, SawnOut


class EndDocument(msgspec.Struct, frozen=True):
    """One end as it was cut."""

    cut: CutKind
    mitre: float
    bevel: float
    long_edge: str | None
    notch_depth: str
    notch_length: str
    notch_end: str | None = None
    tilt: str | None = None


class PieceDocument(msgspec.Struct, frozen=True):
    """One piece as it was cut."""

    opening_id: str
    opening: str
    part: str
    instance: int
    state: PieceState
    note: str
    to: RoundTo
    mode: Mode
    profile: str
    length: str
    width: str
    thickness: str
    ripped: bool
    left: EndDocument
    right: EndDocument
    taper: tuple[str, str] | None = None
    cutouts: list[tuple[str, str, str, str]] | None = None


read_piece_document = msgspec.json.Decoder(PieceDocument).decode
_encode = msgspec.json.Encoder().encode


def piece_document(
    slot: tuple[str, str, int], mark: str, state: PieceState, note: str, shape: PieceShape, rounding: Rounding
) -> PieceDocument:
    """A piece cut to a shape, as it is kept."""
    id, part, instance = slot
    return PieceDocument(
        opening_id=id,
        opening=mark,
        part=part,
        instance=instance,
        state=state,
        note=note,
        to=rounding.to,
        mode=rounding.mode,
        profile=shape.profile,
        length=str(shape.length),
        width=str(shape.width),
        thickness=str(shape.thickness),
        ripped=shape.ripped,
        left=_end_document(shape.left),
        right=_end_document(shape.right),
        taper=shape.taper and (str(shape.taper[0]), str(shape.taper[1])),
        cutouts=None if shape.cutouts is None else [_cutout_document(one) for one in shape.cutouts],
    )


def cut_piece(id: str, document: PieceDocument) -> CutPiece:
    """A kept piece, as the shop reckons with it. A spare has no place, so it stands at instance 0 of its part."""
    instance = 0 if document.state is PieceState.SPARE else document.instance
    shape = PieceShape(
        document.profile,
        Fraction(document.length),
        Fraction(document.width),
        Fraction(document.thickness),
        document.ripped,
        _end(document.left),
        _end(document.right),
        document.taper and (Fraction(document.taper[0]), Fraction(document.taper[1])),
        None if document.cutouts is None else tuple(_cutout(one) for one in document.cutouts),
    )
    slot = (document.opening_id, document.part, instance)
    return CutPiece(id, slot, shape, Rounding(document.to, document.mode))


def piece_change(id: str, document: PieceDocument) -> Change:
    """A piece, as a change for the history."""
    return Change(Kind.PIECE, id, _encode(document).decode())


def piece_out(id: str, revision: int, document: PieceDocument, write: LengthWriter) -> PieceStored:
    """A kept piece as the wire carries it."""
    return PieceStored(
        id=id,
        revision=revision,
        opening_id=document.opening_id,
        opening=document.opening,
        part=document.part,
        instance=document.instance,
        state=document.state,
        profile=document.profile,
        length=write(Fraction(document.length)),
        note=document.note,
    )


def is_live(row: Any) -> bool:
    """Whether a piece's row is of a piece that has its place: cut or fitted."""
    return row.state in (PieceState.CUT, PieceState.FITTED)


def _cutout_document(one: SawnOut) -> tuple[str, str, str, str]:
    return str(one.start), str(one.end), str(one.depth), str(one.end_depth)


def _cutout(one: tuple[str, str, str, str]) -> SawnOut:
    start, end, depth, end_depth = map(Fraction, one)
    return SawnOut(start, end, depth, end_depth)


def _end_document(end: EndCut) -> EndDocument:
    return EndDocument(
        end.cut,
        end.mitre,
        end.bevel,
        end.long_edge,
        str(end.notch_depth),
        str(end.notch_length),
        None if end.notch_end is None else str(end.notch_end),
        end.tilt,
    )


def _end(end: EndDocument) -> EndCut:
    return EndCut(
        end.cut,
        end.mitre,
        end.bevel,
        end.long_edge,
        Fraction(end.notch_depth),
        Fraction(end.notch_length),
        None if end.notch_end is None else Fraction(end.notch_end),
        end.tilt,
    )
