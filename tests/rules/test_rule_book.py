"""The rule book keeps its promises: every file is a rule, every rule is explained, every example behaves as said."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

import routeviz.rules.book
from routeviz import catalog, rules
from routeviz.errors import RoutevizError
from routeviz.model.finding import Finding, State

BOOK = Path(routeviz.rules.book.__file__).parent
EVERY = rules.all_rules()
PASSES = (State.FINE, State.CLOSE)
ONLY_OBJECT = {"FIR-SHARED", "FIR-WALL", "SVC-SHARED", "TRM-ABOVE"}  # they say nothing where there is nothing to say


def test_every_file_of_the_book_is_one_registered_rule() -> None:
    files = sorted(p.stem for p in BOOK.glob("*.py") if p.stem != "__init__")
    assert sorted(r.code.lower().replace("-", "_") for r in EVERY) == files


def test_every_family_has_a_rule_and_no_rule_stands_outside_the_families() -> None:
    assert {r.family for r in EVERY} == set(rules.FAMILIES)


@pytest.mark.parametrize("rule", EVERY, ids=lambda r: r.code)
def test_a_rule_is_documented(rule: rules.Rule) -> None:
    for field in ("title", "checks", "why", "applies", "blind", "passing_words", "failing_words"):
        text = getattr(rule, field)
        assert text.strip(), field
        assert text[0].isupper() or text[0].isdigit(), field
    for field in ("checks", "why", "applies", "blind", "passing_words", "failing_words"):
        assert getattr(rule, field).endswith("."), field
    assert rule.limits or rule.sources
    module_text = (BOOK / f"{rule.code.lower().replace('-', '_')}.py").read_text(encoding="utf-8")
    assert module_text.startswith('"""')


@pytest.mark.parametrize("rule", EVERY, ids=lambda r: r.code)
def test_a_rules_limits_and_sources_exist(rule: rules.Rule) -> None:
    known = {key for name in rules.profiles() for key in rules.profile(name).limits}
    for key in rule.limits:
        # duct_least stands in one place only; everything else in at least one profile
        assert key in known, key
    for source in rule.sources:
        assert catalog.source(source).document


@pytest.mark.parametrize("rule", EVERY, ids=lambda r: r.code)
def test_the_passing_example_passes(rule: rules.Rule) -> None:
    findings = rule.judged(rule.passing())
    assert [f.title for f in findings if f.state not in PASSES] == []
    if rule.fails_as is State.BROKEN and rule.code not in ONLY_OBJECT:
        assert findings, "a passing example that finds nothing shows nothing"


@pytest.mark.parametrize("rule", EVERY, ids=lambda r: r.code)
def test_the_failing_example_does_not_pass(rule: rules.Rule) -> None:
    findings = rule.judged(rule.failing())
    assert rule.fails_as is not State.FINE
    assert any(f.state is rule.fails_as for f in findings)
    assert any(f.remedy for f in findings if f.state is rule.fails_as), "no way out is told"


WISHED = re.compile(
    r"^(no low|never|ends outdoors|smooth|backdraft|cap at|room for|circuit|duct on its own|duct as wide)", re.I
)


@pytest.mark.parametrize("rule", EVERY, ids=lambda r: r.code)
def test_what_is_broken_is_named_by_what_is_wrong(rule: rules.Rule) -> None:
    broken = [f.title for f in rule.judged(rule.failing()) if f.state is State.BROKEN]
    assert not [t for t in broken if WISHED.match(t)]
    assert bool(WISHED.match(rule.title)) <= bool(rule.fault), "a wish needs words for when it is not met"
    if rule.fault:
        assert not any(t.startswith(rule.title) for t in broken)
        assert not any(f.title.startswith(rule.fault) for f in rule.judged(rule.passing()))


def _both(rule: rules.Rule) -> tuple[Finding, ...]:
    return rule.judged(rule.passing()) + rule.judged(rule.failing())


@pytest.mark.parametrize("rule", EVERY, ids=lambda r: r.code)
def test_a_finding_carries_its_numbers_and_its_source(rule: rules.Rule) -> None:
    findings = _both(rule)
    assert findings
    for finding in findings:
        assert finding.code == rule.code
        assert finding.source_text
        if finding.relation == "at least" and finding.margin is not None:
            assert finding.measured is not None
            assert finding.limit is not None
            assert finding.margin == pytest.approx(finding.measured - finding.limit)
        if finding.relation == "at most" and finding.margin is not None:
            assert finding.measured is not None
            assert finding.limit is not None
            assert finding.margin == pytest.approx(finding.limit - finding.measured)
        if finding.margin is not None and finding.margin < -1e-6:
            assert finding.state is State.BROKEN
        if finding.margin is not None and finding.margin >= 0 and finding.relation:
            assert finding.state is not State.BROKEN


FORBIDDEN = re.compile(r"\b(errors?|warnings?|invalid|ok|okay|score|percent)\b|%", re.IGNORECASE)


