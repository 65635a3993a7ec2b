"""Plans made by hand for the tests of the views: one straight up, one out the back, one blocked."""

from __future__ import annotations

import math
from dataclasses import replace
from typing import Any

import samples

from routeviz.framing import frame
from routeviz.model.airflow import AirResult, AirStatus, OperatingPoint
from routeviz.model.finding import Finding, State, Verdict
from routeviz.model.path import Bend, Blocker, Centreline, Outcome, Paths, SearchFacts, WhyNot
from routeviz.model.plan import Option, Plan
from routeviz.model.route import Near, Part, PartKind, Penetration, Route, Termination
from routeviz.model.scene import Obstacle, ObstacleKind, Scene, SectionSize
from routeviz.model.solids import FaceKind, Vec3
from routeviz.model.takeoff import MeasureFirst, Step, TakeOff
from routeviz.views.wallmap import MapCell, WallMap

X, OUT, COLLAR_Z = 70.0, -8.5, 77.0  # hood centre; outlet centre; top of the collar's seat: 36 + 30 + 11
UP: Vec3 = (0.0, 0.0, 1.0)
BACK: Vec3 = (0.0, 1.0, 0.0)


def scene(**changes: Any) -> Scene:
    """Juniper Lane with a wall cabinet on the left."""
    cabinet = Obstacle("wall-cabinet", ObstacleKind.CABINET, 0.0, 0.0, 54.0, 21.0, 12.0, 36.0)
    return samples.scene(**{"obstacles": (cabinet,), **changes})


def roof_z(at: Scene, x: float, y: float) -> float:
    """Height of the roof's surface over a point."""
    plane = next(f for f in frame(at).faces if f.kind is FaceKind.ROOF).plane
    return plane[0] + plane[1] * x + plane[2] * y


def straight_up(at: Scene, x: float = X, section: SectionSize = samples.ROUND_8) -> Route:
    """No elbow: from the collar through the roof."""
    top = roof_z(at, x, OUT)
    start, end = (x, OUT, COLLAR_Z), (x, OUT, top)
    wide = None if section.is_round else (1.0, 0.0, 0.0)
    parts = (
        Part("straight-1", PartKind.STRAIGHT, start, end, UP, UP, section, section, top - COLLAR_Z, wide=wide),
        Part("cap", PartKind.CAP, end, end, UP, UP, section, section, 0.0, wide=wide),
    )
    half = section.width_in / 2
    near = (
        Near("joist-4", "joist 4", x - half - 62.75, (-1.0, 0.0, 0.0), (62.75, OUT, 100.25), "straight-1"),
        Near("joist-5", "joist 5", 77.25 - x - half, (1.0, 0.0, 0.0), (77.25, OUT, 100.25), "straight-1"),
    )
    hole = (section.width_in, section.height_in)
    through = tuple(
        Penetration(i, label, "", (x, OUT, z), (x, OUT, z + 0.6), UP, 0.6, "round", hole, hole)
        for i, label, z in (
            ("ceiling-1", "ceiling", 96.0),
            ("roof-1-back", "roof deck", top - 1),
            ("roof-2-back", "shingles", top - 0.4),
        )
    )
    return Route("A", None, parts, section, top - COLLAR_Z, 0.0, (), 0.0, through,
                 Termination("roof-back", FaceKind.ROOF, "outdoors", end, UP, "the roof's back slope"), near,
                 words="Straight up between joists 4 and 5, out through the roof")  # fmt: skip


