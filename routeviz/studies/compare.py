"""Ways out side by side: roof, each wall, and each other section."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from routeviz import pipeline
from routeviz.model.airflow import AirStatus
from routeviz.model.finding import State
from routeviz.model.plan import Plan
from routeviz.model.scene import Scene
from routeviz.model.solids import Crossing
from routeviz.model.study import Way
from routeviz.studies.fixes import section_text

__all__ = ["compare"]


def compare(scene: Scene) -> tuple[Way, ...]:
    """Plan a scene once for each kind of way out and each of its duct sections.

    Returns
    -------
    tuple of Way
        What the scene allows first, then roof only, wall only, and the other sections. A row whose way out the scene
        rules out says so in its note.
    """
    return tuple(_row(label, note, pipeline.plan(changed, alternatives=1)) for label, note, changed in _variants(scene))


def _variants(scene: Scene) -> Iterator[tuple[str, str, Scene]]:
    """Give each row's name, its note and its scene."""
    if scene.as_built is not None:
        yield "as built", "", scene
        scene = replace(scene, as_built=None)
    cap, first = scene.cap, section_text(scene.duct.sections[0], metric=scene.metric)
    yield "as the scene allows", f"{first} duct", scene
    out = "though the scene rules it out"
    yield "roof only", "" if cap.roof else out, replace(scene, cap=replace(cap, roof=True, wall=False))
    yield "wall only", "" if cap.wall else out, replace(scene, cap=replace(cap, roof=False, wall=True))
    for section in scene.duct.sections[1:]:
        order = (section, *(s for s in scene.duct.sections if s is not section))
        other = replace(scene, duct=replace(scene.duct, sections=order))
        yield section_text(section, metric=scene.metric), "as the scene allows", other


def _row(label: str, note: str, plan: Plan) -> Way:
    states = [f.state for f in plan.all_findings if not f.waived]
    best = plan.best
    if best is None:
        return Way(label, plan.paths.outcome.value, plan.verdict, None, None, None, None, None, (),
                   states.count(State.BROKEN), states.count(State.CLOSE), None, plan.answer, note=note)  # fmt: skip
    route = best.route
    members = tuple(p.label for p in route.penetrations if plan.frame.solid(p.solid).crossing is not Crossing.PASS)
    return Way(
        label=label,
        outcome=plan.paths.outcome.value,
        verdict=plan.verdict,
        elbows=route.elbows,
        length_in=route.length_in,
        boxed_in=route.boxed_in,
        flow_cfm=None if best.air.full.status is AirStatus.NO_FAN else best.air.full.flow_cfm,
        holes=len(best.takeoff.holes),
        members=members,
        broken=states.count(State.BROKEN),
        close=states.count(State.CLOSE),
        parts=len(best.takeoff.buy),
        answer=plan.answer,
        cabinet_in3=sum(c.lost_in3 for c in best.takeoff.cabinets),
        note=note,
    )
