"""Every example home is framed without shared space, and a mirrored home gives the mirrored frame."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest
import samples
from overlaps import shared_volumes

from routeviz.framing import frame
from routeviz.geometry import bounds, contains
from routeviz.model.scene import RoofForm, RunDirection, Scene, WallSide
from routeviz.model.solids import Passage, SolidKind
from routeviz.scenefile import load

SCENES = sorted((Path(__file__).parents[2] / "scenes").glob("*.toml"))


@pytest.mark.parametrize("path", SCENES, ids=lambda p: p.stem)
def test_example_home(path):
    scene = load(path)
    framed = frame(scene)
    assert shared_volumes(framed) == []
    assert framed.faces
    middle = (scene.kitchen.width_in / 2, -scene.kitchen.depth_in + 1.0, 2.0)
    assert [z for z in framed.zones if contains(z.shape, middle)][-1].passage is Passage.BOXING
    leaves = [s for s in framed.solids if s.kind in (SolidKind.GLAZING, SolidKind.DOOR) and s.side is not None]
    assert len(leaves) == sum(len(w.openings) for w in scene.walls)


def mirrored(scene: Scene) -> Scene:
    """Give the same home seen in a mirror that stands square to the hood wall."""
    width = scene.kitchen.width_in

    def flip_wall(wall):
        side = {WallSide.LEFT: WallSide.RIGHT, WallSide.RIGHT: WallSide.LEFT}.get(wall.side, wall.side)
        if wall.side in (WallSide.LEFT, WallSide.RIGHT):
            return replace(wall, side=side)
        studs = replace(wall.studs, at_in=tuple(width - c for c in wall.studs.at_in))
        openings = tuple(replace(o, left_in=width - o.left_in - o.width_in) for o in wall.openings)
        return replace(wall, studs=studs, openings=openings)

    flipped = {w.side: w for w in map(flip_wall, scene.walls)}
    roof = scene.roof
    if roof.ridge is RunDirection.OUT:
        high = {WallSide.LEFT: WallSide.RIGHT, WallSide.RIGHT: WallSide.LEFT}.get(roof.high_side, roof.high_side)
        roof = replace(roof, ridge_at_in=width - roof.ridge_at_in, high_side=high)
    else:
        roof = replace(roof, framing=replace(roof.framing, at_in=tuple(width - c for c in roof.framing.at_in)))
    joists = replace(scene.ceiling.joists, at_in=tuple(width - c for c in scene.ceiling.joists.at_in))
    return replace(
        scene, walls=tuple(flipped[s] for s in (WallSide.HOOD, WallSide.LEFT, WallSide.RIGHT, WallSide.FRONT)),
        roof=roof, ceiling=replace(scene.ceiling, joists=joists),
        hood=replace(scene.hood, centre_in=width - scene.hood.centre_in),
        cooktop=replace(scene.cooktop, centre_in=width - scene.cooktop.centre_in),
    )  # fmt: skip


def corners(framed, width=None):
    """Give every solid's box by kind, mirrored when a width is given, free of ids and order."""
    found = []
    for solid in framed.solids:
        box = bounds(solid.shape)
        x = (box.lo[0], box.hi[0]) if width is None else (width - box.hi[0], width - box.lo[0])
        found.append((solid.kind.value, *(round(v, 6) + 0.0 for v in (*x, *box.lo[1:], *box.hi[1:]))))
    return sorted(found)


@pytest.mark.parametrize("form", list(RoofForm))
@pytest.mark.parametrize("ridge", list(RunDirection))
@pytest.mark.parametrize("left_outdoors", [True, False])
def test_mirrored_home_gives_the_mirrored_frame(form, ridge, left_outdoors):
    base = samples.scene()
    measured = tuple(2.25 + 16.0 * n for n in range(9))
    high = {RunDirection.OUT: WallSide.LEFT, RunDirection.ALONG: WallSide.FRONT}[ridge]
    walls = tuple(
        replace(w, studs=replace(w.studs, at_in=measured if w.side in (WallSide.HOOD, WallSide.FRONT) else ()))
        for w in (base.walls[0], samples.wall(WallSide.LEFT, "outdoors" if left_outdoors else "room"), *base.walls[2:])
    )
    scene = replace(
        base, walls=walls,
        ceiling=replace(base.ceiling, joists=replace(base.ceiling.joists, at_in=measured)),
        roof=replace(base.roof, form=form, ridge=ridge, ridge_at_in=60.0, high_side=high if form is RoofForm.SHED else None,
                     framing=replace(base.roof.framing, at_in=measured if ridge is RunDirection.ALONG else ())),
    )  # fmt: skip
    if ridge is RunDirection.OUT and form is RoofForm.FLAT:
        scene = replace(scene, roof=replace(scene.roof, high_side=WallSide.LEFT))
    if ridge is RunDirection.OUT and form is RoofForm.GABLE and left_outdoors:
        scene = replace(scene, roof=replace(scene.roof, ridge_at_in=72.0))  # two eaves: the left one holds the pitch
    assert corners(frame(mirrored(scene))) == corners(frame(scene), scene.kitchen.width_in)
