"""``routeviz film``: moving pictures of a plan."""

from __future__ import annotations

import sys
from pathlib import Path
from typing import Annotated, Literal

from cyclopts import Parameter, validators

from routeviz.cli.files import folder_for
from routeviz.cli.scenes import load_scene

__all__ = ["film"]

_SHAPE = 0.625  # height over width
_PER_SECOND = 15


def film(
    scene: Path,
    /,
    *,
    out: Annotated[Path | None, Parameter(name=["--out", "-o"])] = None,
    show: Literal["both", "room", "air"] = "both",
    form: Annotated[Literal["gif", "mp4"], Parameter(name="--as")] = "gif",
    width: Annotated[int, Parameter(validator=validators.Number(gte=160, lte=3840))] = 800,
    seconds: Annotated[float, Parameter(validator=validators.Number(gte=0.5, lte=60))] = 4.0,
) -> int:
    """Film a plan: a swing round the room, and the way of the air from the hood to the cap.

    Parameters
    ----------
    scene
        Scene file.
    out
        Folder for the files; without it, NAME_plan in the present folder.
    show
        room, air, or both.
    form
        gif, or mp4 with the extra part "motion".
    width
        Width of the picture in pixels.
    seconds
        How long each film takes.
    """
    from routeviz import pipeline
    from routeviz.views import motion
    from routeviz.views import stage as stages

    motion.require_parts(form)
    plan = pipeline.plan(load_scene(scene), alternatives=1)
    stage = stages.build(plan)
    folder = folder_for(scene, out)
    size, frames = (width, round(width * _SHAPE)), max(2, round(seconds * _PER_SECOND))
    written = []
    if show in ("both", "room"):
        written.append(
            motion.turntable(stage, folder / f"room.{form}", size=size, frames=frames, per_second=_PER_SECOND)
        )
    if show in ("both", "air") and plan.best is not None:
        written.append(
            motion.follow_air(stage, folder / f"air.{form}", size=size, frames=frames, per_second=_PER_SECOND)
        )
    elif show != "room":
        print("There is no way out, so there is no air to follow.", file=sys.stderr)  # noqa: T201
    if not written:
        return 2
    print(f"Written to {folder}: {', '.join(f.name for f in written)}", file=sys.stderr)  # noqa: T201
    return 0
