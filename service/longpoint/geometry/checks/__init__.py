"""What cannot be built, and what was found in the way with the trade's answers to it."""
