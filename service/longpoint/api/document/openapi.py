"""The OpenAPI 3.1 document: Litestar's outline, msgspec's schemas, and what operations say of themselves.

Litestar drops constraints on list items, discriminators and refused unknown fields; msgspec's own schemas
have them all. So every body's schema comes from msgspec, and Litestar's are left out.
"""

from collections.abc import Iterator, Mapping
from functools import lru_cache
from typing import Any

import msgspec
from litestar import Litestar
from litestar.handlers import HTTPRouteHandler
from litestar.openapi import OpenAPIConfig
from litestar.openapi.plugins import JsonRenderPlugin
from litestar.openapi.spec import Components, OpenAPIType, Schema, SecurityScheme
from litestar.plugins import OpenAPISchemaPlugin
from litestar.routes import HTTPRoute

from longpoint import __version__
from longpoint.api.document.glossary import TAGS, as_markdown, link_fields
from longpoint.api.document.later import ACCEPTED_FIELDS, PREFER, accepted
from longpoint.api.document.records import REF, body_schemas, given_by, is_record, read_doc, taken_by
from longpoint.api.http.conditional import ENTITY_TAGS, MOST_TAGS
from longpoint.api.http.negotiate import BOTH, CSV, PDF
from longpoint.api.http.operation import Endpoint, operation_of
from longpoint.api.http.problems import PROBLEM_JSON, Problem, ProblemBody
from longpoint.api.routes import OPERATIONS
from longpoint.api.stored.job_answer import JobAnswer
from longpoint.api.stored.later import LONG
from longpoint.api.stored.retrying import MOST_KEY, RETRY_KEY

_ENTITY_TAGS = {
    "type": "string",
    "format": "entity-tags",
    "pattern": ENTITY_TAGS,
    "maxLength": MOST_TAGS,
    "description": "Entity tags in quotes, as they came, with commas between, or *.",
}
_RETRY_KEY = {
    "type": "string",
    "format": "retry-key",
    "pattern": RETRY_KEY,
    "maxLength": MOST_KEY,
    "description": "A UUID, for example; in quotes or without.",
}


class _Elsewhere(OpenAPISchemaPlugin):
    """Keeps the framework from describing records: their schemas come from msgspec."""

    @staticmethod
    def is_plugin_supported_type(value: Any) -> bool:
        return is_record(value)

    def to_openapi_schema(self, field_definition: Any, schema_creator: Any) -> Schema:  # noqa: ARG002
        return Schema(type=OpenAPIType.OBJECT)


_DESCRIPTION = """\
From a tape's readings at windows and doors to every piece of trim. Lengths are text with their unit.

Bodies are JSON or MessagePack. Fields the service does not know are refused. Every refusal is a problem \
document (RFC 9457) that lists all that was wrong, each with a JSON pointer. Every GET answers HEAD too.

"""


@lru_cache(maxsize=1)
def document() -> dict[str, Any]:
    """The document, as plain data."""
    app = Litestar(
        route_handlers=OPERATIONS,
        openapi_config=OpenAPIConfig(
            title="Longpoint",
            version=__version__,
            description=_DESCRIPTION + as_markdown(),
            create_examples=False,
            use_handler_docstrings=True,
            render_plugins=[JsonRenderPlugin()],
            components=Components(
                security_schemes={
                    "bearer": SecurityScheme(
                        type="http", scheme="bearer", description="A key of this service, as a bearer token."
                    )
                }
            ),
        ),
        logging_config=None,
        plugins=[_Elsewhere()],
    )
    outline = app.openapi_schema.to_schema()
    handlers = [
        (route.path_format, method.lower(), handler, said)
        for route in app.routes
        if isinstance(route, HTTPRoute)
        for method, (handler, _) in route.route_handler_map.items()
        if (said := operation_of(handler))
    ]
    bodies, components = body_schemas([handler for _, _, handler, _ in handlers])
    for path, method, handler, said in handlers:
        entry = outline["paths"][path][method]
        _complete(entry, method, handler, said, bodies)
        for status in _refusals(path, said, takes_body="requestBody" in entry):
            entry["responses"][str(status)] = {"$ref": f"#/components/responses/Problem{status}"}
    _spell_out_choices(outline, components)
    _open_answers(outline, components)
    outline["components"]["schemas"] = components
    outline["components"]["responses"] = _shared_responses()
    outline["tags"] = [{"name": name, "description": text} for name, text in TAGS.items()]
    link_fields(outline)
    return outline


