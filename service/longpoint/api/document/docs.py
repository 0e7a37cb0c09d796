"""Pages for people: the API's reference, a page for each kind of problem, and the OpenAPI document behind them.

Nothing on a page is fetched from anywhere but this service.
"""

from errno import ENAMETOOLONG
from functools import lru_cache
from html import escape
from pathlib import Path
from typing import Any

from litestar import Request, Response, get
from litestar.datastructures import CacheControlHeader
from litestar.exceptions import InternalServerException
from litestar.params import FromPath
from litestar.response import Redirect
from litestar.static_files import create_static_files_router

from longpoint.api.document.openapi import document_bytes
from longpoint.api.document.reference import reference
from longpoint.api.http.errors import on_failure
from longpoint.api.http.problems import NotFound, Problem
from longpoint.texts import say

ASSETS = "/docs/assets"
_PAGES = Path(__file__).parent / "pages"

_FROM_HERE_ALONE = {
    "content-security-policy": (
        "default-src 'none'; script-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data:; "
        "connect-src 'self'; font-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'"
    )
}


def _page(html: str) -> Response[str]:
    return Response(html, media_type="text/html", headers=_FROM_HERE_ALONE)


@get("/", include_in_schema=False, status_code=302)
async def show_front() -> Redirect:
    """Leads a person who opens the bare address to the reference."""
    return Redirect("/docs", status_code=302)


@get("/openapi.json", include_in_schema=False, sync_to_thread=True)
def show_document() -> Response[bytes]:
    """The OpenAPI 3.1 document."""
    return Response(_document(), media_type="application/json", headers={"cache-control": "no-cache"})


@lru_cache(maxsize=1)
def _document() -> bytes:
    return document_bytes()


@get("/docs", include_in_schema=False, sync_to_thread=True)
def show_docs() -> Response[str]:
    """The reference, to read and to try."""
    return _page(reference())


@get("/problems", include_in_schema=False)
async def show_problems() -> Response[str]:
    """Every kind of problem."""
    rows = "".join(
        f'<tr><td>{kind.status}</td><td><a href="{kind.type_uri()}">{escape(slug)}</a></td>'
        f"<td>{escape(kind.title)}</td></tr>"
        for slug, kind in sorted(Problem.kinds.items(), key=lambda entry: (entry[1].status, entry[0]))
    )
    table = f"<table><tr><th>Status</th><th>Kind</th><th>What it says</th></tr>{rows}</table>"
    return _page(_fill("problem.html", title="Problems", body=f"<p>{_ABOUT}</p>{table}"))


@get("/problems/{slug:str}", include_in_schema=False)
async def show_problem(slug: FromPath[str]) -> Response[str]:
    """What one kind of problem means and what to do about it."""
    kind = Problem.kinds.get(slug)
    if kind is None:
        raise NotFound(say("problem", "docs.no-such-problem"))
    body = (
        f"<p>Status {kind.status}. The <code>type</code> of the problem is <code>{kind.type_uri()}</code>.</p>"
        f'<p>{escape(kind.advice)}</p><p>{_ABOUT} <a href="/problems">All kinds of problem</a>.</p>'
    )
    return _page(_fill("problem.html", title=escape(kind.title), body=body))


_ABOUT = (
    "A refused request is answered with a problem document (RFC 9457, application/problem+json): its kind, what "
    "happened, and in <code>errors</code> everything that was wrong, each with a JSON pointer to the field."
)


@lru_cache(maxsize=8)
def _file(name: str) -> str:
    return (_PAGES / name).read_text(encoding="utf-8")


def _fill(name: str, **values: str) -> str:
    page = _file(name)
    for key, value in values.items():
        page = page.replace(f"{{{{{key}}}}}", value)
    return page


def _no_such_name(request: Request[Any, Any, Any], error: Exception) -> Response[bytes]:
    """A name that no file can have, too long or with a NUL in it, is looked for all the same."""
    if isinstance(error, ValueError) or getattr(error.__cause__, "errno", None) == ENAMETOOLONG:
        return on_failure(request, NotFound(say("problem", "docs.no-such-file")))
    return on_failure(request, error)


assets = create_static_files_router(
    ASSETS,
    [_PAGES / "assets"],
    name="assets",
    cache_control=CacheControlHeader(public=True, max_age=3600),
    exception_handlers={ValueError: _no_such_name, InternalServerException: _no_such_name},
)

PAGES: list[Any] = [show_front, show_document, show_docs, show_problems, show_problem, assets]
"""Everything here; none of it is part of the API."""
