"""Settings come from the environment, and a wrong one is told before anything starts."""

import pytest

from longpoint.settings import CLIENTS_OWN, DEFAULT_DATABASE, PREFIX, Settings, SettingsError


def test_nothing_set_gives_the_defaults():
    assert Settings.from_environment({"HOME": "/root"}) == Settings(database=DEFAULT_DATABASE)


def test_each_variable_is_read_as_its_type():
    settings = Settings.from_environment(
        {"LONGPOINT_PORT": "8123", "LONGPOINT_ACCESS_LOG": "false", "LONGPOINT_LOG_LEVEL": "error"}
    )
    assert (settings.port, settings.access_log, settings.log_level) == (8123, False, "error")


def test_every_wrong_variable_is_named():
    with pytest.raises(SettingsError) as refusal:
        Settings.from_environment(
            {"LONGPOINT_PORT": "99999", "LONGPOINT_PROT": "1", "LONGPOINT_LOG_LEVEL": "loud"}
        )
    for name in ("LONGPOINT_PORT", "LONGPOINT_PROT", "LONGPOINT_LOG_LEVEL"):
        assert name in str(refusal.value)


def test_a_client_may_share_the_environment():
    shared = dict.fromkeys(CLIENTS_OWN, "anything")
    assert Settings.from_environment(shared) == Settings.from_environment({})
    assert not {name.removeprefix(PREFIX).lower() for name in CLIENTS_OWN} & set(Settings.__struct_fields__)
