"""Ctrl-C in ``routeviz packet`` is heard wherever it falls, and leaves nothing half."""

from __future__ import annotations

import contextlib
import os
import signal
import subprocess
import sys
import time
from collections.abc import Callable
from pathlib import Path

import pytest
from pypdf import PdfReader

from routeviz import cli, drawings
from routeviz.cli import stopping
from routeviz.errors import MissingPartError

SCENE = Path(__file__).parents[2] / "scenes" / "joist_dead_centre.toml"
COMMAND = (sys.executable, "-m", "routeviz", "packet", str(SCENE), "--no-pictures")


def _interrupt() -> None:
    signal.raise_signal(signal.SIGINT)


def _at_the_end_of_an_object() -> None:
    class Thing:
        def __del__(self) -> None:
            _interrupt()

    thing = Thing()
    del thing


def _in_a_callback_that_drops_everything() -> None:
    with contextlib.suppress(BaseException):  # as some libraries do
        _interrupt()


def _while_a_part_loads() -> None:
    try:
        _interrupt()
    except KeyboardInterrupt:
        raise MissingPartError("no OpenGL") from None


def _plainly() -> None:
    _interrupt()


SWALLOWED = (_at_the_end_of_an_object, _in_a_callback_that_drops_everything, _while_a_part_loads, _plainly)


def _packet(out: Path, *more: str) -> int:
    return cli.main(["packet", str(SCENE), "--out", str(out), "--no-pictures", *more])


@pytest.mark.parametrize("how", SWALLOWED, ids=lambda f: f.__name__.strip("_"))
@pytest.mark.parametrize(
    "where", ["routeviz.pipeline.plan", "routeviz.drawings.pdf.write", "routeviz.drawings.svg.to_svg"]
)
def test_a_swallowed_interrupt_is_heard_all_the_same(
    how: Callable[[], None],
    where: str,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
    capsys: pytest.CaptureFixture[str],
) -> None:
    holder, name = where.rsplit(".", 1)
    module = sys.modules.get(holder) or __import__(holder, fromlist=["x"])
    real = getattr(module, name)

    def interrupted(*given: object, **named: object) -> object:
        how()
        return real(*given, **named)

    monkeypatch.setattr(where, interrupted)
    assert _packet(tmp_path / "new" / "out") == 130
    assert "Stopped; nothing half done was left." in capsys.readouterr().err
    assert list(tmp_path.iterdir()) == []
    assert signal.getsignal(signal.SIGINT) is signal.default_int_handler


def test_old_sheets_are_never_mixed_with_new_ones(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    assert _packet(tmp_path) == 0
    before = {p.name: p.read_bytes() for p in tmp_path.iterdir()}
    real = drawings.svgs

    def late(*given: object, **named: object) -> object:
        made = real(*given, **named)  # type: ignore[arg-type]
        _in_a_callback_that_drops_everything()
        return made

    monkeypatch.setattr(drawings, "svgs", late)
    assert _packet(tmp_path, "--paper", "a4") == 130
    assert {p.name: p.read_bytes() for p in tmp_path.iterdir()} == before


def test_an_interrupt_waits_while_files_take_their_places(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    real = drawings.take_place

    def slow(*given: object) -> None:
        _interrupt()
        real(*given)  # type: ignore[arg-type]

    monkeypatch.setattr(drawings, "take_place", slow)
    assert _packet(tmp_path) == 130
    names = sorted(p.name for p in tmp_path.iterdir())  # the whole packet, and nothing else
    assert len(names) == len(PdfReader(tmp_path / "packet.pdf").pages) + 1


def test_without_an_interrupt_nothing_is_stopped(tmp_path: Path) -> None:
    assert _packet(tmp_path / "new" / "out") == 0
    assert [p.name for p in tmp_path.iterdir()] == ["new"]
    assert not list((tmp_path / "new" / "out").glob(".*"))
    stopping.check()
    assert not stopping.was_stopped(ValueError("x"))


@pytest.fixture(scope="module")
def usual_seconds(tmp_path_factory: pytest.TempPathFactory) -> float:
    """Measure once how long an uninterrupted run takes here."""
    out = tmp_path_factory.mktemp("usual")
    began = time.perf_counter()
    subprocess.run([*COMMAND, "--out", str(out)], check=True, capture_output=True)
    return time.perf_counter() - began


def _finished(process: subprocess.Popen[str], after: float) -> tuple[int, str]:
    time.sleep(after)
    process.send_signal(signal.SIGINT)
    _, said = process.communicate(timeout=60)
    return process.returncode, said


@pytest.mark.skipif(sys.platform == "win32", reason="signals as on Unix")
@pytest.mark.parametrize("share", [0.25, 0.45, 0.65, 0.85])
def test_a_process_stops_at_any_moment(share: float, usual_seconds: float, tmp_path: Path) -> None:
    """Either it stopped with 130 and left nothing, or it was done before the signal came and left a whole packet."""
    out, scratch = tmp_path / "out", tmp_path / "scratch"
    scratch.mkdir()
    command = [*COMMAND, "--out", str(out)]
    environment = {**os.environ, "TMPDIR": str(scratch)}
    process = subprocess.Popen(command, stderr=subprocess.PIPE, text=True, env=environment, start_new_session=True)
    code, said = _finished(process, share * usual_seconds)
    assert list(scratch.iterdir()) == []
    assert "Traceback" not in said
    if code == 0:
        assert len(list(out.glob("*.svg"))) == len(PdfReader(out / "packet.pdf").pages)
    else:
        assert code == 130
        assert not out.exists()
