"""Plinth blocks: what a door's legs stand on."""

from __future__ import annotations

from longpoint.geometry.inputs import Opening
from longpoint.geometry.parts import End, Hand, Part, PartKind, Step


def plinth_parts(opening: Opening) -> tuple[Part, ...]:
    """The left and right blocks of an opening whose trim has them, grain upright."""
    plinth = opening.trim.plinth
    assert plinth is not None
    return tuple(
        Part(
            kind=PartKind.PLINTH_BLOCK,
            opening=opening.mark,
            side=side,
            profile=plinth.profile,
            short_point=plinth.height,
            long_point=plinth.height,
            overall=plinth.height,
            width=plinth.width,
            thickness=plinth.thickness,
            ends=(End("foot", Hand.LEFT), End("head", Hand.RIGHT)),
            how=(Step("length", "plinth height", (("plinth height", plinth.height),)),),
        )
        for side in ("left", "right")
    )
