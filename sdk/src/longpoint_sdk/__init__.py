"""Client of the Longpoint service: a tape's readings in, every piece of window and door trim out.

    from longpoint_sdk import Client, types

    with Client() as client:
        request = types.ApronRequest(
            jamb_width="30 5/8 in", reveal="3/16 in", casing_width="2 1/2 in", thickness="5/8 in"
        )
        for piece in client.compute_apron(request).pieces:
            print(piece.key, piece.overall)

`Client` and `AsyncClient` have a method for each operation of the service. `types` holds what they take and give,
`problems` what they raise when the service refuses, `calls` the same operations as values to send. Lengths go in as
text with a unit or as a `Length`, and come back as lengths to reckon with; money is a `Decimal`; what is stored comes
as a `Versioned`. All that is raised about a call is a `LongpointError`.
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
from longpoint_sdk._job import AsyncJob, Job
from longpoint_sdk._length import Length
from longpoint_sdk._length_text import Unit
from longpoint_sdk._pages import AsyncPages, Pages
from longpoint_sdk._retry import Retry
from longpoint_sdk._sync import Client
from longpoint_sdk._version import __version__
from longpoint_sdk._versioned import Versioned

__all__ = [
    "AsyncClient",
    "AsyncJob",
    "AsyncPages",
    "Call",
    "Client",
    "ConfigError",
    "ConnectionFailed",
    "Event",
    "Fault",
    "Job",
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