def _spell_out_choices(outline: dict[str, Any], components: dict[str, Any]) -> None:
    """A query parameter's choices stand in the parameter itself: no body's schema has them."""
    schemas = outline["components"].get("schemas", {})
    for methods in outline["paths"].values():
        for entry in methods.values():
            for parameter in entry.get("parameters", []):
                schema = parameter["schema"]
                for option in schema.pop("allOf", []):
                    schema.update(_choices(option, schemas))
                for option in schema.get("oneOf", []):
                    if "$ref" in option and option["$ref"].rpartition("/")[2] not in components:
                        option.update(_choices(option, schemas))
                        del option["$ref"]
            _never_null(entry.get("parameters", []))


def _open_answers(outline: dict[str, Any], components: dict[str, Any]) -> None:
    """Answers may grow: only what is part of a request says that it takes no other fields."""
    asked: set[str] = set()
    waiting = list(_referred([one.get("requestBody") for one in _entries(outline)]))
    while waiting:
        name = waiting.pop()
        if name not in asked:
            asked.add(name)
            waiting += _referred(components[name])
    for name, schema in components.items():
        if name not in asked:
            schema.pop("additionalProperties", None)


def _entries(outline: dict[str, Any]) -> list[dict[str, Any]]:
    return [entry for methods in outline["paths"].values() for entry in methods.values()]


def _referred(value: Any) -> Iterator[str]:
    """The components that a schema mentions."""
    if isinstance(value, dict):
        if isinstance(value.get("$ref"), str):
            yield value["$ref"].rpartition("/")[2]
        for inner in value.values():
            yield from _referred(inner)
    elif isinstance(value, list):
        for inner in value:
            yield from _referred(inner)


def _choices(option: dict[str, Any], schemas: dict[str, Any]) -> dict[str, Any]:
    named = schemas[option["$ref"].rpartition("/")[2]]
    return {"type": named["type"], "enum": named["enum"]}


def document_bytes() -> bytes:
    """The document as JSON, always the same for the same code."""
    data = msgspec.json.encode(document(), order="sorted")
    return msgspec.json.format(data, indent=2) + b"\n"


def _complete(
    entry: dict[str, Any], method: str, handler: HTTPRouteHandler, said: Endpoint, schemas: dict[Any, Any]
) -> None:
    """Fill in what an operation takes, gives and refuses with."""
    taken, given = taken_by(handler), given_by(handler)
    if taken is not None:
        examples = {
            name: {"summary": example.summary, "value": example.request}
            for name, example in said.examples.items()
        }
        entry["requestBody"] = {
            "required": True,
            "content": _content((*BOTH, *([CSV] if said.reads_csv else [])), schemas[taken], examples),
        }
    answers = {
        name: {"summary": example.summary, "value": example.response}
        for name, example in said.examples.items()
        if example.response is not None
    }
    answer: dict[str, Any] = {"description": "Done.", "headers": _headers(said.headers)}
    if given is not None:
        answer["description"] = read_doc(given.__doc__ or "")[0] or "Done."
        answer["content"] = _content(said.offers, schemas[given], answers)
    elif handler.status_code != 204:
        answer["content"] = _content(said.offers, {}, {})
    if said.links:
        answer["links"] = dict(said.links)
    entry["responses"] = {str(handler.status_code): answer}
    if said.creates:
        fields = _headers({**said.headers, "Location": "Where it is."})
        entry["responses"]["201"] = {**answer, "headers": fields}
    if said.id in LONG:
        entry["responses"]["202"] = {**accepted(schemas[JobAnswer]), "headers": _headers(ACCEPTED_FIELDS)}
    # Without keys made, a service on its own machine asks for none: hence the empty alternative.
    parameters = entry.setdefault("parameters", [])
    parameters.extend(_conditions(method, said))
    if any(one["name"] == "If-None-Match" for one in parameters):
        fields = _headers({"ETag": said.headers["ETag"]})
        entry["responses"]["304"] = {"description": "What you have is what there is.", "headers": fields}
    entry["security"] = [] if said.access == "open" else [{"bearer": [said.access]}, {}]


