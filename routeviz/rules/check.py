"""The public questions: judge a scene, judge a route, and say what is wrong with how a scene chooses its rules."""

from __future__ import annotations

import difflib
from collections.abc import Iterable
from dataclasses import replace

from routeviz.errors import Mistake
from routeviz.model.airflow import AirResult
from routeviz.model.finding import Finding, State
from routeviz.model.route import Route
from routeviz.model.scene import Scene, Waiver
from routeviz.model.solids import Frame
from routeviz.rules.context import Context
from routeviz.rules.profiles import Profile, profile_mistake
from routeviz.rules.registry import Scope, all_rules

__all__ = ["check", "check_route", "check_scene", "scene_mistakes"]

_ORDER = {state: i for i, state in enumerate(State)}


def _waived(finding: Finding, waivers: tuple[Waiver, ...]) -> Finding:
    """Attach the reason of the waiver that answers for a finding; a waiver never changes the state."""
    if finding.state not in (State.BROKEN, State.CLOSE, State.NOT_CHECKED):
        return finding
    for waiver in waivers:
        if waiver.answers_for(finding.code, finding.where):
            return replace(finding, waived=waiver.words)
    return finding


def _sorted(findings: Iterable[Finding], context: Context) -> tuple[Finding, ...]:
    waivers = context.scene.rules.waivers
    every = [_waived(f, waivers) for f in findings]
    return tuple(sorted(every, key=lambda f: (_ORDER[f.state], not f.must, f.code, f.where)))


def _judged(context: Context, scope: Scope) -> list[Finding]:
    found = [f for rule in all_rules() if rule.scope is scope for f in rule.judged(context)]
    if scope is Scope.ROUTE:
        found += [f for rule in all_rules() if rule.judge_route is not None for f in rule.judge_route(context, rule)]
    return found


def check(context: Context) -> tuple[Finding, ...]:
    """Judge everything that the context holds: the scene always, the route when there is one.

    Returns
    -------
    tuple of Finding
        Worst first. Waived findings keep their state and carry the reason.
    """
    found = _judged(context, Scope.SCENE)
    if context.route is not None:
        found += _judged(context, Scope.ROUTE)
    return _sorted(found, context)


def check_scene(scene: Scene, frame: Frame, profile: Profile, *, fan_cfm: float | None = None) -> tuple[Finding, ...]:
    """Judge what holds for the scene whatever the route: heights, clearances, fit, electrical, what exists.

    `fan_cfm` is what the fan moves at 0.1 in wg by its curve.
    """
    context = Context(scene, frame, profile, fan_cfm=fan_cfm)
    return _sorted(_judged(context, Scope.SCENE), context)


def check_route(
    scene: Scene, frame: Frame, profile: Profile, route: Route, air: AirResult | None = None,
    *, fan_cfm: float | None = None,
) -> tuple[Finding, ...]:  # fmt: skip
    """Judge one route, planned or as built: members, duct, elbows, termination, fire, air, services."""
    context = Context(scene, frame, profile, route, air, fan_cfm)
    return _sorted(_judged(context, Scope.ROUTE), context)


def scene_mistakes(scene: Scene) -> tuple[Mistake, ...]:
    """Say what is wrong with the scene's choice of rules: an unknown profile, waivers without reason or of no rule."""
    found = []
    wrong = profile_mistake(scene.rules.profile, scene.file)
    if wrong is not None:
        found.append(wrong)
    codes = [r.code for r in all_rules()]
    for i, waiver in enumerate(scene.rules.waivers, 1):
        field = f"rules.waivers[{i}]"
        code = waiver.code.strip().partition(":")[0].upper()
        if code not in codes:
            near = difflib.get_close_matches(code, codes, n=1, cutoff=0.5)
            remedy = f"Did you mean {near[0]}?" if near else "List the codes with: routeviz explain"
            found.append(Mistake(scene.file, None, f"{field}.code", waiver.code, "no rule has this code", remedy))
        if not waiver.reason.strip():
            found.append(
                Mistake(scene.file, None, f"{field}.reason", "", "a waiver needs a reason", "Say who answers and why.")
            )
    return tuple(found)
