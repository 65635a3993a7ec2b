"""A lesson file with mistakes: one clear line for each, all at once, with file, line, value and what to do."""

from __future__ import annotations

import os
import re
import subprocess
import sys
from pathlib import Path

import pytest

from routeviz.cli import main
from routeviz.errors import SceneError
from routeviz.scenefile.lesson import loads_lesson
from routeviz.views.lessons.conditions import UnfitError, filled, holds
from routeviz.views.lessons.facts import Fact

SCENES = Path(__file__).parent.parent.parent / "scenes"
GOOD = """format = 1
title = "A lesson"
scene = "scene.toml"

[[step]]
title = "Look"
say = "It has {elbows}."

[[step]]
title = "Asked"
say = "Now say."
ask = "How many elbows?"

[[step.choice]]
say = "None"
right = "elbows = 0"

[[step.choice]]
say = "One"
right = "elbows = 1"
"""


def lines_of(text):
    with pytest.raises(SceneError) as fault:
        loads_lesson(text, "l.toml")
    return [str(m) for m in fault.value.mistakes]


def test_the_good_one_is_read_with_its_lines():
    lesson = loads_lesson(GOOD, "l.toml")
    assert [s.title.text for s in lesson.steps] == ["Look", "Asked"]
    assert lesson.steps[0].say.line == 7
    assert lesson.steps[1].choices[1].right.line == 20
    assert lesson.steps[1].choices[1].right.text == "elbows = 1"


@pytest.mark.parametrize(
    ("old", "new", "said"),
    [
        ('title = "A lesson"\n', "", r"l\.toml:1: title: missing\. Add title"),
        ('title = "Look"', 'titel = "Look"', r"l\.toml:6: step\.1\.titel.*unknown key\. Did you mean title\?"),
        ('say = "Now say."', 'say = ""', r"l\.toml:11: step\.2\.say = \"\": must not be empty"),
        ('say = "Now say."', 'say = "Now say."\nview = "cellar"', r"l\.toml:12: step\.2\.view = \"cellar\".*square, room"),
        ('say = "Now say."', 'say = "Now say."\naway = ["bord"]', r"step\.2\.away\.1 = \"bord\".*Did you mean \"board\"\?"),
        ('say = "Now say."', 'say = "Now say."\nplan = "other"', r"l\.toml:12: step\.2\.plan = \"other\": no plan has this name"),
        ('ask = "How many elbows?"\n', "", r"step\.2: answers without a question\. Add ask"),
        ('say = "Now say."', 'say = "Now say."\nfind = true', r"asks to find or to choose, not both"),
        ('say = "It has {elbows}."', 'say = "It."\nreveal = "x"', r"step\.1: reveal belongs to a step that asks"),
        ("format = 1", "format = 7", r"l\.toml:1: format = 7"),
        ('right = "elbows = 0"\n', "", r"step\.2\.choice\.1\.right: missing"),
        ("[[step]]", "[[step", r"l\.toml:5: the file: not written as TOML"),
    ],
)  # fmt: skip
def test_each_mistake_has_its_line_value_and_remedy(old, new, said):
    lines = lines_of(GOOD.replace(old, new, 1))
    assert any(re.search(said, line) for line in lines), lines


def test_all_mistakes_are_told_at_once_in_order():
    text = GOOD.replace('say = "It has {elbows}."', 'say = ""\nview = "cellar"').replace(
        'ask = "How many', 'aks = "How many'
    )
    lines = lines_of(text)
    assert len(lines) == 3
    numbers = [int(line.split(":")[1]) for line in lines]
    assert numbers == sorted(numbers)


FACTS = {
    "": {"elbows": Fact(1.0, "", "one elbow"), "flow": Fact(231.0, "cfm", "231 cfm"), "height": Fact(30.0, "in", "30 in"),
         "verdict": Fact("Works", "", "Works"), "answer": Fact("x", "", "out through the roof")},
    "wide": {"flow": Fact(240.0, "cfm", "240 cfm")},
}  # fmt: skip


@pytest.mark.parametrize(
    ("condition", "right"),
    [
        ("elbows = 1", True), ("elbows != 1", False), ("elbows > 1", False), ("elbows >= 1", True),
        ("flow < {wide:flow}", True), ("wide:flow <= {flow}", False), ("flow > 200 cfm", True),
        ("flow > 109 l/s", True), ("height = 762 mm", True), ("height < 2 ft 7 in", True),
        ("verdict = works", True), ("verdict != Blocked", True),
    ],
)  # fmt: skip
def test_conditions_are_judged_with_units(condition, right):
    # 231 cfm is 109.02 l/s (1 cfm = 0.4719474432 l/s exactly); 30 in is 762 mm exactly
    judged, said = holds(condition, "", FACTS)
    assert judged is right
    assert " is " in said


