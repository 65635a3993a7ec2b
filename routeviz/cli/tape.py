"""``routeviz tape``: what every inch of the hood wall gives."""

from __future__ import annotations

import json
from collections.abc import Iterator
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

from cyclopts import Parameter, validators

from routeviz.cli.files import AsJson, write_bytes, write_json, write_text
from routeviz.cli.scenes import load_scene
from routeviz.cli.walls import even_step

if TYPE_CHECKING:
    from routeviz.model.plan import Plan

__all__ = ["tape"]


def tape(
    scene: Path,
    /,
    *,
    step: Annotated[float, Parameter(validator=validators.Number(gte=0.25, lte=12))] = 1.0,
    as_json: AsJson = None,
    svg: Path | None = None,
    png: Path | None = None,
    height_step: Annotated[float, Parameter(validator=validators.Number(gte=0.5, lte=12))] = 3.0,
) -> int:
    """Show, for every place of the hood along the wall, the best way out; one search answers them all.

    Parameters
    ----------
    scene
        Scene file.
    step
        Inches from place to place; in a metric home the nearest whole 5 mm, 25 mm for 1 in.
    as_json
        Write only the JSON, to this file; - prints it alone on standard output.
    svg
        Draw the tape to this SVG file, one row for each mounting height.
    png
        The same as a PNG picture.
    height_step
        Inches from height to height in the drawing, and in a metric home likewise.
    """
    from routeviz import reports, studies

    loaded = load_scene(scene)
    step, height_step = (even_step(s, metric=loaded.metric) for s in (step, height_step))
    places, (own,) = studies.places(loaded, step_in=step), studies.heights(loaded)
    heights = (own,) if svg is None and png is None else studies.heights(loaded, step_in=height_step)
    rows = studies.wall_plans(loaded, places, heights)
    row = min(rows, key=lambda r: abs((r[0].scene.hood.mount_in or 0.0) - own))
    if as_json is not None:
        write_json(as_json, json.dumps([_place(plan) for plan in row], indent=1, ensure_ascii=False))
    else:
        print(f"{loaded.name}\n")  # noqa: T201
        print(reports.tape_text(row))  # noqa: T201
    for file in _drawn(rows, (loaded.hood.centre_in, own), svg, png):
        if as_json is None:
            print(f"\nDrawn: {file}")  # noqa: T201
    return 0


def _drawn(
    rows: tuple[tuple[Plan, ...], ...], hood_at: tuple[float, float], svg: Path | None, png: Path | None
) -> Iterator[Path]:
    """Draw the tape to the files asked for; give each when it is there."""
    if svg is None and png is None:
        return
    from routeviz import drawings

    page = drawings.tape_page(rows, hood_at=hood_at)
    if svg is not None:
        write_text(svg, drawings.to_svg(page))
        yield svg
    if png is not None:
        write_bytes(png, drawings.to_png(page))
        yield png


def _place(plan: Plan) -> dict[str, object]:
    route = plan.best.route if plan.best else None
    return {
        "centre_in": round(plan.scene.hood.centre_in, 4),
        "mount_in": plan.scene.hood.mount_in,
        "verdict": plan.verdict.value,
        "status": plan.paths.outcome.value,
        "elbows": route.elbows if route else None,
        "length_in": round(route.length_in, 4) if route else None,
        "boxed_in": round(route.boxed_in, 4) if route else None,
        "face": route.termination.face if route else None,
        "flow_cfm": round(plan.best.air.full.flow_cfm, 1) if plan.best else None,
        "answer": plan.answer,
    }
