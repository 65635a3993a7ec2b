"""Caps: a damper hood on a wall, a rain cap with its flashing on a roof [in]."""

from __future__ import annotations

import math

import numpy as np
import trimesh

from routeviz.model.plan import Plan
from routeviz.model.route import PartKind, Route
from routeviz.model.scene import SectionSize
from routeviz.model.solids import ExitFace, FaceKind
from routeviz.views.ducts import SHEET_IN, ring
from routeviz.views.parts import Group, Layer, Piece
from routeviz.views.shapes import Mesh, box, frustum, loft, merge

__all__ = ["cap_pieces", "cap_top"]

_IN_PLATE_IN = 0.1  # the cone's foot stands in the flashing's plate, which begins lower


def _section_half(section: SectionSize) -> tuple[float, float]:
    return section.width_in / 2, section.height_in / 2


def _face(plan: Plan, route: Route) -> ExitFace | None:
    return next((f for f in plan.frame.faces if f.id == route.termination.face), None)


def _roof_surface(plan: Plan, route: Route, face: ExitFace | None) -> float:
    """Give the height [in] at which the duct's centre passes the roof; the duct ends one stub above it."""
    x, y, z = route.termination.point
    if face is None:
        return z - plan.scene.cap.roof_stub_in
    at, per_x, per_y = face.plane
    return min(z, at + per_x * x + per_y * y)


def _lathe(profile: list[tuple[float, float]], sections: int = 48) -> Mesh:
    """Turn a profile of (radius, height), from the foot up, into a closed body about z."""
    angle = np.arange(sections) * 2 * math.pi / sections
    rings = [np.c_[np.cos(angle) * r, np.sin(angle) * r, np.full(sections, h)] for r, h in profile]
    return loft(rings)


def _roof_cap(plan: Plan, route: Route, face: ExitFace | None) -> list[Mesh]:
    section = route.section
    stub = plan.scene.cap.roof_stub_in
    x, y, _ = route.termination.point
    z = _roof_surface(plan, route, face)
    half_wide, half_high = _section_half(section)
    slope_x, slope_y = (face.plane[1], face.plane[2]) if face is not None else (0.0, 0.0)
    reach = max(half_wide, half_high)
    plate = box(-reach - 5, reach + 5, -reach - 5, reach + 5, 0.05, 0.4)
    plate.vertices[:, 2] += plate.vertices[:, 0] * slope_x + plate.vertices[:, 1] * slope_y
    tilt = reach * math.hypot(slope_x, slope_y)
    wide = np.array([1.0, 0, 0])
    cap_part = next((p for p in route.parts if p.kind is PartKind.CAP), None)
    if cap_part is not None and cap_part.wide is not None:
        wide = np.array(cap_part.wide)
    up = np.array([0.0, 0, 1])

    def sleeve(z0: float, z1: float, grow0: float, grow1: float, *, on_roof: bool = False) -> Mesh:
        """Give a sleeve between two heights, its foot cut along the roof's slope where it stands on the roof."""
        outer = [
            ring(np.array([0, 0, z0]), up, wide, section, grow=grow0),
            ring(np.array([0, 0, z1]), up, wide, section, grow=grow1),
        ]
        inner = [
            ring(np.array([0, 0, z0]), up, wide, section, grow=-SHEET_IN),
            ring(np.array([0, 0, z1]), up, wide, section, grow=-SHEET_IN),
        ]
        for foot in (outer[0], inner[0]) if on_roof else ():
            foot[:, 2] += foot[:, 0] * slope_x + foot[:, 1] * slope_y
        return loft(outer, inner)

    cone = sleeve(_IN_PLATE_IN, max(stub * 0.42, tilt + 1.2), 1.6, 0.3, on_roof=True)
    neck = sleeve(_IN_PLATE_IN, stub, 0.12, 0.12, on_roof=True)
    meshes = [plate, cone, neck]
    if section.is_round:
        wide_r = half_wide * 1.85
        roof = _lathe(
            [(wide_r, stub + 1.1), (wide_r, stub + 2.1), (half_wide * 0.3, stub + 4.6), (half_wide * 0.3, stub + 4.75)]
        )
        skirt = sleeve(stub - 1.6, stub - 0.9, half_wide * 0.42, half_wide * 0.42)
    else:
        a, b = half_wide * 1.5 + 1, half_high * 1.5 + 1.5
        if abs(wide[1]) > 0.5:
            a, b = b, a
        roof = merge(
            [
                box(-a, a, -b, b, stub + 1.1, stub + 1.8),
                frustum((-a, a, -b, b, stub + 1.8), (-a / 4, a / 4, -b / 4, b / 4, stub + 4.2)),
            ]
        )
        skirt = sleeve(stub - 1.6, stub - 0.9, 1.4, 1.4)
    posts = []
    for q in range(4):
        at = math.pi / 4 + q * math.pi / 2
        px, py = half_wide * math.cos(at), half_high * math.sin(at)
        posts.append(box(px - 0.2, px + 0.2, py - 0.2, py + 0.2, stub - 0.2, stub + 1.3))
    meshes += [roof, skirt, *posts]
    for mesh in meshes:
        mesh.apply_translation([x, y, z])
    return meshes


