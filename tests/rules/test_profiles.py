"""Profiles: every limit has a source, metric limits are exact, the unknown place refuses to guess."""

from __future__ import annotations

import importlib
from dataclasses import replace
from typing import Any

import pytest
import samples

from routeviz import catalog, rules
from routeviz.errors import CatalogError, SceneError
from routeviz.model.finding import State
from routeviz.model.scene import MakerLimits, OutdoorKind, RuleChoice, Waiver
from routeviz.model.solids import Box, Frame

module = importlib.import_module("routeviz.rules.profiles")  # the package exports a function of the same name
EMPTY = Frame((), (), (), Box((0.0, 0.0, 0.0), (1.0, 1.0, 1.0)))
SEEN = {
    "seen in print",
    "seen in a summary",
    "remembered, not verified",
    "derived by arithmetic",
    "common practice, no source",
}


def test_the_profiles_that_a_scene_may_choose() -> None:
    assert rules.profiles() == ("england", "irc-2015", "irc-2021", "irc-2024", "ontario", "unknown", "washington")


@pytest.mark.parametrize("name", [*rules.profiles(), "common"])
def test_every_limit_of_every_profile_has_a_source(name: str) -> None:
    rows = catalog.table(f"profiles/{name}").get("limits", {})
    assert bool(rows) is (name != "unknown")  # which asks instead of guessing
    for key, row in rows.items():
        if row.get("absent"):
            continue
        assert row.get("source"), f"{name}: {key} has no source"
        assert catalog.source(row["source"]).seen.value in SEEN
        assert isinstance(row["must"], bool)


@pytest.mark.parametrize("gone", ["source", "must", "unit", "value"])
def test_a_limit_without_a_source_is_refused(monkeypatch: pytest.MonkeyPatch, gone: str) -> None:
    row: dict[str, Any] = {"value": 36, "unit": "in", "must": True, "source": "irc-2021-m1504-3"}
    del row[gone]
    table = {"title": "T", "place": "", "about": "", "metric": False, "limits": {"opening_operable": row}}
    monkeypatch.setattr(catalog, "table", lambda name: table)
    module._read.cache_clear()
    try:
        with pytest.raises(CatalogError, match=f"opening_operable: {gone} is missing"):
            module._read("broken")
    finally:
        module._read.cache_clear()


@pytest.mark.parametrize("name", rules.profiles())
def test_every_source_says_document_and_how_it_was_seen(name: str) -> None:
    assert len(rules.profile(name).limits) > 20
    for limit in rules.profile(name).limits.values():
        source = catalog.source(limit.source)
        assert source.document
        if limit.must and source.id != "arithmetic":
            assert source.id != "common-practice", f"{limit.key}: common practice is no must"


@pytest.mark.parametrize("table", ["members", "rules"])
def test_every_number_of_the_member_and_rule_tables_has_a_source(table: str) -> None:
    def walk(value: Any, sourced: bool, path: str) -> None:
        if isinstance(value, dict):
            own = sourced or "source" in value
            for key, inner in value.items():
                walk(inner, own, f"{path}.{key}")
        elif isinstance(value, int | float) and not isinstance(value, bool):
            assert sourced, path

    walk(catalog.table(table), False, table)


def test_millimetres_become_exact_inches() -> None:
    ontario = rules.profile("ontario")
    limit = ontario.get("cabinet_unprotected")
    assert limit is not None
    assert limit.number * 25.4 == pytest.approx(750, abs=1e-9)
    assert limit.said == "750 mm"
    flow = rules.profile("england").get("least_flow")
    assert flow is not None
    assert flow.number == pytest.approx(63.57, abs=0.01)  # 30 l/s: Approved Document F table 1.1; exact foot
    assert ontario.metric


def test_editions_differ_where_they_should() -> None:
    assert rules.profile("irc-2015").limits["makeup_only_with_flue"].value is False
    assert rules.profile("irc-2021").limits["makeup_only_with_flue"].value is True
    assert "M1506.3" in rules.profile("irc-2015").limits["opening_operable"].source_text
    assert "M1504.3" in rules.profile("irc-2021").limits["opening_operable"].source_text
    assert rules.profile("washington").get("opening_fixed") is None
    assert rules.profile("irc-2024").limits["opening_above"].number == 12
    assert rules.profile("irc-2021").get("opening_above") is None
    assert "aluminum" in rules.profile("washington").limits["duct_materials"].value  # type: ignore[operator]
    assert "aluminum" not in rules.profile("irc-2021").limits["duct_materials"].value  # type: ignore[operator]
    # cord: 36 in up to the 2017 electrical code, 4 ft from 2020
    assert rules.profile("irc-2015").limits["cord_length"].number == 36
    assert rules.profile("irc-2021").limits["cord_length"].number == 48


