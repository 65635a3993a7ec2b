"""The straight ways that a plan could not have, as routes, so that they can be drawn where they meet something."""

from __future__ import annotations

import math
from dataclasses import dataclass
from itertools import pairwise

from routeviz.model.overhead import ceiling_at_in
from routeviz.model.path import Blocker, WhyNot
from routeviz.model.plan import Plan
from routeviz.model.route import Part, PartKind, Route, Termination
from routeviz.model.solids import ExitFace, FaceKind, Vec3

__all__ = ["Wish", "wishes"]

_PAST_IN = 14.0  # so far over the ceiling a riser is drawn that has no roof over it


@dataclass(frozen=True, slots=True)
class Wish:
    """A straight way that something bars: why, and the duct as it would run."""

    why: WhyNot
    route: Route
    face: ExitFace | None  # where it would leave

    @property
    def up(self) -> bool:
        """Whether it goes up."""
        return self.why.wanted == "straight up"

    @property
    def bars(self) -> tuple[Blocker, ...]:
        """Give what stands in it and can be drawn: a member, a closed place, a thing outdoors."""
        return tuple(b for b in self.why.blockers if b.id)


def wishes(plan: Plan) -> tuple[Wish, ...]:
    """Give the straight ways of a plan without a route that something with a place bars."""
    if plan.best is not None or plan.scene.hood_bottom_in is None:
        return ()
    made = [_wish(plan, why) for why in plan.paths.why_not if why.wanted in ("straight up", "straight back")]
    return tuple(w for w in made if w.bars)


def _wish(plan: Plan, why: WhyNot) -> Wish:
    start = _collar(plan)
    if why.wanted == "straight up":
        x, y = start[0], start[1]
        if plan.scene.hood.outlet.place != "top":  # it turns up where the first thing in the way was met
            y = next((b.at[1] for b in why.blockers if b.id and b.at[1] < 0.0), y)
        foot = (x, y, start[2])
        face = _over(plan, foot)
        top = _surface(face, foot) + plan.scene.cap.roof_stub_in if face else ceiling_at_in(plan.scene, x) + _PAST_IN
        points = [start, foot, (x, y, top)]
    else:
        face = next((f for f in plan.frame.faces if f.kind is FaceKind.WALL and f.axis == 1 and f.sign > 0), None)
        level = next((b.at[2] for b in why.blockers if b.at[2] > 0.0), start[2])
        out = face.at_in if face else plan.scene.walls[0].thickness_in
        points = [start, (start[0], start[1], level), (start[0], out, level)]
    return Wish(why, _route(plan, points, face), face)


def _collar(plan: Plan) -> Vec3:
    """Give the middle of the hood's outlet."""
    hood, bottom = plan.scene.hood, plan.scene.hood_bottom_in or 0.0
    x = hood.centre_in + hood.outlet.across_in
    if hood.outlet.place == "top":
        return x, -hood.outlet.out_in, bottom + hood.body_in
    return x, 0.0, bottom + hood.outlet.up_in


def _over(plan: Plan, at: Vec3) -> ExitFace | None:
    """Give the roof over a place."""
    roofs = (f for f in plan.frame.faces if f.kind is FaceKind.ROOF)
    return next((f for f in roofs if all(f.lo[k] <= at[k] <= f.hi[k] for k in (0, 1))), None)


def _surface(face: ExitFace, at: Vec3) -> float:
    return face.plane[0] + face.plane[1] * at[0] + face.plane[2] * at[1]


def _route(plan: Plan, points: list[Vec3], face: ExitFace | None) -> Route:
    """Make straights along the points, with a cap where they leave."""
    section = plan.scene.duct.sections[0]
    parts: list[Part] = []
    way: Vec3 = (0.0, 0.0, 1.0)
    for n, (a, b) in enumerate(pairwise(points), start=1):
        long = math.dist(a, b)
        if long < 1e-6:
            continue
        way = tuple((q - p) / long for p, q in zip(a, b, strict=True))  # type: ignore[assignment]
        parts.append(
            Part(f"wished-{n}", PartKind.STRAIGHT, a, b, way, way, section, section, long, wide=(1.0, 0.0, 0.0))
        )
    if face is not None:
        parts.append(Part("wished-cap", PartKind.CAP, points[-1], points[-1], way, way, section, section, 0.0))
    end = Termination(face.id if face else "", face.kind if face else None, "outdoors", points[-1], way, "")
    return Route("", None, tuple(parts), section, math.fsum(p.length_in for p in parts), 0.0, (), 0.0, (), end, ())
