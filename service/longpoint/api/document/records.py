"""The records that bodies are made of, as the document describes them: their schemas and what their docstrings say."""

import inspect
import re
from collections.abc import Iterable, Iterator
from typing import Any

import msgspec
from litestar.handlers import HTTPRouteHandler

from longpoint.api.http.answer import PLAIN, Reply
from longpoint.api.http.problems import ProblemBody
from longpoint.lengths import MarkedLength
from longpoint.values import Given, Value, schemas

REF = "#/components/schemas/{name}"


def body_schemas(handlers: list[HTTPRouteHandler]) -> tuple[dict[Any, dict[str, Any]], dict[str, Any]]:
    """A schema for every body that comes in or goes out, and the components they share."""
    types = [
        type_ for handler in handlers for type_ in (taken_by(handler), given_by(handler)) if type_ is not None
    ]
    found, components = schemas([*types, ProblemBody, MarkedLength], REF, PLAIN)
    records = _records([*types, ProblemBody, MarkedLength])
    described = {name: _described(schema, records) for name, schema in components.items()}
    return dict(zip(types, found, strict=False)), described


def _described(schema: dict[str, Any], records: dict[str, type]) -> dict[str, Any]:
    """A schema whose docstring is shared out: a line under "Attributes:" goes before what its property's type says."""
    head, attributes = read_doc(schema.get("description", ""))
    type_: Any = records.get(schema["title"].partition("[")[0], type)
    for base in type_.__mro__:
        attributes = {**read_doc(base.__doc__ or "")[1], **attributes}
    for field in getattr(type_, "__struct_fields__", ()):
        if field in attributes:
            attributes[type_.__struct_encode_fields__[type_.__struct_fields__.index(field)]] = attributes[
                field
            ]
    for name, property_ in schema.get("properties", {}).items():
        for option in property_.get("anyOf", ()):
            if "description" in option:
                property_["description"] = option.pop("description")
        if name in attributes:
            of_its_type = property_.get("description", "")
            property_["description"] = f"{attributes[name]} {of_its_type}".strip()
    if issubclass(type_, Value) and not issubclass(type_, Given):
        # What is only answered is answered whole.
        schema = {**schema, "required": list(schema["properties"])}
        for property_ in schema["properties"].values():
            property_.pop("default", None)
    return {**schema, "description": head} if head else schema


def read_doc(doc: str) -> tuple[str, dict[str, str]]:
    """The head of a docstring, and what it says of each attribute; one line may speak of several."""
    head, _, listed = inspect.cleandoc(doc).partition("Attributes:\n")
    entries = (entry.partition(":") for entry in re.split(r"\n(?=\S)", inspect.cleandoc(listed)))
    said = {
        name.strip(): _sentence(" ".join(text.split()))
        for names, _, text in entries
        if text
        for name in names.split(",")
    }
    return head.strip(), said


def _sentence(text: str) -> str:
    text = text[0].upper() + text[1:]
    return text if text.endswith((".", ":")) else f"{text}."


def _records(types: Iterable[Any]) -> dict[str, type]:
    """Every record that bodies are made of, by the name it has in the document."""
    found: dict[str, type] = {}
    for cls in {one.cls for info in msgspec.inspect.multi_type_info(types) for one in _within(info, set())}:
        record = getattr(cls, "__origin__", cls)
        if found.setdefault(record.__name__, record) is not record:
            raise TypeError(f"two records of the document are called {record.__name__}")
    return found


def _within(info: Any, seen: set[int]) -> Iterator[msgspec.inspect.StructType]:
    if id(info) in seen:
        return
    seen.add(id(info))
    if isinstance(info, msgspec.inspect.StructType):
        yield info
        for field in info.fields:
            yield from _within(field.type, seen)
    elif isinstance(info, msgspec.Struct):
        for inner in msgspec.structs.astuple(info):
            for one in inner if isinstance(inner, tuple) else (inner,):
                yield from _within(one, seen)


def taken_by(handler: HTTPRouteHandler) -> Any:
    """The type of the body an operation takes; None without one."""
    data = handler.parsed_fn_signature.parameters.get("data")
    return data.annotation if data else None


def given_by(handler: HTTPRouteHandler) -> Any:
    """The type of the body an operation answers with; None where it is a file."""
    returned = handler.parsed_fn_signature.return_type.annotation
    if getattr(returned, "__origin__", None) is Reply:
        (returned,) = returned.__args__
    return returned if is_record(returned) else None


def is_record(type_: Any) -> bool:
    """Whether a type is one whose schema comes from msgspec."""
    origin = getattr(type_, "__origin__", type_)
    return isinstance(origin, type) and (issubclass(origin, msgspec.Struct) or origin is list)
