"""A short run of the kill -9 soak: `python tests/soak/kills.py` is the long one."""

import socket

import pytest

from soak import cutting
from soak.kills import soak


@pytest.mark.filterwarnings(
    "ignore::DeprecationWarning"
)  # forking beside threads: the forked process has none
def test_no_acknowledged_write_is_lost_to_a_kill(database: str) -> None:
    with socket.socket() as free:
        free.bind(("127.0.0.1", 0))
        port = free.getsockname()[1]
    counted = soak(database, kills=3, writers=3, port=port, seed=7)
    assert counted["wrong"] == []
    assert counted["acknowledged"] > 0


@pytest.mark.filterwarnings("ignore::DeprecationWarning")
def test_no_stick_is_lost_or_cut_twice_over_a_kill(database: str) -> None:
    with socket.socket() as free:
        free.bind(("127.0.0.1", 0))
        port = free.getsockname()[1]
    counted = cutting.soak(database, kills=3, cutters=2, port=port, seed=3)
    assert counted["wrong"] == []
    assert counted["pieces"] > 0
