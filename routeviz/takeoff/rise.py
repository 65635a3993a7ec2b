"""How high the roof stands over the duct: a plan knows it from the heel alone, so it is measured and the duct cut to it."""

from __future__ import annotations

import math
from dataclasses import dataclass

from routeviz.catalog import table
from routeviz.model.overhead import ceiling_at_in
from routeviz.model.roofline import follows_rafters, stretch_of
from routeviz.model.route import PartKind, Route
from routeviz.model.scene import Scene
from routeviz.model.solids import FaceKind, Frame, SolidKind
from routeviz.model.takeoff import Cut, MeasureFirst, Sheet, Step
from routeviz.takeoff.measure import ranked
from routeviz.units import length_text

__all__ = ["rise_first", "rise_steps"]


@dataclass(frozen=True, slots=True)
class _Rise:
    """The roof's underside where a duct goes through [in], and the straight that is cut to reach it."""

    deck: str
    ceiling_in: float
    underside_in: float
    last: str
    least_in: float  # how low it may be for that straight to be left, and for the rafters to stay over the ceiling


def _rise(route: Route, scene: Scene, frame: Frame) -> _Rise | None:
    """Give it for a duct that goes up through a roof on its own framing; where the ceiling is the roof's, that one is known."""
    roof, straights = scene.roof, [p for p in route.parts if p.kind is PartKind.STRAIGHT]
    if route.as_built or route.termination.kind is not FaceKind.ROOF or roof is None or roof.framing is None:
        return None
    sheets = [p for p in route.penetrations if frame.solid(p.solid).kind in (SolidKind.DECK, SolidKind.COVERING)]
    if follows_rafters(scene) or not sheets or not straights:
        return None
    deck, last = sheets[0], straights[-1]
    ceiling = ceiling_at_in(scene, deck.centre[0], -deck.centre[1])
    boards = sum(layer.thickness_in for layer in scene.ceiling.layers)
    rafters = boards + roof.framing.depth_in * stretch_of(roof.pitch)
    used_up = deck.centre[2] - (last.length_in - scene.duct.last_run_in)
    least = min(deck.centre[2], max(used_up, ceiling + rafters))
    return _Rise(deck.solid, ceiling, deck.centre[2], last.id, least)


def rise_first(
    route: Route, scene: Scene, frame: Frame, measure: tuple[MeasureFirst, ...], cuts: tuple[Cut, ...]
) -> tuple[MeasureFirst, ...]:
    """Add the roof's height over the ceiling to what is measured first: before all else where nobody measured a heel."""
    rise = _rise(route, scene, frame)
    if rise is None:
        return measure
    high = rise.underside_in - rise.ceiling_in
    unknown = scene.roof is not None and scene.roof.heel_in is None
    spare = _spare_in(scene, cuts)
    least, most = (length_text(v, metric=scene.metric) for v in (rise.least_in - rise.ceiling_in, high + spare))
    line = MeasureFirst(
        what="Height from the ceiling to the roof's underside over the duct (cut the last piece to fit)",
        assumed=length_text(high, metric=scene.metric),
        slack_in=min(rise.underside_in - rise.least_in, spare),
        changes_at=f"less than {least}, or more than {most}: one more section of duct",
        ids=(rise.deck, rise.last),
        tolerance_in=scene.tolerances.rafters_in,
        assumed_only=unknown,
    )
    return (line, *measure) if unknown else ranked((*measure, line))


def _spare_in(scene: Scene, cuts: tuple[Cut, ...]) -> float:
    """Give how much longer the last piece can be cut from the section that it comes from [in]."""
    if not cuts:
        return 0.0
    beside = [c.cut_in for c in cuts if c.stock == cuts[-1].stock]
    kerfs = (len(beside) - 1) * float(table("stock")["cutting"]["kerf_in"])
    return max(0.0, scene.duct.stock_in - math.fsum(beside) - kerfs)


def rise_steps(route: Route, scene: Scene, frame: Frame) -> list[Step]:
    """Give the step that measures up to the roof before any straight is cut."""
    rise, bottom = _rise(route, scene, frame), scene.hood_bottom_in
    if rise is None or bottom is None:
        return []
    high = length_text(rise.underside_in - bottom, metric=scene.metric)
    collar = length_text(rise.underside_in - route.parts[0].start[2], metric=scene.metric)
    return [
        Step("rise", f"Measure plumb from the mounting line up to the roof's underside where the duct goes through: the plan "
             f"takes {high}, {collar} of it from the collar. Make the last straight longer or shorter by the difference.",
             ("marks", "inside", "outside"), "The cut list is set right before any straight is cut.", "", Sheet.SECTION)
    ]  # fmt: skip
