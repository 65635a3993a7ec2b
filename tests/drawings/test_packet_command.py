"""``routeviz packet`` as a person runs it: what is written, what is said, and that an interrupt leaves nothing half."""

from __future__ import annotations

import hashlib
from pathlib import Path
from typing import Any

import pytest
from pypdf import PdfReader

from routeviz import cli, drawings, pipeline, studies
from routeviz.errors import MissingPartError
from routeviz.model.plan import Plan
from routeviz.model.scene import Scene
from routeviz.model.study import Fix

SCENES = Path(__file__).parents[2] / "scenes"
PLANS: dict[str, Plan] = {}
FIXES: dict[str, tuple[Fix, ...]] = {}


@pytest.fixture(autouse=True)
def _each_scene_is_planned_once(monkeypatch: pytest.MonkeyPatch) -> None:
    plan, fixes = pipeline.plan, studies.fixes

    def planned(scene: Scene, **more: Any) -> Plan:
        if more:
            return plan(scene, **more)
        key = repr(scene)
        if key not in PLANS:
            PLANS[key] = plan(scene)
        return PLANS[key]

    def fixed(found: Plan) -> tuple[Fix, ...]:
        key = repr(found.scene)
        if key not in FIXES:
            FIXES[key] = fixes(found)
        return FIXES[key]

    monkeypatch.setattr(pipeline, "plan", planned)
    monkeypatch.setattr(studies, "fixes", fixed)


def _run(scene: str, out: Path, *more: str) -> int:
    return cli.main(["packet", str(SCENES / f"{scene}.toml"), "--out", str(out), *more])


def _text(file: Path) -> str:
    return " ".join(" ".join(page.extract_text() for page in PdfReader(file).pages).split())


