"""Mull casing between units: stood on the base, reaching the head casing, showing as much of each jamb."""

from typing import Any

from dryfit.casing import Frame
from dryfit.misfits import Misfits
from dryfit.piece import Measure, SolidPiece
from dryfit.tape import inches, unrounded


def fit_mulls(
    request: dict[str, Any],
    frame: Frame,
    placed: dict[str, SolidPiece],
    pieces: list[dict[str, Any]],
    measure: Measure,
    misfits: Misfits,
) -> None:
    """Stand each piece where its units were read, and see that it closes under the head."""
    unit, readings = request.get("unit"), request["readings"]
    mulls = [piece for piece in pieces if piece["kind"] == "mull_casing"]
    misfits.says("the mull casing's pieces", len(mulls), len(readings["mull_widths"]))
    at = 0.0
    places: list[tuple[float, float]] = []
    for light, mull in zip(readings["joined_widths"], readings["mull_widths"], strict=False):
        at += float(inches(light, unit))
        places.append((at, at + float(inches(mull, unit))))
        at = places[-1][1]
    base = frame.base if frame.foot != "casing" else -frame.reveals["sill"]
    for piece, (left, right) in zip(mulls, places, strict=False):
        solid = SolidPiece.cut(piece, measure)
        width = float(unrounded(piece["width"]))
        showing = (right - left - width) / 2
        misfits.says(f"{solid.name} covers no glass", showing >= -misfits.slack, True)
        # Its right edge lay against the fence and its head on the saw's left, so its foot is on the right.
        solid = solid.laid(solid.right.outer, -1j, complex(right - showing, base))
        misfits.near(f"{solid.name}'s foot", solid.right.inner, complex(left + showing, base))
        head = frame.inner("head")
        misfits.near(f"{solid.name} under the head, right edge", head.off(solid.left.outer), 0)
        misfits.near(f"{solid.name} under the head, left edge", head.off(solid.left.inner), 0)
        for other in placed.values():
            misfits.apart(f"{solid.name} and {other.name}", solid.polygon, other.polygon)
    _check_cutouts(places, pieces, misfits)


def _check_cutouts(places: list[tuple[float, float]], pieces: list[dict[str, Any]], misfits: Misfits) -> None:
    """The stool is sawn out from jamb face to jamb face of every mull, as deep as its notches."""
    for stool in (piece for piece in pieces if piece["kind"] == "stool"):
        jamb = next(mark["at"] for mark in stool["marks"] if mark["name"] == "left jamb face")
        found = [
            (float(unrounded(cutout["at"]) - unrounded(jamb)), float(unrounded(cutout["length"])))
            for cutout in stool["cutouts"]
        ]
        misfits.says("the stool's cutouts", len(found), len(places))
        for (at, length), (left, right) in zip(found, places, strict=False):
            misfits.near("a cutout's left", at, left)
            misfits.near("a cutout's right", at + length, right)
        for cutout in stool["cutouts"]:
            depth = float(unrounded(cutout["depth"]))
            misfits.near("a cutout's depth", depth, float(unrounded(stool["ends"][0]["notch"]["depth"])))
