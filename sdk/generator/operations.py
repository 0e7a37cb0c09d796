"""Writes a function that makes the call of each operation, and a method of both clients that sends it."""

from __future__ import annotations

import re
from dataclasses import dataclass

from generator.document import Document, Operation, Parameter, module_name
from generator.prose import docstring, one_line
from generator.types import annotation

_NOTE = "Generated; do not edit."
_CONDITIONS = {
    "if-match": ("Versioned[Any] | str", "What was read, to change that and nothing newer."),
    "if-none-match": (
        "Versioned[{result}] | None = None",
        "What was read before; given back when it still stands.",
    ),
    "idempotency-key": (
        "str | None = None",
        "Names this request, so that sent again it is done once; made when not given.",
    ),
}
"""Header fields that the SDK knows: how each is passed, and why."""


@dataclass(frozen=True)
class Argument:
    """An argument of a function or a method: its name, how it is declared, and what it is."""

    name: str
    declared: str
    says: str


@dataclass(frozen=True)
class Written:
    """All that a function and its methods are written from."""

    operation: Operation
    positional: tuple[Argument, ...]
    named: tuple[Argument, ...]
    result: str
    """What is decoded."""

    @property
    def answer(self) -> str:
        """What the call answers."""
        return f"Versioned[{self.result}]" if self.versioned else self.result

    @property
    def versioned(self) -> bool:
        """Whether the answer comes with its version."""
        return self.operation.versioned and not self.operation.page_of

    @property
    def declared(self) -> str:
        """The arguments as they are declared."""
        named = ["*", *(one.declared for one in self.named)] if self.named else []
        return ", ".join([*(one.declared for one in self.positional), *named])

    @property
    def passed(self) -> str:
        """The arguments as a method passes them on."""
        return ", ".join(
            [*(one.name for one in self.positional), *(f"{one.name}={one.name}" for one in self.named)]
        )


def written(document: Document, operation: Operation) -> Written:
    """Everything about an operation in Python's terms."""
    result = "None"
    if operation.result is not None:
        result = _qualified(document, annotation(document, operation.result, open=True))
    in_path = {one.name: one for one in operation.takes("path")}
    positional = [
        _argument(document, in_path[name], result) for name in re.findall(r"\{([^}]+)\}", operation.path)
    ]
    if operation.body is not None:
        body = _qualified(document, annotation(document, operation.body, open=False))
        positional.append(Argument("request", f"request: {body} | Mapping[str, Any]", ""))
    named = [
        _argument(document, one, result)
        for one in operation.takes("query") + operation.takes("header")
        if not (operation.page_of and one.name.lower() in ("if-none-match", "cursor"))
    ]
    named.sort(key=lambda one: one.declared.endswith("= None"))
    return Written(operation, tuple(positional), tuple(named), result)


def _argument(document: Document, parameter: Parameter, result: str) -> Argument:
    name = parameter.python_name
    if name_known := _CONDITIONS.get(parameter.name.lower()):
        type_, says = name_known[0].format(result=result), name_known[1]
        optional = "" if parameter.required or "= None" in type_ else " | None = None"
        return Argument(name, f"{name}: {type_}{optional}", says)
    type_ = _qualified(document, annotation(document, parameter.schema, open=False)).removesuffix(" | None")
    return Argument(
        name,
        f"{name}: {type_}" + ("" if parameter.required else " | None = None"),
        one_line(parameter.description),
    )


def _qualified(document: Document, type_: str) -> str:
    return re.sub(
        r"\b[A-Z]\w+\b",
        lambda found: f"types.{found[0]}" if found[0] in document.homes or found[0] == "Page" else found[0],
        type_,
    )


def calls(document: Document) -> dict[str, str]:
    """The package `calls`: a module for each part of the document, and the one that gathers them."""
    modules = {home: _calls(document, home) for home in _homes(document)}
    imports = [
        f"from longpoint_sdk.calls.{module_name(operation.tag)} import {operation.id}"
        for operation in document.operations
    ]
    names = "".join(f'    "{name}",\n' for name in sorted(one.id for one in document.operations))
    modules["__init__"] = (
        f'"""A call of each operation, for a client\'s `send` and `send_raw`. {_NOTE}"""\n\n'
        + "\n".join(imports)
        + f"\n\n__all__ = [\n{names}]\n"
    )
    return modules


