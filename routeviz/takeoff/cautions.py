"""Cautions that come from the place of the work: a roof, a wall outside, a height over the floor."""

from __future__ import annotations

from dataclasses import replace

from routeviz.catalog import table
from routeviz.model.overhead import ceiling_at_in
from routeviz.model.route import Route
from routeviz.model.scene import Scene
from routeviz.model.solids import FaceKind
from routeviz.model.takeoff import Hole, Mark, Step
from routeviz.units import length_text

__all__ = ["aloft", "caution_at", "outside_caution", "with_heights"]

_ROOF = "Ladder tied, fall protection on, nobody below; not in wind or wet."
_WALL = "Ladder tied off, nobody below."


def outside_caution(route: Route) -> str:
    """Give the caution of every step that is done outside, where the duct comes out: on a roof or at a wall."""
    return caution_at(roof=route.termination.kind is FaceKind.ROOF)


def caution_at(*, roof: bool) -> str:
    """Give the caution of a step that is done outside: on a roof, or at a wall."""
    return _ROOF if roof else _WALL


def aloft(height_in: float, scene: Scene) -> str:
    """Give the caution of work so high over the floor [in]; "" where a step ladder will do."""
    if height_in <= float(table("rules")["aloft"]["from_in"]):
        return ""
    high = length_text(height_in, metric=scene.metric)
    return f"{high} above the floor: work from a scaffold or a platform with guard rails, not from a ladder."


def with_heights(
    steps: list[Step], route: Route, scene: Scene, holes: tuple[Hole, ...], marks: tuple[Mark, ...]
) -> list[Step]:
    """Add the caution of its height to each step that is done from the kitchen's floor."""
    heights = _heights(route, scene, holes, marks)
    return [_cautioned(step, aloft(heights.get(step.id, 0.0), scene)) for step in steps]


def _cautioned(step: Step, more: str) -> Step:
    return replace(step, caution=f"{step.caution} {more}".strip()) if more else step


def _heights(route: Route, scene: Scene, holes: tuple[Hole, ...], marks: tuple[Mark, ...]) -> dict[str, float]:
    """Give how high over the floor [in] each step reaches; what lies over the ceiling is reached from up there."""

    def under(x: float, z: float) -> float:
        return min(z, ceiling_at_in(scene, x))

    cut = max((under(h.centre[0], h.centre[2]) for h in holes), default=0.0)
    laid = max((under(at[0], at[2]) for p in route.parts for at in (p.start, p.end)), default=0.0)
    bracket = max((m.height_in for m in marks if m.row == "bracket"), default=0.0)
    hood = max((m.height_in for m in marks if m.row != "bracket"), default=0.0)
    backed = max((m.height_in for m in marks if m.backed), default=0.0)
    found = dict.fromkeys(("look", "open", "inside", "fireblock"), cut) | {"patch": max(cut, backed)}
    found |= dict.fromkeys(("run", "hang", "seal", "box"), laid)
    return found | {
        "marks": max(hood, bracket), "backing": backed, "pack": max(hood, bracket), "screws": hood, "bracket": bracket,
        "cover": _cover_top(scene),
    }  # fmt: skip


def _cover_top(scene: Scene) -> float:
    cover, x = scene.hood.cover, scene.hood.centre_in
    if cover is None:
        return 0.0
    return max(ceiling_at_in(scene, x + at) for at in (-cover.width_in / 2, 0.0, cover.width_in / 2))
