"""Writes from the OpenAPI document what of this SDK follows from it: types, calls, methods, problems, TypeScript.

Run it in this distribution's folder whenever the document changes: `python -m generator`. It needs ruff.
"""
