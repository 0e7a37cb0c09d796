"""All that knows httpx: requests out, answers in, its failures turned into this SDK's."""

from __future__ import annotations

import platform
from collections.abc import Generator, Iterator
from contextlib import contextmanager
from typing import Any

import httpx

from longpoint_sdk._errors import ConfigError, ConnectionFailed, NotReached, TimedOut
from longpoint_sdk._exchange import Answer, Send
from longpoint_sdk._settings import Key, Settings
from longpoint_sdk._version import __version__

USER_AGENT = f"longpoint-sdk/{__version__} python/{platform.python_version()} httpx/{httpx.__version__}"


class Wire:
    """Sends steps through a `httpx.Client`: one that was passed in, which stays its owner's, or one of its own."""

    def __init__(
        self,
        settings: Settings,
        client: httpx.Client | None,
        *,
        proxy: str | None,
        transport: httpx.BaseTransport | None,
    ) -> None:
        _check(client, proxy, transport)
        self._settings = settings
        self._owned = client is None
        self._client = client or _make(httpx.Client, proxy, transport)

    def send(self, step: Send, timeout: float | None) -> Answer:
        """Send one request and read its answer whole."""
        with _failures(step):
            response = self._client.request(**_arguments(self._settings, step, timeout))
        return Answer(response.status_code, response.headers, response.content)

    def close(self) -> None:
        """Close the connections, unless they are someone else's."""
        if self._owned:
            self._client.close()


class AsyncWire:
    """The twin of `Wire`, through a `httpx.AsyncClient`."""

    def __init__(
        self,
        settings: Settings,
        client: httpx.AsyncClient | None,
        *,
        proxy: str | None,
        transport: httpx.AsyncBaseTransport | None,
    ) -> None:
        _check(client, proxy, transport)
        self._settings = settings
        self._owned = client is None
        self._client = client or _make(httpx.AsyncClient, proxy, transport)

    async def send(self, step: Send, timeout: float | None) -> Answer:
        """Send one request and read its answer whole."""
        with _failures(step):
            response = await self._client.request(**_arguments(self._settings, step, timeout))
        return Answer(response.status_code, response.headers, response.content)

    async def close(self) -> None:
        """Close the connections, unless they are someone else's."""
        if self._owned:
            await self._client.aclose()


def _make(kind: Any, proxy: str | None, transport: Any) -> Any:
    try:
        return kind(proxy=proxy, transport=transport)
    except (ValueError, httpx.InvalidURL) as fault:
        raise ConfigError(f"The proxy cannot be used: {fault}") from fault


def _check(client: object, proxy: object, transport: object) -> None:
    if client is not None and (proxy is not None or transport is not None):
        raise ConfigError("A http_client brings its own proxy and transport: set them there.")


def _arguments(settings: Settings, step: Send, timeout: float | None) -> dict[str, Any]:
    return {
        "method": step.method,
        "url": settings.url + step.path,
        "params": step.query or None,
        "headers": {"User-Agent": USER_AGENT, **step.headers},
        "content": step.content,
        "timeout": timeout,
        "auth": _Bearer(settings.key) if settings.key else httpx.USE_CLIENT_DEFAULT,
        "follow_redirects": False,  # the key is for this service alone
    }


class _Bearer(httpx.Auth):
    """Adds the key at the last moment, so that it stands in no local variable that a traceback may show."""

    def __init__(self, key: Key) -> None:
        self._key = key

    def auth_flow(self, request: httpx.Request) -> Generator[httpx.Request, httpx.Response, None]:
        request.headers["Authorization"] = f"Bearer {self._key.reveal()}"
        yield request


@contextmanager
def _failures(step: Send) -> Iterator[None]:
    said = f"{step.method} {step.path}"
    try:
        yield
    except (httpx.ConnectError, httpx.ConnectTimeout, httpx.PoolTimeout) as failure:
        raise NotReached(f"{said} could not be sent: {failure or type(failure).__name__}") from failure
    except httpx.TimeoutException as failure:
        raise TimedOut(f"{said} had no answer in time ({type(failure).__name__})") from failure
    except httpx.TransportError as failure:
        raise ConnectionFailed(f"{said} had no answer: {failure or type(failure).__name__}") from failure
