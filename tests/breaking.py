"""What in a new OpenAPI document would break a caller written by an old one.

    python tests/breaking.py openapi/released/0.1.0.json openapi/longpoint.json

What comes in may only be asked for more loosely, what goes out only be promised more tightly. Fields may be added to
answers, values to an answer's enumerations and statuses to refusals: callers are told to bear that.
"""

import json
import sys
from collections.abc import Iterator
from pathlib import Path
from typing import Any, NamedTuple

_LEAST = ("minLength", "minItems", "minimum", "exclusiveMinimum", "minProperties")
_MOST = ("maxLength", "maxItems", "maximum", "exclusiveMaximum", "maxProperties")
_SAME = ("pattern", "format", "multipleOf", "const")
_SUBSCHEMAS = ("items", "additionalProperties")


def breaking(old: dict[str, Any], new: dict[str, Any]) -> list[str]:
    """Every breaking change, in words."""
    return sorted(set(_Comparison(old, new).run()))


class _Side(NamedTuple):
    """Which way a schema goes: what comes in must not be narrowed, what goes out must not be widened."""

    comes_in: bool


_IN, _OUT = _Side(True), _Side(False)


class _Comparison:
    def __init__(self, old: dict[str, Any], new: dict[str, Any]) -> None:
        self._old, self._new = old, new
        self._seen: set[tuple[str, str, _Side]] = set()

    def run(self) -> Iterator[str]:
        for path, methods in self._old["paths"].items():
            for method, before in methods.items():
                name = before["operationId"]
                after = self._new["paths"].get(path, {}).get(method)
                if after is None:
                    yield f"{name}: {method.upper()} {path} is gone"
                    continue
                if after["operationId"] != name:
                    yield f"{name}: is called {after['operationId']} now, and so is the client's method"
                yield from self._parameters(name, before, after)
                yield from self._security(name, before, after)
                yield from self._body(name, before.get("requestBody"), after.get("requestBody"))
                yield from self._answers(name, before["responses"], after["responses"])

    def _parameters(self, name: str, before: Any, after: Any) -> Iterator[str]:
        was = {(one["in"], one["name"]): one for one in before.get("parameters", [])}
        now = {(one["in"], one["name"]): one for one in after.get("parameters", [])}
        for key, one in now.items():
            if one.get("required") and not was.get(key, {}).get("required"):
                yield f"{name}: the {key[0]} parameter {key[1]} is needed now"
        for key, one in was.items():
            if key not in now:
                yield f"{name}: the {key[0]} parameter {key[1]} is gone"
            else:
                place = f"{name}: the {key[0]} parameter {key[1]}"
                yield from self._schema(place, one["schema"], now[key]["schema"], _IN)

    def _security(self, name: str, before: Any, after: Any) -> Iterator[str]:
        if before["security"] != after["security"] and after["security"]:
            yield f"{name}: needs {after['security']} instead of {before['security']}"

    def _body(self, name: str, before: Any, after: Any) -> Iterator[str]:
        if after and after.get("required") and not before:
            yield f"{name}: takes a body now"
        if before and not after:
            yield f"{name}: takes no body any more"
        if before and after:
            yield from self._content(f"{name}: the body", before["content"], after["content"], _IN)

    def _answers(self, name: str, before: Any, after: Any) -> Iterator[str]:
        for status, answer in before.items():
            if status >= "4":
                continue
            if status not in after:
                yield f"{name}: does not answer {status} any more"
                continue
            for header in answer.get("headers", {}):
                if header not in after[status].get("headers", {}):
                    yield f"{name}: the field {header} of {status} is gone"
            place = f"{name}: the answer"
            yield from self._content(place, answer.get("content", {}), after[status].get("content", {}), _OUT)

    def _content(self, place: str, before: Any, after: Any, side: _Side) -> Iterator[str]:
        for media_type, content in before.items():
            if media_type not in after:
                yield f"{place} cannot be {media_type} any more"
            elif "schema" in content and "schema" in after[media_type]:
                yield from self._schema(place, content["schema"], after[media_type]["schema"], side)

    def _schema(self, place: str, before: Any, after: Any, side: _Side) -> Iterator[str]:
        refs = before.get("$ref", ""), after.get("$ref", "")
        if all(refs):
            if (*refs, side) in self._seen:
                return
            self._seen.add((*refs, side))
            place = f"{place}, {refs[0].rpartition('/')[2]}"
        before, after = _resolved(self._old, before), _resolved(self._new, after)
        yield from self._types(place, before, after, side)
        yield from _limits(place, before, after, side)
        yield from self._properties(place, before, after, side)
        for word in _SUBSCHEMAS:
            inner, outer = before.get(word), after.get(word)
            if isinstance(inner, dict) and isinstance(outer, dict):
                yield from self._schema(f"{place}, {word}", inner, outer, side)
        if (
            side.comes_in
            and after.get("additionalProperties") is False
            and "additionalProperties" not in before
        ):
            yield f"{place} refuses fields it does not know now"

    def _types(self, place: str, before: Any, after: Any, side: _Side) -> Iterator[str]:
        was, now = self._options(self._old, before), self._options(self._new, after)
        lost, found = was.keys() - now.keys(), now.keys() - was.keys()
        if "any" in now and side.comes_in:
            lost = set()
        if side.comes_in and lost and "any" not in was:
            yield f"{place} cannot be {', '.join(sorted(lost))} any more"
        if not side.comes_in and found and "any" not in was:
            yield f"{place} can be {', '.join(sorted(found))} now"
        if len(was) > 1 or len(now) > 1:
            for kind in was.keys() & now.keys():
                yield from self._schema(place, was[kind], now[kind], side)
        values, valued = before.get("enum"), after.get("enum")
        if (
            side.comes_in
            and valued is not None
            and (values is None or set(map(str, values)) - set(map(str, valued)))
        ):
            yield f"{place} takes fewer values"
        if not side.comes_in and values is not None and valued is None:
            yield f"{place} can be any value now"

    def _options(self, document: dict[str, Any], schema: Any) -> dict[str, Any]:
        """The kinds of value a schema allows, each with the schema for it."""
        found: dict[str, Any] = {}
        for option in schema.get("anyOf") or schema.get("oneOf") or [schema]:
            if "$ref" in option and option is not schema:
                inner = _resolved(document, option)
                tag = next(
                    (
                        value["const"] if "const" in value else "/".join(map(str, value["enum"]))
                        for value in inner.get("properties", {}).values()
                        if "const" in value or len(value.get("enum", ())) == 1
                    ),
                    "",
                )
                found[f"{inner.get('type', 'any')} {tag}".strip()] = option
                continue
            kinds = option.get("type", "any")
            for kind in kinds if isinstance(kinds, list) else [kinds]:
                found[kind] = option
        return found

    def _properties(self, place: str, before: Any, after: Any, side: _Side) -> Iterator[str]:
        was, now = before.get("properties", {}), after.get("properties", {})
        if not was and not now:
            return
        for field in now:
            if (
                side.comes_in
                and field in after.get("required", ())
                and field not in before.get("required", ())
            ):
                yield f"{place}: {field} is needed now"
        for field, inner in was.items():
            if field not in now:
                yield f"{place}: {field} is gone"
                continue
            if (
                not side.comes_in
                and field in before.get("required", ())
                and field not in after.get("required", ())
            ):
                yield f"{place}: {field} may be missing now"
            yield from self._schema(f"{place}: {field}", inner, now[field], side)


def _limits(place: str, before: Any, after: Any, side: _Side) -> Iterator[str]:
    for words, narrower in ((_LEAST, max), (_MOST, min)):
        for word in words:
            was, now = before.get(word), after.get(word)
            if was == now:
                continue
            narrowed = now is not None and (was is None or narrower(was, now) == now)
            if narrowed is side.comes_in and before.get("type") == after.get("type"):
                yield f"{place}: {word} was {was} and is {now}"
    for word in _SAME:
        was, now = before.get(word), after.get(word)
        loosened = now is None if side.comes_in else was is None
        if was != now and not loosened and before.get("type") == after.get("type"):
            yield f"{place}: {word} was {was!r} and is {now!r}"


def _resolved(document: dict[str, Any], schema: Any) -> Any:
    while "$ref" in schema:
        target: Any = document
        for step in schema["$ref"].removeprefix("#/").split("/"):
            target = target[step]
        schema = target
    return schema


def main() -> int:
    """Compare two files; status 1 when something breaks."""
    old, new = (json.loads(Path(name).read_text(encoding="utf-8")) for name in sys.argv[1:3])
    found = breaking(old, new)
    print("\n".join(found) or "Nothing breaks.")
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main())
