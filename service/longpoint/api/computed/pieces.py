"""`/v1/stool`, `/v1/apron` and `/v1/casing`: one kind of piece from a few readings."""

from __future__ import annotations

from litestar import post
from litestar.params import JSONBody

from longpoint.api.document.examples import APRON, CASING, STOOL
from longpoint.api.http.operation import operation
from longpoint.api.read.build import built, field_sent
from longpoint.api.read.reader import PLACEHOLDER, Path, Reader
from longpoint.api.read.shape import read_pair
from longpoint.api.wire.lengths import length_writer
from longpoint.api.wire.parts import part_out
from longpoint.api.wire.pieces import ApronRequest, CasingRequest, PartsOut, StoolRequest
from longpoint.geometry import (
    Apron,
    Casing,
    Opening,
    Pieces,
    Plinth,
    PlumbSides,
    Readings,
    Stool,
    Trim,
)
from longpoint.lengths import Fraction

# What a piece does not depend on is still part of an opening: any height serves a stool, any thickness a leg.
ANY = PLACEHOLDER


@post(
    "/v1/stool", **operation("compute_stool", summary="Work out a stool", tag="One opening", examples=STOOL)
)
async def compute_stool(data: JSONBody[StoolRequest]) -> PartsOut:
    """Its length with both horns, its ripped width and its notches, from the jamb and the casing."""
    read = Reader(data.unit)
    left, right = read_pair(read, data.jamb_depth, data.left_depth, data.right_depth, (), "depth")
    trim = Trim(
        casing=_casing(read, data.casing_width, ANY),
        reveal=read.length(data.reveal, (), "reveal"),
        stool=Stool(
            data.profile,
            thickness=read.positive(data.thickness, (), "thickness"),
            horn=read.length(data.horn, (), "horn"),
            nosing=read.length(data.nosing, (), "nosing"),
            sash_clearance=read.length(data.sash_clearance, (), "sash_clearance"),
        ),
        apron=Apron("apron", ANY, read.positive(data.apron_thickness, (), "apron_thickness")),
    )
    width = read.positive(data.jamb_width, (), "jamb_width")
    opening = Opening("", Readings(PlumbSides(width, ANY, ANY), left, right), trim)
    return _parts(read, data, opening, Pieces.STOOL)


@post(
    "/v1/apron", **operation("compute_apron", summary="Work out an apron", tag="One opening", examples=APRON)
)
async def compute_apron(data: JSONBody[ApronRequest]) -> PartsOut:
    """Its length, flush with the casing's outside edges, and its returns where its ends are returned."""
    read = Reader(data.unit)
    apron = Apron(
        data.profile,
        read.positive(data.width, (), "width"),
        read.positive(data.thickness, (), "thickness"),
        data.ends,
    )
    trim = Trim(_casing(read, data.casing_width, ANY), read.length(data.reveal, (), "reveal"), apron=apron)
    width = read.positive(data.jamb_width, (), "jamb_width")
    return _parts(read, data, Opening("", Readings(PlumbSides(width, ANY, ANY)), trim), Pieces.APRON)


@post(
    "/v1/casing", **operation("compute_casing", summary="Work out casing", tag="One opening", examples=CASING)
)
async def compute_casing(data: JSONBody[CasingRequest]) -> PartsOut:
    """Legs and head, and in a picture frame the sill piece, each with its mitres and its short and long points."""
    read = Reader(data.unit)
    left, right = read_pair(read, data.leg_height, data.left_height, data.right_height, (), "height")
    if left is None or right is None:
        read.fault(("leg_height",), "missing", "Give leg_height, or left_height and right_height.")
        left = right = ANY
    height = read.optional_positive(data.plinth_height, (), "plinth_height")
    casing = _casing(read, data.casing_width, read.positive(data.casing_thickness, (), "casing_thickness"))
    trim = Trim(
        casing=Casing(data.profile, casing.width, casing.thickness),
        reveal=read.length(data.reveal, (), "reveal"),
        head_style=data.head_style,
        overhang=read.length(data.overhang, (), "overhang"),
        floor_clearance=read.length(data.floor_clearance, (), "floor_clearance"),
        plinth=None if height is None else Plinth("plinth", casing.width, height, casing.thickness),
    )
    width = read.positive(data.jamb_width, (), "jamb_width")
    opening = Opening("", Readings(PlumbSides(width, left, right)), trim, foot=data.foot_style)
    return _parts(read, data, opening, Pieces.CASING)


def _casing(read: Reader, width: str, thickness: Fraction) -> Casing:
    return Casing("casing", read.positive(width, (), "casing_width"), thickness)


def _parts(
    read: Reader, data: StoolRequest | ApronRequest | CasingRequest, opening: Opening, wanted: Pieces
) -> PartsOut:
    def as_sent(path: Path) -> Path:
        return (field_sent(data, path[-1]),)

    result = built(read, opening, as_sent, wanted)
    write = length_writer(data.rounding.value())
    return PartsOut([part_out(part, result.opening.mark, write) for part in result.parts], list(result.notes))
