"""SEARCH: free space to centre lines with a named outcome. It knows no rooms."""

from routeviz.search.answer import find
from routeviz.search.field import Cell, Field, field
from routeviz.search.simpler import why_not_straight
from routeviz.search.verify import verify

__all__ = ["Cell", "Field", "field", "find", "verify", "why_not_straight"]
