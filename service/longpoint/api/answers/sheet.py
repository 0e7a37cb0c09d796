"""Sheets and drawings as answers: a file in the format negotiated, with its name, or the contents as data."""

from __future__ import annotations

import logging
import re
import unicodedata
from typing import Any

from litestar import Request

from longpoint.api.http.answer import File, Reply
from longpoint.api.http.negotiate import BOTH, CSV, HTML, JSON, PDF, SVG
from longpoint.api.http.problems import InvalidRequest
from longpoint.sheets import (
    MOST_PRINTED,
    RECIPES,
    Document,
    Sheet,
    UnsetError,
    Wording,
    contents,
    csv_text,
    html,
    pdf,
)
from longpoint.shop.build import CutList
from longpoint.texts import say
from longpoint.values import Fault

SHEET_OFFERS = (*BOTH, HTML, PDF, CSV)
FILE_HEADERS = {"Content-Disposition": "The file's name, where the answer is a file."}
PAGE_POLICY = (
    "default-src 'none'; style-src 'unsafe-inline'; img-src data:; base-uri 'none'; form-action 'none'; "
    "frame-ancestors 'none'"
)
_ENDINGS = {HTML: "html", PDF: "pdf", CSV: "csv", SVG: "svg"}
_log = logging.getLogger(__name__)


def wanted_by(request: Request[Any, Any, Any]) -> str:
    """The media type an answer was negotiated in."""
    wanted: str = getattr(request, "wanted", JSON)
    return wanted


def check_printed(cut_list: CutList, sheet: Sheet, wanted: str) -> None:
    """Refuse a sheet of more pieces than are printed together; as data and as CSV they may all be had.

    Raises:
        InvalidRequest: saying how many there are.
    """
    count = RECIPES[sheet].pieces
    if count is not None and wanted in (HTML, PDF, SVG) and (pieces := count(cut_list)) > MOST_PRINTED:
        detail = say("problem", "sheet.too-many-pieces", pieces=pieces, most=MOST_PRINTED)
        raise InvalidRequest(detail, [Fault(code="too-many-pieces", detail=detail, header="accept")])


def sheet_reply(document: Document, wording: Wording, wanted: str, table: str = "") -> Reply[Any]:
    """A sheet in the format wanted.

    Raises:
        InvalidRequest: when it has no table of that name.
    """
    if wanted in BOTH:
        return Reply(contents(document, wording))
    return file(sheet_bytes(document, wording, wanted, table), wanted, document.house, document.name, table)


def sheet_bytes(document: Document, wording: Wording, wanted: str, table: str = "") -> bytes:
    """A sheet as a file's bytes."""
    if wanted == PDF:
        try:
            return pdf(document, wording)
        except UnsetError as error:
            _log.error("a sheet was not set: %s", error)
            detail = say("problem", "sheet.takes-too-long")
            raise InvalidRequest(detail, [Fault(code="too-long", detail=detail, header="accept")]) from error
    if wanted == HTML:
        return html(document, wording).encode()
    tables = document.tables
    if table not in tables and (table or not tables):
        has = (
            say("problem", "sheet.has-tables", tables=tuple(tables))
            if tables
            else say("problem", "sheet.no-tables")
        )
        fault = Fault(code="unknown-table", detail=has, parameter="table")
        raise InvalidRequest(say("problem", "sheet.no-such-table"), [fault])
    chosen = tables[table or document.main or next(iter(tables))]
    return csv_text(chosen, wording).encode()


def file(content: bytes, media_type: str, *names: str) -> File:
    """A file's answer: what it is called, and what it may do in a browser."""
    slug = "-".join(filter(None, map(_slug, names)))
    how = "attachment" if media_type == CSV else "inline"
    headers = {"content-disposition": f'{how}; filename="{slug}.{_ENDINGS[media_type]}"'}
    if media_type in (HTML, SVG):
        headers["content-security-policy"] = PAGE_POLICY
    return File(content, media_type, headers)


def _slug(text: str) -> str:
    plain = unicodedata.normalize("NFKD", text).encode("ascii", "ignore").decode().lower()
    return re.sub(r"[^a-z0-9]+", "-", plain).strip("-")[:60]
