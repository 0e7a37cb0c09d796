"""What is said of a parameter of an address that is wrong."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from enum import Enum
from typing import Any, get_args

from longpoint.texts import Sentence, say
from longpoint.values.fault import Fault, nearest

_NO_CHOICE = re.compile(r"Invalid enum value '(.*)'", re.DOTALL)
_LONGEST = 60


def wrong_parameter(known: Mapping[str, tuple[str, list[Any]]], name: str, why: Sentence | str) -> Fault:
    """A fault of a parameter, by its name in the address; of a choice with all that can be chosen.

    Args:
        known: By the name the service has for it, its name in the address and the types of its values.
        name: The one that is wrong, by either.
        why: What is wrong with it, as the framework says it.
    """
    written, kinds = known.get(name, (name, []))
    choices = [choice for kind in kinds for choice in _choices(kind)]
    found = _NO_CHOICE.search(why) if isinstance(why, str) else None
    if found and choices:
        quoted = tuple(f'"{choice}"' for choice in choices)
        said = say(
            "problem", "parameter.no-choice", name=written, choices=quoted, given=found[1][:_LONGEST]
        ) + nearest(found[1], choices)
    else:
        said = say("problem", "parameter.wrong", name=written, why=why)
    return Fault(code="wrong-parameter", detail=said, parameter=written)


def _choices(kind: Any) -> Iterator[str]:
    """What can be chosen of a type, or of what a list of it holds."""
    if isinstance(kind, type) and issubclass(kind, Enum):
        yield from (str(one.value) for one in kind)
    for inner in get_args(kind):
        yield from (inner,) if isinstance(inner, str) else _choices(inner)
