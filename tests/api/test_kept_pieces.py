"""Pieces are encoded once and kept, so many and no more; what is irrational is not, since it does not come again."""

from msgspec.structs import replace

from geometry.builders import F, opening
from longpoint.api.answers.kept import with_kept
from longpoint.geometry import Piece, PlumbSides, build_opening
from longpoint.geometry.value import KEPT
from longpoint.lengths import LengthWriter, Rounding
from longpoint.shop.answer import OpeningAnswer, opening_answer
from longpoint.shop.build import BuiltOpening
from longpoint.values import encoder


def window(width: F) -> OpeningAnswer:
    return opening_answer(BuiltOpening("", 1, build_opening(opening(PlumbSides(width, F(48), F(48))))))


def test_what_is_kept_is_what_would_be_encoded_and_never_more_than_its_number() -> None:
    write = LengthWriter(Rounding())
    plain = encoder(write)
    most = 0
    for number in range(KEPT // 2):
        answer = window(F(20) + F(number, 16))
        for piece in answer.pieces:
            (kept,) = with_kept(replace(answer, pieces=(piece,)), write).pieces
            assert plain.encode(kept) == plain.encode(piece)
            most = max(most, len(write.written))
    assert most == KEPT


def test_a_piece_that_comes_again_is_encoded_once() -> None:
    write = LengthWriter(Rounding())
    answer = window(F(30))
    first, again = with_kept(answer, write), with_kept(answer, write)
    assert all(one is other for one, other in zip(first.pieces, again.pieces, strict=True))


def test_what_is_irrational_is_not_kept() -> None:
    write = LengthWriter(Rounding())
    leaning = opening_answer(BuiltOpening("", 1, build_opening(opening(PlumbSides(F(30), F(48), F(47))))))
    kept = with_kept(leaning, write)
    own = [piece for piece in leaning.pieces if isinstance(piece.overall, float)]
    assert own
    assert [piece for piece in kept.pieces if isinstance(piece, Piece)] == own
    assert len(write.written) == len(leaning.pieces) - len(own)
