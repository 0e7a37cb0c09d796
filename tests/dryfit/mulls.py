"""Mull casing between lights: stood on the base, reaching the head casing, showing as much of each jamb."""

from typing import Any

from dryfit.casing import Job
from dryfit.misfits import Misfits
from dryfit.piece import Measure, Piece
from dryfit.tape import inches, unrounded


def fit_mulls(
    request: dict[str, Any],
    job: Job,
    placed: dict[str, Piece],
    parts: list[dict[str, Any]],
    measure: Measure,
    misfits: Misfits,
) -> None:
    """Stand each piece where its lights were read, and see that it closes under the head."""
    unit, readings = request.get("unit"), request["readings"]
    pieces = [part for part in parts if part["kind"] == "mull_casing"]
    misfits.says("the mull casing's pieces", len(pieces), len(readings["mull_widths"]))
    at = 0.0
    places: list[tuple[float, float]] = []
    for light, mull in zip(readings["lights"], readings["mull_widths"], strict=False):
        at += float(inches(light, unit))
        places.append((at, at + float(inches(mull, unit))))
        at = places[-1][1]
    base = job.base if job.foot != "picture_frame" else -job.reveals["sill"]
    for part, (left, right) in zip(pieces, places, strict=False):
        piece = Piece.cut(part, measure)
        width = float(unrounded(part["width"]))
        showing = (right - left - width) / 2
        misfits.says(f"{piece.name} covers no glass", showing >= -misfits.slack, True)
        # Its right edge lay against the fence and its head on the saw's left, so its foot is on the right.
        piece = piece.laid(piece.right.outer, -1j, complex(right - showing, base))
        misfits.near(f"{piece.name}'s foot", piece.right.inner, complex(left + showing, base))
        head = job.inner("head")
        misfits.near(f"{piece.name} under the head, right edge", head.off(piece.left.outer), 0)
        misfits.near(f"{piece.name} under the head, left edge", head.off(piece.left.inner), 0)
        for other in placed.values():
            misfits.apart(f"{piece.name} and {other.name}", piece.polygon, other.polygon)
    _check_cutouts(places, parts, misfits)


def _check_cutouts(places: list[tuple[float, float]], parts: list[dict[str, Any]], misfits: Misfits) -> None:
    """The stool is sawn out from jamb face to jamb face of every mull, as deep as its notches."""
    for stool in (part for part in parts if part["kind"] == "stool"):
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
