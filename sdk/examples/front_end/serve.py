"""Serves the page beside this file, and passes its requests on to the service.

    python sdk/examples/front_end/serve.py --port 8080

The page asks only this server, so the browser needs no permission for another origin, and the API key, where the
service wants one, stays here: it is read from LONGPOINT_API_KEY, the service's address from LONGPOINT_URL.
"""

from __future__ import annotations

import argparse
import os
import urllib.error
import urllib.request
from contextlib import suppress
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path

PAGE = Path(__file__).with_name("index.html")
SERVICE = os.environ.get("LONGPOINT_URL", "http://127.0.0.1:8000").rstrip("/")
KEY = os.environ.get("LONGPOINT_API_KEY")
PASSED_ON = {"/v1/opening"}
MOST_BYTES = 64 * 1024


class FrontEnd(BaseHTTPRequestHandler):
    """The page, and what it asks of the service."""

    def do_GET(self) -> None:
        if self.path.partition("?")[0] == "/":
            self.answer(200, "text/html; charset=utf-8", PAGE.read_bytes())
        else:
            self.send_error(404)

    def do_POST(self) -> None:
        length = int(self.headers.get("Content-Length") or 0)
        if self.path not in PASSED_ON or length > MOST_BYTES:
            self.send_error(404 if self.path not in PASSED_ON else 413)
            return
        headers = {"Content-Type": "application/json"} | ({"Authorization": f"Bearer {KEY}"} if KEY else {})
        request = urllib.request.Request(SERVICE + self.path, self.rfile.read(length), headers)
        try:
            with urllib.request.urlopen(request, timeout=30) as said:
                self.answer(said.status, said.headers["Content-Type"], said.read())
        except urllib.error.HTTPError as refusal:
            with refusal:
                self.answer(refusal.code, refusal.headers["Content-Type"], refusal.read())
        except OSError:
            self.send_error(502)

    def answer(self, status: int, kind: str, body: bytes) -> None:
        """Send one answer."""
        self.send_response(status)
        self.send_header("Content-Type", kind)
        self.send_header("Content-Length", str(len(body)))
        self.end_headers()
        self.wfile.write(body)


if __name__ == "__main__":
    parser = argparse.ArgumentParser(description="Serve the page.")
    parser.add_argument("--port", type=int, default=8080, help="0 picks a free one")
    with ThreadingHTTPServer(("127.0.0.1", parser.parse_args().port), FrontEnd) as server:
        print(f"The page is at http://127.0.0.1:{server.server_port}/ (Ctrl-C ends it)", flush=True)
        with suppress(KeyboardInterrupt):
            server.serve_forever()
