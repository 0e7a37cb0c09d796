"""The application: resources, problems and the frame around them, put together."""

import gc
import logging
from typing import Any, cast

from litestar import Litestar
from litestar.datastructures import State
from litestar.types import ASGIApp

from longpoint.api.document.docs import PAGES
from longpoint.api.http.access import Access, check_access
from longpoint.api.http.access_log import AccessLog
from longpoint.api.http.answer import Answer
from longpoint.api.http.conditional import NotModified, on_not_modified
from longpoint.api.http.errors import on_failure
from longpoint.api.http.frame import RequestFrame
from longpoint.api.http.gate import Gate
from longpoint.api.http.limits import RateLimit
from longpoint.api.http.origins import Origins
from longpoint.api.http.problems import Problem
from longpoint.api.http.request import ApiRequest
from longpoint.api.routes import OPERATIONS, tell_methods
from longpoint.api.running.threads import planning_busy
from longpoint.api.stored.later import IN_A_JOB, LONG, answer_later, doer_of
from longpoint.api.stored.storage import on_storage_error
from longpoint.jobs.engine import Jobs
from longpoint.jobs.here import JobsHere
from longpoint.jobs.job import Bounds
from longpoint.jobs.planning_pool import PlanningPool
from longpoint.jobs.searches import Searches
from longpoint.schedules.errors import StorageError
from longpoint.schedules.store import Store
from longpoint.server import Notice
from longpoint.settings import Settings
from longpoint.texts import read_catalog


def create_app(settings: Settings | None = None) -> Litestar:
    """Build the application.

    Args:
        settings: How it runs; the defaults when left out.
    """
    settings = settings or Settings()
    log = AccessLog(logging.getLogger("longpoint.access")) if settings.access_log else None
    store = (
        Store(settings.database, connections=settings.database_connections, wait=settings.max_wait_seconds)
        if settings.database
        else None
    )
    rate = RateLimit(settings.rate_limit, settings.rate_seconds) if settings.rate_limit else None
    access = Access(store, rate)
    planning = PlanningPool(settings.planners, settings.planning_queue, planning_busy)
    searches = Searches[Any](Problem)
    closers: list[Any] = [access.close, searches.close, planning.close]
    if store:
        closers.append(store.close)
    if log:
        closers.append(log.flush)
    handlers: dict[Any, Any] = {
        Exception: on_failure,
        StorageError: on_storage_error,
        NotModified: on_not_modified,
    }
    app = Litestar(
        route_handlers=[tell_methods, *OPERATIONS, *PAGES],
        before_request=cast(Any, _before_each),
        exception_handlers=handlers,
        request_class=ApiRequest,
        response_class=Answer,
        request_max_body_size=settings.max_body_bytes,
        openapi_config=None,
        logging_config=None,
        on_shutdown=closers,
        state=State(
            {
                "store": store,
                "access": access,
                "planning": planning,
                "searches": searches,
                "jobs": None,
                "works_elsewhere": settings.jobs == "workers",
                "body_seconds": settings.body_seconds,
                "notice": Notice(settings.notice_seconds),
            }
        ),
    )
    jobs = app.state.jobs = _jobs(app, settings)
    if jobs is not None:
        app.on_startup.append(jobs.start)
        app.on_shutdown.insert(0, jobs.close)
    gate = Gate(app.asgi_handler, settings.max_in_progress, settings.max_wait_seconds)
    inner: ASGIApp = Origins(gate, settings.cors_origins) if settings.cors_origins else gate
    app.asgi_handler = _traced(app, RequestFrame(inner, log, _metered(app, gate, settings)), settings)
    return app


def create_app_from_environment() -> Litestar:
    """Build the application with the settings of LONGPOINT_* variables, in a process that is there to serve it."""
    app = create_app(Settings.from_environment())
    app.on_startup.append(app.state.notice.await_signals)
    read_catalog()  # no request waits for it then
    # An answer makes some hundred small objects and no cycles: what was built at start need never be walked
    # again, and the collector can wait for more than the few hundred objects it waits for by default.
    gc.collect()
    gc.freeze()
    gc.set_threshold(20_000, 20, 20)
    return app


async def _before_each(request: ApiRequest) -> Any:
    """What every request passes before its body is read. No guard: the framework copies the handler for each."""
    in_a_job = IN_A_JOB in request.scope["state"]
    if not in_a_job:
        await check_access(request)
    if isinstance(request, ApiRequest):
        request.negotiate()
        if not in_a_job and request.route_handler.operation_id in LONG:
            return await answer_later(request)
    return None


def _jobs(app: Litestar, settings: Settings) -> Jobs | None:
    """The jobs of a service; None where what one process keeps another would not know of."""
    bounds = Bounds(
        settings.jobs_at_once,
        settings.jobs_per_account,
        settings.jobs_in_all,
        settings.job_result_seconds,
        settings.job_result_bytes,
    )
    work = doer_of(app, app.asgi_handler)
    if settings.jobs == "none":
        return None
    if settings.over_postgresql:
        from longpoint.jobs.queued import JobsQueued

        return JobsQueued(app.state.store, bounds, work if settings.jobs == "here" else None)
    return JobsHere(work, bounds) if settings.workers == 1 else None


def _metered(app: Litestar, gate: Gate, settings: Settings) -> Any:
    if not settings.metrics_port:
        return None
    from longpoint.api.http.metrics import Meter

    meter = Meter(gate, app.state.store, settings.metrics_host, settings.metrics_port)
    app.on_startup.append(meter.start)
    app.on_shutdown.append(meter.stop)
    return meter.note


def _traced(app: Litestar, frame: ASGIApp, settings: Settings) -> ASGIApp:
    if not settings.traces_endpoint:
        return frame
    from opentelemetry.exporter.otlp.proto.http.trace_exporter import OTLPSpanExporter

    from longpoint.api.http.traces import Traced

    traced = Traced(frame, OTLPSpanExporter(endpoint=settings.traces_endpoint))
    app.on_shutdown.append(traced.close)
    return traced
