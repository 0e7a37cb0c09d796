"""Writes a method of both clients for each operation, which sends its call."""

from __future__ import annotations

from generator.document import Document, Operation, module_name
from generator.problems import class_name
from generator.prose import docstring, one_line
from generator.signatures import NOTE, Written, homes, overloads, qualified, sentence, written


def clients(document: Document, *, asynchronous: bool) -> dict[str, str]:
    """A package with the operations as methods: a class for each part of the document, and the client of them all."""
    package, base = ("_async", "BaseAsyncClient") if asynchronous else ("_sync", "BaseClient")
    module = "_async_client" if asynchronous else "_client"
    pages = "AsyncPages" if asynchronous else "Pages"
    parts = {home: "".join(word.capitalize() for word in home.split("_")) for home in homes(document)}
    written: dict[str, str] = {}
    for home, name in parts.items():
        methods = [
            _method(document, one, asynchronous=asynchronous)
            for one in document.operations
            if module_name(one.tag) == home
        ]
        written[home] = (
            f'"""Operations of the document\'s part "{home}" as methods. {NOTE}"""\n\n'
            "from __future__ import annotations\n\n"
            "from collections.abc import Mapping\n"
            "from typing import Any, Literal, overload\n\n"
            "from longpoint_sdk import calls, types\n"
            f"from longpoint_sdk.{module} import {base}\n"
            f"from longpoint_sdk._pages import {pages}\n"
            "from longpoint_sdk._versioned import Versioned\n\n\n"
            f'class {name}({base}):\n    """Operations as methods."""\n\n' + "\n\n".join(methods) + "\n"
        )
    written["__init__"] = _client(document, package, parts, asynchronous=asynchronous)
    return written


def _client(document: Document, package: str, parts: dict[str, str], *, asynchronous: bool) -> str:
    name = "AsyncClient" if asynchronous else "Client"
    use = "async code. Use it in an `async with`" if asynchronous else "code that waits. Use it in a `with`"
    imports = "".join(f"from longpoint_sdk.{package}.{home} import {each}\n" for home, each in parts.items())
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
        f'"""The client of all operations. {NOTE}"""\n\n'
        f"from __future__ import annotations\n\n{imports}\n\n"
        f"class {name}({', '.join(parts.values())}):\n{text}\n"
    )


def _method(document: Document, operation: Operation, *, asynchronous: bool) -> str:
    said = written(document, operation)
    declared, answer = said.general
    arguments = ", ".join(part for part in ("self", declared) if part)
    call = f"calls.{operation.id}({said.passed})"
    text = docstring(
        sentence(operation.summary),
        operation.description,
        _args(said),
        _raises(document, operation),
        indent=8,
    )
    if operation.page_of:
        pages = "AsyncPages" if asynchronous else "Pages"
        item = qualified(document, operation.page_of)
        return f"    def {operation.id}({arguments}) -> {pages}[{item}]:\n{text}\n        return {pages}(self, {call})"
    start, wait = ("async def", "return await") if asynchronous else ("def", "return")
    return (
        overloads(said, start, str, "    ")
        + f"    {start} {operation.id}({arguments}) -> {answer}:\n{text}\n"
        f"        {wait} self.send({call})"
    )


def _args(said: Written) -> str:
    lines = [f"{one.name}: {one.says}" for one in (*said.positional, *said.named) if one.says]
    if said.operation.formats:
        lines.append("accept: The media type to have it in; its bytes are then given as they come.")
    return "\n".join(["Args:", *lines]) if lines else ""


def _raises(document: Document, operation: Operation) -> str:
    titles = {slug: title for _, slug, title in document.problems}
    lines = [
        f"{class_name(slug)}: {one_line(titles[slug])}."
        for slug in operation.problems
        if slug in titles and slug not in document.common_problems
    ]
    return "\n".join(["Raises:", *lines]) if lines else ""
