"""Writes a function that makes the call of each operation, and a method of both clients that sends it."""

from __future__ import annotations

import re

from generator.document import Document, Operation, Parameter
from generator.prose import docstring, one_line
from generator.types import annotation

_NOTE = "Generated; do not edit."


def calls(document: Document) -> str:
    """The module `calls`."""
    functions = [_call(document, operation) for operation in document.operations]
    typing = "from typing import Any\n\n" if "Any" in "".join(functions) else ""
    return (
        f'"""A call of each operation, for a client\'s `send` and `send_raw`. {_NOTE}"""\n\n'
        "from __future__ import annotations\n\n"
        "from collections.abc import Mapping\n"
        f"{typing}"
        "from longpoint_sdk import types\n"
        "from longpoint_sdk._call import Call\n\n\n" + "\n\n\n".join(functions) + "\n"
    )


def clients(document: Document, *, asynchronous: bool) -> str:
    """The module with a method for each operation."""
    base, module = ("BaseAsyncClient", "_async_client") if asynchronous else ("BaseClient", "_client")
    name = "AsyncClient" if asynchronous else "Client"
    use = "async code. Use it in an `async with`" if asynchronous else "code that waits. Use it in a `with`"
    methods = [_method(document, operation, asynchronous=asynchronous) for operation in document.operations]
    return (
        f'"""The operations of the service as methods. {_NOTE}"""\n\n'
        "from __future__ import annotations\n\n"
        "from collections.abc import Mapping\n"
        "from typing import Any\n\n"
        "from longpoint_sdk import calls, types\n"
        f"from longpoint_sdk.{module} import {base}\n\n\n"
        f"class {name}({base}):\n"
        f'    """The service, for {use}, or close it. Each operation is a method."""\n\n'
        + "\n\n".join(methods)
        + "\n"
    )


def _call(document: Document, operation: Operation) -> str:
    fields = [
        f'operation="{operation.id}"',
        f'method="{operation.method}"',
        f"path={_path(operation)}",
        f"result={_result(document, operation)}",
    ]
    if operation.body is not None:
        fields.append("body=request")
    return "\n".join(
        [
            f"def {operation.id}({_parameters(document, operation)}) -> Call[{_result(document, operation)}]:",
            docstring(f"`{operation.method} {operation.path}`: {_sentence(operation.summary)}", indent=4),
            f"    return Call({', '.join(fields)})",
        ]
    )


def _method(document: Document, operation: Operation, *, asynchronous: bool) -> str:
    parameters = ", ".join(part for part in ("self", _parameters(document, operation)) if part)
    result = _result(document, operation)
    sent = f"self.send(calls.{operation.id}({_arguments(operation)}))"
    lines = [
        f"    {'async ' if asynchronous else ''}def {operation.id}({parameters}) -> {result}:",
        docstring(
            _sentence(operation.summary), operation.description, _raises(document, operation), indent=8
        ),
        f"        return {'await ' if asynchronous else ''}{sent}",
    ]
    return "\n".join(lines)


def _sentence(summary: str) -> str:
    return summary if summary.endswith(("?", "!")) else f"{summary}."


def _path(operation: Operation) -> str:
    filled = re.sub(
        r"\{([^}]+)\}", lambda found: "{part(" + found[1].lower().replace("-", "_") + ")}", operation.path
    )
    return f'f"{filled}"' if "{" in filled else f'"{filled}"'


def _result(document: Document, operation: Operation) -> str:
    if operation.result is None:
        return "None"
    return _qualified(document, annotation(document, operation.result, open=True))


def _qualified(document: Document, type_: str) -> str:
    return re.sub(
        r"\b[A-Z]\w+\b", lambda found: f"types.{found[0]}" if found[0] in document.homes else found[0], type_
    )


def _parameters(document: Document, operation: Operation) -> str:
    positional = [
        f"{one.python_name}: {_qualified(document, annotation(document, one.schema, open=False))}"
        for one in operation.takes("path")
    ]
    if operation.body is not None:
        body = _qualified(document, annotation(document, operation.body, open=False))
        positional.append(f"request: {body} | Mapping[str, Any]")
    named = [_named(document, one) for one in _by_name(operation)]
    return ", ".join([*positional, *(["*", *named] if named else [])])


def _by_name(operation: Operation) -> list[Parameter]:
    return sorted(operation.takes("query") + operation.takes("header"), key=lambda one: not one.required)


def _named(document: Document, parameter: Parameter) -> str:
    type_ = _qualified(document, annotation(document, parameter.schema, open=False))
    return f"{parameter.python_name}: {type_}" + ("" if parameter.required else " | None = None")


def _arguments(operation: Operation) -> str:
    given = [one.python_name for one in operation.takes("path")]
    if operation.body is not None:
        given.append("request")
    return ", ".join([*given, *(f"{one.python_name}={one.python_name}" for one in _by_name(operation))])


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
        f'class {class_name(slug)}(Problem):\n    """{title} ({status})."""\n\n    type_uri = "/problems/{slug}"'
        for status, slug, title in document.problems
    ]
    names = ", ".join(class_name(slug) for _, slug, _ in document.problems)
    return (
        f'"""An exception for each kind of problem the service answers with. {_NOTE}"""\n\n'
        "from __future__ import annotations\n\n"
        "from longpoint_sdk._errors import Problem\n\n\n"
        + "\n\n\n".join(classes)
        + f"\n\n\nKINDS: dict[str, type[Problem]] = {{kind.type_uri: kind for kind in ({names},)}}\n"
        '"""Every kind, by its type."""\n'
    )
