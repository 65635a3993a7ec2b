"""The kitchen as pieces: floor, cabinets and counter, windows and doors, cooktop, hood and chimney cover."""

from __future__ import annotations

from collections.abc import Iterator

import numpy as np
import trimesh

from routeviz.model.overhead import ceiling_at_in, ceiling_over_hood_in
from routeviz.model.plan import Plan
from routeviz.model.scene import (
    Burner,
    CooktopKind,
    Obstacle,
    ObstacleKind,
    Opening,
    OpeningKind,
    Scene,
    ServiceKind,
    WallSide,
)
from routeviz.model.solids import Box, Solid, SolidKind
from routeviz.model.spoken import spoken
from routeviz.views.house import CutAway
from routeviz.views.parts import Group, Layer, Piece
from routeviz.views.shapes import Mesh, box, frustum, merge, slab_of, tube

__all__ = ["cook_pieces", "furnishing_pieces", "hood_bottom", "hood_pieces"]

_GAP = 0.12  # joint between cabinet fronts
_MODULE = 24.0


def hood_bottom(plan: Plan) -> float:
    """Give the hood's underside above the floor [in]; the usual 30 in over the cooktop while none is chosen."""
    given = plan.scene.hood_bottom_in
    return plan.scene.cooktop.height_in + 30.0 if given is None else given


# -- floor, counter, base cabinets ------------------------------------------------------------------------------------


def _floor(plan: Plan, cut: CutAway) -> Iterator[Piece]:
    width = plan.scene.kitchen.width_in
    front = cut.front_in - 24 if not cut.draw_front else cut.front_in
    front = max(front, -plan.scene.kitchen.depth_in)
    edges = np.arange(0.0, front, -6.9)
    for k, y in enumerate(edges):
        low = max(y - 6.82, front)
        if y - low > 0.5:
            yield Piece(f"floor-board-{k + 1}", "floor", Layer.KITCHEN, "floor b" if k % 2 else "floor a",
                        box(0, width, low, y, -1, 0), solid="floor")  # fmt: skip


def _base_spans(plan: Plan) -> list[tuple[float, float]]:
    """Give the stretches of the hood wall where base cabinets can stand: no door, no tall or standing thing."""
    scene = plan.scene
    taken = [(o.left_in - 3, o.left_in + o.width_in + 3) for o in scene.wall(WallSide.HOOD).openings if o.sill_in < 30]
    taken += [(t.left_in, t.left_in + t.width_in) for t in scene.obstacles
              if t.bottom_in < scene.cooktop.height_in - 1 and t.out_in < 12 and t.kind is not ObstacleKind.HOLE]  # fmt: skip
    spans, at = [], 0.0
    for a, b in sorted(taken):
        if a - at > 6:
            spans.append((at, a))
        at = max(at, b)
    if scene.kitchen.width_in - at > 6:
        spans.append((at, scene.kitchen.width_in))
    return spans


def _front(name: str, x: tuple[float, float], z: tuple[float, float], y: float, *, handle: str) -> Iterator[Piece]:
    yield Piece(name, "cabinet front", Layer.KITCHEN, "front", box(x[0], x[1], y - 0.8, y, z[0], z[1]))
    if handle == "bar":
        middle, half = (x[0] + x[1]) / 2, min(4.0, (x[1] - x[0]) / 4)
        mesh = box(middle - half, middle + half, y - 1.7, y - 0.8, z[1] - 1.9, z[1] - 1.5)
    else:
        at = x[1] - 1.6 if handle == "right" else x[0] + 1.2
        top = z[1] - 2 if handle_is_low(z) else z[0] + 9
        mesh = box(at, at + 0.4, y - 1.7, y - 0.8, top - 7, top)
    yield Piece(f"{name}-pull", "pull", Layer.KITCHEN, "pull", mesh)


def handle_is_low(z: tuple[float, float]) -> bool:
    """Whether a door belongs to a base cabinet, whose pull sits at its top."""
    return z[0] < 30


