"""What the service says to people: codes with values everywhere, their sentences in one catalog, `en.po`.

Imports no other room, so that every room can say something.
"""

from longpoint.texts.catalog import read as read_catalog
from longpoint.texts.sentence import SPOKEN, Sentence, Speaks, say

__all__ = ["SPOKEN", "Sentence", "Speaks", "read_catalog", "say"]
