"""Writes a method of both clients for each operation, which sends its call."""

from __future__ import annotations

from generator.document import Document, Operation, module_name
from generator.examples import example
from generator.problems import class_name
from generator.prose import docstring, one_line
from generator.signatures import NOTE, Written, homes, overloads, qualified, sentence, written

_UNANSWERED = (
    "NotReached: There was no way to the service; nothing was done.",
    "TimedOut: No answer came in time; a ConnectionFailed.",
    "ConnectionFailed: No answer came; what was asked may or may not have been done.",
    "UnreadableAnswer: The answer is not of the form the document promises.",
)
_WHEN = {
    "precondition-required": "No version was named to change: give `if_match`.",
    "precondition-failed": "It was changed since it was read. The VersionConflict holds `mine` and `current`.",
}
"""When a problem is raised, where its title says rather what to do, or the SDK adds to it."""
_ARCHIVED_TOO = ("archive_schedule", "unarchive_schedule", "delete_schedule")
"""Operations that an archived schedule bears."""


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
    raised = [
        f"{class_name(kind.slug)}: {one_line(kind.title)}."
        for kind in document.problems
        if kind.slug in document.common_problems
    ]
    text = docstring(
        f"The service, for {use}, or close it. Each operation is a method.",
        "Nearly every operation may raise these; those from NotReached to UnreadableAnswer are of `longpoint_sdk`, "
        "the others of `longpoint_sdk.problems`. What else an operation may raise stands with it. Each is a "
        "LongpointError.",
        "\n".join(["Raises:", *_UNANSWERED, *raised]),
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
        _returns(said),
        _raises(document, operation),
        example(operation.id, asynchronous=asynchronous),
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
    formats = ", ".join(said.operation.formats)
    if formats and said.result:
        lines.append(f"accept: The media type of a file to have instead of data: {formats}.")
    elif formats:
        lines.append(f"accept: The media type of the file; {formats} is the only one.")
    return "\n".join(["Args:", *lines]) if lines else ""


def _returns(said: Written) -> str:
    """What it gives, where its annotation does not say it all."""
    operation = said.operation
    if operation.page_of:
        return "Returns:\nThe list, to iterate over: each page is fetched when it is reached."
    files = "the bytes of a file"
    given = (
        f"`{said.result}`, or {files} where `accept` asks for one"
        if operation.formats
        else f"`{said.result}`"
    )
    given = given if said.result else files
    if said.versioned:
        return f"Returns:\nA `Versioned`: its `value` is {given}; its `etag` is the version."
    return f"Returns:\n{given[0].upper()}{given[1:]}." if operation.formats else ""


def _raises(document: Document, operation: Operation) -> str:
    titles = {kind.slug: f"{one_line(kind.title)}." for kind in document.problems}
    lines = [
        f"{class_name(slug)}: {_WHEN.get(slug, titles[slug])}"
        for slug in operation.problems
        if slug in titles
        and slug not in document.common_problems
        and (slug != "schedule-archived" or operation.id not in _ARCHIVED_TOO)
        and (slug != "schedule-not-archived" or operation.id == "delete_schedule")
    ]
    return "\n".join(["Raises:", *lines]) if lines else ""
