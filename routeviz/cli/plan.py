"""``routeviz plan``: the main job."""

from __future__ import annotations

import sys
from contextlib import nullcontext
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

from cyclopts import Parameter, validators

from routeviz.cli.apply import apply_fix, target_for
from routeviz.cli.files import AsJson, folder_for, write_json, write_text
from routeviz.cli.scenes import load_scene

if TYPE_CHECKING:
    from routeviz.model.plan import Plan
    from routeviz.model.study import Fix
    from routeviz.views.wallmap import WallMap

__all__ = ["plan"]


def plan(
    scene: Path,
    /,
    *,
    out: Annotated[Path | None, Parameter(name=["--out", "-o"])] = None,
    as_json: AsJson = None,
    picture: bool = True,
    page: bool = True,
    wall: bool = True,
    wall_step: Annotated[float, Parameter(validator=validators.Number(gte=0.25, lte=12))] = 2.0,
    ways: Annotated[int, Parameter(validator=validators.Number(gte=1))] = 3,
    apply: int | None = None,
) -> int:
    """Find the best duct route for a scene; print it and write plan.json, a picture and a 3D page.

    Parameters
    ----------
    scene
        Scene file; make one with: routeviz new
    out
        Folder for the files; without it, NAME_plan in the present folder.
    as_json
        Write only the JSON, to this file; - prints it alone on standard output.
    picture
        Render the still picture.
    page
        Write the one-file 3D page.
    wall
        Carry the whole wall in the page: the hood can be moved along the tape.
    wall_step
        Inches from place to place on that tape, thrice that in height; 1 takes four times as long as 2.
    ways
        Most ways out to work through.
    apply
        Write the scene with this fix (counted from 1) to a new file, NAME_fix_N.toml, instead of planning files.
    """
    from routeviz import pipeline, reports, studies

    if apply is not None:
        target_for(scene, apply)
    found = pipeline.plan(load_scene(scene), alternatives=ways)
    fixes = studies.fixes(found, most=apply if apply in (1, 2) else 3)
    if apply is not None:
        apply_fix(scene, apply, fixes)
        return 0
    if as_json is not None:
        write_json(as_json, reports.plan_json(found, fixes))
        return 0
    sys.stdout.write(reports.plan_text(found, fixes=fixes))
    sys.stdout.flush()
    folder = folder_for(scene, out)
    write_text(folder / "plan.json", reports.plan_json(found, fixes))
    write_text(folder / "plan.txt", reports.plan_text(found, fixes=fixes))
    written = ["plan.json", "plan.txt"]
    if page or picture:
        written += _views(found, fixes, folder, page=page, wall_step=wall_step if wall else None, picture=picture)
    print(f"Written to {folder}: {', '.join(written)}", file=sys.stderr)  # noqa: T201
    return 0


def _views(
    found: Plan, fixes: tuple[Fix, ...], folder: Path, *, page: bool, wall_step: float | None, picture: bool
) -> list[str]:
    """Write the picture and the page; the picture is drawn in a process of its own meanwhile."""
    from routeviz.errors import MissingPartError
    from routeviz.views.aside import Drawing

    written = []
    with Drawing(found, folder / "plan.png") if picture else nullcontext() as drawing:
        if page:
            from routeviz.views import page as pages

            wall_map = _wall_map(found, wall_step) if wall_step else None
            write_text(folder / "plan.html", pages.compose(found, fixes=fixes, wall_map=wall_map))
            written.append("plan.html")
        if drawing is not None:
            try:
                drawing.finished()
                written.append("plan.png")
            except MissingPartError as fault:
                print(f"No picture: {fault}", file=sys.stderr)  # noqa: T201
    return written


def _wall_map(found: Plan, step_in: float) -> WallMap | None:
    from routeviz.cli.walls import wall_map
    from routeviz.errors import LimitError

    try:
        return wall_map(found, step_in)
    except LimitError as fault:
        print(f"No map of the wall: {fault}", file=sys.stderr)  # noqa: T201
        return None
