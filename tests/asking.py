"""Asks the real application in this process, without a socket: the whole frame, any body, any answer."""

import asyncio
from types import TracebackType
from typing import Any, Self

import httpx

from longpoint.app import create_app
from longpoint.settings import Settings


class Service:
    """The application and one event loop for it. Use as a context manager."""

    def __enter__(self) -> Self:
        self._loop = asyncio.new_event_loop()
        app: Any = create_app(Settings(access_log=False))
        self._client = httpx.AsyncClient(
            transport=httpx.ASGITransport(app=app, raise_app_exceptions=False), base_url="http://longpoint"
        )
        return self

    def __exit__(
        self, kind: type[BaseException] | None, error: BaseException | None, trace: TracebackType | None
    ) -> None:
        self._loop.run_until_complete(self._client.aclose())
        self._loop.close()

    def post(self, path: str, body: Any, accept: str = "*/*") -> httpx.Response:
        """Send a body as JSON; bytes go as they are."""
        headers = {"accept": accept}
        if isinstance(body, bytes):
            headers["content-type"] = "application/json"
            sent = self._client.post(path, content=body, headers=headers)
        else:
            sent = self._client.post(path, json=body, headers=headers)
        return self._loop.run_until_complete(sent)

    def get(self, path: str) -> httpx.Response:
        return self._loop.run_until_complete(self._client.get(path))

    def opening(self, body: dict[str, Any]) -> dict[str, Any]:
        """All pieces of one opening, which must be answered."""
        response = self.post("/v1/opening", body)
        assert response.status_code == 200, response.text
        answer: dict[str, Any] = response.json()
        return answer
