"""Every command as a person runs it: what it prints, what it writes, and how it stops."""

from __future__ import annotations

import json
import os
import subprocess
import sys
import time
import tomllib
from pathlib import Path

import jsonschema
import pytest
from clirunning import BANNED, SCENES, call, files_in

from routeviz import pipeline, reports, rules, scenefile, studies
from routeviz.model.finding import State

JOIST = SCENES / "joist_dead_centre.toml"
QUICK = SCENES / "juniper_straight_up.toml"


def python(code: str, *argv: object) -> subprocess.CompletedProcess[str]:
    """Run Python in a process of its own, as a fresh terminal would."""
    return subprocess.run(
        [sys.executable, "-c", code, *map(str, argv)], capture_output=True, text=True, encoding="utf-8", timeout=120
    )


def test_new_then_check(here: Path) -> None:
    said = call("new")
    assert (said.code, said.out) == (0, "")
    assert "routeviz plan kitchen.toml" in said.err
    assert files_in(here) == {"kitchen.toml"}
    assert "#" in (here / "kitchen.toml").read_text(), "commented"
    checked = call("check", "kitchen.toml")
    assert (checked.code, checked.err) == (0, "")
    assert "licensed trades decide" in " ".join(checked.out.split())


def test_plan_prints_and_writes_text_and_json(here: Path) -> None:
    said = call("plan", QUICK, "--no-picture", "--no-page", "--out", "away/plan")
    assert said.code == 0
    assert files_in(here) == {"away", "away/plan", "away/plan/plan.json", "away/plan/plan.txt"}
    assert (here / "away/plan/plan.txt").read_text(encoding="utf-8") == said.out
    data = json.loads((here / "away/plan/plan.json").read_text(encoding="utf-8"))
    jsonschema.validate(data, reports.plan_schema())
    assert data["answer"].split()[0] in said.out
    assert not BANNED.search(said.out)
    assert "plan.json" in said.err


def test_plan_again_replaces_its_own_files(here: Path) -> None:
    for _ in range(2):
        assert call("plan", QUICK, "--no-picture", "--no-page").code == 0
    assert files_in(here) == {f"{QUICK.stem}_plan"} | {f"{QUICK.stem}_plan/plan.{kind}" for kind in ("json", "txt")}


