"""What a caller says: what the tape read and what surrounds it, and the trim chosen for it."""
