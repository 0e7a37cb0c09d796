"""Where the service says something: every use of `say`, and what stands where a sentence belongs."""

import ast
from collections.abc import Iterator
from pathlib import Path
from typing import NamedTuple

SERVICE = Path(__file__).parents[2] / "service" / "longpoint"

SAID: dict[str, dict[int, str]] = {
    "add": {2: "detail"},
    "at": {2: "detail"},
    "Fault": {1: "detail"},
    "StockFault": {2: "detail"},
    "Finding": {2: "detail"},
    "Offer": {1: "detail"},
    "Caution": {1: "text"},
    "Unreadable": {1: "detail"},
    "LengthError": {1: "detail"},
}
"""The calls that take a sentence, by the place or the name of the argument that it is."""


class Use(NamedTuple):
    """A call of `say`: where it stands, what it names, and the names of its values."""

    where: str
    kind: str | None
    key: str | None
    values: frozenset[str]


def modules() -> Iterator[tuple[str, ast.Module]]:
    """Every module of the service."""
    for path in sorted(SERVICE.rglob("*.py")):
        yield str(path.relative_to(SERVICE)), ast.parse(path.read_text(encoding="utf-8"))


def uses() -> Iterator[Use]:
    """Every call of `say`; its kind and key are None where they are no plain text."""
    for name, module in modules():
        for node in ast.walk(module):
            if isinstance(node, ast.Call) and isinstance(node.func, ast.Name) and node.func.id == "say":
                kind, key = (_text(one) for one in node.args)
                values = frozenset(one.arg or "**" for one in node.keywords)
                yield Use(f"{name}:{node.lineno}", kind, key, values)


def details(problems: frozenset[str]) -> Iterator[tuple[str, ast.expr]]:
    """Every argument that is a sentence, with where it stands; `problems` are the names of the kinds of problem."""
    for name, module in modules():
        for node in ast.walk(module):
            if not isinstance(node, ast.Call):
                continue
            called = node.func.attr if isinstance(node.func, ast.Attribute) else getattr(node.func, "id", "")
            places = {0: "detail"} if called in problems else SAID.get(called, {})
            for place, argument in places.items():
                if len(node.args) > place:
                    yield f"{name}:{node.lineno} {called}", node.args[place]
                for keyword in node.keywords:
                    if keyword.arg == argument:
                        yield f"{name}:{node.lineno} {called}", keyword.value


def _text(node: ast.expr) -> str | None:
    return node.value if isinstance(node, ast.Constant) and isinstance(node.value, str) else None
