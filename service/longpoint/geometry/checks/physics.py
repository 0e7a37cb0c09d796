"""Trim whose parts do not meet as wood does, and sizes that no window or stock has: each named with its field and the
way out. Nothing here refuses."""

from __future__ import annotations

from collections.abc import Iterator

from longpoint.geometry.checks.findings import Finding, Offer
from longpoint.geometry.checks.miters import miter_findings
from longpoint.geometry.frame.kernel import Frame
from longpoint.geometry.frame.sides import CasedSide
from longpoint.geometry.pieces.stool import nosing_to_wall
from longpoint.geometry.readings.inputs import NO_HORNS, Bottom, Opening
from longpoint.geometry.readings.outline import PlumbSides
from longpoint.geometry.readings.readings import Door
from longpoint.geometry.readings.taken import as_read
from longpoint.geometry.readings.trim import Casing, HeadStyle, Trim
from longpoint.lengths import Fraction, Real
from longpoint.texts import say
from longpoint.values import Path, Value
from longpoint.values.kept import Kept

# Common practice, no source: no board is sold wider than a 1x12, no horn runs half a foot past the casing, and the
# narrowest sidelight is wider than a hand.
WIDEST_CASING = Fraction(45, 4)
LONGEST_HORN = 6
LEAST_OPENING = 4


class _OfTrim(Value, frozen=True):
    """Attributes: the cased sides it was found with; what was found; whether the trim's own horn is too long."""

    sides: tuple[CasedSide, ...] = ()
    found: tuple[Finding, ...] = ()
    long_horn: bool = False


# By the identity of its cased sides, which are made once for each trim and its choices: comparing a trim takes longer
# than all else here. They stand beside it, so that their identity is not another's.
_KNOWN: Kept[int, _OfTrim] = Kept(1024, lambda _: _OfTrim())
_STOOL = Bottom.STOOL


def physics_findings(opening: Opening, frame: Frame, sides: tuple[CasedSide, ...]) -> tuple[Finding, ...]:
    """What of a trim does not meet, and what is of no usual size."""
    known = _KNOWN[id(sides)]
    if known.sides is not sides:
        stool = opening.trim.stool
        found = tuple(_of_trim(opening.trim, opening.bottom, sides))
        known = _KNOWN[id(sides)] = _OfTrim(sides, found, stool is not None and stool.horn > LONGEST_HORN)
    found = known.found
    if (known.long_horn or opening.horns is not NO_HORNS) and opening.bottom is _STOOL:
        found = (*found, *_long_horns(opening))
    if _small(frame) or opening.readings.joined_widths is not None:
        found = (*found, *_small_openings(opening, frame))
    return found


def _of_trim(trim: Trim, bottom: Bottom, sides: tuple[CasedSide, ...]) -> Iterator[Finding]:
    """What follows from the trim and the sides it is put on alone."""
    yield from _wide_casing(trim)
    cased = [side for side in sides if side.casing is not None]
    if not cased:
        return
    yield from miter_findings(trim, sides)
    legs = [side for side in cased if side.name in ("left", "right")]
    thick = max(_thickness(side) for side in legs)
    if bottom is Bottom.STOOL and trim.stool is not None:
        over = thick - nosing_to_wall(trim)
        if over > 0:
            yield _past_stool(trim, thick, over)
    if bottom is Bottom.PLINTH and trim.plinth is not None:
        yield from _plinth(trim, legs, thick)
    heads = [_thickness(side) for side in cased if side.name.startswith("head")]
    if trim.head_style is HeadStyle.BUTTED and heads:
        yield from _butted(trim, thick, max(heads))
    if trim.head_style is HeadStyle.CORNER_BLOCKS and trim.corner_block is not None:
        least = max(_thickness(side) for side in cased)
        if trim.corner_block.thickness < least:
            yield _thin(
                "block-thin",
                "head",
                ("corner_block", "thickness"),
                trim.corner_block.thickness,
                least,
                ("corner block", "casing"),
            )
    band = trim.back_band
    least = max(_thickness(side) for side in cased)
    if band is not None and band.lap and band.thickness <= least:
        yield _thin(
            "band-thin",
            "head",
            ("back_band", "thickness"),
            band.thickness,
            least,
            ("back band", "casing it laps"),
        )


def _thickness(side: CasedSide) -> Fraction:
    assert side.casing is not None
    return +side.casing.thickness


def _thin(
    code: str, side: str, field: Path, thickness: Fraction, least: Fraction, names: tuple[str, str]
) -> Finding:
    """What is thinner than the wood that meets it; the names of both."""
    detail = say("finding", "stock.thin", piece=names[0], thickness=+thickness, meets=names[1], least=least)
    figures = (("thickness", least),)
    offer = Offer("thicker_stock", say("offer", "stock.thicker", least=least), (), None, figures)
    return Finding(code, side, detail, least - thickness, (offer,), "", ("trim", *field))


