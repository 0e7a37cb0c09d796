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
from dryfit.piece import Face, Measure, Piece
from dryfit.tape import inches


@dataclass(frozen=True)
class Job:
    """What was asked, as far as the casing goes.

    Attributes:
        outline: the jamb's inside faces.
        reveals: by side.
        foot, butted, overhang: as asked.
        fillet: height of what lies under a butted head.
        blocks: the corner blocks' parts by side, none where there are none.
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
    job: Job, parts: list[dict[str, Any]], measure: Measure, misfits: Misfits, kind: str = "casing_"
) -> dict[str, Piece]:
    """Put the casing together (or what is mitred like it), note what does not fit, and return where it came to lie."""
    cut = {part["side"]: Piece.cut(part, measure) for part in parts if str(part["kind"]).startswith(kind)}
    names = [name for name in job.outline.names if name != "sill" or job.foot == "picture_frame"]
    misfits.says("the casing's pieces", sorted(cut), sorted(names))
    if sorted(cut) != sorted(names):
        return {}
    if job.blocks:
        inner = {name: job.inner(name) for name in names}
        jamb = Polygon([(z.real, z.imag) for z in job.outline.corners])
        if job.taken_square:
            misfits.slack += job.taken_square + wander_of(job)
        return fit_blocks(cut, inner, job.blocks, job.floor, jamb, measure, misfits)
    if job.taken_square:
        return _taken_square(job, cut, misfits)
    if job.foot == "picture_frame":
        placed = _framed(job, cut, misfits)
    elif job.butted:
        placed = _butted(job, cut, misfits)
    else:
        placed = _stood(job, cut, misfits)
    for name, piece in placed.items():
        _check_reveal(job, name, piece, misfits)
        _check_edges(piece, measure, misfits)
        _check_ends(job, name, piece, misfits)
        _check_marks(job, name, piece, measure, misfits)
    for one, other in combinations(placed.values(), 2):
        misfits.apart(f"{one.name} and {other.name}", one.polygon, other.polygon)
    jamb = Polygon([(z.real, z.imag) for z in job.outline.corners])
    least = min(job.reveals[name] for name in placed)
    around = unary_union([piece.polygon for piece in placed.values()])
    misfits.apart("the casing and the jamb's inside", around, jamb.buffer(least, join_style="mitre"))
    return placed


def _stand_right(job: Job, piece: Piece) -> Piece:
    """The foot lies along the floor line, its inner edge where the right reveal meets that line."""
    foot = piece.right
    return piece.laid(foot.inner, 1 / foot.outwards, job.inner("right").crosses(job.floor))


def _stand_left(job: Job, piece: Piece) -> Piece:
    foot = piece.left
    return piece.laid(foot.inner, -1 / foot.outwards, job.inner("left").crosses(job.floor))


def _joined(next_piece: Piece, to: Piece, misfits: Misfits) -> Piece:
    """A piece turned so that its right end lies against the left end of the one before, short points together."""
    mine, theirs = next_piece.right, to.left
    laid = next_piece.laid(mine.inner, theirs.outwards / mine.outwards, theirs.inner)
    _check_joint(to.name, laid.name, to.left, laid.right, misfits)
    return laid


def _check_joint(one: str, other: str, end: Face, start: Face, misfits: Misfits) -> None:
    misfits.near(f"the short points of {one} and {other}", start.inner, end.inner)
    misfits.near(f"the long points of {one} and {other}", start.outer, end.outer)


def _chain(first: Piece, cut: dict[str, Piece], names: list[str], misfits: Misfits) -> dict[str, Piece]:
    placed = {names[0]: first}
    for before, name in pairwise(names):
        placed[name] = _joined(cut[name], placed[before], misfits)
    return placed


def _framed(job: Job, cut: dict[str, Piece], misfits: Misfits) -> dict[str, Piece]:
    sill = cut["sill"]
    first = sill.laid(sill.right.inner, -1 + 0j, job.inner("left").crosses(job.inner("sill")))
    placed = _chain(first, cut, list(job.outline.names), misfits)
    _check_joint(placed["left"].name, first.name, placed["left"].left, first.right, misfits)
    return placed


def _stood(job: Job, cut: dict[str, Piece], misfits: Misfits) -> dict[str, Piece]:
    placed = _chain(_stand_right(job, cut["right"]), cut, list(job.outline.names[1:]), misfits)
    foot = placed["left"].left
    misfits.near("the left leg's foot, inner edge, above the floor line", foot.inner.imag, job.base)
    misfits.near("the left leg's foot, outer edge, above the floor line", foot.outer.imag, job.base)
    return placed


def _butted(job: Job, cut: dict[str, Piece], misfits: Misfits) -> dict[str, Piece]:
    """The head lies square across both legs and runs past each by the overhang."""
    right, left, head = _stand_right(job, cut["right"]), _stand_left(job, cut["left"]), cut["head"]
    along = right.left.outwards
    under = Line(right.left.outer, -along).outside(job.fillet)
    ends = [under.crosses(outside(leg)) for leg in (right, left)]
    head = head.laid(head.right.inner, along, ends[0] + along * job.overhang)
    misfits.near("the butted head past the left leg", head.left.inner, ends[1] - along * job.overhang)
    misfits.near("the left leg's top below the head, inner edge", under.off(left.right.inner), -job.fillet)
    misfits.near("the left leg's top below the head, outer edge", under.off(left.right.outer), -job.fillet)
    for end in head.part["ends"]:
        misfits.says(f"the butted head's {end['at']} end", end["cut"], "square")
    return {"right": right, "head": head, "left": left}


def _taken_square(job: Job, cut: dict[str, Piece], misfits: Misfits) -> dict[str, Piece]:
    """A shape a little out of square, cut as if it were not: each piece follows its jamb, the joints open a little."""
    placed: dict[str, Piece] = {}
    names = job.outline.names
    for index, name in enumerate(names):
        if name not in cut:
            continue
        piece, line = cut[name], job.inner(name)
        start, finish = (
            line.crosses(_met(job, cut, name, next_))
            for next_ in (names[index - 1], names[(index + 1) % len(names)])
        )
        middle = (piece.left.inner + piece.right.inner) / 2
        placed[name] = piece.laid(middle, -line.along, (start + finish) / 2)
    wander = wander_of(job)
    for before, after in pairwise([*placed, *list(placed)[:1]] if "sill" in placed else list(placed)):
        one, other = placed[before], placed[after]
        if job.butted:
            _check_butt(job, *((one, other) if after == "head" else (other, one)), wander, misfits)
            continue
        what = f"{one.name} and {other.name}, taken square"
        misfits.near(f"short points of {what}", other.right.inner, one.left.inner, wander)
        misfits.near(f"long points of {what}", other.right.outer, one.left.outer, wander + job.taken_square)
    if "sill" not in placed:
        for name, foot in (("right", placed["right"].right), ("left", placed["left"].left)):
            loose = wander + job.taken_square
            misfits.near(f"the {name} foot, taken square, inner edge", foot.inner.imag, job.base, loose)
            misfits.near(f"the {name} foot, taken square, outer edge", foot.outer.imag, job.base, loose)
    return placed


def _met(job: Job, cut: dict[str, Piece], name: str, other: str) -> Line:
    """The line a piece runs to: the floor, the neighbour's inner edge, or the outer one of a leg it lies across."""
    if other not in cut:
        return job.floor
    if not (job.butted and name == "head"):
        return job.inner(other)
    piece = cut[other]
    return job.inner(other).outside(abs(piece.left.outer - piece.left.inner))