def out_the_back(at: Scene, x: float = X, section: SectionSize = samples.ROUND_8, radius: float = 8.0) -> Route:
    """One elbow: up inside the cover, then back through the wall."""
    corner = (x, OUT, COLLAR_Z + 2 + radius)
    wide = None if section.is_round else (1.0, 0.0, 0.0)
    face = 7.1875
    s, e1, e2 = (x, OUT, COLLAR_Z), (x, OUT, COLLAR_Z + 2), (x, OUT + radius, corner[2])
    end = (x, face, corner[2])
    parts = (
        Part("straight-1", PartKind.STRAIGHT, s, e1, UP, UP, section, section, 2.0, wide=wide),
        Part("elbow-1", PartKind.ELBOW, e1, e2, UP, BACK, section, section, radius * math.pi / 2, 90.0, radius, corner,
             wide, note="4-piece"),
        Part("straight-2", PartKind.STRAIGHT, e2, end, BACK, BACK, section, section, face - e2[1], wide=wide),
        Part("cap", PartKind.CAP, end, end, BACK, BACK, section, section, 0.0, wide=wide),
    )  # fmt: skip
    length = sum(p.length_in for p in parts)
    near = (Near("hood-stud-5", "stud 5", 1.25, (-1.0, 0.0, 0.0), (64.75, 3.0, corner[2]), "straight-2"),)
    return Route("B", None, parts, section, length, 1.0, (), 0.0, (),
                 Termination("face-hood", FaceKind.WALL, "outdoors", end, BACK, "the wall behind"), near,
                 words="One elbow, straight back between studs 5 and 6, out through the wall behind")  # fmt: skip


def offset_up(at: Scene, x: float = X, shift: float = 12.0, section: SectionSize = samples.ROUND_8) -> Route:
    """Two 45 degree elbows set the riser over to the right, above the ceiling joists."""
    top, radius = roof_z(at, x + shift, OUT), 8.0
    cut = radius * math.tan(math.radians(22.5))
    d: Vec3 = (math.sqrt(0.5), 0.0, math.sqrt(0.5))
    c1, c2 = (x, OUT, 84.0), (x + shift, OUT, 84.0 + shift)

    def along(p: Vec3, v: Vec3, t: float) -> Vec3:
        return (p[0] + v[0] * t, p[1] + v[1] * t, p[2] + v[2] * t)

    arc = radius * math.pi / 4
    pts = [
        (x, OUT, COLLAR_Z),
        along(c1, UP, -cut),
        along(c1, d, cut),
        along(c2, d, -cut),
        along(c2, UP, cut),
        (x + shift, OUT, top),
    ]
    parts = [
        Part("straight-1", PartKind.STRAIGHT, pts[0], pts[1], UP, UP, section, section, pts[1][2] - pts[0][2]),
        Part("elbow-1", PartKind.ELBOW, pts[1], pts[2], UP, d, section, section, arc, 45.0, radius, c1, note="4-piece"),
        Part("straight-2", PartKind.STRAIGHT, pts[2], pts[3], d, d, section, section, math.dist(pts[2], pts[3])),
        Part("elbow-2", PartKind.ELBOW, pts[3], pts[4], d, UP, section, section, arc, 45.0, radius, c2, note="4-piece"),
        Part("straight-3", PartKind.STRAIGHT, pts[4], pts[5], UP, UP, section, section, pts[5][2] - pts[4][2]),
        Part("cap", PartKind.CAP, pts[5], pts[5], UP, UP, section, section, 0.0),
    ]  # fmt: skip
    return Route("C", None, tuple(parts), section, sum(p.length_in for p in parts), 1.0, (), 0.0, (),
                 Termination("roof-back", FaceKind.ROOF, "outdoors", pts[5], UP, "the roof's back slope"), (),
                 words="Up with a 12 in offset right, out through the roof")  # fmt: skip


def air(flow: float = 371.0) -> AirResult:
    """An operating point that was not computed."""
    point = OperatingPoint(1.0, AirStatus.SOLVED, flow, flow - 20, flow + 15, 0.38, flow / 0.349)
    return AirResult((point,), (), 400.0, flow / 400.0, 22.0, 24.0, 60.0, "", ((0.0, 0.9), (400.0, 0.35), (480.0, 0.0)),
                     ((0.0, 0.0), (400.0, 0.42)), ())  # fmt: skip


