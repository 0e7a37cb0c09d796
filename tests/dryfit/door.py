"""A door's jamb: its legs and head put together round the door, the stops within, the casing outside."""

from typing import Any

from shapely import box
from shapely.ops import unary_union

from dryfit.misfits import Misfits
from dryfit.piece import Measure
from dryfit.tape import inches, unrounded

USUAL = {
    "hinge_gap": "1/8 in",
    "strike_gap": "1/8 in",
    "head_gap": "1/8 in",
    "floor_gap": "1/2 in",
    "jamb_thickness": "3/4 in",
    "housing": "0 in",
}
HINGED = {
    "hinge_length": "3 1/2 in",
    "top_hinge": "7 in",
    "bottom_hinge": "11 in",
    "strike_height": "36 in",
    "jamb_depth": "4 5/8 in",
}


def clear_size(door: dict[str, Any], unit: str | None) -> tuple[float, float]:
    """Jamb to jamb, and floor to head jamb."""
    told = {name: float(inches(door.get(name, usual), unit)) for name, usual in USUAL.items()}
    width = float(inches(door["width"], unit)) + told["hinge_gap"] + told["strike_gap"]
    return width, float(inches(door["height"], unit)) + told["head_gap"] + told["floor_gap"]


def fit_door(request: dict[str, Any], answer: dict[str, Any], measure: Measure, misfits: Misfits) -> None:
    """Stand the legs apart by the head jamb, let it in by its housing, and see what is left for the door."""
    unit, door = request.get("unit"), request["readings"]["door"]
    width, height = clear_size(door, unit)
    thick = float(inches(door.get("jamb_thickness", USUAL["jamb_thickness"]), unit))
    housing = float(inches(door.get("housing", USUAL["housing"]), unit))
    size = {piece["key"]: float(measure(piece["overall"])) for piece in answer["pieces"]}
    left = box(-thick, 0, 0, size["jamb_leg/hinge"])
    right = box(width, 0, width + thick, size["jamb_leg/strike"])
    head = box(-housing, height, size["head_jamb"] - housing, height + thick)
    jamb = unary_union([left, right, head])
    misfits.near("the head jamb's length", head.bounds[2], width + housing)
    misfits.near("the hinge leg's top", left.bounds[3], head.bounds[3])
    misfits.near("the strike leg's top", right.bounds[3], head.bounds[3])
    misfits.apart("the jamb and its clear opening", jamb, box(0, 0, width, height))
    misfits.near(
        "the jamb's outside, less what it holds", jamb.convex_hull.area - jamb.area, width * height, width
    )
    _check_marks(door, answer, unit, measure, misfits)
    stop = request["trim"].get("stop")
    if stop:
        _fit_stops(answer, width, height, float(inches(stop["thickness"], unit)), measure, misfits)


def _check_marks(
    door: dict[str, Any], answer: dict[str, Any], unit: str | None, measure: Measure, misfits: Misfits
) -> None:
    """Hung on its gaps, the door's hinges lie at the marks on the hinge leg, and its strike at the other's."""
    pieces = {piece["key"]: piece for piece in answer["pieces"]}
    size = {
        name: float(inches(door.get(name, usual), unit)) for name, usual in (*USUAL.items(), *HINGED.items())
    }
    bottom = size["floor_gap"]
    top = bottom + float(inches(door["height"], unit))
    count = door.get("hinges", 3)
    first = top - size["top_hinge"]
    last = bottom + size["bottom_hinge"] + size["hinge_length"]
    wanted = {f"top of hinge {n + 1}": first - n * (first - last) / (count - 1) for n in range(count)}
    wanted["middle of strike"] = size["strike_height"]
    wanted["underside of head jamb"] = top + size["head_gap"]
    for key, marks in (("jamb_leg/hinge", count + 1), ("jamb_leg/strike", 2)):
        misfits.says(f"{key}'s marks", len(pieces[key]["marks"]), marks)
        for mark in pieces[key]["marks"]:
            own = abs(float(measure(mark["at"])) - float(unrounded(mark["at"])))
            misfits.near(f"{key}'s {mark['name']}", float(measure(mark["at"])), wanted[mark["name"]], own)
    for key in ("jamb_leg/hinge", "jamb_leg/strike", "head_jamb"):
        misfits.near(f"{key}'s width", float(unrounded(pieces[key]["width"])), size["jamb_depth"])
    hinged = door.get("hinge_side", "left")
    misfits.says("the hinge leg's side", hinged in pieces["jamb_leg/hinge"]["notes"][0], True)


def _fit_stops(
    answer: dict[str, Any], width: float, height: float, thick: float, measure: Measure, misfits: Misfits
) -> None:
    """Their backs line the jamb; their faces leave the door's rebate."""
    stops = {piece["side"]: piece for piece in answer["pieces"] if piece["kind"] == "door_stop"}
    misfits.says("the stops", sorted(stops), ["head", "left", "right"])
    head, mitered = stops["head"], stops["head"]["ends"][0]["cut"] == "bevel"
    misfits.near("the head stop", float(measure(head["overall"])), width)
    for side in ("left", "right"):
        top = float(measure(stops[side]["overall"]))
        misfits.near(f"the {side} stop's top", top, height if mitered else height - thick)
        end = stops[side]["ends"][1]
        misfits.says(
            f"the {side} stop's head",
            (end["cut"], end["long_edge"]),
            ("bevel", "back") if mitered else ("square", None),
        )