def test_one_pdf_and_a_sheet_each_as_svg(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert _run("juniper_straight_up", tmp_path / "out", "--no-pictures") == 0
    pages = len(PdfReader(tmp_path / "out" / "packet.pdf").pages)
    assert sorted(p.name[:2] for p in (tmp_path / "out").glob("*.svg")) == [f"{n:02d}" for n in range(1, pages + 1)]
    assert f"packet.pdf, {pages} sheets as SVG" in capsys.readouterr().err
    assert {p.suffix for p in (tmp_path / "out").iterdir()} == {".pdf", ".svg"}


def test_the_same_bytes_twice(tmp_path: Path) -> None:
    def digest(folder: str) -> dict[str, str]:
        assert _run("out_the_back", tmp_path / folder, "--no-pictures") == 0
        return {p.name: hashlib.sha256(p.read_bytes()).hexdigest() for p in sorted((tmp_path / folder).iterdir())}

    assert digest("first") == digest("second")


def test_the_same_bytes_twice_wherever_the_picture_lay(tmp_path: Path) -> None:
    from PIL import Image

    from routeviz.scenefile import load

    planned = pipeline.plan(load(SCENES / "joist_dead_centre.toml"))
    made = []
    for folder in ("one", "another"):
        (tmp_path / folder).mkdir()
        picture = tmp_path / folder / "room.png"
        Image.new("RGB", (40, 25), "#456789").save(picture)
        made.append(drawings.packet(planned, tmp_path / folder / "p.pdf", pictures=[("The kitchen", picture)]))
    assert made[0].read_bytes() == made[1].read_bytes()


def test_sheets_of_an_earlier_packet_do_not_stay(tmp_path: Path) -> None:
    assert _run("juniper_straight_up", tmp_path, "--no-pictures") == 0
    mine = tmp_path / "09-my-own.svg"
    mine.write_text("<svg/>")
    assert _run("joist_dead_centre", tmp_path, "--no-pictures") == 0
    pages = len(PdfReader(tmp_path / "packet.pdf").pages)
    assert len(list(tmp_path.glob("*.svg"))) == pages + 1
    assert mine.exists()


def test_a_blocked_plan_prints_fixes_and_what_may_be_cut(tmp_path: Path) -> None:
    assert _run("joist_dead_centre", tmp_path, "--no-pictures", "--no-svg") == 0
    text = _text(tmp_path / "packet.pdf")
    assert "What would clear it" in text
    assert "planned again" in text
    assert "Members in the way: what may be cut" in text
    assert "joist 4" in text
    assert "not allowed" in text


def test_a_route_as_built_is_drawn_and_judged(tmp_path: Path) -> None:
    assert _run("as_built_flex_in_attic", tmp_path, "--no-pictures") == 0
    text = _text(tmp_path / "packet.pdf")
    assert "ends inside the attic" in text
    assert "broken" in text
    section = next(tmp_path.glob("*-section-along-the-duct.svg")).read_text(encoding="utf-8")
    assert 'data-of="flex' in section


def test_without_opengl_one_line_says_so(
    tmp_path: Path, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    from routeviz.views import still

    def no_driver(*_: object, **__: object) -> Path:
        raise MissingPartError("No OpenGL driver was found, so no picture was drawn.")

    monkeypatch.setattr(still, "render", no_driver)
    assert _run("joist_dead_centre", tmp_path, "--no-svg") == 0
    said = [line for line in capsys.readouterr().err.splitlines() if "OpenGL" in line]
    assert len(said) == 1
    assert not any(page.images for page in PdfReader(tmp_path / "packet.pdf").pages)


def test_an_interrupt_leaves_the_old_packet_whole(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    assert _run("joist_dead_centre", tmp_path, "--no-pictures") == 0
    before = {p.name: p.read_bytes() for p in tmp_path.iterdir()}

    def stop(*_: object, **__: object) -> str:
        raise KeyboardInterrupt

    for name in ("routeviz.drawings.pdf.write", "routeviz.drawings.svg.to_svg"):
        with monkeypatch.context() as patch:
            patch.setattr(name, stop)
            assert _run("joist_dead_centre", tmp_path, "--no-pictures") == 130
        assert {p.name: p.read_bytes() for p in tmp_path.iterdir()} == before


def test_an_interrupt_before_anything_leaves_no_folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    def stop(*_: object, **__: object) -> None:
        raise KeyboardInterrupt

    monkeypatch.setattr("routeviz.pipeline.plan", stop)
    assert _run("joist_dead_centre", tmp_path / "out", "--no-pictures") == 130
    assert not (tmp_path / "out").exists()


def test_ctrl_c_while_a_library_loads_is_still_a_stop(
    tmp_path: Path, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    def stop(*_: object, **__: object) -> None:
        raise ImportError("initialization failed") from KeyboardInterrupt()

    monkeypatch.setattr(pipeline, "plan", stop)
    assert _run("joist_dead_centre", tmp_path / "out") == 130
    assert "Stopped" in capsys.readouterr().err


def test_a_waiver_is_printed_with_its_reason(tmp_path: Path) -> None:
    scene = (SCENES / "as_built_flex_in_attic.toml").read_text(encoding="utf-8")
    waiver = '\n[[rules.waivers]]\ncode = "DCT-SMOOTH"\nreason = "the owner replaces the duct in spring"\n'
    (tmp_path / "waived.toml").write_text(scene + waiver, encoding="utf-8")
    assert cli.main(["packet", str(tmp_path / "waived.toml"), "--out", str(tmp_path), "--no-pictures", "--no-svg"]) == 0
    text = _text(tmp_path / "packet.pdf")
    assert "broken, waived" in text
    assert "the owner replaces the duct in spring" in text


def test_a_hole_over_the_ceiling_is_told_from_the_ceiling_too(tmp_path: Path) -> None:
    assert _run("side_wall_storey_above", tmp_path, "--no-pictures", "--no-svg") == 0
    assert "5 7/16 in above the ceiling's face" in _text(tmp_path / "packet.pdf")  # 101 7/16 less the ceiling's 96
