"""A small builder for the rules' examples: a kitchen, a frame and a run of duct in a few words.

Everything here is invented and as plain as can be; the examples change only what their rule looks at.
"""

from __future__ import annotations

import itertools
from dataclasses import replace
from typing import Any

from routeviz.model.airflow import AirResult, AirStatus, OperatingPoint
from routeviz.model.route import Near, Part, PartKind, Penetration, Route, Termination
from routeviz.model.scene import (
    Above,
    AboveKind,
    Cap,
    Ceiling,
    Cooktop,
    CooktopKind,
    Cover,
    DuctChoice,
    Fan,
    Hood,
    Kitchen,
    Layer,
    MemberKind,
    MemberLayout,
    Obstacle,
    ObstacleKind,
    Outlet,
    RuleChoice,
    Scene,
    SectionShape,
    SectionSize,
    Site,
    Tolerances,
    Wall,
    WallFrame,
    WallSide,
)  # fmt: skip
from routeviz.model.solids import (
    Box,
    Crossing,
    ExitFace,
    FaceKind,
    Frame,
    KeepOut,
    Member,
    Passage,
    Solid,
    SolidKind,
    Vec3,
    Zone,
)  # fmt: skip
from routeviz.model.spoken import spoken
from routeviz.rules.context import Context
from routeviz.rules.profiles import profile

__all__ = [
    "OUT",
    "UP",
    "air",
    "as_built_part",
    "cabinet",
    "duct",
    "flat",
    "hood_wall_face",
    "hood_wall_solid",
    "joist",
    "keep_out",
    "kitchen",
    "look",
    "meets",
    "member",
    "near",
    "round_duct",
    "straight_out",
    "straight_up",
    "zone",
]  # fmt: skip

UP: Vec3 = (0.0, 0.0, 1.0)
OUT: Vec3 = (0.0, 1.0, 0.0)
OUTER_IN = 6.5  # outer face of the hood wall


def round_duct(diameter_in: float) -> SectionSize:
    """Give a round section."""
    return SectionSize(SectionShape.ROUND, diameter_in, diameter_in)


def flat(width_in: float, height_in: float) -> SectionSize:
    """Give a rectangular section."""
    return SectionSize(SectionShape.RECT, width_in, height_in)


def _wall(side: WallSide) -> Wall:
    studs = MemberLayout(MemberKind.SAWN, "2x6", 1.5, 5.5, 16.0, 0.75)
    return Wall(side, "outdoors" if side is WallSide.HOOD else "room", WallFrame.WOOD, studs, 5.5, True, False,
                (Layer("gypsum board", 0.5),), (Layer("OSB sheathing", 0.5),))  # fmt: skip


def kitchen(**changes: Any) -> Scene:
    """Give a kitchen 120 in wide with a 96 in ceiling, an electric cooktop and a 36 in hood at 30 in."""
    plain = Scene(
        name="example", about="", file="", metric=False, invented=True, site=Site(),
        kitchen=Kitchen(120.0, 120.0, 96.0),
        walls=tuple(_wall(side) for side in WallSide),
        ceiling=Ceiling((Layer("gypsum board", 0.5),), MemberLayout(MemberKind.SAWN, "2x10", 1.5, 9.25, 16.0, 12.0)),
        above=Above(AboveKind.ATTIC), roof=None, spaces=(), obstacles=(),
        cooktop=Cooktop(CooktopKind.ELECTRIC, 60.0, 30.0, 21.0, 36.0, 2.0),
        hood=Hood(36.0, 20.0, 10.0, 2.0, 50.0, 60.0, 30.0, Outlet("top", round_duct(8.0), 0.0, 8.0),
                  Cover(16.0, 30.0, 12.0, 12.0), Fan(390.0)),
        duct=DuctChoice((round_duct(8.0),)), cap=Cap(), outdoors=(), rules=RuleChoice("irc-2021"), as_built=None,
        tolerances=Tolerances(), assumptions=(),
    )  # fmt: skip
    return replace(plain, **changes)


def cabinet(name: str, left_in: float, bottom_in: float, width_in: float, height_in: float, **changes: Any) -> Obstacle:
    """Give a wall cabinet 12 in deep against the hood wall."""
    plain = Obstacle(name, ObstacleKind.CABINET, left_in, 0.0, bottom_in, width_in, 12.0, height_in)
    return replace(plain, **changes)


