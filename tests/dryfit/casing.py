"""Casing put together from its own cuts, stood on its feet, and compared with the opening it goes round."""

from dataclasses import dataclass
from itertools import combinations, pairwise
from typing import Any

from shapely import Polygon
from shapely.ops import unary_union

from dryfit.blocks import fit_blocks
from dryfit.headdress import outside
from dryfit.misfits import Misfits
from dryfit.outline import Line, Outline
from dryfit.piece import Face, Measure, SolidPiece
from dryfit.tape import inches, unrounded

CASING = ("side_casing", "head_casing", "bottom_casing")


@dataclass(frozen=True)
class Frame:
    """What was asked, as far as the casing goes.

    Attributes:
        outline: the jamb's inside faces.
        reveals: by side.
        foot, butted, overhang: as asked.
        fillet: height of what lies under a butted head.
        blocks: the corner blocks' pieces by side, none where there are none.
        base: height above the first side of the line the legs stand on.
        counted: whether its sides are counted rather than called legs and heads.
        taken_square: the joint gap the answer says it left by taking the corners as square.
    """

    outline: Outline
    reveals: dict[str, float]
    foot: str
    butted: bool
    overhang: float
    fillet: float
    blocks: dict[str, dict[str, Any]]
    base: float
    counted: bool
    taken_square: float

    def inner(self, name: str) -> Line:
        """The line a side's inner edge belongs on."""
        return self.outline.side(self.outline.names.index(name)).outside(self.reveals[name])

    @property
    def floor(self) -> Line:
        return Line(complex(0, self.base), 1 + 0j)


def fit_casing(
    frame: Frame,
    pieces: list[dict[str, Any]],
    measure: Measure,
    misfits: Misfits,
    kinds: tuple[str, ...] = CASING,
) -> dict[str, SolidPiece]:
    """Put the casing together (or what is mitered like it), note what does not fit, and return where it came to lie."""
    cut = {
        piece["side"]: SolidPiece.cut(piece, measure)
        for piece in pieces
        if str(piece["kind"]).startswith(kinds)
    }
    names = [name for name in frame.outline.names if name != "sill" or frame.foot == "casing"]
    misfits.says("the casing's pieces", sorted(cut), sorted(names))
    if sorted(cut) != sorted(names):
        return {}
    if frame.blocks:
        inner = {name: frame.inner(name) for name in names}
        jamb = Polygon([(z.real, z.imag) for z in frame.outline.corners])
        if frame.taken_square:
            misfits.slack += frame.taken_square + wander_of(frame)
        return fit_blocks(cut, inner, frame.blocks, frame.floor, jamb, measure, misfits)
    if frame.taken_square:
        return {name: piece.finished() for name, piece in _taken_square(frame, cut, misfits).items()}
    if frame.foot == "casing":
        placed = _framed(frame, cut, misfits)
    elif frame.butted:
        placed = _butted(frame, cut, misfits)
    else:
        placed = _stood(frame, cut, misfits)
    for name, piece in placed.items():
        _check_reveal(frame, name, piece, misfits)
        _check_ends(frame, name, piece, misfits)
        _check_marks(frame, name, piece, measure, misfits)
    placed = {name: piece.finished() for name, piece in placed.items()}
    for name, piece in placed.items():
        _check_edges(piece, measure, misfits)
        _check_tips(frame, name, placed, misfits)
    for one, other in combinations(placed.values(), 2):
        misfits.apart(f"{one.name} and {other.name}", one.polygon, other.polygon)
    jamb = Polygon([(z.real, z.imag) for z in frame.outline.corners])
    least = min(frame.reveals[name] for name in placed)
    around = unary_union([piece.polygon for piece in placed.values()])
    misfits.apart("the casing and the jamb's inside", around, jamb.buffer(least, join_style="mitre"))
    return placed


def _stand_right(frame: Frame, piece: SolidPiece) -> SolidPiece:
    """The foot lies along the floor line, its inner edge where the right reveal meets that line."""
    foot = piece.right
    return piece.laid(foot.inner, 1 / foot.outwards, frame.inner("right").crosses(frame.floor))


def _stand_left(frame: Frame, piece: SolidPiece) -> SolidPiece:
    foot = piece.left
    return piece.laid(foot.inner, -1 / foot.outwards, frame.inner("left").crosses(frame.floor))


def _joined(next_piece: SolidPiece, to: SolidPiece, misfits: Misfits) -> SolidPiece:
    """A piece turned so that its right end lies against the left end of the one before, short points together."""
    mine, theirs = next_piece.right, to.left
    laid = next_piece.laid(mine.inner, theirs.outwards / mine.outwards, theirs.inner)
    _check_joint(to, laid, misfits)
    return laid


def _check_joint(one: SolidPiece, other: SolidPiece, misfits: Misfits) -> None:
    end, start = _faces(one, other)
    what = f"{one.name} and {other.name}"
    misfits.near(f"the short points of {what}", start.inner, end.inner)
    misfits.near(f"the long points of {what}", start.outer, end.outer)


