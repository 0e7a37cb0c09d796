"""The stool and the apron, seen from above: x along the wall, y into the wall, the wall's face at y = 0."""

import math
from typing import Any

from shapely import Polygon, box, difference, symmetric_difference, union_all
from shapely.affinity import rotate, translate
from shapely.ops import unary_union

from dryfit.misfits import GRID, Misfits
from dryfit.piece import Measure, SolidPiece
from dryfit.returns import close, flat, turned
from dryfit.tape import inches, unrounded


def fit_stool(
    piece: dict[str, Any],
    returns: dict[str, dict[str, Any]],
    measure: Measure,
    misfits: Misfits,
    *,
    jamb: float,
    depths: tuple[float, float],
    outsides: tuple[float, float],
    horn_depths: tuple[float | None, ...],
    horns: tuple[float, ...],
    scribe: float,
    clearance: float,
    front: float,
) -> None:
    """Lay the stool between the jambs with its back edge along the sash.

    Args:
        piece: the stool's.
        returns: those of its ends' returns, by side; none where its ends are square.
        jamb: width between the jambs at the stool.
        depths: left and right, wall face to sash stop.
        outsides: where the casing's outside edges stand at the stool, x.
        horn_depths: the same at each horn's end, where the wall is out of plane.
        horns: asked, past the casing.
        scribe: asked, left on each horn's wall edge.
        clearance: asked, to the sash.
        front: how far the nosing is to stand off the wall's face where the wall is deeper.
    """
    length, width = float(measure(piece["overall"])), float(measure(piece["rip_width"]))
    left, right = (
        (float(measure(end["notch"]["length"])), float(measure(end["notch"]["depth"])))
        for end in piece["ends"]
    )
    for end, at in zip(piece["ends"], ("left", "right"), strict=True):
        cut = "miter" if returns else "square"
        misfits.says(f"the stool's {at} end", (end["at"], end["on_saw"], end["cut"]), (at, at, cut))
    # On the bench: left end at x = 0, back edge along y = 0, nosing towards the carpenter.
    far = [
        float(measure(notch["end_depth"])) if notch["end_depth"] else float(measure(notch["depth"]))
        for notch in (end["notch"] for end in piece["ends"])
    ]
    stool = box(0, -width, length, 0) - unary_union(
        [
            Polygon([(0, 0), (left[0], 0), (left[0], -left[1]), (0, -far[0])]),
            Polygon([(length, 0), (length - right[0], 0), (length - right[0], -right[1]), (length, -far[1])]),
        ]
    )
    for side, at_end, depth, told in zip(("left", "right"), horn_depths, depths, far, strict=True):
        wanted = (depth if at_end is None else at_end) - clearance - scribe
        misfits.near(f"the {side} notch at the horn's end", told, wanted)
    if returns:
        stool = _returned(stool, piece, returns, measure, (left[1], right[1]), misfits)
    lean = math.atan2(depths[1] - depths[0], jamb)
    stool = rotate(stool, lean, origin=(left[0], 0), use_radians=True)
    stool = translate(stool, -left[0], depths[0] - clearance / math.cos(lean))
    # Depths that differ lean the stool to follow the sash; its square notches then miss by the lean.
    more = abs(math.tan(lean)) * (width + max(left[0], right[0])) + jamb * (1 / math.cos(lean) - 1)
    wall = unary_union(
        [
            _wall(0.0, -1, left[0], depths[0], horn_depths[0], scribe),
            _wall(jamb, 1, right[0], depths[1], horn_depths[1], scribe),
        ]
    )
    overlap = stool.intersection(wall)
    if overlap.area > (misfits.slack + more) * (overlap.length + misfits.slack):
        misfits.found.append(f"the stool and the wall overlap by {overlap.area:.5f} sq in")
    for side, depth, notch in (("left", depths[0], left[1]), ("right", depths[1], right[1])):
        misfits.near(f"the {side} horn's back edge off the wall", depth - clearance - notch, scribe, more)
    # Halfway into the wall there is nothing of the horns.
    tongue = stool.intersection(box(-jamb, min(depths) / 2, 2 * jamb, max(depths) + width))
    x_least, _, x_most, y_most = tongue.bounds
    misfits.near("the stool's tongue at the left jamb", x_least, 0, more)
    misfits.near("the stool's tongue at the right jamb", x_most, jamb, more)
    misfits.near("the stool's back edge from the sash", max(depths) - y_most, clearance, more)
    x_least, _, x_most, _ = stool.bounds
    misfits.near("the left horn", outsides[0] - x_least, horns[0], more)
    misfits.near("the right horn", x_most - outsides[1], horns[1], more)
    nearest = -max(_front_at(stool, 0), _front_at(stool, jamb))
    deeper = max(0.0, *(each for each in horn_depths if each is not None), *depths) - max(depths)
    misfits.near("the nosing off the wall at the deeper end", nearest, front + deeper, more)
    for mark, x in (
        ("left casing outside edge", outsides[0]),
        ("left jamb face", 0.0),
        ("center line of opening", jamb / 2),
        ("right jamb face", jamb),
        ("right casing outside edge", outsides[1]),
    ):
        told = next(each["at"] for each in piece["marks"] if each["name"] == mark)
        own = abs(float(measure(told)) - float(unrounded(told)))
        misfits.near(f"the stool's mark for the {mark}", float(measure(told)) - left[0], x, more + own)


