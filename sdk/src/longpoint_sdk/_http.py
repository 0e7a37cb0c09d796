"""All that knows httpx: requests out, answers in, its failures turned into this SDK's."""

from __future__ import annotations

import platform
from collections.abc import AsyncIterator, Generator, Iterator
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
        self._url = settings.url
        self._how = _how(settings.key)
        self._owned = client is None
        self._client = client or _make(httpx.Client, proxy, transport)

    def send(self, step: Send, timeout: float | None) -> Answer:
        """Send one request and read its answer whole."""
        with _failures(self._url, step):
            response = self._client.send(_request(self._client, self._url, step, timeout), **self._how)
        return Answer(response.status_code, response.headers, response.content)

    def open(self, step: Send, timeout: float | None) -> tuple[Answer, httpx.Response]:
        """Send one request; the body of a good answer is left to be read as it comes."""
        with _failures(self._url, step):
            request = _request(self._client, self._url, step, timeout)
            response = self._client.send(request, stream=True, **self._how)
            content = b"" if response.is_success else response.read()
        return Answer(response.status_code, response.headers, content), response

    def chunks(self, step: Send, response: httpx.Response) -> Iterator[bytes]:
        """The body of an answer as it comes."""
        with _failures(self._url, step):
            try:
                yield from response.iter_bytes()
            finally:
                response.close()

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
        self._url = settings.url
        self._how = _how(settings.key)
        self._owned = client is None
        self._client = client or _make(httpx.AsyncClient, proxy, transport)

    async def send(self, step: Send, timeout: float | None) -> Answer:
        """Send one request and read its answer whole."""
        with _failures(self._url, step):
            request = _request(self._client, self._url, step, timeout)
            response = await self._client.send(request, **self._how)
        return Answer(response.status_code, response.headers, response.content)

    async def open(self, step: Send, timeout: float | None) -> tuple[Answer, httpx.Response]:
        """Send one request; the body of a good answer is left to be read as it comes."""
        with _failures(self._url, step):
            request = _request(self._client, self._url, step, timeout)
            response = await self._client.send(request, stream=True, **self._how)
            content = b"" if response.is_success else await response.aread()
        return Answer(response.status_code, response.headers, content), response

    async def chunks(self, step: Send, response: httpx.Response) -> AsyncIterator[bytes]:
        """The body of an answer as it comes."""
        with _failures(self._url, step):
            try:
                async for chunk in response.aiter_bytes():
                    yield chunk
            finally:
                await response.aclose()

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


def _how(key: Key | None) -> dict[str, Any]:
    """How every request is sent. A redirect is not followed: the key is for this service alone."""
    return {"auth": _Bearer(key) if key else httpx.USE_CLIENT_DEFAULT, "follow_redirects": False}


class _Bearer(httpx.Auth):
    """Adds the key at the last moment, so that it stands in no local variable that a traceback may show."""

    def __init__(self, key: Key) -> None:
        self._key = key

    def auth_flow(self, request: httpx.Request) -> Generator[httpx.Request, httpx.Response, None]:
        request.headers["Authorization"] = f"Bearer {self._key.reveal()}"
        yield request


def _request(
    client: httpx.Client | httpx.AsyncClient, url: str, step: Send, timeout: float | None
) -> httpx.Request:
    return client.build_request(
        step.method,
        url + step.path,
        params=step.query or None,
        headers={"User-Agent": USER_AGENT, **step.headers},
        content=step.content,
        timeout=timeout,
    )


@contextmanager
def _failures(url: str, step: Send) -> Iterator[None]:
    said = f"{step.method} {url}{step.path}"
    try:
        yield
    except (httpx.ConnectError, httpx.ConnectTimeout, httpx.PoolTimeout) as failure:
        raise NotReached(f"{said} could not be sent: {failure or type(failure).__name__}") from failure
    except httpx.TimeoutException as failure:
        raise TimedOut(f"{said} had no answer in time ({type(failure).__name__})") from failure
    except httpx.TransportError as failure:
        raise ConnectionFailed(f"{said} had no answer: {failure or type(failure).__name__}") from failure
