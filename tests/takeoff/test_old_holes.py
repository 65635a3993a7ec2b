"""An old hole that does not serve is closed: its parts, its step, and its dashed outline on the sheets."""

from __future__ import annotations

from dataclasses import replace

import pytest
import samples
from cases.homes import MM, built, cap, straight, with_duct, with_wall

from routeviz.drawings import faults, sheets
from routeviz.drawings.primitives import Disc, Page, Text
from routeviz.model.oldholes import to_close
from routeviz.model.plan import Plan
from routeviz.model.scene import Layer, Obstacle, ObstacleKind, Outlet, Scene, WallFrame, WallSide
from routeviz.model.takeoff import BuyLine, Step

NEW = (70.0, 74.0)  # the new 8 in duct, straight back; its hole is 8 1/2 in


def kitchen(x: float, z: float, wide: float, *, masonry: bool = False) -> Scene:
    """A rear outlet at 70 in, 74 in up, and an old round hole of `wide` through the hood wall at (x, z)."""
    plain = samples.scene()
    hood = replace(plain.hood, outlet=Outlet("rear", samples.ROUND_8, up_in=8.0, collar_in=0.0), cover=None)
    scene = with_wall(with_duct(replace(plain, hood=hood), samples.ROUND_8), WallSide.HOOD, openings=())
    scene = replace(scene, hood=hood)
    if masonry:
        scene = with_wall(scene, WallSide.HOOD, frame=WallFrame.MASONRY, studs=None, core_in=250 * MM,
                          inside=(Layer("gypsum plaster", 15 * MM),), outside=(Layer("cement render", 20 * MM),))  # fmt: skip
    deep = scene.wall(WallSide.HOOD).thickness_in
    old = Obstacle("old-hole", ObstacleKind.HOLE, x - wide / 2, -deep, z - wide / 2, wide, deep, wide, diameter_in=wide)
    return replace(scene, obstacles=(old,))


def planned(scene: Scene) -> Plan:
    plan = built(scene, straight(scene.wall(WallSide.HOOD).thickness_in), cap())
    assert plan.best is not None
    assert plan.best.route.termination.kind is not None
    return plan


def closing(plan: Plan) -> tuple[list[BuyLine], list[Step]]:
    assert plan.best is not None
    taken = plan.best.takeoff
    words = ("closes the old hole", "behind a patch", "round the closed hole", "for a hole")
    lines = [b for b in taken.buy if any(w in f"{b.size} {b.item} {b.note}" for w in words)]
    return lines, [s for s in taken.steps if s.id.startswith("old-hole")]


@pytest.mark.parametrize(
    ("x", "z", "wide", "left"),
    [
        (*NEW, 8.5, None),  # it serves as it is
        (*NEW, 6.0, None),  # enlarged round the same middle
        (70.0, 73.0, 6.0, None),  # 1 in lower: the new hole takes it in, 4 in of 4 1/4
        (70.0, 68.0, 6.0, False),  # 6 in lower: it reaches 9 in down, the new hole 4 1/4
        (70.0, 66.75, 6.0, False),  # 7 1/4 in: they touch, 3 in and 4 1/4
        (70.0, 66.5, 6.0, True),  # past touching
        (30.0, 60.0, 6.0, True),
    ],
)
def test_what_the_new_hole_leaves_open_is_closed(x: float, z: float, wide: float, left: bool | None) -> None:
    plan = planned(kitchen(x, z, wide))
    assert plan.best is not None
    assert [c.whole for c in to_close(plan.scene, plan.best.route)] == ([] if left is None else [left])
    lines, steps = closing(plan)
    assert bool(lines) == bool(steps) == (left is not None)
    if left is not None:
        assert steps[0].text.startswith(
            "Close the old hole" if left else "Close what the new hole leaves of the old hole"
        )


def test_a_framed_wall_is_closed_layer_by_layer() -> None:
    lines, (step, face) = closing(planned(kitchen(30.0, 60.0, 6.0)))
    # a patch reaches 2 in past the hole all round (common practice): 6 + 4 in
    assert {(b.item, b.size, b.count) for b in lines} == {
        ("backing strips behind a patch", "1x3, 10 in", 2), ("board patch", "10 x 10 in", 1), ("sheathing patch", "10 x 10 in", 1),
        ("cladding piece", "10 x 10 in", 1), ("insulation", "for a hole 6 in wide", 1),
        ("exterior sealant", "round the closed hole", 1),
    }  # fmt: skip
    assert "6 in wide, its middle 30 in from the left wall, 60 in above the floor" in step.text
    assert "insulation" in step.text
    assert face.text == "Close the wood lap siding over the old hole, and seal it."


def test_masonry_is_filled_with_masonry() -> None:
    lines, (step, face) = closing(planned(kitchen(30.0, 60.0, 6.0, masonry=True)))
    # 250 mm of core; 9 13/16 in is the nearest sixteenth
    assert {(b.item, b.size) for b in lines} == {
        ("brick pieces and mortar", "6 in wide, 9 13/16 in deep"), ("finishing plaster", "over 6 in"),
        ("exterior sealant", "round the closed hole"),
    }  # fmt: skip
    assert "brick pieces in mortar" in step.text
    assert "board" not in step.text
    assert face.text == "Seal the closed hole's face outside."


def test_it_is_closed_before_the_inspection() -> None:
    plan = planned(kitchen(30.0, 60.0, 6.0))
    assert plan.best is not None
    names = [s.id for s in plan.best.takeoff.steps]
    assert names.index("look") < names.index("old-hole-1") < names.index("inspect")


@pytest.mark.parametrize("z", [68.0, 60.0])
def test_the_sheathing_is_closed_before_the_cap_covers_it_and_the_face_after(z: float) -> None:
    plan = planned(kitchen(70.0, z, 6.0))
    lines, (step, face) = closing(plan)
    assert plan.best is not None
    names = [s.id for s in plan.best.takeoff.steps]
    assert names.index("outside") < names.index(step.id) < names.index("cap") < names.index(face.id)
    # a hole of 6 in, 6 in under the new one of 8 1/2 in, runs into it; 14 in under it is whole
    left = z == 68.0
    assert ("cut round the new hole" in step.text) == left
    assert ("cut round the cap" in face.text) == left
    assert any(b.note.endswith("cut round the new hole") for b in lines) == left


def page_of(plan: Plan, *names: str) -> list[Page]:
    found = [p for p in sheets(plan) if str(p.name) in names]
    assert len(found) == len(names)
    return found


@pytest.mark.parametrize("masonry", [False, True])
def test_it_is_drawn_dashed_with_its_name_from_both_sides(masonry: bool) -> None:
    plan = planned(kitchen(50.0, 70.0, 6.0, masonry=masonry))
    inside, outside = page_of(plan, "hood wall", "outside")
    for page in (inside, outside):
        (ring,) = [d for d in page.items if isinstance(d, Disc) and d.id == "old-hole"]
        assert ring.dash
        assert "old hole: close it" in [t.text for t in page.items if isinstance(t, Text)]
        assert not faults(page)


def test_one_that_serves_is_drawn_by_its_name_alone() -> None:
    (inside,) = page_of(planned(kitchen(*NEW, 8.5)), "hood wall")
    words = [t.text for t in inside.items if isinstance(t, Text)]
    assert "old hole" in words
    assert not any("close" in w for w in words)
