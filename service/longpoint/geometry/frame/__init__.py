"""The opening's outline from its readings: its corners, its cased sides, and how two sides meet."""
