"""``routeviz plan``: the main job."""

from __future__ import annotations

import sys
from pathlib import Path
from typing import Annotated

from cyclopts import Parameter

from routeviz.cli.files import folder_for, write_bytes, write_text

__all__ = ["plan"]


def plan(
    scene: Path,
    /,
    *,
    out: Annotated[Path | None, Parameter(name=["--out", "-o"])] = None,
    as_json: Annotated[str | None, Parameter(name="--json")] = None,
    picture: bool = True,
    page: bool = True,
    ways: int = 3,
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
    ways
        Most ways out to work through.
    """
    from routeviz import pipeline, reports, scenefile

    found = pipeline.plan(scenefile.load(scene), alternatives=ways)
    if as_json is not None:
        text = reports.plan_json(found)
        if as_json == "-":
            sys.stdout.write(text)
        else:
            write_text(Path(as_json), text)
        return 0
    sys.stdout.write(reports.plan_text(found))
    sys.stdout.flush()
    folder = folder_for(scene, out)
    write_text(folder / "plan.json", reports.plan_json(found))
    write_text(folder / "plan.txt", reports.plan_text(found))
    written = ["plan.json", "plan.txt"]
    if page or picture:
        written += _views(found, folder, page=page, picture=picture)
    print(f"Written to {folder}: {', '.join(written)}", file=sys.stderr)  # noqa: T201
    return 0


def _views(found: object, folder: Path, *, page: bool, picture: bool) -> list[str]:
    from routeviz.errors import MissingPartError
    from routeviz.model.plan import Plan
    from routeviz.views import stage as stages

    assert isinstance(found, Plan)
    written = []
    stage = stages.build(found)
    if page:
        from routeviz.views import page as pages

        write_bytes(folder / "plan.html", pages.render(found, stage).encode("utf-8"))
        written.append("plan.html")
    if picture:
        from routeviz.views import still

        try:
            still.render(stage, folder / "plan.png")
            written.append("plan.png")
        except MissingPartError as fault:
            print(f"No picture: {fault}", file=sys.stderr)  # noqa: T201
    return written
