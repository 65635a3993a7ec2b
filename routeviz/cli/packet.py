"""``routeviz packet``: the sheets that go to the site."""

from __future__ import annotations

import importlib
import sys
from pathlib import Path
from typing import TYPE_CHECKING, Annotated, Literal, Self

from cyclopts import Parameter

from routeviz.cli import stopping
from routeviz.cli.files import OutputError, folder_for
from routeviz.cli.scenes import load_scene
from routeviz.model.route import PartKind

if TYPE_CHECKING:
    from routeviz.model.plan import Plan

__all__ = ["packet"]

_ROOM = ("room", "The kitchen")
_CEILING, _ALONG = ("ceiling", "Up into the ceiling"), ("along", "Along the duct")
_PICTURE_PX = 1640  # wide; as high as the paper leaves room for, and its least lettering is 7 pt there


def packet(
    scene: Path,
    /,
    *,
    out: Annotated[Path | None, Parameter(name=["--out", "-o"])] = None,
    paper: Literal["letter", "a4", "tabloid", "a3"] | None = None,
    template: bool = False,
    svg: bool = True,
    pictures: bool = True,
) -> int:
    """Write the install packet: drawings at true scale, marks, holes, cuts, parts, order of work.

    Parameters
    ----------
    scene
        Scene file.
    out
        Folder for the files; without it, NAME_plan in the present folder.
    paper
        letter, a4, tabloid or a3; without it, letter for scenes in inches and a4 for metric ones.
    template
        Add the 1:1 template pages with their check square.
    svg
        Write each sheet as SVG too.
    pictures
        Add two pictures of the 3D view; they need OpenGL.
    """
    from routeviz import drawings, pipeline, studies

    loaded = load_scene(scene)
    size = paper or ("a4" if loaded.metric else "letter")
    with _Bar() as bar:
        bar.say("planning")
        found = pipeline.plan(loaded)
        bar.say("looking for fixes")
        fixes = studies.fixes(found)
        shown = _pictures(found, size, stopping.scratch(), bar) if pictures else ()
        folder = folder_for(scene, out)
        try:
            begun = stopping.scratch(folder)
            made = [
                drawings.packet(
                    found,
                    begun / "packet.pdf",
                    paper=size,
                    template=template,
                    pictures=shown,
                    fixes=fixes,
                    progress=bar,
                )
            ]
            written = [made[0].name]
            if svg:
                bar.say("sheets as SVG")
                drawn = drawings.svgs(found, begun, paper=size, template=template, pictures=shown, fixes=fixes)
                made += drawn
                written.append(f"{len(drawn)} sheets as SVG" if len(drawn) > 1 else drawn[0].name)
            with stopping.held():  # old and new sheets are never mixed
                stopping.check()
                drawings.take_place(made, folder)
        except OSError as fault:
            raise OutputError(f"cannot write into {folder}: {fault.strerror}. Choose another with --out") from None
    print(f"Written to {folder}: {', '.join(written)}", file=sys.stderr)  # noqa: T201
    return 0


def _pictures(found: Plan, paper: str, scratch: Path, bar: _Bar) -> tuple[tuple[str, Path], ...]:
    """Render the pictures into a folder that goes away; without OpenGL there are none, and one line says so.

    They are drawn without soft shade, which differs from run to run: the packet keeps the same bytes.
    """
    from routeviz.drawings import paper_named, picture_room
    from routeviz.errors import MissingPartError
    from routeviz.views import gl, still
    from routeviz.views import stage as stages

    try:
        stage = stages.build(found)
        wide, high = picture_room(paper_named(paper))
        size = (_PICTURE_PX, round(_PICTURE_PX * high / wide))
        gl.require()
        with stopping.held():  # its compiled parts break when they are interrupted as they load
            importlib.import_module("routeviz.views.rendering")
        made = []
        for viewpoint, title in (_ROOM, _second_view(found)):
            bar.say(f"picture: {title.lower()}")
            file = still.render(stage, scratch / f"{viewpoint}.png", viewpoint, size=size, occlusion=False)
            made.append((title, file))
    except MissingPartError as fault:
        print(f"No pictures in the packet: {fault}", file=sys.stderr)  # noqa: T201
        return ()
    return tuple(made)


def _second_view(found: Plan) -> tuple[str, str]:
    """Choose what shows most of the route besides the room: the ceiling, the duct's turns, or the cap outside."""
    if found.best is None and found.scene.hood.outlet.place == "rear":
        return _ALONG
    if found.best is None or found.best.route.termination.direction[2] > 0.5:
        return _CEILING
    route = found.best.route
    if any(p.kind is PartKind.ELBOW for p in route.parts) or route.termination.kind is None:
        return _ALONG
    return "outside", f"Outside at the {'cap' if route.capped else 'open end'}"


class _Bar:
    """A progress bar on standard error, silent when nobody looks at a terminal."""

    def __enter__(self) -> Self:
        from rich.console import Console
        from rich.progress import Progress

        self._progress = Progress(console=Console(stderr=True), transient=True, disable=not sys.stderr.isatty())
        self._task = self._progress.add_task("reading", total=None)
        self._progress.start()
        return self

    def __exit__(self, *_: object) -> None:
        self._progress.stop()

    def say(self, name: str) -> None:
        """Name what is being done while its length is not known."""
        stopping.check()
        self._progress.update(self._task, description=name)

    def __call__(self, done: int, total: int, name: str) -> None:
        """Show how many sheets are written."""
        stopping.check()
        self._progress.update(self._task, description=name, completed=done, total=total)