def _faces(one: SolidPiece, other: SolidPiece) -> tuple[Face, Face]:
    """The left end of a piece and the right end of the next, as far as both are there once they are ripped. Of two that
    are mitered at one width the wider one's miter runs past the narrower one's outside edge."""
    both = min(one.width, other.width) if _one_molding(one, other) else None
    return tuple(
        Face(face.inside((both or piece.width) / piece.sawn), face.inner)
        for piece, face in ((one, one.left), (other, other.right))
    )  # type: ignore[return-value]


def _one_molding(one: SolidPiece, other: SolidPiece) -> bool:
    """Whether two pieces are mitered at one width from one stock."""
    stock = [(piece.answered["profile"], unrounded(piece.answered["thickness"])) for piece in (one, other)]
    return one.sawn == other.sawn and stock[0] == stock[1]


def _check_tips(frame: Frame, name: str, placed: dict[str, SolidPiece], misfits: Misfits) -> None:
    """Where a tip is trimmed, the cut lies along the narrower neighbor's edge, from that one's long point on; and
    none is left that stands past it."""
    names, piece = frame.outline.names, placed[name]
    index = names.index(name)
    for face, end, neighbor in (
        (piece.left, 0, names[(index + 1) % len(names)]),
        (piece.right, 1, names[index - 1]),
    ):
        other = placed.get(neighbor)
        narrower = (
            other is not None
            and not frame.butted
            and _one_molding(piece, other)
            and other.width < piece.width
        )
        misfits.says(
            f"{piece.name} trimmed beside {neighbor}",
            piece.answered["ends"][end]["tip"] is not None,
            narrower,
        )
        if other is None or face.trimmed is None:
            continue
        theirs = other.right if end == 0 else other.left
        edge = outside(other)
        misfits.near(
            f"{piece.name}'s trimmed tip, at the {neighbor} casing's long point", face.trimmed, theirs.outer
        )
        misfits.near(f"{piece.name}'s trimmed tip, off the {neighbor} casing's edge", edge.off(face.outer), 0)


def _chain(
    first: SolidPiece, cut: dict[str, SolidPiece], names: list[str], misfits: Misfits
) -> dict[str, SolidPiece]:
    placed = {names[0]: first}
    for before, name in pairwise(names):
        placed[name] = _joined(cut[name], placed[before], misfits)
    return placed


def _framed(frame: Frame, cut: dict[str, SolidPiece], misfits: Misfits) -> dict[str, SolidPiece]:
    sill = cut["sill"]
    first = sill.laid(sill.right.inner, -1 + 0j, frame.inner("left").crosses(frame.inner("sill")))
    placed = _chain(first, cut, list(frame.outline.names), misfits)
    _check_joint(placed["left"], first, misfits)
    return placed


def _stood(frame: Frame, cut: dict[str, SolidPiece], misfits: Misfits) -> dict[str, SolidPiece]:
    placed = _chain(_stand_right(frame, cut["right"]), cut, list(frame.outline.names[1:]), misfits)
    foot = placed["left"].left
    misfits.near("the left leg's foot, inner edge, above the floor line", foot.inner.imag, frame.base)
    misfits.near("the left leg's foot, outer edge, above the floor line", foot.outer.imag, frame.base)
    return placed


def _butted(frame: Frame, cut: dict[str, SolidPiece], misfits: Misfits) -> dict[str, SolidPiece]:
    """The head lies square across both legs and runs past each by the overhang."""
    right, left, head = _stand_right(frame, cut["right"]), _stand_left(frame, cut["left"]), cut["head"]
    along = right.left.outwards
    under = Line(right.left.outer, -along).outside(frame.fillet)
    ends = [under.crosses(outside(leg)) for leg in (right, left)]
    head = head.laid(head.right.inner, along, ends[0] + along * frame.overhang)
    misfits.near("the butted head past the left leg", head.left.inner, ends[1] - along * frame.overhang)
    misfits.near("the left leg's top below the head, inner edge", under.off(left.right.inner), -frame.fillet)
    misfits.near("the left leg's top below the head, outer edge", under.off(left.right.outer), -frame.fillet)
    for end in head.answered["ends"]:
        misfits.says(f"the butted head's {end['at']} end", end["cut"], "square")
    return {"right": right, "head": head, "left": left}


def _taken_square(frame: Frame, cut: dict[str, SolidPiece], misfits: Misfits) -> dict[str, SolidPiece]:
    """A shape a little out of square, cut as if it were not: each piece follows its jamb, the joints open a little."""
    placed: dict[str, SolidPiece] = {}
    names = frame.outline.names
    for index, name in enumerate(names):
        if name not in cut:
            continue
        piece, line = cut[name], frame.inner(name)
        start, finish = (
            line.crosses(_met(frame, cut, name, next_))
            for next_ in (names[index - 1], names[(index + 1) % len(names)])
        )
        middle = (piece.left.inner + piece.right.inner) / 2
        placed[name] = piece.laid(middle, -line.along, (start + finish) / 2)
    wander = wander_of(frame)
    for before, after in pairwise([*placed, *list(placed)[:1]] if "sill" in placed else list(placed)):
        one, other = placed[before], placed[after]
        if frame.butted:
            _check_butt(frame, *((one, other) if after == "head" else (other, one)), wander, misfits)
            continue
        what = f"{one.name} and {other.name}, taken square"
        end, start = _faces(one, other)
        misfits.near(f"short points of {what}", start.inner, end.inner, wander)
        misfits.near(f"long points of {what}", start.outer, end.outer, wander + frame.taken_square)
    if "sill" not in placed:
        right, left = placed["right"].finished(), placed["left"].finished()
        for name, foot in (("right", right.right), ("left", left.left)):
            loose = wander + frame.taken_square
            misfits.near(f"the {name} foot, taken square, inner edge", foot.inner.imag, frame.base, loose)
            misfits.near(f"the {name} foot, taken square, outer edge", foot.outer.imag, frame.base, loose)
    return placed


