"""The operators' table of settings is the one the code writes."""

import re
from pathlib import Path

import pytest

from longpoint.commands.settings import settings_table
from longpoint.settings import PREFIX, Settings

DEPLOY = Path(__file__).parents[2] / "deploy"


def test_the_table_is_up_to_date():
    text = (DEPLOY / "OPERATIONS.md").read_text()
    found = re.search(r"<!-- settings -->\n(.*?)\n<!-- /settings -->", text, re.DOTALL)
    assert found
    assert found[1] == settings_table(), "write it again with `python -m longpoint settings`"


@pytest.mark.parametrize("name", ["OPERATIONS.md", "Containerfile", "compose.yaml", "longpoint.service"])
def test_every_setting_spoken_of_is_one(name):
    known = {PREFIX + field.upper() for field in Settings.__struct_fields__} | {"LONGPOINT_DB_PASSWORD"}
    spoken = set(re.findall(rf"\b{PREFIX}[A-Z_]+", (DEPLOY / name).read_text()))
    assert spoken <= known
    assert spoken
