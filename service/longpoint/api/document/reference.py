"""The reference as a page: the document's words, the glossary, each operation with a real answer, and every record."""

import json
from functools import lru_cache
from importlib.resources import files
from typing import Any

from jinja2 import Environment, PackageLoader, StrictUndefined
from markupsafe import Markup

from longpoint.api.document.glossary import GLOSSARY, INTRODUCTION, LINK, anchor
from longpoint.api.document.openapi import document
from longpoint.api.http.negotiate import BOTH
from longpoint.lengths import Length

JSON = BOTH[0]
REF = "#/components/schemas/"
OF_LENGTHS: str = Length.schema()["description"]
"""What every length's description ends with: the page says it once."""
FIRST = "compute_stool"
"""The operation of the first request."""


@lru_cache(maxsize=1)
def reference() -> str:
    """The whole page."""
    pages = Environment(
        loader=PackageLoader("longpoint.api.document", "pages"),
        autoescape=True,
        undefined=StrictUndefined,
        trim_blocks=True,
        lstrip_blocks=True,
    )
    pages.filters |= {"said": said, "kind": kind, "shown": shown, "anchor": anchor}
    outline = document()
    answers = json.loads((files("longpoint.api.document") / "pages" / "answers.json").read_text("utf-8"))
    operations = [
        _operation(path, method, entry, answers[entry["operationId"]])
        for path, methods in outline["paths"].items()
        for method, entry in methods.items()
    ]
    return pages.get_template("docs.html").render(
        about=outline["info"]["description"].partition("\n\n## ")[0],
        version=outline["info"]["version"],
        introduction=INTRODUCTION,
        of_lengths=OF_LENGTHS,
        glossary=GLOSSARY,
        first=next(one for one in operations if one["id"] == FIRST),
        groups=[(tag, [one for one in operations if tag["name"] in one["tags"]]) for tag in outline["tags"]],
        refused=answers["refused"],
        records=dict(sorted(outline["components"]["schemas"].items())),
    )


def _operation(path: str, method: str, entry: dict[str, Any], answer: dict[str, Any]) -> dict[str, Any]:
    """What the page says of one operation."""
    taken = entry.get("requestBody", {}).get("content", {}).get(JSON, {})
    given = next(one for status, one in sorted(entry["responses"].items()) if status.startswith("2"))
    content = given.get("content", {})
    return {
        **entry,
        "id": entry["operationId"],
        "path": path,
        "method": method.upper(),
        "key": entry["security"][0]["bearer"][0] if entry["security"] else "",
        "takes": taken.get("schema"),
        "sends": taken["examples"][answer["example"]]["value"] if "example" in answer else None,
        "gives": content.get(JSON, {}).get("schema"),
        "offers": [offer for offer in content if offer not in BOTH[1:]],
        "answer": answer,
    }


def shown(value: Any) -> str:
    """Data as it is shown: text as it stands, all else as JSON."""
    return value if isinstance(value, str) else json.dumps(value, indent=2, ensure_ascii=False)


def said(text: str) -> Markup:
    """A description: its code, its links within the page and its paragraphs."""
    parts = Markup.escape(text.removesuffix(OF_LENGTHS)).split("`")
    coded = "".join(f"<code>{part}</code>" if index % 2 else part for index, part in enumerate(parts))
    linked = LINK.sub(r'<a href="#\2">\1</a>', coded)
    return Markup(linked.replace("\n\n", "<br><br>"))


def kind(schema: dict[str, Any]) -> Markup:
    """A type in a word or two; a record's leads to it."""
    if "$ref" in schema:
        name = schema["$ref"].removeprefix(REF)
        return Markup('<a href="#record-{0}">{0}</a>').format(name)
    if options := schema.get("anyOf") or schema.get("oneOf"):
        return Markup(" or ").join(dict.fromkeys(kind(option) for option in options))
    if "enum" in schema:
        return Markup(", ").join(Markup("<code>{}</code>").format(json.dumps(one)) for one in schema["enum"])
    if schema.get("type") == "array":
        inner = schema.get("items") or {}
        return Markup("list of {}").format(kind(inner)) if inner else Markup("list")
    if schema.get("type") == "object" and isinstance(schema.get("additionalProperties"), dict):
        return Markup("{} by name").format(kind(schema["additionalProperties"]))
    if schema.get("format") == "length":
        return Markup('<a href="#length">length</a>')
    return Markup.escape(schema.get("format") or schema.get("type") or "anything")
