"""What is kept off the event loop, and how much of it at a time."""