def _wall(jamb: float, way: int, horn: float, depth: float, at_end: float | None, scribe: float) -> Polygon:
    """The wall beside a jamb as far as its horn, its face where it was read, less what is still to be scribed."""
    face = scribe + (0.0 if at_end is None else depth - at_end)
    end = jamb + way * horn
    return Polygon([(jamb, scribe), (jamb, 2 * depth), (end, 2 * depth), (end, face)])


def fit_shim_below(
    request: dict[str, Any], pieces: list[dict[str, Any]], jamb: float, measure: Measure, misfits: Misfits
) -> None:
    """A strip under the stool fills what the sill lies low, jamb to jamb."""
    strips = [piece for piece in pieces if piece["kind"] == "tapered_shim"]
    wanted = int(request.get("sill_answer") == "tapered_shim" and "sill" in request["readings"])
    misfits.says("the tapered shim", len(strips), wanted)
    for strip in strips:
        sill = request["readings"]["sill"]
        by = float(inches(sill["by"], request.get("unit")))
        for side in ("left", "right"):
            told = float(unrounded(strip["taper"][side]))
            misfits.near(f"the strip's {side} end", told, by if sill["low"] == side else 0.0)
        misfits.near("the strip between the jambs", float(measure(strip["overall"])), jamb)


def _returned(
    stool: Polygon,
    piece: dict[str, Any],
    returns: dict[str, dict[str, Any]],
    measure: Measure,
    notches: tuple[float, float],
    misfits: Misfits,
) -> Polygon:
    """The horns mitered from their front corners as far as the notch, and made whole again by the returns."""
    x_least, y_least, x_most, _ = stool.bounds
    mitered = []
    for end, corner, way, notch in zip(piece["ends"], (x_least, x_most), (1, -1), notches, strict=True):
        misfits.says(
            "the stool's miter", (end["miter_direction"], end["long_edge"]), (end["on_saw"], "front")
        )
        run = (-notch - y_least) * math.tan(math.radians(end["miter_degrees"]))
        mitered.append(Polygon([(corner, y_least), (corner, -notch), (corner + way * run, -notch)]))
    body = difference(stool, union_all(mitered), grid_size=GRID)
    placed = [
        translate(turned(flat(each, measure), side, x_most), 0, -notch)
        for (side, each), notch in zip(sorted(returns.items()), notches, strict=True)
    ]
    for one in placed:
        misfits.apart("the stool and a return of it", body, one)
    together = union_all([body, *placed], grid_size=GRID)
    missing = symmetric_difference(stool, together, grid_size=GRID)
    if missing.area > misfits.slack * stool.length:
        misfits.found.append(f"the stool and its returns leave {missing.area:.5f} sq in open or over")
    return together


