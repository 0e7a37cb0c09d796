"""The application: resources, problems and the frame around them, put together."""

import gc
import logging
from typing import Any

from litestar import Litestar
from litestar.datastructures import State

from longpoint.api.access import Access, check_access
from longpoint.api.access_log import AccessLog
from longpoint.api.answer import Answer
from longpoint.api.conditional import NotModified, on_not_modified
from longpoint.api.docs import PAGES
from longpoint.api.errors import HANDLERS
from longpoint.api.frame import Frame
from longpoint.api.request import ApiRequest, negotiate
from longpoint.api.routes import OPERATIONS
from longpoint.api.storage import on_storage_error
from longpoint.schedules.errors import StorageError
from longpoint.schedules.store import Store
from longpoint.settings import Settings


def create_app(settings: Settings | None = None) -> Litestar:
    """Build the application.

    Args:
        settings: How it runs; the defaults when left out.
    """
    settings = settings or Settings()
    log = AccessLog(logging.getLogger("longpoint.access")) if settings.access_log else None
    store = Store(settings.database) if settings.database else None
    access = Access(store)
    closers: list[Any] = [access.close]
    if store:
        closers.append(store.close)
    if log:
        closers.append(log.flush)
    app = Litestar(
        route_handlers=[*OPERATIONS, *PAGES],
        guards=[check_access],
        before_request=negotiate,
        exception_handlers={**HANDLERS, StorageError: on_storage_error, NotModified: on_not_modified},
        request_class=ApiRequest,
        response_class=Answer,
        request_max_body_size=settings.max_body_bytes,
        openapi_config=None,
        logging_config=None,
        on_shutdown=closers,
        state=State({"store": store, "access": access}),
    )
    app.asgi_handler = Frame(app.asgi_handler, log)
    return app


def create_app_from_environment() -> Litestar:
    """Build the application with the settings of LONGPOINT_* variables, in a process that is there to serve it."""
    app = create_app(Settings.from_environment())
    # An answer makes some hundred small objects and no cycles: what was built at start need never be walked
    # again, and the collector can wait for more than the few hundred objects it waits for by default.
    gc.collect()
    gc.freeze()
    gc.set_threshold(20_000, 20, 20)
    return app
