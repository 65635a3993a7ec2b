"""What people and machines are told of every example home."""

from __future__ import annotations

import json
import re
from functools import cache
from pathlib import Path

import jsonschema
import pytest
from clirunning import BANNED, SCENES

from routeviz import pipeline, reports, rules, scenefile, studies
from routeviz.model.finding import State
from routeviz.model.plan import Plan
from routeviz.model.study import Fix, Way

RANK = {State.BROKEN: 0, State.CLOSE: 1, State.FINE: 2, State.NOT_CHECKED: 3, State.DOES_NOT_APPLY: 4}
HOMES = sorted(SCENES.glob("*.toml"))


@cache
def planned(path: Path) -> Plan:
    return pipeline.plan(scenefile.load(path, profiles=rules.profiles(), codes=rules.codes()), alternatives=2)


@cache
def fixed(path: Path) -> tuple[Fix, ...]:
    return studies.fixes(planned(path), most=1)


@cache
def compared(path: Path) -> tuple[Way, ...]:
    return studies.compare(planned(path).scene)


@pytest.fixture(params=HOMES, ids=lambda p: p.stem)
def home(request: pytest.FixtureRequest) -> Path:
    path = request.param
    assert isinstance(path, Path)
    return path


def numbered(text: str) -> list[int]:
    return [int(n) for n in re.findall(r"^  [✗!] (\d+) ", text, re.MULTILINE)]


@pytest.mark.parametrize("width", [80, 60])
def test_text_fits_the_terminal(home: Path, width: int) -> None:
    text = reports.plan_text(planned(home), width=width)
    assert len(text.splitlines()) > 20
    assert [line for line in text.splitlines() if len(line) > width] == []
    assert not any(line != line.rstrip() for line in text.splitlines()), "no spaces at a line's end"


UNITS = "in|ft|mm|cm|m|cfm|l/s|ft/min|m/s|Pa|lb|kg|ga|V|Hz|kW|Btu/h|cu|thousandths"
TORN = re.compile(
    rf"(?:^|[\s(#−])[\d./]*\d\n\s*(?:\d+/\d|[x×] \d|(?:{UNITS})(?![\w/]))|\d ft\n\s*\d|\d [x×]\n|\bin\n\s*wg\b",
    re.MULTILINE,
)


def test_a_torn_figure_is_seen() -> None:
    for torn in (
        "wall, 8\n  1/2 in",
        "8 1/2\n  in",
        "3\n  ft 10 in",
        "3 ft\n  10 in",
        "1/4 x\n 3 in",
        "a 6\n  mm",
        "0.2 in\n wg",
    ):
        assert TORN.search(torn), torn
    for whole in ("joist\n  4", "up between joists 4\n  and 5", "3 of\n 4 in", "5 in\n  1 of"):
        assert not TORN.search(whole), whole


@pytest.mark.parametrize("width", [80, 72, 60])
def test_no_figure_is_torn_between_two_lines(home: Path, width: int) -> None:
    """A hole at 8 1/2 in out must not read "8" here and "1/2 in out" on the next line."""
    plan = planned(home)
    metric = plan.scene.metric
    told = [
        reports.plan_text(plan, fixes=fixed(home), width=width),
        reports.wrap(f"{plan.verdict}. {plan.answer}", width),
        reports.findings_text(plan.all_findings, metric=metric, width=width),
        reports.compare_text(compared(home), metric=metric, width=width),
    ]
    assert [found[0] for text in told for found in TORN.finditer(text)] == []


MARKED = re.compile(r"^ *(?:[✗!] \d+ |[✓✗!?☐●□→] |\d+\. |\d+  |[A-Z]  )")


def test_what_follows_a_mark_hangs_beside_it(home: Path) -> None:
    """No line that goes on falls back under the mark, the box or the number."""
    whole = reports.plan_text(planned(home), fixes=fixed(home), width=10_000).splitlines()
    folded = iter(reports.plan_text(planned(home), fixes=fixed(home)).splitlines())
    seen = 0
    for paragraph in whole:
        lines = [next(folded)]
        while " ".join(" ".join(lines).split()) != " ".join(paragraph.split()):
            lines.append(next(folded))
        mark = MARKED.match(paragraph)
        if mark:
            assert {len(line) - len(line.lstrip()) for line in lines[1:]} <= {len(mark[0])}, lines
            seen += len(lines) > 1
    assert seen > 1


def test_a_plan_without_a_route_says_that_its_findings_are_of_no_duct(home: Path) -> None:
    """ "0 broken" beside "Blocked" would read as if the duct were fine."""
    plan = planned(home)
    said = "there is no duct to judge" in reports.plan_text(plan)
    assert said is (plan.best is None)
    barred = any(f.code.startswith("TRM-") for f in plan.findings)  # beside them stands the limit that bars a way
    assert ("and what bars a way: there is no" in reports.plan_text(plan, width=10_000)) is barred


