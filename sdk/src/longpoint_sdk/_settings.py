"""Where the service is and how it is called: from arguments, or from the environment."""

from __future__ import annotations

import logging
import os
import re
from types import EllipsisType
from urllib.parse import urlsplit

import msgspec

from longpoint_sdk._errors import ConfigError
from longpoint_sdk._retry import Retry

URL_VARIABLE = "LONGPOINT_URL"
KEY_VARIABLE = "LONGPOINT_API_KEY"
DEFAULT_URL = "http://127.0.0.1:8000"
"""Where the service listens when nothing else is said."""

_log = logging.getLogger("longpoint_sdk")
_KEY = re.compile(r"[\x21-\x7e]+")
_THIS_MACHINE = ("127.0.0.1", "::1", "localhost")


class Key:
    """An API key that does not show itself in a repr, a log line or a traceback."""

    __slots__ = ("_text",)

    def __init__(self, text: str) -> None:
        if not _KEY.fullmatch(text):
            raise ConfigError("The API key has a space or a character that no key has; was it copied whole?")
        self._text = text

    def reveal(self) -> str:
        """The key itself."""
        return self._text

    def __repr__(self) -> str:
        return "Key(...)"


class Settings(msgspec.Struct, frozen=True):
    """What every call of a client has in common.

    Attributes:
        url: The service's address, without a slash at its end.
        key: The API key.
        timeout: Seconds to wait; None waits for ever.
        retry: How what is safe to repeat is repeated.
    """

    url: str
    key: Key | None
    timeout: float | None
    retry: Retry

    @classmethod
    def find(
        cls, url: str | None, api_key: str | None, timeout: float | None, retry: Retry | None
    ) -> Settings:
        """The settings given, with the environment's or the defaults for what was not.

        Raises:
            ConfigError: for an address or a key that cannot be one.
        """
        found = _checked_url(url or os.environ.get(URL_VARIABLE) or DEFAULT_URL)
        text = api_key or os.environ.get(KEY_VARIABLE)
        key = Key(text) if text else None
        parts = urlsplit(found)
        if key and parts.scheme == "http" and parts.hostname not in _THIS_MACHINE:
            _log.warning("The API key goes to %s unencrypted: use https.", parts.hostname)
        return cls(found, key, timeout, retry or Retry())

    def changed(self, timeout: float | EllipsisType | None, retry: Retry | None) -> Settings:
        """The same, but for what is given."""
        return Settings(
            self.url,
            self.key,
            self.timeout if isinstance(timeout, EllipsisType) else timeout,
            retry or self.retry,
        )


def _checked_url(url: str) -> str:
    try:
        parts = urlsplit(url.strip())
        host = parts.hostname if parts.port is None or parts.port else None
    except ValueError:
        host = None
    if not host or parts.scheme not in ("http", "https"):
        raise ConfigError(f"The service's address must be like {DEFAULT_URL} or https://its.name.")
    if parts.username is not None or parts.password is not None:
        raise ConfigError("The service's address must hold no user or password: give a key as api_key.")
    if parts.query or parts.fragment:
        raise ConfigError("The service's address must end with its path, without ? or #.")
    return url.strip().rstrip("/")
