"""Every operation of the API, found in the modules of its resources."""

import pkgutil
from collections.abc import Iterator
from importlib import import_module

from litestar import Response, route
from litestar.handlers import HTTPRouteHandler

from longpoint.api import computed, stored
from longpoint.api.http.request import AnyRequest


def _found() -> Iterator[HTTPRouteHandler]:
    for room in (computed, stored):
        for module in pkgutil.iter_modules(room.__path__, f"{room.__name__}."):
            for value in vars(import_module(module.name)).values():
                if isinstance(value, HTTPRouteHandler):
                    yield value


OPERATIONS = list(_found())
"""What the OpenAPI document describes."""


@route(
    sorted({path for handler in OPERATIONS for path in handler.paths}),
    http_method=["OPTIONS"],
    status_code=204,
    include_in_schema=False,
)
async def tell_methods(request: AnyRequest) -> Response[None]:
    """Name all methods of an address: the framework's own answer knows only the first registered for it."""
    path = request.scope["path_template"]
    methods = next(each.methods for each in request.app.routes if each.path_format == path)
    return Response(None, status_code=204, headers={"allow": ", ".join(sorted(methods))})
