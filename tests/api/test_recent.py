"""Answers kept lately: the newest, as many as may be and as heavy as they may be together."""

from longpoint.api.stored.recent import Recent


def kept(recent: Recent[str, str], keys: str) -> str:
    return "".join(key for key in keys if recent.get(key) is not None)


def test_the_one_not_used_the_longest_goes() -> None:
    recent: Recent[str, str] = Recent(most=2, heaviest=100)
    recent.put("a", "A", 1)
    recent.put("b", "B", 1)
    assert recent.get("a") == "A"
    recent.put("c", "C", 1)
    assert kept(recent, "abc") == "ac"


def test_heavy_ones_leave_room_for_fewer() -> None:
    recent: Recent[str, str] = Recent(most=9, heaviest=10)
    for key, weight in (("a", 4), ("b", 4), ("c", 5)):
        recent.put(key, key, weight)
    assert kept(recent, "abc") == "bc"
    recent.put("d", "d", 50)
    assert kept(recent, "abcd") == "d"


def test_one_put_again_weighs_once() -> None:
    recent: Recent[str, str] = Recent(most=9, heaviest=10)
    for _ in range(5):
        recent.put("a", "A", 5)
    recent.put("b", "B", 5)
    assert kept(recent, "ab") == "ab"
