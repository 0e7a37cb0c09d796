"""Longpoint: from a tape's readings to every piece of trim, and the sticks to cut them from."""

__version__ = "0.1.0"
