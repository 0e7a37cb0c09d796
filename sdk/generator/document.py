"""The OpenAPI document, read into what the writers need."""

from __future__ import annotations

import json
import re
from collections import Counter
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from keyword import iskeyword
from pathlib import Path
from typing import Any

Schema = dict[str, Any]

JSON = "application/json"
EVENT_STREAM = "text/event-stream"
_SAME_AS_JSON = ("application/msgpack", "application/vnd.msgpack")
_KEPT_TO_THE_TYPE = 12
"""A description that this many texts share says what their type is, not what they are."""
_LINK = re.compile(r"\[([A-Za-z -]*)\]\(/docs#[a-z-]+\)")
_SEE_LINKS = re.compile(rf" See (?:{_LINK.pattern}(?:, )?)+\.")
"""Links to the words' meanings, which the reference has and a client's docstrings have not."""
_SUBJECTS = {
    "trim": "Trim",
    "readings": "Readings",
    "shop": "Shop",
    "pieces": "Piece",
    "saw_order": "SawOrder",
    "materials": "Materials",
    "hours": "Hours",
    "costs": "CostSheet",
    "stock": "Stock",
    "sticks": "ProfilePlan",
    "movement": "Conditions",
}
"""Modules that what several tags use is shared out to, each with the schema that it is all for."""


@dataclass(frozen=True)
class Parameter:
    """A parameter of an operation: where it goes (path, query or header), its name there, and its schema."""

    place: str
    name: str
    schema: Schema
    required: bool
    description: str

    @property
    def python_name(self) -> str:
        """Its name as an argument; one that Python keeps for itself has a line under it."""
        name = self.name.lower().replace("-", "_")
        return f"{name}_" if iskeyword(name) else name


@dataclass(frozen=True)
class Operation:
    """One operation: how it is called, and what it answers with."""

    id: str
    method: str
    path: str
    tag: str
    summary: str
    description: str
    parameters: tuple[Parameter, ...]
    body: Schema | None
    """The schema of a JSON body."""
    raw_bodies: tuple[str, ...]
    """Media types of bodies it takes as they are."""
    result: Schema | None
    """The schema of a JSON answer."""
    formats: tuple[str, ...]
    """Other media types it answers in."""
    streams: bool
    """Whether it can answer with events."""
    versioned: bool
    creates: bool
    problems: tuple[str, ...]

    @property
    def page_of(self) -> str | None:
        """What it lists, when it answers a page of a list."""
        name = name_of(self.result or {})
        return page_item(name) if name else None

    def takes(self, place: str) -> list[Parameter]:
        """Its parameters of one place."""
        return [parameter for parameter in self.parameters if parameter.place == place]

    def header(self, name: str) -> Parameter | None:
        """The parameter that is a header field of this name, if it takes one."""
        return next((one for one in self.takes("header") if one.name.lower() == name.lower()), None)


@dataclass(frozen=True, order=True)
class Kind:
    """A kind of problem: its status, its slug, its title, and what to do about it."""

    status: int
    slug: str
    title: str
    advice: str


@dataclass
class Document:
    """All that is read."""

    version: str
    operations: list[Operation]
    schemas: dict[str, Schema]
    problems: list[Kind]
    homes: dict[str, str] = field(default_factory=dict)
    """The module each schema is written to."""
    asked: set[str] = field(default_factory=set)
    """Schemas that are part of a request."""
    answered: set[str] = field(default_factory=set)
    """Schemas that are part of an answer."""
    commonplace: set[str] = field(default_factory=set)
    """Descriptions of a type rather than a field."""

    @property
    def common_problems(self) -> set[str]:
        """Problems that most operations may answer with."""
        counted = Counter(slug for operation in self.operations for slug in operation.problems)
        return {slug for slug, count in counted.items() if count > len(self.operations) / 2}


def load(path: Path) -> Document:
    """Read the document."""
    text = path.read_text(encoding="utf-8")
    raw = json.loads(_LINK.sub(r"\1", _SEE_LINKS.sub("", text)))
    document = Document(
        version=raw["info"]["version"],
        operations=sorted(_operations(raw), key=lambda one: (one.tag, one.path, one.method)),
        schemas=raw["components"]["schemas"],
        problems=_problems(raw),
    )
    for name in document.schemas:
        if (
            not name.isidentifier()
        ):  # two wire types of one name: the document then tells them apart by module
            raise ValueError(f"the schema {name} needs a name of its own")
    _place(document)
    descriptions = Counter(
        said["description"]
        for schema in document.schemas.values()
        for inner in schema.get("properties", {}).values()
        for said in (inner, *inner.get("anyOf", []))
        if "description" in said and said.get("type") == "string"
    )
    document.commonplace = {text for text, count in descriptions.items() if count >= _KEPT_TO_THE_TYPE}
    return document


def name_of(schema: Schema) -> str | None:
    """The component a schema refers to, if it does nothing but that."""
    reference = schema.get("$ref")
    return reference.rpartition("/")[2] if reference else None


def description_of(schema: Schema) -> str:
    """What is said of a field; of one that may be null it is said of what it is otherwise."""
    said = (one["description"] for one in (schema, *schema.get("anyOf", [])) if "description" in one)
    return str(next(said, ""))


