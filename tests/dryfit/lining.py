"""A jamb extension's boards, seen from the room: a box on the jamb's edge, closed at every corner."""

from dataclasses import replace
from typing import Any

from dryfit.casing import Frame, fit_casing
from dryfit.misfits import Misfits
from dryfit.piece import Measure
from dryfit.tape import inches, unrounded


def fit_lining(
    request: dict[str, Any], frame: Frame, pieces: list[dict[str, Any]], measure: Measure, misfits: Misfits
) -> None:
    """Put the box together and hold each board's widths against the wall.

    Args:
        request: what was asked.
        frame: as for the casing.
        pieces: of the answer.
        measure, misfits: as everywhere.
    """
    unit, extension = request.get("unit"), request["trim"]["extension"]
    reveal = float(inches(extension.get("reveal", "0 in"), unit))
    boards = [piece for piece in pieces if piece["kind"] == "jamb_extension"]
    around = replace(
        frame,
        reveals=dict.fromkeys(frame.outline.names, reveal),
        butted=extension.get("corners", "butted") == "butted",
        overhang=0.0,
        fillet=0.0,
        blocks={},
    )
    fit_casing(around, [_on_edge(board) for board in boards], measure, misfits, ("jamb_extension",))
    for board in boards:
        _check_widths(request, frame, board, misfits)


def _on_edge(board: dict[str, Any]) -> dict[str, Any]:
    """The board as its end grain shows from the room, turned as casing lies: its back against the fence.

    Inner face up with the jamb's edge against the fence, the side's start lies on the saw's left; casing of the same
    side has its finish there.
    """
    ends = []
    for end, hand in zip(reversed(board["ends"]), ("left", "right"), strict=True):
        assert (end["cut"], end["miter_degrees"]) in (("square", 0.0), ("bevel", 0.0))
        back = end["long_edge"] == "back"
        # The top of the blade leans in over the piece where its back, underneath, is the longer.
        leans_in = end["bevel_direction"] is not None and end["bevel_direction"] != end["on_saw"]
        assert end["cut"] == "square" or back == leans_in
        inward = "right" if hand == "left" else "left"
        miter_direction = None if end["cut"] == "square" else inward if back else hand
        long_edge = None if miter_direction is None else "outer" if back else "inner"
        ends.append(
            end
            | {
                "on_saw": hand,
                "miter_direction": miter_direction,
                "miter_degrees": end["bevel_degrees"],
                "long_edge": long_edge,
            }
        )
    return board | {"width": board["thickness"], "ends": ends}


def _check_widths(request: dict[str, Any], frame: Frame, board: dict[str, Any], misfits: Misfits) -> None:
    unit = request.get("unit")
    proud = [float(inches(corner["proud"], unit)) for corner in request["readings"]["wall"]]
    index = frame.outline.names.index(board["side"])
    wanted = proud[index - 1], proud[index]
    taper = board["taper"] or {"left": board["rip_width"], "right": board["rip_width"]}
    for end, width in zip(("left", "right"), wanted, strict=True):
        misfits.near(f"{board['key']}'s width at its {end}", float(unrounded(taper[end])), width)
    misfits.near(f"{board['key']}'s rip width", float(unrounded(board["rip_width"])), max(wanted))