def _base_run(plan: Plan, run: int, span: tuple[float, float]) -> Iterator[Piece]:
    top = plan.scene.cooktop.height_in
    a, b = span
    depth = max(23.0, plan.scene.cooktop.back_in + plan.scene.cooktop.depth_in - 0.5)
    stem = f"base-{run}"
    yield Piece(f"{stem}-plinth", "plinth", Layer.KITCHEN, "plinth", box(a + 0.1, b - 0.1, -depth + 2, -0.3, 0, 4))
    yield Piece(
        f"{stem}-carcass", "base cabinet", Layer.KITCHEN, "carcass", box(a + 0.1, b - 0.1, -depth, -0.3, 4, top - 1.55)
    )
    count = max(1, round((b - a) / _MODULE))
    width = (b - a) / count
    cook = plan.scene.cooktop
    for k in range(count):
        x0, x1 = a + k * width + _GAP, a + (k + 1) * width - _GAP
        rows = top - 1.55 - 0.25 - 4.3
        if x0 < cook.centre_in + cook.width_in / 2 and cook.centre_in - cook.width_in / 2 < x1:
            for q, (f0, f1) in enumerate(((0.0, 0.36), (0.37, 0.73), (0.74, 1.0))):
                z = (4.3 + rows * f0, 4.3 + rows * f1)
                yield from _front(f"{stem}-drawer-{k + 1}-{q + 1}", (x0, x1), z, -depth, handle="bar")
        else:
            middle = (x0 + x1) / 2
            yield from _front(
                f"{stem}-door-{k + 1}-1", (x0, middle - _GAP / 2), (4.3, 4.3 + rows), -depth, handle="right"
            )
            yield from _front(
                f"{stem}-door-{k + 1}-2", (middle + _GAP / 2, x1), (4.3, 4.3 + rows), -depth, handle="left"
            )
    yield Piece(
        f"{stem}-counter",
        "counter",
        Layer.KITCHEN,
        "stone",
        box(a + 0.05, b - 0.05, -depth - 2.4, -0.2, top - 1.5, top),
    )
    yield Piece(f"{stem}-splash", "splash", Layer.KITCHEN, "stone", box(a, b, -0.35, -0.02, top, top + 4))


# -- cabinets and other things in the way ---------------------------------------------------------------------------


def _cabinet(thing: Obstacle) -> Iterator[Piece]:
    x0, x1 = thing.left_in, thing.left_in + thing.width_in
    back, front = -thing.out_in, -thing.out_in - thing.depth_in
    z0, z1 = thing.bottom_in, thing.bottom_in + thing.height_in
    yield Piece(f"{thing.id}-carcass", spoken(thing.id), Layer.KITCHEN, "carcass",
                box(x0 + 0.05, x1 - 0.05, front + 0.8, back - 0.02, z0, z1), solid=thing.id)  # fmt: skip
    doors = max(1, round(thing.width_in / 14))
    width = thing.width_in / doors
    for k in range(doors):
        x = (x0 + k * width + _GAP, x0 + (k + 1) * width - _GAP)
        for piece in _front(
            f"{thing.id}-door-{k + 1}", x, (z0 + 0.2, z1 - 0.2), front + 0.8, handle="left" if k % 2 else "right"
        ):
            yield Piece(piece.name, piece.label, piece.layer, piece.material, piece.mesh, solid=thing.id)


_SERVICE_MATERIAL = {
    ServiceKind.CABLE.value: "cable", ServiceKind.GAS.value: "gas", ServiceKind.WATER.value: "water",
    ServiceKind.DRAIN.value: "service", ServiceKind.RETURN_AIR.value: "old duct", ServiceKind.DUCT.value: "old duct",
    ServiceKind.FLUE.value: "old duct", ObstacleKind.DUCT.value: "old duct", ObstacleKind.TRUNK.value: "old duct",
    ObstacleKind.PIPE.value: "service",
}  # fmt: skip


def _ducted(plan: Plan) -> frozenset[str]:
    """Give the obstacles of the scene that the best route runs inside of: their boards would hide all of it."""
    best = plan.best
    holes = best.route.penetrations if best is not None else ()
    met = [plan.frame._index[h.solid] for h in holes if h.solid in plan.frame._index]
    return frozenset(s.origin for s in met if s.kind is SolidKind.SOFFIT)


def _thing(solid: Solid, cut: CutAway, ducted: frozenset[str]) -> Iterator[Piece]:
    """Draw a service or obstacle by its own shape; boards round the duct are seen through."""
    slab = slab_of(solid.shape).clip(1, cut.front_in, 1e6)
    if slab is None:
        return
    if solid.kind is SolidKind.BEAM:
        material = "beam"
    elif solid.kind is SolidKind.SOFFIT:
        material = "clear board" if solid.origin in ducted else "plaster"
    elif solid.kind is SolidKind.CABINET:
        material = "carcass"
    else:
        material = _SERVICE_MATERIAL.get(solid.material, "service")
    yield Piece(solid.id, solid.label, Layer.KITCHEN if solid.kind is not SolidKind.SERVICE else Layer.FRAMING, material,
                slab.mesh(), solid=solid.id, smooth=not isinstance(solid.shape, Box))  # fmt: skip


