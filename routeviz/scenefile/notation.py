"""What the TOML reader says, in words for a person who has never heard of TOML."""

from __future__ import annotations

import re

__all__ = ["notation_words"]

_WORDS = (
    (r"Cannot declare \((.*?),?\) twice", "the table [{0}] stands twice"),
    (r"Cannot overwrite a value", "this key stands twice"),
    (r"Cannot (?:mutate immutable|redefine) namespace \((.*?),?\)", "{0} has its value already, further up"),
    (r"Duplicate inline table key '(.*)'", "the key {0} stands twice between the braces"),
    (r"Illegal character '\\n'", "the line ends before the quotes are closed"),
    (r"Illegal character (.*)", "the character {0} may not stand here"),
    (r"Invalid (?:statement|initial character for a key part)", "a line begins with a key, a [header] or a #"),
    (r"Invalid (?:date|hex).*", "this cannot be read as a value"),
    (r"Invalid value", "no value stands here that can be read; text needs quotes"),
    (r"Expected newline or end of document after a statement", "something more stands behind the value"),
    (r"Expected '=' after a key in a key/value pair", "= is missing after the key"),
    (r"Expected (.*) at the end of an? (?:table|array) declaration", "{0} is missing at the end of the header"),
    (r"Unescaped '\\' in a string", "a backslash between double quotes is written twice"),
    (r"Unterminated string", "the quotes are never closed"),
    (r"Unclosed (?:array|inline table)", "the brackets are never closed"),
    (r"Expected (.*)", "{0} is missing"),
)


def notation_words(said: str) -> str:
    """Give the reader's message in plain words.

    Examples
    --------
    >>> notation_words("Cannot declare ('walls', 'hood') twice")
    'the table [walls.hood] stands twice'
    """
    for pattern, words in _WORDS:
        found = re.fullmatch(pattern, said)
        if found:
            return words.format(*(_dotted(text) for text in found.groups()))
    return "this cannot be read"


def _dotted(key: str) -> str:
    """Write the reader's ``'walls', 'hood'`` as ``walls.hood``; anything else stays."""
    return re.sub(r"^'|'$", "", key.replace("', '", ".")) if re.fullmatch(r"'[^']*'(, '[^']*')*", key) else key
