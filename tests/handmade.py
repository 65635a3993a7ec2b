"""Juniper Lane framed and routed by hand, so that take-off and drawings can be tested on their own.

Straight up between joists 4 and 5 through the roof, and straight back and out through the hood wall. Every number is
plain arithmetic on the sample scene: hood underside 36 + 30 = 66 in, body 11 in, collar 1 1/2 in.
"""

from __future__ import annotations

import math
from dataclasses import replace

import samples

from routeviz.model.airflow import AirResult, AirStatus, Loss, OperatingPoint
from routeviz.model.finding import Finding, State, Verdict
from routeviz.model.path import Bend, Centreline, Outcome, Paths, SearchFacts
from routeviz.model.plan import Option, Plan
from routeviz.model.route import Near, Part, PartKind, Penetration, Route, Termination
from routeviz.model.scene import Assumption, MemberKind, Scene, SectionSize, WallSide
from routeviz.model.solids import (
    Box,
    Crossing,
    ExitFace,
    FaceKind,
    Frame,
    Member,
    Prism,
    RoofEdge,
    Solid,
    SolidKind,
    Vec3,
)
from routeviz.takeoff import count

COLLAR: Vec3 = (70.0, -8.5, 78.5)
EAVE = 112.0  # where the deck's underside meets the hood wall's finished face
PITCH = 0.25


def roof_z(y: float, over: float = 0.0) -> float:
    """Give the roof's height above the floor, `over` measured plumb above the deck's underside."""
    return EAVE - PITCH * y + over


def frame() -> Frame:
    """Give the framed kitchen: hood wall, ceiling, rafters and roof."""
    solids: list[Solid] = []

    def box(name: str, kind: SolidKind, label: str, lo: Vec3, hi: Vec3, crossing: Crossing, **more: object) -> None:
        solids.append(Solid(name, kind, label, Box(lo, hi), crossing, "test", **more))  # type: ignore[arg-type]

    stud = Member(MemberKind.SAWN, "2x6", 1.5, 5.5, 2, exterior=True)
    for n in range(10):
        x = min(0.75 + 16.0 * n, 143.25)
        box(f"stud-{n + 1}", SolidKind.STUD, f"stud {n + 1}", (x - 0.75, 0.5, 1.5), (x + 0.75, 6.0, 93.625),
            Crossing.NEVER, member=replace(stud, number=n + 1), side=WallSide.HOOD)  # fmt: skip
    plate = Member(MemberKind.SAWN, "2x6", 1.5, 5.5, 0, exterior=True)
    for n, z in enumerate((0.0, 93.625, 95.125), start=1):
        box(f"plate-{n}", SolidKind.PLATE, f"plate {n}", (0.0, 0.5, z), (144.0, 6.0, z + 1.5), Crossing.RULE,
            member=plate, side=WallSide.HOOD)  # fmt: skip
    joist = Member(MemberKind.SAWN, "2x8", 1.5, 7.25, 1)
    for n in range(9):
        x = 14.0 + 16.0 * n
        box(f"joist-{n + 1}", SolidKind.JOIST, f"joist {n + 1}", (x - 0.75, -132.0, 96.625), (x + 0.75, 0.0, 103.875),
            Crossing.NEVER, member=replace(joist, number=n + 1))  # fmt: skip
        outline = (
            (-132.0, roof_z(-132.0, -5.5)),
            (0.0, roof_z(0.0, -5.5)),
            (0.0, roof_z(0.0)),
            (-132.0, roof_z(-132.0)),
        )
        solids.append(Solid(f"rafter-{n + 1}", SolidKind.RAFTER, f"rafter {n + 1}", Prism(0, x - 0.75, x + 0.75, outline),
                            Crossing.NEVER, "test", replace(joist, number=n + 1, nominal="2x6", depth_in=5.5)))  # fmt: skip
    box("ceiling-board", SolidKind.BOARD, "ceiling board", (0.0, -132.0, 96.0), (144.0, 0.0, 96.625), Crossing.PASS)
    box(
        "wall-board",
        SolidKind.BOARD,
        "wallboard",
        (0.0, 0.0, 0.0),
        (144.0, 0.5, 96.0),
        Crossing.PASS,
        side=WallSide.HOOD,
    )
    box("sheathing", SolidKind.SHEATHING, "OSB sheathing", (0.0, 6.0, 0.0), (144.0, 6.4375, 104.0), Crossing.PASS)
    box("siding", SolidKind.CLADDING, "wood lap siding", (0.0, 6.4375, 0.0), (144.0, 7.1875, 104.0), Crossing.PASS)
    for name, kind, label, low, high in (
        ("deck", SolidKind.DECK, "roof deck", 0.0, 0.5),
        ("shingles", SolidKind.COVERING, "asphalt shingles", 0.5, 0.875),
    ):
        outline = tuple((y, roof_z(y, z)) for y, z in ((-132.0, low), (16.0, low), (16.0, high), (-132.0, high)))
        solids.append(Solid(name, kind, label, Prism(0, -16.0, 160.0, outline), Crossing.PASS, "test"))
    faces = (
        ExitFace("roof-near", "roof, hood wall side", FaceKind.ROOF, 2, 1, 0.0, (EAVE + 0.875, 0.0, -PITCH),
                 (-16.0, -132.0), (160.0, 16.0),
                 edges=(RoofEdge("outer face of the left wall below", 0, -16.0, hooks=False), RoofEdge("rake", 0, 160.0, hooks=True),
                        RoofEdge("ridge", 1, -132.0, hooks=True), RoofEdge("eave", 1, 16.0, hooks=True))),
        ExitFace("wall-hood", "hood wall", FaceKind.WALL, 1, 1, 7.1875, (0.0, 0.0, 0.0), (0.0, 0.0), (144.0, 104.0),
                 side=WallSide.HOOD),
    )  # fmt: skip
    return Frame(tuple(solids), (), faces, Box((-20.0, -140.0, 0.0), (164.0, 20.0, 160.0)))


