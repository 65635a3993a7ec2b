"""The live page's processes: the newest job wins, older work ends, and a process that dies is replaced."""

from __future__ import annotations

import json
import os
import queue
import time
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import replace

import live_benches
import live_tools
import numpy as np
import pytest
import trimesh
import view_plans

from routeviz import pipeline, rules, scenefile
from routeviz.views.app import Pictures
from routeviz.views.app.pictures import stage_of
from routeviz.views.app.planning import Planning
from routeviz.views.app.runner import Runner
from routeviz.views.parts import Group


@contextmanager
def runner(make, patience_s: float = 0.0) -> Iterator[tuple[Runner, queue.Queue]]:
    heard: queue.Queue = queue.Queue()
    made = Runner(make, lambda *said: heard.put(said), patience_s=patience_s)
    try:
        yield made, heard
    finally:
        made.close()


def gone(process: int) -> bool:
    """Whether a process has ended; one that nobody asked after yet counts as ended."""
    for _ in range(100):
        try:
            with open(f"/proc/{process}/stat", encoding="ascii") as file:
                if file.read().rpartition(")")[2].split()[0] == "Z":
                    return True
        except FileNotFoundError:
            return True
        time.sleep(0.05)
    return False


def test_a_job_talks_and_is_done() -> None:
    with runner(live_benches.echoing) as (made, heard):
        made.give(7, 21)
        assert heard.get(timeout=30) == (7, "heard", 21)
        assert heard.get(timeout=30) == (7, "done", 42)


def test_a_newer_job_ends_the_older_one() -> None:
    with runner(live_benches.sleeping) as (made, heard):
        made.give(1, 60)
        _, _, process = heard.get(timeout=30)
        made.give(2, 0)
        said = [heard.get(timeout=30) for _ in range(3)]
        assert [s[:2] for s in said] == [(1, "stopped"), (2, "begun"), (2, "done")]
        if os.path.isdir("/proc"):
            assert gone(process)


def test_with_patience_a_job_that_is_nearly_there_is_let_through() -> None:
    with runner(live_benches.sleeping, patience_s=30) as (made, heard):
        made.give(1, 0.4)
        heard.get(timeout=30)
        made.give(2, 5)
        made.give(3, 0)  # 2 never begins
        said = [heard.get(timeout=30)[:2] for _ in range(3)]
        assert said == [(1, "done"), (3, "begun"), (3, "done")]


def test_stopping_ends_the_work_and_the_next_job_is_done() -> None:
    with runner(live_benches.sleeping) as (made, heard):
        made.give(1, 60)
        heard.get(timeout=30)
        made.stop()
        assert heard.get(timeout=30)[:2] == (1, "stopped")
        made.give(2, 0)
        assert [heard.get(timeout=30)[:2] for _ in range(2)] == [(2, "begun"), (2, "done")]


def test_a_process_that_dies_is_told_and_replaced() -> None:
    with runner(live_benches.dying) as (made, heard):
        for number in (1, 2):
            made.give(number, None)
            told = heard.get(timeout=30)
            assert told[:2] == (number, "failed")
            assert "stopped by itself" in told[2]


def test_faults_are_told_in_words() -> None:
    with runner(live_benches.faulty) as (made, heard):
        made.give(1, "known")
        assert heard.get(timeout=30) == (1, "failed", "too large for this machine")
        made.give(2, "unknown")
        number, topic, words = heard.get(timeout=30)
        assert (number, topic) == (2, "failed")
        assert words.startswith("a fault of the program itself, not of your numbers (ZeroDivisionError")


def test_nothing_is_left_running_after_the_end() -> None:
    with runner(live_benches.sleeping) as (made, heard):
        made.give(1, 60)
        process = heard.get(timeout=30)[2]
    if not os.path.isdir("/proc"):
        pytest.skip("processes are looked up under /proc")
    assert gone(process)


def meshes(data: bytes) -> dict[str, trimesh.Trimesh]:
    if not data:
        return {}
    found = trimesh.load(trimesh.util.wrap_as_stream(data), file_type="glb")
    return {name: found.geometry[found.graph[name][1]] for name in found.graph.nodes_geometry}


def test_changes_of_the_picture_add_up_to_the_whole() -> None:
    """What a page holds after each change is what a page that is made anew would hold."""
    at = view_plans.scene()
    wide = replace(at, kitchen=replace(at.kitchen, width_in=150.0))
    moved = replace(at, ceiling=replace(at.ceiling, joists=replace(at.ceiling.joists, first_in=12.0)))
    pictures, held = Pictures(), {}
    for number, scene in enumerate((at, moved, wide, at), 1):
        plan = view_plans.plan(scene)
        change = pictures.change(number, plan)
        assert change.base == number - 1
        new = meshes(change.model)
        held = {name: mesh for name, mesh in {**held, **new}.items() if name in change.data["pieces"]}
        whole = meshes(Pictures().change(1, plan).model)
        assert set(held) == set(whole)
        for name, mesh in whole.items():
            assert np.array_equal(held[name].vertices, mesh.vertices), name
        if number == 2:
            assert 0 < len(new) < len(whole) / 2, "a changed joist layout is much less than the whole"
        assert all(p.name in held for p in stage_of(plan).pieces if p.group is not Group.ROUTE)


@pytest.mark.parametrize("profile", rules.profiles())
def test_an_empty_kitchen_is_shown_under_every_profile(profile: str) -> None:
    """Also where a profile knows no limit, such as a flow from which makeup air is asked for: JSON has no infinity."""
    text = scenefile.edit(scenefile.blank(), {"rules.profile": profile})
    change = Pictures().change(1, pipeline.plan(live_tools.read(text), alternatives=1))
    assert json.loads(json.dumps(change.data, allow_nan=False))["plan"]["verdict"] == "Works"


@pytest.mark.slow
def test_answer_first_then_fixes_and_the_wall() -> None:
    from routeviz.cli import livework

    planning = Planning(livework.quick, livework.deep)
    try:
        seen = []
        planning.shown.told = lambda: seen.append(
            (planning.shown.plan is not None, planning.shown.fixes is not None, planning.shown.wall is not None)
        )
        text = (live_tools.SCENES / "joist_dead_centre.toml").read_text(encoding="utf-8")
        planning.ask(5, live_tools.read(text))
        ends = time.monotonic() + 120
        while planning.shown.wall is None or planning.shown.doing:
            assert time.monotonic() < ends, planning.shown.trouble
            time.sleep(0.05)
        order = [seen.index(s) for s in ((True, False, False), (True, True, False), (True, True, True))]
        assert order == sorted(order)
        assert planning.shown.change.number == 5
        first = planning.shown.fixes[0]
        assert first["set"] == {"hood.centre": "57 in"}, "the scene's own file tells this shift on top"
        assert planning.shown.plan.scene.hood.centre_in in planning.shown.wall["x"]
        assert planning.shown.trouble == ""
    finally:
        planning.close()
