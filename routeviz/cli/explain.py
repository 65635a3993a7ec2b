"""``routeviz explain``: what a rule checks, why, and where it comes from."""

from __future__ import annotations

import difflib

from routeviz.errors import RoutevizError

__all__ = ["explain"]


class UnknownCodeError(RoutevizError):
    """No rule has this code."""


def explain(code: str = "", /) -> int:
    """Print what a rule checks, why, its source, when it applies and what it cannot see.

    Parameters
    ----------
    code
        The rule's code as printed with a finding; without it all codes are listed.
    """
    from routeviz import rules

    known = rules.codes()
    if not code:
        for each in known:
            print(f"{each:<14} {rules.explain(each).title}")  # noqa: T201
        return 0
    wanted = code.strip().upper()
    if wanted not in known:
        near = difflib.get_close_matches(wanted, known, 3, 0.4)
        raise UnknownCodeError(
            f"no rule {code!r}. {'Nearest: ' + ', '.join(near) if near else 'List all with: routeviz explain'}"
        )
    print(rules.explain(wanted).text)  # noqa: T201
    return 0