def test_without_a_driver_there_is_a_plan_and_a_line(here: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("VTK_DEFAULT_OPENGL_WINDOW", "vtkNoSuchWindow")
    said = call("plan", QUICK, "--no-page", "--out", "out")
    assert said.code == 0
    assert "No picture: No OpenGL driver was found" in said.err
    assert "apt-get install libegl1" in said.err
    assert files_in(here) == {"out", "out/plan.json", "out/plan.txt"}


def test_json_alone_and_no_3d_library() -> None:
    code = (
        "import sys; from routeviz.cli import main; code = main(sys.argv[1:]);"
        "assert not [m for m in sys.modules if m.split('.')[0] in ('vtk', 'vtkmodules', 'pyvista', 'reportlab')];"
        "sys.exit(code)"
    )
    done = python(code, "plan", QUICK, "--json", "-")
    assert (done.returncode, done.stderr) == (0, "")
    jsonschema.validate(json.loads(done.stdout), reports.plan_schema())


@pytest.mark.parametrize("command", ["check", "compare"])
def test_check_and_compare_as_json(here: Path, command: str) -> None:
    said = call(command, QUICK, "--json", "-")
    assert (said.code, said.err) == (0, "")
    rows = json.loads(said.out)
    assert rows
    assert all(("state" if command == "check" else "verdict") in row for row in rows)
    assert files_in(here) == set()


def test_compare_prints_a_table() -> None:
    said = call("compare", QUICK)
    assert said.code == 0
    assert max(map(len, said.out.splitlines())) <= 80
    assert not BANNED.search(said.out)
    assert "roof only" in said.out


def test_every_rule_is_explained() -> None:
    listed = call("explain")
    assert [line.split()[0] for line in listed.out.splitlines()] == list(rules.codes())
    for code in rules.codes():
        said = call("explain", code.lower())
        assert said.code == 0
        assert code in said.out
        assert max(map(len, said.out.splitlines())) <= 80, code
        assert not BANNED.search(said.out), code


def test_rules_are_explained_to_machines(here: Path) -> None:
    listed = json.loads(call("explain", "--json", "-").out)
    assert [row["code"] for row in listed] == list(rules.codes())
    code = listed[0]["code"]
    assert call("explain", code, "--json", "rule.json").out == ""
    told = json.loads((here / "rule.json").read_text())
    assert told["code"] == code
    assert told["title"] == listed[0]["title"]
    assert told["why"] == rules.explain(code).why


@pytest.mark.parametrize("what", ["scene", "plan"])
def test_schemas_are_json_schemas(what: str) -> None:
    said = call("schema", what)
    assert (said.code, said.err) == (0, "")
    jsonschema.Draft202012Validator.check_schema(json.loads(said.out))


def test_the_scene_schema_takes_the_example_homes() -> None:
    schema = json.loads(call("schema").out)
    for path in SCENES.glob("*.toml"):
        jsonschema.validate(tomllib.loads(path.read_text(encoding="utf-8")), schema)


def test_apply_writes_a_scene_without_must_findings(here: Path) -> None:
    said = call("plan", JOIST, "--apply", "1")
    assert (said.code, said.out) == (0, "")
    target = here / f"{JOIST.stem}_fix_1.toml"
    assert files_in(here) == {target.name}
    assert "planned again" in said.err
    again = pipeline.plan(scenefile.load(target), alternatives=1)
    assert again.best is not None
    assert not [f for f in again.all_findings if f.must and f.state is State.BROKEN and not f.waived]
    before = JOIST.read_text(encoding="utf-8").splitlines()
    changed = [new for old, new in zip(before, target.read_text().splitlines(), strict=True) if old != new]
    assert len(changed) == 1, "a shift is one line; comments and layout stay"
    content = target.read_bytes()
    refused = call("plan", JOIST, "--apply", "1")
    assert refused.code == 2
    assert f"{target.name} is there already" in refused.err
    assert target.read_bytes() == content


@pytest.mark.parametrize("number", ["0", "-1", "7"])
def test_apply_what_is_not_on_offer(here: Path, number: str) -> None:
    said = call("plan", QUICK, f"--apply={number}")
    assert said.code == 2
    assert f"no fix {number}" in said.err
    assert files_in(here) == set()


def test_apply_keeps_line_ends(here: Path) -> None:
    (here / "dos.toml").write_bytes(JOIST.read_bytes().replace(b"\n", b"\r\n"))
    assert call("plan", "dos.toml", "--apply", "1").code == 0
    written = (here / "dos_fix_1.toml").read_bytes()
    assert written.count(b"\r\n") == written.count(b"\n") > 50


def test_a_fix_that_does_not_hold_when_written_is_refused(here: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    from dataclasses import replace

    true = studies.fixes

    def lying(*args: object, **kwargs: object) -> object:
        found = true(*args, **kwargs)  # type: ignore[arg-type]
        return tuple(replace(fix, changes=(("hood.centre", "61 in"),)) for fix in found)

    monkeypatch.setattr(studies, "fixes", lying)
    said = call("plan", JOIST, "--apply", "1")
    assert said.code == 2
    assert "does not hold" in said.err
    assert files_in(here) == set()


@pytest.mark.parametrize("stage", ["routeviz.pipeline.plan", "routeviz.cli.files.os.replace"])
def test_ctrl_c_leaves_nothing_half_written(here: Path, stage: str) -> None:
    """A true SIGINT while planning, and at the last moment of writing a file."""
    module, name = stage.rsplit(".", 1)
    code = (
        "import os, signal, sys\n"
        "import routeviz.pipeline, routeviz.cli.files\n"
        "def stop(*a, **k): os.kill(os.getpid(), signal.SIGINT); import time; time.sleep(20)\n"
        f"{module}.{name} = stop\n"
        "from routeviz.cli import main; sys.exit(main(sys.argv[1:]))"
    )
    done = python(code, "plan", QUICK, "--no-picture", "--no-page", "--out", "out")
    assert done.returncode == 130
    assert "Stopped" in done.stderr
    assert "Traceback" not in done.stderr
    assert files_in(here) <= {"out"}


def test_a_closed_pipe_is_no_trouble() -> None:
    command = f'"{sys.executable}" -m routeviz explain | head -1'
    done = subprocess.run(["sh", "-c", command], capture_output=True, text=True, timeout=60)
    assert done.stderr == ""
    assert done.stdout.split()[0] in rules.codes()


def test_a_terminal_without_utf_8_still_gets_its_plan() -> None:
    done = subprocess.run(
        [sys.executable, "-m", "routeviz", "check", str(QUICK)],
        env={**os.environ, "PYTHONIOENCODING": "ascii"}, capture_output=True, timeout=60,
    )  # fmt: skip
    assert (done.returncode, done.stderr) == (0, b"")
    assert b"fine" in done.stdout


def test_a_fault_of_ours_is_one_line(here: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.delenv("ROUTEVIZ_TRACEBACK", raising=False)

    def broken(*_: object, **__: object) -> None:
        raise KeyError("inside")

    monkeypatch.setattr(pipeline, "plan", broken)
    said = call("check", QUICK)
    assert (said.code, said.out) == (1, "")
    assert said.err.count("\n") == 1
    assert "not of your file" in said.err
    monkeypatch.setenv("ROUTEVIZ_TRACEBACK", "1")
    with pytest.raises(KeyError):
        call("check", QUICK)


def test_help_and_version_are_quick_and_load_nothing_heavy() -> None:
    code = (
        "import sys; from routeviz.cli import main; code = main(sys.argv[1:]);"
        "heavy = {'numpy', 'scipy', 'shapely', 'networkx', 'pydantic', 'vtk', 'pyvista', 'reportlab', 'pint'};"
        "assert not heavy & set(sys.modules), heavy & set(sys.modules); sys.exit(code)"
    )
    for flag in ("--help", "--version"):
        done = python(code, flag)
        assert (done.returncode, done.stderr) == (0, "")
    helped = python(code, "--help").stdout
    assert all(
        name in helped
        for name in ("new", "plan", "check", "compare", "packet", "explain", "film", "lesson", "schema", "show")
    )
    assert not BANNED.search(helped)


def test_help_takes_little_longer_than_the_library_that_reads_commands() -> None:
    """A ratio, so that a slow or busy machine does not matter; the best of three each."""

    def best(*argv: str) -> float:
        times = []
        for _ in range(3):
            start = time.perf_counter()
            subprocess.run([sys.executable, *argv], capture_output=True, check=True, timeout=60)
            times.append(time.perf_counter() - start)
        return min(times)

    assert best("-m", "routeviz", "--help") < 4 * best("-c", "import cyclopts, rich.console")


@pytest.mark.parametrize(
    "command", ["new", "plan", "check", "compare", "packet", "explain", "film", "lesson", "schema", "show"]
)
def test_each_command_has_help(command: str) -> None:
    said = call(command, "--help")
    assert (said.code, said.err) == (0, "")
    assert f"routeviz {command}" in said.out
    assert not BANNED.search(said.out)
