"""Above 100 lb, and above 6 ft of cover (common practice), every screw gets wood and the maker is asked."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import handmade
import pytest
import samples

from routeviz import pipeline, scenefile
from routeviz.model.finding import Finding, State
from routeviz.model.scene import Cover, Fastener, Scene
from routeviz.model.takeoff import TakeOff
from routeviz.takeoff import count, marks_of
from routeviz.takeoff.heavy import stays

SCENE = Path(__file__).parents[2] / "scenes" / "cathedral_roof.toml"
# studs at 3/4 + 16 n in: 64 3/4 and 80 3/4; the hood hangs at 70 in, so -5 1/4 and 10 3/4 meet a stud and 0 meets none
FASTENERS = (Fastener(-5.25, 9.5), Fastener(0.0, 9.5), Fastener(10.75, 9.5))


def home(weight_lb: float, cover: Cover | None = None, *, ceiling_in: float = 96.0, metric: bool = False) -> Scene:
    plain = samples.scene(metric=metric)
    hood = replace(plain.hood, weight_lb=weight_lb, fasteners=FASTENERS, cover=cover or plain.hood.cover)
    return replace(plain, hood=hood, kitchen=replace(plain.kitchen, ceiling_in=ceiling_in))


def counted(scene: Scene) -> TakeOff:
    return count(handmade.up_route(), scene, handmade.frame(), handmade.findings())


def test_a_light_hood_hangs_on_two_studs_and_a_heavy_one_on_wood_at_every_mark() -> None:
    holds = {
        w: [m.wood or m.backed for m in marks_of(home(w), handmade.frame()) if m.row != "bracket"]
        for w in (55.0, 100.0, 101.0)
    }
    assert holds == {55.0: [True, False, True], 100.0: [True, False, True], 101.0: [True, True, True]}
    lumber = {w: [b.note for b in counted(home(w)).buy if b.item.startswith("backing")] for w in (55.0, 330.0)}
    assert lumber[55.0] == []
    assert len(lumber[330.0]) == 1
    assert not any("toggle" in b.item for b in counted(home(330.0)).buy)


def test_a_heavy_hood_asks_its_maker_before_any_hole_and_is_raised_by_a_lift() -> None:
    steps = {s.id: s for s in counted(home(330.0)).steps}
    order = list(steps)
    assert order.index("heavy") < order.index("backing") < order.index("screws") < order.index("lift")
    assert "maker's fixing for 330 lb" in steps["heavy"].text
    assert "no screw goes into board alone" in steps["heavy"].text
    assert "lift, or more than two people" in steps["lift"].text
    assert "own weight is no proof" in steps["backing"].hold
    assert "heavy" not in {s.id for s in counted(home(100.0)).steps}


def test_in_a_metric_home_it_is_told_in_kilograms() -> None:
    steps = {s.id: s.text for s in counted(home(330.0, metric=True)).steps}
    assert "150 kg" in steps["heavy"]  # 330 x 0.45359237 = 149.7


# the hood's body ends at 77 in: a ceiling at 149 in leaves 72 in, which is no more than 6 ft
@pytest.mark.parametrize(("room", "many"), [(72.0, 0), (72.25, 1), (144.0, 1), (144.25, 2)])
def test_stays_of_a_long_cover_stand_no_more_than_6_ft_apart(room: float, many: int) -> None:
    scene = home(55.0, Cover(16.0, 200.0, 12.0, 13.0), ceiling_in=77.0 + room)
    assert stays(scene) == many
    found = counted(scene)
    assert [b.count for b in found.buy if b.item == "stay for the cover"] == ([many] if many else [])
    bracket = [m for m in found.marks if m.row == "bracket"]
    assert [m.backed or m.wood for m in bracket] == [bool(many)] * 2
    (step,) = [s for s in found.steps if s.id == "cover"]
    assert ("stay" in step.text) is bool(many)


def heavy(findings: tuple[Finding, ...]) -> dict[str, tuple[State, bool, float | None, str]]:
    return {f.title: (f.state, f.must, f.measured, f.source) for f in findings if f.code == "FIT-HEAVY"}


def test_the_shipped_pitched_kitchen_is_asked_for_both_and_its_anchors_are_gone() -> None:
    plan = pipeline.plan(scenefile.load(SCENE))
    assert heavy(plan.findings) == {
        "Fixing of a heavy hood": (State.NOT_CHECKED, False, 330.0, "common-practice"),
        "Fixing of a long cover": (State.NOT_CHECKED, False, pytest.approx(128.0), "common-practice"),
    }
    assert plan.best is not None
    assert all(m.wood or m.backed for m in plan.best.takeoff.marks)
    assert not [b for b in plan.best.takeoff.buy if "anchor" in b.item]
    # no framing of the gable is given: the pieces reach between the studs below, 16 - 1 1/2 in apart
    assert {b.size for b in plan.best.takeoff.buy if b.item.startswith("backing")} == {"2x8, 14 1/2 in"}


def test_a_light_hood_under_a_short_cover_is_asked_nothing() -> None:
    plan = pipeline.plan(samples.scene())
    assert heavy(plan.findings) == {}
