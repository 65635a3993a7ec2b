"""Invented homes for the field cases: the sample kitchen with one thing changed, ducts as built, and short questions."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import samples

from routeviz import framing, pipeline, rules
from routeviz.model.finding import Finding, MemberRuling, MemberVerdict, State
from routeviz.model.plan import Plan
from routeviz.model.route import Penetration
from routeviz.model.scene import (
    Above,
    AboveKind,
    AsBuilt,
    AsBuiltFitting,
    DuctChoice,
    Fan,
    Layer,
    Obstacle,
    ObstacleKind,
    OutdoorKind,
    OutdoorThing,
    Outlet,
    Scene,
    SectionShape,
    SectionSize,
    Space,
    SpaceKind,
    Wall,
    WallFrame,
    WallSide,
)
from routeviz.model.solids import Frame, Solid

MM = 1 / 25.4  # inches in a millimetre
ALLOWED = (MemberVerdict.ALLOWED, MemberVerdict.WITHIN)
IRC = rules.profile("irc-2021")
BOARD = (Layer("gypsum board", 0.5),)


def round_duct(diameter_in: float) -> SectionSize:
    return SectionSize(SectionShape.ROUND, diameter_in, diameter_in)


def flat_duct(width_in: float, height_in: float) -> SectionSize:
    return SectionSize(SectionShape.RECT, width_in, height_in)


STACK = flat_duct(10.0, 3.25)


# --- changes of the sample kitchen ---


def with_duct(scene: Scene, section: SectionSize, *others: SectionSize, **laid: Any) -> Scene:
    """Give the hood an outlet of `section`, and a duct to match."""
    outlet = replace(scene.hood.outlet, section=section)
    return replace(scene, hood=replace(scene.hood, outlet=outlet), duct=DuctChoice((section, *others), **laid))


def with_hood(scene: Scene, **changes: Any) -> Scene:
    return replace(scene, hood=replace(scene.hood, **changes))


def rear_outlet(scene: Scene, section: SectionSize, up_in: float = 6.0, **laid: Any) -> Scene:
    """Let the hood blow straight back, `up_in` above its underside; no chimney cover."""
    hood = replace(scene.hood, outlet=Outlet("rear", section, up_in=up_in, collar_in=0.0), cover=None)
    return replace(scene, hood=hood, duct=DuctChoice((section,), **laid))


def with_wall(scene: Scene, side: WallSide, **changes: Any) -> Scene:
    walls = tuple(replace(w, **changes) if w.side is side else w for w in scene.walls)
    return replace(scene, walls=walls)


def blind(scene: Scene) -> Scene:
    """Take the window out of the hood wall and the lot line away from it."""
    return with_wall(scene, WallSide.HOOD, openings=(), lot_line_in=None)


def labelled(scene: Scene, cfm: float) -> Scene:
    return with_hood(scene, fan=Fan(cfm))


def only_wall(scene: Scene) -> Scene:
    return replace(scene, cap=replace(scene.cap, roof=False))


def only_roof(scene: Scene) -> Scene:
    return replace(scene, cap=replace(scene.cap, wall=False))


def room_above(scene: Scene, **joists: Any) -> Scene:
    """Put a bedroom on the kitchen: the way up is closed, the joist bays stay open."""
    layout = scene.ceiling.joists
    assert layout is not None
    return replace(
        scene, above=Above(AboveKind.STOREY, 96.0, (Layer("plywood subfloor", 0.75),)),
        ceiling=replace(scene.ceiling, joists=replace(layout, **joists)),
    )  # fmt: skip


def beyond_hood_wall(scene: Scene, kind: SpaceKind, *, deep_in: float = 120.0, open_side: WallSide = WallSide.FRONT,
                     duct_allowed: bool = True) -> Scene:  # fmt: skip
    """Put an enclosed place behind the hood wall; only its `open_side` faces the open air."""
    name = kind.value
    inner = blind(with_wall(scene, WallSide.HOOD, beyond=name, outside=BOARD))
    outside = samples.wall(WallSide.FRONT).outside
    walls = tuple(
        Wall(side, "outdoors" if side is open_side else "room", WallFrame.WOOD, samples.studs("2x4", depth=3.5), 3.5,
             side is open_side, False, (), outside if side is open_side else ())
        for side in (WallSide.LEFT, WallSide.RIGHT, WallSide.FRONT)
    )  # fmt: skip
    place = Space(name, kind, WallSide.HOOD, deep_in, 0.0, 144.0, 0.0, 100.0, walls, duct_allowed)
    return replace(inner, spaces=(place,))


def thing(name: str, kind: ObstacleKind, left_in: float, out_in: float, bottom_in: float, width_in: float,
          depth_in: float, height_in: float, **more: Any) -> Obstacle:  # fmt: skip
    return Obstacle(name, kind, left_in, out_in, bottom_in, width_in, depth_in, height_in, **more)


def outside(name: str, kind: OutdoorKind, left_in: float, bottom_in: float, width_in: float, height_in: float,
            away_in: float = 0.0) -> OutdoorThing:  # fmt: skip
    """Put a thing on the outer face of the hood wall."""
    return OutdoorThing(name, kind, "hood", left_in, bottom_in, width_in, height_in, away_in)


# --- ducts as built ---


def straight(length_in: float) -> AsBuiltFitting:
    return AsBuiltFitting("straight", length_in)


def flex(length_in: float) -> AsBuiltFitting:
    return AsBuiltFitting("flex", length_in)


def elbow(turn: str, angle_deg: float = 90.0) -> AsBuiltFitting:
    return AsBuiltFitting("elbow", angle_deg=angle_deg, turn=turn)


def offset(turn: str, shift_in: float, angle_deg: float = 45.0) -> AsBuiltFitting:
    return AsBuiltFitting("offset", shift_in, angle_deg, turn)


def reducer(to: SectionSize) -> AsBuiltFitting:
    return AsBuiltFitting("reducer", to_section=to)


def cap(ends_in: str = "") -> AsBuiltFitting:
    return AsBuiltFitting("cap", ends_in=ends_in)


def open_end(ends_in: str = "") -> AsBuiltFitting:
    return AsBuiltFitting("open end", ends_in=ends_in)


def built(
    scene: Scene, *fittings: AsBuiltFitting, material: str = "galvanized steel", screws: int | None = None
) -> Plan:
    """Judge a duct that is there or proposed."""
    route = AsBuilt(tuple(fittings), material, screws_per_joint=screws)
    return pipeline.plan(replace(scene, as_built=route))


# --- questions ---


def found(plan: Plan | tuple[Finding, ...], code: str, about: str = "") -> tuple[Finding, ...]:
    """Give the findings of one rule, those whose title holds `about`."""
    every = plan if isinstance(plan, tuple) else plan.all_findings
    return tuple(f for f in every if f.code == code and about in f.title)


def one(plan: Plan | tuple[Finding, ...], code: str, about: str = "") -> Finding:
    """Give the only finding of one rule."""
    (only,) = found(plan, code, about)
    return only


def must_broken(plan: Plan) -> tuple[Finding, ...]:
    return tuple(f for f in plan.all_findings if f.must and f.state is State.BROKEN)


def framed(scene: Scene) -> Frame:
    return framing.frame(scene, rules.keep_away(rules.profile(scene.rules.profile)))


def ruled(solid: Solid, cut: rules.Cut, scene: Scene | None = None, frame: Frame | None = None) -> MemberRuling:
    """Say what may be done to a member, with the maker's numbers of the scene."""
    maker = scene.rules.maker if scene is not None else None
    ruling = rules.member_verdict(solid, cut, IRC, frame=frame, maker=maker)
    assert ruling is not None
    return ruling


def holes_in(plan: Plan, text: str) -> tuple[Penetration, ...]:
    """Give the holes of the best route in solids whose label holds `text`."""
    assert plan.best is not None
    return tuple(p for p in plan.best.route.penetrations if text in p.label)


def bought(plan: Plan, text: str) -> tuple[str, ...]:
    """Give the sizes of the parts whose name holds `text`."""
    assert plan.best is not None
    return tuple(line.size for line in plan.best.takeoff.buy if text in line.item)


def steps(plan: Plan) -> list[str]:
    """Give the steps of the work in order."""
    assert plan.best is not None
    return [step.id for step in plan.best.takeoff.steps]
