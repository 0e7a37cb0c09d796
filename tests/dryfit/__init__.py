"""A dry fit: an answer's pieces are cut again as polygons, put together, laid on the opening, and must close.

It knows what was asked and what was answered, both as JSON, and nothing of the service: it never imports it.
Shapely does the areas; positions are complex numbers, x to the right and y up, inches.
"""

from dryfit.fit import dry_fit

__all__ = ["dry_fit"]
