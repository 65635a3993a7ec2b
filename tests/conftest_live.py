"""The program of the live page as a person starts it, and a browser's page of it, with everything that went wrong there."""

from __future__ import annotations

import re
import subprocess
import sys
import time
from pathlib import Path
from typing import Self


def is_the_drivers(note: str) -> bool:
    """Whether a console message is the drawing driver's note on its own speed, which is no fault of the page."""
    return "GL Driver Message (OpenGL, Performance" in note


class Program:
    """``routeviz app`` in a process of its own."""

    def __init__(self, folder: Path, *arguments: str) -> None:
        self.folder, self.arguments = folder, arguments

    def __enter__(self) -> Self:
        self.process = subprocess.Popen(
            [sys.executable, "-m", "routeviz", "app", *self.arguments, "--no-browser"],
            cwd=self.folder, stderr=subprocess.PIPE, text=True,
        )  # fmt: skip
        line = self.process.stderr.readline()
        found = re.search(r"http://127\.0\.0\.1:\d+/[\w-]{20,}/", line)
        assert found, line + self.process.stderr.read()
        self.address = found[0]
        return self

    def __exit__(self, *_: object) -> None:
        if self.process.poll() is None:
            self.process.terminate()
        self.process.wait(20)
        self.process.stderr.close()


class Live:
    """One page of a program; every console message, exception and foreign request is a fault."""

    def __init__(self, browser, program: Program, *, size=(1440, 900), scheme="light", touch=False) -> None:
        self._open = (browser, size, scheme, touch)
        self.program, self.faults, self.expects_refusals = program, [], False

    def __enter__(self) -> Self:
        browser, size, scheme, touch = self._open
        self._context = browser.new_context(
            viewport={"width": size[0], "height": size[1]},
            color_scheme=scheme,
            reduced_motion="reduce",
            has_touch=touch,
        )
        self.tab = self._context.new_page()
        self.tab.on("console", self._console)
        self.tab.on("pageerror", lambda e: self.faults.append(f"exception: {e}"))
        self.tab.on("request", self._request)
        self.tab.goto(self.program.address, timeout=120_000)
        self.ready()
        return self

    def __exit__(self, *_: object) -> None:
        self._context.close()

    def _console(self, message) -> None:
        refused = self.expects_refusals and "net::ERR" in message.text
        if message.type in ("error", "warning") and not refused and not is_the_drivers(message.text):
            self.faults.append(f"{message.type}: {message.text}")

    def _request(self, request) -> None:
        if not request.url.startswith((self.program.address, "data:", "blob:")):
            self.faults.append(f"request: {request.url}")

    def ready(self) -> None:
        self.tab.wait_for_selector("body[data-ready='1']", timeout=90_000)

    def until(self, expression: str, seconds: float = 10.0) -> None:
        """Wait until an expression holds; asked from outside, for the page's own policy forbids evaluated strings."""
        ends = time.monotonic() + seconds
        while not self.tab.evaluate(expression):
            assert time.monotonic() < ends, f"still not so: {expression}"
            self.tab.wait_for_timeout(40)

    def text(self) -> str:
        """The scene that the program has on its desk."""
        return self.tab.evaluate("fetch('news').then(r => r.json()).then(n => n.state.text)")

    def settled(self, text: str, seconds: float = 60.0) -> None:
        """Wait until the program has this scene and the page shows all of its plan."""
        ends = time.monotonic() + seconds
        while True:
            found = self.tab.evaluate(
                "fetch('news').then(r => r.json()).then(n => [n.state.text, n.state.revision, n.number, routeviz.data().live.number, routeviz.data().live.whole])"
            )
            if found[0] == text and found[1] == found[2] == found[3] and found[4]:
                return
            assert time.monotonic() < ends, (found[1:], found[0] == text)
            self.tab.wait_for_timeout(60)

    def send(self, name: str) -> None:
        """Do what a button of the page does, without looking for it."""
        self.tab.evaluate(
            f"fetch('{name}', {{ method: 'POST', headers: {{ 'content-type': 'application/json' }}, body: '{{}}' }}).then(r => r.json())"
        )

    def type(self, field: str, text: str) -> None:
        """Type into a field and leave it, as a person does."""
        self.tab.fill(field, text)
        self.tab.press(field, "Enter")
