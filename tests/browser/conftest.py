"""Debian's Chromium for the page tests; they say so when it is not there."""

from __future__ import annotations

import shutil
import time
from collections.abc import Iterator
from pathlib import Path

import pytest
from conftest_live import is_the_drivers

# as on a machine without a graphics card: the page is put together, and its picture drawn, by the processor alone
ARGS = ["--no-sandbox", "--disable-gpu", "--enable-unsafe-swiftshader", "--disable-background-networking",
        "--disable-component-update", "--no-first-run"]  # fmt: skip


def chromium() -> str | None:
    """Path of the system's Chromium."""
    return next((p for p in map(shutil.which, ("chromium", "chromium-browser", "google-chrome")) if p), None)


@pytest.fixture(scope="session")
def browser():
    playwright = pytest.importorskip("playwright.sync_api", reason="playwright is not installed")
    path = chromium()
    if path is None:
        pytest.skip("no Chromium; on Debian: apt-get install chromium")
    with playwright.sync_playwright() as p:
        opened = p.chromium.launch(executable_path=path, headless=True, args=ARGS)
        yield opened
        opened.close()


class Watched:
    """A page with everything that went wrong on it: console errors, exceptions, requests to the outside."""

    def __init__(self, tab) -> None:
        self.tab = tab
        self.faults: list[str] = []
        tab.on("console", self._console)
        tab.on("pageerror", lambda e: self.faults.append(f"exception: {e}"))
        tab.on("request", self._request)

    def _request(self, request) -> None:
        if not request.url.startswith(("file:", "data:", "blob:")):
            self.faults.append(f"request: {request.url}")

    def _console(self, message) -> None:
        if message.type in ("error", "warning") and not is_the_drivers(message.text):
            self.faults.append(f"{message.type}: {message.text}")

    def until(self, expression: str, seconds: float = 8.0) -> None:
        """Wait until an expression holds; asked from outside, for the page's own policy forbids evaluated strings."""
        ends = time.monotonic() + seconds
        while not self.tab.evaluate(expression):
            assert time.monotonic() < ends, f"still not so: {expression}"
            self.tab.wait_for_timeout(40)

    def answer(self) -> dict:
        """What the page says now."""
        return self.tab.evaluate(
            "(a => ({x: a.x, h: a.h, verdict: a.verdict, text: a.text, elbows: a.elbows, n: a.findings.length}))(routeviz.answer())"
        )


@pytest.fixture
def open_page(browser) -> Iterator:
    contexts = []

    def opened(
        file: Path, *, size: tuple[int, int] = (1440, 900), scheme: str = "light", touch: bool = False
    ) -> Watched:
        context = browser.new_context(
            viewport={"width": size[0], "height": size[1]}, color_scheme=scheme, reduced_motion="reduce", offline=True, has_touch=touch
        )  # fmt: skip
        contexts.append(context)
        page = Watched(context.new_page())
        page.tab.goto(file.as_uri())
        page.tab.wait_for_selector("body[data-ready='1']", timeout=60_000)
        return page

    yield opened
    for context in contexts:
        context.close()
