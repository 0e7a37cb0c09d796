"""One piece cut from the lengths and angles of its JSON, lying on the saw and then on the wall."""

import math
from collections.abc import Callable
from dataclasses import dataclass, replace
from typing import Any

from shapely import Polygon

from dryfit.tape import unrounded

Measure = Callable[[dict[str, Any]], Any]


@dataclass(frozen=True)
class Face:
    """A cut end: where it meets the outer and the inner edge, and where the cut that trims its tip off meets it."""

    outer: complex
    inner: complex
    trimmed: complex | None = None

    def inside(self, part: float) -> complex:
        """A point that part of the way from the inner to the outer edge."""
        return self.inner + (self.outer - self.inner) * part

    @property
    def outwards(self) -> complex:
        """Direction along the cut from the inner to the outer edge."""
        return (self.outer - self.inner) / abs(self.outer - self.inner)


@dataclass(frozen=True)
class SolidPiece:
    """A piece of casing face up; on the saw its outer edge lies along y = 0 against the fence, the operator below. Its
    ends are cut at the width `sawn`; it is `width` wide once it is ripped.

    Moving it turns and shifts it, never mirrors it: both at the saw and on the wall its face is seen.
    """

    answered: dict[str, Any]
    left: Face
    right: Face
    sawn: float
    width: float
    turn: complex = 1 + 0j
    shift: complex = 0j

    @classmethod
    def cut(cls, piece: dict[str, Any], measure: Measure) -> "SolidPiece":
        """Cut the piece to its overall length at the table's turns, before it is ripped where that comes last."""
        finished = float(unrounded(piece["width"]))
        width = finished if piece["mitered_width"] is None else float(unrounded(piece["mitered_width"]))
        overall = float(measure(piece["overall"]))
        at_left, at_right = piece["ends"]
        # With the front of the table turned to the right, the cut moves right as it comes towards the operator.
        left, right = _run(at_left, width), _run(at_right, width)
        left_outer, right_outer = max(0.0, -left), overall - max(0.0, right)
        return cls(
            piece,
            Face(complex(left_outer), complex(left_outer + left, -width)),
            Face(complex(right_outer), complex(right_outer + right, -width)),
            width,
            finished,
        )

    def finished(self) -> "SolidPiece":
        """Ripped on its outer edge, then its tips trimmed, by the figures of its ends."""
        at_left, at_right = self.answered["ends"]
        return replace(
            self, left=self._finished(self.left, at_left, 1), right=self._finished(self.right, at_right, -1)
        )

    def _finished(self, face: Face, end: dict[str, Any], inward: int) -> Face:
        outer = face.inside(self.width / self.sawn)
        if end["tip"] is None:
            return Face(outer, face.inner)
        along, across = (float(unrounded(end["tip"][name])) for name in ("along", "across"))
        return Face(
            outer + inward * along * self.turn, face.inner, face.inside((self.width - across) / self.sawn)
        )

    @property
    def name(self) -> str:
        return str(self.answered["key"])

    @property
    def polygon(self) -> Polygon:
        corners = (
            self.left.outer,
            self.left.trimmed,
            self.left.inner,
            self.right.inner,
            self.right.trimmed,
            self.right.outer,
        )
        return Polygon([(z.real, z.imag) for z in corners if z is not None])

    def on_face(self, along: float) -> complex:
        """A point of the outer edge's line, that far from the left-most point on the saw."""
        return self.turn * along + self.shift

    def moved(self, turn: complex, shift: complex) -> "SolidPiece":
        def face(old: Face) -> Face:
            trimmed = None if old.trimmed is None else old.trimmed * turn + shift
            return Face(old.outer * turn + shift, old.inner * turn + shift, trimmed)

        return replace(
            self,
            left=face(self.left),
            right=face(self.right),
            turn=self.turn * turn,
            shift=self.shift * turn + shift,
        )

    def laid(self, point: complex, turn: complex, to: complex) -> "SolidPiece":
        """Turned, then shifted so that one of its points comes to a place."""
        return self.moved(turn, to - point * turn)


def _run(end: dict[str, Any], width: float) -> float:
    """How far right the cut runs from the fence to the front edge."""
    run = width * math.tan(math.radians(end["miter_degrees"]))
    return run if end["miter_direction"] == "right" else -run
