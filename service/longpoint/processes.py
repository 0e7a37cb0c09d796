"""What processes that the service starts have in common."""

import os


def environment() -> dict[str, str]:
    """The environment for one: the service's own without its settings, of which the database's password is one."""
    return {key: value for key, value in os.environ.items() if not key.startswith("LONGPOINT_")}
