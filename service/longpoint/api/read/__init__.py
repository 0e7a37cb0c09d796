"""From the wire to the rooms: every length read, every fault told at its place."""
