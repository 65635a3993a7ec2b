"""Lessons: told from their plans, shown in the page, on paper and as a film."""

from __future__ import annotations

from routeviz.views.lessons.facts import Fact, facts_of
from routeviz.views.lessons.film import film
from routeviz.views.lessons.page import compose
from routeviz.views.lessons.pictures import write_pictures
from routeviz.views.lessons.shelf import Shelved, find, shelf
from routeviz.views.lessons.telling import tell

__all__ = ["Fact", "Shelved", "compose", "facts_of", "film", "find", "shelf", "tell", "write_pictures"]
