"""The pages work with no other site in reach."""

import re

import pytest

from longpoint.api.document.glossary import TAGS
from longpoint.api.document.openapi import document

PAGES = ["/docs", "/problems", "/problems/not-found"]


@pytest.mark.parametrize("path", PAGES)
async def test_a_page_fetches_nothing_from_elsewhere(client, path):
    page = await client.get(path)
    shown = re.sub(r"<pre.*?</pre>", "", page.text, flags=re.DOTALL)
    linked = re.findall(r"""(?:src|href|action)=["']([^"']*)["']""", shown)
    fetched = {address for address in linked if not address.startswith("#")}
    assert fetched
    for address in fetched:
        assert address.startswith("/"), f"{path} points at {address}"
        assert not address.startswith("//")
        assert (await client.get(address)).status_code == 200, f"{path} needs {address}"
    assert "http://" not in shown
    assert "https://" not in shown


@pytest.mark.parametrize("path", PAGES)
async def test_a_page_may_load_from_this_service_alone(client, path):
    policy = (await client.get(path)).headers["content-security-policy"]
    sources = {source for rule in policy.split(";") for source in rule.split()[1:]}
    assert sources <= {"'none'", "'self'", "'unsafe-inline'", "data:"}
    assert "script-src 'self';" in policy


async def test_the_script_asks_no_other_service(client):
    script = (await client.get("/docs/assets/reference.js")).text
    assert "http" not in script


async def test_each_part_of_the_reference_stands_once_and_no_link_dangles(client):
    page = (await client.get("/docs")).text
    shown = re.sub(r"<pre.*?</pre>", "", page, flags=re.DOTALL)
    ids = re.findall(r'\bid="([^"]*)"', shown)
    assert len(ids) == len(set(ids))
    assert set(re.findall(r'href="#([^"]*)"', shown)) <= set(ids)
    assert "](" not in shown, "a link is left as it was written"


async def test_the_reference_has_everything_in_the_order_of_the_work(client):
    page = (await client.get("/docs")).text
    headings = re.findall("<h2>(.*?)</h2>", page)
    assert headings == [
        "Your first request",
        "The trade's words",
        *TAGS,
        "When a request is refused",
        "Records",
    ]
    assert list(TAGS)[-1] == "Health"
    outline = document()
    for methods in outline["paths"].values():
        for entry in methods.values():
            assert set(entry["tags"]) <= set(TAGS)
            assert page.count(f'<article id="{entry["operationId"]}">') == 1
    for name in outline["components"]["schemas"]:
        assert f'<article id="record-{name}">' in page
    assert page.count("/problems/invalid-request") == 1, "one problem is shown"


async def test_a_key_is_spoken_of_only_where_one_is_needed(client):
    page = (await client.get("/docs")).text
    for methods in document()["paths"].values():
        for entry in methods.values():
            article = page.partition(f'<article id="{entry["operationId"]}">')[2].partition("</article>")[0]
            assert ("it needs one that may" in article) == bool(entry["security"])


@pytest.mark.parametrize("sheet", ["page.css"])
async def test_a_style_sheet_imports_nothing(client, sheet):
    text = (await client.get(f"/docs/assets/{sheet}")).text
    assert "@import" not in text
    assert not re.findall(r"url\((?!['\"]?(?:data:|#))", text)


@pytest.mark.parametrize(
    "path", ["/docs/assets/nothing.js", "/docs/assets/../app.py", "/docs/assets/%2e%2e/app.py"]
)
async def test_only_the_assets_are_served(client, path):
    assert (await client.get(path)).status_code == 404


async def test_the_bare_address_leads_to_the_reference(client):
    answer = await client.get("/")
    assert answer.status_code == 302
    assert answer.headers["location"] == "/docs"
