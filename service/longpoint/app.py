"""The application: resources, problems and the frame around them, put together."""

import logging

from litestar import Litestar

from longpoint.api.access_log import AccessLog
from longpoint.api.answer import Answer
from longpoint.api.docs import PAGES
from longpoint.api.errors import HANDLERS
from longpoint.api.frame import Frame
from longpoint.api.request import ApiRequest, negotiate
from longpoint.api.routes import OPERATIONS
from longpoint.settings import Settings


def create_app(settings: Settings | None = None) -> Litestar:
    """Build the application.

    Args:
        settings: How it runs; the defaults when left out.
    """
    settings = settings or Settings()
    log = AccessLog(logging.getLogger("longpoint.access")) if settings.access_log else None
    app = Litestar(
        route_handlers=[*OPERATIONS, *PAGES],
        before_request=negotiate,
        exception_handlers=HANDLERS,
        request_class=ApiRequest,
        response_class=Answer,
        request_max_body_size=settings.max_body_bytes,
        openapi_config=None,
        logging_config=None,
        on_shutdown=[log.flush] if log else [],
    )
    app.asgi_handler = Frame(app.asgi_handler, log)
    return app


def create_app_from_environment() -> Litestar:
    """Build the application with the settings of LONGPOINT_* variables."""
    return create_app(Settings.from_environment())
