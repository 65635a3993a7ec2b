"""``routeviz check``: the findings for a scene and its route, as built or planned."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Annotated

from cyclopts import Parameter

from routeviz.cli.scenes import load_scene

__all__ = ["check"]


def check(scene: Path, /, *, as_json: Annotated[bool, Parameter(name="--json", negative=())] = False) -> int:
    """Judge a scene: the route it gives as built, or else the best one found.

    Parameters
    ----------
    scene
        Scene file.
    as_json
        Print the findings as JSON alone.

    """
    from routeviz import pipeline, reports

    plan = pipeline.plan(load_scene(scene), alternatives=1)
    if as_json:
        print(json.dumps(reports.plain(plan.all_findings), indent=1, ensure_ascii=False))  # noqa: T201
    else:
        print(reports.wrap(f"{plan.verdict}. {plan.answer}"))  # noqa: T201
        print(reports.findings_text(plan.all_findings, metric=plan.scene.metric))  # noqa: T201
        print(reports.wrap(reports.CAUTION))  # noqa: T201
    return 0