def _things(plan: Plan, cut: CutAway) -> Iterator[Piece]:
    cabinets = {
        t.id: t for t in plan.scene.obstacles
        if t.kind is ObstacleKind.CABINET and not t.hides_duct and -t.out_in - t.depth_in >= cut.front_in
    }  # fmt: skip
    for thing in cabinets.values():
        yield from _cabinet(thing)
    ducted = _ducted(plan)
    ghosts = {t.id for t in plan.scene.obstacles if t.kind in (ObstacleKind.HOLE, ObstacleKind.CHASE)}
    for solid in plan.frame.solids:
        wanted = solid.kind in (SolidKind.SERVICE, SolidKind.OBSTACLE, SolidKind.SOFFIT, SolidKind.CABINET)
        of_beam = solid.kind is SolidKind.BEAM and solid.origin.startswith("obstacles")
        if (wanted or of_beam) and solid.id not in cabinets and solid.id not in ghosts:
            if solid.side is WallSide.FRONT and not cut.draw_front:
                continue
            yield from _thing(solid, cut, ducted)


# -- windows and doors -------------------------------------------------------------------------------------------------


def _wall_box(
    plan: Plan, side: WallSide, s: tuple[float, float], out: tuple[float, float], z: tuple[float, float]
) -> Mesh:
    """Give a box in a wall's own measures: `s` along it, `out` into the room from its finished face (negative: into it)."""
    if side is WallSide.HOOD:
        return box(s[0], s[1], -out[1], -out[0], *z)
    if side is WallSide.LEFT:
        return box(out[0], out[1], -s[1], -s[0], *z)
    width = plan.scene.kitchen.width_in
    return box(width - out[1], width - out[0], -s[1], -s[0], *z)


def _window(plan: Plan, side: WallSide, opening: Opening, solid_id: str) -> Iterator[Piece]:
    a, b = opening.left_in, opening.left_in + opening.width_in
    c, e = opening.sill_in, opening.sill_in + opening.height_in
    wall = plan.scene.wall(side)
    back = wall.thickness_in

    def put(
        name: str, material: str, s: tuple[float, float], out: tuple[float, float], z: tuple[float, float]
    ) -> Piece:
        mesh = _wall_box(plan, side, s, out, z)
        return Piece(f"{solid_id}-{name}", spoken(opening.id), Layer.KITCHEN, material, mesh, solid=solid_id)

    for face, out in (("in", (0.02, 0.7)), ("out", (-back - 0.7, -back - 0.02))):
        yield put(f"trim-left-{face}", "trim", (a - 2.5, a), out, (c - 2.5, e + 2.5))
        yield put(f"trim-right-{face}", "trim", (b, b + 2.5), out, (c - 2.5, e + 2.5))
        yield put(f"trim-top-{face}", "trim", (a, b), out, (e, e + 2.5))
        yield put(f"trim-sill-{face}", "trim", (a, b), out, (c - 2.5, c))
    deep = (-back * 0.62, -back * 0.36)
    yield put("sash-left", "trim", (a, a + 1.6), deep, (c, e))
    yield put("sash-right", "trim", (b - 1.6, b), deep, (c, e))
    yield put("sash-top", "trim", (a + 1.6, b - 1.6), deep, (e - 1.6, e))
    yield put("sash-bottom", "trim", (a + 1.6, b - 1.6), deep, (c, c + 1.6))
    if opening.operable:
        middle = (a + b) / 2
        yield put("sash-middle", "trim", (middle - 0.8, middle + 0.8), deep, (c + 1.6, e - 1.6))
    yield put("glass", "glass", (a + 1.6, b - 1.6), (-back * 0.5 - 0.1, -back * 0.5 + 0.1), (c + 1.6, e - 1.6))


def _door(plan: Plan, side: WallSide, opening: Opening, solid_id: str) -> Iterator[Piece]:
    a, b = opening.left_in, opening.left_in + opening.width_in
    top = opening.sill_in + opening.height_in
    back = plan.scene.wall(side).thickness_in
    shapes = (
        ("trim-left", "trim", (a - 2.5, a), (0.02, 0.7), (opening.sill_in, top + 2.5)),
        ("trim-right", "trim", (b, b + 2.5), (0.02, 0.7), (opening.sill_in, top + 2.5)),
        ("trim-top", "trim", (a, b), (0.02, 0.7), (top, top + 2.5)),
        ("leaf", "front", (a + 0.3, b - 0.3), (-back * 0.6, -back * 0.6 + 1.75), (opening.sill_in + 0.3, top - 0.3)),
        ("knob", "pull", (b - 4, b - 2.6), (-back * 0.6 + 1.75, -back * 0.6 + 4), (36.0, 37.4)),
    )
    for name, material, s, out, z in shapes:
        yield Piece(f"{solid_id}-{name}", spoken(opening.id), Layer.KITCHEN, material,
                    _wall_box(plan, side, s, out, z), solid=solid_id)  # fmt: skip


