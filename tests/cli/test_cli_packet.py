"""``routeviz packet`` writes a whole packet or none."""

from __future__ import annotations

from pathlib import Path

import pytest
from clirunning import SCENES, call, files_in

from routeviz import drawings

QUICK = SCENES / "juniper_straight_up.toml"
PLAIN = ("--no-pictures", "--no-svg")


def test_packet_is_one_pdf_and_its_sheets(here: Path) -> None:
    said = call("packet", QUICK, *PLAIN, "--out", "site")
    assert (said.code, said.out) == (0, "")
    assert files_in(here) == {"site", "site/packet.pdf"}
    content = (here / "site" / "packet.pdf").read_bytes()
    assert content.startswith(b"%PDF-")
    assert content.rstrip().endswith(b"%%EOF")
    assert "packet.pdf" in said.err


def test_ctrl_c_while_drawing_leaves_no_half_packet(here: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    from routeviz.cli import packet

    def stop(*_: object) -> None:
        raise KeyboardInterrupt

    monkeypatch.setattr(packet._Bar, "__call__", stop)
    said = call("packet", QUICK, *PLAIN, "--out", "site")
    assert said.code == 130
    assert said.err.strip() == "Stopped; nothing half done was left."
    assert files_in(here) <= {"site"}


def test_a_place_that_holds_a_folder_of_that_name(here: Path) -> None:
    (here / "site" / "packet.pdf").mkdir(parents=True)
    said = call("packet", QUICK, *PLAIN, "--out", "site")
    assert said.code == 2
    assert "cannot write into site" in said.err
    assert files_in(here) == {"site", "site/packet.pdf"}


def test_the_papers_on_offer_are_those_that_can_be_drawn(here: Path) -> None:
    said = call("packet", "x.toml", "--paper", "poster")
    assert said.code == 2
    for paper in drawings.PAPERS:
        assert paper in said.err
