"""``routeviz schema``: what a scene file or a plan may hold."""

from __future__ import annotations

import json
from typing import Literal

__all__ = ["schema"]


def schema(what: Literal["scene", "plan"] = "scene", /) -> int:
    """Print the JSON schema of a scene file, or of a plan.

    Parameters
    ----------
    what
        scene or plan.
    """
    if what == "scene":
        from routeviz import scenefile

        found = scenefile.json_schema()
    else:
        from routeviz import reports

        found = reports.plan_schema()
    print(json.dumps(found, indent=1))  # noqa: T201
    return 0
