"""Many plans of one scene: fixes that are proven, and ways out side by side."""

from routeviz.studies.compare import compare
from routeviz.studies.fixes import fixes
from routeviz.studies.joists import joist_preview, joists_as_json, read_marks
from routeviz.studies.wall import heights, places, wall_plans

__all__ = [
    "compare",
    "fixes",
    "heights",
    "joist_preview",
    "joists_as_json",
    "places",
    "read_marks",
    "wall_plans",
]