def _front_at(stool: Polygon, x: float) -> float:
    return float(stool.intersection(box(x - 1e-6, -1e3, x + 1e-6, 1e3)).bounds[1])


def fit_apron(
    pieces: list[dict[str, Any]],
    measure: Measure,
    misfits: Misfits,
    *,
    jamb: float,
    outsides: tuple[float, float],
    asked: dict[str, Any],
) -> None:
    """Hold the apron's face length against the casing's outside edges and fold its returns back to the wall."""
    cut = {piece["key"]: piece for piece in pieces if str(piece["kind"]).startswith("apron")}
    ends = asked.get("ends", "mitered_return")
    returned = ends == "mitered_return"
    wanted = {"apron", "apron_return/left", "apron_return/right"} if returned else {"apron"}
    misfits.says("the apron's pieces", set(cut), wanted)
    if set(cut) != wanted:
        return
    body = _from_above(cut["apron"], measure)
    thick = float(unrounded(cut["apron"]["thickness"]))
    length = body.bounds[2]
    misfits.near("the apron between the casing's outside edges", length, outsides[1] - outsides[0])
    mark = cut["apron"]["marks"][0]["at"]
    own = abs(float(measure(mark)) - float(unrounded(mark)))
    misfits.near("the apron's center line", float(measure(mark)) + outsides[0], jamb / 2, own)
    if ends == "angled":
        _cut_back(cut["apron"], measure, asked.get("end_angle", 15.0), misfits)
    if not returned:
        misfits.near("the square apron's area from above", body.area, length * thick)
        return
    returns = {side: _from_above(cut[f"apron_return/{side}"], measure) for side in ("left", "right")}
    close("apron", body, returns, length, thick, misfits)


def _cut_back(apron: dict[str, Any], measure: Measure, angle: float, misfits: Misfits) -> None:
    """Face up with its top edge against the fence, both ends run inwards below the stool by the asked angle."""
    piece, width = SolidPiece.cut(apron, measure), float(unrounded(apron["width"]))
    run = width * math.tan(math.radians(angle))
    misfits.near("the apron's left end, cut back", piece.left.inner, complex(run, -width))
    misfits.near(
        "the apron's right end, cut back", piece.right.inner, piece.right.outer + complex(-run, -width)
    )
    told = apron["short_point"]
    own = abs(float(measure(told)) - float(unrounded(told)))
    misfits.near(
        "the apron's lower edge", abs(piece.right.inner - piece.left.inner), float(measure(told)), own
    )
    for end in apron["ends"]:
        misfits.says(f"the apron's {end['at']} end", end["long_edge"], "top")


def _from_above(piece: dict[str, Any], measure: Measure) -> Polygon:
    """A piece upright on its edge, face towards the carpenter: face along y = -thickness, back along y = 0."""
    overall, thick = float(measure(piece["overall"])), float(unrounded(piece["thickness"]))
    at_left, at_right = piece["ends"]
    left, right = _lean(at_left, thick), _lean(at_right, thick)
    # On the saw the face is up and the blade's top meets it: where the top leans left, the face is further left.
    face_left, face_right = max(0.0, -left), overall - max(0.0, right)
    return Polygon(
        [(face_left, -thick), (face_right, -thick), (face_right + right, 0), (face_left + left, 0)]
    ).buffer(0)


def _lean(end: dict[str, Any], thick: float) -> float:
    """How far right the cut runs from the face to the back."""
    run = thick * math.tan(math.radians(end["bevel_degrees"]))
    return run if end["bevel_direction"] == "left" else -run