def _openings(plan: Plan, cut: CutAway) -> Iterator[Piece]:
    for side in (WallSide.HOOD, WallSide.LEFT, WallSide.RIGHT):
        for opening in plan.scene.wall(side).openings:
            if side is not WallSide.HOOD and opening.left_in + opening.width_in > -cut.front_in:
                continue
            draw = _window if opening.kind is OpeningKind.WINDOW else _door
            yield from draw(plan, side, opening, f"{side.value}-{opening.id}")


def furnishing_pieces(plan: Plan, cut: CutAway) -> list[Piece]:
    """Give everything fixed in the kitchen, from the floor to the services in the walls."""
    pieces = [*_floor(plan, cut), *_things(plan, cut), *_openings(plan, cut)]
    for run, span in enumerate(_base_spans(plan), 1):
        pieces += _base_run(plan, run, span)
    return pieces


# -- cooktop -------------------------------------------------------------------------------------------------------------


def _burners(plan: Plan) -> tuple[Burner, ...]:
    cook = plan.scene.cooktop
    if cook.burners:
        return cook.burners
    w, d = cook.width_in, cook.depth_in
    return (
        Burner(w * 0.22, d * 0.28, 6.8), Burner(w * 0.78, d * 0.28, 6.0),
        Burner(w * 0.22, d * 0.72, 5.6), Burner(w * 0.78, d * 0.72, 7.6),
    )  # fmt: skip


def _burner(plan: Plan, k: int, burner: Burner) -> Iterator[Piece]:
    cook = plan.scene.cooktop
    x = cook.centre_in - cook.width_in / 2 + burner.across_in
    y, z, r = -cook.back_in - burner.from_back_in, cook.height_in, burner.diameter_in / 2
    stem, words = f"burner-{k}", f"burner {k}"

    def piece(name: str, material: str, mesh: Mesh, *, smooth: bool = False) -> Piece:
        return Piece(f"{stem}-{name}", words, Layer.KITCHEN, material, mesh, Group.COOK, smooth=smooth)

    if cook.kind is CooktopKind.GAS:
        cap = trimesh.creation.cylinder(min(1.5, r * 0.45), 0.8, sections=32)
        cap.apply_translation([x, y, z + 0.75])
        yield piece("cap", "ring", cap, smooth=True)
        bars = [
            box(x - r, x + r, y - 0.2, y + 0.2, z + 1.2, z + 1.65),
            box(x - 0.2, x + 0.2, y - r, y + r, z + 1.2, z + 1.65),
        ]
        bars += [box(x + sx * r - 0.2, x + sx * r + 0.2, y - r, y + r, z + 0.3, z + 1.65) for sx in (-1, 1)]
        yield piece("grate", "dark", merge(bars))
        return
    yield piece("ring", "ring", tube((x, y), max(r - 0.28, 0.2), r, z + 0.35, z + 0.44), smooth=True)
    if cook.kind is CooktopKind.ELECTRIC:
        yield piece(
            "ring-inner", "ring", tube((x, y), max(r * 0.55 - 0.2, 0.1), r * 0.55, z + 0.35, z + 0.44), smooth=True
        )


def _pot(plan: Plan, burner: Burner) -> Iterator[Piece]:
    cook = plan.scene.cooktop
    x = cook.centre_in - cook.width_in / 2 + burner.across_in
    y = -cook.back_in - burner.from_back_in
    z = cook.height_in + (1.66 if cook.kind is CooktopKind.GAS else 0.45)
    r = min(4.4, burner.diameter_in / 2 + 0.8)
    wall = tube((x, y), r - 0.3, r, z, z + 5)
    broth = trimesh.creation.cylinder(r - 0.31, 4.1, sections=48)
    broth.apply_translation([x, y, z + 2.1])
    handles = merge([box(x - r - 1.4, x - r + 0.1, y - 0.5, y + 0.5, z + 3.8, z + 4.3),
                     box(x + r - 0.1, x + r + 1.4, y - 0.5, y + 0.5, z + 3.8, z + 4.3)])  # fmt: skip
    yield Piece("pot", "pot", Layer.KITCHEN, "steel", wall, Group.COOK, smooth=True)
    yield Piece("pot-broth", "pot", Layer.KITCHEN, "broth", broth, Group.COOK, smooth=True)
    yield Piece("pot-handles", "pot", Layer.KITCHEN, "dark", handles, Group.COOK)


