"""Each kind of piece, from the frame and the trim to its pieces."""
