"""The packet of every example home may be printed."""

from __future__ import annotations

from pathlib import Path

import pytest
from pypdf import PdfReader

from routeviz.drawings import faults, packet, sheets
from routeviz.pipeline import plan
from routeviz.scenefile import load

SCENES = sorted((Path(__file__).parents[2] / "scenes").glob("*.toml"))


def test_there_are_scenes() -> None:
    assert len(SCENES) >= 8


@pytest.mark.slow
@pytest.mark.parametrize("file", SCENES, ids=lambda f: f.stem)
def test_the_packet_may_be_printed(file: Path, tmp_path: Path) -> None:
    planned = plan(load(file), alternatives=1)
    for paper in ("letter", "a4"):
        pages = sheets(planned, paper=paper)
        assert [f for page in pages for f in faults(page)] == []
    out = packet(planned, tmp_path / "packet.pdf")
    reader = PdfReader(out)
    text = "\n".join(p.extract_text() for p in reader.pages)
    assert planned.scene.name in text
    assert planned.verdict.value in text
    if planned.best is not None:
        assert len(reader.pages) >= 10
        for step in planned.best.takeoff.steps:
            assert step.text.split(" ")[0] in text
