"""The kinds of problem that too much, too fast or too slow can have."""

from longpoint.api.http.problems import Problem


class BodyTooSlow(Problem, status=408, title="The body did not come in time"):
    """The body took longer to come than this service waits. Send it again over a better connection, or less."""


class RateExceeded(Problem, status=429, title="Too many requests"):
    """The key, or the address where no key is shown, made more requests than it may in a time. Retry-After says when to
    go on; the RateLimit fields of every answer say how many are left."""


class Overloaded(Problem, status=503, title="The service has too much to do"):
    """More was asked at once than this service can answer in time, so this request was turned away before any work was
    done for it. Send it again after the time in Retry-After, a little later each time."""


class Stopping(Problem, status=503, title="The service is about to stop"):
    """This one of the services was told to stop and takes its leave; ask again, and another will answer."""
