"""Every operation of the API, found in the modules of its resources."""

import pkgutil
from collections.abc import Iterator
from importlib import import_module

from litestar import Response
from litestar.handlers import HTTPRouteHandler

from longpoint.api import computed, stored


def _found() -> Iterator[HTTPRouteHandler]:
    for room in (computed, stored):
        for module in pkgutil.iter_modules(room.__path__, f"{room.__name__}."):
            for value in vars(import_module(module.name)).values():
                if isinstance(value, HTTPRouteHandler):
                    yield value


def _options() -> list[HTTPRouteHandler]:
    """OPTIONS for each address: the framework's own answer knows only the first method registered for it."""
    methods: dict[str, set[str]] = {}
    for handler in OPERATIONS:
        for path in handler.paths:
            methods.setdefault(path, {"OPTIONS"}).update(handler.http_methods)
    return [_options_of(path, ", ".join(sorted(known))) for path, known in methods.items()]


def _options_of(path: str, allow: str) -> HTTPRouteHandler:
    async def tell_methods() -> Response[None]:
        return Response(None, status_code=204, headers={"allow": allow})

    return HTTPRouteHandler(path, http_method=["OPTIONS"], status_code=204, include_in_schema=False)(
        tell_methods
    )


OPERATIONS = list(_found())
"""What the OpenAPI document describes."""
OPTIONS = _options()
"""What tells which methods an address has; no part of the document."""