def cook_pieces(plan: Plan) -> list[Piece]:
    """Give the cooktop with its burners, a pot, and the clearance kept above it."""
    cook = plan.scene.cooktop
    x0, x1 = cook.centre_in - cook.width_in / 2, cook.centre_in + cook.width_in / 2
    back, front, z = -cook.back_in, -cook.back_in - cook.depth_in, cook.height_in
    pieces = [Piece("cooktop", f"{cook.kind.value} cooktop", Layer.KITCHEN, "dark",
                    box(x0, x1, front, back, z, z + 0.35), Group.COOK, "cooktop")]  # fmt: skip
    burners = _burners(plan)
    for k, burner in enumerate(burners, 1):
        pieces += _burner(plan, k, burner)
    pieces += _pot(plan, burners[0])
    under = hood_bottom(plan)
    if under > z + 1.2:
        pieces.append(Piece("zone-cook", "kept clear above the cooktop", Layer.ZONES, "zone",
                            box(x0, x1, front, min(back, -0.4), z + 0.6, under - 0.06), Group.COOK))  # fmt: skip
    return pieces


# -- hood and chimney cover ------------------------------------------------------------------------------------------------


def _solid_box(plan: Plan, solid_id: str) -> Box | None:
    found = plan.frame._index.get(solid_id)
    return found.shape if found is not None and isinstance(found.shape, Box) else None


def _cover_top(scene: Scene, x: float, top: float) -> float:
    """Give how high a side of the cover reaches: one that closes to the ceiling is cut to its slope."""
    return ceiling_at_in(scene, x) if top > ceiling_over_hood_in(scene) - 0.01 else top


def _cover_pieces(plan: Plan) -> Iterator[Piece]:
    shape = _solid_box(plan, "cover")
    if shape is None:
        return
    (x0, y0, z0), (x1, y1, z1) = shape.lo, shape.hi
    t = 0.1
    lip = min(1.4, (x1 - x0) / 6)
    left, right = (max(_cover_top(plan.scene, x, z1), z0 + t) for x in (x0, x1))
    parts = (
        ("left", box(x0, x0 + t, y0, y1 - 0.05, z0, left), Group.COVER),
        ("right", box(x1 - t, x1, y0, y1 - 0.05, z0, right), Group.COVER),
        ("front-left", box(x0 + t, x0 + lip, y0, y0 + t, z0, left), Group.COVER),
        ("front-right", box(x1 - lip, x1 - t, y0, y0 + t, z0, right), Group.COVER),
        ("front-low", box(x0 + t, x1 - t, y0 - 0.02, y0 + t - 0.02, z0, min(z0 + 3, z1)), Group.HOOD),
    )  # fmt: skip
    for name, mesh, group in parts:
        yield Piece(f"cover-{name}", "chimney cover, cut open", Layer.COVER, "steel", mesh, group, "cover")


def hood_pieces(plan: Plan) -> list[Piece]:
    """Give the canopy, its body and keys, the collar, and the chimney cover cut open."""
    hood = plan.scene.hood
    x, z = hood.centre_in, hood_bottom(plan)
    rim = min(hood.canopy_in, hood.body_in)
    x0, x1, front = x - hood.width_in / 2, x + hood.width_in / 2, -hood.depth_in
    shape = _solid_box(plan, "cover") or _solid_box(plan, "hood-body")
    top = (x - 6.0, x + 6.0, -12.0, -0.1) if shape is None else (shape.lo[0], shape.hi[0], shape.lo[1], -0.1)

    def piece(name: str, words: str, material: str, mesh: Mesh) -> Piece:
        return Piece(name, words, Layer.HOOD, material, mesh, Group.HOOD, "hood-canopy")

    pieces = [
        piece("hood-band", "hood", "steel", box(x0, x1, front, -0.1, z, z + rim)),
        piece("hood-lip", "hood", "dark", box(x0 + 1, x1 - 1, front + 1, -1, z - 0.15, z)),
    ]
    if hood.body_in - rim > 0.5:
        canopy = frustum((x0, x1, front, -0.1, z + rim), (*top, z + hood.body_in))
        pieces.append(piece("hood-body", "hood body", "steel", canopy))
    keys = merge(
        [box(x - 3 + 1.7 * q, x - 2 + 1.7 * q, front - 0.2, front, z + rim * 0.35, z + rim * 0.62) for q in range(4)]
    )
    pieces.append(piece("hood-keys", "hood keys", "dark", keys))
    return [*pieces, *_cover_pieces(plan)]