def _homes(document: Document) -> list[str]:
    return sorted({module_name(operation.tag) for operation in document.operations})


def _calls(document: Document, home: str) -> str:
    functions = [_call(document, one) for one in document.operations if module_name(one.tag) == home]
    abroad = [
        f"from longpoint_sdk.calls.{module_name(one.tag)} import {one.id}\n"
        for one in document.operations
        if module_name(one.tag) != home and any(f"current={one.id}(" in function for function in functions)
    ]
    return (
        f'"""Calls of the document\'s part "{home}". {_NOTE}"""\n\n'
        "from __future__ import annotations\n\n"
        "from collections.abc import Mapping\n"
        "from typing import Any\n\n"
        "from longpoint_sdk import types\n"
        "from longpoint_sdk._call import Call, parameters, part\n"
        "from longpoint_sdk._versioned import Versioned\n"
        f"{''.join(abroad)}\n\n" + "\n\n\n".join(functions) + "\n"
    )


def _call(document: Document, operation: Operation) -> str:
    said = written(document, operation)
    headers = [
        f'"{one.name}": {one.python_name}' for one in operation.takes("header") if _is_named(said, one)
    ]
    query = [
        f"{one.python_name}={one.python_name}" for one in operation.takes("query") if _is_named(said, one)
    ]
    fields = [
        f'operation="{operation.id}"',
        f'method="{operation.method}"',
        f"path={_path(operation)}",
        f"result={said.result}",
        f"query=parameters({', '.join(query)})" if query else "",
        f"headers=parameters(**{{{', '.join(headers)}}})" if headers else "",
        "body=request" if operation.body is not None else "",
        f'repeat="{repeat}"' if (repeat := _repeat(operation)) != "always" else "",
        "versioned=True" if said.versioned else "",
        "held=if_none_match" if any(one.name == "if_none_match" for one in said.named) else "",
        f"current={current}" if (current := _current(document, operation)) else "",
    ]
    text = docstring(f"`{operation.method} {operation.path}`: {_sentence(operation.summary)}", indent=4)
    return (
        f"def {operation.id}({said.declared}) -> Call[{said.answer}]:\n{text}\n"
        f"    return Call({', '.join(field for field in fields if field)})"
    )


def _is_named(said: Written, parameter: Parameter) -> bool:
    return any(one.name == parameter.python_name for one in said.named)


def _path(operation: Operation) -> str:
    filled = re.sub(r"\{([^}]+)\}", lambda found: "{part(" + found[1] + ")}", operation.path)
    return f'f"{filled}"' if "{" in filled else f'"{filled}"'


def _repeat(operation: Operation) -> str:
    """Whether it may be sent again: a POST that stores only with a key, all else always."""
    if operation.header("Idempotency-Key"):
        return "with_key"
    stores = operation.method in ("POST", "PATCH") and (operation.creates or operation.header("If-Match"))
    return "never" if stores else "always"


def _current(document: Document, operation: Operation) -> str:
    """The call that reads what a conditional operation would change: a GET of its path, or of one above it."""
    if not operation.header("If-Match"):
        return ""
    path = operation.path
    while path:
        for other in document.operations:
            if other.path == path and other.method == "GET" and other.versioned and not other.page_of:
                return f"{other.id}({', '.join(re.findall(r'{([^}]+)}', path))})"
        path = path.rpartition("/")[0]
    return ""


def clients(document: Document, *, asynchronous: bool) -> dict[str, str]:
    """A package with the operations as methods: a class for each part of the document, and the client of them all."""
    package, base = ("_async", "BaseAsyncClient") if asynchronous else ("_sync", "BaseClient")
    module = "_async_client" if asynchronous else "_client"
    pages = "AsyncPages" if asynchronous else "Pages"
    homes = {home: "".join(word.capitalize() for word in home.split("_")) for home in _homes(document)}
    written: dict[str, str] = {}
    for home, name in homes.items():
        methods = [
            _method(document, one, asynchronous=asynchronous)
            for one in document.operations
            if module_name(one.tag) == home
        ]
        written[home] = (
            f'"""Operations of the document\'s part "{home}" as methods. {_NOTE}"""\n\n'
            "from __future__ import annotations\n\n"
            "from collections.abc import Mapping\n"
            "from typing import Any\n\n"
            "from longpoint_sdk import calls, types\n"
            f"from longpoint_sdk.{module} import {base}\n"
            f"from longpoint_sdk._pages import {pages}\n"
            "from longpoint_sdk._versioned import Versioned\n\n\n"
            f'class {name}({base}):\n    """Operations as methods."""\n\n' + "\n\n".join(methods) + "\n"
        )
    written["__init__"] = _client(document, package, homes, asynchronous=asynchronous)
    return written


