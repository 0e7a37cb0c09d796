"""Resources that keep nothing: an answer follows from its request alone."""