@pytest.mark.parametrize(
    ("condition", "problem"),
    [
        ("elbows", "not a condition"), ("elbow = 1", "says nothing by the name elbow"), ("narrow:flow = 1", "no plan is named narrow"),
        ("elbows = many", "cannot be compared"), ("verdict > Works", "words have no order"), ("flow = {nothing}", "by the name nothing"),
    ],
)  # fmt: skip
def test_a_condition_that_no_plan_can_answer_says_why(condition, problem):
    with pytest.raises(UnfitError, match=problem):
        holds(condition, "", FACTS)


def test_words_are_filled_in_with_a_capital_where_a_sentence_begins():
    said = filled("{answer}.  It moves {flow};\n{wide:flow} when wide. {elbows}!", "", FACTS)
    assert said == "Out through the roof. It moves 231 cfm; 240 cfm when wide. One elbow!"
    with pytest.raises(UnfitError, match="Did you mean elbows"):
        filled("{elbow}", "", FACTS)


def run(folder, text, capsys):
    (folder / "l.toml").write_text(text, encoding="utf-8")
    code = main(["lesson", str(folder / "l.toml"), "--out", str(folder / "made")])
    return code, capsys.readouterr().err.splitlines()


def test_claims_that_the_plan_does_not_bear_out_are_refused(tmp_path, capsys):
    (tmp_path / "scene.toml").write_bytes((SCENES / "out_the_back.toml").read_bytes())
    text = GOOD.replace('scene = "scene.toml"', 'scene = "scene.toml"\nfaults = ["DCT-SMOOTH"]')
    text = text.replace("{elbows}", "{elbow}").replace('right = "elbows = 1"', 'right = "elbows = 2"')
    text = text.replace('say = "Now say."', 'say = "Now say."\nshow = ["joist-99"]\nholds = ["elbows = 0"]')
    code, said = run(tmp_path, text, capsys)
    assert code == 2
    wanted = [
        r"l\.toml:4: faults\.1 = \"DCT-SMOOTH\": the plan does not break this\. It breaks: none",
        r"l\.toml:8: step\.1\.say.*says nothing by the name elbow\. Did you mean elbows",
        r"l\.toml:13: step\.2\.show\.1 = \"joist-99\": nothing in the picture has this name\. Did you mean joist-",
        r"l\.toml:14: step\.2\.holds\.1 = \"elbows = 0\": this does not hold: elbows is one elbow",
        r"l\.toml:15: step\.2\.ask.*no answer is right by this plan",
    ]
    for line in wanted:
        assert sum(bool(re.match(line, s)) for s in said) == 1, (line, said)
    assert len(said) == len(wanted) + 1
    assert said[-1] == "5 things to mend; nothing was written."
    assert not (tmp_path / "made").exists()


def test_a_fault_that_the_lesson_keeps_silent_about_is_told(tmp_path, capsys):
    (tmp_path / "scene.toml").write_bytes((SCENES / "big_fan_small_duct.toml").read_bytes())
    text = GOOD.replace('scene = "scene.toml"', 'scene = "scene.toml"\nfaults = ["AIR-SPEED"]')
    code, said = run(tmp_path, text, capsys)
    assert code == 2
    assert any(re.match(r"l\.toml:4: faults: the plan breaks DCT-OUTLET too", s) for s in said)


def test_a_scene_that_is_not_there_and_a_change_that_cannot_be_point_at_the_lesson(tmp_path, capsys):
    code, said = run(tmp_path, GOOD, capsys)
    assert code == 2
    assert said[0].startswith('l.toml:3: scene = "scene.toml": there is no such file. Name a scene file')
    (tmp_path / "scene.toml").write_bytes((SCENES / "out_the_back.toml").read_bytes())
    text = GOOD.replace("\n[[step]]", '\n[[plan]]\nname = "high"\nset = { "hood.mout" = "30 in" }\n\n[[step]]', 1)
    code, said = run(tmp_path, text, capsys)
    assert code == 2
    assert re.match(
        r"l\.toml:\d+: plan\.high\.set, hood\.mout: a scene file has no such place\. Did you mean mount\?", said[0]
    )


def test_the_shelf_is_listed_and_an_unknown_name_is_one_line(tmp_path):
    done = subprocess.run(
        [sys.executable, "-m", "routeviz", "lesson"], capture_output=True, text=True, timeout=60, check=False,
        cwd=tmp_path, env=os.environ | {"COLUMNS": "80"},
    )  # fmt: skip
    assert done.returncode == 0
    assert "find-the-five-faults" in done.stdout
    assert max(map(len, done.stdout.splitlines())) <= 80
    assert done.stderr == ""


def test_a_name_that_is_not_on_the_shelf(capsys):
    assert main(["lesson", "no-such-lesson"]) == 2
    said = capsys.readouterr().err.splitlines()
    assert said[0].startswith("no-such-lesson: the lesson: there is no such file, and none of that name is shipped.")
    assert "find-the-five-faults" in said[0]
    assert len(said) == 2
