"""What the live page's processes do: the quick one gives the answer and its picture, the deep one all that follows.

The quick one works through the best way out alone, with its findings and its air. Other ways, why no simpler one exists,
parts and cuts, fixes and the whole wall take several times as long and change neither verdict nor picture.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from routeviz.model.plan import Plan
    from routeviz.model.study import Fix
    from routeviz.views.app import Answered, Job
    from routeviz.views.app.pictures import Change

__all__ = ["PRELOADED", "deep", "quick"]

PRELOADED = ("routeviz.pipeline", "routeviz.studies", "routeviz.views.app.pictures", "routeviz.views.wallmap")
_WALL_STEP_IN = 2.0
_TELL_EVERY = 6  # places
Say = Callable[[str, Any], None]


def quick() -> Callable[[Job, Say], tuple[Plan, Change]]:
    """Make what turns a scene into its answer and picture; where nothing leads out, into all of its plan at once."""
    from routeviz import pipeline
    from routeviz.views.app import Pictures

    pictures = Pictures()

    def work(job: Job, say: Say) -> tuple[Plan, Change]:
        plan = pipeline.plan(job.scene, alternatives=1, counted=False)
        whole = plan.best is None  # what is in the way must then be said at once
        if whole:
            plan = pipeline.plan(job.scene)
        return plan, pictures.change(job.number, plan, whole=whole)

    return work


def deep() -> Callable[[Answered, Say], None]:
    """Make what works out all of a plan, its fixes, and the whole wall; each is said as soon as it is known."""
    from routeviz import pipeline, studies
    from routeviz.cli.apply import field_value
    from routeviz.views.app.pictures import stage_of
    from routeviz.views.pagedata import fix_json, page_data

    def offered(fix: Fix) -> dict[str, Any]:
        return {**fix_json(fix), "set": {field: field_value(text) for field, text in fix.changes}}

    def work(job: Answered, say: Say) -> None:
        plan = job.plan
        if not job.whole:
            plan = pipeline.plan(job.scene)
            say("whole", (plan, page_data(stage_of(plan))))
        found = studies.fixes(plan, progress=lambda words: say("doing", (f"planning again: {_small(words)}", None)))
        say("fixes", [offered(fix) for fix in found])
        say("wall", _wall(plan, say))

    return work


def _small(words: str) -> str:
    return words[:1].lower() + words[1:]


def _wall(plan: Plan, say: Say) -> dict[str, Any] | None:
    """Answer for places all along the wall; None where the hood cannot move or the field would be too large."""
    from routeviz.cli.walls import wall_map
    from routeviz.errors import LimitError
    from routeviz.views.wallmap import as_json

    say("doing", ("the whole wall", 0.0))

    def progress(done: int, total: int) -> None:
        if done % _TELL_EVERY == 0:
            say("doing", ("the whole wall", done / total))

    try:
        found = wall_map(plan, _WALL_STEP_IN, progress=progress)
    except LimitError:
        return None
    return None if found is None else as_json(found, cooktop_height_in=plan.scene.cooktop.height_in)
