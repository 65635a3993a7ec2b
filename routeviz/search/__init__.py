"""SEARCH: free space to centre lines with a named outcome. It knows no rooms."""

from routeviz.search.answer import find

__all__ = ["find"]