def _wide_casing(trim: Trim) -> Iterator[Finding]:
    for field, side in (("casing", "left"), ("head_casing", "head"), ("bottom_casing", "sill")):
        casing: Casing | None = getattr(trim, field)
        if casing is not None and casing.width > WIDEST_CASING:
            detail = say("finding", "casing.wide", width=+casing.width, most=WIDEST_CASING)
            check = Offer("check_width", say("offer", "casing.check-width"))
            yield Finding("casing-wide", side, detail, +casing.width, (check,), "", ("trim", field, "width"))


def _past_stool(trim: Trim, thick: Fraction, over: Fraction) -> Finding:
    assert trim.stool is not None
    wider = trim.stool.nosing + over
    offers = (
        Offer(
            "wider_nosing", say("offer", "stool.wider-nosing", least=wider), (), None, (("nosing", wider),)
        ),
        Offer("thinner_casing", say("offer", "casing.thinner", most=thick - over)),
    )
    detail = say("finding", "casing.past-stool", thickness=thick, stands=thick - over, over=over)
    return Finding("casing-past-stool", "sill", detail, over, offers, "", ("trim", "stool", "nosing"))


def _plinth(trim: Trim, legs: list[CasedSide], thick: Fraction) -> Iterator[Finding]:
    plinth = trim.plinth
    assert plinth is not None
    if plinth.thickness < thick:
        yield _thin(
            "plinth-thin",
            "base",
            ("plinth", "thickness"),
            plinth.thickness,
            thick,
            ("plinth block", "side casing"),
        )
    for side in legs:
        width = side.outer - side.reveal
        if plinth.width < width:
            detail = say("finding", "plinth.narrow", plinth=+plinth.width, casing=width, side=side.name)
            wider = Offer(
                "wider_stock", say("offer", "stock.wider", least=width), (), None, (("width", width),)
            )
            rip = Offer(
                "rip_casing",
                say("offer", "casing.rip-to", most=+plinth.width),
                ("widths", side.name),
                +plinth.width,
            )
            field = ("trim", "plinth", "width")
            yield Finding("plinth-narrow", side.name, detail, width - plinth.width, (wider, rip), "", field)


def _butted(trim: Trim, legs: Fraction, head: Fraction) -> Iterator[Finding]:
    if head < legs:
        field = "casing" if trim.head_casing is None else "head_casing"
        yield _thin(
            "head-thin", "head", (field, "thickness"), head, legs, ("butted head casing", "side casing")
        )
    if trim.fillet is not None and trim.fillet.depth < max(head, legs):
        yield _thin(
            "fillet-thin",
            "head",
            ("fillet", "depth"),
            trim.fillet.depth,
            max(head, legs),
            ("fillet", "casing"),
        )
    if trim.cap is not None and trim.cap.depth < head:
        yield _thin("cap-thin", "head", ("cap", "depth"), trim.cap.depth, head, ("cap", "head casing"))


def _long_horns(opening: Opening) -> Iterator[Finding]:
    stool = opening.trim.stool
    if stool is None:
        return
    for side in ("left", "right"):
        own: Fraction | None = getattr(opening.horns, side)
        horn = +(stool.horn if own is None else own)
        if horn > LONGEST_HORN:
            field = ("trim", "stool", "horn") if own is None else ("horns", side)
            detail = say("finding", "stool.horn-long", side=side, horn=horn, most=Fraction(LONGEST_HORN))
            check = Offer("check_horn", say("offer", "stool.check-horn"))
            yield Finding("horn-long", side, detail, horn, (check,), "", field)


def _small(frame: Frame) -> bool:
    """Whether a side is short enough to be looked at: of a shape of many sides one may be."""
    sides = frame.sides
    if len(sides) != 4:
        return any(side < LEAST_OPENING for side in sides)
    width, right, _, left = sides
    return width < LEAST_OPENING or right < LEAST_OPENING or (left is not right and left < LEAST_OPENING)


def _small_openings(opening: Opening, frame: Frame) -> Iterator[Finding]:
    """An opening, or one of its joined units, that no window is as small as."""
    points = frame.vertices
    across = _extent([x for x, _ in points])
    up = _extent([y for _, y in points])
    readings = opening.readings
    door = isinstance(opening.outline.shape, Door)
    if across < LEAST_OPENING:
        yield _too_small(across, "sill", ("door", "width") if door else as_read(readings, ("jamb_width",)))
    if up < LEAST_OPENING:
        height: Path = (
            ("left_jamb_height",) if isinstance(opening.outline.shape, PlumbSides) else ("jamb_height",)
        )
        if readings.sides is not None:
            height = ("sides",)
        yield _too_small(up, "left", ("door", "height") if door else as_read(readings, height))
    for number, width in enumerate(readings.joined_widths or ()):
        if width < LEAST_OPENING:
            yield _too_small(+width, "sill", ("joined_widths", number))


def _extent(along: list[Real]) -> Real:
    return max(along) - min(along)


def _too_small(size: Real, side: str, field: Path) -> Finding:
    least = Fraction(LEAST_OPENING)
    detail = (
        say("finding", "opening.narrow", size=size, least=least)
        if side == "sill"
        else say("finding", "opening.low", size=size, least=least)
    )
    again = Offer("measure_again", say("offer", "opening.measure-again"))
    return Finding("opening-small", side, detail, size, (again,), "", ("readings", *field))
