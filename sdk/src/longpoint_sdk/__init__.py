"""Client of the Longpoint service: a tape's readings in, every piece of window and door trim out.

    from longpoint_sdk import Client, types

    with Client() as client:
        stool = client.compute_stool(types.StoolRequest(jamb_width="34 1/2 in", ...))

`Client` and `AsyncClient` have a method for each operation of the service. `types` holds what they take and give,
`problems` what they raise when the service refuses, `calls` the same operations as values to send.
"""

from longpoint_sdk import calls, problems, types
from longpoint_sdk._async import AsyncClient
from longpoint_sdk._call import Call, Reply
from longpoint_sdk._errors import (
    ConfigError,
    ConnectionFailed,
    Fault,
    LengthError,
    LongpointError,
    NotReached,
    Problem,
    TimedOut,
    UnreadableAnswer,
    VersionConflict,
)
from longpoint_sdk._events import Event, Progress
from longpoint_sdk._length import Length
from longpoint_sdk._length_text import Unit
from longpoint_sdk._pages import AsyncPages, Pages
from longpoint_sdk._retry import Retry
from longpoint_sdk._sync import Client
from longpoint_sdk._version import __version__
from longpoint_sdk._versioned import Versioned

__all__ = [
    "AsyncClient",
    "AsyncPages",
    "Call",
    "Client",
    "ConfigError",
    "ConnectionFailed",
    "Event",
    "Fault",
    "Length",
    "LengthError",
    "LongpointError",
    "NotReached",
    "Pages",
    "Problem",
    "Progress",
    "Reply",
    "Retry",
    "TimedOut",
    "Unit",
    "UnreadableAnswer",
    "VersionConflict",
    "Versioned",
    "__version__",
    "calls",
    "problems",
    "types",
]