def member(
    name: str, kind: SolidKind, lo: Vec3, hi: Vec3, axis: int, nominal: str = "2x10", *,
    timber: MemberKind = MemberKind.SAWN, **changes: Any,
) -> Solid:  # fmt: skip
    """Give a framing member as a box that runs along `axis`; its depth is the larger side across."""
    sizes = [b - a for i, (a, b) in enumerate(zip(lo, hi, strict=True)) if i != axis]
    crossing = changes.pop("crossing", Crossing.NEVER)
    about = Member(timber, nominal, min(sizes), max(sizes), axis, **changes)
    return Solid(name, kind, spoken(name), Box(lo, hi), crossing, "example", about, "timber", combustible=True)


def joist(number: int, centre_in: float, **changes: Any) -> Solid:
    """Give a 2x10 joist that runs out from the hood wall over a 96 1/2 in ceiling board."""
    lo, hi = (centre_in - 0.75, -120.0, 96.5), (centre_in + 0.75, 0.0, 105.75)
    return member(f"joist-{number}", SolidKind.JOIST, lo, hi, 1, number=number, **changes)


def hood_wall_face(*keep_outs: KeepOut) -> ExitFace:
    """Give the outer face of the hood wall."""
    return ExitFace("face-hood", "the wall behind", FaceKind.WALL, 1, 1, OUTER_IN, (OUTER_IN, 0.0, 0.0), (0.0, 12.0),
                    (120.0, 110.0), keep_outs, side=WallSide.HOOD)  # fmt: skip


def hood_wall_solid() -> Solid:
    """Give the board on the room side of the hood wall."""
    return Solid("hood-inside-1-1", SolidKind.BOARD, "wall behind gypsum board", Box((0.0, 0.0, 0.0), (120.0, 0.5, 96.0)),
                 Crossing.PASS, "walls.hood.inside", None, "gypsum board", side=WallSide.HOOD, wall="the wall behind")  # fmt: skip


def keep_out(name: str, kind: str, left_in: float, bottom_in: float, width_in: float, height_in: float, *,
             away_in: float = 0.0) -> KeepOut:  # fmt: skip
    """Give an outdoor thing on the hood wall's face."""
    return KeepOut(name, spoken(name), kind, (left_in, bottom_in), (left_in + width_in, bottom_in + height_in),
                   0.0, away_in)  # fmt: skip


def zone(name: str, lo: Vec3, hi: Vec3, space: str, passage: Passage = Passage.HIDDEN) -> Zone:
    """Give a zone as a box."""
    return Zone(name, name, passage, Box(lo, hi), space)


def meets(solid: Solid, direction: Vec3, centre: Vec3, size_in: float | tuple[float, float]) -> Penetration:
    """Give the hole that a run along `direction` through `centre` needs in a solid."""
    both = (size_in, size_in) if isinstance(size_in, float) else size_in
    lo, hi = (solid.shape.lo, solid.shape.hi) if isinstance(solid.shape, Box) else (centre, centre)
    axis = max(range(3), key=lambda a: abs(direction[a]))
    first, last = list(centre), list(centre)
    first[axis], last[axis] = lo[axis], hi[axis]
    return Penetration(solid.id, solid.label, solid.material, (first[0], first[1], first[2]), (last[0], last[1], last[2]),
                       direction, hi[axis] - lo[axis], "round" if isinstance(size_in, float) else "rectangular", both,
                       both)  # fmt: skip


def near(solid: Solid, gap_in: float, *, part: str = "straight-1") -> Near:
    """Say that a solid is near the duct."""
    return Near(solid.id, solid.label, gap_in, (1.0, 0.0, 0.0), (60.0, -8.0, 90.0), part)


def _unit(a: Vec3, b: Vec3) -> Vec3:
    d = tuple(q - p for p, q in zip(a, b, strict=True))
    length = sum(v * v for v in d) ** 0.5
    return (d[0] / length, d[1] / length, d[2] / length)


