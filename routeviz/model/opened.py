"""From where to where a strip of board is opened over a run and the elbows that go in by it."""

from __future__ import annotations

from collections.abc import Sequence

from routeviz.model.overhead import ceiling_at_in
from routeviz.model.route import Part, PartKind
from routeviz.model.scene import Scene

__all__ = ["opened_along"]


def opened_along(parts: Sequence[Part], scene: Scene) -> tuple[int, float, float]:
    """Give the axis of a strip and its two ends as a tape reads them in the room [in].

    `parts` are one straight and the elbows at its ends. The strip reaches over the elbows with their clearance, and
    ends with the room. Out from the hood wall the tape counts up while y falls.
    """
    run = next(p for p in parts if p.kind is PartKind.STRAIGHT)
    axis = max(range(3), key=lambda k: abs(run.direction[k]))
    ends = [run.start[axis], run.end[axis]]
    for part in parts:
        if part.kind is PartKind.ELBOW and part.corner is not None:
            half = max(part.section.width_in, part.section.height_in) / 2 + scene.duct.clearance_in
            ends += [part.corner[axis] - half, part.corner[axis] + half]
    sign = -1.0 if axis == 1 else 1.0
    most = (scene.kitchen.width_in, scene.kitchen.depth_in, ceiling_at_in(scene, (run.start[0] + run.end[0]) / 2))[axis]
    low, high = (min(most, max(0.0, v)) for v in sorted((sign * min(ends), sign * max(ends))))
    return axis, low, high