def straight(name: str, start: Vec3, end: Vec3, section: SectionSize = samples.ROUND_8) -> Part:
    """Give a straight part."""
    length = math.dist(start, end)
    way = tuple((b - a) / length for a, b in zip(start, end, strict=True))
    return Part(name, PartKind.STRAIGHT, start, end, way, way, section, section, length, material="galvanized steel")  # type: ignore[arg-type]


def elbow(name: str, corner: Vec3, before: Vec3, after: Vec3, radius: float = 8.0, angle: float = 90.0) -> Part:
    """Give an elbow; take-off R tan(t/2), arc R t."""
    cut = radius * math.tan(math.radians(angle) / 2)
    start = tuple(c - cut * d for c, d in zip(corner, before, strict=True))
    end = tuple(c + cut * d for c, d in zip(corner, after, strict=True))
    return Part(name, PartKind.ELBOW, start, end, before, after, samples.ROUND_8, samples.ROUND_8,  # type: ignore[arg-type]
                radius * math.radians(angle), angle, radius, corner, note="4-piece")  # fmt: skip


def cap(at: Vec3, way: Vec3) -> Part:
    """Give a cap; its length is not part of the run."""
    return Part("cap", PartKind.CAP, at, at, way, way, samples.ROUND_8, samples.ROUND_8, 0.0)


def _pass(
    solid: str, label: str, material: str, centre: Vec3, leave: Vec3, shape: str, size: tuple[float, float],
    stretch: float = 1.0,
) -> Penetration:  # fmt: skip
    through = math.dist(centre, leave)
    way: Vec3 = tuple((b - a) / through for a, b in zip(centre, leave, strict=True))  # type: ignore[assignment]
    hole = (size[0] + 0.5, size[1] + 0.5 * stretch)
    return Penetration(solid, label, material, centre, leave, way, through, shape, size, hole, "kitchen", "attic",
                       (1.0, stretch))  # fmt: skip


def up_route() -> Route:
    """Give the route straight up: 1/2 in over the deck ... the outer surface is 112 + 8.5/4 + 7/8 = 115 in."""
    x, y, z = COLLAR
    top = roof_z(y, 0.875)
    up: Vec3 = (0.0, 0.0, 1.0)
    parts = (straight("straight-1", COLLAR, (x, y, top)), cap((x, y, top), up))
    slope = math.hypot(1.0, PITCH)
    ellipse = (8.0, 8.0 * slope)
    holes = (
        _pass("ceiling-board", "ceiling board", "gypsum board", (x, y, 96.0), (x, y, 96.625), "round", (8.0, 8.0)),
        _pass("deck", "roof deck", "plywood", (x, y, roof_z(y)), (x, y, roof_z(y, 0.5)), "ellipse", ellipse, slope),
        _pass(
            "shingles", "asphalt shingles", "asphalt", (x, y, roof_z(y, 0.5)), (x, y, top), "ellipse", ellipse, slope
        ),
    )
    near = (
        Near("joist-4", "joist 4", 3.25, (-1.0, 0.0, 0.0), (62.75, y, 100.0), "straight-1"),
        Near("joist-5", "joist 5", 3.25, (1.0, 0.0, 0.0), (77.25, y, 100.0), "straight-1"),
        Near("rafter-4", "rafter 4", 3.25, (-1.0, 0.0, 0.0), (62.75, y, 112.0), "straight-1"),
        Near("rafter-5", "rafter 5", 3.25, (1.0, 0.0, 0.0), (77.25, y, 112.0), "straight-1"),
    )
    line = Centreline(
        (COLLAR, (x, y, top)), (), samples.ROUND_8, (None,), "roof-near", 0.0, top - z, 0.0, (), ("joist bay 4-5",), 3.0
    )
    return Route("A", line, parts, samples.ROUND_8, top - z, 0.0, (), 0.0, holes,
                 Termination("roof-near", FaceKind.ROOF, "outdoors", (x, y, top), up, "roof, hood wall side"), near,
                 words="Straight up between joists 4 and 5, out through the roof")  # fmt: skip


