"""The one place where the order of the verbs is written: Scene to Plan."""

from __future__ import annotations

import math
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import replace
from functools import lru_cache

from routeviz import airflow, framing, freespace, routing, rules, search, takeoff
from routeviz.model.airflow import AirNeed, AirStatus, MakeupAir
from routeviz.model.finding import Finding, MemberRuling
from routeviz.model.freespace import FreeSpace
from routeviz.model.path import Centreline, Outcome, Paths, SearchFacts, WhyNot
from routeviz.model.plan import Option, Plan
from routeviz.model.route import Route
from routeviz.model.scene import Assumption, MemberKind, Scene
from routeviz.model.solids import Frame
from routeviz.model.takeoff import Mark, TakeOff
from routeviz.pipeline.answer import WEBS, answer, second_line, verdict
from routeviz.rules import Profile
from routeviz.units import length_text

__all__ = ["NOTHING_COUNTED", "conclude", "framed", "plan", "scene_findings", "settle"]

NOTHING_COUNTED = TakeOff((), (), (), (), (), (), ())  # the parts of a plan that is only weighed, not built
Progress = Callable[[str], None]


class _Clock:
    """Stage times, in order."""

    def __init__(self, progress: Progress | None) -> None:
        self.times: list[tuple[str, float]] = []
        self._progress = progress

    @contextmanager
    def __call__(self, stage: str) -> Iterator[None]:
        if self._progress:
            self._progress(stage)
        start = time.perf_counter()
        yield
        self.times.append((stage, time.perf_counter() - start))


def settle(scene: Scene, profile: Profile) -> Scene:
    """Give the scene with a mounting height: its own, or the best within the legal window, noted as assumed."""
    if scene.hood.mount_in is not None:
        return scene
    window = rules.mounting_window(scene, profile)
    chosen = window.suggested_in
    note = Assumption(
        "hood.mount",
        length_text(chosen, metric=scene.metric),
        f"chosen within {length_text(window.low_in, metric=scene.metric)} to {length_text(window.high_in, metric=scene.metric)}",
    )
    return replace(scene, hood=replace(scene.hood, mount_in=chosen), assumptions=(*scene.assumptions, note))


def framed(scene: Scene, profile: Profile) -> Frame:
    """Frame a settled scene, with what a cap must keep away from by a profile and the scene's waivers."""
    return rules.bounded(framing.frame(scene, rules.keep_away(profile)), profile, scene.rules.waivers)


def plan(
    scene: Scene,
    *,
    alternatives: int = 3,
    counted: bool = True,
    hidden: bool = True,
    progress: Progress | None = None,
) -> Plan:
    """Plan one scene from its measures to parts.

    Parameters
    ----------
    scene : Scene
        As read; a missing mounting height is chosen within the legal window.
    alternatives : int
        Most ways out to work through.
    counted : bool
        Whether parts, cuts and steps are counted; a plan that is only weighed against others needs none.
    hidden : bool
        False where it is known that no hidden way exists, so that only ways with boxing need be looked for.
    progress : callable
        Told the name of each stage as it begins.

    Returns
    -------
    Plan
        Always a plan: when no route exists it says so and names what blocks.

    Raises
    ------
    SceneError
        If the rule profile is not known.
    LimitError
        If the search would pass its memory limit.
    """
    clock = _Clock(progress)
    profile = rules.profile(scene.rules.profile, file=scene.file)
    scene = settle(scene, profile)
    with clock("frame"):
        frame = framed(scene, profile)
        scene = replace(
            scene, assumptions=(*scene.assumptions, *framing.assumptions(scene), *takeoff.assumptions(scene))
        )
    with clock("search"):
        paths = (
            _as_built_paths()
            if scene.as_built
            else _searched(frame, scene, profile, others=max(alternatives - 1, 0), explained=counted, hidden=hidden)
        )
    with clock("realise"):
        routes = _routes(scene, frame, paths, alternatives)
    with clock("check, blow, count"):
        findings = rules.check_scene(scene, frame, profile, fan_cfm=airflow.fan_cfm(scene))
        options = tuple(_option(scene, frame, profile, route, findings, counted=counted) for route in routes)
        members = rules.blocker_rulings(scene, frame, profile, _open_ways(paths))
        marks = takeoff.marks_of(scene, frame) if counted and not options else ()
    return conclude(scene, frame, paths, options, findings, members, tuple(clock.times), marks)


def scene_findings(scene: Scene) -> tuple[Finding, ...]:
    """Give the findings that hold whatever the route: heights, cover, room for the hood. No search, so it is quick."""
    profile = rules.profile(scene.rules.profile, file=scene.file)
    scene = settle(scene, profile)
    return rules.check_scene(scene, framed(scene, profile), profile, fan_cfm=airflow.fan_cfm(scene))


def _searched(
    frame: Frame, scene: Scene, profile: Profile, *, others: int, explained: bool, hidden: bool
) -> Paths:  # fmt: skip
    window = rules.mounting_window(scene, profile)
    heights = rules.free_heights(scene, window.low_in, window.high_in) if explained else None
    space = freespace.carve(
        frame, scene, scene.duct.sections[0], heights_in=heights, places_in=rules.hood_places(scene)
    )
    return _with_webs(scene, _found(space, others, explained, hidden))


