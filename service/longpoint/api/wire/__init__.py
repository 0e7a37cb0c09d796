"""The types that requests and answers are made of."""
