"""Each operation in Python's terms: its arguments, the ways of calling it, and what it answers."""

from __future__ import annotations

import json
import re
from collections.abc import Callable
from dataclasses import dataclass

from generator.document import Document, Operation, Parameter, Schema, module_name
from generator.prose import one_line
from generator.types import annotation

NOTE = "Generated; do not edit."

_CONDITIONS = {
    "if-match": ("Versioned[Any] | str", ""),
    "if-none-match": (
        "Versioned[{result}] | None = None",
        "What was read before: it comes back itself while it still stands, and is not sent again.",
    ),
    "idempotency-key": (
        "str | None = None",
        "Names this request, so that sent again it is done once; one is made when left out.",
    ),
}
"""Header fields that the SDK knows: how each is passed, and why."""
_MADE_FROM = {"cut_sticks": "compute_schedule_cut_list"}
"""Where a change is made from something else than a read of what it changes."""


@dataclass(frozen=True)
class Argument:
    """An argument of a function or a method: its name, how it is declared, and what it is."""

    name: str
    declared: str
    says: str


@dataclass(frozen=True)
class Written:
    """All that a function and its methods are written from.

    Attributes:
        operation: The operation.
        positional: Arguments by position.
        named: Arguments by name.
        result: The type its JSON answer is decoded as; empty when it has none, "None" when it has no body at all.
    """

    operation: Operation
    positional: tuple[Argument, ...]
    named: tuple[Argument, ...]
    result: str

    @property
    def versioned(self) -> bool:
        """Whether the answer comes with its version."""
        return self.operation.versioned and not self.operation.page_of

    def answer(self, result: str) -> str:
        """A result as the call answers it."""
        return f"Versioned[{result}]" if self.versioned else result

    @property
    def signatures(self) -> list[tuple[str, str]]:
        """Its arguments and its answer, once for each way of calling it."""
        formats = ", ".join(f'"{kind}"' for kind in self.operation.formats)
        in_format = f"accept: Literal[{formats}]"
        if not self.result and len(self.operation.formats) == 1:
            return [(self._declared(f"{in_format} = {formats}"), self.answer("bytes"))]
        ways = [(self._declared(), self.answer(self.result))] if self.result else []
        if formats:
            ways.append((self._declared(in_format), self.answer("bytes")))
            ways.append((self._declared("accept: str"), "Any"))
        return ways

    @property
    def general(self) -> tuple[str, str]:
        """Arguments and answer that cover every way of calling it."""
        if len(self.signatures) == 1:
            return self.signatures[0]
        return self._declared('accept: str = "application/json"'), "Any"

    def _declared(self, *more: str) -> str:
        named = [*(one.declared for one in self.named), *more]
        named.sort(key=lambda one: " = " in one)
        return ", ".join([*(one.declared for one in self.positional), *(["*", *named] if named else [])])

    @property
    def passed(self) -> str:
        """The arguments as a method passes them on."""
        names = [one.name for one in self.named] + (["accept"] if self.operation.formats else [])
        return ", ".join([*(one.name for one in self.positional), *(f"{name}={name}" for name in names)])


def written(document: Document, operation: Operation) -> Written:
    """Everything about an operation in Python's terms."""
    result = "" if operation.formats else "None"
    if operation.result is not None:
        result = qualified(document, annotation(document, operation.result, open=True))
    in_path = {one.name: one for one in operation.takes("path")}
    positional = [
        _argument(document, operation, in_path[name], result)
        for name in re.findall(r"\{([^}]+)\}", operation.path)
    ]
    if taken := _taken(document, operation):
        struct = qualified(document, annotation(document, operation.body or {}, open=False))
        says = f"A `{struct}`, or a mapping of its shape."
        if operation.raw_bodies:
            says = (
                f"A `{struct}`, a mapping of its shape, or the text of a file, as {operation.raw_bodies[0]}."
            )
        positional.append(Argument("request", f"request: {taken}", says))
    named = [
        _argument(document, operation, one, result or "bytes")
        for one in operation.takes("query") + operation.takes("header")
        if not (operation.page_of and one.name.lower() in ("if-none-match", "cursor"))
        # A link's way to say what a caller says with `accept`, which decides how an answer is read.
        and not (operation.formats and one.name == "format")
    ]
    return Written(operation, tuple(positional), tuple(named), result)


