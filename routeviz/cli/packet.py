"""``routeviz packet``: the sheets that go to the site."""

from __future__ import annotations

import sys
from pathlib import Path
from typing import Annotated, Literal, Self

from cyclopts import Parameter

from routeviz.cli.files import folder_for
from routeviz.cli.scenes import load_scene

__all__ = ["packet"]


def packet(
    scene: Path,
    /,
    *,
    out: Annotated[Path | None, Parameter(name=["--out", "-o"])] = None,
    paper: Literal["letter", "a4"] | None = None,
    template: bool = False,
    svg: bool = True,
) -> int:
    """Write the install packet: drawings at true scale, marks, holes, cuts, parts, order of work.

    Parameters
    ----------
    scene
        Scene file.
    out
        Folder for the files; without it, NAME_plan in the present folder.
    paper
        letter or a4; without it, letter for scenes in inches and a4 for metric ones.
    template
        Add the 1:1 template pages with their check square.
    svg
        Write each sheet as SVG too.
    """
    from routeviz import drawings, pipeline

    loaded = load_scene(scene)
    found = pipeline.plan(loaded)
    folder = folder_for(scene, out)
    size = paper or ("a4" if loaded.metric else "letter")
    with _Bar() as bar:
        target = drawings.packet(found, folder / "packet.pdf", paper=size, template=template, progress=bar)
        written = [target.name]
        if svg:
            written += [p.name for p in drawings.svgs(found, folder, paper=size, template=template)]
    print(f"Written to {folder}: {', '.join(written)}", file=sys.stderr)  # noqa: T201
    return 0


class _Bar:
    """A progress bar on standard error, silent when nobody looks at a terminal."""

    def __enter__(self) -> Self:
        from rich.console import Console
        from rich.progress import Progress

        self._progress = Progress(console=Console(stderr=True), transient=True, disable=not sys.stderr.isatty())
        self._task = self._progress.add_task("drawing", total=None)
        self._progress.start()
        return self

    def __exit__(self, *_: object) -> None:
        self._progress.stop()

    def __call__(self, done: int, total: int, name: str) -> None:
        self._progress.update(self._task, description=name, completed=done, total=total)
