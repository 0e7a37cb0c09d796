"""How many pieces are remembered."""

KEPT = 1024
"""How many pieces of a kind are remembered. A house repeats itself: its openings share their trim and many a reading,
and after every change it is worked out again with all the rest as it was."""
