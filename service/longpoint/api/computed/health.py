"""Whether the service lives, and whether it is ready for work."""

from typing import Any, Literal

from litestar import Request, get

from longpoint.api.http.operation import operation
from longpoint.api.http.problems import Stopping
from longpoint.api.http.problems_stored import StorageUnavailable
from longpoint.schedules.errors import WrongDatabase
from longpoint.schedules.store import Store
from longpoint.texts import say
from longpoint.values import Value


class Health(Value, frozen=True):
    """It says whether the service can answer.

    Attributes:
        status: "ok"; a service that is not answers with a problem instead.
    """

    status: Literal["ok"] = "ok"


@get("/health/live", **operation("check_live", summary="Is the process alive?", tag="Health", access="open"))
async def check_live() -> Health:
    """Answers as long as the process runs. Restart it when this does not answer."""
    return Health()


@get(
    "/health/ready",
    **operation(
        "check_ready", summary="Is the service ready for work?", tag="Health", access="open", problems=(503,)
    ),
)
async def check_ready(request: Request[Any, Any, Any]) -> Health:
    """Answers once the service can do its work: its database, if it has one, is there and of the right revision.

    Once the service was asked to stop it is not ready any more, though it still answers for a while.
    """
    if request.app.state.notice.given:
        raise Stopping(say("problem", "service.stopping"), headers={"retry-after": "1"})
    store: Store | None = request.app.state.store
    if store is not None:
        try:
            await store.refuse_wrong_schema(next_too=True)
        except WrongDatabase as refusal:
            raise StorageUnavailable(
                say("problem", "database.wrong", why=str(refusal)), headers={"retry-after": "5"}
            ) from refusal
    return Health()