def _wall_cap(plan: Plan, route: Route) -> list[Mesh]:
    """A flange plate and a hooded box, open below, with its damper flap hanging a little open."""
    section = route.section
    cap_part = next((p for p in route.parts if p.kind is PartKind.CAP), route.parts[-1])
    out = np.array(route.termination.direction)
    flange = (plan.scene.cap.wall_flange_in or section.width_in + 4.0) / 2
    half_wide, half_high = _section_half(section)
    across, up = (half_wide, half_high)
    if cap_part.wide is not None and abs(cap_part.wide[2]) > 0.5:
        across, up = half_high, half_wide
    side = max(across + 1.0, flange - 1.2 if section.is_round else across + 1.0)
    deep = up + 2.6
    meshes = [
        box(-max(flange, across + 2), max(flange, across + 2), 0.02, 0.55, -max(flange, up + 2), max(flange, up + 2))
    ]
    top, foot = up + 1.2, -up - 1.0
    hood = [
        (0.55, top),
        (1.2, top),
        (deep, foot + 1.6),
        (deep, foot),
        (deep - 0.35, foot),
        (deep - 0.35, foot + 1.5),
        (0.9, top - 0.5),
        (0.55, top - 0.5),
    ]
    import shapely

    shell = trimesh.creation.extrude_polygon(shapely.Polygon(hood), 2 * side)
    shell.apply_transform(np.array([[0, 0, 1.0, -side], [1, 0, 0, 0], [0, 1, 0, 0], [0, 0, 0, 1]]))
    meshes.append(shell)
    cheek = shapely.Polygon(
        [(0.55, top - 0.02), (1.15, top - 0.02), (deep - 0.02, foot + 1.58), (deep - 0.02, foot), (0.55, foot)]
    )
    for x0 in (-side + 0.01, side - 0.26):
        wall = trimesh.creation.extrude_polygon(cheek, 0.25)
        wall.apply_transform(np.array([[0, 0, 1.0, x0], [1, 0, 0, 0], [0, 1, 0, 0], [0, 0, 0, 1]]))
        meshes.append(wall)
    flap = box(-across, across, -0.1, 0.1, -2 * up, 0)
    flap.apply_transform(trimesh.transformations.rotation_matrix(math.radians(24), [1, 0, 0]))
    flap.apply_translation([0, 0.95, up - 0.1])
    meshes.append(flap)
    turn = np.eye(4)
    turn[:3, :3] = np.column_stack([np.cross(out, [0, 0, 1.0]), out, [0, 0, 1.0]])
    turn[:3, 3] = route.termination.point
    for mesh in meshes:
        mesh.apply_transform(turn)
    return meshes


def cap_pieces(plan: Plan, route: Route) -> list[Piece]:
    """Give the cap of a route; nothing when it does not end at an outer face."""
    kind = route.termination.kind
    if kind is None or not route.capped:
        return []
    meshes = _roof_cap(plan, route, _face(plan, route)) if kind is FaceKind.ROOF else _wall_cap(plan, route)
    return [
        Piece(f"cap-{k}", "cap", Layer.DUCT, "duct", mesh, Group.ROUTE, smooth=kind is FaceKind.ROOF)
        for k, mesh in enumerate(meshes, 1)
    ]


def cap_top(plan: Plan, route: Route) -> float:
    """Give the height of the cap's top [in]."""
    if route.termination.kind is FaceKind.ROOF:
        return _roof_surface(plan, route, _face(plan, route)) + plan.scene.cap.roof_stub_in + 4.8
    return route.termination.point[2] + route.section.height_in
