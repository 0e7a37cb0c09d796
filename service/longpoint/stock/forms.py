"""The ways an item can lie on a stick."""

from collections.abc import Iterator
from math import prod

from .problem import Form, FormPiece, PieceGroup

__all__ = ["Blocks", "piece_forms"]

MOST_STATES = 3000  # past this an opening's pieces are laid longest first, sharing only what falls so
MOST_JOINED = 200_000  # rows made a piece longer, past which the openings still to come are laid so, too

Parts = tuple[tuple[int, int], ...]
Ends = tuple[int, int, int]  # of a row: what its left and right end save, and what the cut after it eats


def piece_forms(index: int, kind: PieceGroup) -> tuple[Form, ...]:
    """A single piece: as it is and, when its ends differ, end for end."""
    plain = Form(0, kind.length, kind.left, kind.right, kind.cuts[1], (FormPiece(index),))
    if kind.left == kind.right and kind.cuts[0] == kind.cuts[1]:
        return (plain,)
    other = Form(0, kind.length, kind.right, kind.left, kind.cuts[0], (FormPiece(index, reversed=True),))
    return plain, other


class Blocks:
    """All pieces of an opening side by side: for each pair of outer ends, the shortest row that shows them.

    Args:
        kinds: the problem's.
        kerf: units.
    """

    def __init__(self, kinds: tuple[PieceGroup, ...], kerf: int) -> None:
        self._kinds = kinds
        self._kerf = kerf
        self._made: dict[Parts, tuple[Form, ...]] = {}
        self._joined = 0

    def forms(self, pieces: Parts) -> tuple[Form, ...]:
        """The rows of so many pieces of these kinds."""
        if pieces not in self._made:
            self._made[pieces] = self._rows(pieces)
        return self._made[pieces]

    def _rows(self, pieces: Parts) -> tuple[Form, ...]:
        loose = {kind: piece_forms(kind, self._kinds[kind]) for kind, _ in pieces}
        counts = tuple(count for _, count in pieces)
        if all(len(forms) == 1 and not forms[0].left for forms in loose.values()):
            return (_in_order(pieces, loose, self._kerf),)
        if prod(count + 1 for count in counts) > MOST_STATES or self._joined > MOST_JOINED:
            return (_in_order(pieces, loose, self._kerf),)
        rows: dict[tuple[int, ...], dict[Ends, Form]] = {(0,) * len(counts): {}}
        for _ in range(sum(counts)):
            longer: dict[tuple[int, ...], dict[Ends, Form]] = {}
            for used, row in rows.items():
                for place, (kind, count) in enumerate(pieces):
                    if used[place] == count:
                        continue
                    more = (*used[:place], used[place] + 1, *used[place + 1 :])
                    best = longer.setdefault(more, {})
                    for form in _extended(row, loose[kind], self._kerf):
                        self._joined += 1
                        ends = form.left, form.right, form.eats
                        if ends not in best or form.length < best[ends].length:
                            best[ends] = form
            rows = longer
        whole = rows[counts]
        if len({form.eats for form in whole.values()}) > 1:  # an end less is then a cheaper cut
            return tuple(whole[key] for key in sorted(whole))
        return tuple(whole[key] for key in sorted(whole) if not _beaten(whole[key], whole))


def _extended(row: dict[Ends, Form], forms: tuple[Form, ...], kerf: int) -> Iterator[Form]:
    for form in forms:
        if not row:
            yield form
        for before in row.values():
            yield _joined(before, form, kerf)


def _joined(before: Form, form: Form, kerf: int) -> Form:
    shares = bool(form.left) and before.right == form.left
    piece = form.pieces[0]
    length = before.length + form.length + (kerf - form.left if shares else before.eats)
    pieces = *before.pieces, FormPiece(piece.kind, piece.reversed, shares)
    return Form(0, length, before.left, form.right, form.eats, pieces)


def _in_order(pieces: Parts, loose: dict[int, tuple[Form, ...]], kerf: int) -> Form:
    """The pieces as they come, the one with the dearest cut last: that cut may lie past the stick's end."""
    row: Form | None = None
    for kind, count in sorted(pieces, key=lambda one: loose[one[0]][0].eats):
        for _ in range(count):
            form = loose[kind][0]
            row = form if row is None else _joined(row, form, kerf)
    assert row is not None
    return row


def _beaten(form: Form, ends: dict[Ends, Form]) -> bool:
    """Whether another row is no longer, and shows every mitered end that this one shows."""
    return any(
        other is not form
        and other.length <= form.length
        and form.left in (0, other.left)
        and form.right in (0, other.right)
        for other in ends.values()
    )
