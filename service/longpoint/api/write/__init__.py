"""From the rooms to the wire."""
