"""The HTTP surface: thin resources over the computing rooms, one module for each."""
