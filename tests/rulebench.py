"""Short ways to frame a scene, lay a route as built, and pick findings, for the rules' tests."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import samples

from routeviz import framing, routing, rules
from routeviz.model.finding import Finding, State
from routeviz.model.route import Route
from routeviz.model.scene import AsBuilt, AsBuiltFitting, RuleChoice, Scene, SectionSize
from routeviz.model.solids import Frame, Solid, SolidKind


def placed(scene: Scene, profile: str = "irc-2021") -> Scene:
    """Give a scene another rule profile."""
    return replace(scene, rules=replace(scene.rules, profile=profile))


def framed(scene: Scene) -> Frame:
    """Frame a scene with its own profile's distances."""
    return framing.frame(scene, rules.keep_away(rules.profile(scene.rules.profile)))


def built(*fittings: AsBuiltFitting, scene: Scene | None = None, **about: Any) -> Scene:
    """Give a scene with a route as built."""
    return replace(scene or samples.scene(), as_built=AsBuilt(fittings, **about))


def straight(length_in: float) -> AsBuiltFitting:
    return AsBuiltFitting("straight", length_in)


def elbow(turn: str) -> AsBuiltFitting:
    return AsBuiltFitting("elbow", turn=turn)


def flex(length_in: float) -> AsBuiltFitting:
    return AsBuiltFitting("flex", length_in)


def reducer(section: SectionSize) -> AsBuiltFitting:
    return AsBuiltFitting("reducer", 6.0, to_section=section)


def cap(ends_in: str = "") -> AsBuiltFitting:
    return AsBuiltFitting("cap", ends_in=ends_in)


def open_end(ends_in: str = "") -> AsBuiltFitting:
    return AsBuiltFitting("open end", ends_in=ends_in)


def laid(scene: Scene) -> tuple[Route, Frame]:
    """Lay the scene's as-built route in its frame."""
    frame = framed(scene)
    return routing.realise_as_built(scene, frame), frame


def judge_built(scene: Scene) -> tuple[Finding, ...]:
    """Judge a scene and its route as built with the scene's own profile."""
    route, frame = laid(scene)
    profile = rules.profile(scene.rules.profile)
    return rules.check(rules.Context(scene, frame, profile, route))


def judge_scene(scene: Scene) -> tuple[Finding, ...]:
    """Judge the scene alone, without framing it."""
    return rules.check_scene(
        scene, Frame((), (), (), framed(samples.scene()).bounds), rules.profile(scene.rules.profile)
    )


def all_of(findings: tuple[Finding, ...], code: str) -> tuple[Finding, ...]:
    return tuple(f for f in findings if f.code == code)


def one_of(findings: tuple[Finding, ...], code: str) -> Finding:
    """Give the only finding with this code."""
    (found,) = all_of(findings, code)
    return found


def broken_codes(findings: tuple[Finding, ...], *, must: bool = True) -> set[str]:
    """Give the codes of all broken findings, the musts alone unless told otherwise."""
    return {f.code for f in findings if f.state is State.BROKEN and (f.must or not must)}


def find_solid(frame: Frame, kind: SolidKind, *, at: float, axis: int = 0) -> Solid:
    """Give the solid of a kind that stands at a coordinate."""
    from routeviz.rules.cuts import extent

    for solid in frame.solids:
        lo, hi = extent(solid.shape)
        if solid.kind is kind and lo[axis] <= at <= hi[axis]:
            return solid
    raise AssertionError(f"no {kind} at {at}")


def choice(profile: str, **more: Any) -> RuleChoice:
    return RuleChoice(profile, **more)