def page_item(name: str) -> str | None:
    """What a page is of, by the name of its schema."""
    found = re.fullmatch(r"Page_(\w+)_", name)
    return found[1] if found else None


def references(schema: Any) -> Iterator[str]:
    """Every component that a schema mentions."""
    if isinstance(schema, dict):
        if "$ref" in schema:
            yield schema["$ref"].rpartition("/")[2]
        for key, inner in schema.items():
            if key not in ("default", "examples", "mapping"):
                yield from references(inner)
    elif isinstance(schema, list):
        for inner in schema:
            yield from references(inner)


def _operations(raw: dict[str, Any]) -> Iterator[Operation]:
    for path, entry in raw["paths"].items():
        for method, said in entry.items():
            if isinstance(said, dict) and "operationId" in said:
                yield _operation(raw, path, method, said)


def _only_events(content: Mapping[str, Any]) -> tuple[str, ...]:
    """Events as the one format of an operation that answers with nothing else: they can be had as one file."""
    return (EVENT_STREAM,) if set(content) == {EVENT_STREAM} else ()


def _operation(raw: dict[str, Any], path: str, method: str, said: dict[str, Any]) -> Operation:
    success = next(answer for status, answer in sorted(said["responses"].items()) if status.startswith("2"))
    content = success.get("content", {})
    taken = said.get("requestBody", {}).get("content", {})
    return Operation(
        id=said["operationId"],
        method=method.upper(),
        path=path,
        tag=said["tags"][0],
        summary=said["summary"].rstrip("."),
        description=said.get("description", ""),
        # A preference changes what is answered: the client asks for a job by a call of its own.
        parameters=tuple(
            one
            for said_of in said.get("parameters", [])
            if (one := _parameter(raw, said_of)).name != "Prefer"
        ),
        body=taken.get(JSON, {}).get("schema"),
        raw_bodies=tuple(sorted(taken.keys() - {JSON, *_SAME_AS_JSON})),
        result=content.get(JSON, {}).get("schema"),
        formats=tuple(sorted(content.keys() - {JSON, *_SAME_AS_JSON, EVENT_STREAM})) or _only_events(content),
        streams=EVENT_STREAM in content,
        creates="201" in said["responses"],
        versioned="ETag" in success.get("headers", {}),
        problems=tuple(
            slug
            for status, answer in sorted(said["responses"].items())
            if not status.startswith("2")
            for slug in _slugs(raw, answer)
        ),
    )


def _parameter(raw: dict[str, Any], said: dict[str, Any]) -> Parameter:
    if "$ref" in said:
        said = raw["components"]["parameters"][said["$ref"].rpartition("/")[2]]
    schema = said["schema"]
    return Parameter(
        place=said["in"],
        name=said["name"],
        schema=schema,
        required=bool(said.get("required")),
        description=(said.get("description") or schema.get("description") or "").strip(),
    )


_KIND = re.compile(r"^`/problems/([a-z0-9-]+)`: (.+?)\.(?: (.+))?$", re.MULTILINE)


def _slugs(raw: dict[str, Any], answer: dict[str, Any]) -> list[str]:
    if "$ref" in answer:
        answer = raw["components"]["responses"][answer["$ref"].rpartition("/")[2]]
    return [slug for slug, _, _ in _KIND.findall(answer["description"])]


def _problems(raw: dict[str, Any]) -> list[Kind]:
    return sorted(
        Kind(int(name.removeprefix("Problem")), slug, title, advice)
        for name, answer in raw["components"]["responses"].items()
        if name.startswith("Problem")
        for slug, title, advice in _KIND.findall(answer["description"])
    )


def _place(document: Document) -> None:
    """Give each schema a module: its tag's when one tag alone uses it, else its subject's, else the common one."""
    tags: dict[str, set[str]] = {}
    for operation in document.operations:
        taken = [operation.body, *(parameter.schema for parameter in operation.parameters)]
        for schemas, side in ((taken, document.asked), ([operation.result], document.answered)):
            for name in _closure(document.schemas, schemas):
                side.add(name)
                tags.setdefault(name, set()).add(operation.tag)
    subjects: dict[str, set[str]] = {}
    for subject, root in _SUBJECTS.items():
        for name in _closure(document.schemas, [{"$ref": f"#/components/schemas/{root}"}]):
            subjects.setdefault(name, set()).add(subject)
    document.homes = {
        name: module_name(next(iter(used))) if len(used) == 1 else _common_home(subjects.get(name, set()))
        for name, used in tags.items()
        if not page_item(name)
    }


def _common_home(subjects: set[str]) -> str:
    """The module of a schema that several tags use: what several subjects are made of is theirs in common."""
    if not subjects:
        return "common"
    return next(iter(subjects)) if len(subjects) == 1 else "basics"


def _closure(schemas: dict[str, Schema], roots: list[Schema | None]) -> set[str]:
    found: set[str] = set()
    waiting = [name for root in roots for name in references(root)]
    while waiting:
        name = waiting.pop()
        if name not in found:
            found.add(name)
            waiting += references(schemas[name])
    return found


def module_name(tag: str) -> str:
    """A tag as a module is called."""
    return re.sub(r"\W+", "_", tag.lower()).strip("_")
