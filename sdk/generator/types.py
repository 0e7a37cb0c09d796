"""Writes a struct for every schema: requests, answers and what they are made of."""

from __future__ import annotations

from collections.abc import Iterable
from keyword import iskeyword

from generator.document import Document, Schema, description_of, name_of, page_item, references
from generator.prose import docstring, one_line

_MEASURED = {"exact", "real", "text", "unit", "residual"}
_PLAIN = {"string": "str", "integer": "int", "number": "float", "boolean": "bool", "null": "None"}


def modules(document: Document) -> dict[str, str]:
    """Every module of `types`, by its name, and the one that gathers them."""
    homes = sorted(set(document.homes.values()))
    written = {home: _module(document, home) for home in homes}
    imports = "\n".join(
        f"from longpoint_sdk.types.{home} import {name}"
        for home in homes
        for name in sorted(document.homes)
        if document.homes[name] == home
    )
    names = "\n".join(
        f'    "{name}",' for name in sorted(["LengthText", "MoneyText", "Page", *document.homes])
    )
    written["__init__"] = (
        '"""What operations take and give, as the OpenAPI document has it. Generated; do not edit."""\n\n'
        f"from longpoint_sdk.types._base import LengthText, MoneyText, Page\n{imports}\n\n__all__ = [\n{names}\n]\n"
    )
    return written


def _module(document: Document, home: str) -> str:
    names = [name for name, where in document.homes.items() if where == home]
    enums = sorted(name for name in names if "enum" in document.schemas[name])
    structs = _in_order(document, [name for name in names if name not in enums])
    bodies = [_struct(document, name) for name in structs]
    text = "\n\n\n".join(bodies)
    head = [
        f'"""Types of the document\'s part "{home}". Generated; do not edit."""',
        "",
        "from __future__ import annotations",
        "",
    ]
    wanted = {name for one in structs for name in references(document.schemas[one])}
    wanted |= {sent for one in structs if (sent := _sent_as(document, one))}
    abroad = sorted(name for name in wanted if document.homes.get(name, home) != home)
    typing = [word for word in ("Any",) if f"{word}" in text.replace(f"An{word}", "")]
    if enums:
        typing += ["TYPE_CHECKING", "Literal"]
    if "datetime" in text:
        head.append("from datetime import datetime")
    if "Decimal" in text:
        head.append("from decimal import Decimal")
    if typing:
        head.append(f"from typing import {', '.join(sorted(typing))}")
    head.append("")
    if "msgspec.field" in text:
        head += ["import msgspec", ""]
    if "Measured" in text:
        head.append("from longpoint_sdk._measured import Measured")
    base = [
        word for word in ("LengthText", "MoneyText", "Request", "Result", "request_from") if f"{word}" in text
    ]
    if base:
        head.append(f"from longpoint_sdk.types._base import {', '.join(base)}")
    if abroad:
        for module in sorted({document.homes[name] for name in abroad}):
            here = [name for name in abroad if document.homes[name] == module]
            head.append(f"from longpoint_sdk.types.{module} import {', '.join(here)}")
    return "\n".join(head) + "\n\n" + _enums(document, enums) + text + "\n"


def _enums(document: Document, enums: list[str]) -> str:
    """Options: their names to a type checker, any text at run time, since a newer service may have more."""
    if not enums:
        return ""
    lines = ["if TYPE_CHECKING:"]
    for name in enums:
        schema = document.schemas[name]
        options = ", ".join(f'"{option}"' for option in schema["enum"])
        lines.append(f"    {name} = Literal[{options}]")
        if schema.get("description"):
            lines.append(docstring(schema["description"], indent=4))
    lines.append("else:")
    lines += [f"    {name} = str" for name in enums]
    return "\n".join(lines) + "\n\n\n"


def _in_order(document: Document, names: list[str]) -> list[str]:
    """Schemas so that each comes after those it is made of."""
    done: list[str] = []

    def visit(name: str) -> None:
        if name in done or name not in names:
            return
        for inner in sorted(set(references(document.schemas[name])) - {name}):
            visit(inner)
        done.append(name)

    for name in sorted(names):
        visit(name)
    return done


