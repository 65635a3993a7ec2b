"""Ceilings that follow the rafters, and faces that are said to be outdoors: what is refused, and what is not."""

from __future__ import annotations

from pathlib import Path

import pytest

from routeviz import pipeline, scenefile
from routeviz.errors import SceneError
from routeviz.framing import frame
from routeviz.model.finding import State
from routeviz.model.overhead import ceiling_over_hood_in

SCENES = Path(__file__).parents[2] / "scenes"
THING = """
[[outdoors]]
name = "big-window"
kind = "operable window"
face = "{face}"
left = "10 in"
bottom = "20 in"
width = "30 in"
height = "60 in"
"""


def text(name: str, *changes: tuple[str, str]) -> str:
    found = (SCENES / f"{name}.toml").read_text(encoding="utf-8")
    for old, new in changes:
        assert found.count(old) == 1
        found = found.replace(old, new)
    return found


KNEE = ('ceiling = "10 ft"', 'ceiling = "6 ft"')  # the hood's body ends at 80 in


def test_a_kitchen_with_a_knee_wall_is_judged_by_the_ceiling_over_its_hood() -> None:
    """72 in at the left wall, 12/12: 72 + 78 = 150 in over the hood, 60 to 80 in above its body over a cover of 20 in."""
    home = scenefile.loads(
        text("cathedral_roof", KNEE, ('min = "100 in", max = "130 in"', 'min = "60 in", max = "90 in"'))
    )
    assert ceiling_over_hood_in(home) == pytest.approx(150.0)
    plan = pipeline.plan(home, alternatives=1)
    assert plan.best is not None
    states = {f.code: (f.state, f.measured) for f in plan.findings if f.code in ("FIT-ROOM", "FIT-COVER")}
    assert states["FIT-ROOM"][0] is State.FINE
    assert states["FIT-COVER"] == (State.CLOSE, pytest.approx(60.0))  # its low side may not be shorter than 60 in


def test_a_hood_that_reaches_into_the_slope_is_still_told() -> None:
    """4/12 over 78 in from 72 in: 98 in, at the body's low side 10 in off 94 2/3 in; hung at 49 in its
    body ends at 36 + 49 + 14 = 99 in."""
    low = ('pitch = "12/12"', 'pitch = "4/12"')
    home = scenefile.loads(text("cathedral_roof", KNEE, low, ('mount = "30 in"', 'mount = "49 in"')))
    (told,) = [f for f in pipeline.plan(home, alternatives=1).findings if f.code == "FIT-ROOM"]
    assert (told.state, told.must, told.measured) == (State.BROKEN, True, pytest.approx(72 + 68 / 3 - 99))


def test_under_a_level_ceiling_it_is_refused_with_its_line() -> None:
    home = text("juniper_straight_up", ('mount = "30 in"', 'mount = "50 in"'))
    with pytest.raises(SceneError) as refused:
        scenefile.loads(home)
    (mistake,) = refused.value.mistakes
    assert (mistake.field, home.splitlines()[(mistake.line or 0) - 1]) == ("hood.mount", 'mount = "50 in"')
    assert "1 in into the ceiling" in mistake.problem  # 36 + 50 + 11 - 96


@pytest.mark.parametrize(("pitch", "fits"), [("3/12", True), ("7/12", True), ("8/12", False), ("12/12", False)])
def test_a_ceiling_that_falls_from_the_hood_wall_leaves_a_front_wall(pitch: str, fits: bool) -> None:
    """15 ft of depth: 7/12 falls 105 in from 120 in, 8/12 all of 120 in."""
    home = text(
        "cathedral_roof",
        ('form = "gable"', 'form = "shed"\nhigh_side = "hood"'),
        ('ridge = "out"\nridge_at = "96 in"\n', ""),
        ('pitch = "12/12"', f'pitch = "{pitch}"'),
    )
    if fits:
        frame(scenefile.loads(home))
        return
    with pytest.raises(SceneError) as refused:
        scenefile.loads(home)
    (mistake,) = refused.value.mistakes
    assert (mistake.field, mistake.value) == ("roof.pitch", f'"{pitch}"')
    assert home.splitlines()[(mistake.line or 0) - 1] == f'pitch = "{pitch}"'


@pytest.mark.parametrize(
    ("name", "face", "known"),
    [
        ("garage_beyond", "garage/roof", "Write one of: garage/front"),  # the kitchen's own walls all lead indoors
        ("garage_beyond", "garage/left", "Write one of: garage/front"),
        ("garage_beyond", "hood", "Write one of: garage/front"),
        ("garage_beyond", "roof", "Write one of: garage/front"),
        ("garage_beyond", "shed/front", "Write one of: garage/front"),
        ("juniper_straight_up", "left", "Write one of: hood, right, roof"),
        ("juniper_straight_up", "up", "Write one of: hood, right, roof"),
        ("cathedral_roof", "hood", "Write one of: left, right, roof"),
    ],
)
def test_a_face_that_is_not_outdoors_is_refused_with_those_that_are(name: str, face: str, known: str) -> None:
    home = text(name) + THING.format(face=face)
    with pytest.raises(SceneError) as refused:
        scenefile.loads(home)
    (mistake,) = refused.value.mistakes
    assert home.splitlines()[(mistake.line or 0) - 1] == f'face = "{face}"'
    assert (mistake.value, mistake.remedy) == (f'"{face}"', known)
    named = known.removeprefix("Write one of: ").split(", ")
    for right in named:
        seen = frame(scenefile.loads(text(name) + THING.format(face=right)))
        assert any(keep.id == "big-window" for one in seen.faces for keep in one.keep_outs)


def test_every_face_of_the_frame_may_be_named_and_no_other() -> None:
    """What the reader accepts is what framing knows: a thing there keeps caps away."""
    sides = ("hood", "left", "right", "front", "roof")
    for path in sorted(SCENES.glob("*.toml")):
        plain = path.read_text(encoding="utf-8")
        spaces = [s.id for s in scenefile.loads(plain).spaces]
        for face in (*sides, *(f"{s}/{side}" for s in spaces for side in sides)):
            try:
                seen = frame(scenefile.loads(plain + THING.format(face=face)))
            except SceneError:
                continue
            assert any(keep.id == "big-window" for one in seen.faces for keep in one.keep_outs), (path.stem, face)
