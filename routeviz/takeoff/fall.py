"""A level run that should fall towards the cap: by how much lower than drawn each hole along it must then be."""

from __future__ import annotations

import math
from dataclasses import replace

from routeviz.model.finding import Finding, State
from routeviz.model.route import Route, level_stretches
from routeviz.model.scene import Scene
from routeviz.model.takeoff import Hole
from routeviz.units import length_text

__all__ = ["LOWER", "fall_words", "with_fall"]

LOWER = "lower than given here"
_CODE = "DCT-SLOPE"
_ON_THE_LINE_IN = 1e-3


def _fall(route: Route, findings: tuple[Finding, ...]) -> float:
    """Give the fall that is asked for, over the run's length; 0 where none is, or where the run is laid already."""
    asked = [f for f in findings if f.code == _CODE and f.state is not State.FINE and not f.waived]
    return asked[0].limit / 12.0 if asked and asked[0].limit is not None and not route.as_built else 0.0


def _along(route: Route, hole: Hole) -> float:
    """Give how far along its level stretch a hole is [in]; 0 for one on no level straight."""
    for stretch in level_stretches(route.parts):
        run = 0.0
        for part in stretch:
            off = [h - s for h, s in zip(hole.centre, part.start, strict=True)]
            far = sum(o * d for o, d in zip(off, part.direction, strict=True))
            aside = math.sqrt(max(0.0, sum(o * o for o in off) - far * far))
            if aside < _ON_THE_LINE_IN and -_ON_THE_LINE_IN <= far <= part.length_in + _ON_THE_LINE_IN:
                return run + max(0.0, far)
            run += part.length_in
    return 0.0


def with_fall(holes: tuple[Hole, ...], route: Route, scene: Scene, findings: tuple[Finding, ...]) -> tuple[Hole, ...]:
    """Say beside each hole that the clearance does not cover how much lower it must be; the measures stay as drawn."""
    fall = _fall(route, findings)
    if fall == 0.0:
        return holes
    found = []
    for hole in holes:
        lower = fall * _along(route, hole)
        if lower > scene.duct.clearance_in + 1e-9:
            words = f"for the run to fall, {length_text(lower, metric=scene.metric)} {LOWER}"
            hole = replace(hole, note=f"{hole.note}; {words}" if hole.note else words)
        found.append(hole)
    return tuple(found)


def fall_words(route: Route, scene: Scene, findings: tuple[Finding, ...]) -> str:
    """Say how the level run is laid, for the step that lays it; "" where no fall is asked for."""
    fall = _fall(route, findings)
    if fall == 0.0:
        return ""
    falls = [fall * sum(p.length_in for p in stretch) for stretch in level_stretches(route.parts)]
    return " and ".join(length_text(f, metric=scene.metric) for f in falls if f > scene.duct.clearance_in)
