"""From the wire to the trim that the geometry room takes."""

from __future__ import annotations

from functools import lru_cache

from longpoint.api.read.reader import Path, Reader
from longpoint.api.wire.trim import (
    ApronIn,
    BackBandIn,
    CasingIn,
    CornerBlockIn,
    ExtensionIn,
    HeadStripIn,
    PlinthIn,
    StoolIn,
    StopIn,
    TrimIn,
)
from longpoint.geometry import (
    Apron,
    BackBand,
    Casing,
    CornerBlock,
    DoorStop,
    HeadStrip,
    JambExtension,
    Plinth,
    Stool,
    Trim,
)
from longpoint.lengths import Fraction, Unit


def read_trim(read: Reader, wire: TrimIn, at: Path) -> Trim:
    """A trim spec as the geometry room takes it."""
    return _known(wire, read.unit) or _trim(read, wire, at)


@lru_cache(256)
def _known(wire: TrimIn, unit: Unit | None) -> Trim | None:
    """A trim spec without a fault, remembered: all a house's openings share a few. One with faults is None."""
    read = Reader(unit)
    trim = _trim(read, wire, ())
    return None if read.faults else trim


def _trim(read: Reader, wire: TrimIn, at: Path) -> Trim:
    return Trim(
        casing=_casing(read, wire.casing, (*at, "casing")),
        reveal=read.length(wire.reveal, at, "reveal"),
        head_style=wire.head_style,
        head_casing=_casing(read, wire.head_casing, (*at, "head_casing")),
        overhang=read.length(wire.overhang, at, "overhang"),
        stool=None if wire.stool is None else _stool(read, wire.stool, (*at, "stool")),
        apron=None if wire.apron is None else _apron(read, wire.apron, (*at, "apron")),
        plinth=None if wire.plinth is None else _plinth(read, wire.plinth, (*at, "plinth")),
        floor_clearance=read.length(wire.floor_clearance, at, "floor_clearance"),
        sill_casing=_casing(read, wire.sill_casing, (*at, "sill_casing")),
        back_band=None if wire.back_band is None else _back_band(read, wire.back_band, (*at, "back_band")),
        corner_block=None
        if wire.corner_block is None
        else _block(read, wire.corner_block, (*at, "corner_block")),
        fillet=None if wire.fillet is None else _strip(read, wire.fillet, (*at, "fillet")),
        cap=None if wire.cap is None else _strip(read, wire.cap, (*at, "cap")),
        extension=None if wire.extension is None else _extension(read, wire.extension, (*at, "extension")),
        mull_casing=_casing(read, wire.mull_casing, (*at, "mull_casing")),
        stop=None if wire.stop is None else _stop(read, wire.stop, (*at, "stop")),
    )


def _casing(read: Reader, wire: CasingIn | None, at: Path) -> Casing | None:
    if wire is None:
        return None
    width = read.positive(wire.width, at, "width")
    return Casing(wire.profile, width, read.positive(wire.thickness, at, "thickness"))


def _apron(read: Reader, wire: ApronIn, at: Path) -> Apron:
    return Apron(
        wire.profile,
        width=read.positive(wire.width, at, "width"),
        thickness=read.positive(wire.thickness, at, "thickness"),
        ends=wire.ends,
        end_angle=Fraction(wire.end_angle),
    )


def _plinth(read: Reader, wire: PlinthIn, at: Path) -> Plinth:
    return Plinth(
        wire.profile,
        width=read.positive(wire.width, at, "width"),
        height=read.positive(wire.height, at, "height"),
        thickness=read.positive(wire.thickness, at, "thickness"),
    )


def _stool(read: Reader, wire: StoolIn, at: Path) -> Stool:
    return Stool(
        wire.profile,
        thickness=read.positive(wire.thickness, at, "thickness"),
        horn=read.length(wire.horn, at, "horn"),
        nosing=read.length(wire.nosing, at, "nosing"),
        sash_clearance=read.length(wire.sash_clearance, at, "sash_clearance"),
        stock_width=read.optional(wire.stock_width, at, "stock_width"),
        ends=wire.ends,
        ease=read.length(wire.ease, at, "ease"),
        scribe=read.length(wire.scribe, at, "scribe"),
    )


def _back_band(read: Reader, wire: BackBandIn, at: Path) -> BackBand:
    return BackBand(
        wire.profile,
        width=read.positive(wire.width, at, "width"),
        thickness=read.positive(wire.thickness, at, "thickness"),
        lap=read.length(wire.lap, at, "lap"),
    )


def _block(read: Reader, wire: CornerBlockIn, at: Path) -> CornerBlock:
    width = read.positive(wire.width, at, "width")
    return CornerBlock(wire.profile, width, read.positive(wire.thickness, at, "thickness"))


def _strip(read: Reader, wire: HeadStripIn, at: Path) -> HeadStrip:
    return HeadStrip(
        wire.profile,
        height=read.positive(wire.height, at, "height"),
        depth=read.positive(wire.depth, at, "depth"),
        overhang=read.length(wire.overhang, at, "overhang"),
        ends=wire.ends,
    )


def _extension(read: Reader, wire: ExtensionIn, at: Path) -> JambExtension:
    return JambExtension(
        wire.profile,
        thickness=read.positive(wire.thickness, at, "thickness"),
        reveal=read.length(wire.reveal, at, "reveal"),
        corners=wire.corners,
    )


def _stop(read: Reader, wire: StopIn, at: Path) -> DoorStop:
    return DoorStop(
        wire.profile,
        width=read.positive(wire.width, at, "width"),
        thickness=read.positive(wire.thickness, at, "thickness"),
        corners=wire.corners,
    )
