"""Every number of a finding is in the unit of what it measures, and every text in the units of the scene."""

from __future__ import annotations

import re
from dataclasses import replace

import pytest

from routeviz import rules
from routeviz.model.finding import Finding, State
from routeviz.reports import findings_text
from routeviz.rules import Context, Profile
from routeviz.rules.outcome import not_checked
from routeviz.rules.registry import rule as rule_of
from routeviz.units import told
from routeviz.views.words import finding_short

EVERY = rules.all_rules()
LENGTHS = {"in", "ft"}
OTHER = {  # rules that measure anything but a length
    "AIR-LEAST": "cfm", "AIR-HEAT": "cfm", "AIR-MAKEUP": "cfm", "AIR-SPEED": "ft/min", "DCT-LOW-POINT": "low points",
    "DCT-SCREWS": "screws per joint", "DCT-SHRINK": "of the area before", "DCT-INSULATION": "R", "ELB-COUNT": "elbows",
    "ELB-TIGHT": "times the duct", "DCT-SHEET": "thousandths of an inch", "FIR-GARAGE": "thousandths of an inch", "DCT-SLOPE": "in per ft",
}  # fmt: skip
MIXED = {
    "DCT-OUTLET": {"of the outlet's area", "in"},
    "FIT-COVERAGE": {"of the cooking area", "in"},
    "FIT-HEAVY": {"lb", "in"},
    "PWR-SUPPLY": {"V", "Hz"},
}


def without_limits(profile: Profile) -> Profile:
    """Give a place that knows nothing and asks everything."""
    keys = {key for name in rules.profiles() for key in rules.profile(name).limits}
    return replace(profile, limits={}, ask=dict.fromkeys(keys, "Ask the building department."))


def seen(rule: rules.Rule, *, metric: bool = False) -> list[Finding]:
    """Judge a rule's examples with their own profile, every other one, and one that knows nothing."""
    found: list[Finding] = []
    for example in (rule.passing(), rule.failing()):
        known = [rules.profile(name) for name in rules.profiles()]
        for profile in (example.profile, *known, without_limits(example.profile)):
            scene = replace(example.scene, metric=metric)
            context = Context(scene, example.frame, profile, example.route, example.air)
            found += rule.judged(context)
    return found


@pytest.mark.parametrize("rule", EVERY, ids=lambda r: r.code)
def test_a_measured_number_has_the_unit_of_what_is_measured(rule: rules.Rule) -> None:
    units = {f.unit for f in seen(rule) if f.measured is not None or f.limit is not None}
    if rule.code in MIXED:
        assert units <= MIXED[rule.code]
    elif rule.code in OTHER:
        assert units == {OTHER[rule.code]}
    else:
        assert units <= LENGTHS


def test_without_a_limit_a_flow_stays_a_flow() -> None:
    rule = rule_of("AIR-LEAST")
    example = rule.passing()
    context = Context(example.scene, example.frame, without_limits(example.profile), example.route, example.air)
    (found,) = rule.judged(context)
    assert (found.measured, found.limit, found.unit) == (350.0, None, "cfm")
    metric = findings_text((found,), metric=True)
    assert "165 l/s" in metric  # 350 x 0.47195
    assert "mm" not in metric


def test_a_measured_value_without_a_unit_is_refused() -> None:
    rule = rule_of("AIR-LEAST")
    with pytest.raises(ValueError, match="unit"):
        not_checked(rule, rule.passing(), "least_flow", measured=3.0)


INCHES = re.compile(r"\d (in|ft|cfm)\b|Btu|\{")
MILLIMETRES = re.compile(r"\d (mm|m|l/s|kW)\b|\{")


@pytest.mark.parametrize("rule", EVERY, ids=lambda r: r.code)
@pytest.mark.parametrize("metric", [False, True])
def test_texts_follow_the_scenes_units(rule: rules.Rule, metric: bool) -> None:
    foreign = INCHES if metric else MILLIMETRES
    for finding in seen(rule, metric=metric):
        texts = [finding.title, finding.detail, finding.remedy]
        if finding.ruling is not None:
            texts += [finding.ruling.rule, *(piece.note for piece in finding.ruling.framing)]
        for text in texts:
            assert not foreign.search(text), text


def test_measures_in_braces_are_told_in_the_readers_units() -> None:
    assert told("{24 in} to {30 in}") == "24 in to 30 in"
    assert told("{24 in} to {30 in}", metric=True) == "610 mm to 762 mm"  # 24 x 25.4, 30 x 25.4
    assert told("{125 mm}") == "4 15/16 in"
    assert told("{400 cfm} or {15 ft}", metric=True) == "189 l/s or 4.57 m"
    assert told("no measure at all") == "no measure at all"


def test_what_is_settled_is_said_and_not_compared() -> None:
    rule = rule_of("EXI-HOLE")
    example = rule.passing()
    far = replace(example.scene.obstacles[0], bottom_in=20.0)
    context = Context(replace(example.scene, obstacles=(far,)), example.frame, example.profile, example.route)
    shown = " ".join(findings_text(rule.judged(context), metric=False).split())
    assert "✓ Old hole, not used: 9 1/2 in, close it, insulate it and seal it on the outside" in shown
    assert "0 in" not in shown


@pytest.mark.parametrize("code", ["AIR-FLUE", "AIR-TIGHT"])
def test_a_flag_shows_no_flow_over_a_limit_of_nothing(code: str) -> None:
    rule = rule_of(code)
    (found,) = rule.judged(rule.failing())
    assert found.state is State.BROKEN
    assert finding_short(found, metric=False) == ""
    assert "0 cfm," not in findings_text((found,), metric=False)