def _parts(points: tuple[Vec3, ...], section: SectionSize) -> tuple[Part, ...]:
    """Give straights and elbows of radius 1 x the side, shortened by their take-offs."""
    parts: list[Part] = []
    radius = section.width_in
    directions = [_unit(a, b) for a, b in itertools.pairwise(points)]
    at = points[0]
    for i, direction in enumerate(directions):
        corner = points[i + 1]
        cut = radius if i + 1 < len(directions) else 0.0
        end = tuple(c - cut * d for c, d in zip(corner, direction, strict=True))
        end3 = (end[0], end[1], end[2])
        length = sum(d * (e - a) for d, e, a in zip(direction, end3, at, strict=True))
        if length > 1e-6:
            parts.append(Part(f"straight-{i + 1}", PartKind.STRAIGHT, at, end3, direction, direction, section, section,
                              length, material="galvanized steel"))  # fmt: skip
        at = end3
        if cut:
            after = directions[i + 1]
            to = tuple(c + cut * d for c, d in zip(corner, after, strict=True))
            to3 = (to[0], to[1], to[2])
            parts.append(Part(f"elbow-{i + 1}", PartKind.ELBOW, at, to3, direction, after, section, section,
                              radius * 1.5708, 90.0, radius, corner, material="galvanized steel"))  # fmt: skip
            at = to3
    last = directions[-1]
    cap = Part("cap", PartKind.CAP, points[-1], points[-1], last, last, section, section, 0.0,
               note="with backdraft damper")  # fmt: skip
    return (*parts, cap)


def duct(points: tuple[Vec3, ...], *, section: SectionSize | None = None, **changes: Any) -> Route:
    """Give a route along square corners that ends at the hood wall's face unless told otherwise."""
    size = section or round_duct(8.0)
    parts = _parts(points, size)
    elbows = [i for i, p in enumerate(parts) if p.kind is PartKind.ELBOW]
    between = tuple(sum(p.length_in for p in parts[a + 1 : b]) for a, b in itertools.pairwise(elbows))
    end = Termination("face-hood", FaceKind.WALL, "outdoors", points[-1], parts[-1].direction, "the wall behind")
    plain = Route(
        "A", None, parts, size, sum(p.length_in for p in parts), float(len(elbows)), between, 0.0, (), end, ()
    )
    return replace(plain, **changes)


def straight_up(**changes: Any) -> Route:
    """Give a duct from the hood straight up through the roof."""
    top = (60.0, -8.0, 150.0)
    end = Termination("roof", FaceKind.ROOF, "outdoors", top, UP, "the roof")
    return duct(((60.0, -8.0, 77.5), top), **{"termination": end, **changes})


def straight_out(x: float = 60.0, z: float = 80.0, **changes: Any) -> Route:
    """Give a duct straight back through the hood wall."""
    return duct(((x, 0.0, z), (x, OUTER_IN, z)), **changes)


def as_built_part(kind: PartKind, section: SectionSize, *, out: SectionSize | None = None, length_in: float = 12.0,
                  start: Vec3 = (60.0, -8.0, 77.5), **changes: Any) -> Part:  # fmt: skip
    """Give one part that goes straight up from `start`."""
    to = (start[0], start[1], start[2] + length_in)
    plain = Part(f"{kind.value}-1", kind, start, to, UP, UP, section, out or section, length_in)
    return replace(plain, **changes)


def air(flow_cfm: float, *, velocity_fpm: float = 1000.0, code_ft: float = 20.0, allowed_ft: float | None = None,
        equivalent_ft: float = 20.0) -> AirResult:  # fmt: skip
    """Give an air result with what the rules read of it."""
    point = OperatingPoint(1.0, AirStatus.SOLVED, flow_cfm, flow_cfm, flow_cfm, 0.2, velocity_fpm)
    return AirResult((point,), (), 390.0, flow_cfm / 390.0, equivalent_ft, code_ft, allowed_ft, "", (), (), ())


def look(
    scene: Scene | None = None, *, solids: tuple[Solid, ...] = (), faces: tuple[ExitFace, ...] | None = None,
    zones: tuple[Zone, ...] = (), route: Route | None = None, blow: AirResult | None = None, profile_name: str = "",
) -> Context:  # fmt: skip
    """Give a context for a rule to look at."""
    used = scene or kitchen()
    bounds = Box((-200.0, -200.0, 0.0), (320.0, 200.0, 300.0))
    frame = Frame(solids, zones, (hood_wall_face(),) if faces is None else faces, bounds)
    return Context(used, frame, profile(profile_name or used.rules.profile), route, blow)