@pytest.mark.parametrize("rule", EVERY, ids=lambda r: r.code)
def test_people_read_the_projects_words(rule: rules.Rule) -> None:
    texts = [rule.title, rule.checks, rule.why, rule.applies, rule.blind, rule.passing_words, rule.failing_words]
    for finding in _both(rule):
        texts += [finding.title, finding.detail, finding.remedy]
    for text in texts:
        assert not FORBIDDEN.search(text), text


@pytest.mark.parametrize("rule", EVERY, ids=lambda r: r.code)
def test_explain_tells_everything_about_a_rule(rule: rules.Rule) -> None:
    told = rules.explain(rule.code.lower())
    assert told.code == rule.code
    for heading in (
        "What it checks",
        "Why",
        "Limits and sources",
        "Applies when",
        "Does not see",
        "Passes",
        "Does not pass",
    ):
        assert heading in told.text
    assert rule.passing_words in told.text
    assert rule.failing_words in told.text
    assert f"{rule.fails_as.value}: " in told.text
    assert max(len(line) for line in told.text.splitlines()) < 400


def test_explain_shows_the_limit_of_every_place() -> None:
    rows = {(r.key, r.profile): r for r in rules.explain("HGT-CABINET").limits}
    assert rows["cabinet_unprotected", "irc-2021"].said == "30 in"
    assert rows["cabinet_unprotected", "ontario"].said == "750 mm"
    assert rows["cabinet_unprotected", "unknown"].said == "not known"


def test_an_unknown_code_names_the_nearest() -> None:
    with pytest.raises(RoutevizError, match="FIT-ROOM"):
        rules.explain("FIT-ROM")


HELD = [  # a rule with one of its findings, where finding and explanation speak of the same limit
    (rule, context, finding)
    for rule in EVERY
    for context in (rule.passing(), rule.failing())
    for finding in rule.judged(context)
]


def _forces(rule: rules.Rule, place: str, source: str) -> set[bool]:
    """Give what the explanation says of the limits of one source in one place: a must or not."""
    rows = rules.explain(rule.code).limits
    named = [r for r in rows if r.profile == place] + [r for r in rows if r.profile == "where nothing else is said"]
    return {r.must for r in named if r.said != "not known" and r.source_text == catalog.source(source).text}


def test_a_limit_is_explained_with_the_force_that_its_findings_have() -> None:
    compared = 0
    for rule, context, finding in HELD:
        if finding.source in ("maker", "none", "arithmetic") or finding.ruling is not None:
            continue  # no limit of a place: explained in the rule's own words
        forces = _forces(rule, context.profile.name, finding.source)
        if forces:
            assert finding.must in forces, (rule.code, finding.title)
            compared += 1
    assert compared > 60


def test_the_codes_table_of_lengths_is_advice() -> None:
    # IRC M1504.2: the duct's length is determined by the table, or the flow is measured or calculated
    told = rules.explain("AIR-LENGTH")
    assert {row.must for row in told.limits if row.profile.startswith(("irc", "wash"))} == {False}
    assert "irc-2021, washington: should hold; IRC 2021 Table M1504.2" in told.text
    assert "must hold" not in told.text
    assert "calculated or measured flow may stand in" in " ".join(told.text.split())


@pytest.mark.parametrize("rule", EVERY, ids=lambda r: r.code)
def test_an_explanation_names_each_place_once_and_writes_inches_as_a_tape_does(rule: rules.Rule) -> None:
    text = rules.explain(rule.code).text
    told = " ".join(text.split())
    assert "where nothing else is said, where" not in told
    assert "it applies" not in told
    assert not re.search(r"\bi joist", told)
    for figure in re.findall(r"\b(\d+\.\d+) in\b(?! wg)", told):
        assert float(figure) < 1 / 32 or "thickness" in rule.checks, figure  # sheet metal alone is told in decimals
    for key in {row.key for row in rules.explain(rule.code).limits}:
        places = [row.profile for row in rules.explain(rule.code).limits if row.key == key]
        assert len(places) == len(set(places)), key


def test_a_place_with_its_own_common_practice_is_named() -> None:
    rows = {r.profile: r.said for r in rules.explain("HGT-CANOPY-LOW").limits if r.key == "canopy_over_electric"}
    assert rows == {"england": "650 mm", "ontario": "600 mm", "where nothing else is said": "24 in"}


def test_the_member_tables_are_told_in_shares_and_fractions() -> None:
    # IRC R502.8.1: a hole up to a third of the depth; the deepest flange of an I-joist taken as 1 1/2 in
    assert "sawn, hole: 1/3 of the depth; IRC R502.8.1" in rules.explain("MBR-JOIST").text
    assert "I-joist, flange: 1 1/2 in;" in rules.explain("MBR-ENGINEERED").text
    assert "Cut in I-joist 4" in rules.explain("MBR-ENGINEERED").text
