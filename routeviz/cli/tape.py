"""``routeviz tape``: what every inch of the hood wall gives."""

from __future__ import annotations

import json
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

from cyclopts import Parameter

from routeviz.cli.scenes import load_scene

if TYPE_CHECKING:
    from routeviz.model.plan import Plan

__all__ = ["tape"]


def tape(
    scene: Path, /, *, step: float = 1.0, as_json: Annotated[bool, Parameter(name="--json", negative=())] = False
) -> int:
    """Show, for every place of the hood along the wall, the best way out; one search answers them all.

    Parameters
    ----------
    scene
        Scene file.
    step
        Inches from place to place.
    as_json
        Print the places as JSON alone.
    """
    from routeviz import reports, studies

    loaded = load_scene(scene)
    (row,) = studies.wall_plans(loaded, studies.places(loaded, step_in=step), studies.heights(loaded))
    if as_json:
        print(json.dumps([_place(plan) for plan in row], indent=1, ensure_ascii=False))  # noqa: T201
        return 0
    print(f"{loaded.name}\n")  # noqa: T201
    print(reports.tape_text(row))  # noqa: T201
    return 0


def _place(plan: Plan) -> dict[str, object]:
    route = plan.best.route if plan.best else None
    return {
        "centre_in": round(plan.scene.hood.centre_in, 4),
        "mount_in": plan.scene.hood.mount_in,
        "verdict": plan.verdict.value,
        "status": plan.paths.outcome.value,
        "elbows": route.elbows if route else None,
        "length_in": round(route.length_in, 4) if route else None,
        "boxed_in": round(route.boxed_in, 4) if route else None,
        "face": route.termination.face if route else None,
        "flow_cfm": round(plan.best.air.full.flow_cfm, 1) if plan.best else None,
        "answer": plan.answer,
    }
