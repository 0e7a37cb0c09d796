"""The pages work with no other site in reach."""

import re

import pytest

PAGES = ["/docs", "/problems", "/problems/not-found"]


@pytest.mark.parametrize("path", PAGES)
async def test_a_page_fetches_nothing_from_elsewhere(client, path):
    page = await client.get(path)
    fetched = re.findall(r"""(?:src|href|action)=["']([^"']*)["']""", page.text)
    assert fetched
    for address in fetched:
        assert address.startswith("/"), f"{path} points at {address}"
        assert not address.startswith("//")
        assert (await client.get(address)).status_code == 200, f"{path} needs {address}"
    assert "http://" not in page.text
    assert "https://" not in page.text


@pytest.mark.parametrize("path", PAGES)
async def test_a_page_may_load_from_this_service_alone(client, path):
    policy = (await client.get(path)).headers["content-security-policy"]
    sources = {source for rule in policy.split(";") for source in rule.split()[1:]}
    assert sources <= {"'none'", "'self'", "'unsafe-inline'", "data:"}
    assert "script-src 'self';" in policy


async def test_the_reference_shows_this_services_document_and_asks_no_validator(client):
    script = (await client.get("/docs/assets/reference.js")).text
    assert 'url: "/openapi.json"' in script
    assert 'validatorUrl: "none"' in script
    assert "http" not in script


@pytest.mark.parametrize("sheet", ["page.css", "swagger-ui.css"])
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