def _client(document: Document, package: str, homes: dict[str, str], *, asynchronous: bool) -> str:
    name = "AsyncClient" if asynchronous else "Client"
    use = "async code. Use it in an `async with`" if asynchronous else "code that waits. Use it in a `with`"
    imports = "".join(f"from longpoint_sdk.{package}.{home} import {each}\n" for home, each in homes.items())
    titles = {slug: title for _, slug, title in document.problems}
    raised = [
        f"{class_name(slug)}: {one_line(titles[slug])}."
        for slug in titles
        if slug in document.common_problems
    ]
    text = docstring(
        f"The service, for {use}, or close it. Each operation is a method.",
        "Nearly every operation may raise these, from `longpoint_sdk.problems`; others stand with the operation.",
        "\n".join(["Raises:", *raised]),
        indent=4,
    )
    return (
        f'"""The client of all operations. {_NOTE}"""\n\n'
        f"from __future__ import annotations\n\n{imports}\n\n"
        f"class {name}({', '.join(homes.values())}):\n{text}\n"
    )


def _method(document: Document, operation: Operation, *, asynchronous: bool) -> str:
    said = written(document, operation)
    arguments = ", ".join(part for part in ("self", said.declared) if part)
    call = f"calls.{operation.id}({said.passed})"
    text = docstring(
        _sentence(operation.summary),
        operation.description,
        _args(said),
        _raises(document, operation),
        indent=8,
    )
    if operation.page_of:
        pages = "AsyncPages" if asynchronous else "Pages"
        item = _qualified(document, operation.page_of)
        return f"    def {operation.id}({arguments}) -> {pages}[{item}]:\n{text}\n        return {pages}(self, {call})"
    start, wait = ("async def", "return await") if asynchronous else ("def", "return")
    return (
        f"    {start} {operation.id}({arguments}) -> {said.answer}:\n{text}\n        {wait} self.send({call})"
    )


def _sentence(summary: str) -> str:
    return summary if summary.endswith(("?", "!")) else f"{summary}."


def _args(said: Written) -> str:
    lines = [f"{one.name}: {one.says}" for one in (*said.positional, *said.named) if one.says]
    return "\n".join(["Args:", *lines]) if lines else ""


def _raises(document: Document, operation: Operation) -> str:
    titles = {slug: title for _, slug, title in document.problems}
    lines = [
        f"{class_name(slug)}: {one_line(titles[slug])}." for slug in operation.problems if slug in titles
    ]
    return "\n".join(["Raises:", *lines]) if lines else ""


def class_name(slug: str) -> str:
    """The exception for a kind of problem."""
    return "".join(word.capitalize() for word in slug.split("-"))


def problems(document: Document) -> str:
    """The module `problems`."""
    classes = [
        f"class {class_name(slug)}({'VersionConflict' if status == 412 else 'Problem'}):\n"
        f'    """{title} ({status})."""\n\n    type_uri = "/problems/{slug}"'
        for status, slug, title in document.problems
    ]
    names = ", ".join(class_name(slug) for _, slug, _ in document.problems)
    return (
        f'"""An exception for each kind of problem the service answers with. {_NOTE}"""\n\n'
        "from __future__ import annotations\n\n"
        "from longpoint_sdk._errors import Problem, VersionConflict\n\n\n"
        + "\n\n\n".join(classes)
        + f"\n\n\nKINDS: dict[str, type[Problem]] = {{kind.type_uri: kind for kind in ({names},)}}\n"
        '"""Every kind, by its type."""\n'
    )
