"""The picture of each step, for paper and film: the stage from where the step stands, with what it points at outlined."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import replace
from pathlib import Path

import numpy as np
import shapely
from PIL import Image, ImageDraw
from shapely.geometry.base import BaseGeometry

from routeviz.model.finding import State
from routeviz.model.lesson import Mark, Told, ToldStep
from routeviz.views import fonts, gl
from routeviz.views.lessons.poles import stand
from routeviz.views.palette import BAR, BAR_INK, INK, PAPER
from routeviz.views.parts import Layer
from routeviz.views.stage import Stage
from routeviz.views.viewpoints import Camera, Viewport, camera, project, square

__all__ = ["pictures", "step_picture", "write_pictures"]

_PORT = Viewport(0.04, 0.05, 0.96, 0.95)
_DISC_PX = 15.0  # marks are of this size in a picture so wide, and grow with it
_WIDE_PX = 1000.0
_LINE, _CASING = "#073a40", "#fcf9f3"  # one of the two stands out from every material, for every eye
_TELLS = ("meets-", "shifted-")  # what a blocked plan draws of its answer


def step_picture(step: ToldStep, stage: Stage, size: tuple[int, int]) -> Image.Image:
    """Draw one step; `stage` is without bars where the step keeps the faults to itself.

    Raises
    ------
    MissingPartError
        If there is no OpenGL driver.
    """
    gl.require()
    from routeviz.views.rendering import shoot

    aspect = size[0] / size[1]
    if step.view == "square":
        stands = square(stage.plan, aspect=aspect, port=_PORT)
    else:
        stands = camera(stage.plan, stage.cut, step.view, aspect=aspect, port=_PORT)
    without = {layer for layer in Layer if layer.name.lower() in step.away}
    if step.view != "outside":
        without.add(Layer.OUTER)
    if step.view == "along":
        without.add(Layer.COVER)  # it would hide the duct, as in the page
    if step.covered:
        without.add(Layer.ZONES)
        stage = replace(stage, pieces=tuple(p for p in stage.pieces if not p.name.startswith(_TELLS)))
    shot = shoot(stage, stands, size, scale=2, occlusion=False, without=frozenset(without))
    image = Image.fromarray(shot.pixels).resize(size, Image.Resampling.LANCZOS)
    draw = ImageDraw.Draw(image)
    for mark in step.marks:
        _outline(draw, mark, stands, size)
    if not step.covered:
        _flags(draw, stage, stands, size)
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
            draw.line(ring, fill=_CASING, width=round(7 * _grown(size)), joint="curve")
            draw.line(ring, fill=_LINE, width=round(3 * _grown(size)), joint="curve")


def _at(place: tuple[float, float, float], view: Camera, size: tuple[int, int]) -> tuple[float, float] | None:
    """Give where a place falls in the picture [px], None where it is not in it."""
    u, v, depth = project(view, np.array([place]), size[0] / size[1])[0]
    x, y = float(u * size[0]), float(v * size[1])
    return (x, y) if depth > 0 and 0 <= x <= size[0] and 0 <= y <= size[1] else None


def _grown(size: tuple[int, int]) -> float:
    return max(1.0, size[0] / _WIDE_PX)


def _pole(draw: ImageDraw.ImageDraw, foot: tuple[float, float], top: tuple[float, float], k: float) -> None:
    draw.line([foot, top], fill=_CASING, width=round(5 * k))
    draw.line([foot, top], fill=INK, width=round(2 * k))
    r = 4 * k
    draw.ellipse([foot[0] - r, foot[1] - r, foot[0] + r, foot[1] + r], fill=PAPER, outline=INK, width=round(2 * k))


def _letters(draw: ImageDraw.ImageDraw, step: ToldStep, view: Camera, size: tuple[int, int]) -> None:
    """Stand the letters of what may be broken over their places, each with a line to its own."""
    seen = [(c.letter, at) for c in step.candidates if c.place is not None and (at := _at(c.place, view, size))]
    k = _grown(size)
    r = _DISC_PX * k
    spots = stand([at for _, at in seen], size, r)
    for (_, foot), spot in zip(seen, spots, strict=True):
        _pole(draw, foot, spot, k)
    for (letter, _), (x, y) in zip(seen, spots, strict=True):
        draw.ellipse([x - r, y - r, x + r, y + r], fill=PAPER, outline=INK, width=round(2 * k))
        draw.text((x, y), letter, INK, fonts.narrow(round(19 * k)), anchor="mm")


def _flags(draw: ImageDraw.ImageDraw, stage: Stage, view: Camera, size: tuple[int, int]) -> None:
    """Stand a flag with its words over each place where something is broken, as the page does."""
    taken: list[tuple[float, float, float, float]] = []
    k = _grown(size)
    number = fonts.narrow(round(17 * k))
    for flag in stage.flags:
        foot = _at(flag.place, view, size) if flag.state is State.BROKEN and flag.place is not None else None
        if foot is None:
            continue
        words = flag.short or flag.title
        font = fonts.text_bold(round(15 * k), words)
        wide, tall = draw.textlength(words, font) + 46 * k, 26 * k
        x = max(4.0, min(foot[0], size[0] - wide - 4))
        up = [y for y in np.arange(foot[1] - 40 * k, 4, -6) if y + tall < size[1]]
        down = [y for y in np.arange(foot[1] + 10 * k, size[1] - tall - 4, 6) if y > 4]
        y = next((float(y) for y in (*up, *down) if not any(_meets((x, y, x + wide, y + tall), t) for t in taken)), 4.0)
        taken.append((x, y, x + wide, y + tall))
        _pole(draw, foot, (foot[0], y + tall if y < foot[1] else y), k)
        middle, tip = y + tall / 2, x + 32 * k
        draw.rectangle([x, y, x + wide, y + tall], fill=PAPER, outline=BAR, width=round(2 * k))
        draw.polygon([(x, y), (tip, y), (tip - 6 * k, middle), (tip, y + tall), (x, y + tall)], fill=BAR)
        draw.text((x + 13 * k, middle), str(flag.number), "#ffffff", number, anchor="mm")
        draw.text((x + 38 * k, middle), words, BAR_INK, font, anchor="lm")


def _meets(a: tuple[float, float, float, float], b: tuple[float, float, float, float]) -> bool:
    return a[0] < b[2] and b[0] < a[2] and a[1] < b[3] + 2 and b[1] < a[3] + 2


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
    size: tuple[int, int] = (1680, 800),
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