def _struct(document: Document, name: str) -> str:
    schema = document.schemas[name]
    properties: dict[str, Schema] = schema.get("properties", {})
    required = [field for field in schema.get("required", []) if field in properties]
    optional = [field for field in properties if field not in required]
    asked = name in document.asked
    base = "Request" if asked else "Result"
    bases = ["Measured", base] if properties.keys() >= _MEASURED else [base]
    described = [
        f"{field}: {one_line(says)}"
        for field in (*required, *optional)
        if (says := _own_words(document, properties[field]))
    ]
    says = schema.get("description") or f"{name}."
    lines = [f"class {name}({', '.join(bases)}, frozen=True, kw_only=True):"]
    lines.append(
        docstring(says, "\n".join(["Attributes:", *described]) if described else "", indent=4) + "\n"
    )
    for field in (*required, *optional):
        type_ = annotation(document, properties[field], open=not asked)
        default = _default(document, properties[field], type_) if field in optional else ""
        lines.append(f"    {_field(field, type_, default)}")
    if sent := _sent_as(document, name):
        lines.append(
            f"\n    def changed(self, **fields: Any) -> {sent}:\n"
            f'        """The request that changes it: all as it was read, with other values for these fields.\n\n'
            f"        Raises:\n            TypeError: for a field that {sent} does not have.\n"
            f'        """\n'
            f"        return request_from({sent}, self, fields)"
        )
    return "\n".join(lines)


def _field(name: str, type_: str, default: str) -> str:
    """A field; one whose name Python keeps for itself has a line under it."""
    if not iskeyword(name):
        return f"{name}: {type_}{default}"
    optional, _, value = default.rpartition(" = ")
    given = f"default={value}, " if value else ""
    return f'{name}_: {type_}{optional} = msgspec.field({given}name="{name}")'


def _sent_as(document: Document, name: str) -> str | None:
    """The request that replaces what is answered as this, when they have the same fields."""
    fields = document.schemas[name].get("properties", {}).keys()
    reads = {one.path for one in document.operations if one.result and name_of(one.result) == name}
    bodies = [
        one.body for one in document.operations if one.method == "PUT" and one.path in reads and one.body
    ]
    for body in bodies:
        sent = name_of(body)
        if sent and sent != name and document.schemas[sent]["properties"].keys() <= fields:
            return sent
    return None


def _own_words(document: Document, schema: Schema) -> str:
    """What is said of a field itself, without what is said of all of its type."""
    said = description_of(schema)
    for text in document.commonplace:
        said = said.removesuffix(text).strip()
    return said


def annotation(document: Document, schema: Schema, *, open: bool) -> str:
    """A schema as a type.

    Args:
        document: Where names lead.
        schema: What to write.
        open: Whether a newer service may answer an option this SDK does not know.
    """
    if name := name_of(schema):
        if item := page_item(name):
            return f"Page[{item}]"
        return f"{name} | str" if open and "enum" in document.schemas[name] else name
    for joined in ("anyOf", "oneOf"):
        if joined in schema:
            kinds = _each(document, schema[joined], open)
            return " | ".join(dict.fromkeys([*(kind for kind in kinds if kind != "None"), *kinds]))
    if schema.get("format") == "length":
        return "LengthText"
    if schema.get("format") == "money":
        return "Decimal" if open else "MoneyText"
    if "enum" in schema or "const" in schema:
        options = schema.get("enum", [schema.get("const")])
        return "int" if all(isinstance(option, int) for option in options) else "str"
    kind = schema.get("type")
    if kind == "array":
        if "prefixItems" in schema:
            return f"tuple[{', '.join(_each(document, schema['prefixItems'], open))}]"
        return f"list[{annotation(document, schema.get('items') or {}, open=open)}]"
    if kind == "object":
        inner = schema.get("additionalProperties")
        value = annotation(document, inner, open=open) if isinstance(inner, dict) else "Any"
        return f"dict[str, {value}]"
    if kind == "string" and schema.get("format") == "date-time":
        return "datetime"
    return _PLAIN[kind] if isinstance(kind, str) else "Any"


def _each(document: Document, schemas: Iterable[Schema], open: bool) -> list[str]:
    return [annotation(document, schema, open=open) for schema in schemas]


def _default(document: Document, schema: Schema, type_: str) -> str:
    if "default" not in schema:
        return " | None = None" if "None" not in type_.split(" | ") else " = None"
    value = schema["default"]
    if isinstance(value, dict) and (name := name_of(schema) or _only_name(schema)):
        own = document.schemas[name].get("properties", {})
        differing = [
            f"{key}={given!r}" for key, given in value.items() if own[key].get("default", ...) != given
        ]
        return f" = {name}({', '.join(differing)})"
    if type_ == "Decimal":
        return f' = Decimal("{value}")'
    return f' = "{value}"' if isinstance(value, str) else f" = {value!r}"


def _only_name(schema: Schema) -> str | None:
    names = [name for inner in schema.get("anyOf", []) if (name := name_of(inner))]
    return names[0] if len(names) == 1 else None
