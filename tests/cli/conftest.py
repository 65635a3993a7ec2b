"""Every command here runs in an empty folder of its own."""

from __future__ import annotations

from pathlib import Path

import pytest


@pytest.fixture(autouse=True)
def here(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """Give the empty folder that the command runs in."""
    monkeypatch.chdir(tmp_path)
    return tmp_path