def take_off() -> TakeOff:
    """Two steps and two things to measure."""
    steps = (
        Step("mark", "Mark 70 in on the tape and plumb to the ceiling.", (), "Power off at the panel."),
        Step("open", "Cut 8 1/4 in through the ceiling board between joists 4 and 5.", ("mark",)),
        Step(
            "roof",
            "Drill up from the centre mark, cut the deck, set cap and flashing.",
            ("open",),
            caution="Ladder tied off.",
        ),
        Step("hang", "Hang the canopy, underside 30 in above the cooktop.", ("mark",)),
        Step("run", "Run 8 in duct, crimped ends away from the fan, screws and foil tape.", ("roof", "hang")),
        Step("close", "Set the cover, see that the damper swings.", ("run",)),
    )
    measure = (
        MeasureFirst(
            "joist 4, right edge",
            "62 3/4 in from the left wall",
            3.25,
            "farther out than that and it meets the duct",
            ("joist-4",),
        ),
        MeasureFirst(
            "joist 5, left edge",
            "77 1/4 in from the left wall",
            3.25,
            "nearer than that and it meets the duct",
            ("joist-5",),
        ),
    )
    return TakeOff((), (), (), (), (), steps, measure)


def mount_finding(measured: float = 30.0, limit: float = 24.0) -> Finding:
    state = State.BROKEN if measured < limit else State.FINE
    return Finding("HOOD-HEIGHT", "Canopy above the cooktop", state, True, measured, "at least", limit, measured - limit, "in",
                   "x", "an invented rule, clause 1", ("hood-canopy",), (X, -20.0, 66.0))  # fmt: skip


def air_finding() -> Finding:
    return Finding("AIR-MAKEUP", "Fan sits exactly at the makeup-air limit", State.CLOSE, True, 400.0, "at most", 400.0, 0.0,
                   "cfm", "x", "an invented rule, clause 2", (), (X, -20.0, 67.0))  # fmt: skip


def window_finding(measured: float) -> Finding:
    state = State.BROKEN if measured < 36 else State.FINE
    return Finding("CAP-WINDOW", "Cap to the opening window", state, True, measured, "at least", 36.0, measured - 36, "in",
                   "x", "an invented rule, clause 3", ("hood-sink-window", "cap"), (X, 7.2, 87.0))  # fmt: skip


def joist_finding() -> Finding:
    return Finding("MEMBER-JOIST", "Joist 4 stands in the duct", State.BROKEN, True, 8.25, "at most", 2.375, -5.875, "in",
                   "x", "an invented rule, clause 4", ("joist-4",), (62.0, -36.0, 100.25), remedy="Shift 3 1/4 in left")  # fmt: skip


def plan(
    at: Scene | None = None, routes: tuple[Route, ...] | None = None, findings: tuple[Finding, ...] | None = None,
    verdict: Verdict = Verdict.WORKS, **changes: Any,
) -> Plan:  # fmt: skip
    """A plan with the given ways out; straight up when none are named."""
    at = at or scene()
    routes = (straight_up(at),) if routes is None else routes
    options = tuple(Option(r, (air_finding(),), air(371.0 - 13 * r.elbows), take_off()) for r in routes)
    facts = SearchFacts((10, 10, 10), 500, 3, 0.1)
    paths = Paths(Outcome.PROVEN if routes else Outcome.NONE_EXISTS, None, (), (), (), facts)
    made = Plan(
        at, frame(at), paths, options, (mount_finding(),) if findings is None else findings, verdict,
        "Straight up between joists 4 and 5, out through the roof: no elbow, 3 ft 1 in, 371 of 400 cfm.",
        "Simpler? There is none: no elbow is the fewest a duct can have. Proven.", (), (),
    )  # fmt: skip
    return replace(made, **changes)


def blocked() -> Plan:
    """The hood under joist 4: nothing goes out, and the joist is named."""
    base = scene()
    moved = replace(base, hood=replace(base.hood, centre_in=60.25), cooktop=replace(base.cooktop, centre_in=60.25))
    why = WhyNot(
        "straight up", (Blocker("joist-4", "joist 4", 1.5, (62.0, OUT, 100.0)),), -3.25, 6.75, -6.25, verified=True
    )
    made = plan(moved, (), (mount_finding(), joist_finding()), Verdict.BLOCKED)
    return replace(
        made, paths=replace(made.paths, why_not=(why,)),
        answer="Blocked: joist 4 is 1 1/2 in into the duct. Shift 3 1/4 in left and it goes straight up.",
        second="Not out the back: stud 5 is in the way, 1 in into it.",
    )  # fmt: skip


