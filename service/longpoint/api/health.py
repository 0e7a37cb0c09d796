"""Whether the service lives, and whether it is ready for work."""

from typing import Literal

from litestar import get

from longpoint.api.operation import operation
from longpoint.api.wire import WireOut


class Health(WireOut):
    """How the service is.

    Attributes:
        status: "ok"; a service that is not answers with a problem instead.
    """

    status: Literal["ok"] = "ok"


@get("/health/live", **operation("check_live", summary="Is the process alive?", tag="Health"))
async def check_live() -> Health:
    """Answers as long as the process runs. Restart it when this does not answer."""
    return Health()


@get("/health/ready", **operation("check_ready", summary="Is the service ready for work?", tag="Health"))
async def check_ready() -> Health:
    """Answers once the service can do its work. Send it requests only then."""
    return Health()