def _conditions(method: str, said: Endpoint) -> list[dict[str, Any]]:
    """The conditions and retries an operation understands: header fields read by hand, not by the framework."""
    found = []
    if method == "get" and "ETag" in said.headers:
        found.append(("If-None-Match", "Answer 304 when this is still its ETag.", False))
    if said.stored and method != "get" and 412 in said.problems:
        found.append(
            (
                "If-Match",
                "The ETag of what the change was made from.",
                428 in said.problems and said.needs_match,
            )
        )
    if said.stored and method == "post":
        text = "Makes it safe to send the request again: the same key gives the same answer, once."
        found.append(("Idempotency-Key", text, False))
    prefer = [PREFER] if said.id in LONG else []
    return prefer + [
        {
            "name": name,
            "in": "header",
            "description": text,
            "required": required,
            "schema": _RETRY_KEY if name == "Idempotency-Key" else _ENTITY_TAGS,
        }
        for name, text, required in found
    ]


def _never_null(parameters: list[dict[str, Any]]) -> None:
    """A parameter that may be left out is said to be null by the framework; in an address there is no such thing."""
    for one in parameters:
        options = one.get("schema", {}).get("oneOf", [])
        values = [option for option in options if option != {"type": "null"}]
        if len(values) == 1 < len(options):
            rest = {name: value for name, value in one["schema"].items() if name != "oneOf"}
            one["schema"] = {**rest, **values[0]}


def _content(offers: tuple[str, ...], schema: dict[str, Any], examples: dict[str, Any]) -> dict[str, Any]:
    content: dict[str, Any] = {
        offer: {"schema": schema if offer in BOTH else _file_schema(offer)} for offer in offers
    }
    if examples:
        content[offers[0]]["examples"] = examples
    return content


def _file_schema(media_type: str) -> dict[str, Any]:
    """A file's: text for what is text, and nothing to say of other bytes than their type."""
    if media_type == PDF:
        return {"type": "string", "contentMediaType": media_type}
    return {"type": "string", "minLength": 1}


def _headers(own: Mapping[str, str]) -> dict[str, Any]:
    described = {"X-Request-Id": "The id of this request: the one sent, or a new one.", **own}
    return {
        name: {"description": text, "schema": {"type": "string"}} for name, text in sorted(described.items())
    }


def _refusals(path: str, said: Endpoint, *, takes_body: bool) -> list[int]:
    """The statuses an operation may refuse with."""
    statuses = {400, 406, 422, 500, *said.problems}
    if takes_body:
        statuses |= {408, 413, 415}
    if said.access != "open":
        statuses |= {401, 403, 429, 503}
    if "{" in path:
        statuses.add(404)
    return sorted(statuses)


def _shared_responses() -> dict[str, Any]:
    """One response for each status any problem has, naming the kinds of problem it may be."""
    by_status: dict[int, list[type[Problem]]] = {}
    for _, kind in sorted(Problem.kinds.items()):
        by_status.setdefault(kind.status, []).append(kind)
    return {
        f"Problem{status}": {
            "description": "\n\n".join(f"`{kind.type_uri()}`: {kind.title}. {kind.advice}" for kind in kinds),
            "headers": _headers({}),
            "content": {PROBLEM_JSON: {"schema": {"$ref": REF.format(name=ProblemBody.__name__)}}},
        }
        for status, kinds in sorted(by_status.items())
    }
