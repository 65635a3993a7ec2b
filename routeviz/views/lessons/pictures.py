"""The picture of each step, for paper and film: the stage from where the step stands, with what it points at outlined."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from pathlib import Path

import numpy as np
import shapely
from PIL import Image, ImageDraw
from shapely.geometry.base import BaseGeometry

from routeviz.model.lesson import Mark, Told, ToldStep
from routeviz.views import fonts, gl
from routeviz.views.palette import INK, PAPER
from routeviz.views.parts import Layer
from routeviz.views.stage import Stage
from routeviz.views.viewpoints import Camera, Viewport, camera, project

__all__ = ["pictures", "step_picture", "write_pictures"]

_VIEWS = {"square": "room"}
_PORT = Viewport(0.04, 0.05, 0.96, 0.95)
_DISC_PX = 15
_LINE, _CASING = "#073a40", "#fcf9f3"  # one of the two stands out from every material, for every eye


def step_picture(step: ToldStep, stage: Stage, size: tuple[int, int]) -> Image.Image:
    """Draw one step; `stage` is without bars where the step keeps the faults to itself.

    Raises
    ------
    MissingPartError
        If there is no OpenGL driver.
    """
    gl.require()
    from routeviz.views.rendering import shoot

    view = _VIEWS.get(step.view, step.view)
    stands = camera(stage.plan, stage.cut, view, aspect=size[0] / size[1], port=_PORT)
    without = {layer for layer in Layer if layer.name.lower() in step.away}
    if view != "outside":
        without.add(Layer.OUTER)
    if step.covered:
        without.add(Layer.ZONES)
    shot = shoot(stage, stands, size, scale=2, occlusion=False, without=frozenset(without))
    image = Image.fromarray(shot.pixels).resize(size, Image.Resampling.LANCZOS)
    draw = ImageDraw.Draw(image)
    for mark in step.marks:
        _outline(draw, mark, stands, size)
    _letters(draw, step, stands, size)
    return image


def _outline(draw: ImageDraw.ImageDraw, mark: Mark, view: Camera, size: tuple[int, int]) -> None:
    shapes: list[BaseGeometry] = []
    for body in mark.bodies:
        seen = project(view, np.array(body), size[0] / size[1])
        if (seen[:, 2] > 0).all():
            shapes.append(shapely.convex_hull(shapely.multipoints(seen[:, :2] * np.array(size))))
    joined = shapely.union_all(shapes)
    for part in getattr(joined, "geoms", [joined]):
        if part.geom_type == "Polygon" and not part.is_empty:
            ring = [(float(x), float(y)) for x, y in part.exterior.coords]
            draw.line(ring, fill=_CASING, width=7, joint="curve")
            draw.line(ring, fill=_LINE, width=3, joint="curve")


def _letters(draw: ImageDraw.ImageDraw, step: ToldStep, view: Camera, size: tuple[int, int]) -> None:
    taken: list[tuple[float, float]] = []
    for each in step.candidates:
        if each.place is None:
            continue
        u, v, depth = project(view, np.array([each.place]), size[0] / size[1])[0]
        x, y, r = float(u * size[0]), float(v * size[1]), _DISC_PX
        if depth <= 0 or not (0 <= x <= size[0] and 0 <= y <= size[1]):
            continue
        while any(abs(x - a) < 2 * r and abs(y - b) < 2 * r for a, b in taken) and x < size[0] - 3 * r:
            x += 2 * r + 2
        taken.append((x, y))
        draw.ellipse([x - r, y - r, x + r, y + r], fill=PAPER, outline=INK, width=2)
        draw.text((x, y), each.letter, INK, fonts.narrow(19), anchor="mm")


def pictures(
    told: Told, bare: Mapping[str, Stage], barred: Mapping[str, Stage], size: tuple[int, int]
) -> Iterator[Image.Image]:
    """Draw every step in order: without bars while its faults are hidden, with them afterwards."""
    for step in told.steps:
        yield step_picture(step, (bare if step.covered else barred)[step.plan], size)


def write_pictures(
    told: Told,
    bare: Mapping[str, Stage],
    barred: Mapping[str, Stage],
    folder: Path,
    *,
    size: tuple[int, int] = (1200, 800),
) -> tuple[Path, ...]:
    """Write a picture of each step into a folder.

    Raises
    ------
    MissingPartError
        If there is no OpenGL driver.
    """
    files = []
    for n, image in enumerate(pictures(told, bare, barred, size), 1):
        files.append(folder / f"step_{n:02d}.png")
        image.save(files[-1])
    return tuple(files)
