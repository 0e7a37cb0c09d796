"""A door's jamb: its legs and head put together round the door, the stops within, the casing outside."""

from typing import Any

from shapely import box
from shapely.ops import unary_union

from dryfit.misfits import Misfits
from dryfit.piece import Measure
from dryfit.tape import inches

USUAL = {
    "hinge_gap": "1/8 in",
    "strike_gap": "1/8 in",
    "head_gap": "1/8 in",
    "floor_gap": "1/2 in",
    "jamb_thickness": "3/4 in",
    "housing": "0 in",
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
    size = {part["key"]: float(measure(part["overall"])) for part in answer["parts"]}
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
    stop = request["trim"].get("stop")
    if stop:
        _fit_stops(answer, width, height, float(inches(stop["thickness"], unit)), measure, misfits)


def _fit_stops(
    answer: dict[str, Any], width: float, height: float, thick: float, measure: Measure, misfits: Misfits
) -> None:
    """Their backs line the jamb; their faces leave the door's rebate."""
    stops = {part["side"]: part for part in answer["parts"] if part["kind"] == "door_stop"}
    misfits.says("the stops", sorted(stops), ["head", "left", "right"])
    head, mitred = stops["head"], stops["head"]["ends"][0]["cut"] == "bevel"
    misfits.near("the head stop", float(measure(head["overall"])), width)
    for side in ("left", "right"):
        top = float(measure(stops[side]["overall"]))
        misfits.near(f"the {side} stop's top", top, height if mitred else height - thick)
        end = stops[side]["ends"][1]
        misfits.says(
            f"the {side} stop's head",
            (end["cut"], end["long_edge"]),
            ("bevel", "back") if mitred else ("square", None),
        )