def _taken(document: Document, operation: Operation) -> str:
    kinds = []
    if operation.body is not None:
        kinds += [qualified(document, annotation(document, operation.body, open=False)), "Mapping[str, Any]"]
    if operation.raw_bodies:
        kinds += ["str", "bytes"]
    return " | ".join(kinds)


def _argument(document: Document, operation: Operation, parameter: Parameter, result: str) -> Argument:
    name = parameter.python_name
    if name_known := _CONDITIONS.get(parameter.name.lower()):
        type_, says = name_known[0].format(result=result), name_known[1]
        optional = "" if parameter.required or "= None" in type_ else " | None = None"
        if name == "if_match":
            says = _what_to_match(document, operation, required=parameter.required)
        return Argument(name, f"{name}: {type_}{optional}", says)
    type_ = _options(parameter.schema) or qualified(
        document, annotation(document, parameter.schema, open=False)
    )
    type_ = type_.removesuffix(" | None")
    return Argument(
        name,
        f"{name}: {type_}" + ("" if parameter.required else " | None = None"),
        _says(operation, parameter),
    )


def _what_to_match(document: Document, operation: Operation, *, required: bool) -> str:
    """What an `if_match` is taken from."""
    read = read_before(document, operation)
    source = _MADE_FROM.get(operation.id) or (read.id if read else "")
    says = (
        f"The `Versioned` of `{source}` that this is made from, or its `etag`: a newer one is left as it is."
    )
    return says if required else f"{says} Left out, whatever stands is changed."


def read_before(document: Document, operation: Operation) -> Operation | None:
    """The operation that reads what this one would change: a GET of its path, or of one above it."""
    path = operation.path
    while path:
        for other in document.operations:
            if other.path == path and other.method == "GET" and other.versioned and not other.page_of:
                return other
        path = path.rpartition("/")[0]
    return None


def _says(operation: Operation, parameter: Parameter) -> str:
    """What a parameter is, and what it is when left out."""
    schema, says = parameter.schema, one_line(parameter.description)
    default = schema.get("default")
    if operation.page_of and parameter.name == "limit":
        most = int(schema["maximum"])
        return f"How many to fetch at a time, at most {most}; {default} when left out. The list goes on to its end."
    if parameter.required or not default or "left out" in says:
        return says
    return f"{says.removesuffix('.')}; {default} when left out."


def _options(schema: Schema) -> str:
    """The options of a parameter that has some of its own."""
    for inner in (schema, *schema.get("oneOf", []), *schema.get("anyOf", [])):
        if "enum" in inner:
            return f"Literal[{', '.join(json.dumps(option) for option in inner['enum'])}]"
    return ""


def qualified(document: Document, type_: str) -> str:
    """A type as it is written outside `types`."""
    return re.sub(
        r"\b[A-Z]\w+\b",
        lambda found: f"types.{found[0]}" if found[0] in document.homes or found[0] == "Page" else found[0],
        type_,
    )


def overloads(said: Written, start: str, given: Callable[[str], str], indent: str = "") -> str:
    """A signature for each way of calling it, where there is more than one."""
    if len(said.signatures) == 1:
        return ""
    own = "self, " if indent else ""
    return "".join(
        f"{indent}@overload\n{indent}{start} {said.operation.id}({own}{declared}) -> {given(answer)}: ...\n\n"
        for declared, answer in said.signatures
    )


def homes(document: Document) -> list[str]:
    """The modules that operations are written to, one for each part of the document."""
    return sorted({module_name(operation.tag) for operation in document.operations})


def sentence(summary: str) -> str:
    """A summary as a sentence."""
    return summary if summary.endswith(("?", "!")) else f"{summary}."