def back_route() -> Route:
    """Give one elbow: 11 1/2 in up above the ceiling's underside ... then back through the wall, as a sketch."""
    x, y, z = COLLAR
    corner = (x, y, z + 10.0)
    end = (x, 7.1875, z + 10.0)
    up: Vec3 = (0.0, 0.0, 1.0)
    back: Vec3 = (0.0, 1.0, 0.0)
    turn = elbow("elbow-1", corner, up, back)
    parts = (straight("straight-1", COLLAR, turn.start), turn, straight("straight-2", turn.end, end), cap(end, back))
    height = z + 10.0
    holes = tuple(
        _pass(s, label, m, (x, a, height), (x, b, height), "round", (8.0, 8.0))
        for s, label, m, a, b in (
            ("wall-board", "wallboard", "gypsum board", 0.0, 0.5),
            ("sheathing", "OSB sheathing", "OSB", 6.0, 6.4375),
            ("siding", "wood lap siding", "wood", 6.4375, 7.1875),
        )
    )
    near = (
        Near("stud-5", "stud 5", 0.5, (-1.0, 0.0, 0.0), (65.5, 2.0, height), "straight-2"),
        Near("stud-6", "stud 6", 6.0, (1.0, 0.0, 0.0), (80.0, 2.0, height), "straight-2"),
    )
    length = math.fsum(p.length_in for p in parts)
    line = Centreline((COLLAR, corner, end), (Bend(corner, 90.0, 8.0, 8.0),), samples.ROUND_8, (None, None), "wall-hood", 1.0,
                      10.0 + 15.6875, 0.0, (), ("wall",), 0.25)  # fmt: skip
    return Route("B", line, parts, samples.ROUND_8, length, 1.0, (), 0.0, holes,
                 Termination("wall-hood", FaceKind.WALL, "outdoors", end, back, "hood wall"), near,
                 words="Up, one elbow, out through the hood wall")  # fmt: skip


def findings() -> tuple[Finding, ...]:
    """Give a few findings in every state."""
    return (
        Finding("HGT-CANOPY-LOW", "cooktop to hood", State.FINE, True, 30.0, "at least", 24.0, 6.0, "in", "maker", "maker's instructions",
                ("hood",), (70.0, -10.0, 66.0)),
        Finding("CLR-DUCT", "clear of joist 4", State.CLOSE, True, 3.25, "at least", 0.25, 3.0, "in", "common-practice",
                "common practice, no source", ("joist-4",), (62.75, -8.5, 100.0), remedy="centre the duct in its bay"),
        Finding("TRM-OPENING", "cap to the operable window", State.BROKEN, True, 30.0, "at least", 36.0, -6.0, "in", "irc",
                "IRC 2021 M1504.3", ("sink-window",), (112.0, 7.0, 80.0), remedy="shift the cap 6 in left"),
        Finding("PWR-CIRCUIT", "individual circuit for a cord", State.NOT_CHECKED, False, None, "", None, None, "", "nec",
                "NEC 422.16(B)(4)", ("hood",), detail="the scene does not say"),
    )  # fmt: skip


def air() -> AirResult:
    """Give an invented air result."""
    point = OperatingPoint(1.0, AirStatus.SOLVED, 371.0, 352.0, 384.0, 0.41, 1063.0)
    losses = (
        Loss("straight-1", "straight, 3 ft", 0.01, 0.009, 0.012, None, "friction"),
        Loss("cap", "roof cap", 0.07, 0.05, 0.1, 1.0, "common practice"),
    )
    curve = ((0.0, 0.9), (200.0, 0.75), (400.0, 0.35), (480.0, 0.0))
    system = tuple((q, 0.41 * (q / 371.0) ** 2) for q in (0.0, 100.0, 200.0, 300.0, 371.0, 420.0))
    return AirResult((point,), losses, 400.0, 371.0 / 400.0, 21.0, 19.0, 198.0, "", curve, system, (), ())


def plan(scene: Scene | None = None, routes: tuple[Route, ...] | None = None) -> Plan:
    """Give a whole plan made by hand."""
    scene = scene or samples.scene(
        assumptions=(Assumption("ceiling.joists", "2x8 at 16 in", "nobody opened the ceiling"),)
    )
    framed = frame()
    options = tuple(
        Option(r, findings(), air(), count(r, scene, framed, findings()))
        for r in (routes or (up_route(), back_route()))
    )
    lines = tuple(r.centreline for r in (o.route for o in options) if r.centreline is not None)
    paths = Paths(Outcome.PROVEN, lines[0] if lines else None, lines[1:], (), (), SearchFacts((1, 1, 1), 1, 3, 0.0))
    return Plan(scene, framed, paths, options, (), Verdict.WORKS,
                "Straight up between joists 4 and 5, out through the roof: no elbow, 3 ft, 371 of 400 cfm.",
                "Simpler? There is none: straight up has no elbow. Proven.", scene.assumptions, ())  # fmt: skip