# -- a wall map that is made up by simple arithmetic: not an answer, only something for the page to carry ---------------


def _line(at: Scene, x: float, bottom: float, way: str) -> Centreline:
    start = (x, OUT, bottom + 11.0)
    if way == "up":
        points, bends, face = (start, (x, OUT, roof_z(at, x, OUT))), (), "roof-back"
    else:
        corner = (x, OUT, bottom + 11.0 + 10.0)
        points, bends, face = (start, corner, (x, 7.1875, corner[2])), (Bend(corner, 90.0, 8.0, 8.0),), "face-hood"
    none = (None,) * (len(points) - 1)
    return Centreline(points, bends, samples.ROUND_8, none, face, float(len(bends)), math.dist(points[0], points[-1]), 0.0, ())  # fmt: skip


def _map_cell(at: Scene, x: float, h: float) -> MapCell:
    bottom = at.cooktop.height_in + h
    half = at.hood.width_in / 2
    for name, a, b in (("the wall cabinet", 0.0, 21.0), ("the window", 112.0, 140.0)):
        if a < x + half and x - half < b:
            return MapCell(Verdict.NO_PLACE, reason=f"The hood cannot hang here: {name} is in the way.")
    if x - half < 0 or x + half > at.kitchen.width_in:
        return MapCell(Verdict.NO_PLACE, reason="The hood cannot hang here: the wall ends.")
    joists = [(n, 14.0 + 16 * (n - 1)) for n in range(1, 10)]
    number, near = min(joists, key=lambda j: abs(j[1] - x))
    gap = abs(near - x) - 0.75 - 4.0
    mount = replace(mount_finding(h), place=(x, -20.0, bottom))
    bay = int((x - 14.0) // 16) + 1
    if gap >= 0.25:
        gap_finding = Finding("DUCT-CLEAR", f"Duct beside joist {number}", State.CLOSE if gap < 1 else State.FINE, True, gap, "at least",
                              0.25, gap - 0.25, "in", "common practice", "common practice, no source", (), (x, -30.0, 100.0))  # fmt: skip
        line = _line(at, x, bottom, "up")
        verdict = Verdict.BLOCKED if h < 24 else Verdict.TIGHT if gap < 1 else Verdict.WORKS
        return MapCell(verdict, f"Straight up between joists {bay} and {bay + 1}, out through the roof", line, line.length_in, 0.0, 0.0,
                       371.0 - (h - 30), None, (mount, gap_finding))  # fmt: skip
    studs = [0.75 + 16 * n for n in range(10)]
    clear = min(abs(s - x) for s in studs) - 0.75 - 4.0
    shift = (near + 5.0 - x) if x >= near else (near - 5.0 - x)
    why = WhyNot(
        "straight up",
        (Blocker(f"joist-{number}", f"joist {number}", min(1.5, -gap), (near, OUT, 100.0)),),
        shift,
        None,
        None,
        verified=True,
    )
    if clear >= 0.25 and 112.0 - x - 4 >= 36:
        line = _line(at, x, bottom, "back")
        cap = replace(window_finding(112.0 - x - 4), place=(x, 7.2, bottom + 21))
        return MapCell(Verdict.WORKS, "One elbow, straight back, out through the wall behind", line, line.length_in, 1.0, 0.0, 358.0, why,
                       (mount, cap))  # fmt: skip
    joist = replace(
        joist_finding(),
        title=f"Joist {number} stands in the duct",
        where=(f"joist-{number}",),
        place=(near, -36.0, 100.25),
    )
    return MapCell(Verdict.BLOCKED, why=why, findings=(mount, joist))


def wall_map(
    at: Scene | None = None, step: float = 1.0, heights: tuple[float, ...] = (22.0, 24.0, 27.0, 30.0, 33.0)
) -> WallMap:
    """A map for every `step` inches and a few heights."""
    at = at or scene()
    positions = tuple(k * step for k in range(int(at.kitchen.width_in / step) + 1))
    return WallMap(positions, heights, tuple(tuple(_map_cell(at, x, h) for x in positions) for h in heights))
