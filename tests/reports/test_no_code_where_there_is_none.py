"""Where a place's rules are not known, nothing is said of a code; an open question never blocks a plan."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest
import samples

from routeviz import airflow, pipeline, scenefile
from routeviz.model.finding import State, Verdict
from routeviz.model.scene import RuleChoice, Scene
from routeviz.reports import plan_text

SCENES = Path(__file__).parents[2] / "scenes"


def ruled(scene: Scene, profile: str, **choice: bool) -> Scene:
    return replace(scene, rules=RuleChoice(profile, **choice))


@pytest.mark.parametrize("profile", ["unknown", "england", "ontario"])
def test_the_air_speaks_of_no_table_that_the_place_does_not_have(profile: str) -> None:
    home = scenefile.load(SCENES / "metric_concrete_ceiling.toml")
    text = " ".join(plan_text(pipeline.plan(ruled(home, profile))).split())
    assert "Equivalent length" in text
    assert "code's" not in text


def test_the_air_sets_the_codes_count_beside_ours_where_there_is_a_code() -> None:
    text = " ".join(plan_text(pipeline.plan(ruled(samples.scene(), "irc-2021"))).split())
    assert "by the code's count" in text


def test_a_flue_that_nobody_spoke_of_does_not_block_a_plan() -> None:
    plain = samples.scene()
    strong = replace(plain, hood=replace(plain.hood, fan=replace(plain.hood.fan, rated_cfm=600.0, curve=())))
    open_question = pipeline.plan(ruled(strong, "irc-2021"))
    assert open_question.verdict in (Verdict.WORKS, Verdict.TIGHT)
    (asked,) = [f for f in open_question.findings if f.code == "AIR-MAKEUP"]
    assert asked.state is State.NOT_CHECKED
    assert open_question.best is not None
    assert open_question.best.makeup is not None
    assert not open_question.best.makeup.needed
    assert pipeline.plan(ruled(strong, "irc-2021", open_flue_appliance=True)).verdict is Verdict.BLOCKED
    assert pipeline.plan(ruled(strong, "irc-2015")).verdict is Verdict.BLOCKED


def test_makeup_air_that_hangs_on_a_flue_is_needed_only_with_one() -> None:
    for flue, needed in ((True, True), (False, False), (None, False)):
        plain = samples.scene()
        scene = replace(
            plain,
            rules=RuleChoice("irc-2021", open_flue_appliance=flue),
            hood=replace(plain.hood, fan=replace(plain.hood.fan, rated_cfm=600.0)),
        )
        air = airflow.makeup_air(scene, 400.0, 500.0, source="irc-2021-m1503-6", only_with_flue=True)
        assert air.needed is needed
        assert airflow.makeup_air(scene, 400.0, 500.0, source="irc-2015-m1503-4").needed
