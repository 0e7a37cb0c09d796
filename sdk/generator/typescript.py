"""Writes the types of every request and answer, and what each operation takes and gives, as TypeScript."""

from __future__ import annotations

import json
from collections.abc import Iterable

from generator.document import Document, Operation, Schema, name_of, page_item
from generator.prose import one_line

_PLAIN = {"string": "string", "integer": "number", "number": "number", "boolean": "boolean", "null": "null"}
_LENGTH_TEXT = """\
/** A length as text with its unit, as a tape reads: `30 5/8 in`, `778 mm`. */
export type LengthText = string;"""
_PAGE = """\
/** One page of a list; `next` is the cursor of the next one, null on the last. */
export interface Page<T> {
  items: T[];
  next: string | null;
}"""
_OPEN = " | (string & {})"


def declarations(document: Document) -> str:
    """The file `longpoint.d.ts`."""
    parts = [
        f"// Requests and answers of Longpoint {document.version}. Generated from the OpenAPI document; do not edit.",
        _LENGTH_TEXT,
        _PAGE,
        *(_schema(document, name) for name in sorted([*document.homes, "ProblemBody", "Fault"])),
        _operations(document),
    ]
    return "\n\n".join(parts) + "\n"


def _schema(document: Document, name: str) -> str:
    schema = document.schemas[name]
    comment = _comment(schema.get("description", ""), "")
    asked = name in document.asked
    if "enum" in schema:
        options = " | ".join(json.dumps(option) for option in schema["enum"])
        return f"{comment}export type {name} = {options};"
    required = schema.get("required", [])
    properties: dict[str, Schema] = schema.get("properties", {})
    lines = []
    for field in [*required, *(one for one in properties if one not in required)]:
        inner = properties[field]
        if "description" in inner and inner["description"] not in document.commonplace:
            lines.append(_comment(inner["description"], "  ").rstrip("\n"))
        mark = "?" if field not in required and (asked or "default" not in inner) else ""
        lines.append(f"  {field}{mark}: {_type(document, inner, open=not asked)};")
    return f"{comment}export interface {name} {{\n" + "\n".join(lines) + "\n}"


def _type(document: Document, schema: Schema, *, open: bool) -> str:
    if name := name_of(schema):
        if item := page_item(name):
            return f"Page<{item}>"
        return name + (_OPEN if open and "enum" in document.schemas[name] else "")
    for joined in ("anyOf", "oneOf"):
        if joined in schema:
            return " | ".join(_each(document, schema[joined], open))
    if "enum" in schema or "const" in schema:
        options = schema.get("enum", [schema.get("const")])
        return " | ".join(json.dumps(option) for option in options) + (_OPEN if open else "")
    if schema.get("format") == "length":
        return "LengthText"
    kind = schema.get("type")
    if kind == "array":
        if "prefixItems" in schema:
            return f"[{', '.join(_each(document, schema['prefixItems'], open))}]"
        inner = _type(document, schema.get("items") or {}, open=open)
        return f"({inner})[]" if " | " in inner else f"{inner}[]"
    if kind == "object":
        value = schema.get("additionalProperties")
        return (
            f"Record<string, {_type(document, value, open=open) if isinstance(value, dict) else 'unknown'}>"
        )
    return _PLAIN[kind] if isinstance(kind, str) else "unknown"


def _each(document: Document, schemas: Iterable[Schema], open: bool) -> list[str]:
    return list(dict.fromkeys(_type(document, schema, open=open) for schema in schemas))


def _operations(document: Document) -> str:
    lines = ["/** Every operation, by its id: where it is, what it takes and what it gives. */"]
    lines.append("export interface Operations {")
    for operation in document.operations:
        lines += [
            _comment(operation.summary, "  ").rstrip("\n"),
            f"  {operation.id}: {{",
            *_facts(document, operation),
            "  };",
        ]
    return "\n".join([*lines, "}"])


def _facts(document: Document, operation: Operation) -> list[str]:
    facts = [f"    method: {json.dumps(operation.method)};", f"    path: {json.dumps(operation.path)};"]
    for place in ("path", "query", "header"):
        given = operation.takes(place)
        if given:
            each = "; ".join(
                f"{json.dumps(one.name)}{'' if one.required else '?'}: {_type(document, one.schema, open=False)}"
                for one in given
            )
            facts.append(f"    {'parameters' if place == 'path' else place}: {{ {each} }};")
    if operation.body is not None:
        facts.append(f"    request: {_type(document, operation.body, open=False)};")
    if operation.result is not None:
        facts.append(f"    response: {_type(document, operation.result, open=True)};")
    return facts


def _comment(text: str, margin: str) -> str:
    return f"{margin}/** {one_line(text).replace('*/', '* /')} */\n" if text else ""
