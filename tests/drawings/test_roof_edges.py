"""On the roof sheet a place is measured from what a tape hooks on: eave, rake and ridge; walls below are named as such."""

from __future__ import annotations

import math
from dataclasses import replace
from fractions import Fraction

import pytest
import samples
from drawings.test_sheets_of_a_plan import KEEP_AWAY, planned, roof_face, words_of

from routeviz.drawings import faults, sheets
from routeviz.drawings.palette import CABINET
from routeviz.drawings.primitives import Page, Path
from routeviz.framing import frame
from routeviz.model.plan import Plan
from routeviz.model.scene import RoofForm, RunDirection, Scene, WallSide
from routeviz.units import parse_length

CORE_OUT = 6.0  # board 1/2 in and a 2x6 of 5 1/2 in: the overhang counts from there


def straight_up(scene: Scene, x: float = 70.0, y: float = -8.5) -> Plan:
    framed = frame(scene, KEEP_AWAY)
    below = [f for f in framed.faces if f.kind.value == "roof" and f.lo[0] <= x <= f.hi[0] and f.lo[1] <= y <= f.hi[1]]
    roof, top = roof_face(replace(framed, faces=tuple(below)), x, y)
    return planned(scene, [(x, y, 78.5), (x, y, top)], roof, framed=framed)


def roof_page(plan: Plan, paper: str = "letter") -> Page:
    (page,) = [p for p in sheets(plan, paper=paper) if p.title == "Roof from above"]
    return page


def inside(scene: Scene, *sides: WallSide) -> Scene:
    """Let other rooms lie beyond some walls."""
    walls = tuple(samples.wall(w.side, "room") if w.side in sides else w for w in scene.walls)
    return replace(scene, walls=walls)


def test_distances_are_taken_from_eave_ridge_and_rake() -> None:
    words = words_of(roof_page(straight_up(samples.scene())))
    # eave 16 in out from the studs' outer side, ridge 132 in out from the hood wall, rake 16 in past the right wall's studs
    assert f"{_mixed(8.5 + CORE_OUT + 16.0)} to the eave" in words
    assert f"{_mixed(132.0 - 8.5)} to the ridge" in words
    assert f"{144.0 + CORE_OUT + 16.0 - 70.0:.0f} to the rake" in words
    slope = math.hypot(1.0, 0.25)
    for said, level in (("up the slope from the eave", 30.5), ("down the slope from the ridge", 123.5)):
        before = words.split(f" in {said}")[0].rsplit(" ", 2)[-2:]
        assert parse_length(" ".join(before)) == pytest.approx(level * slope, abs=1 / 32)
    assert "roof's edge" not in words


def test_where_the_roof_goes_on_only_the_wall_below_is_named() -> None:
    scene = inside(samples.scene(), WallSide.RIGHT)
    words = words_of(roof_page(straight_up(scene)))
    # board, 2x4 and board: 4 1/2 in from the room to the left wall's other face
    assert "74 1/2 to the outer face of the left wall below" in words
    assert "rake" not in words
    assert "to the eave" in words


def test_the_holes_are_found_from_ridge_and_eave_too() -> None:
    plan = straight_up(samples.scene())
    assert plan.best is not None
    up_there = [h for h in plan.best.takeoff.holes if "up from inside" in h.outside]
    slope = math.hypot(1.0, 0.25)
    assert len(up_there) == 2  # deck and shingles
    for hole in up_there:
        checks = hole.outside.partition("check: ")[2].split(", ")
        for said, level in zip(sorted(checks), (123.5, 30.5), strict=True):
            assert parse_length(said.partition(" in ")[0]) == pytest.approx(level * slope, abs=1 / 32)
        assert {c.partition(" in ")[2] for c in checks} == {
            "up the slope from the eave",
            "down the slope from the ridge",
        }


@pytest.mark.parametrize("paper", ["letter", "A4"])
@pytest.mark.parametrize(
    "form", ["ridge out", "shed", "shed to the side", "flat", "steep", "no overhang", "between rooms"]
)
def test_every_form_of_roof_may_be_printed(form: str, paper: str) -> None:
    scene = samples.scene()
    roof = scene.roof
    assert roof is not None
    y = -8.5
    named = {"ridge out": ("eave", "ridge", "rake"), "shed": ("eave", "rake"), "flat": ("edge",),
             "shed to the side": ("high edge", "rake"), "between rooms": ("eave", "ridge")}  # fmt: skip
    if form == "ridge out":
        roof = replace(roof, ridge=RunDirection.OUT, ridge_at_in=100.0)
        scene = replace(scene, walls=(scene.walls[0], samples.wall(WallSide.LEFT), *scene.walls[2:]))
    elif form == "shed":
        roof = replace(roof, form=RoofForm.SHED, high_side=WallSide.FRONT)
    elif form == "shed to the side":
        roof = replace(roof, form=RoofForm.SHED, ridge=RunDirection.OUT, high_side=WallSide.RIGHT)
    elif form == "flat":
        roof = replace(roof, form=RoofForm.FLAT, pitch=0.0)
    elif form == "steep":
        roof = replace(roof, pitch=1.0)
    elif form == "no overhang":
        roof = replace(roof, overhang_in=0.0)
    else:
        scene = inside(scene, WallSide.RIGHT)
    page = roof_page(straight_up(replace(scene, roof=roof), y=y), paper)
    assert not faults(page)
    words = words_of(page)
    for name in named.get(form, ("eave", "ridge")):
        assert f"to the {name}" in words


def test_the_drawn_slope_reaches_its_own_edges() -> None:
    page = roof_page(straight_up(samples.scene()))
    filled = max(
        (p for p in page.items if isinstance(p, Path) and p.closed and p.fill == CABINET),
        key=lambda p: max(x for x, _ in p.points) - min(x for x, _ in p.points),
    )
    wide, high = (max(p[k] for p in filled.points) - min(p[k] for p in filled.points) for k in (0, 1))
    # from the left wall's outer face to the rake, from the ridge to the eave
    assert wide / high == pytest.approx((166.0 + 4.5) / (132.0 + 22.0), rel=1e-6)


def _mixed(value: float) -> str:
    whole, part = divmod(Fraction(value), 1)
    return f"{whole} {part}"
