"""Writes a function that makes the call of each operation."""

from __future__ import annotations

import re

from generator.document import Document, Operation, Parameter, module_name
from generator.prose import docstring
from generator.signatures import NOTE, Written, homes, overloads, read_before, sentence, written


def calls(document: Document) -> dict[str, str]:
    """The package `calls`: a module for each part of the document, and the one that gathers them."""
    modules = {home: _calls(document, home) for home in homes(document)}
    imports = [
        f"from longpoint_sdk.calls.{module_name(operation.tag)} import {operation.id}"
        for operation in document.operations
    ]
    names = "".join(f'    "{name}",\n' for name in sorted(one.id for one in document.operations))
    modules["__init__"] = (
        f'"""A call of each operation, for a client\'s `send` and `send_raw`. {NOTE}"""\n\n'
        + "\n".join(imports)
        + f"\n\n__all__ = [\n{names}]\n"
    )
    return modules


def _calls(document: Document, home: str) -> str:
    functions = [_call(document, one) for one in document.operations if module_name(one.tag) == home]
    abroad = [
        f"from longpoint_sdk.calls.{module_name(one.tag)} import {one.id}\n"
        for one in document.operations
        if module_name(one.tag) != home and any(f"current={one.id}(" in function for function in functions)
    ]
    return (
        f'"""Calls of the document\'s part "{home}". {NOTE}"""\n\n'
        "from __future__ import annotations\n\n"
        "from collections.abc import Mapping\n"
        "from typing import Any, Literal, overload\n\n"
        "from longpoint_sdk import types\n"
        "from longpoint_sdk._call import Call, header_fields, path_part, query_fields\n"
        "from longpoint_sdk._versioned import Versioned\n"
        f"{''.join(abroad)}\n\n" + "\n\n\n".join(functions) + "\n"
    )


def _call(document: Document, operation: Operation) -> str:
    said = written(document, operation)
    headers = [
        f'"{one.name}": {one.python_name}' for one in operation.takes("header") if _is_named(said, one)
    ]
    query = [
        f"{one.python_name}={one.python_name}"
        if one.python_name == one.name
        else f'**{{"{one.name}": {one.python_name}}}'
        for one in operation.takes("query")
        if _is_named(said, one)
    ]
    given = [
        f'operation="{operation.id}"',
        f'method="{operation.method}"',
        f"path={_path(operation)}",
        _result(said),
        f"query=query_fields({', '.join(query)})" if query else "",
        f"headers=header_fields(**{{{', '.join(headers)}}})" if headers else "",
        "body=request" if any(one.name == "request" for one in said.positional) else "",
        f'raw_as="{operation.raw_bodies[0]}"' if operation.raw_bodies else "",
        "accept=accept" if operation.formats else "",
        f'repeat="{repeat}"' if (repeat := _repeat(operation)) != "always" else "",
        "versioned=True" if said.versioned else "",
        "held=if_none_match" if any(one.name == "if_none_match" for one in said.named) else "",
        f"current={current}" if (current := _current(document, operation)) else "",
    ]
    text = docstring(f"`{operation.method} {operation.path}`: {sentence(operation.summary)}", indent=4)
    declared, answer = said.general
    return (
        overloads(said, "def", lambda answer: f"Call[{answer}]")
        + f"def {operation.id}({declared}) -> Call[{answer}]:\n{text}\n"
        f"    return Call({', '.join(one for one in given if one)})"
    )


def _result(said: Written) -> str:
    if not said.operation.formats:
        return f"result={said.result}"
    return (
        f'result={said.result} if accept == "application/json" else bytes' if said.result else "result=bytes"
    )


def _is_named(said: Written, parameter: Parameter) -> bool:
    return any(one.name == parameter.python_name for one in said.named)


def _path(operation: Operation) -> str:
    filled = re.sub(r"\{([^}]+)\}", lambda found: "{path_part(" + found[1] + ")}", operation.path)
    return f'f"{filled}"' if "{" in filled else f'"{filled}"'


def _repeat(operation: Operation) -> str:
    """Whether it may be sent again: a POST that stores only with a key, all else always."""
    if operation.header("Idempotency-Key"):
        return "with_key"
    stores = operation.method in ("POST", "PATCH") and (operation.creates or operation.header("If-Match"))
    return "never" if stores else "always"


def _current(document: Document, operation: Operation) -> str:
    """The call that reads what a conditional operation would change."""
    if not operation.header("If-Match"):
        return ""
    read = read_before(document, operation)
    return f"{read.id}({', '.join(re.findall(r'{([^}]+)}', read.path))})" if read else ""
