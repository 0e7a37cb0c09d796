"""Whether every text of an answer is its length rounded as asked, and its residual what that added."""

from collections.abc import Iterator
from typing import Any

from dryfit.misfits import Misfits
from dryfit.tape import as_cut, inches, rounding_error

PRINTED = 1e-6
"""Residuals of real lengths come with six decimals."""


def check_roundings(request: dict[str, Any], answer: dict[str, Any], misfits: Misfits) -> None:
    """Every text lies on a mark, within half a step (nearest) or on the asked side within a whole one."""
    asked = request.get("rounding", {})
    step, mode = inches(asked.get("to", "1/16 in")), asked.get("mode", "nearest")
    least, most = {"nearest": (-step / 2, step / 2), "up": (0, step), "down": (-step, 0)}[mode]
    chained = _chained(answer)
    for where, length in _lengths(answer["pieces"], "pieces"):
        error = rounding_error(length)
        # What is rounded together may go to the farther of its two marks: `dryfit.chain` says whether it closes.
        apart = float(step) / 2 if where in chained else 0.0
        if as_cut(length) % step:
            misfits.found.append(f"{where}: {length['text']} is on no mark of {float(step)} in")
        if not float(least) - apart - PRINTED <= error <= float(most) + apart + PRINTED:
            misfits.found.append(f"{where}: {length['text']} misses its length by {error:.6f} in")
        if abs(float(inches(length["residual"])) - error) > PRINTED:
            misfits.found.append(f"{where}: told a residual of {length['residual']}, it is {error:.6f} in")


def _chained(answer: dict[str, Any]) -> set[str]:
    """Where the lengths of pieces stand that are rounded together."""
    keys = {
        joint[name]
        for closing in answer["closings"]
        for joint in closing["corners"]
        for name in ("before", "after")
    }
    return {
        f"pieces/{number}/{name}"
        for number, piece in enumerate(answer["pieces"])
        if piece["key"] in keys
        for name in ("long_point", "overall")
    }


def _lengths(value: Any, where: str) -> Iterator[tuple[str, dict[str, Any]]]:
    if isinstance(value, list):
        for index, each in enumerate(value):
            yield from _lengths(each, f"{where}/{index}")
    elif isinstance(value, dict) and "residual" in value:
        yield where, value
    elif isinstance(value, dict):
        for name, each in value.items():
            yield from _lengths(each, f"{where}/{name}")