def wander_of(job: Job) -> float:
    """The gap told is that of the joints; where reveals meet askew, they wander by a little more."""
    askew = max(
        abs((job.outline.side(i).along / job.outline.side(i - 1).along).real)
        for i in range(len(job.outline.names))
    )
    return askew * 2 * (max(job.reveals.values()) + job.overhang + askew * job.outline.longest)


def _check_butt(job: Job, leg: Piece, head: Piece, wander: float, misfits: Misfits) -> None:
    under = Line(head.right.inner, -head.turn)
    top, end = (leg.left, head.right.inner) if leg.part["side"] == "right" else (leg.right, head.left.inner)
    loose = wander + job.taken_square
    for edge, point in (("inner", top.inner), ("outer", top.outer)):
        misfits.near(
            f"{leg.name}'s top below the head, {edge} edge, taken square", under.off(point), 0, loose
        )
    misfits.near(f"the head past {leg.name}, taken square", abs(end - top.outer), job.overhang, loose)


def _check_reveal(job: Job, name: str, piece: Piece, misfits: Misfits) -> None:
    jamb = job.outline.side(job.outline.names.index(name))
    for end, face in (("left", piece.left), ("right", piece.right)):
        wanted = job.reveals[name] + (job.fillet if name == "head" else 0.0)
        misfits.near(f"{name} reveal, {end} end on the saw", jamb.off(face.inner), wanted)


def _check_edges(piece: Piece, measure: Measure, misfits: Misfits) -> None:
    """The short and long point lengths are those of the piece that the overall length and the angles make."""
    for figure, one, other in (
        ("short_point", piece.left.inner, piece.right.inner),
        ("long_point", piece.left.outer, piece.right.outer),
    ):
        told = piece.part[figure]
        # Each figure is rounded by itself, so the text of this one may miss by its own rounding as well.
        more = 0.0 if told["residual"].split()[0] == "0" else abs(float(inches(told["residual"])))
        misfits.near(f"{piece.name} {figure}", abs(one - other), float(measure(told)), more)


def _check_ends(job: Job, name: str, piece: Piece, misfits: Misfits) -> None:
    """Ends are named as they are installed, and the long point is on the edge it is said to be on."""
    if name in ("left", "right") and not job.counted:
        lower, upper = sorted((piece.left, piece.right), key=lambda face: face.inner.imag)
        where = {"foot": lower, "head": upper}
    else:
        names, index = job.outline.names, job.outline.names.index(name)
        # On the saw the side's finish is on the left: where it meets the next side, going anticlockwise.
        where = {names[(index + 1) % len(names)]: piece.left, names[index - 1]: piece.right}
    for end, face, sign in zip(piece.part["ends"], (piece.left, piece.right), (1, -1), strict=True):
        misfits.says(f"{piece.name}'s end at {end['at']}", where.get(end["at"]), face)
        past = sign * ((face.inner - face.outer) / piece.turn).real
        longer = None if abs(past) < 1e-9 else "outer" if past > 0 else "inner"
        misfits.says(f"{piece.name}'s long edge at {end['at']}", end["long_edge"], longer)


def _check_marks(job: Job, name: str, piece: Piece, measure: Measure, misfits: Misfits) -> None:
    index = job.outline.names.index(name)
    jamb, length = job.outline.side(index), job.outline.length(index)
    wanted = {
        "centre line of opening": length / 2,
        "underside of head jamb": length if name == "right" else 0.0,
    }
    for mark in piece.part["marks"]:
        at = jamb.ahead(piece.on_face(float(measure(mark["at"]))))
        more = 0.0 if mark["at"]["residual"].split()[0] == "0" else abs(float(inches(mark["at"]["residual"])))
        misfits.near(f"{piece.name}'s mark for the {mark['name']}", at, wanted[mark["name"]], more)
