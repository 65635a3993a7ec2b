"""A cap may sit where a rule has an exception by height or someone has waived it: the search knows that, the texts say so."""

from __future__ import annotations

from dataclasses import replace

import pytest
import samples

from routeviz import drawings, pipeline, reports, rules
from routeviz.drawings.primitives import Text
from routeviz.model.plan import Plan
from routeviz.model.scene import OutdoorKind, OutdoorThing, Scene, Waiver


def home(thing: OutdoorThing, profile: str = "irc-2021", *waivers: Waiver) -> Scene:
    """Only the hood wall leads out; the duct leaves it at x = 70 in, 8 in round, from 86 1/2 in up."""
    plain = samples.scene()
    return replace(
        plain, outdoors=(thing,), cap=replace(plain.cap, roof=False),
        duct=replace(plain.duct, max_elbows=1, boxing_allowed=False),
        rules=replace(plain.rules, profile=profile, waivers=waivers),
    )  # fmt: skip


def planned(scene: Scene) -> Plan:
    return pipeline.plan(scene, alternatives=1)


def intake(top: float) -> OutdoorThing:
    return OutdoorThing("fresh-air", OutdoorKind.MECHANICAL_INTAKE, "hood", 66.0, top - 8.0, 8.0, 8.0, 0.0)


def test_three_feet_over_an_intake_is_enough_and_no_less() -> None:
    """IRC 2021 M1504.3: 10 ft from a mechanical intake, or 3 ft above it; the opening's lower edge counts, 4 in below its middle."""
    low = planned(home(intake(40.0)))
    assert low.best is not None
    z = low.best.route.termination.point[2]
    assert z - 4.0 - 40.0 >= 36.0
    assert not [f for f in low.best.findings if f.code == "TRM-INTAKE" and f.state == "broken"]
    top = 60.0
    high = planned(home(intake(top)))
    assert high.best is None or high.best.route.termination.point[2] - 4.0 - top >= 36.0
    tight = planned(home(intake(z - 4.0 - 36.0)))
    assert tight.best is not None
    assert tight.best.route.termination.point[2] == pytest.approx(z, abs=0.5)


def test_a_waived_distance_bounds_no_cap_and_is_told_everywhere() -> None:
    """Without the waiver the nearest window bars the way; the flange may still not lie on it."""
    near = replace(intake(100.0), kind=OutdoorKind.GRAVITY_INTAKE, left_in=82.0)
    assert rules.keep_away(rules.profile("irc-2021"))[OutdoorKind.GRAVITY_INTAKE] > 20.0
    assert planned(home(near)).best is None
    code = next(r.code for r in rules.all_rules() if "intake_gravity" in r.limits)
    waiver = Waiver(f"{code}:fresh-air", "shut for good", "the owner")
    plan = planned(home(near, "irc-2021", waiver))
    assert plan.best is not None
    assert plan.best.route.termination.point[0] + 6.0 <= 82.0 + 1e-6
    (told,) = (f for f in plan.all_findings if f.code == code)
    assert told.waived == "shut for good (the owner)"
    words = "shut for good (the owner)"
    assert words in reports.plan_text(plan)
    assert any(words in t.text for page in drawings.sheets(plan) for t in page.items if isinstance(t, Text))
    other = planned(home(near, "irc-2021", Waiver(f"{code}:another", "no reason to do with it")))
    assert other.best is None


def test_a_waiver_is_listed_though_nothing_hangs_on_it() -> None:
    plan = planned(home(intake(20.0), "irc-2021", Waiver("TRM-OPENING", "sealed shut")))
    assert "TRM-OPENING: sealed shut" in reports.plan_text(plan)


def test_a_roof_cap_far_over_an_intake_in_the_wall_is_excused() -> None:
    """The cap's opening is some 10 ft up; an intake whose top is 40 in up lies more than 3 ft below it, within 10 ft."""
    scene = home(intake(40.0))
    scene = replace(scene, cap=replace(scene.cap, roof=True, wall=False))
    plan = planned(scene)
    assert plan.best is not None
    assert plan.best.route.elbows == 0
    assert plan.best.route.termination.point[2] > 40.0 + 36.0
    close = planned(
        replace(scene, outdoors=(intake(90.0),))
    )  # its top 3 ft under the opening at the least: 118 - 90 < 36
    assert close.best is None or close.best.route.termination.point != plan.best.route.termination.point