def _met(frame: Frame, cut: dict[str, SolidPiece], name: str, other: str) -> Line:
    """The line a piece runs to: the floor, the neighbor's inner edge, or the outer one of a leg it lies across."""
    if other not in cut:
        return frame.floor
    if not (frame.butted and name == "head"):
        return frame.inner(other)
    piece = cut[other]
    return frame.inner(other).outside(abs(piece.left.outer - piece.left.inner))


def wander_of(frame: Frame) -> float:
    """The gap told is that of the joints; where reveals meet askew, they wander by a little more."""
    askew = max(
        abs((frame.outline.side(i).along / frame.outline.side(i - 1).along).real)
        for i in range(len(frame.outline.names))
    )
    return askew * 2 * (max(frame.reveals.values()) + frame.overhang + askew * frame.outline.longest)


def _check_butt(frame: Frame, leg: SolidPiece, head: SolidPiece, wander: float, misfits: Misfits) -> None:
    under = Line(head.right.inner, -head.turn)
    top, end = (
        (leg.left, head.right.inner) if leg.answered["side"] == "right" else (leg.right, head.left.inner)
    )
    loose = wander + frame.taken_square
    for edge, point in (("inner", top.inner), ("outer", top.outer)):
        misfits.near(
            f"{leg.name}'s top below the head, {edge} edge, taken square", under.off(point), 0, loose
        )
    misfits.near(f"the head past {leg.name}, taken square", abs(end - top.outer), frame.overhang, loose)


def _check_reveal(frame: Frame, name: str, piece: SolidPiece, misfits: Misfits) -> None:
    jamb = frame.outline.side(frame.outline.names.index(name))
    for end, face in (("left", piece.left), ("right", piece.right)):
        wanted = frame.reveals[name] + (frame.fillet if name == "head" else 0.0)
        misfits.near(f"{name} reveal, {end} end on the saw", jamb.off(face.inner), wanted)


def _check_edges(piece: SolidPiece, measure: Measure, misfits: Misfits) -> None:
    """The short and long point lengths are those of the piece that the overall length and the angles make."""
    for figure, one, other in (
        ("short_point", piece.left.inner, piece.right.inner),
        ("long_point", piece.left.outer, piece.right.outer),
    ):
        told = piece.answered[figure]
        # Each figure is rounded by itself, so the text of this one may miss by its own rounding as well.
        more = 0.0 if told["residual"].split()[0] == "0" else abs(float(inches(told["residual"])))
        misfits.near(f"{piece.name} {figure}", abs(one - other), float(measure(told)), more)


def _check_ends(frame: Frame, name: str, piece: SolidPiece, misfits: Misfits) -> None:
    """Ends are named as they are installed, and the long point is on the edge it is said to be on."""
    if name in ("left", "right") and not frame.counted:
        lower, upper = sorted((piece.left, piece.right), key=lambda face: face.inner.imag)
        where = {"foot": lower, "head": upper}
    else:
        names, index = frame.outline.names, frame.outline.names.index(name)
        # On the saw the side's finish is on the left: where it meets the next side, going counterclockwise.
        where = {names[(index + 1) % len(names)]: piece.left, names[index - 1]: piece.right}
    for end, face, sign in zip(piece.answered["ends"], (piece.left, piece.right), (1, -1), strict=True):
        misfits.says(f"{piece.name}'s end at {end['at']}", where.get(end["at"]), face)
        past = sign * ((face.inner - face.outer) / piece.turn).real
        longer = None if abs(past) < 1e-9 else "outer" if past > 0 else "inner"
        misfits.says(f"{piece.name}'s long edge at {end['at']}", end["long_edge"], longer)


def _check_marks(frame: Frame, name: str, piece: SolidPiece, measure: Measure, misfits: Misfits) -> None:
    index = frame.outline.names.index(name)
    jamb, length = frame.outline.side(index), frame.outline.length(index)
    wanted = {
        "center line of opening": length / 2,
        "underside of head jamb": length if name == "right" else 0.0,
    }
    for mark in piece.answered["marks"]:
        at = jamb.ahead(piece.on_face(float(measure(mark["at"]))))
        more = 0.0 if mark["at"]["residual"].split()[0] == "0" else abs(float(inches(mark["at"]["residual"])))
        misfits.near(f"{piece.name}'s mark for the {mark['name']}", at, wanted[mark["name"]], more)