def _with_webs(scene: Scene, paths: Paths) -> Paths:
    """Say that no way through the webs of I-joists was looked for, where the maker's chart allows one and it might be better."""
    chart, joists, best = scene.rules.maker.member_hole_in, scene.ceiling.joists, paths.best
    hole = max(scene.duct.sections[0].width_in, scene.duct.sections[0].height_in) + 2 * scene.duct.clearance_in
    settled = best is not None and best.elbows == 0 and best.boxed_in == 0
    if chart is None or hole > chart or joists is None or joists.kind is not MemberKind.I_JOIST or settled:
        return paths
    untold = " or ".join(filter(None, (paths.facts.not_tried, WEBS)))
    outcome = Outcome.BEST_FOUND if paths.outcome is Outcome.PROVEN else paths.outcome
    return replace(paths, outcome=outcome, facts=replace(paths.facts, not_tried=untold))


@lru_cache(maxsize=8)
def _found(space: FreeSpace, others: int, explained: bool, hidden: bool) -> Paths:
    """Search once for each problem: a change that the duct does not meet, as of the cooktop, leaves it the same."""
    return search.find(space, others=others, explained=explained, hidden=hidden)


def _as_built_paths() -> Paths:
    facts = SearchFacts((0, 0, 0), 0, 0, 0.0, "a route as built is checked, not searched")
    return Paths(Outcome.BEST_FOUND, None, (), (), (), facts)


def _routes(scene: Scene, frame: Frame, paths: Paths, alternatives: int) -> tuple[Route, ...]:
    if scene.as_built:
        return (routing.realise_as_built(scene, frame),)
    lines: list[Centreline] = [line for line in (paths.best, *paths.alternatives) if line is not None]
    return tuple(
        routing.realise(line, scene, frame, name=chr(ord("A") + i))
        for i, line in enumerate(lines[: max(alternatives, 1)])
    )


def _option(
    scene: Scene, frame: Frame, profile: Profile, route: Route, of_scene: tuple[Finding, ...], *, counted: bool
) -> Option:
    air = airflow.solve(route, scene, code_table=profile.get("duct_length") is not None)
    if counted:
        route = replace(route, allowances=routing.allowances(route, frame, scene))
    findings = rules.check_route(scene, frame, profile, route, air, fan_cfm=airflow.fan_cfm(scene))
    parts = takeoff.count(route, scene, frame, of_scene + findings) if counted else NOTHING_COUNTED
    if air.full.status is AirStatus.NO_FAN:
        return Option(route, findings, air, parts)
    need, makeup = _asked(scene, profile, air.full.flow_cfm)
    return Option(route, findings, air, parts, need, makeup)


def _asked(scene: Scene, profile: Profile, flow_cfm: float) -> tuple[AirNeed, MakeupAir]:
    """What the kitchen asks of the delivered flow, by the profile's numbers where it has them."""
    least, threshold = profile.get("least_flow"), profile.get("makeup_flow")
    need = airflow.air_need(
        scene, flow_cfm, code_cfm=least.number if least else None, code_source=least.source if least else ""
    )
    narrowed = profile.get("makeup_only_with_flue")
    makeup = airflow.makeup_air(
        scene, threshold.number if threshold else math.inf, flow_cfm, source=threshold.source if threshold else "",
        only_with_flue=narrowed is not None and narrowed.value is True,
    )  # fmt: skip
    return need, makeup


def _open_ways(paths: Paths) -> tuple[WhyNot, ...]:
    """Give the simpler ways that only members block; cutting one is no use where a closed place lies behind it."""
    return tuple(w for w in paths.why_not if not any(b.kind == "zone" for b in w.blockers))


def _in_order(paths: Paths) -> tuple[WhyNot, ...]:
    """Give the ways that something bars, the one that the answer tells of first."""
    told = paths.told_first
    return (*((told,) if told else ()), *(w for w in paths.why_not if w is not told))


def _beside_the_cooktop(scene: Scene, frame: Frame, profile: Profile, paths: Paths) -> Paths:
    """Mark the shifts of a hood that its cooktop has to go with."""
    return replace(paths, why_not=tuple(_marked(scene, frame, profile, why) for why in paths.why_not))


def _marked(scene: Scene, frame: Frame, profile: Profile, why: WhyNot) -> WhyNot:
    shifts = [s for s in (why.shift_in, why.shift_other_in, why.middle_in) if s is not None]
    if not why.verified or not shifts:
        return why
    left = {s: rules.left_behind(scene, frame, profile, s) for s in shifts}
    wishes = left.get(why.shift_in, ()) if why.shift_in is not None else ()
    return replace(
        why,
        with_cooktop=tuple(s for s in left if rules.leaves_cooktop(left[s])),
        alone_breaks=tuple(dict.fromkeys(f.title for f in wishes if not f.must)),
    )


def conclude(
    scene: Scene,
    frame: Frame,
    paths: Paths,
    options: tuple[Option, ...],
    findings: tuple[Finding, ...],
    members: tuple[MemberRuling, ...] = (),
    seconds: tuple[tuple[str, float], ...] = (),
    marks: tuple[Mark, ...] = (),
) -> Plan:
    """Put an answer together: the verdict, the sentence and the line beneath it follow from what was found."""
    profile = rules.profile(scene.rules.profile, file=scene.file)
    paths = _beside_the_cooktop(scene, frame, profile, paths)
    if not options and not scene.as_built:
        findings = (*rules.barring(scene, frame, profile, _in_order(paths)), *findings)
    word = verdict(options, findings)
    return Plan(
        scene=scene,
        frame=frame,
        paths=paths,
        options=options,
        findings=findings,
        verdict=word,
        answer=answer(scene, paths, options, findings, word),
        second=second_line(scene, paths, options, members, word),
        assumptions=scene.assumptions,
        seconds=seconds,
        members=members,
        marks=marks,
    )
