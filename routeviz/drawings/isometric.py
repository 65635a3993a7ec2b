"""The picture: an isometric of wall, joists, hood and duct, far things first.

True isometric from the right of the room: the three axes have the same scale, 30 degrees each way.
"""

from __future__ import annotations

from routeviz.drawings import palette as ink
from routeviz.drawings.caps import cap_foot_in
from routeviz.drawings.flat import ends_of
from routeviz.drawings.isometric_duct import behind_wall, duct
from routeviz.drawings.isometric_members import furniture, members, short
from routeviz.drawings.isometric_order import Crop, Picture, far_first, project
from routeviz.drawings.primitives import Anchor, Face
from routeviz.drawings.sketch import Sketch
from routeviz.model.plan import Option, Plan
from routeviz.model.scene import Scene, WallSide
from routeviz.model.solids import SolidKind

__all__ = ["draw_isometric"]


def draw_isometric(sketch: Sketch, plan: Plan, option: Option | None, room: tuple[float, float, float, float]) -> None:
    """Draw the picture into a part of the page (left, bottom, right, top) [mm], as large as it will go."""
    crop = _crop(plan, option)
    corners = [(x, y, z) for x in crop[0] for y in crop[1] for z in crop[2]]
    flat = [project(c) for c in corners]
    u0, u1, v0, v1 = min(p[0] for p in flat), max(p[0] for p in flat), min(p[1] for p in flat), max(p[1] for p in flat)
    scale = min((room[2] - room[0]) / (u1 - u0), (room[3] - room[1]) / (v1 - v0))
    origin = (
        (room[0] + room[2]) / 2 - scale * (u0 + u1) / 2,
        (room[1] + room[3]) / 2 - scale * (v0 + v1) / 2,
    )
    picture = Picture(sketch, origin, scale)
    _wall(picture, crop, plan.scene)
    pieces = members(picture, plan, option, crop) + furniture(picture, plan.scene, crop)
    if option is not None:
        pieces += duct(picture, option.route, plan)
    for piece in far_first(pieces):
        piece.paint()
    if option is not None:
        behind_wall(picture, option.route, crop[1][1])
    _numbers(picture, plan, option, crop)


def _crop(plan: Plan, option: Option | None) -> Crop:
    """Choose the part of the house to show [in]: the hood and the duct with a bay round them."""
    scene = plan.scene
    hood = scene.hood
    xs = [hood.centre_in - hood.width_in / 2 - 16.0, hood.centre_in + hood.width_in / 2 + 16.0]
    ys = [-scene.cooktop.depth_in - scene.cooktop.back_in - 4.0, 0.0]
    zs = [scene.cooktop.height_in - 3.0, scene.kitchen.ceiling_in + 10.0]
    if option is not None:
        for part in option.route.parts:
            half = max(part.section.width_in, part.section.height_in) / 2 + 3.0
            for end in (part.start, part.end):
                xs += [end[0] - half, end[0] + half]
                deepest = scene.wall(WallSide.HOOD).thickness_in
                ys += [min(end[1] - half, deepest), min(end[1] + half, deepest)]
                zs += [end[2] + half]
        if option.route.termination.direction[2] > 0.5:
            zs.append(cap_foot_in(option.route, plan.frame) + scene.cap.roof_stub_in + 6.0)
    return (min(xs), max(xs)), (min(ys), max(ys)), (min(zs), max(zs))


def _wall(picture: Picture, crop: Crop, scene: Scene) -> None:
    (x0, x1), _, (z0, _) = crop
    x0, x1, top = max(x0, 0.0), min(x1, scene.kitchen.width_in), scene.kitchen.ceiling_in
    picture.face(((x0, 0, z0), (x1, 0, z0), (x1, 0, top), (x0, 0, top)), ink.WALL, ink.MEDIUM, "#b9ad99")


def _numbers(picture: Picture, plan: Plan, option: Option | None, crop: Crop) -> None:
    """Write the joists' numbers at their ends towards the room."""
    for solid in plan.frame.solids:
        member = solid.member
        if solid.kind is not SolidKind.JOIST or member is None or not member.number or member.axis != 1:
            continue
        (x0, x1), (y0, y1), (z0, _) = (ends_of(solid.shape, k) for k in range(3))
        if (
            x0 < crop[0][0]
            or x1 > crop[0][1]
            or y1 < crop[1][0]
            or y0 > crop[1][1]
            or z0 > plan.scene.kitchen.ceiling_in + 14
        ):
            continue
        u, v = picture.at(((x0 + x1) / 2, max(y0, short(solid, crop, plan.scene, option)[1][0]), z0))
        places = [
            ((u - 0.6, v - 3.0), Anchor.MIDDLE),
            ((u - 2.6, v - 1.0), Anchor.MIDDLE),
            ((u + 1.6, v - 3.6), Anchor.MIDDLE),
        ]
        picture.sketch.label(places, str(member.number), ink.SMALL, Face.NARROW_BOLD, halo=ink.WHITE)