def test_each_assumption_is_told_once_with_its_reason(home: Path) -> None:
    plan = planned(home)
    told = reports.plan_text(plan, width=10_000).split("Assumed, not measured\n")[1].split("\n\n")[0]
    lines = told.splitlines()[1:]
    for assumed in plan.assumptions:
        with_it = [line for line in lines if f"{assumed.field} {assumed.value}" in line]
        assert len(with_it) == 1, assumed
        assert assumed.reason in with_it[0]
    assert len(lines) == len({a.reason for a in plan.assumptions})


def test_no_word_that_people_should_not_meet(home: Path) -> None:
    text = reports.plan_text(planned(home), fixes=fixed(home))
    assert not BANNED.search(text), BANNED.search(text)
    assert not re.search(r"\bNone\b(?! exists)|\bnan\b|\binf\b|<[A-Z]\w+[.:]|\bin in\b|\.\.$|0\.\d{5}", text)


def test_findings_run_worst_first_and_are_numbered(home: Path) -> None:
    findings = planned(home).all_findings
    ranks = [(RANK[f.state], not f.must) for f in findings]
    assert ranks == sorted(ranks)
    text = reports.findings_text(findings, metric=planned(home).scene.metric)
    flagged = sum(f.state in (State.BROKEN, State.CLOSE) for f in findings)
    assert numbered(text) == list(range(1, flagged + 1))
    head = text.splitlines()[0]
    apart = re.search(r" \((?:(\d+) musts?)?(?:, )?(?:(\d+) advice)?\)", head)
    broken = [f for f in findings if f.state is State.BROKEN]
    told = (0, 0) if apart is None else tuple(int(n or 0) for n in apart.groups())
    assert told == (sum(f.must for f in broken), sum(not f.must for f in broken))  # no shipped scene waives any
    counts = [int(n) for n in re.findall(r"\d+", head if apart is None else head.replace(apart.group(), ""))]
    wanted = (State.BROKEN, State.CLOSE, State.FINE, State.NOT_CHECKED)
    assert counts == [sum(f.state is state for f in findings) for state in wanted]


def test_the_homes_have_findings_of_each_kind_and_both_ways_to_count() -> None:
    plans = [planned(home) for home in HOMES]
    assert {f.state for plan in plans for f in plan.all_findings} >= {State.BROKEN, State.CLOSE, State.FINE}
    assert {plan.scene.metric for plan in plans} == {True, False}


def test_every_open_finding_names_code_and_source(home: Path) -> None:
    for finding in planned(home).all_findings:
        if finding.state in (State.BROKEN, State.CLOSE):
            text = " ".join(reports.findings_text([finding], metric=planned(home).scene.metric).split())
            assert f"[{finding.code}] {' '.join(finding.source_text.split())}" in text
            assert finding.source_text


def test_json_fits_the_schema_and_is_strict_json(home: Path) -> None:
    plan = planned(home)

    def refuse(word: str) -> float:
        raise AssertionError(f"{word} is no JSON")

    data = json.loads(reports.plan_json(plan, fixed(home)), parse_constant=refuse)
    jsonschema.Draft202012Validator.check_schema(reports.plan_schema())
    jsonschema.validate(data, reports.plan_schema())
    assert data["verdict"] == plan.verdict.value
    assert len(data["routes"]) == len(plan.options)
    assert [f["recheck"] for f in data["fixes"]] == [f.recheck for f in fixed(home)]
    for route, option in zip(data["routes"], plan.options, strict=True):
        assert len(route["findings"]) == len(option.findings)
        assert route["route"]["length_in"] == pytest.approx(option.route.length_in, abs=1e-5)


def test_the_schema_refuses_what_is_no_plan() -> None:
    data = reports.plan_dict(planned(HOMES[0]))
    for spoilt in (
        {**data, "verdict": "OK"},
        {**data, "schema_version": 0},
        {k: v for k, v in data.items() if k != "answer"},
        {**data, "findings": [{}]},
    ):
        with pytest.raises(jsonschema.ValidationError):
            jsonschema.validate(spoilt, reports.plan_schema())


def test_metric_homes_are_told_in_metric(home: Path) -> None:
    plan = planned(home)
    answer = plan.answer + plan.second
    if plan.scene.metric:
        assert not re.search(r"\d (in|ft|cfm)\b", answer)
    else:
        assert not re.search(r"\d (mm|m|l/s)\b", answer)
