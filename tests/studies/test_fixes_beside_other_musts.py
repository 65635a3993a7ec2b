"""A duct's fix is offered though something stays that no change of place clears; what stays is named beside it."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

from routeviz import cli, pipeline, scenefile, studies
from routeviz.model.scene import Fan
from routeviz.model.study import FixKind

JOIST = Path(__file__).parents[2] / "scenes" / "joist_dead_centre.toml"


def test_the_least_shift_is_offered_though_makeup_air_is_still_to_clear() -> None:
    """600 cfm with an open-flue appliance: more than the 400 cfm of IRC 2021 M1503.6, wherever the hood hangs."""
    home = scenefile.load(JOIST)
    home = replace(
        home,
        hood=replace(home.hood, fan=Fan(600.0)),
        rules=replace(home.rules, open_flue_appliance=True, makeup_air=False),
    )
    plan = pipeline.plan(home, alternatives=1)
    assert plan.best is None
    assert [f.code for f in plan.must_broken] == ["AIR-MAKEUP"]
    found = studies.fixes(plan)
    assert found[0].kind is FixKind.SHIFT
    assert found[0].moved_in == 5.0
    assert {fix.left for fix in found} == {("Makeup air",)}
    assert "still to clear: Makeup air" in found[0].recheck
    quiet = replace(home, hood=replace(home.hood, fan=Fan(400.0)))
    assert {fix.left for fix in studies.fixes(pipeline.plan(quiet, alternatives=1))} == {()}


def test_no_fix_where_only_makeup_air_is_broken() -> None:
    home = scenefile.load(JOIST)
    home = replace(
        home, hood=replace(home.hood, centre_in=57.0, fan=Fan(600.0)), cooktop=replace(home.cooktop, centre_in=57.0),
        rules=replace(home.rules, open_flue_appliance=True, makeup_air=False),
    )  # fmt: skip
    plan = pipeline.plan(home, alternatives=1)
    assert plan.best is not None
    assert [f.code for f in plan.must_broken] == ["AIR-MAKEUP"]
    assert studies.fixes(plan) == ()


def test_it_is_written_with_what_it_leaves(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    text = scenefile.edit(
        JOIST.read_text(encoding="utf-8"),
        {"hood.fan": None, "rules.open_flue_appliance": True},
    )
    text = text.replace("[hood]", '[hood.fan]\nrated = "600 cfm"\n\n[hood]', 1)
    (tmp_path / "kitchen.toml").write_text(text, encoding="utf-8")
    monkeypatch.chdir(tmp_path)
    assert cli.main(["plan", "kitchen.toml", "--apply", "1", "--no-picture", "--no-page"]) == 0
    assert "still to clear: Makeup air" in capsys.readouterr().err
    assert scenefile.load(tmp_path / "kitchen_fix_1.toml").hood.centre_in == 57.0
