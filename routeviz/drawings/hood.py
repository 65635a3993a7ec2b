"""The hood, its cover and the cooktop in flat views; the fastener marks."""

from __future__ import annotations

from collections.abc import Iterable

from routeviz.drawings import palette as ink
from routeviz.drawings.flat import clipped, flat
from routeviz.drawings.house import View
from routeviz.drawings.sketch import Sketch
from routeviz.drawings.taken import Rect
from routeviz.model.overhead import ceiling_at_in, ceiling_over_hood_in
from routeviz.model.route import Route
from routeviz.model.scene import Scene
from routeviz.model.takeoff import Mark

__all__ = ["draw_collar", "draw_hood_front", "draw_hood_side", "draw_hood_top", "draw_marks", "hood_front_boxes"]


def draw_hood_front(sketch: Sketch, view: View, scene: Scene) -> None:
    """Draw hood and chimney cover seen from the room (view along y)."""
    bottom = scene.hood_bottom_in
    if bottom is None:
        return
    hood, x = scene.hood, scene.hood.centre_in
    half, rim, top = hood.width_in / 2, bottom + hood.canopy_in, bottom + hood.body_in
    neck = _neck_in(scene)
    body = ((x - half, bottom), (x + half, bottom), (x + half, rim), (x + neck, top), (x - neck, top), (x - half, rim))
    sketch.path([view.at(*p) for p in body], ink.HEAVY, fill=ink.STEEL, closed=True, name="hood")
    sketch.line(view.at(x - half, rim), view.at(x + half, rim), ink.FINE)
    if hood.cover is not None:
        _cover(sketch, view, scene, neck, top)


def draw_collar(sketch: Sketch, view: View, scene: Scene, route: Route, *, hidden: bool = False) -> None:
    """Draw the hood's collar, over which the duct slips, between a top outlet and where the duct begins."""
    bottom = scene.hood_bottom_in
    if bottom is None or scene.hood.outlet.place != "top":
        return
    first, top = route.parts[0], bottom + scene.hood.body_in
    u, v = flat(first.start, view.axis)
    if v - top < 1 / 16:
        return
    wide = (
        first.section.width_in
        if first.wide is None or abs(first.wide[1 - view.axis]) > 0.5
        else first.section.height_in
    )
    half = wide / 2
    for piece in clipped(((u - half, top), (u + half, top), (u + half, v), (u - half, v)), view.region):
        points = [view.at(*p) for p in piece]
        if hidden:
            sketch.path(points, ink.FINE, closed=True, dash=ink.DUCT_DASH, name="collar")
        else:
            sketch.path(points, ink.MEDIUM, fill=ink.STEEL_DARK, closed=True, name="collar")


def _neck_in(scene: Scene) -> float:
    """Half the hood's width at its top [in]: as wide as the cover, or as the outlet needs."""
    hood = scene.hood
    wide = hood.cover.width_in / 2 if hood.cover else hood.outlet.section.width_in / 2 + 2.0
    return min(hood.width_in / 2, wide)


def hood_front_boxes(scene: Scene) -> list[Rect]:
    """Give the boxes that hood and cover hide, seen from the room [in]."""
    bottom = scene.hood_bottom_in
    if bottom is None:
        return []
    hood, x, half = scene.hood, scene.hood.centre_in, scene.hood.width_in / 2
    top = bottom + hood.body_in
    boxes = [(x - half, bottom, x + half, top)]
    if hood.cover is not None:
        neck = _neck_in(scene)
        boxes.append((x - neck, top, x + neck, ceiling_over_hood_in(scene)))
    return boxes


def draw_hood_side(sketch: Sketch, view: View, scene: Scene) -> None:
    """Draw hood and chimney cover seen along the wall (view along x; the wall's face is at 0, the room at negative y)."""
    bottom = scene.hood_bottom_in
    if bottom is None:
        return
    hood = scene.hood
    rim, top = bottom + hood.canopy_in, bottom + hood.body_in
    deep = hood.cover.depth_in if hood.cover else min(hood.depth_in, hood.outlet.section.height_in + 4.0)
    body = ((0.0, bottom), (-hood.depth_in, bottom), (-hood.depth_in, rim), (-deep, top), (0.0, top))
    sketch.path([view.at(*p) for p in body], ink.HEAVY, fill=ink.STEEL, closed=True, name="hood")
    if hood.cover is not None:
        sketch.rect(view.at(-deep, top), view.at(0.0, ceiling_over_hood_in(scene)), ink.MEDIUM, fill=ink.STEEL_LIGHT)


def _cover(sketch: Sketch, view: View, scene: Scene, half: float, low: float) -> None:
    """Draw the cover from the room, its top cut to the ceiling, what of it lies in the view."""
    x = scene.hood.centre_in
    tops = [(u, ceiling_at_in(scene, u)) for u in (x + half, x, x - half)]  # the ridge may lie over it: three points
    for piece in clipped(((x - half, low), (x + half, low), *tops), view.region):
        sketch.path([view.at(*p) for p in piece], ink.MEDIUM, fill=ink.STEEL_LIGHT, closed=True, name="cover")


def draw_hood_top(sketch: Sketch, view: View, scene: Scene) -> None:
    """Draw the hood's outline in plan, hidden (view along z)."""
    hood = scene.hood
    a, b = (
        view.at(hood.centre_in - hood.width_in / 2, -0.1),
        view.at(hood.centre_in + hood.width_in / 2, -hood.depth_in),
    )
    sketch.rect(a, b, ink.HAIR, colour=ink.INK2, dash=(1.4, 0.8))


def draw_marks(sketch: Sketch, view: View, marks: Iterable[Mark]) -> None:
    """Draw screw marks: a filled disc holds in wood, an open square is an anchor."""
    for mark in marks:
        x, y = view.at(mark.left_in, mark.height_in)
        reach = 2.0
        sketch.line((x - reach, y), (x + reach, y), ink.HAIR)
        sketch.line((x, y - reach), (x, y + reach), ink.HAIR)
        if mark.wood:
            sketch.disc((x, y), 1.05, ink.FINE, fill=ink.INK)
        else:
            sketch.rect((x - 1.0, y - 1.0), (x + 1.0, y + 1.0), ink.MEDIUM, fill=ink.WHITE)
