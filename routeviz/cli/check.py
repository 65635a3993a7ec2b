"""``routeviz check``: the findings for a scene and its route, as built or planned."""

from __future__ import annotations

import json
from pathlib import Path

from routeviz.cli.files import AsJson, write_json
from routeviz.cli.scenes import load_scene

__all__ = ["check"]


def check(scene: Path, /, *, as_json: AsJson = None) -> int:
    """Judge a scene: the route it gives as built, or else the best one found.

    Parameters
    ----------
    scene
        Scene file.
    as_json
        Write only the JSON, to this file; - prints it alone on standard output.

    """
    from routeviz import pipeline, reports

    plan = pipeline.plan(load_scene(scene), alternatives=1)
    if as_json is not None:
        write_json(as_json, json.dumps(reports.plain(plan.all_findings), indent=1, ensure_ascii=False))
    else:
        print(reports.wrap(f"{plan.verdict}. {plan.answer}"))  # noqa: T201
        routed, metric = bool(plan.options), plan.scene.metric
        print(reports.findings_text(plan.all_findings, metric=metric, routed=routed))  # noqa: T201
        print(reports.wrap(reports.CAUTION))  # noqa: T201
    return 0
