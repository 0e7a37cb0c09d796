"""The exact number every length is kept in.

It is the standard library's `Fraction` to a type checker and in behavior; at run time it is quicktions'
compiled twin, since an opening takes some hundred additions and the service answers thousands a second.
The two mix and compare freely.
Tell an exact length from an irrational one by `isinstance(x, float)`.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from fractions import Fraction
else:
    from fractions import Fraction as _Standard

    from quicktions import Fraction as _Compiled

    from longpoint.values.kept import Kept

    class _AnyCompiled(type):
        def __instancecheck__(cls, thing):
            return isinstance(thing, _Compiled)

    class Fraction(_Compiled, metaclass=_AnyCompiled):
        """Makes the compiled kind; text is read by the standard library.

        quicktions 1.24 reads a text of one character by writing into the interpreter's own one-byte `bytes`: from
        then on every lone NUL byte of the process is that character.
        """

        __slots__ = ()

        def __new__(cls, numerator=0, denominator=None):
            if isinstance(numerator, str):
                numerator = _Standard(numerator)
            return _Compiled(numerator, denominator)

        @classmethod
        def read(cls, given, unit):  # noqa: ARG003
            """As it is kept: a whole number or a fraction, of an inch."""
            return _READ[given]

        @classmethod
        def schema(cls):
            return dict(MARKED)

    _READ = Kept(8192, Fraction)


MARKED = {"$ref": "#/components/schemas/MarkedLength"}
"""How a computed length is described: it goes out as `lengths.written.MarkedLength`."""

if TYPE_CHECKING:
    Real = Fraction | float
else:

    class Real:
        """A length in inches: a Fraction where it is exact, a float where it is irrational.

        A union to a type checker; as the type of a field it is one type, which says how it stands on the wire.
        """

        @classmethod
        def schema(cls):
            return dict(MARKED)


class Irrational(float):
    """An irrational length in inches that is to be answered: a plain float would go out as a number."""

    __slots__ = ()


class Together(Irrational):
    """An irrational length that was rounded together with others, so that they close: it goes to its own mark, which
    may be the farther of the two that are next to it.

    Lengths on different marks are not equal, so that pieces that are cut differently are not taken for alike.

    Attributes:
        mark: where it was rounded to, inches.
        step: of the rounding it was done for, inches; under another it is rounded by itself.
    """

    __slots__ = ("mark", "step")
    mark: Fraction
    step: Fraction

    def __new__(cls, value: float, mark: Fraction, step: Fraction) -> Together:
        self = float.__new__(cls, value)
        self.mark, self.step = mark, step
        return self

    def __eq__(self, other: object) -> bool:
        return float.__eq__(self, other) is True and (
            not isinstance(other, Together) or self.mark == other.mark
        )

    __hash__ = float.__hash__

    def __reduce__(self) -> tuple[object, ...]:
        return Together, (float(self), self.mark, self.step)


__all__ = ["MARKED", "Fraction", "Irrational", "Real", "Together"]