def test_an_unknown_profile_names_the_nearest_one() -> None:
    with pytest.raises(SceneError, match="irc-2021") as caught:
        rules.profile("irc2021", file="kitchen.toml")
    (mistake,) = caught.value.mistakes
    assert mistake.file == "kitchen.toml"
    assert mistake.field == "rules.profile"
    assert "Did you mean irc-2021?" in mistake.remedy
    assert rules.profile_mistake("ontario", "x.toml") is None


def test_common_practice_alone_is_no_profile_to_choose() -> None:
    mistake = rules.profile_mistake("common", "x.toml")
    assert mistake is not None


def test_the_unknown_place_asks_instead_of_guessing() -> None:
    unknown = rules.profile("unknown")
    codes_alone = {limit.key for limit in unknown.limits.values() if limit.must and limit.source != "arithmetic"}
    assert codes_alone == set()
    for key in ("opening_operable", "lot_line", "makeup_flow", "discharge_outdoors", "smooth_inside", "duct_materials"):
        assert unknown.get(key) is None
        assert unknown.asked(key).startswith("Ask ")
    findings = rules.check_scene(samples.scene(), EMPTY, unknown)
    makeup = next(f for f in findings if f.code == "AIR-MAKEUP")
    assert makeup.state is State.NOT_CHECKED
    assert makeup.remedy == unknown.asked("makeup_flow")


def test_keep_away_gives_the_places_distances() -> None:
    strict = rules.keep_away(rules.profile("irc-2015"))
    assert strict[OutdoorKind.OPERABLE_WINDOW] == 36
    assert strict[OutdoorKind.FIXED_WINDOW] == 36
    assert strict[OutdoorKind.MECHANICAL_INTAKE] == 120
    # Washington counts openings that open and gravity intakes only: WAC 51-51-1504
    washington = rules.keep_away(rules.profile("washington"))
    assert OutdoorKind.FIXED_WINDOW not in washington
    assert OutdoorKind.LOT_LINE not in rules.keep_away(rules.profile("unknown"))
    # inspectors are split on soffit vents: judged, but no bound on where a cap may sit
    assert OutdoorKind.SOFFIT_VENT not in strict


def test_the_maker_overrides_the_place_and_is_named() -> None:
    maker = MakerLimits(hood_min_in=31.0, document="hood instructions, page 6")
    scene = samples.scene(rules=RuleChoice("irc-2021", maker))
    found = next(f for f in rules.check_scene(scene, EMPTY, rules.profile("irc-2021")) if f.code == "HGT-CANOPY-LOW")
    assert (found.limit, found.state, found.must) == (31.0, State.BROKEN, True)
    assert found.source == "maker"
    assert found.source_text == "hood instructions, page 6"


def test_a_waiver_is_printed_and_changes_no_state() -> None:
    low = replace(samples.scene().hood, mount_in=20.0)
    scene = samples.scene(
        hood=low, rules=RuleChoice("irc-2021", waivers=(Waiver("hgt-canopy-low", "listed for 20 in", "owner"),))
    )
    found = next(f for f in rules.check_scene(scene, EMPTY, rules.profile("irc-2021")) if f.code == "HGT-CANOPY-LOW")
    assert found.state is State.BROKEN
    assert found.waived == "listed for 20 in (owner)"
    others = [f for f in rules.check_scene(scene, EMPTY, rules.profile("irc-2021")) if f.code != "HGT-CANOPY-LOW"]
    assert all(not f.waived for f in others)


def test_waivers_without_a_reason_or_of_no_rule_are_mistakes() -> None:
    waivers = (Waiver("TRM-OPENNING", "seen by the inspector"), Waiver("TRM-OPENING", "  "))
    found = rules.scene_mistakes(samples.scene(rules=RuleChoice("irc-2020", waivers=waivers)))
    assert [m.field for m in found] == ["rules.profile", "rules.waivers[1].code", "rules.waivers[2].reason"]
    assert "TRM-OPENING" in found[1].remedy
    assert rules.scene_mistakes(samples.scene()) == ()


def test_findings_come_worst_first() -> None:
    scene = samples.scene(hood=replace(samples.scene().hood, mount_in=20.0, width_in=28.0))
    states = [f.state for f in rules.check_scene(scene, EMPTY, rules.profile("irc-2021"))]
    order = list(State)
    assert states == sorted(states, key=order.index)
    assert states[0] is State.BROKEN


def test_the_same_findings_come_again() -> None:
    scene, profile = samples.scene(), rules.profile("irc-2021")
    assert rules.check_scene(scene, EMPTY, profile) == rules.check_scene(scene, EMPTY, profile)


def test_every_distance_outdoors_has_a_rule_that_judges_it() -> None:
    """A waiver is looked for by that rule's code: a limit of its own without one could not be waived."""
    for kind, row in catalog.table("rules")["outdoors"].items():
        judging = [r.code for r in rules.all_rules() if row["limit"] in r.limits and r.code.startswith("TRM-")]
        assert len(judging) == 1, kind
