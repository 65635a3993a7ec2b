"""``routeviz explain``: what a rule checks, why, and where it comes from."""

from __future__ import annotations

import difflib
import json

from routeviz.cli.files import AsJson, write_json
from routeviz.errors import RoutevizError

__all__ = ["explain"]


class UnknownCodeError(RoutevizError):
    """No rule has this code."""


def explain(code: str = "", /, *, as_json: AsJson = None) -> int:
    """Print what a rule checks, why, its source, when it applies and what it cannot see.

    Parameters
    ----------
    code
        The rule's code as printed with a finding; without it all codes are listed.
    as_json
        Write only the JSON, to this file; - prints it alone on standard output.
    """
    from routeviz import rules

    known = rules.codes()
    if not code:
        if as_json is not None:
            write_json(as_json, _as_json([{"code": each, "title": rules.explain(each).title} for each in known]))
            return 0
        for each in known:
            print(f"{each:<15} {rules.explain(each).title}")  # noqa: T201
        return 0
    wanted = code.strip().upper()
    if wanted not in known:
        near = difflib.get_close_matches(wanted, known, 3, 0.4)
        raise UnknownCodeError(
            f"no rule {code!r}. {'Nearest: ' + ', '.join(near) if near else 'List all with: routeviz explain'}"
        )
    told = rules.explain(wanted)
    if as_json is not None:
        write_json(as_json, _as_json(told))
    else:
        print(told.text)  # noqa: T201
    return 0


def _as_json(value: object) -> str:
    from routeviz import reports

    return json.dumps(reports.plain(value), indent=1, ensure_ascii=False)
